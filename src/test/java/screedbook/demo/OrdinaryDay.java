package screedbook.demo;

import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.opened;
import static screedbook.demo.Seen.said;
import static screedbook.demo.Seen.surface;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import screedbook.entry.Aside;
import screedbook.entry.Surface.Light;
import screedbook.entry.Tack;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Tuesday 12 May: lift 1, pull A, the whole length, on the milled surface. */
final class OrdinaryDay {
    private final Scene scene;
    private final Pen pen;

    OrdinaryDay(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "RK");
    }

    void write() throws IOException {
        scene.opens(pen, "06:04");
        start();
        tack();
        weathers();
        readings(paving());
        end();
        pen.write();
        scene.page();
    }

    private void start() {
        pen.put("06:10", weather(44, 58, 4, Compass.W, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("06:16", note("Signs and flaggers at 8+00 and 116+00 as in the plan", "traffic control walked"));
        pen.put("06:20", note("Lane left of the centreline, 12+00 to 112+00", "lane closed"));
        pen.put("06:24", note("Milled surface swept, dry; one loose spot at 41+20 cut out and filled", "surface"));
    }

    /** Five shots of D7 ahead of the paver, the transverse joint by hand. */
    private void tack() {
        Sprayer d7 = scene.sprayer("D7", 46.5, "SC-2204");
        shot(d7, "06:34", 12, 34, 0.049, 128, "07:02", "TS-1", "40117");
        shot(d7, "08:12", 34, 56, 0.052, 131, "08:40", null, null);
        shot(d7, "09:58", 56, 76, 0.0635, 133, "10:22", null, null);
        shot(d7, "11:30", 76, 96, 0.051, 130, "11:52", null, null);
        shot(d7, "13:22", 96, 112, 0.048, 132, "13:42", null, null);
        Tack joint = Sprayer.face(
                scene.product("CSS-1h"),
                "D7",
                Tack.Face.TRANSVERSE_JOINT,
                1200,
                1200,
                "A",
                1,
                "0.5",
                128,
                pen.at("07:02"));
        pen.put("06:41", joint);
    }

    private void shot(
            Sprayer d7,
            String clock,
            int from,
            int to,
            double residual,
            int warm,
            String broken,
            String sample,
            String seal) {
        Tack.After after = new Tack.After(pen.at(broken), YesNo.NO, sample, seal, null);
        Sprayer.Run run = new Sprayer.Run(Tack.Under.MILLED, from * 100.0, to * 100.0, 12.5, "A", 1);
        Tack tack = d7.shot(scene.product("CSS-1h"), run, residual, warm, 0, null, after);
        pen.put("tack " + from, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    private void weathers() {
        pen.put("09:36", weather(57, 41, 6, Compass.W, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("13:05", weather(68, 29, 9, Compass.SW, Sky.FEW, Precipitation.NONE, Road.DRY));
        pen.put("15:30", weather(71, 27, 12, Compass.SW, Sky.SCATTERED, Precipitation.NONE, Road.DRY));
    }

    private void readings(Paving paving) {
        pen.put("06:28", surface(46, 1200, "A", 1, Light.SHADE, "IR-2"));
        read(paving, "07:58", 57);
        read(paving, "09:40", 74);
        read(paving, "11:25", 91);
        read(paving, "13:12", 104);
        read(paving, "15:02", 108);
    }

    private void read(Paving paving, String clock, int heat) {
        pen.put(clock, surface(heat, paving.ahead(pen.at(clock)), "A", 1, Light.SUN, "IR-2"));
    }

    private Paving paving() {
        Haul.Way way = new Haul.Way("Quarry Road", 21, 246, 298, 0.15, 21.3, 22.8);
        Haul haul = new Haul(
                scene.random,
                way,
                scene.trucks("T104", "T107", "T109", "T112", "T115", "T118", "T121", "T124", "T127"),
                pen.at("06:36"),
                pen.at("07:08"));
        haul.stop(pen.at("11:36"), pen.at("11:58"));
        Mat mat = scene.mat("A", 1, 1.008, 1200);
        Paving paving = new Paving(
                scene.random,
                pen,
                haul,
                mat,
                "Quarry Road",
                "19-64",
                true,
                scene.numbers().own());
        paving.layTo(11200);
        pen.put(
                "11:40",
                note("Paver stopped 11:36 to 11:58 for a hydraulic hose; three trucks waiting, covers on", "stop"));
        pen.put(
                "10:06",
                said(
                        "instruction",
                        "Lee Marrin",
                        "Asked for a straighter left edge from 52+00 on; string line set",
                        "done at 53+10"));
        pen.put("14:20", note("Ari Stone on the job until 14:50, no remarks", "visitor"));
        return paving;
    }

    private void end() {
        pen.put("17:46", opened(138, 11150, "A", "Lane left open to traffic, signs down at 18:00"));
        pen.put(
                "answer",
                "12:08",
                () -> Seen.answer(
                        pen.ref("tack 56"),
                        "tack-rate",
                        "Two nozzles of the left wing were a size too large, changed before the next shot; no running or"
                                + " bleeding seen",
                        "RK",
                        "Lee Marrin"));
        scene.closes(pen, "18:04", Scene::agreed, "403.19", "Tomorrow pull B if the weather holds", YesNo.YES);
    }

    static Amount tons(String value) {
        return Amount.of(value, Unit.SHORT_TON);
    }
}
