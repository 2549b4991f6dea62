package screedbook.check;

import java.util.HashMap;
import java.util.Map;

/**
 * The rules about mat, rollers, joints, stops and instruments, each with a shift that raises it and one that just does
 * not. The limits are those of the shipped sheets, whose sources stand in the published tables.
 */
final class SiteCases {
    private static final Map<String, Object> WSDOT = Map.of("sheet", "wsdot-5-04");
    private static final Map<String, Object> HAMPSHIRE = Map.of("sheet", "joints-new-hampshire-401");
    private static final Map<String, Object> CAMERA = Map.of("thermal", "handheld-camera");
    private static final Map<String, Object> ALLOWED =
            Map.of("checks", Shift.map("stop_at_most_min=20 thermometer_off_dF=2 source=plan~sheet~3"));

    private static final Map<String, Object> INVENTED = Map.of(
            "sheet",
            "practice-0a0b0c0d",
            "mixes",
            java.util.List.of(Shift.map("name=12.5-70A nmas_mm=12.5 binder=70-22 target_paver_degF=300")));

    private SiteCases() {}

    static void add() {
        profiles();
        sublots();
        mat();
        rolling();
        joints();
        straightedge();
        stops();
        instruments();
    }

    private static void one(
            String rule, Sort sort, String seen, Map<String, Object> job, String raising, String quiet) {
        RuleCases.shifts(
                rule,
                "",
                sort,
                seen,
                Shift.night(job).at("21:00", raising),
                Shift.night(job).at("21:00", quiet));
    }

    /** Common practice: at most 10 at a look with a handheld camera; 25 and 50 are the ends of the classes. */
    private static void profiles() {
        String run = "profile from_sta=15+00 to_sta=16+50 pull=B lift=2 method=camera ";
        one(
                "profile-range",
                Sort.OUTSIDE,
                "15+00 to 16+50: 298 and 287 differ by 11",
                CAMERA,
                run + "hottest_degF=298 coldest_degF=287",
                run + "hottest_degF=298 coldest_degF=288");
        one(
                "profile-class",
                Sort.LOOK_AGAIN,
                "298 and 272 differ by 26 °F, moderate",
                Map.of(),
                run + "hottest_degF=298 coldest_degF=272",
                run + "hottest_degF=298 coldest_degF=273");
        one(
                "profile-class",
                Sort.LOOK_AGAIN,
                "298 and 247 differ by 51 °F, severe",
                Map.of(),
                run + "hottest_degF=298 coldest_degF=247",
                run + "hottest_degF=298");
        one(
                "profile-below-target",
                Sort.OUTSIDE,
                "coldest 249, below the target by 51",
                INVENTED,
                run + "hottest_degF=298 coldest_degF=249",
                run + "hottest_degF=298 coldest_degF=250");
        one(
                "profile-upside-down",
                Sort.DOES_NOT_ADD_UP,
                "hottest 261 °F, coldest 298 °F",
                Map.of(),
                run + "hottest_degF=261 coldest_degF=298",
                run + "hottest_degF=298 coldest_degF=298");
        one(
                "profile-witness",
                Sort.MISSING,
                "witness: not noted",
                CAMERA,
                run + "hottest_degF=298 coldest_degF=290",
                run + "hottest_degF=298 coldest_degF=290 witness=JD");
        one(
                "profile-action",
                Sort.MISSING,
                "298 and 247 differ by 51 °F, action: not noted",
                Map.of(),
                run + "hottest_degF=298 coldest_degF=247",
                run + "hottest_degF=298 coldest_degF=247 action=stopped,~remixed");
    }

    /** Common practice: each sublot needs a look with a handheld camera. Two loads fill a sublot of 40 T. */
    private static void sublots() {
        Map<String, Object> cut = new HashMap<>(CAMERA);
        cut.put("lots", Shift.map("lot_ston=80 sublot_ston=40 ends=nearest-ticket overnight=carry"));
        RuleCases.shifts(
                "uncompacted-sublot",
                "",
                Sort.MISSING,
                "lot 1 of 12.5-70A, sublot 2: no thermal profile names it",
                loads(cut).at("21:45", "profile lot=1 sublot=1"),
                loads(cut).at("21:45", "profile lot=1 sublot=1").at("22:05", "profile sublot=2"));
    }

    private static Shift loads(Map<String, Object> job) {
        return Shift.night(job)
                .load("21:00", "1001", "")
                .load("21:10", "1002", "")
                .load("21:20", "1003", "")
                .load("21:30", "1004", "");
    }

    private static void mat() {
        one(
                "mat-behind-screed",
                Sort.OUTSIDE,
                "behind the screed 259",
                INVENTED,
                "mat mat_degF=259 taken=behind-screed pull=B lift=2",
                "mat mat_degF=259 taken=rolling-begins pull=B lift=2");
        one(
                "mat-unusual",
                Sort.LOOK_AGAIN,
                "mat 29 °F",
                Map.of(),
                "mat mat_degF=29 taken=behind-screed",
                "mat mat_degF=140 taken=rolling-ends");
        one(
                "mat-unusual",
                Sort.LOOK_AGAIN,
                "hottest 351 °F",
                Map.of(),
                "profile hottest_degF=351 coldest_degF=340",
                "mat mat_degF=120 taken=before-traffic");
    }

    /** WSDOT 5-04.3(10)A: below 175 static only. 175 as the usual end: Pavement Interactive. Speeds: the handbook copy. */
    private static void rolling() {
        String roller = "rolling roller=R1 pull=B lift=2 passes=4 ";
        one(
                "rolling-ends-cold",
                Sort.LOOK_AGAIN,
                "roller R1 ended at 174",
                Map.of(),
                roller + "task=breakdown mat_ends_degF=174",
                roller + "task=finish mat_ends_degF=140");
        one(
                "rolling-ends-cold",
                Sort.LOOK_AGAIN,
                "rolling ended at 160",
                Map.of(),
                "mat mat_degF=160 taken=rolling-ends",
                "mat mat_degF=175 taken=rolling-ends");
        one(
                "rolling-ends-cold",
                Sort.LOOK_AGAIN,
                "rolling ended at 159",
                Map.of("roll_until", PlannedJob.object("mat_degF", "160", "source", "test strip")),
                "mat mat_degF=159 taken=rolling-ends",
                "mat mat_degF=160 taken=rolling-ends");
        one(
                "rolling-vibrated-cold",
                Sort.OUTSIDE,
                "roller R1 vibrated to 174",
                WSDOT,
                roller + "drums=vibratory mat_ends_degF=174",
                roller + "drums=static mat_ends_degF=174");
        one(
                "rolling-last-heat",
                Sort.MISSING,
                "roller R1 began at 280 °F, mat at last: not noted",
                Map.of(),
                roller + "task=breakdown mat_begins_degF=280",
                roller + "task=breakdown mat_begins_degF=280 mat_ends_degF=200");
        one(
                "roller-speed",
                Sort.LOOK_AGAIN,
                "roller R1 4 mph",
                Map.of(),
                roller + "drums=vibratory speed_mph=4",
                roller + "drums=vibratory speed_mph=3.5");
    }

    private static void joints() {
        String joint = "joint run=longitudinal from_sta=12+00 to_sta=18+00 pull=B lift=2 ";
        one(
                "joint-face-tacked",
                Sort.OUTSIDE,
                "joint 12+00 to 18+00: face not tacked",
                Map.of(),
                joint + "heat=cold tacked=no",
                joint + "heat=hot tacked=no");
        one(
                "joint-face-tacked",
                Sort.MISSING,
                "face tacked or not: not noted",
                Map.of(),
                joint + "heat=cold",
                joint + "heat=cold tacked=yes");
        one(
                "joint-offset",
                Sort.OUTSIDE,
                "joint 12+00 to 18+00: offset from the one below 7",
                WSDOT,
                joint + "below_in=7",
                joint + "below_in=6");
        one(
                "joint-from-line",
                Sort.LOOK_AGAIN,
                "from the lane line 0.6 ft",
                HAMPSHIRE,
                joint + "lane_line_ft=-0.6",
                joint + "lane_line_ft=-0.5");
        one(
                "joint-higher",
                Sort.OUTSIDE,
                "new side higher by 0.375",
                INVENTED,
                joint + "higher_in=0.375",
                joint + "higher_in=0.25");
        one(
                "joint-notch",
                Sort.OUTSIDE,
                "vertical edge 1.1 in, of the lift 55.0 %",
                WSDOT,
                joint + "notch_in=1.1",
                joint + "notch_in=1.0");
        one(
                "joint-slope",
                Sort.OUTSIDE,
                "wedge, across for one down 3",
                WSDOT,
                joint + "slope_times=3",
                joint + "slope_times=4");
        one(
                "joint-slope",
                Sort.OUTSIDE,
                "joint 18+00: wedge, across for one down 12",
                WSDOT,
                "joint run=transverse from_sta=18+00 lift=2 slope_times=12",
                "joint run=transverse from_sta=18+00 lift=2 slope_times=20");
        one("joint-overlap", Sort.OUTSIDE, "overlap 2.5", HAMPSHIRE, joint + "overlap_in=2.5", joint + "overlap_in=2");
    }

    private static void straightedge() {
        String edge = "straightedge place_sta=15+00 pull=B lift=2 laid=along ";
        one(
                "straightedge-gap",
                Sort.OUTSIDE,
                "gap along at 15+00 0.188",
                WSDOT,
                edge + "edge_length_ft=10 gap_in=0.1875",
                edge + "edge_length_ft=10 gap_in=0.125");
        one(
                "straightedge-gap",
                Sort.OUTSIDE,
                "gap over joint at 18+00 0.25",
                HAMPSHIRE,
                "straightedge place_sta=18+00 laid=over-joint edge_length_ft=10 gap_in=0.25",
                "straightedge place_sta=18+00 laid=over-joint edge_length_ft=12 gap_in=0.25");
        one(
                "straightedge-length",
                Sort.LOOK_AGAIN,
                "under an edge whose length is 12 ft",
                WSDOT,
                edge + "edge_length_ft=12 gap_in=0.1",
                edge + "edge_length_ft=10 gap_in=0.1");
    }

    private static void stops() {
        RuleCases.shifts(
                "stop-long",
                "",
                Sort.OUTSIDE,
                "the paver stood for 21 min, 3 waiting",
                Shift.night(ALLOWED)
                        .at("21:00", "stop cause=no-trucks waiting=3")
                        .at("21:21", "restart of=paver/4"),
                Shift.night(ALLOWED)
                        .at("21:00", "stop cause=no-trucks waiting=3")
                        .at("21:20", "restart of=paver/4"));
        RuleCases.shifts(
                "stop-long",
                "",
                Sort.OUTSIDE,
                "the paver stood for 25 min",
                Shift.night(ALLOWED).at("21:30", "stop cause=rain ended=21:55"),
                Shift.night(Map.of()).at("21:30", "stop cause=rain ended=23:55"));
        RuleCases.shifts(
                "stop-without-end",
                "",
                Sort.MISSING,
                "the paver stopped 21:00, its restart: not noted",
                Shift.night().at("21:00", "stop cause=plant").at("22:00", "closing agreed=yes"),
                Shift.night().at("21:00", "stop cause=plant"));
        RuleCases.shifts(
                "stop-times",
                "",
                Sort.DOES_NOT_ADD_UP,
                "stopped 21:00, went on 20:50",
                Shift.night().at("21:00", "stop cause=plant ended=20:50"),
                Shift.night().at("21:00", "stop cause=plant ended=21:00"));
        RuleCases.shifts(
                "restart-without-stop",
                "",
                Sort.DOES_NOT_ADD_UP,
                "the paver goes on after paver/3, no stop that stands",
                Shift.night().at("21:00", "stop cause=plant").at("21:10", "restart of=paver/3"),
                Shift.night().at("21:00", "stop cause=plant").at("21:10", "restart of=paver/4"));
        one(
                "safety-action",
                Sort.MISSING,
                "what was done: not noted",
                Map.of(),
                "safety text=spotter~behind~a~truck about=reversing",
                "safety text=spotter~behind~a~truck about=reversing action=moved~to~the~shoulder");
    }

    private static void instruments() {
        one(
                "instrument-off",
                Sort.OUTSIDE,
                "instrument T1 shows 35 °F at 32 °F",
                ALLOWED,
                "instrument instrument=T1 against=ice-bath shows_degF=35",
                "instrument instrument=T1 against=ice-bath shows_degF=34");
        one(
                "instrument-off",
                Sort.OUTSIDE,
                "instrument T1 shows 280 °F at 283 °F",
                ALLOWED,
                "instrument instrument=T1 against=other-instrument shows_degF=280 known_degF=283",
                "instrument instrument=T1 against=boiling-water shows_degF=200");
        Map<String, Object> overdue = Map.of("instruments", java.util.List.of(Map.of("id", "T1", "due", "2026-06-01")));
        RuleCases.shifts(
                "instrument-due",
                "",
                Sort.OUTSIDE,
                "instrument T1 used on 2026-06-03, its check was due 2026-06-01",
                Shift.night(overdue).at("21:10", "mat mat_degF=280 instrument=T1"),
                Shift.night(overdue)
                        .at("21:00", "instrument instrument=T1 fit=yes")
                        .at("21:10", "mat mat_degF=280 instrument=T1"));
        RuleCases.shifts(
                "instrument-not-fit",
                "",
                Sort.LOOK_AGAIN,
                "instrument T1 not fit at its check, then read with: mat temperature at 21:10",
                Shift.night(new HashMap<>())
                        .at("21:00", "instrument instrument=T1 fit=no")
                        .at("21:10", "mat mat_degF=280 instrument=T1"),
                Shift.night(new HashMap<>())
                        .at("21:00", "instrument instrument=T1 fit=no")
                        .at("21:05", "instrument instrument=T1 fit=yes")
                        .at("21:10", "mat mat_degF=280 instrument=T1"));
    }
}
