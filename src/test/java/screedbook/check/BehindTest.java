package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.Accusing;
import screedbook.tally.Run;
import screedbook.tally.Totals;

/** What may be behind a rate is told with the record's own figures, and what these bear out comes first. */
class BehindTest {
    /** 89.24 T on 500 ft of 12 ft: 267.7 lb/yd2 of 217.5 planned, 123.1 % by hand. */
    private static Shift heavy() {
        return Shift.night()
                .load("21:00", "1001", "from_sta=12+00 to_sta=13+00")
                .load("21:10", "1002", "from_sta=13+00 to_sta=14+00")
                .load("21:20", "1003", "from_sta=14+50 to_sta=16+00")
                .load("21:30", "1004", "from_sta=16+00 to_sta=17+50");
    }

    private static List<String> behind(Shift shift) {
        Totals totals = shift.totals();
        Run run = totals.runs().get(0);
        return Behind.of(run, shift.day(), totals, Shift.job(Map.of()));
    }

    @Test
    void aHeavyRateNamesWasteLengthThicknessAndWidthWithTheirFigures() {
        List<String> lines = behind(heavy());
        assertThat(lines.get(0)).isEqualTo("may be behind 123.1 % of the planned rate");
        assertThat(lines).hasSize(5);
        assertThat(lines.get(1))
                .as("a gap between the loads bears the length out, so it comes first")
                .isEqualTo("length: 500 ft by the stations; these tons make 615.4 ft; between the first and the last"
                        + " 50 ft are in no load");
        assertThat(lines)
                .anyMatch(l -> l.equals("waste: 16.7 T are over; no waste is noted that is not taken off already"));
        assertThat(lines)
                .anyMatch(l -> l.startsWith("thickness, as over a low or high base: the tons are worth 2.46 in")
                        && l.endsWith("no probe of the rolled mat is noted"));
        assertThat(lines).anyMatch(l -> l.startsWith("width: 12 ft as planned; these tons make 14.8 ft"));
    }

    @Test
    void whatTheRecordBearsOutComesFirst() {
        Shift shift = heavy().at("21:40", "waste weight_ston=3.50 mix=12.5-70A reason=hopper")
                .at("21:45", "depth state=compacted thickness_in=2.4 place_sta=13+00 pull=B lift=2");
        List<String> lines = behind(shift);
        assertThat(lines.get(1)).contains("3.50 T of waste bear no ticket and are still in the rate");
        assertThat(lines.get(3)).contains("1 probed, mean 2.40 in, planned 2.0 in");
    }

    @Test
    void aLightRateLooksForTonsThatAreNotInIt() {
        Shift shift = Shift.night()
                .load("21:00", "1001", "from_sta=12+00 to_sta=14+00")
                .load("21:10", "1002", "from_sta=14+00 to_sta=16+00 net_ston=");
        List<String> lines = behind(shift);
        assertThat(lines.get(0)).isEqualTo("may be behind 38.5 % of the planned rate");
        assertThat(lines.get(1)).contains("1 load without a weight");
    }

    @Test
    void atThePlannedRateNothingIsNamed() {
        Shift shift = Shift.night().load("21:00", "1001", "net_ston=14.50 from_sta=12+00 to_sta=13+00");
        assertThat(shift.totals().runs().get(0).percent().orElseThrow().shown(0).text())
                .isEqualTo("100 %");
        assertThat(behind(shift)).isEmpty();
    }

    /** Findings say what was seen and its limit; what may be behind it is for the desk alone. */
    @Test
    void noFindingNamesACause() {
        assertThat(heavy().findings())
                .filteredOn(f -> f.rule().equals("spread-rate"))
                .isNotEmpty()
                .allSatisfy(f -> {
                    assertThat(f.seen() + f.limit() + f.clause() + f.inside()).doesNotContain("waste", "base");
                    assertThat(Behind.run(f, heavy().day(), heavy().totals())).isPresent();
                });
    }

    @Test
    void noWordAccuses() {
        String all = String.join(" ", behind(heavy()));
        assertThat(all).contains("may be behind");
        assertThat(Accusing.in(all)).isEmpty();
    }

    @Test
    void aYieldCheckSaysWhatItComesToWhileItIsKeyed() {
        Shift shift = heavy();
        Guide guide = Guides.of(
                shift.ground(),
                shift.day(),
                Shift.entry("yield pull=B lift=2 from_sta=12+00 to_sta=14+00 first_ticket=1001 last_ticket=1002"),
                shift.time("21:40"),
                "to_sta");
        assertThat(guide.limit()).isEqualTo("comes to 334.7 lb/yd², 153.9 %; no limit set");
        assertThat(guide.verdict()).isEqualTo(Verdict.NO_LIMIT);
        assertThat(guide.working()).contains("2 loads, 44.62 T", "area 266.7 yd²");
    }

    /** Florida DOT training, slide 24: within 5 % of the target. */
    @Test
    void whereTheSheetHasALimitItStandsThereBeforeTheNumber() {
        Shift shift = Shift.night(Map.of("sheet", "florida-300-330-334"));
        Guide guide = Guides.of(
                shift.ground(),
                shift.day(),
                Shift.entry("yield pull=B lift=2 from_sta=12+00 to_sta=22+00 tons_ston=146.67"),
                shift.time("21:40"),
                "to_sta");
        assertThat(guide.limit()).isEqualTo("comes to 220.0 lb/yd², 101.2 %; 95 to 105 % of 217.5 lb/yd²");
        assertThat(guide.verdict()).isEqualTo(Verdict.INSIDE);
        assertThat(guide.clause()).isEqualTo("Florida DOT training slide deck slide 24");
    }

    @Test
    void aProbeIsHeldAgainstThePlanAndALimitOnlyWhereThereIsOne() {
        Shift shift = Shift.night();
        String probe = "depth state=compacted thickness_in=1.5 pull=B lift=2";
        Guide none = Guides.of(shift.ground(), shift.day(), Shift.entry(probe), shift.time("21:40"), "thickness_in");
        assertThat(none.limit()).isEqualTo("planned 2.0, no limit set");
        assertThat(none.verdict()).isEqualTo(Verdict.NO_LIMIT);

        Shift limited = Shift.night(Map.of("checks", Map.of("depth_within_in", new java.math.BigDecimal("0.25"))));
        Guide out =
                Guides.of(limited.ground(), limited.day(), Shift.entry(probe), limited.time("21:40"), "thickness_in");
        assertThat(out.limit()).isEqualTo("planned 2.0, 1.75 to 2.25");
        assertThat(out.verdict()).isEqualTo(Verdict.OUTSIDE);

        Shift levels = Shift.night(Map.of(
                "lifts",
                List.of(Shift.map(
                        "number=2 layer=riding-surface thickness_in=2.0 mix=12.5-70A base=asphalt varies=yes"))));
        Guide level =
                Guides.of(levels.ground(), levels.day(), Shift.entry(probe), levels.time("21:40"), "thickness_in");
        assertThat(level.limit()).isEqualTo("levels, no thickness judged");
        assertThat(level.verdict()).isEqualTo(Verdict.NONE);
    }
}
