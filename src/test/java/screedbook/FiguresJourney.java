package screedbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Ground;
import screedbook.check.InForce;
import screedbook.desk.Key;
import screedbook.desk.Look;
import screedbook.desk.Model;
import screedbook.desk.Msg;
import screedbook.desk.Setting;
import screedbook.desk.Update;
import screedbook.desk.View;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.Opened;
import screedbook.diary.Saved;
import screedbook.entry.Aside;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Note;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;

/** The figures of the README, measured and printed; what they must not exceed is held. */
@Tag("heavy")
class FiguresJourney {
    private static final Path JAR = Path.of(System.getProperty("screedbook.jar"));
    private static final Path LAUNCHER = JAR.resolveSibling("screedbook");
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final String JOB = "harrow-bend";
    /** The demo's shift with the most lines. */
    private static final ShiftId TWO_BOOKS = ShiftId.of("2026-05-18-day");

    private static final int ROUNDS = 11;

    @TempDir
    Path home;

    private Path job;

    @BeforeEach
    void copyTheDemo() throws IOException {
        Path from = Path.of("demo-logs", JOB);
        job = home.resolve(JOB);
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, job.resolve(from.relativize(file).toString()));
            }
        }
    }

    @Test
    void theFirstFullScreenComesBeforeNineJavasThatSayHello() throws Exception {
        String hello = JAVA + " -cp " + hello() + " Hello";
        String plain = JAVA + " -jar " + JAR + " " + job;
        String launched = LAUNCHER + " " + job;
        Map<String, List<Double>> seen = new LinkedHashMap<>();
        for (int round = 0; round <= ROUNDS; round++) {
            for (String command : List.of(hello, plain, launched)) {
                double ms = untilSeen(command, command.equals(hello) ? "hello" : "closed");
                if (round > 0) {
                    seen.computeIfAbsent(command, c -> new ArrayList<>()).add(ms);
                }
            }
        }
        double base = median(seen.get(hello));
        double jar = median(seen.get(plain));
        double launcher = median(seen.get(launched));
        System.out.printf(
                "first full screen, median of %d: hello %.0f ms; java -jar %.0f ms, %.1f times hello; launcher %.0f ms, %.1f times%n",
                ROUNDS, base, jar, jar / base, launcher, launcher / base);

        assertThat(launcher / base).as("the launcher, in hellos").isLessThanOrEqualTo(9);
    }

    /** Starts a command in a terminal of its own and waits for a text on it; the program is then told to quit. */
    private double untilSeen(String command, String text) throws Exception {
        long start = System.nanoTime();
        Process script = script(command);
        double ms = waitFor(script, text, start);
        quit(script);
        return ms;
    }

    private Process script(String command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder("script", "-qfec", command, "/dev/null").redirectErrorStream(true);
        builder.environment().put("TERM", "xterm-256color");
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        return builder.start();
    }

    private static double waitFor(Process script, String text, long start) throws IOException {
        StringBuilder screen = new StringBuilder();
        byte[] part = new byte[1 << 16];
        InputStream in = script.getInputStream();
        while (screen.indexOf(text) < 0) {
            int count = in.read(part);
            assertThat(count).as("bytes after: " + screen).isPositive();
            screen.append(new String(part, 0, count, UTF_8));
        }
        return (System.nanoTime() - start) / 1e6;
    }

    private static void type(Process script, String keys) throws IOException {
        script.getOutputStream().write(keys.getBytes(UTF_8));
        script.getOutputStream().flush();
    }

    private static void quit(Process script) throws Exception {
        type(script, "q");
        script.getInputStream().readAllBytes();
        script.waitFor();
    }

    private Path hello() throws IOException {
        Path source = Files.writeString(
                home.resolve("Hello.java"),
                "class Hello { public static void main(String[] words) { System.out.println(\"hello\"); } }");
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", home.toString(), source.toString()))
                .isZero();
        return home;
    }

    @Test
    void theDeskLivesInAHeapOf64MiB() throws Exception {
        Process script = script(JAVA + " -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx64m -jar " + JAR + " " + job);
        waitFor(script, "closed", System.nanoTime());
        type(script, "1\n");
        waitFor(script, "tack", System.nanoTime());
        long resident = resident(script);
        script.descendants().forEach(ProcessHandle::destroy);
        script.getInputStream().readAllBytes();
        System.out.printf(
                "memory with a demo shift of two books on the desk, -Xmx64m: %.0f MiB resident%n", resident / 1024.0);

        assertThat(resident / 1024).as("MiB").isLessThan(160);
    }

    /** KiB of the program's memory that is in the machine's, as the kernel counts it. */
    private static long resident(Process script) throws IOException {
        long most = 0;
        for (ProcessHandle each : script.descendants().toList()) {
            Path status = Path.of("/proc", "" + each.pid(), "status");
            for (String line : Files.readAllLines(status)) {
                if (line.startsWith("VmHWM:")) {
                    most = Math.max(most, Long.parseLong(line.replaceAll("\\D", "")));
                }
            }
        }
        assertThat(most).isPositive();
        return most;
    }

    @Test
    void aKeyTouchesAsManyEntriesLateInAShiftAsEarlyAndTakesLessThanTwoMilliseconds() throws IOException {
        for (int entries : new int[] {200, 5000}) {
            AtomicInteger touched = new AtomicInteger();
            Model model = desk(entries, touched);
            List<Double> ms = new ArrayList<>();
            int keys = 0;
            for (int round = 0; round < 60; round++) {
                for (char key : "118\n22.31!s44.5!".toCharArray()) {
                    long start = System.nanoTime();
                    model = struck(model, key(key));
                    View.of(model, 80, 24);
                    ms.add((System.nanoTime() - start) / 1e6);
                    keys++;
                }
            }
            System.out.printf(
                    "a key of a ticket or a surface reading with its drawing, %d entries: median %.2f ms, %.1f entries touched%n",
                    entries, median(ms), touched.get() / (double) keys);
            assertThat(median(ms)).isLessThan(2);
            assertThat(touched.get() / (double) keys).isLessThan(60);
        }
    }

    /** A figure or letter is itself, a line feed is Enter, an exclamation mark gives up what was typed. */
    private static Key key(char typed) {
        return switch (typed) {
            case '\n' -> Key.of(Key.Code.ENTER);
            case '!' -> Key.ctrl("d");
            default -> Key.of("" + typed);
        };
    }

    private static Model struck(Model model, Key key) {
        return Update.of(model, new Msg.Struck(key)).model();
    }

    /** A desk on a shift of so many tickets, which counts how often one of them is looked at from now on. */
    private Model desk(int entries, AtomicInteger touched) throws IOException {
        Job agreed = JobFolder.at(job).job().job().orElseThrow();
        ZonedDateTime now = ZonedDateTime.of(2026, 6, 3, 12, 0, 0, 0, agreed.zone());
        ShiftId shift = ShiftId.of("2026-06-03-day");
        List<Written> lines = new ArrayList<>();
        for (int n = 1; n <= entries; n++) {
            OffsetDateTime time = now.minusSeconds(3L * (entries - n)).toOffsetDateTime();
            lines.add(new Line(
                    "paver",
                    n,
                    n,
                    agreed.id(),
                    shift,
                    time,
                    time,
                    "RK",
                    Source.LIVE,
                    ticket(n),
                    Aside.NONE,
                    List.of(),
                    "{}"));
        }
        Ground ground = new Ground(List.of(
                new InForce("paver", 1, Optional.of(new Agreed(agreed, 1, "ab12")), SpecSheet.shipped("practice"))));
        Day day = Day.of(shift, List.of(lines));
        Day watched = new Day(day.shift(), day.written(), watched(day.all(), touched), day.adrift());
        Model model = Model.start(new Setting(Optional.of(agreed), JOB, "paver", "RK", Look.NIGHT, false));
        Msg.Page page = new Msg.Page(shift, "paver", watched, ground, ToDate.NONE, List.of(), List.of());
        for (Msg message : List.of(
                new Msg.Size(80, 24),
                new Msg.Minute(now),
                new Msg.Folder(Optional.of(agreed), List.of(), List.of()),
                new Msg.Opened(page, List.of(), true, ""))) {
            model = Update.of(model, message).model();
        }
        View.of(model, 80, 24);
        assertThat(touched.get()).as("entries touched by the opening").isGreaterThan(entries);
        touched.set(0);
        return model;
    }

    private static List<Standing<?>> watched(List<Standing<?>> all, AtomicInteger touched) {
        return new AbstractList<>() {
            @Override
            public Standing<?> get(int index) {
                touched.incrementAndGet();
                return all.get(index);
            }

            @Override
            public int size() {
                return all.size();
            }
        };
    }

    private static Entry ticket(int n) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("plant", "Quarry Road");
        values.put("number", "" + (100_000 + n));
        values.put("truck", "T" + (100 + n % 30));
        values.put("mix", "19-64");
        values.put("net_ston", new BigDecimal("21.96"));
        values.put("paver_degF", new BigDecimal(280 + n % 20));
        values.put("pull", "A");
        values.put("lift", BigDecimal.ONE);
        return (Entry) Fields.build(Kind.TICKET.type(), values).value();
    }

    @Test
    void aLineIsForcedToTheDiskBeforeAPersonNotices() throws IOException {
        Path folder = Files.createTempDirectory(Path.of("target"), "figures");
        OffsetDateTime now = OffsetDateTime.now();
        List<Double> ms = new ArrayList<>();
        ShiftId shift = new ShiftId(now.toLocalDate(), "day");
        Opened opened = JobFolder.at(folder).open(shift, "paver", JOB, "RK", now);
        try (Book book = ((Opened.Ready) opened).book()) {
            for (int i = 0; i < 300; i++) {
                Note note = Fields.build(Note.class, Map.of("text", "a load every few minutes, " + i))
                        .value();
                Unwritten entry = new Unwritten(now, "RK", Source.LIVE, note, Aside.NONE);
                long start = System.nanoTime();
                Saved saved = book.append(List.of(entry), now).join();
                ms.add((System.nanoTime() - start) / 1e6);
                assertThat(saved.refused()).isEmpty();
            }
        }
        List<Double> later = ms.subList(100, ms.size());
        System.out.printf(
                "append and force of a line: median %.2f ms, 99 of 100 within %.2f ms%n",
                median(later), part(later, 0.99));

        assertThat(median(later)).isLessThan(10);
    }

    @Test
    void aDemoShiftOfTwoBooksIsOpenedVerifiedAndAddedUp() throws Exception {
        List<Double> inside = new ArrayList<>();
        List<Double> whole = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            ShiftFile file = Shelf.at(job).shift(TWO_BOOKS);
            inside.add((System.nanoTime() - start) / 1e6);
            assertThat(file.read().damages()).isEmpty();
            start = System.nanoTime();
            Process day = new ProcessBuilder(
                            LAUNCHER.toString(), "day", job.toString(), "--shift", TWO_BOOKS.toString())
                    .start();
            String page = new String(day.getInputStream().readAllBytes(), UTF_8);
            assertThat(day.waitFor()).isZero();
            whole.add((System.nanoTime() - start) / 1e6);
            assertThat(page).contains("NEEDS A DECISION");
        }
        System.out.printf(
                "open, verify and add up a demo shift of two books (%d lines), findings too: median %.0f ms; its page"
                        + " printed by the command, program start in it: %.0f ms%n",
                JobFolder.at(job).glances().get(TWO_BOOKS).lines(), median(inside), median(whole));

        assertThat(median(inside)).isLessThan(2000);
    }

    private static double median(List<Double> all) {
        return part(all, 0.5);
    }

    private static double part(List<Double> all, double share) {
        double[] sorted = all.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * (sorted.length - 1)))];
    }
}
