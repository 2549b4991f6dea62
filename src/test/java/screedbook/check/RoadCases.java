package screedbook.check;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;

/** The cases of the rules about places. */
final class RoadCases {
    /** A job from 12+00 to 112+00 with two pulls of 12 ft in each lift. */
    static final Map<String, Object> ROAD = Map.of(
            "stationing",
            Map.of("begins_sta", "12+00", "ends_sta", "112+00"),
            "pulls",
            List.of(
                    Shift.map("name=A lift=1 left_ft=-12 right_ft=0"),
                    Shift.map("name=B lift=1 left_ft=0 right_ft=12"),
                    Shift.map("name=A lift=2 left_ft=-12 right_ft=0"),
                    Shift.map("name=B lift=2 left_ft=0 right_ft=12")));

    private RoadCases() {}

    static void add() {
        places();
        earlier();
        areas();
    }

    private static Shift night() {
        return Shift.night(ROAD);
    }

    /** What 2 June laid of pull B, lift 2: 12+00 to 20+00. */
    private static ToDate yesterday() {
        Shift day = Shift.day(LocalDate.of(2026, 6, 2), ROAD)
                .load("08:00", "901", "from_sta=12+00 to_sta=16+00")
                .load("08:10", "902", "from_sta=16+00 to_sta=20+00");
        return ToDate.of(day.day(), day.job());
    }

    private static void places() {
        RuleCases.shifts(
                "station-beyond-job",
                "61",
                Sort.LOOK_AGAIN,
                "ticket: 112+01 lies beyond the job",
                night().load("21:00", "1001", "from_sta=111+00 to_sta=112+01"),
                night().load("21:00", "1001", "from_sta=111+00 to_sta=112+00"));
        RuleCases.shifts(
                "station-beyond-job",
                "61",
                Sort.LOOK_AGAIN,
                "surface: 11+99 lies beyond the job",
                night().at("21:00", "surface surface_degF=70 place_sta=11+99 pull=B lift=2"),
                Shift.night(Map.of()).at("21:00", "surface surface_degF=70 place_sta=11+99 pull=B lift=2"));
        RuleCases.shifts(
                "paved-twice",
                "63",
                Sort.LOOK_AGAIN,
                "B lift 2: 13+94 to 14+00 (6 ft) paved twice, by ticket 1001, ticket 1002",
                night().load("21:00", "1001", "from_sta=12+00 to_sta=14+00")
                        .load("21:10", "1002", "from_sta=13+94 to_sta=16+00"),
                night().load("21:00", "1001", "from_sta=12+00 to_sta=14+00")
                        .load("21:10", "1002", "from_sta=13+95 to_sta=16+00"));
    }

    private static void earlier() {
        RuleCases.shifts(
                "paved-before",
                "62, 63",
                Sort.LOOK_AGAIN,
                "B lift 2: 19+94 to 20+00 (6 ft) was paved in 2026-06-02-day",
                night().after(yesterday()).load("21:00", "1001", "from_sta=19+94 to_sta=21+00"),
                night().after(yesterday()).load("21:00", "1001", "from_sta=19+95 to_sta=21+00"));
        RuleCases.shifts(
                "paved-before",
                "63",
                Sort.LOOK_AGAIN,
                "B lift 2: 13+00 to 15+00 (200 ft) was paved in 2026-06-02-day",
                night().after(yesterday()).load("21:00", "1001", "from_sta=13+00 to_sta=15+00"),
                night().after(yesterday()).load("21:00", "1001", "pull=A from_sta=13+00 to_sta=15+00"));
        RuleCases.shifts(
                "gap-to-last-shift",
                "62",
                Sort.LOOK_AGAIN,
                "B lift 2 begins at 20+06, 2026-06-02-day ended at 20+00: 6 ft between them not paved",
                night().after(yesterday()).load("21:00", "1001", "from_sta=20+06 to_sta=21+00"),
                night().after(yesterday()).load("21:00", "1001", "from_sta=20+05 to_sta=21+00"));
        Map<String, Object> down = new HashMap<>(ROAD);
        down.put("pulls", List.of(Shift.map("name=B lift=2 left_ft=0 right_ft=12 direction=down")));
        RuleCases.shifts(
                "gap-to-last-shift",
                "59, 62",
                Sort.LOOK_AGAIN,
                "B lift 2 begins at 50+00, 2026-06-02-day ended at 20+00: 1000 ft between them not paved",
                Shift.night(down).after(yesterday()).load("21:00", "1001", "from_sta=50+00 to_sta=30+00"),
                Shift.night(down)
                        .after(yesterday())
                        .load("21:00", "1001", "from_sta=50+00 to_sta=30+00")
                        .load("21:10", "1002", "from_sta=30+00 to_sta=20+00"));
    }

    private static final String SHOT = "tack product=CSS-1h surface=milled pull=B lift=2 width_ft=12 from_sta=12+00 ";
    private static final String FACE = "tack product=CSS-1h face=longitudinal-joint pull=B lift=2 from_sta=12+00 ";

    /** A sheet of its own with one row: from 95 to 110 of 100 parts of the paved area are tacked. Invented. */
    private static SpecSheet town() {
        String rows = "id,does,quantity,low,high,unit,rounding,document,edition,clause,known,working\n"
                + "tacked-area,limit,tacked-area,95,110,pct,absolute,contract HC-2026-07,2026,special provision 4,read,"
                + "The area tacked is 95 to 110 % of the area paved.\n";
        return SpecSheet.read("town", rows.getBytes(StandardCharsets.UTF_8))
                .sheet()
                .orElseThrow();
    }

    private static Shift paved() {
        return night().judgedBy(town()).load("21:00", "1001", "from_sta=12+00 to_sta=22+00");
    }

    private static void areas() {
        RuleCases.shifts(
                "tacked-area",
                "77",
                Sort.OUTSIDE,
                "B lift 2: tacked 1468 yd², paved 1333 yd², of the paved area tacked 110.1 %",
                paved().at("20:00", SHOT + "to_sta=23+01"),
                paved().at("20:00", SHOT + "to_sta=23+00"));
        RuleCases.shifts(
                "tacked-area",
                "77",
                Sort.OUTSIDE,
                "tacked 1265 yd², paved 1333 yd², of the paved area tacked 94.9 %",
                paved().at("20:00", SHOT + "to_sta=21+49"),
                paved().at("20:00", SHOT + "to_sta=21+50"));
        RuleCases.shifts(
                "tacked-area",
                "77, 78",
                Sort.OUTSIDE,
                "tacked 1667 yd²",
                paved().at("20:00", SHOT + "to_sta=22+00").at("20:10", SHOT + "to_sta=22+00 width_ft=15"),
                paved().at("20:00", SHOT + "to_sta=22+00").at("20:10", SHOT + "to_sta=22+00"));
        RuleCases.shifts(
                "tacked-area",
                "77",
                Sort.OUTSIDE,
                "tacked 2667 yd²",
                paved().at("20:00", SHOT + "to_sta=32+00"),
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00").at("20:00", SHOT + "to_sta=32+00"));
        RuleCases.shifts(
                "tack-face-length",
                "",
                Sort.MISSING,
                "B lift 2: 51 ft of 1000 ft paved without a tacked face of the longitudinal joint noted for it (5.1 %)",
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00").at("20:00", FACE + "to_sta=21+49"),
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00").at("20:00", FACE + "to_sta=21+50"));
        RuleCases.shifts(
                "tack-face-length",
                "",
                Sort.MISSING,
                "500 ft of 1000 ft paved without a tacked face",
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00")
                        .at("20:00", "joint run=longitudinal pull=B lift=2 from_sta=12+00 to_sta=17+00 tacked=yes"),
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00")
                        .at("20:00", "joint run=longitudinal pull=B lift=2 from_sta=12+00 to_sta=17+00 tacked=yes")
                        .at("20:10", "joint run=longitudinal pull=B lift=2 from_sta=17+00 to_sta=22+00 heat=hot"));
        RuleCases.shifts(
                "tack-face",
                "",
                Sort.MISSING,
                "pull B lift 2: no contact face noted as tacked in this shift",
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00")
                        .at("20:00", "joint run=longitudinal pull=B lift=2 from_sta=12+00 to_sta=22+00 tacked=no"),
                night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00")
                        .at("20:00", "joint run=longitudinal pull=B lift=2 from_sta=12+00 to_sta=22+00 tacked=yes"));
        RuleCases.shifts(
                "area-overlap",
                "67",
                Sort.DOES_NOT_ADD_UP,
                "B lift 2: parts lie over one another from 14+90 to 15+00 (10 ft), both are in the area",
                wide("14+90"),
                wide("15+00"));
    }

    private static Shift wide(String from) {
        return night().load("21:00", "1001", "from_sta=12+00 to_sta=22+00")
                .at(
                        "21:05",
                        "area shape=taper pull=B lift=2 from_sta=14+00 to_sta=15+00 width_from_ft=12 width_to_ft=24")
                .at("21:06", "area shape=strip pull=B lift=2 from_sta=" + from + " to_sta=17+00 width_from_ft=24");
    }
}
