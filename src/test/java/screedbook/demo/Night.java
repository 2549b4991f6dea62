package screedbook.demo;

import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.opened;
import static screedbook.demo.Seen.surface;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import java.time.OffsetDateTime;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Entry;
import screedbook.entry.HandOver;
import screedbook.entry.Moment;
import screedbook.entry.Number;
import screedbook.entry.Review;
import screedbook.entry.Surface.Light;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;

/** Thursday 14 May into Friday: lift 1, pull B, until the surface came near its limit. */
final class Night {
    private final Scene scene;
    private final Pen pen;

    Night(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "RK");
    }

    /** @return feet along the line where the night joint is */
    double write() throws IOException {
        scene.opens(pen, "20:12");
        start();
        tack();
        weathers();
        Paving paving = paving();
        readings(paving);
        handOver();
        end(paving);
        pen.write();
        scene.page();
        review();
        scene.page();
        return paving.feet();
    }

    private void start() {
        pen.put("20:18", weather(55, 44, 3, Compass.NW, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put(
                "20:24",
                note(
                        "Light towers at 12+00, 20+00 and on the paver; flaggers with lit wands",
                        "traffic control walked"));
        pen.put("20:30", note("Lane right of the centreline, 12+00 to 112+00", "lane closed"));
        pen.put("20:33", note("Milled surface dry; the low spot at 58+00 is dry too", "surface"));
    }

    private void tack() {
        Sprayer d7 = scene.sprayer("D7", 42.0, "SC-2231");
        shot(d7, "20:40", 12, 34, 0.050, 136, "21:14");
        shot(d7, "22:02", 34, 55, 0.053, 134, "22:40");
        shot(d7, "23:45", 55, 76, 0.050, 132, "00:27");
        shot(d7, "01:28", 76, 96, 0.047, 130, "02:14");
        face("20:49", Tack.Face.TRANSVERSE_JOINT, 12, 12, "0.5", "21:14");
        face("20:54", Tack.Face.LONGITUDINAL_JOINT, 12, 34, "14", "21:20");
        face("22:14", Tack.Face.LONGITUDINAL_JOINT, 34, 55, "14", "22:44");
        face("23:57", Tack.Face.LONGITUDINAL_JOINT, 55, 76, "13", "00:30");
        face("01:40", Tack.Face.LONGITUDINAL_JOINT, 76, 96, "13", "02:18");
    }

    private void shot(Sprayer d7, String clock, int from, int to, double residual, int warm, String broken) {
        Tack.After after = new Tack.After(pen.at(broken), YesNo.NO, null, null, null);
        Sprayer.Run run = new Sprayer.Run(Tack.Under.MILLED, from * 100.0, to * 100.0, 11.5, "B", 1);
        Tack tack = d7.shot(scene.product("CSS-1h"), run, residual, warm, 0, null, after);
        pen.put(null, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    private void face(String clock, Tack.Face face, int from, int to, String gallons, String broken) {
        Tack tack = Sprayer.face(
                scene.product("CSS-1h"), "D7", face, from * 100, to * 100, "B", 1, gallons, 134, pen.at(broken));
        pen.put(null, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    private void weathers() {
        pen.put("22:45", weather(48, 55, 4, Compass.NW, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("00:50", weather(42, 64, 2, Compass.VARIABLE, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("03:20", weather(36, 73, 0, Compass.CALM, Sky.CLEAR, Precipitation.NONE, Road.DRY));
    }

    private void readings(Paving paving) {
        pen.put("20:36", surface(66, 1200, "B", 1, Light.NIGHT, "IR-2"));
        read(paving, "21:58", 59);
        read(paving, "23:20", 53);
        read(paving, "00:34", 48);
        read(paving, "01:46", 44);
        read(paving, "02:40", 41);
        read(paving, "03:08", 39);
        read(paving, "03:36", 37);
        read(paving, "04:04", 36);
    }

    private void read(Paving paving, String clock, int heat) {
        pen.put(clock, surface(heat, paving.ahead(pen.at(clock)), "B", 1, Light.NIGHT, "IR-2"));
    }

    private Paving paving() {
        Haul.Way way = new Haul.Way("Quarry Road", 19, 240, 298, 0.19, 21.2, 22.8);
        Haul haul = new Haul(
                scene.random,
                way,
                scene.trucks("T104", "T107", "T109", "T112", "T115", "T118", "T121", "T124", "T127"),
                pen.at("20:46"),
                pen.at("21:18"));
        haul.stop(pen.at("00:06"), pen.at("00:31"));
        Mat mat = scene.mat("B", 1, 1.004, 1200);
        Paving paving = new Paving(
                scene.random,
                pen,
                haul,
                mat,
                "Quarry Road",
                "19-64",
                true,
                scene.numbers().own());
        paving.lay(31);
        int voided = scene.numbers().skip();
        paving.twist(52, load -> load.kept = Ticket.Kept.ELECTRONIC);
        paving.lay(36);
        pen.put(
                "00:10",
                note("Paver stopped 00:06 to 00:31, meal; screed left down, covers on the two trucks waiting", "stop"));
        Number number = new Number(
                "Quarry Road", String.valueOf(voided), Number.What.VOID_AT_PLANT, "Cass Dunmore, by telephone");
        pen.put("00:41", number);
        return paving;
    }

    private void handOver() {
        HandOver over = new HandOver(
                "JF",
                "19-64 in pull B, lift 1; next paver temperature with the fifth load; surface reading every hour from"
                        + " here, limit 35; RK back tomorrow noon");
        pen.put("01:02", over);
        pen.writes(pen.at("01:04").plusMinutes(1), "JF");
    }

    private void end(Paving paving) {
        Loaded last = paving.loads().get(paving.loads().size() - 1);
        OffsetDateTime at = last.trip.discharged();
        put(
                at.minusMinutes(32),
                note(
                        "Surface 37 and falling, limit 35: plant told to load no more; what is on the road is laid",
                        "instruction"));
        put(
                at.plusMinutes(14),
                new Waste(
                        null,
                        OrdinaryDay.tons("0.60"),
                        "19-64",
                        "cleaned out of hopper and augers at the night joint",
                        "estimate, two loader buckets",
                        "plant, for reuse"));
        put(at.plusMinutes(20), note("Night joint at " + last.to + ", ramp of cold mix", "joint"));
        put(at.plusMinutes(58), opened(134, paving.feet() - 100, "B", "Lane right open to traffic"));
        Closing.Theirs away = new Closing.Theirs(
                "Lee Marrin", null, null, Closing.Agreed.NOT_PRESENT, "left with the paver; to be asked on Monday");
        scene.closes(pen, Moment.clock(at.plusMinutes(70)), ours -> away, "403.19", null, YesNo.YES);
    }

    private void put(OffsetDateTime at, Entry entry) {
        pen.put(null, at, pen.lag(), entry, Aside.NONE);
    }

    /** Ari Stone reads the closed shift at noon. */
    private void review() throws IOException {
        Pen second = scene.pen("paver", "AS");
        String seal = scene.folder
                .shift(scene.shift)
                .books()
                .get(0)
                .seal()
                .orElseThrow()
                .sha256();
        Review review = new Review(
                seal,
                Review.Says.SEEN,
                "Tons and spread rate added up again and equal. Surface within 1 of its limit at the end: stopped in"
                        + " time",
                YesNo.YES);
        OffsetDateTime noon = pen.at("11:58");
        second.put(null, noon, noon, review, Aside.NONE);
        second.write();
    }
}
