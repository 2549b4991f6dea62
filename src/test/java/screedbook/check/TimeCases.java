package screedbook.check;

/** The cases of the rules about clocks and times. */
final class TimeCases {
    private TimeCases() {}

    static void add() {
        RuleCases.rule(
                "times-order",
                "14",
                Sort.DOES_NOT_ADD_UP,
                "loaded 20:10, arrived 21:05, discharged 21:00",
                s -> s.load("21:00", "1001", "loaded=20:10 arrived=21:05"),
                s -> s.load("21:00", "1001", "loaded=20:10 arrived=21:00"));
        RuleCases.rule(
                "times-order",
                "2",
                Sort.DOES_NOT_ADD_UP,
                "loaded 00:26, arrived 00:25, discharged 00:30",
                s -> s.load("00:30", "1001", "loaded=00:26 arrived=00:25"),
                s -> s.load("00:30", "1001", "loaded=23:58 arrived=00:25"));
        RuleCases.rule(
                "ahead-of-clock",
                "13",
                Sort.LOOK_AGAIN,
                "happened 21:16, keyed 21:00, apart 16 min",
                s -> s.keyed("21:16", "21:00", "note text=rain"),
                s -> s.keyed("21:15", "21:00", "note text=rain"));
        RuleCases.rule(
                "keyed-after",
                "12",
                Sort.LOOK_AGAIN,
                "happened 21:00, keyed 22:01, apart 61 min",
                s -> s.keyed("21:00", "22:01", "note text=rain"),
                s -> s.keyed("21:00", "22:00", "note text=rain"));
        RuleCases.rule(
                "clock-back",
                "8",
                Sort.LOOK_AGAIN,
                "line 4 keyed 21:10, line 5 keyed 21:00",
                s -> s.keyed("", "21:10", "note text=a").keyed("", "21:00", "note text=b"),
                s -> s.keyed("", "21:00", "note text=a").keyed("", "21:00", "note text=b"));
        RuleCases.rule(
                "clock-changed",
                "7",
                Sort.LOOK_AGAIN,
                "the laptop's clock went from 18:20 to 21:00",
                s -> s.at("21:00", "clock was=18:20 now=21:00"),
                s -> s.at("21:00", "note text=a"));
        RuleCases.shifts(
                "zone-differs",
                "6",
                Sort.LOOK_AGAIN,
                "the laptop's zone is America/Chicago, the job's America/Denver",
                Shift.unopened().at("19:30", "opening zone=America/Denver laptop_zone=America/Chicago"),
                Shift.unopened().at("19:30", "opening zone=America/Denver laptop_zone=America/Denver"));
        RuleCases.shifts(
                "opened-on-other-date",
                "11",
                Sort.LOOK_AGAIN,
                "shift 2026-06-03-night was opened on 2026-06-04",
                Shift.unopened().at("00:10", "opening zone=America/Denver"),
                Shift.unopened().at("23:50", "opening zone=America/Denver").at("00:10", "note text=a"));
        RuleCases.rule(
                "shift-length",
                "18",
                Sort.LOOK_AGAIN,
                "opened 19:30, last line 13:31, between 1081 min",
                s -> s.keyed("", "13:31", "note text=a"),
                s -> s.keyed("", "13:30", "note text=a"));
        RuleCases.rule(
                "no-work-and-loads",
                "16",
                Sort.DOES_NOT_ADD_UP,
                "no work noted, and 1 load placed",
                s -> s.at("20:00", "no-work why=rain").load("21:00", "1001", ""),
                s -> s.at("20:00", "no-work why=rain").load("21:00", "1001", "fate=rejected"));
    }
}
