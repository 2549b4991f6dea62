package screedbook.demo;

import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.opened;
import static screedbook.demo.Seen.surface;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.diary.ListFile;
import screedbook.diary.PlantLists;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Kind;
import screedbook.entry.ListColumns;
import screedbook.entry.Moment;
import screedbook.entry.Surface.Light;
import screedbook.entry.Tack;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;
import screedbook.unit.Unit;

/** Wednesday 15 July into Thursday: pull A goes on, the laboratory's results come, and the plant sends its list. */
final class SecondNight {
    private final Scene scene;
    private final Pen pen;
    private final double start;
    private final LookedAt looks;
    private Paving paving;

    SecondNight(Scene scene, double start) {
        this.scene = scene;
        this.pen = scene.pen("paver", "DL");
        this.start = start;
        this.looks = new LookedAt(scene, pen, start);
    }

    void write() throws IOException {
        scene.opens(pen, "20:08");
        new NightCrew(scene, pen).begins(2881);
        begin();
        results();
        paving = paving();
        looks.laid(paving);
        pen.reached((draw, told) -> looks.sampled(draw, told, "DL", 7, n -> 66450 + n));
        looks();
        end();
        pen.write();
        scene.page();
    }

    private void begin() {
        pen.put("20:11", weather(81, 28, 7, Compass.W, Sky.FEW, Precipitation.NONE, Road.DRY));
        pen.put("20:13", note("Signs, cones and flaggers as the night before", "traffic control walked"));
        pen.put("20:48", note("Lane left of the centreline, 110+00 to 245+00", "lane closed"));
        pen.put("20:50", surface(86, start + 40, "A", 1, Light.NIGHT, "IR-5"));
        pen.put("23:40", weather(72, 38, 5, Compass.W, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        pen.put("02:30", weather(66, 45, 3, Compass.NW, Sky.CLEAR, Precipitation.NONE, Road.DRY));
        Sprayer d5 = scene.sprayer("D5", 1510, "BP-0724");
        int from = (int) Math.round(start / 100);
        shot(d5, "20:55", start, (from + 32) * 100.0, 0.041, 141, "21:22");
        shot(d5, "22:40", (from + 32) * 100.0, (from + 64) * 100.0, 0.056, 139, "23:06");
        shot(d5, "00:34", (from + 64) * 100.0, (from + 96) * 100.0, 0.040, 137, "01:06");
        Tack face = Sprayer.face(
                scene.product("CQS-1h"),
                "D5",
                Tack.Face.TRANSVERSE_JOINT,
                start,
                start,
                "A",
                1,
                "0.5",
                140,
                pen.at("21:22"));
        pen.put(null, pen.at("21:04"), pen.at("21:22").plusSeconds(pen.lag()), face, Aside.NONE);
    }

    private void shot(Sprayer d5, String clock, double from, double to, double residual, int warm, String broken) {
        Tack.After after = new Tack.After(pen.at(broken), YesNo.NO, null, null, null);
        Sprayer.Run run = new Sprayer.Run(Tack.Under.EXISTING, from, to, 12.0, "A", 1);
        Tack tack = d5.shot(scene.product("CQS-1h"), run, residual, warm, 0, null, after);
        pen.put(null, pen.at(clock), pen.at(broken).plusSeconds(pen.lag()), tack, Aside.NONE);
    }

    /** What the laboratory told of the night before. */
    private void results() {
        result("20:22", null, "gmm", "2.476", "12.5-70A", null);
        result("20:24", "TF-1-1", "binder-content", "5.4", null, "no");
        result("20:25", "TF-1-1", "air-voids", "3.8", null, "yes");
        result("20:27", "C-1", "gmb", "2.318", null, "yes");
        result("20:29", "C-2", "gmb", "2.271", null, "yes");
        result("20:31", "C-3", "gmb", "2.327", null, "yes");
        result("20:33", "TF-T1", "residue", "60.4", null, "yes");
    }

    private void result(String clock, String sample, String what, String found, String mix, String closes) {
        looks.put(
                clock,
                Kind.RESULT,
                "sample",
                sample,
                "what",
                what,
                "found",
                found,
                "mix",
                mix,
                "tested",
                "2026-07-15",
                "laboratory",
                "Tanager County laboratory",
                "report",
                "L-4402",
                "closes",
                closes);
    }

    private Paving paving() {
        Haul.Way way = new Haul.Way("Basin Pit", 22, 226, 303, 0.17, 21.4, 22.9);
        Haul haul = new Haul(
                scene.random,
                way,
                scene.trucks("K11", "K12", "K14", "K17", "K19", "K20", "K23", "K26"),
                pen.at("21:04"),
                pen.at("21:36"));
        Mat mat = scene.mat("A", 1, 0.998, start);
        Paving laid = new Paving(
                scene.random,
                pen,
                haul,
                mat,
                "Basin Pit",
                "12.5-70A",
                true,
                scene.numbers().own());
        laid.twist(14, load -> load.rejected("load came uncovered, crust on top", "DL", "Pia Ostler"));
        laid.lay(62);
        return laid;
    }

    private void looks() {
        pen.put("22:46", surface(79, paving.ahead(pen.at("22:46")), "A", 1, Light.NIGHT, "IR-5"));
        pen.put("00:42", surface(74, paving.ahead(pen.at("00:42")), "A", 1, Light.NIGHT, "IR-5"));
        pen.put("02:34", surface(70, paving.ahead(pen.at("02:34")), "A", 1, Light.NIGHT, "IR-5"));
        looks.mat("21:44", "288", "behind-screed", 15);
        looks.mat("22:20", "184", "rolling-ends", 700);
        looks.mat("23:50", "285", "behind-screed", 15);
        looks.mat("01:40", "287", "behind-screed", 15);
        looks.mat("02:12", "181", "rolling-ends", 650);
        looks.profile("22:26", 289, 277, "4", "PO", null, null);
        looks.profile("01:46", 286, 221, "5", null, "load that had waited 50 min", "density taken at the cold place");
        looks.put(
                "22:08",
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
                "264",
                "mat_ends_degF",
                "224",
                "pull",
                "A",
                "lift",
                "1",
                "pattern",
                "control strip of 9 July");
        looks.put(
                "21:40",
                Kind.JOINT,
                "run",
                "transverse",
                "shape",
                "butt",
                "from_sta",
                Mat.station(start).text(),
                "pull",
                "A",
                "lift",
                "1",
                "heat",
                "cold",
                "tacked",
                "yes",
                "higher_in",
                "0.09");
        looks.put(
                "21:56",
                Kind.STRAIGHTEDGE,
                "gap_in",
                "0.15",
                "edge_length_ft",
                "10.0",
                "laid",
                "over-joint",
                "place_sta",
                Mat.station(start).text(),
                "pull",
                "A",
                "lift",
                "1",
                "instrument",
                "SE-10");
        looks.spread("23:36", 0, 20);
        looks.spread("02:00", 21, 43);
        looks.gauge("22:50", "141.8", "142.3", "6.0", "4", "DL", "DG-121");
        looks.gauge("22:56", "142.6", "142.0", "6.0", "4", "DL", "DG-121");
        looks.gauge("01:52", "138.2", "138.8", "6.0", "5", "DL", "DG-121");
        looks.gauge("01:58", "141.5", "141.1", "6.0", "5", "DL", "DG-121");
        looks.put("03:10", Kind.TRUCK, "truck", "K19", "step", "seen", "location", "at the pit's gate, cover off");
    }

    private void end() {
        Loaded last = paving.loads().get(paving.loads().size() - 1);
        OffsetDateTime at = last.trip.discharged();
        new NightCrew(scene, pen).ends(Moment.clock(at.plusMinutes(3)), "K11 K12 K14 K17 K19 K20 K23 K26");
        pen.put("list", Moment.clock(at.plusMinutes(40)), this::list);
        pen.put(
                null,
                at.plusMinutes(48),
                pen.lag(),
                opened(133, paving.feet() - 100, "A", "Lane left open to traffic"),
                Aside.NONE);
        scene.closes(pen, Moment.clock(at.plusMinutes(58)), scene.by("Pia Ostler"), "403.12", null, YesNo.YES);
    }

    /** The plant's list: it lacks one load, has one that nobody saw here, and prints another net for a third. */
    private Entry list() {
        StringBuilder text = new StringBuilder("Load No,Truck,Time out,Mix,Net T\n");
        List<Loaded> loads = paving.loads();
        for (int i = 0; i < loads.size(); i++) {
            Loaded load = loads.get(i);
            if (i == 30) {
                continue;
            }
            BigDecimal net = i == 45 ? load.net.add(new BigDecimal("0.90")) : load.net;
            text.append(row(load.number, load, net));
        }
        Loaded last = loads.get(loads.size() - 1);
        text.append(row(String.valueOf(Integer.parseInt(last.number) + 1), loads.get(3), new BigDecimal("22.10")));
        try {
            Path file = Files.createTempFile("list", ".csv");
            Files.writeString(file, text);
            ListColumns columns = scene.job().plant("Basin Pit").orElseThrow().list();
            Entry kept = PlantLists.in(scene.folder)
                    .keep(scene.shift, "Basin Pit", ListFile.read(file), columns, Unit.SHORT_TON);
            Files.delete(file);
            return kept;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String row(String number, Loaded load, BigDecimal net) {
        return number + "," + load.trip.truck() + "," + Moment.clock(load.trip.loaded()) + ",12.5-70A," + net + "\n";
    }
}
