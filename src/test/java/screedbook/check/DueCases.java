package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The rules about the checks that the job wants, each with a shift that raises it and one that just does not. */
final class DueCases {
    private DueCases() {}

    static void add() {
        overdue();
        yields();
        depths();
    }

    /** A yield check once in 40 T, which two loads are: Florida DOT training, slide 24, has 200 T. */
    private static void overdue() {
        Map<String, Object> often = Map.of(
                "checks",
                Map.of("others", List.of(Map.of("kind", "yield", "each", new BigDecimal("40"), "of", "tons"))));
        RuleCases.shifts(
                "check-overdue",
                "",
                Sort.MISSING,
                "no yield check in 45 T",
                Shift.night(often)
                        .load("21:00", "1001", "")
                        .load("21:10", "1002", "")
                        .load("21:20", "1003", ""),
                Shift.night(often)
                        .load("21:00", "1001", "")
                        .load("21:10", "1002", "")
                        .at("21:15", "yield from_sta=12+00 to_sta=14+00")
                        .load("21:20", "1003", ""));
    }

    /** Five loads of 22.31 T on pull B, 12 ft wide at 2.0 in of 145 lb/ft3: 217.5 lb/yd2 are planned. */
    private static Shift five(Map<String, Object> changes, String check) {
        Shift shift = Shift.night(changes);
        for (int i = 1; i <= 5; i++) {
            shift.load("21:0" + i, "100" + i, "");
        }
        return shift.at("21:30", "yield pull=B lift=2 first_ticket=1001 last_ticket=1005 " + check);
    }

    /**
     * 111.55 T on 732 and 733 ft of 12 ft are 228.58 and 228.27 lb/yd2, 105.1 and 105.0 % of 217.5 (own arithmetic);
     * the limit of 105 is Florida DOT's (training on spread rates, slide 24).
     */
    private static void yields() {
        Map<String, Object> florida = Map.of("sheet", "florida-300-330-334");
        RuleCases.shifts(
                "yield-check",
                "",
                Sort.OUTSIDE,
                "of the planned spread rate 105.1 %",
                five(florida, "from_sta=12+00 to_sta=19+32"),
                five(florida, "from_sta=12+00 to_sta=19+33"));
        RuleCases.shifts(
                "yield-check",
                "69",
                Sort.LOOK_AGAIN,
                "of the planned spread rate 120.1 %",
                five(Map.of(), "from_sta=12+00 to_sta=18+40.5"),
                five(Map.of(), "from_sta=12+00 to_sta=18+41.5"));
        RuleCases.shifts(
                "yield-no-rate",
                "70",
                Sort.DOES_NOT_ADD_UP,
                "no rate, no length, from and to are one place",
                five(Map.of(), "from_sta=12+00 to_sta=12+00"),
                five(Map.of(), "from_sta=12+00 to_sta=19+33"));
        RuleCases.shifts(
                "spread-paid",
                "",
                Sort.LOOK_AGAIN,
                "B lift 2: spread rate, of the planned, 105.1 %, 0.1 T beyond what is paid for",
                Shift.night(florida).load("21:00", "1001", "net_ston=111.55 from_sta=12+00 to_sta=19+32"),
                Shift.night(florida).load("21:00", "1001", "net_ston=111.55 from_sta=12+00 to_sta=19+33"));
    }

    /** Within 0.25 in of the planned thickness: Elk River MN, 2019, 3.2 B (read); the job settles it. */
    private static void depths() {
        Map<String, Object> quarter = Map.of("checks", Map.of("depth_within_in", new BigDecimal("0.25")));
        Map<String, Object> levels = Map.of(
                "checks",
                Map.of("depth_within_in", new BigDecimal("0.25")),
                "lifts",
                List.of(Shift.map(
                        "number=2 layer=riding-surface thickness_in=2.0 mix=12.5-70A base=asphalt" + " varies=yes")));
        String probe = "depth state=compacted place_sta=13+00 pull=B lift=2 thickness_in=";
        RuleCases.shifts(
                "depth-probed",
                "",
                Sort.OUTSIDE,
                "B lift 2 13+00: rolled mat, 2.0 in planned, 1.74 in",
                Shift.night(quarter).at("21:00", probe + "1.74"),
                Shift.night(quarter).at("21:00", probe + "1.75"));
        RuleCases.shifts(
                "depth-probed",
                "71",
                Sort.OUTSIDE,
                "3.00 in",
                Shift.night(quarter).at("21:00", probe + "3.00"),
                Shift.night(levels).at("21:00", probe + "3.00"));
        RuleCases.shifts(
                "depth-probed",
                "",
                Sort.OUTSIDE,
                "3.00 in",
                Shift.night(quarter).at("21:00", probe + "3.00"),
                Shift.night(Map.of()).at("21:00", probe + "3.00"));
    }
}
