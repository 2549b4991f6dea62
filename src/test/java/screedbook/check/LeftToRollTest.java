package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import screedbook.calc.MatCooling;
import screedbook.calc.SkyLight;
import screedbook.calc.Stuff;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The line that tells how long the mat stays warm; its figures are those of the cooling that the formulas' tests hold. */
class LeftToRollTest {
    private static final String LOAD = "ticket mix=12.5-70A lift=2 pull=B paver_degF=286";
    private static final Pattern SPAN =
            Pattern.compile("estimate: (\\d+) to (\\d+) min left to roll, mean of the lift");

    private static Optional<LeftToRoll> left(Shift shift, String clock, String partial) {
        return LeftToRoll.of(
                shift.job(), LeftToRoll.Seen.of(shift.day(), shift.job()), Shift.entry(partial), shift.time(clock));
    }

    private static int least(Shift shift, String partial) {
        return span(left(shift, "22:00", partial).orElseThrow())[0];
    }

    private static int[] span(LeftToRoll told) {
        Matcher m = SPAN.matcher(told.text());
        assertThat(m.matches()).as(told.text()).isTrue();
        return new int[] {Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))};
    }

    @Test
    void theLineHoldsTheMinutesOfTheCoolingWithAQuarterEitherWay() {
        Amount air = Amount.of("60", Unit.DEG_F);
        Amount dew =
                screedbook.calc.DewPoint.of(air, new java.math.BigDecimal("50")).orElseThrow();
        MatCooling.Lift lift = new MatCooling.Lift(
                Amount.of("2.0", Unit.INCH), Amount.of("286", Unit.DEG_F), Amount.of("70", Unit.DEG_F), Stuff.HOT_MIX);
        MatCooling.Above above =
                new MatCooling.Above(air, Amount.of("5", Unit.MILE_PER_HOUR), SkyLight.radiates(air, dew, 0), 0);
        double mean = MatCooling.until(Amount.of("175", Unit.DEG_F), lift, above)
                .mean()
                .orElseThrow();

        int[] span = span(left(Shift.night(), "22:00", LOAD).orElseThrow());

        assertThat(span[0]).isEqualTo((int) Math.floor(0.75 * mean));
        assertThat(span[1]).isEqualTo((int) Math.ceil(1.25 * mean));
        assertThat(mean).isBetween(15.0, 40.0);
    }

    @Test
    void theWorkingSaysWhatWentInWhatIsLeftOutAndThatItIsAnEstimate() {
        String working = String.join(
                "\n", left(Shift.night(), "22:00", LOAD).orElseThrow().working());

        assertThat(working)
                .contains("until 175 °F: mean of the lift")
                .contains("half its depth")
                .contains("surface")
                .contains("rule of thumb")
                .contains("lift 2, 2.0 in as planned, mix 286 °F at the paver")
                .contains("surface 70 °F")
                .contains("air 60 °F, wind 5 mph, sky clear")
                .contains("no sun counted: the surface was read in the shade")
                .contains("It is an estimate, a quarter more or less. It leaves out rain");
    }

    @Test
    void nothingIsToldWithoutWhatItIsWorkedOutFrom() {
        assertThat(left(Shift.night(), "22:00", "ticket mix=12.5-70A lift=2 pull=B"))
                .isEmpty();
        assertThat(left(Shift.night(), "22:00", "ticket mix=12.5-70A paver_degF=286 pull=Z"))
                .isEmpty();
        assertThat(left(Shift.bare(Map.of()), "22:00", LOAD)).isEmpty();
        assertThat(left(Shift.night(), "22:00", LOAD + " fate=rejected")).isEmpty();
        assertThat(left(Shift.night(), "22:00", "mat mat_degF=200 lift=2 pull=B taken=rolling-ends"))
                .isEmpty();
        assertThat(left(Shift.night(), "22:00", "note text=x")).isEmpty();
    }

    @Test
    void theJobSaysUntilWhenItIsRolled() {
        Shift longer = Shift.night(Map.of("roll_until", PlannedJob.object("mat_degF", "160", "source", "test~strip")));

        assertThat(least(longer, LOAD)).isGreaterThan(least(Shift.night(), LOAD));
        assertThat(left(longer, "22:00", LOAD).orElseThrow().working()).anyMatch(l -> l.startsWith("until 160 °F"));
    }

    @Test
    void aWindOrAColdBaseLeavesLessTime() {
        Shift windy = Shift.night()
                .at("21:00", "weather air_degF=60 humidity_pct=50 wind_mph=20 sky=clear precipitation=none road=dry");
        Shift cold = Shift.night().at("21:00", "surface surface_degF=40 place_sta=12+00 pull=B lift=2 base=asphalt");

        assertThat(least(windy, LOAD)).isLessThan(least(Shift.night(), LOAD));
        assertThat(least(cold, LOAD)).isLessThan(least(Shift.night(), LOAD));
    }

    @Test
    void bySunAMatStaysWarmLongerThanUnderCloud() {
        Map<String, Object> placed = Map.of("place", PlannedJob.object("latitude", "39.2", "longitude", "-105.6"));
        String read = "surface surface_degF=90 place_sta=12+00 pull=B lift=2 light=sun base=asphalt";
        Shift clear = Shift.night(placed).at("19:50", read);
        Shift covered = Shift.night(placed)
                .at("19:50", read)
                .at("19:51", "weather air_degF=60 humidity_pct=50 wind_mph=5 sky=overcast precipitation=none road=dry");

        LeftToRoll noon = left(clear, "13:00", LOAD).orElseThrow();

        assertThat(noon.working()).anyMatch(l -> l.matches("sun 7\\d degrees high, \\d+ W/m2 on level ground"));
        assertThat(span(noon)[0])
                .isGreaterThan(span(left(covered, "13:00", LOAD).orElseThrow())[0]);
        assertThat(left(clear, "23:00", LOAD).orElseThrow().working()).contains("no sun");
    }

    @Test
    void aMatBehindTheScreedIsAsALoadOfThatTemperature() {
        assertThat(left(Shift.night(), "22:00", "mat mat_degF=286 lift=2 pull=B taken=behind-screed")
                        .orElseThrow()
                        .text())
                .isEqualTo(left(Shift.night(), "22:00", LOAD).orElseThrow().text());
    }

    /** Where rolling begins the surface reads low while the mean is still warm: the load's own cooling says how old it is. */
    @Test
    void aMatThatRollingBeginsOnIsAsOldAsTheLoadsCoolingSays() {
        Shift laid = Shift.night().load("21:50", "48211", "paver_degF=286");
        String reading = "mat mat_degF=230 lift=2 pull=B taken=rolling-begins read_in=surface";

        LeftToRoll told = left(laid, "22:00", reading).orElseThrow();

        assertThat(told.working()).anyMatch(l -> l.matches("the mat reads 230 °F: as [1-9] min after laying"));
        assertThat(span(told)[0])
                .isLessThan(least(laid, LOAD))
                .isGreaterThan(least(Shift.night(), "mat mat_degF=230 lift=2 pull=B taken=behind-screed"));
    }

    /** Whatever is half typed or mistyped, a line is told or none; nothing goes wrong and nothing takes long. */
    @Test
    void oddFiguresAreWorkedOutOrLeftAlone() {
        Random random = new Random(17);
        int told = 0;
        for (int round = 0; round < 150; round++) {
            Shift shift = Shift.bare(Map.of("place", PlannedJob.object("latitude", "39.2", "longitude", "-105.6")))
                    .at(
                            "19:40",
                            "weather air_degF=" + odd(random) + " humidity_pct=" + odd(random) + " wind_mph="
                                    + odd(random) + " sky=few")
                    .at("19:45", "surface surface_degF=" + odd(random) + " place_sta=12+00 pull=B lift=2");
            String kind =
                    random.nextBoolean() ? "ticket lift=2 paver_degF=" : "mat taken=rolling-begins lift=2 mat_degF=";
            Optional<LeftToRoll> left = left(shift, "12:00", kind + odd(random));
            told += left.isPresent() ? 1 : 0;
            left.ifPresent(l -> assertThat(l.text())
                    .matches("estimate: (\\d+ min|\\d+ to \\d+ min|more than 4 h) left to roll, mean of the lift"));
        }
        assertThat(told).isGreaterThan(50);
    }

    private static int odd(Random random) {
        int[] figures = {-500, -40, -1, 0, 1, 2, 28, 62, 99, 101, 175, 286, 999, 28600};
        return figures[random.nextInt(figures.length)];
    }

    @Test
    void aMetricJobIsToldInItsDegrees() {
        List<Map<String, Object>> lifts =
                List.of(PlannedJob.object("number", "2", "layer", "riding-surface", "thickness_mm", "50", "mix", "M"));
        Map<String, Object> metric = new HashMap<>();
        metric.put("units", "metric");
        metric.put("lifts", lifts);
        for (String key : List.of("pulls", "mixes", "trucks", "tack_targets", "lane_lines")) {
            metric.put(key, null);
        }
        Shift shift = Shift.bare(metric)
                .at("19:40", "weather air_degC=15 humidity_pct=50 wind_kmh=8 sky=clear precipitation=none road=dry");

        LeftToRoll told = left(shift, "22:00", "ticket lift=2 paver_degC=140").orElseThrow();

        assertThat(told.working()).anyMatch(l -> l.startsWith("until 79 °C"));
        assertThat(told.working()).anyMatch(l -> l.startsWith("surface not read"));
    }
}
