package screedbook.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import screedbook.diary.JobFolder;
import screedbook.entry.Aside;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.ShiftId;
import screedbook.entry.YesNo;
import screedbook.job.Agreed;

/**
 * The invented job under {@code demo-logs/brackwater-quay}: a day in metric units. Written once as {@link DemoShifts}
 * says, and never again.
 */
public final class BrackwaterQuay {
    private static final int LOADS = 64;
    /** Tonnes to the metre of a pull: 3.5 m x 0.055 m x 2.32 t/m3. */
    private static final double TO_THE_METRE = 3.5 * 0.055 * 2.32;

    private static final String[] TRUCKS = {"B1", "B2", "B3", "B5", "B6", "B7", "B8", "B9"};

    private final Scene scene;
    private final Pen pen;
    private final String[] places = new String[LOADS + 1];
    private final OffsetDateTime[] times = new OffsetDateTime[LOADS];

    private BrackwaterQuay(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "TN");
    }

    public static void main(String[] words) throws IOException {
        Path path = Path.of(words[0]);
        write(path);
        for (ShiftId shift : JobFolder.at(path).shifts()) {
            System.out.print(Remembered.csv(Remembered.rows(path, shift)));
        }
    }

    static void write(Path path) throws IOException {
        JobFolder.make(path);
        Path people = path.resolve("people.json");
        Files.writeString(people, Files.readString(people).replace("\"AB\"", "\"TN\""));
        Files.writeString(path.resolve("job.json"), DemoShifts.resource("/demo/brackwater-quay.json"));
        JobFolder folder = JobFolder.at(path);
        OffsetDateTime agreed = LocalDateTime.parse("2026-10-30T15:10")
                .atZone(ZoneId.of("Pacific/Auckland"))
                .toOffsetDateTime();
        Agreed job = folder.accept("TN", agreed, "as agreed at the pre-paving meeting of 29 October");
        new BrackwaterQuay(new Scene(folder, "2026-11-03-day", 1103, job, new Scene.Numbers())).day();
        DemoShifts.unlocked(path);
        DemoShifts.unlocked(path.resolve("diary"));
    }

    private void day() throws IOException {
        scene.opens(pen, "06:32");
        sky("06:38", "9", "71", "8", "SW", "few");
        sky("10:30", "13", "60", "14", "SW", "scattered");
        sky("14:20", "15", "55", "18", "W", "scattered");
        note("06:44", "traffic control walked", "Signs and cones from km 0 to 3.3 as in the plan");
        note("06:46", "lane closed", "Lane left of the centreline, km 0.1 to 3.2");
        surface("06:50", "11", "0+140", "shade");
        tack("06:52", "0+100", "1+150", "6000", "4705", "58", "07:26", "BQ-T1");
        tack("08:48", "1+150", "2+200", "4705", "3400", "57", "09:18", null);
        tack("10:58", "2+200", "3+190", "3400", "2160", "59", "11:26", null);
        put(
                "06:58",
                Kind.TACK,
                "product",
                "CSS-1h",
                "distributor",
                "S4",
                "face",
                "transverse-joint",
                "from_sta",
                "0+100",
                "to_sta",
                "0+100",
                "pull",
                "L",
                "lift",
                "1",
                "used_L",
                "2",
                "material_degC",
                "58",
                "basis",
                "hand wand, estimate",
                "broken",
                Moment.text(pen.at("07:26")),
                "tracked",
                "no");
        loads();
        surface("08:55", "14", at("08:55", 120), "sun");
        surface("10:50", "19", at("10:50", 120), "sun");
        surface("12:45", "22", at("12:45", 120), "sun");
        looks();
        end();
        pen.write();
        scene.page();
    }

    private void loads() {
        OffsetDateTime next = pen.at("07:34");
        double metres = 100;
        places[0] = "0+100";
        for (int i = 0; i < LOADS; i++) {
            BigDecimal net =
                    BigDecimal.valueOf(20.6 + 1.8 * scene.random.nextDouble()).setScale(2, RoundingMode.HALF_UP);
            double wander = 1 + 0.012 * Math.sin(i / 6.0) + 0.01 * scene.random.nextGaussian();
            metres = Math.round((metres + net.doubleValue() / TO_THE_METRE / wander) * 10) / 10.0;
            places[i + 1] = station(metres);
            times[i] = next;
            load(i, net, next);
            next = next.plusMinutes(5 + scene.random.nextInt(3));
        }
    }

    private void load(int i, BigDecimal net, OffsetDateTime discharged) {
        boolean looked = i < 5 || i % 5 == 2;
        long heat = Math.round(155 + 2 * scene.random.nextGaussian());
        long lost = Math.round(5 + 1.2 * scene.random.nextGaussian());
        pen.put(
                "load " + i,
                discharged,
                pen.lag(),
                Keyed.of(
                        Kind.TICKET,
                        "plant",
                        "North Mole",
                        "number",
                        String.valueOf(scene.numbers().skip()),
                        "truck",
                        TRUCKS[i % TRUCKS.length],
                        "mix",
                        "SC-11",
                        "kept",
                        "electronic",
                        "net_t",
                        net.toPlainString(),
                        "loaded",
                        Moment.text(discharged.minusMinutes(24 + scene.random.nextInt(5))),
                        "discharged",
                        Moment.text(discharged),
                        "plant_degC",
                        looked ? String.valueOf(heat) : null,
                        "paver_degC",
                        looked ? String.valueOf(heat - Math.max(2, lost)) : null,
                        "instrument",
                        looked ? "T-3" : null,
                        "from_sta",
                        places[i],
                        "to_sta",
                        places[i + 1],
                        "pull",
                        "L",
                        "lift",
                        "1",
                        "paver",
                        "P1"),
                Aside.NONE);
    }

    private static String station(double metres) {
        int km = (int) (metres / 1000);
        return "%d+%05.1f".formatted(km, metres - km * 1000);
    }

    private String at(String clock, double ahead) {
        int i = 0;
        while (i < LOADS && times[i].isBefore(pen.at(clock))) {
            i++;
        }
        String[] place = places[i].split("\\+");
        return station(Integer.parseInt(place[0]) * 1000 + Double.parseDouble(place[1]) + ahead);
    }

    private void looks() {
        for (String[] each : new String[][] {
            {"07:50", "147", "behind-screed", "-5"},
            {"08:20", "86", "rolling-ends", "-180"},
            {"09:45", "146", "behind-screed", "-5"},
            {"11:40", "148", "behind-screed", "-5"},
            {"13:20", "84", "rolling-ends", "-200"}
        }) {
            put(
                    each[0],
                    Kind.MAT,
                    "mat_degC",
                    each[1],
                    "taken",
                    each[2],
                    "read_in",
                    "surface",
                    "place_sta",
                    at(each[0], Double.parseDouble(each[3])),
                    "pull",
                    "L",
                    "lift",
                    "1",
                    "instrument",
                    "IR-1");
        }
        for (String[] each :
                new String[][] {{"08:10", "66", "loose"}, {"09:10", "56", "compacted"}, {"12:10", "46", "compacted"}}) {
            put(
                    each[0],
                    Kind.DEPTH,
                    "thickness_mm",
                    each[1],
                    "state",
                    each[2],
                    "place_sta",
                    at(each[0], each[2].equals("loose") ? -10 : -150),
                    "from_left_m",
                    "1.2",
                    "pull",
                    "L",
                    "lift",
                    "1");
        }
        spread("10:05", 0, 23);
        spread("12:30", 24, 47);
        put(
                "07:38",
                Kind.PROFILE,
                "from_sta",
                "0+100",
                "to_sta",
                "0+150",
                "pull",
                "L",
                "lift",
                "1",
                "sublot",
                "1",
                "hottest_degC",
                "148",
                "coldest_degC",
                "139",
                "method",
                "continuous",
                "transfer",
                "yes",
                "witness",
                "HT",
                "instrument",
                "IR-1");
    }

    private void spread(String clock, int first, int last) {
        put(
                clock,
                Kind.YIELD,
                "from_sta",
                places[first],
                "to_sta",
                places[last + 1],
                "width_m",
                "3.5",
                "pull",
                "L",
                "lift",
                "1",
                "paver",
                "P1",
                "tons_t",
                null,
                "first_ticket",
                String.valueOf(48201 + first),
                "last_ticket",
                String.valueOf(48201 + last));
    }

    private void end() {
        OffsetDateTime last = times[LOADS - 1];
        note(Moment.clock(last.plusMinutes(20)), "joint", "Day joint at " + places[LOADS] + ", cut square");
        note(Moment.clock(last.plusMinutes(58)), "lane opened", "Lane left open to traffic");
        scene.closes(pen, Moment.clock(last.plusMinutes(70)), scene.by("Hugo Tolle"), "5.2.1", null, YesNo.YES);
    }

    private void sky(String clock, String air, String humidity, String wind, String from, String sky) {
        put(
                clock,
                Kind.WEATHER,
                "air_degC",
                air,
                "humidity_pct",
                humidity,
                "wind_kmh",
                wind,
                "wind_from",
                from.toLowerCase(Locale.ROOT),
                "sky",
                sky,
                "precipitation",
                "none",
                "road",
                "dry");
    }

    private void surface(String clock, String heat, String place, String light) {
        put(
                clock,
                Kind.SURFACE,
                "surface_degC",
                heat,
                "place_sta",
                place,
                "pull",
                "L",
                "lift",
                "1",
                "light",
                light,
                "instrument",
                "IR-1",
                "base",
                "asphalt");
    }

    private void tack(
            String clock,
            String from,
            String to,
            String before,
            String after,
            String warm,
            String broken,
            String sample) {
        put(
                clock,
                Kind.TACK,
                "product",
                "CSS-1h",
                "distributor",
                "S4",
                "paper",
                "NM-551",
                "diluted",
                "no",
                "surface",
                "existing",
                "from_sta",
                from,
                "to_sta",
                to,
                "width_m",
                "3.5",
                "pull",
                "L",
                "lift",
                "1",
                "before_L",
                before,
                "after_L",
                after,
                "material_degC",
                warm,
                "broken",
                Moment.text(pen.at(broken)),
                "tracked",
                "no",
                "sample",
                sample,
                "seal_number",
                sample == null ? null : "9014");
    }

    private void note(String clock, String tag, String text) {
        put(clock, Kind.NOTE, "tags", tag, "text", text);
    }

    private void put(String clock, Kind kind, String... pairs) {
        pen.put(kind.word() + " " + clock, pen.at(clock), pen.lag(), Keyed.of(kind, pairs), Aside.NONE);
    }
}
