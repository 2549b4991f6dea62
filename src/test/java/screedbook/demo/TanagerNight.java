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
    static final double START = 2000;

    private final Scene scene;
    private final Pen pen;
    private final LookedAt looks;
    private final TanagerMat mat;
    private final TanagerCores cores;
    private Paving paving;

    TanagerNight(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "MV");
        this.looks = new LookedAt(scene, pen, START);
        this.mat = new TanagerMat(pen, looks);
        this.cores = new TanagerCores(pen, looks);
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
        mat.stop();
        mat.mat();
        cores.density();
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
        mat.depth("21:50", "2.50", "loose", 60, null);
        mat.depth("22:30", "2.05", "compacted", 400, null);
        mat.depth("00:50", "2.44", "loose", 60, null);
        mat.depth("01:30", "1.66", "compacted", 400, "screed told, up a quarter turn");
        mat.depth("03:10", "2.02", "compacted", 400, null);
    }

    private void end() {
        Loaded last = paving.loads().get(paving.loads().size() - 1);
        OffsetDateTime at = last.trip.discharged();
        new NightCrew(scene, pen).ends(Moment.clock(at.plusMinutes(4)), "K11 K12 K14 K17 K19 K20 K23 K26");
        mat.joint(
                Moment.clock(at.plusMinutes(24)), "transverse", "butt", last.to.text(), null, "hot", "no", null, null);
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
        cores.hand(Moment.clock(at.plusMinutes(34)), "TF-1-1", "66411");
        cores.hand(Moment.clock(at.plusMinutes(35)), "TF-1-2", "66421");
        cores.hand(Moment.clock(at.plusMinutes(36)), "TF-C-1", "66431");
        cores.hand(Moment.clock(at.plusMinutes(37)), "TF-C-3", "66433");
        pen.put(
                null,
                at.plusMinutes(52),
                pen.lag(),
                opened(131, paving.feet() - 100, "A", "Lane left open to traffic"),
                Aside.NONE);
        scene.closes(pen, Moment.clock(at.plusMinutes(64)), scene.by("Pia Ostler"), "403.12", null, YesNo.YES);
    }
}
