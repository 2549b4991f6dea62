package screedbook.demo;

import screedbook.entry.Kind;

/** What is looked at of the mat on the first night at Tanager Flats: its heat, rolling, joints, thickness, one stop. */
final class TanagerMat {
    private final Pen pen;
    private final LookedAt looks;

    TanagerMat(Pen pen, LookedAt looks) {
        this.pen = pen;
        this.looks = looks;
    }

    void depth(String clock, String inches, String state, double behind, String action) {
        looks.put(
                clock,
                Kind.DEPTH,
                "thickness_in",
                inches,
                "state",
                state,
                "place_sta",
                looks.at(clock, behind),
                "from_left_ft",
                "4.0",
                "pull",
                "A",
                "lift",
                "1",
                "action",
                action);
    }

    void stop() {
        looks.put(
                "23:41",
                Kind.STOP,
                "cause",
                "no-trucks",
                "text",
                "a truck with a flat tire at the pit's gate, the others behind it",
                "place_sta",
                looks.at("23:41", 0),
                "pull",
                "A",
                "lift",
                "1",
                "paver",
                "P1",
                "waiting",
                "0");
        pen.put(
                "restart",
                "00:08",
                () -> Keyed.of(
                        Kind.RESTART,
                        "of",
                        pen.ref("stop 23:41").toString(),
                        "place_sta",
                        looks.at("00:08", 0),
                        "joint",
                        "no",
                        "action",
                        "mat at the screed 248, within what could be rolled; looked at again with the profile"));
    }

    void mat() {
        looks.mat("21:40", "287", "behind-screed", 15);
        looks.mat("21:52", "262", "rolling-begins", 120);
        looks.mat("22:24", "186", "rolling-ends", 700);
        looks.mat("23:20", "284", "behind-screed", 15);
        looks.mat("00:14", "249", "behind-screed", 20);
        looks.mat("00:44", "182", "rolling-ends", 500);
        looks.mat("02:10", "286", "behind-screed", 15);
        looks.mat("02:40", "171", "rolling-ends", 700);
        looks.profile("22:20", 288, 274, "1", "PO", null, null);
        looks.profile(
                "00:12", 284, 229, "2", "PO", "paver stopped 27 min", "joint area rolled first; density taken there");
        looks.profile("03:36", 287, 256, "3", "PO", "cold corner of a truck bed", "hopper wings left open");
        looks.put(
                "22:04",
                Kind.ROLLING,
                "roller",
                "R1",
                "task",
                "breakdown",
                "drums",
                "vibratory",
                "passes",
                "5",
                "mat_begins_degF",
                "262",
                "mat_ends_degF",
                "221",
                "speed_mph",
                "2.8",
                "vibrations",
                "3000",
                "drum_width_ft",
                "5.5",
                "pull",
                "A",
                "lift",
                "1",
                "pattern",
                "control strip of 9 July");
        looks.put(
                "22:12",
                Kind.ROLLING,
                "roller",
                "R3",
                "task",
                "finish",
                "drums",
                "static",
                "passes",
                "3",
                "mat_begins_degF",
                "204",
                "mat_ends_degF",
                "178",
                "speed_mph",
                "3.1",
                "drum_width_ft",
                "5.5",
                "pull",
                "A",
                "lift",
                "1",
                "pattern",
                "control strip of 9 July");
        joint("21:34", "transverse", "butt", "20+00", null, "cold", "yes", null, "0.10");
        joint("01:10", "longitudinal", "notched-wedge", "20+00", "80+00", "cold", null, "0.1", null);
        straightedge("21:58", "0.12", "over-joint", "20+00", null);
        straightedge("23:50", "0.09", "along", looks.at("23:50", 900), null);
        straightedge("00:36", "0.25", "over-joint", looks.at("00:08", 0), "rolled across while hot, 0.14 after");
        looks.put(
                "04:10",
                Kind.AREA,
                "shape",
                "taper",
                "from_sta",
                "20+00",
                "to_sta",
                "21+00",
                "width_from_ft",
                "0.0",
                "width_to_ft",
                "6.0",
                "counts",
                "beside",
                "pull",
                "A",
                "lift",
                "1",
                "basis",
                "tape, widening at the farm road");
    }

    void joint(
            String clock,
            String run,
            String shape,
            String from,
            String to,
            String heat,
            String tacked,
            String laneLine,
            String higher) {
        looks.put(
                clock,
                Kind.JOINT,
                "run",
                run,
                "shape",
                shape,
                "from_sta",
                from,
                "to_sta",
                to,
                "pull",
                "A",
                "lift",
                "1",
                "heat",
                heat,
                "tacked",
                tacked,
                "lane_line_ft",
                laneLine,
                "higher_in",
                higher);
    }

    private void straightedge(String clock, String gap, String laid, String place, String action) {
        looks.put(
                clock,
                Kind.STRAIGHTEDGE,
                "gap_in",
                gap,
                "edge_length_ft",
                "10.0",
                "laid",
                laid,
                "place_sta",
                place,
                "pull",
                "A",
                "lift",
                "1",
                "instrument",
                "SE-10",
                "action",
                action);
    }
}
