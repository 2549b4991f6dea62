package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.job.Agreed;
import screedbook.spec.SpecSheet;

/**
 * A made-up archive of true diaries: every line is made by the program's own writer of lines, only not forced one by
 * one. The same numbers give the same bytes. Invented throughout.
 */
public final class MadeArchive {
    private static final ZoneOffset ZONE = ZoneOffset.ofHours(-6);
    private static final List<String> MIXES = List.of("12.5-70A", "19-64");
    private static final List<String> NOTES = List.of(
            "paver stopped 6 min, trucks bunched",
            "joint heater on",
            "b\u00e9ton repris \u00e0 14 h",
            "say \"hold\" at the tie-in, path C:\\jobs",
            "=SUM(A1:A9)");

    private final Path folder;
    private final String job;
    private final Random random;
    private final List<Integer> tickets = new ArrayList<>();
    private String head = Chain.NOTHING_BEFORE;
    private String others = Chain.NOTHING_BEFORE;
    private Agreed agreed;
    private String sheetHash;
    private int number = 48000;
    private Map<String, Object> newest = Map.of();

    private ShiftId shift;
    private String book;
    private OffsetDateTime clock;
    private ByteArrayOutputStream out;
    private int n;
    private int station;

    private MadeArchive(Path folder, String job, long seed) {
        this.folder = folder;
        this.job = job;
        this.random = new Random(seed);
    }

    /**
     * Makes an archive.
     *
     * @param shifts of all jobs together
     * @param lines of each shift, opening and closing counted
     * @param jobs how many jobs the shifts are of
     */
    public static void make(Path folder, int jobs, int shifts, int lines) throws IOException {
        for (int j = 0; j < jobs; j++) {
            String name = String.format("made-%02d", j + 1);
            int its = shifts / jobs + (j < shifts % jobs ? 1 : 0);
            new MadeArchive(folder.resolve(name), name, 7 + j).shifts(its, lines);
        }
    }

    private void shifts(int shifts, int lines) throws IOException {
        JobFolder.make(folder);
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\"my-job\"", "\"" + job + "\""));
        JobFolder made = JobFolder.at(folder);
        agreed = made.accept("RK", OffsetDateTime.parse("2016-03-30T08:00:00-06:00"), null);
        sheetHash = LimitSheets.in(made)
                .freeze(
                        agreed.job().sheet(),
                        SpecSheet.shippedBytes(agreed.job().sheet()).orElseThrow());
        Files.createDirectories(folder.resolve("diary"));
        LocalDate date = LocalDate.of(2016, 4, 1);
        for (int i = 0; i < shifts; i++) {
            one(date, i % 5 == 4, lines);
            date = date.plusDays(date.getDayOfYear() > 300 ? 160 : 1 + random.nextInt(2));
        }
    }

    private void one(LocalDate date, boolean night, int lines) throws IOException {
        begin(ShiftId.of(date + (night ? "-night" : "-day")), "paver", night ? 20 : 6);
        key(Kind.OPENING, false, opening());
        station = 1200;
        for (int i = 2; i < lines; i++) {
            entry(36_000 / lines);
        }
        key(Kind.CLOSING, false, Map.of());
        end(1);
        if (random.nextInt(5) == 0) {
            second();
        }
    }

    /** Another laptop at the plant, which keys some of the same tickets and corrects some of the first book's. */
    private void second() throws IOException {
        List<Integer> theirs = List.copyOf(tickets);
        String before = head;
        head = others;
        begin(shift, "plant", shift.word().equals("night") ? 20 : 6);
        key(Kind.OPENING, false, opening());
        key(Kind.TICKET, true, newest);
        for (int i = 0; i < 8; i++) {
            clock = clock.plusSeconds(60);
            number -= random.nextInt(8);
            ticket();
            String of = "paver/" + theirs.get(random.nextInt(theirs.size()));
            if (random.nextInt(4) == 0) {
                key(Kind.STRIKE, true, Map.of("of", of, "reason", "it went to the other job"));
            } else if (random.nextInt(4) == 0) {
                Map<String, Object> set = Map.of("net_ston", decimal(17, 24, 2));
                key(Kind.AMEND, true, Map.of("of", of, "set", set, "reason", "as weighed again"));
            }
        }
        key(Kind.CLOSING, false, Map.of());
        end(1);
        others = head;
        head = before;
    }

    private void begin(ShiftId its, String name, int hour) {
        shift = its;
        book = name;
        clock = its.date().atTime(hour, 0).atOffset(ZONE);
        out = new ByteArrayOutputStream();
        n = 0;
        tickets.clear();
    }

    private Map<String, Object> opening() {
        return Map.of(
                "format",
                BigDecimal.ONE,
                "zone",
                "America/Denver",
                "job_revision",
                BigDecimal.valueOf(agreed.revision()),
                "job_sha256",
                agreed.sha256(),
                "sheet",
                agreed.job().sheet(),
                "sheet_sha256",
                sheetHash);
    }

    /** Kinds in the shares in which an inspector keys them; common practice, no source. */
    private void entry(int seconds) {
        clock = clock.plusSeconds(1 + random.nextInt(2 * seconds));
        int share = random.nextInt(1000);
        if (share < 640) {
            ticket();
        } else if (share < 800) {
            key(Kind.SURFACE, true, Map.of("surface_degF", whole(40, 110), "pull", "A", "lift", BigDecimal.valueOf(2)));
        } else if (share < 860) {
            key(
                    Kind.WEATHER,
                    true,
                    Map.of(
                            "air_degF", whole(40, 95),
                            "wind_mph", whole(0, 20),
                            "humidity_pct", whole(20, 95),
                            "sky", "clear"));
        } else if (share < 910) {
            key(Kind.TACK, true, tack());
        } else if (share < 980) {
            key(Kind.NOTE, true, Map.of("text", NOTES.get(random.nextInt(NOTES.size()))));
        } else if (share < 988 && !tickets.isEmpty()) {
            key(Kind.STRIKE, true, Map.of("of", old(), "reason", "keyed twice"));
        } else if (share < 995 && !tickets.isEmpty()) {
            amend();
        } else if (share < 998 && !tickets.isEmpty()) {
            key(Kind.WASTE, true, Map.of("of", old(), "weight_ston", new BigDecimal("0.40")));
        } else {
            odd();
        }
    }

    private Map<String, Object> tack() {
        return Map.of(
                "product",
                "CSS-1h",
                "surface",
                "milled",
                "from_sta",
                sta(station),
                "to_sta",
                sta(station + 800),
                "width_ft",
                new BigDecimal("12.5"),
                "used_gal",
                decimal(80, 160, 1));
    }

    private void ticket() {
        Map<String, Object> ticket = load();
        if (random.nextInt(3) == 0) {
            ticket.put("plant_degF", whole(285, 315));
            ticket.put("paver_degF", whole(255, 305));
        }
        int share = random.nextInt(200);
        if (share == 0) {
            ticket.put("fate", "rejected");
        } else if (share == 1) {
            ticket.put("fate", "part-placed");
            ticket.put("returned_ston", decimal(2, 9, 2));
        } else if (share == 2) {
            ticket.put("reason", "driver said \"cold\"");
        }
        newest = ticket;
        tickets.add(key(Kind.TICKET, true, ticket));
    }

    private Map<String, Object> load() {
        int to = station + 90 + random.nextInt(60);
        Map<String, Object> ticket = new LinkedHashMap<>();
        ticket.put("plant", "Quarry Road");
        ticket.put("number", Integer.toString(++number));
        ticket.put("truck", "T" + (100 + random.nextInt(40)));
        ticket.put("mix", MIXES.get(random.nextInt(5) == 0 ? 1 : 0));
        ticket.put("net_ston", decimal(17, 24, 2));
        ticket.put("loaded", screedbook.entry.Moment.text(clock.minusMinutes(41)));
        ticket.put("discharged", screedbook.entry.Moment.text(clock));
        ticket.put("from_sta", sta(station));
        ticket.put("to_sta", sta(to));
        ticket.put("pull", "A");
        ticket.put("lift", BigDecimal.valueOf(2));
        station = to > 90_000 ? 1200 : to;
        return ticket;
    }

    private void amend() {
        Map<String, Object> set = new LinkedHashMap<>();
        switch (random.nextInt(40)) {
            case 0 -> set.put("number", Integer.toString(number - random.nextInt(40)));
            case 1 -> set.put("reissue_of", Integer.toString(number - random.nextInt(40)));
            case 2, 3 -> set.put("fate", random.nextBoolean() ? "rejected" : null);
            case 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14 -> set.put("net_ston", decimal(17, 24, 2));
            case 15, 16, 17, 18, 19, 20, 21, 22, 23 -> set.put("mix", MIXES.get(random.nextInt(2)));
            case 24, 25, 26, 27, 28, 29, 30, 31 -> set.put("paver_degF", random.nextBoolean() ? null : whole(255, 305));
            default -> set.put("truck", "T199");
        }
        key(Kind.AMEND, true, Map.of("of", old(), "set", set, "reason", "read again from the ticket"));
    }

    /** What is rare and has to come out right all the same. */
    private void odd() {
        switch (random.nextInt(7)) {
            case 0 -> {
                Map<String, Object> twin = load();
                tickets.add(key(Kind.TICKET, true, twin));
                tickets.add(key(Kind.TICKET, true, twin));
            }
            case 1 -> {
                Map<String, Object> again = load();
                again.put("reissue_of", Integer.toString(number - 1));
                tickets.add(key(Kind.TICKET, true, again));
            }
            case 2 -> {
                Map<String, Object> unread = load();
                unread.put("number", "48?" + number % 100);
                tickets.add(key(Kind.TICKET, true, unread));
            }
            case 3 -> tickets.add(key(Kind.TICKET, true, Map.of("truck", "T101", "mix", "19-64")));
            case 4 -> {
                Map<String, Object> gone = load();
                gone.put("fate", random.nextBoolean() ? "void-at-plant" : "other-job");
                tickets.add(key(Kind.TICKET, true, gone));
            }
            case 5 -> backAndForth();
            default -> {
                Map<String, Object> lost = load();
                lost.remove("plant");
                lost.put("fate", "part-placed");
                tickets.add(key(Kind.TICKET, true, lost));
            }
        }
    }

    /** A strike that is struck, an amendment that is amended, and one that is struck. */
    private void backAndForth() {
        if (tickets.isEmpty()) {
            return;
        }
        int strike = key(Kind.STRIKE, true, Map.of("of", old(), "reason", "taken for another"));
        key(Kind.STRIKE, true, Map.of("of", book + "/" + strike, "reason", "it was that one"));
        Map<String, Object> set = Map.of("net_ston", new BigDecimal("20.00"));
        int amend = key(Kind.AMEND, true, Map.of("of", old(), "set", set, "reason", "slip"));
        key(
                Kind.AMEND,
                true,
                Map.of(
                        "of",
                        book + "/" + amend,
                        "set",
                        Map.of("net_ston", new BigDecimal("20.10")),
                        "reason",
                        "again"));
        int none = key(Kind.AMEND, true, Map.of("of", old(), "set", set, "reason", "wrong line"));
        key(Kind.STRIKE, true, Map.of("of", book + "/" + none, "reason", "wrong line"));
    }

    private String old() {
        return book + "/" + tickets.get(random.nextInt(tickets.size()));
    }

    private int key(Kind kind, boolean timed, Map<String, Object> plain) {
        clock = clock.plusSeconds(1);
        Entry entry = (Entry) Fields.build(kind.type(), plain).value();
        Unwritten unwritten = new Unwritten(timed ? clock : null, "RK", Source.LIVE, entry, Aside.NONE);
        byte[] line = LineText.bytes(new LineText.Place(job, shift, book), ++n, unwritten, clock.plusSeconds(9), head);
        out.writeBytes(line);
        out.write('\n');
        head = Chain.hash(line);
        return n;
    }

    private void end(int revision) throws IOException {
        FileName name = FileName.of(shift, book, revision);
        Files.write(folder.resolve("diary").resolve(name.text()), out.toByteArray());
        String seal = "{\"book\":\"" + book + "\",\"lines\":" + n + ",\"seal\":\"" + head + "\"}";
        Files.write(folder.resolve("diary").resolve(name.beside("seal")), seal.getBytes(UTF_8));
    }

    private BigDecimal whole(int from, int to) {
        return BigDecimal.valueOf(from + random.nextInt(to - from));
    }

    private BigDecimal decimal(int from, int to, int scale) {
        int ten = scale == 2 ? 100 : 10;
        return BigDecimal.valueOf(from * ten + random.nextInt((to - from) * ten), scale);
    }

    private static String sta(int feet) {
        return feet / 100 + String.format("+%02d", feet % 100);
    }

    /** {@code FOLDER JOBS SHIFTS LINES}: for the benchmark. */
    public static void main(String[] words) throws IOException {
        make(Path.of(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]), Integer.parseInt(words[3]));
    }
}
