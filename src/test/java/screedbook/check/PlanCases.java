package screedbook.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import screedbook.entry.Note;

/** The cases of the rules that hold the work against what was planned. */
final class PlanCases {
    private static final Map<String, Object> OHIO = Map.of("sheet", "ohio-401-2010");
    private static final Map<String, Object> FLORIDA = Map.of("sheet", "florida-300-330-334");

    private PlanCases() {}

    static void add() {
        RuleCases.shifts(
                "lift-thickness",
                "",
                Sort.OUTSIDE,
                "lift 2 of 12.5-70A is planned 1.9 in",
                Shift.night(lift("1.9")).load("21:00", "1001", ""),
                Shift.night(lift("2.00")).load("21:00", "1001", ""));
        RuleCases.shifts(
                "lift-thickness",
                "71",
                Sort.OUTSIDE,
                "lift 2 of 12.5-70A is planned 1.5 in",
                Shift.night(lift("1.5")).load("21:00", "1001", ""),
                Shift.night(lift("1.5")));
        RuleCases.shifts(
                "thickness-unusual",
                "68",
                Sort.LOOK_AGAIN,
                "lift 2 is planned 20 in",
                Shift.night(lift("20")),
                Shift.night(lift("2.0")));
        RuleCases.shifts(
                "width-unusual",
                "68",
                Sort.LOOK_AGAIN,
                "pull B is planned 120 ft",
                Shift.night(pulls("-12 0", "0 120")),
                Shift.night(pulls("-12 0", "0 24")));
        RuleCases.shifts(
                "joint-place",
                "",
                Sort.LOOK_AGAIN,
                "the joint of pull B at 3 ft is 3 ft from the nearest final lane line",
                Shift.night(pulls("-12 3", "3 12")).load("21:00", "1001", ""),
                Shift.night(pulls("-12 0", "0 12")).load("21:00", "1001", ""));
        RuleCases.shifts(
                "dates",
                "",
                Sort.OUTSIDE,
                "lift 2 was placed on 2026-11-02",
                Shift.day(LocalDate.of(2026, 11, 2), OHIO).load("10:00", "1001", ""),
                Shift.day(LocalDate.of(2026, 11, 1), OHIO).load("10:00", "1001", ""));
        RuleCases.shifts(
                "dates",
                "",
                Sort.LOOK_AGAIN,
                "lift 2 was placed on 2026-03-31",
                Shift.day(LocalDate.of(2026, 3, 31), OHIO).load("10:00", "1001", ""),
                Shift.day(LocalDate.of(2026, 4, 1), OHIO).load("10:00", "1001", ""));
        RuleCases.shifts(
                "uncompacted-mat",
                "",
                Sort.MISSING,
                "1 load placed, no thermal profile and no note tagged uncompacted mat",
                Shift.night(Map.of("thermal", "handheld-camera")).load("21:00", "1001", ""),
                Shift.night(Map.of("thermal", "handheld-camera"))
                        .load("21:00", "1001", "")
                        .at("21:10", "note text=288~to~281 ")
                        .with(note("uncompacted mat")));
        RuleCases.rule(
                "spread-rate",
                "69",
                Sort.LOOK_AGAIN,
                "spread rate, of the planned, 140 %",
                s -> spread(s, 330),
                s -> spread(s, 384));
        RuleCases.shifts(
                "spread-rate",
                "69",
                Sort.LOOK_AGAIN,
                "spread rate, of the planned, 110 %",
                spread(Shift.night(FLORIDA), 420),
                spread(Shift.night(FLORIDA), 450));
        RuleCases.shifts(
                "plan-not-found",
                "95",
                Sort.LOOK_AGAIN,
                "the limit sheet named in this line is not found by its hash",
                Shift.night().sheetLost(),
                Shift.night());
    }

    private static Note note(String tag) {
        return new Note(List.of(tag), "288 to 281", null, null, null, null, null);
    }

    private static Map<String, Object> lift(String thickness) {
        return Map.of(
                "lifts",
                List.of(Shift.map(
                        "number=2 layer=riding-surface thickness_in=" + thickness + " mix=12.5-70A base=asphalt")));
    }

    private static Map<String, Object> pulls(String a, String b) {
        return Map.of("pulls", List.of(pull("A", a), pull("B", b)));
    }

    private static Map<String, Object> pull(String name, String edges) {
        String[] e = edges.split(" ");
        return Shift.map("name=" + name + " lift=2 left_ft=" + e[0] + " right_ft=" + e[1]);
    }

    /** Three loads of 22.31 tons on so many feet of pull B. */
    private static Shift spread(Shift shift, int feet) {
        int third = feet / 3;
        for (int i = 0; i < 3; i++) {
            String from = "%d+%02d".formatted((1200 + i * third) / 100, (1200 + i * third) % 100);
            String to = "%d+%02d".formatted((1200 + (i + 1) * third) / 100, (1200 + (i + 1) * third) % 100);
            shift.load("21:%02d".formatted(10 * i), Integer.toString(1001 + i), "from_sta=" + from + " to_sta=" + to);
        }
        return shift;
    }
}
