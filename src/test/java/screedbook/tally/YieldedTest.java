package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.Station;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.job.Wanted;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Yield checks, the last five loads of a pull, what it takes to its end, and thickness as probed. */
class YieldedTest {
    private final Job job = Jobs.us();

    private Totals totals(Shift shift) {
        return Totals.of(shift.read(), job, ToDate.NONE, shift.at("18:00"));
    }

    private static Shift eight(String... last) {
        Shift shift = Shift.day();
        for (int i = 1; i <= 7; i++) {
            shift.ticket("08:0" + i, "10" + i, "20.00", "mix", "12.5-70A", "pull", "A", "lift", "2");
        }
        String[] pairs = new String[last.length + 6];
        System.arraycopy(new String[] {"mix", "12.5-70A", "pull", "A", "lift", "2"}, 0, pairs, 0, 6);
        System.arraycopy(last, 0, pairs, 6, last.length);
        return shift.ticket("08:08", "108", "6.67", pairs);
    }

    private static Shift checked(Shift shift, String... more) {
        String[] pairs = new String[more.length + 12];
        System.arraycopy(
                new String[] {
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    "10+00",
                    "to_sta",
                    "20+00",
                    "first_ticket",
                    "101",
                    "last_ticket",
                    "108"
                },
                0,
                pairs,
                0,
                12);
        System.arraycopy(more, 0, pairs, 12, more.length);
        return shift.key(Kind.YIELD, "08:30", pairs);
    }

    private Yielded only(Shift shift) {
        return totals(shift).yields().checks().get(0).yielded();
    }

    /**
     * 146.67 T on 1000 ft of 12 ft are 220 lb/yd2 (tons x 2000 / (length x width / 9), own arithmetic), and at 110
     * lb/yd2 for each inch 2 in: NAVEDTRA 14080, question 6-41, has 440 for 4 in.
     */
    @Test
    void aCheckOverTicketsComesToARateAndWhatItIsWorth() {
        Yielded y = only(checked(eight()));
        assertThat(y.loads()).isEqualTo(8);
        assertThat(y.weight().text(2)).isEqualTo("146.67 T");
        assertThat(y.area().text(1)).isEqualTo("1333.3 yd²");
        assertThat(y.rate().text(1)).isEqualTo("220.0 lb/yd²");
        assertThat(y.target().orElseThrow().shown(1).text()).isEqualTo("220.0 lb/yd²");
        assertThat(y.percent().orElseThrow().shown(1).text()).isEqualTo("100.0 %");
        assertThat(y.thickness().orElseThrow().shown(2).text()).isEqualTo("2.00 in");
    }

    /** INDOT's paving technician manual, chapter 8, example 2: 165 lb/yd2 at 110 lb/yd2 for each inch are 1.5 in. */
    @Test
    void aRateIsWorthTheThicknessOfTheManualsExample() {
        Yielded y = only(Shift.day()
                .key(
                        Kind.YIELD,
                        "09:00",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "19+00",
                        "width_ft",
                        "10",
                        "tons_ston",
                        "82.5"));
        assertThat(y.rate().text(1)).isEqualTo("165.0 lb/yd²");
        assertThat(y.thickness().orElseThrow().shown(2).text()).isEqualTo("1.50 in");
        assertThat(y.percent().orElseThrow().shown(1).text()).isEqualTo("75.0 %");
    }

    @Test
    void wasteIsTakenOffAndWhatWasRejectedIsNotInIt() {
        Shift shift = eight("fate", "rejected", "reason", "cold")
                .key(Kind.WASTE, "08:20", "of", "paver/7", "weight_ston", "5", "reason", "hopper");
        Yielded y = only(checked(shift));
        assertThat(y.loads()).isEqualTo(7);
        assertThat(y.weight().text(2)).isEqualTo("135.00 T");
        assertThat(y.withoutText()).isEqualTo("without paver/8 ticket 108: rejected");
        assertThat(y.put()).anyMatch(p -> p.contains("15.00 of 20.00 (less waste"));
        assertThat(totals(shift).figure("yield-rate.paver/10").orElseThrow().text())
                .isEqualTo("202.5 lb/yd²");
    }

    @Test
    void fromAPlaceToTheSamePlaceThereIsNoRateAndItIsSaid() {
        Shift shift = checked(eight()).amend(9, "to_sta", "10+00", "misread");
        Figure figure = totals(shift).figure("yield-rate.paver/9").orElseThrow();
        assertThat(figure.text()).isEqualTo("not worked out: no length, from and to are one place");
        assertThat(figure.value()).isNull();
        assertThat(totals(shift).figure("yield-percent.paver/9")).isEmpty();
    }

    @Test
    void aTicketThatIsNotHereIsSaidAndTheKeyedTonsStand() {
        Yielded y = only(Shift.day()
                .key(
                        Kind.YIELD,
                        "09:00",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "20+00",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "first_ticket",
                        "777",
                        "last_ticket",
                        "778",
                        "tons_ston",
                        "146.67",
                        "loads",
                        "7"));
        assertThat(y.put()).contains("first ticket 777 is not in this shift");
        assertThat(y.rate().text(1)).isEqualTo("220.0 lb/yd²");
        assertThat(y.loads()).isEqualTo(7);
    }

    @Test
    void allChecksOfAPullAreTheirTonsOverTheirAreas() {
        Shift shift = checked(eight())
                .key(
                        Kind.YIELD,
                        "09:00",
                        "from_sta",
                        "20+00",
                        "to_sta",
                        "30+00",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "tons_ston",
                        "160.00");
        assertThat(totals(shift).figure("yield-checked.A lift 2").orElseThrow().text())
                .isEqualTo("230.0 lb/yd²");
    }

    /** 8 loads of 20 T, the first three on 100 ft each, the last five on 120 ft each: 300 and 250 lb/yd2 by hand. */
    private static Shift paved() {
        Shift shift = Shift.day();
        int at = 1000;
        for (int i = 1; i <= 8; i++) {
            int to = at + (i <= 3 ? 100 : 120);
            shift.ticket(
                    "08:1" + i,
                    "20" + i,
                    "20.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    sta(at),
                    "to_sta",
                    sta(to));
            at = to;
        }
        return shift;
    }

    private static String sta(int feet) {
        return feet / 100 + "+" + String.format("%02d", feet % 100);
    }

    @Test
    void theLastFiveLoadsOfAPullAreAveraged() {
        Outlook o = totals(paved()).yields().ahead().get(0);
        assertThat(o.loads()).isEqualTo(5);
        assertThat(o.last().orElseThrow().shown(1).text()).isEqualTo("250.0 lb/yd²");
        assertThat(o.lastPercent().orElseThrow().shown(1).text()).isEqualTo("113.6 %");
        assertThat(o.areaLeft()).isEmpty();
    }

    /** 900 ft are laid of 2000 planned, and 300 lie from the shift before: 800 ft of 12 ft are 1066.7 yd2. */
    @Test
    void whatIsLeftOfThePlanTakesItsTonsAtTheRateOfTheShift() {
        Job planned = withPlan("10+00", "30+00");
        ToDate before = ToDate.NONE.and(
                new Shift("2026-06-02-day", "paver")
                        .ticket(
                                "08:10",
                                "90",
                                "66.00",
                                "mix",
                                "12.5-70A",
                                "pull",
                                "A",
                                "lift",
                                "2",
                                "from_sta",
                                "27+00",
                                "to_sta",
                                "30+00")
                        .read(),
                planned);
        Shift shift = paved();
        Outlook o = Totals.of(shift.read(), planned, before, shift.at("18:00"))
                .yields()
                .ahead()
                .get(0);
        assertThat(o.ahead().text()).isEqualTo("800 ft");
        assertThat(o.areaLeft().orElseThrow().shown(1).text()).isEqualTo("1066.7 yd²");
        // 160 T on 1200 yd2 are 266.7 lb/yd2: 1066.7 x 266.7 / 2000 = 142.2
        assertThat(o.left().orElseThrow().shown(1).text()).isEqualTo("142.2 T");
        assertThat(o.atEnd().orElseThrow().shown(1).text()).isEqualTo("302.2 T");
        assertThat(o.planned().orElseThrow().shown(1).text()).isEqualTo("117.3 T");
    }

    private Job withPlan(String from, String to) {
        Planning.Stretch stretch = new Planning.Stretch("A", 2, Station.of(from), Station.of(to));
        Planning p = Planning.NONE;
        Planning plan = new Planning(
                p.haul(),
                p.wheelPaths(),
                p.jointRule(),
                p.work(),
                p.production(),
                p.cutoff(),
                p.agreements(),
                List.of(stretch),
                p.rollUntil());
        Job j = job;
        return Jobs.with(j, "planning", plan);
    }

    @Test
    void ofAShiftInWhichNobodyChecksYieldNothingNewIsTold() {
        Totals quiet = totals(paved());
        assertThat(quiet.sections()).noneMatch(s -> s.id().equals("yield") || s.id().equals("depth"));

        Wanted often =
                new Wanted(Kind.YIELD, null, null, new BigDecimal("200"), Wanted.Count.TONS, null, null, null, null);
        Checks c = Jobs.usChecks();
        Job asks = Jobs.with(new Checks(
                c.firstLoads(),
                c.thenOneIn(),
                c.heatWhere(),
                c.surfaceEvery(),
                c.weatherEvery(),
                c.loadAge(),
                c.yieldEvery(),
                c.tackSamples(),
                c.grossAndTare(),
                c.source(),
                List.of(often),
                null,
                null));
        Shift shift = paved();
        Totals asked = Totals.of(shift.read(), asks, ToDate.NONE, shift.at("18:00"));
        assertThat(asked.figure("yield-last.A lift 2").orElseThrow().text()).isEqualTo("250.0 lb/yd²");
    }

    @Test
    void twoPaversAreToldOneByOneAndThePullsTogether() {
        Shift shift = Shift.day()
                .ticket(
                        "08:10",
                        "1",
                        "22.00",
                        "mix",
                        "12.5-70A",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "paver",
                        "P1",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "11+50")
                .ticket(
                        "08:11",
                        "2",
                        "24.00",
                        "mix",
                        "12.5-70A",
                        "pull",
                        "B",
                        "lift",
                        "2",
                        "paver",
                        "P2",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "11+50")
                .key(
                        Kind.YIELD,
                        "08:30",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "11+50",
                        "tons_ston",
                        "46.00",
                        "area_yd2",
                        "400");
        Totals totals = totals(shift);
        assertThat(totals.figure("yield-paver.P1.A lift 2").orElseThrow().text())
                .isEqualTo("220.0 lb/yd²");
        assertThat(totals.figure("yield-paver.P2.B lift 2").orElseThrow().text())
                .isEqualTo("240.0 lb/yd²");
        assertThat(totals.figure("yield-rate.paver/3").orElseThrow().text()).isEqualTo("230.0 lb/yd²");
    }

    @Test
    void probesAreAveragedByPullLiftAndState() {
        Shift shift = Shift.day();
        for (String each : List.of("2.00 compacted", "2.10 compacted", "1.75 compacted", "2.50 loose")) {
            String[] parts = each.split(" ");
            shift.key(
                    Kind.DEPTH,
                    "09:00",
                    "thickness_in",
                    parts[0],
                    "state",
                    parts[1],
                    "place_sta",
                    "12+00",
                    "pull",
                    "A",
                    "lift",
                    "2");
        }
        Totals totals = totals(shift);
        assertThat(totals.figure("depth-mean.A lift 2.compacted").orElseThrow().text())
                .isEqualTo("1.95 in");
        assertThat(totals.figure("depth-least.A lift 2.compacted").orElseThrow().text())
                .isEqualTo("1.75 in");
        assertThat(totals.figure("depth-mean.A lift 2.loose").orElseThrow().text())
                .isEqualTo("2.50 in");
        assertThat(totals.figure("depth-probes.A lift 2.compacted")
                        .orElseThrow()
                        .value())
                .isEqualByComparingTo("3");
        assertThat(totals.figure("depth-planned.A lift 2.compacted")
                        .orElseThrow()
                        .text())
                .isEqualTo("2.00 in");
    }

    /** A lift that levels has no one thickness: no target, no hundredths of it, no planned thickness. */
    @Test
    void aLiftThatLevelsHasNoTarget() {
        Job.Lift level = new Job.Lift(
                2, Job.Layer.BELOW_RIDING_SURFACE, Amount.of("2.00", Unit.INCH), "12.5-70A", null, YesNo.YES);
        Job j = job;
        Job levels = Jobs.with(j, "lifts", List.of(level));
        Shift shift = checked(paved(), "tons_ston", "160");
        Totals totals = Totals.of(shift.read(), levels, ToDate.NONE, shift.at("18:00"));
        assertThat(totals.runs().get(0).target()).isEmpty();
        assertThat(totals.runs().get(0).percent()).isEmpty();
        assertThat(totals.runs().get(0).put()).contains("no target: the lift levels, its thickness varies");
        assertThat(totals.yields().checks().get(0).yielded().target()).isEmpty();
        assertThat(totals.yields().checks().get(0).yielded().rate().text(1)).isEqualTo("240.0 lb/yd²");
    }

    /** The same by metric units: 50 mm at 2.4 kg/m2 for each mm are 120 kg/m2. */
    @Test
    void aMetricJobIsCheckedInKilograms() {
        Job metric = Jobs.metric();
        Shift shift = Shift.day()
                .key(
                        Kind.YIELD,
                        "09:00",
                        "from_sta",
                        "1+000",
                        "to_sta",
                        "1+100",
                        "pull",
                        "A",
                        "lift",
                        "1",
                        "tons_t",
                        "42");
        Yielded y = Totals.of(shift.read(), metric, ToDate.NONE, shift.at("10:00"))
                .yields()
                .checks()
                .get(0)
                .yielded();
        assertThat(y.rate().text(1)).isEqualTo("120.0 kg/m²");
        assertThat(y.percent().orElseThrow().shown(0).text()).isEqualTo("100 %");
        assertThat(y.thickness().orElseThrow().shown(0).text()).isEqualTo("50 mm");
    }
}
