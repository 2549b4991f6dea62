package screedbook.demo;

import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.opened;
import static screedbook.demo.Seen.surface;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import java.time.OffsetDateTime;
import screedbook.entry.Aside;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Surface.Light;
import screedbook.entry.Tack;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;

/** Tuesday 14 July into Wednesday: pull A from station 20+00, with all that is looked at in a night. */
final class TanagerNight {
    private static final double START = 2000;

    private final Scene scene;
    private final Pen pen;
    private final LookedAt looks;
    private Paving paving;

    TanagerNight(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "MV");
        this.looks = new LookedAt(scene, pen, START);
    }

    /** @return feet along the line where the night joint is */
    double write() throws IOException {
        scene.opens(pen, "20:05");
        new NightCrew(scene, pen).begins(2874);
        start();
        tack();
        paving = paving();
        looks.laid(paving);
        pen.reached((draw, told) -> looks.sampled(draw, told, "MV", 6, n -> 66410 + n));
        looks();
        stop();
        mat();
        density();
        end();
        pen.write();
        scene.page();
        return paving.feet();
    }

    private void start() {
        pen.put("20:10", weather(78, 31, 5, Compass.SW, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put(
                "20:12",
                note("Signs, cones and flaggers from 15+00 to 245+00 as in the plan", "traffic control walked"));
        pen.put("20:50", note("Lane left of the centreline, 20+00 to 130+00", "lane closed"));
        pen.put("20:52", surface(84, 2010, "A", 1, Light.NIGHT, "IR-5"));
        pen.put(
                "20:54",
                Keyed.of(
                        Kind.SAFETY,
                        "text",
                        "Flagger at 15+00 stood between the lanes without a lit wand",
                        "about",
                        "light",
                        "location",
                        "15+00",
                        "told_to",
                        "Pia Ostler",
                        "action",
                        "wand brought from the signs' truck, place moved to the shoulder"));
        pen.put("23:10", weather(70, 40, 4, Compass.SW, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("02:20", weather(64, 48, 2, Compass.VARIABLE, Sky.FEW, Precipitation.NONE, Road.DRY));
    }

    private void tack() {
        Sprayer d5 = scene.sprayer("D5", 1480, "BP-0718");
        shot(d5, "20:56", 20, 52, 0.040, 142, "21:24");
        shot(d5, "22:36", 52, 84, 0.042, 138, "23:02");
        shot(d5, "00:30", 84, 120, 0.039, 136, "01:04");
        face("21:02", Tack.Face.TRANSVERSE_JOINT, 20, 20, "0.5", "21:24");
        pen.put(
                "tack sample",
                pen.at("21:10"),
                pen.lag(),
                Keyed.of(
                        Kind.SAMPLE,
                        "sample",
                        "TF-T1",
                        "material",
                        "tack",
                        "purpose",
                        "acceptance",
                        "at_random",
                        "no",
                        "taken_by",
                        "MV",
                        "place_sta",
                        "20+00",
                        "pull",
                        "A",
                        "lift",
                        "1",
                        "seal_number",
                        "66401",
                        "container",
                        "plastic jar, 1 qt"),
                Aside.NONE);
    }

    private void shot(Sprayer d5, String clock, int from, int to, double residual, int warm, String broken) {
        String sample = from == 20 ? "TF-T1" : null;
        Tack.After after = new Tack.After(pen.at(broken), YesNo.NO, sample, sample == null ? null : "66401", null);
        Sprayer.Run run = new Sprayer.Run(Tack.Under.EXISTING, from * 100.0, to * 100.0, 12.0, "A", 1);
        Tack tack = d5.shot(scene.product("CQS-1h"), run, residual, warm, 0, null, after);
        pen.put("tack " + from, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    private void face(String clock, Tack.Face face, int from, int to, String gallons, String broken) {
        Tack tack = Sprayer.face(
                scene.product("CQS-1h"), "D5", face, from * 100, to * 100, "A", 1, gallons, 140, pen.at(broken));
        pen.put(null, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    private Paving paving() {
        Haul.Way way = new Haul.Way("Basin Pit", 18, 232, 302, 0.17, 21.4, 22.9);
        Haul haul = new Haul(
                scene.random,
                way,
                scene.trucks("K11", "K12", "K14", "K17", "K19", "K20", "K23", "K26"),
                pen.at("21:06"),
                pen.at("21:32"));
        haul.stop(pen.at("23:41"), pen.at("00:08"));
        Mat mat = scene.mat("A", 1, 1.006, START);
        Paving laid = new Paving(
                scene.random,
                pen,
                haul,
                mat,
                "Basin Pit",
                "12.5-70A",
                true,
                scene.numbers().own());
        laid.lay(66);
        return laid;
    }

    private void looks() {
        pen.put("22:50", surface(77, paving.ahead(pen.at("22:50")), "A", 1, Light.NIGHT, "IR-5"));
        pen.put("00:40", surface(72, paving.ahead(pen.at("00:40")), "A", 1, Light.NIGHT, "IR-5"));
        pen.put("02:25", surface(69, paving.ahead(pen.at("02:25")), "A", 1, Light.NIGHT, "IR-5"));
        looks.spread("23:30", 0, 21);
        looks.spread("01:44", 22, 43);
        looks.spread("03:52", 44, 65);
        depth("21:50", "2.50", "loose", 60, null);
        depth("22:30", "2.05", "compacted", 400, null);
        depth("00:50", "2.44", "loose", 60, null);
        depth("01:30", "1.66", "compacted", 400, "screed told, up a quarter turn");
        depth("03:10", "2.02", "compacted", 400, null);
    }

    private void depth(String clock, String inches, String state, double behind, String action) {
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

    private void stop() {
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

    private void mat() {
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

    private void joint(
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

    private void density() {
        looks.put(
                "20:19",
                Kind.INSTRUMENT,
                "instrument",
                "NG-1",
                "against",
                "cores",
                "correlated_mix",
                "12.5-70A",
                "correlation_lb_ft3",
                "2.1",
                "spread_lb_ft3",
                "0.5",
                "fit",
                "yes",
                "secured",
                "locked case, chained to the locked truck bed");
        looks.gauge("22:42", "142.1", "141.7", "4.0", "1", "MV", "DG-118");
        looks.gauge("22:48", "141.2", "141.9", "9.5", "1", "MV", "DG-118");
        looks.gauge("00:56", "136.4", "136.9", "6.0", "2", "MV", "DG-118");
        looks.gauge("01:02", "141.6", "142.0", "3.5", "2", "MV", "DG-118");
        looks.gauge("03:56", "142.4", "142.2", "8.0", "3", "MV", "DG-118");
        looks.gauge("04:02", "140.9", "141.4", "5.0", "3", "MV", "DG-118");
        core("03:20", "C-1", 1500, "5.0", "2.08", "1", null, null, null);
        core("03:34", "C-2", 4000, "7.5", "1.94", "2", "58+00", "9.0", "manhole frame at the mark");
        core("03:48", "C-3", 7000, "4.0", "2.11", "3", null, null, null);
    }

    private void core(
            String clock,
            String number,
            double on,
            String left,
            String height,
            String sublot,
            String markedAt,
            String markedLeft,
            String why) {
        looks.put(
                clock,
                Kind.CORE,
                "core",
                number,
                "diameter_in",
                "6.00",
                "taken_by",
                "PO",
                "witness",
                "MV",
                "filled",
                "yes",
                "place_sta",
                Mat.station(START + on).text(),
                "from_left_ft",
                left,
                "pull",
                "A",
                "lift",
                "1",
                "mix",
                "12.5-70A",
                "lot",
                "1",
                "sublot",
                sublot,
                "at_random",
                "yes",
                "marked_at_sta",
                markedAt,
                "marked_left_ft",
                markedLeft,
                "why",
                why,
                "height_in",
                height,
                "sample",
                "TF-" + number);
        looks.put(
                Moment.clock(pen.at(clock).plusMinutes(6)),
                Kind.SAMPLE,
                "sample",
                "TF-" + number,
                "material",
                "core",
                "purpose",
                "acceptance",
                "at_random",
                "yes",
                "taken_by",
                "PO",
                "witness",
                "MV",
                "place_sta",
                Mat.station(START + on).text(),
                "from_left_ft",
                left,
                "pull",
                "A",
                "lift",
                "1",
                "mix",
                "12.5-70A",
                "lot",
                "1",
                "sublot",
                sublot,
                "seal_number",
                "664" + (30 + Integer.parseInt(sublot)),
                "container",
                "core tube");
    }

    private void end() {
        Loaded last = paving.loads().get(paving.loads().size() - 1);
        OffsetDateTime at = last.trip.discharged();
        new NightCrew(scene, pen).ends(Moment.clock(at.plusMinutes(4)), "K11 K12 K14 K17 K19 K20 K23 K26");
        joint(Moment.clock(at.plusMinutes(24)), "transverse", "butt", last.to.text(), null, "hot", "no", null, null);
        looks.put(
                Moment.clock(at.plusMinutes(30)),
                Kind.PLANT_TOTAL,
                "plant",
                "Basin Pit",
                "mix",
                "12.5-70A",
                "loads",
                "66",
                "tons_ston",
                scene.tons(paving.loads()),
                "first_ticket",
                paving.loads().get(0).number,
                "last_ticket",
                last.number,
                "told_by",
                "pit's scale house, by telephone");
        hand(Moment.clock(at.plusMinutes(34)), "TF-1-1", "66411");
        hand(Moment.clock(at.plusMinutes(35)), "TF-1-2", "66421");
        hand(Moment.clock(at.plusMinutes(36)), "TF-C-1", "66431");
        hand(Moment.clock(at.plusMinutes(37)), "TF-C-3", "66433");
        pen.put(
                null,
                at.plusMinutes(52),
                pen.lag(),
                opened(131, paving.feet() - 100, "A", "Lane left open to traffic"),
                Aside.NONE);
        scene.closes(pen, Moment.clock(at.plusMinutes(64)), scene.by("Pia Ostler"), "403.12", null, YesNo.YES);
    }

    /** The sample goes to the laboratory's driver; one seal is read otherwise than it was written. */
    private void hand(String clock, String sample, String seal) {
        looks.put(
                clock,
                Kind.CUSTODY,
                "sample",
                sample,
                "given_by",
                sample.contains("C") ? "PO" : "MV",
                "taken_by",
                "GR",
                "seal_number",
                seal,
                "whole",
                "yes",
                "condition",
                "dry, labelled",
                "location",
                "trailer at 18+00");
    }
}
