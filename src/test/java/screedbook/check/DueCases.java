package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** The rules about the checks that the job wants, each with a shift that raises it and one that just does not. */
final class DueCases {
    private DueCases() {}

    static void add() {
        overdue();
    }

    /** A yield check once in 40 T, which two loads are: Florida DOT training, slide 24, has 200 T. */
    private static void overdue() {
        Map<String, Object> often = Map.of(
                "checks",
                Map.of("others", List.of(Map.of("kind", "yield", "each", new BigDecimal("40"), "of", "tons"))));
        RulesTest.shifts(
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
}
