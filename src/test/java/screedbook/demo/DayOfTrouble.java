package screedbook.demo;

import static screedbook.demo.Seen.answer;
import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.opened;
import static screedbook.demo.Seen.said;
import static screedbook.demo.Seen.surface;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import screedbook.entry.Amend;
import screedbook.entry.Aside;
import screedbook.entry.Clock;
import screedbook.entry.Closing;
import screedbook.entry.Moment;
import screedbook.entry.Part;
import screedbook.entry.Plan;
import screedbook.entry.Ref;
import screedbook.entry.Strike;
import screedbook.entry.Surface.Light;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Weather.Call;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.tally.Tons;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * Monday 18 May: a cold start, the rest of lift 1 pull B, then lift 2 pull A from another plant. Robin Kell keeps the
 * book at the paver, Jo Ferris the one of the tack.
 */
final class DayOfTrouble {
    private final Scene scene;
    private final Agreed second;
    private final double joint;
    private final Pen paver;
    private final Pen tack;

    /**
     * @param second the job as agreed later in the day
     * @param joint feet along the line where the night ended
     */
    DayOfTrouble(Scene scene, Agreed second, double joint) {
        this.scene = scene;
        this.second = second;
        this.joint = joint;
        this.paver = scene.pen("paver", "RK");
        this.tack = scene.pen("tack", "JF");
    }

    void write() throws IOException {
        scene.opens(paver, "06:03");
        scene.opens(tack, "06:11");
        coldStart();
        firstTack();
        Paving restOfB = restOfB(cold());
        plan();
        secondTack();
        Paving lift2 = lift2(restOfB);
        readings(restOfB, lift2);
        corrections(restOfB, lift2);
        answers(restOfB, lift2);
        end(lift2);
        paver.powerCut(paver.at("13:47"), paver.at("13:53"));
        paver.write(paver.at("17:20"));
        tack.write();
        paver.write();
        scene.page();
    }

    private void coldStart() {
        paver.put("06:12", weather(31, 79, 0, Compass.CALM, Sky.CLEAR, Precipitation.NONE, Road.DAMP));
        paver.put(
                "06:17", note("Signs and flaggers as in the plan; frost on the sign stands", "traffic control walked"));
        paver.put("06:20", note("Lane right of the centreline, 90+00 to 112+00", "lane closed"));
        paver.put(
                "06:37",
                weather(32, 78, 1, Compass.NW, Sky.CLEAR, Precipitation.NONE, Road.DAMP, Call.NOT_SUITABLE, "AS"));
        paver.put(
                "06:58",
                said(
                        "instruction",
                        "Ari Stone",
                        "No placing before the surface is dry and at 35. Four trucks are on the road; Lee Marrin was"
                                + " told that they wait at the contractor's risk",
                        "understood, no more loaded until told"));
        paver.put("07:55", weather(42, 61, 3, Compass.W, Sky.CLEAR, Precipitation.NONE, Road.DRY, Call.SUITABLE, "AS"));
    }

    private void readings(Paving restOfB, Paving lift2) {
        tack.put("06:22", surface(30, joint, "B", 1, Light.SHADE, "IR-5"));
        tack.put("07:18", surface(33, joint, "B", 1, Light.SHADE, "IR-5"));
        tack.put("07:52", surface(38, joint + 200, "B", 1, Light.SUN, "IR-5"));
        tack.put("09:30", surface(55, restOfB.ahead(tack.at("09:30")), "B", 1, Light.SUN, "IR-5"));
        tack.put("10:44", surface(66, 1200, "A", 2, Light.SUN, "IR-5"));
        tack.put("12:30", surface(81, lift2.ahead(tack.at("12:30")), "A", 2, Light.SUN, "IR-5"));
        tack.put("14:25", surface(71, lift2.ahead(tack.at("14:25")), "A", 2, Light.SHADE, "IR-5"));
        tack.put("16:12", surface(78, lift2.ahead(tack.at("16:12")), "A", 2, Light.SUN, "IR-5"));
        paver.put("10:51", weather(56, 38, 7, Compass.SW, Sky.SCATTERED, Precipitation.NONE, Road.DRY));
        paver.put("14:12", weather(57, 66, 14, Compass.NW, Sky.OVERCAST, Precipitation.DRIZZLE, Road.DAMP));
        paver.put(
                "14:44",
                weather(58, 55, 10, Compass.NW, Sky.BROKEN, Precipitation.NONE, Road.DRY, Call.SUITABLE, "AS"));
        paver.put("16:40", weather(60, 47, 8, Compass.NW, Sky.SCATTERED, Precipitation.NONE, Road.DRY));
    }

    private Sprayer d7;

    private void firstTack() {
        d7 = scene.sprayer("D7", 36.0, "SC-2270");
        Tack.After after = new Tack.After(tack.at("08:29"), YesNo.NO, null, null, null);
        Sprayer.Run run = new Sprayer.Run(Tack.Under.MILLED, joint, 11200, 11.5, "B", 1);
        Tack shot = d7.shot(scene.product("CSS-1h"), run, 0.049, 126, 0, null, after);
        tack.put("tack B", tack.at("07:58"), tack.at("08:29").plusSeconds(tack.lag()), shot, Aside.NONE);
        face("08:04", Tack.Face.TRANSVERSE_JOINT, joint, joint, "B", 1, "0.5");
        face("08:09", Tack.Face.LONGITUDINAL_JOINT, joint, 11200, "B", 1, "12");
    }

    private void face(String clock, Tack.Face face, double from, double to, String pull, int lift, String gallons) {
        OffsetDateTime broken = tack.at(clock).plusMinutes(24);
        Tack shot = Sprayer.face(scene.product("CSS-1h"), "D7", face, from, to, pull, lift, gallons, 126, broken);
        tack.put(null, tack.at(clock), broken.plusSeconds(tack.lag()), shot, Aside.NONE);
    }

    /** Four loads that left the plant too early: two go back, one is placed on Ari Stone's word, one is old. */
    private Cold cold() {
        Haul.Way way = new Haul.Way("Quarry Road", 20, 228, 298, 0.30, 21.4, 22.6);
        Haul haul = new Haul(
                scene.random, way, scene.trucks("T104", "T107", "T109", "T112"), paver.at("06:34"), paver.at("08:36"));
        Mat mat = scene.mat("B", 1, 1.010, joint);
        Paving paving = quarryRoad(haul, mat);
        paving.twist(1, load -> tooCold(load, 252));
        paving.twist(2, load -> tooCold(load, 249));
        paving.twist(3, load -> probed(load, 257));
        paving.twist(4, load -> probed(load, 262));
        paving.lay(4);
        return new Cold(haul, mat, paving.loads());
    }

    private record Cold(Haul haul, Mat mat, List<Loaded> loads) {}

    private Paving quarryRoad(Haul haul, Mat mat) {
        return new Paving(
                scene.random,
                paver,
                haul,
                mat,
                "Quarry Road",
                "19-64",
                true,
                scene.numbers().own());
    }

    private static void probed(Loaded load, int heat) {
        load.plantHeat = load.trip.plantHeat();
        load.paverHeat = heat;
        load.instrument = "P-4";
        load.arrival = true;
    }

    private static void tooCold(Loaded load, int heat) {
        probed(load, heat);
        load.rejected("mix at " + heat + " after the wait, limit 260", "RK", "Lee Marrin");
    }

    private Paving restOfB(Cold cold) {
        Haul.Way way = new Haul.Way("Quarry Road", 20, 228, 298, 0.18, 21.4, 22.6);
        Haul haul = new Haul(
                scene.random,
                way,
                scene.trucks("T115", "T118", "T121", "T124", "T127"),
                paver.at("08:12"),
                cold.haul().paverFree());
        cold.loads()
                .forEach(load -> haul.joins(
                        scene.job().truck(load.trip.truck()).orElseThrow(),
                        load.trip.discharged().plusMinutes(29)));
        Paving paving = quarryRoad(haul, cold.mat());
        paving.placedBefore(2);
        paving.twist(2, load -> load.weighs(72260));
        paving.mistype(4);
        paving.rest(this::approach);
        paving.lay(6);
        scene.numbers().skip();
        paving.layTo(11200);
        paving.loads().addAll(0, cold.loads());
        return paving;
    }

    /** The rest of the last load goes into a field approach. */
    private void approach(Loaded load, BigDecimal tons) {
        OffsetDateTime at = load.trip.discharged().plusMinutes(9);
        paver.put(
                "part",
                Moment.clock(at),
                () -> new Part(
                        paver.ref(Paving.label(load)),
                        new Amount(tons, Unit.SHORT_TON),
                        "B",
                        1,
                        null,
                        null,
                        "field approach right of 111+60",
                        "length reached with the rest of the load, by spread rate"));
    }

    /** The second plant's trucks are agreed; each book says from where on. */
    private void plan() throws IOException {
        Plan plan = new Plan(
                second.revision(),
                second.sha256(),
                second.job().sheet(),
                scene.frozenSheet(),
                "two more insulated trucks for the longer haul from Sand Draw");
        paver.put("10:16", plan);
        tack.put("10:25", plan);
        paver.put("10:34", note("Paver walked back to 12+00; lane left of the centreline closed", "lane closed"));
    }

    private void secondTack() {
        Sprayer d2 = scene.sprayer("D2", 640, "SC-2288");
        Job.Product quick = scene.product("CQS-1h");
        Tack first = d2.shot(quick, onNew(12, 34), 0.030, 138, 0, null, new Tack.After(null, null, null, null, null));
        tack.put("tack 12", tack.at("10:12"), tack.lag(), first, Aside.NONE);
        Map<String, Object> set = new LinkedHashMap<>();
        set.put("broken", Moment.text(tack.at("10:42")));
        set.put("tracked", "no");
        tack.put(null, "10:43", () -> new Amend(tack.ref("tack 12"), set, "seen broken later"));
        face("10:18", Tack.Face.TRANSVERSE_JOINT, 1200, 1200, "A", 2, "0.5");
        shot("tack 34", "11:34", "12:01", d2.shot(quick, onNew(34, 56), 0.031, 136, 0, null, broken("12:01", null)));
        tack.put("12:26", d2.refill(quick, 700, "SC-2291"));
        Tack diluted = d2.shot(quick, onNew(56, 78), 0.030, 134, 1, "supplier", broken("13:09", null));
        shot("tack 56", "12:48", "13:09", diluted);
        tack.put(
                "13:11",
                said(
                        "tack",
                        "distributor's driver",
                        "Delivery paper SC-2291 says one part emulsion to one part water. Shot 56+00 to 78+00 was"
                                + " sprayed from it",
                        "D2 sent away; D7 sprays the rest undiluted"));
        OffsetDateTime again = tack.at("13:16");
        Tack once = d7.shot(scene.product("CSS-1h"), onNew(56, 78), 0.023, 128, 0, null, broken("13:37", null));
        tack.put("again", "13:38", () -> again(once));
        shot(
                "tack 78",
                "14:52",
                "15:16",
                d7.shot(scene.product("CSS-1h"), onNew(78, 104), 0.031, 127, 0, null, broken("15:16", null)));
        if (again.isAfter(tack.at("13:37"))) {
            throw new IllegalStateException("broken before it was sprayed");
        }
    }

    private Tack again(Tack once) {
        Tack.After after = new Tack.After(once.after().broken(), YesNo.NO, null, null, tack.ref("tack 56"));
        return new Tack(once.product(), once.target(), once.gauge(), after);
    }

    private Tack.After broken(String clock, String sample) {
        return new Tack.After(tack.at(clock), YesNo.NO, sample, null, null);
    }

    private void shot(String label, String clock, String broken, Tack shot) {
        tack.put(label, tack.at(clock), tack.at(broken).plusSeconds(tack.lag()), shot, Aside.NONE);
    }

    private static Sprayer.Run onNew(int from, int to) {
        return new Sprayer.Run(Tack.Under.NEW, from * 100.0, to * 100.0, 12.0, "A", 2);
    }

    private Job.Truck truck(String number) {
        return second.job().truck(number).orElseThrow();
    }

    private Paving lift2(Paving restOfB) {
        Haul.Way way = new Haul.Way("Sand Draw", 27, 232, 300, 0.04, 21.2, 22.6);
        List<Job.Truck> insulated = List.of(truck("T133"), truck("T136"));
        Haul haul = new Haul(scene.random, way, insulated, paver.at("10:19"), paver.at("10:57"));
        Map<String, OffsetDateTime> free = new TreeMap<>();
        restOfB.loads()
                .forEach(load ->
                        free.put(load.trip.truck(), load.trip.discharged().plusMinutes(31)));
        free.forEach((number, ready) -> haul.joins(truck(number), ready));
        haul.stop(paver.at("14:20"), paver.at("14:46"));
        Mat mat = scene.mat("A", 2, 1.006, 1200);
        Paving paving = new Paving(
                scene.random,
                paver,
                haul,
                mat,
                "Sand Draw",
                "12.5-70A",
                false,
                scene.numbers().shared(scene.random));
        paving.twist(9, load -> {
            probed(load, 332);
            load.plantHeat = 338;
            load.rejected("blue smoke, 338 on the ticket, limit 325", "RK", "Lee Marrin");
        });
        paving.twist(22, load -> {
            load.kept = Ticket.Kept.HANDWRITTEN;
            load.weighedBy = "B. Tully";
        });
        for (int unread = 27; unread <= 31; unread++) {
            paving.twist(unread, load -> load.unread = true);
        }
        paving.twist(
                38,
                load -> load.partPlaced(
                        "7.40", "weigh-back ticket", "cold lumps in the last third of the load", "RK", "Lee Marrin"));
        paving.lay(56);
        return paving;
    }

    private void corrections(Paving restOfB, Paving lift2) {
        Loaded mistyped = restOfB.loads().get(7);
        OffsetDateTime seen = mistyped.trip.discharged().plusMinutes(4);
        Map<String, Object> set = new LinkedHashMap<>();
        set.put("net_ston", mistyped.net);
        paver.put(
                null,
                Moment.clock(seen),
                () -> new Amend(
                        paver.ref(Paving.label(mistyped)), set, "digits changed places; read again from the ticket"));
        Loaded twice = lastBefore(lift2, paver.at("13:44"));
        paver.put("twice", twice.trip.discharged(), paver.at("13:56"), twice.ticket(), Aside.NONE);
        paver.put(
                null,
                "14:31",
                () -> new Strike(
                        paver.ref("twice"),
                        "keyed again after the power cut; it stands at " + paver.ref(Paving.label(twice))));
        Clock clock = new Clock(
                paver.at("13:50").plusSeconds(21),
                paver.at("13:53").plusSeconds(5),
                new BigDecimal("164"),
                "set by the telephone's after the battery was changed");
        paver.put(null, null, paver.at("13:53").plusSeconds(5), clock, Aside.NONE);
    }

    private static Loaded lastBefore(Paving paving, OffsetDateTime at) {
        return paving.loads().stream()
                .filter(load -> load.trip.discharged().isBefore(at))
                .reduce((first, later) -> later)
                .orElseThrow();
    }

    private void answers(Paving restOfB, Paving lift2) {
        Loaded allowed = restOfB.loads().get(2);
        paver.put(
                null,
                "08:58",
                () -> answer(
                        paver.ref(Paving.label(allowed)),
                        "heat-at-paver",
                        "Placed in the first 100 ft behind the night joint, rolled at once; imaging bar shows 240 behind the"
                                + " screed",
                        "AS",
                        "Lee Marrin"));
        for (int old = 2; old <= 3; old++) {
            Loaded load = restOfB.loads().get(old);
            paver.put(
                    null,
                    "09:01",
                    () -> answer(
                            paver.ref(Paving.label(load)),
                            "load-age",
                            "Waited for the surface; probed in three places before it was taken",
                            "AS",
                            "Lee Marrin"));
        }
        Loaded heavy = restOfB.loads().get(5);
        paver.put(
                null,
                "09:14",
                () -> answer(
                        paver.ref(Paving.label(heavy)),
                        "gross-legal",
                        "Driver and plant told; next loads of T118 lighter",
                        "RK",
                        "Cass Dunmore"));
        paver.put(
                null,
                "13:58",
                () -> answer(
                        paver.ref("set aside"),
                        "set-aside",
                        "Battery empty in the middle of a ticket; it was keyed again from the paper",
                        "RK",
                        "Ari Stone"));
        Loaded damp = lift2.loads().stream()
                .filter(load -> !load.trip.discharged().isBefore(paver.at("14:12")))
                .findFirst()
                .orElseThrow();
        paver.put(
                null,
                "14:35",
                () -> answer(
                        paver.ref(Paving.label(damp)),
                        "placed-not-dry",
                        "Mix was in the hopper when the drizzle began; laid out so that none stood in the paver",
                        "RK",
                        "Lee Marrin"));
        tack.put(
                null,
                "13:40",
                () -> answer(
                        tack.ref("tack 56"),
                        "tack-diluted",
                        "Sprayed again undiluted before paving",
                        "JF",
                        "Lee Marrin"));
        tack.put(
                null,
                "13:41",
                () -> answer(
                        tack.ref("tack 56"),
                        "tack-rate",
                        "Too little asphalt by the water; the second shot makes up for it",
                        "JF",
                        "Lee Marrin"));
        paver.put(
                null,
                "06:51",
                () -> answer(
                        new Ref("paver", 1),
                        "days-without-shift",
                        "Friday to Sunday: no paving was planned and nobody of the crew was on the road",
                        "AS",
                        null));
    }

    private void end(Paving lift2) {
        tack.put("17:06", note("D7 parked, valves shut, nothing on the ground", "tack"));
        scene.closes(tack, "17:12", ours -> new Closing.Theirs(null, null, null, null, null), null, null, null);
        paver.put("17:58", opened(133, lift2.feet() - 100, "A", "Lane left open to traffic, ramp of cold mix"));
        scene.closes(paver, "18:14", DayOfTrouble::theirs, "403.12", null, YesNo.YES);
    }

    private static Closing.Theirs theirs(Tons ours) {
        Amount more = ours.received().plus(Amount.of("22.08", Unit.SHORT_TON));
        return new Closing.Theirs(
                "Lee Marrin",
                ours.loads() + 1,
                more,
                Closing.Agreed.NO,
                "the plant's list has one more ticket of Quarry Road; no such load came here");
    }
}
