package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import screedbook.Tried;
import screedbook.entry.Line;
import screedbook.entry.SetAside;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;

/**
 * A short shift is kept on a disk that remembers what was asked of it; every file that a power cut could have left
 * behind at any moment of it is then opened as the next sitting opens it.
 */
@ExtendWith(Tried.class)
@Tag("faults-short")
@Timeout(300)
class CrashStatesTest {
    private static final String NAME = "2026-06-03-day.paver.jsonl";
    private static final int LEAST = 1800;

    @TempDir
    Path folder;

    /** The lines that were ever asked for, and what happened to the file in between. */
    private final Set<String> asked = new HashSet<>();

    private final List<Object> happened = Collections.synchronizedList(new ArrayList<>());
    private final BadDisk disk = new BadDisk();

    /** From here on a line is promised. */
    private record Promise(String line) {}

    /** What a file could hold after the power went, with the lines that were promised by then. */
    private record State(byte[] bytes, Set<String> promised) {}

    @BeforeEach
    void listen() {
        disk.witness = did -> {
            if (did.file().equals(NAME)) {
                happened.add(did);
            }
        };
    }

    @Test
    void everyByteIsInTheDiaryOrASidecarNoPromisedLineIsLostAndNoneIsInvented() throws IOException {
        keepAShift();
        Map<String, State> states = states();
        assertThat(states).hasSizeGreaterThanOrEqualTo(LEAST);
        List<String> wrong = new ArrayList<>();
        long bytes = 0;
        int extra = 0;
        List<State> tried = Tried.all() ? List.copyOf(states.values()) : everyNth(List.copyOf(states.values()));
        for (State state : tried) {
            wrong.addAll(wrong(state, folder.resolve("states").resolve(Chain.hash(state.bytes()))));
            bytes += state.bytes().length;
            extra += extraLines(state) > 0 ? 1 : 0;
        }
        assertThat(wrong).isEmpty();
        assertThat(extra)
                .as("states in which a plain reader of lines sees too many")
                .isPositive();
        int promised = tried.stream().mapToInt(s -> s.promised().size()).sum();
        Tried.row(
                "crash states: every cut, missing sector, garbage tail",
                "%,d states".formatted(tried.size()),
                promised,
                0,
                "%,d of %,d bytes in the diary or a named sidecar, no line invented; in %d a plain reader of lines sees too many"
                        .formatted(bytes, bytes, extra));
    }

    /** The two ways in which a program could go about it wrongly are found by the same states. */
    @Test
    void withoutTheForceOrTheSidecarTheseStatesFindLinesAndBytesLost() throws IOException {
        disk.forceLies = true;
        keepAShift();
        long most = 0;
        for (State state : states().values()) {
            Set<String> there = new HashSet<>(Arrays.asList(text(state.bytes()).split("\n")));
            most = Math.max(
                    most,
                    state.promised().stream()
                            .filter(line -> !there.contains(line))
                            .count());
        }
        assertThat(most)
                .as("promised lines that a disk without force could lack")
                .isPositive();

        happened.clear();
        disk.forceLies = false;
        keepAShift();
        int lost = 0;
        int states = 0;
        for (State state : states().values()) {
            lost += lastLineEnd(state.bytes()) < state.bytes().length ? 1 : 0;
            states++;
        }
        assertThat(lost).as("states in which cutting the tail off loses bytes").isGreaterThan(LEAST / 2);
        Tried.row(
                "the same with the force, or the sidecar, taken out",
                "%,d states".formatted(states),
                0,
                0,
                "without the force up to %d promised lines lost in one state; without the sidecar bytes lost in %,d states"
                        .formatted(most, lost));
    }

    /** The opening that sets a tail aside is itself cut short at every byte; the opening after it loses nothing either. */
    @Test
    void anOpeningThatTheEndOfThePowerCutsShortLosesNothing() throws IOException {
        keepAShift();
        byte[] whole =
                Files.readAllBytes(folder.resolve("kept-false").resolve("diary").resolve(NAME));
        byte[] torn = Arrays.copyOf(whole, whole.length - 9);
        int at = lastLineEnd(torn);
        for (int cut = 0; cut <= torn.length - at; cut++) {
            Path job = folder.resolve("again-" + cut);
            write(job, NAME, torn);
            write(job, NAME + ".torn-" + at, Arrays.copyOfRange(torn, at, at + cut));
            assertThat(wrongAfterOpening(new State(torn, Set.of()), job))
                    .as("cut at %d", cut)
                    .isEmpty();
            String sidecar = NAME + ".torn-" + at + (cut == torn.length - at ? "" : "-2");
            assertThat(Files.readAllBytes(job.resolve("diary").resolve(sidecar)))
                    .isEqualTo(Arrays.copyOfRange(torn, at, torn.length));
        }
    }

    /** Opening, loads, one that the full disk refused and cut back, notes longer than sectors, and the close. */
    private void keepAShift() {
        disk.room = -1;
        Path job = folder.resolve("kept-" + disk.forceLies);
        List<Unwritten> entries = List.of(
                Shifts.opening(),
                Shifts.ticket(1),
                Shifts.note("the mat behind the screed, seen from the shoulder; ".repeat(30)),
                Shifts.ticket(2),
                Shifts.note("é ".repeat(350)),
                Shifts.ticket(3),
                Shifts.closing());
        try (Book book = Shifts.ready(job, Shifts.THIRD, "paver", disk).book()) {
            for (Unwritten entry : entries) {
                disk.room = 40;
                assertThat(book.append(List.of(entry), Shifts.NOON).join().refused())
                        .isPresent();
                disk.room = -1;
                Shifts.saved(book, entry).receipts().forEach(receipt -> {
                    asked.add(receipt.line().raw());
                    happened.add(new Promise(receipt.line().raw()));
                });
            }
        }
    }

    /** Every file that could be there at any moment, by its hash; of two alike the later, which promised more. */
    private Map<String, State> states() {
        Map<String, State> states = new LinkedHashMap<>();
        Set<String> promised = new HashSet<>();
        byte[] durable = {};
        List<BadDisk.Did> since = new ArrayList<>();
        for (Object each : happened) {
            if (each instanceof Promise promise) {
                promised.add(promise.line());
            } else if (((BadDisk.Did) each).what().equals("force")) {
                durable = afterAll(durable, since);
                since.clear();
            } else {
                since.add((BadDisk.Did) each);
            }
            possible(durable, since).forEach(b -> states.put(Chain.hash(b), new State(b, Set.copyOf(promised))));
        }
        return states;
    }

    private static byte[] afterAll(byte[] file, List<BadDisk.Did> done) {
        byte[] now = file;
        for (BadDisk.Did did : done) {
            now = did.what().equals("write") ? joined(now, did.bytes()) : Arrays.copyOf(now, (int) did.size());
        }
        return now;
    }

    /** What was not forced may be there up to any step; of the step after it anything may be there. */
    private static List<byte[]> possible(byte[] durable, List<BadDisk.Did> since) {
        List<byte[]> possible = new ArrayList<>(List.of(durable));
        byte[] now = durable;
        for (BadDisk.Did did : since) {
            if (did.what().equals("write")) {
                cuts(now, did.bytes(), possible);
                missing(now, did.bytes(), 512, possible);
                missing(now, did.bytes(), 4096, possible);
                garbage(now, did.bytes().length, possible);
            }
            now = afterAll(now, List.of(did));
            possible.add(now);
        }
        return possible;
    }

    private static void cuts(byte[] before, byte[] written, List<byte[]> into) {
        for (int cut = 1; cut < written.length; cut++) {
            into.add(joined(before, Arrays.copyOf(written, cut)));
        }
    }

    /** The length has reached the disk, and any of the sectors have not. */
    private static void missing(byte[] before, byte[] written, int sector, List<byte[]> into) {
        int first = before.length / sector;
        int sectors = (before.length + written.length - 1) / sector - first + 1;
        for (int without = 1; without < 1 << Math.min(sectors, 6); without++) {
            byte[] file = joined(before, written);
            for (int each = 0; each < sectors; each++) {
                if ((without >> each & 1) == 1) {
                    int from = Math.max(before.length, (first + each) * sector);
                    Arrays.fill(file, from, Math.min(file.length, (first + each + 1) * sector), (byte) 0);
                }
            }
            into.add(file);
        }
    }

    /** The length has reached the disk, and what lies there is of another time: noise, or older lines of this file. */
    private static void garbage(byte[] before, int length, List<byte[]> into) {
        Random random = new Random(before.length);
        for (int round = 0; round < 6; round++) {
            byte[] noise = new byte[length];
            random.nextBytes(noise);
            if (round > 2) {
                noise[random.nextInt(length)] = '\n';
                noise[length - 1] = '\n';
            }
            into.add(joined(before, noise));
        }
        for (int from = 0; from + length < before.length; from += 97) {
            into.add(joined(before, Arrays.copyOfRange(before, from, from + length)));
        }
    }

    /** Opens what the power left behind, and says what is not right then. */
    private List<String> wrong(State state, Path job) throws IOException {
        write(job, NAME, state.bytes());
        return wrongAfterOpening(state, job);
    }

    private List<String> wrongAfterOpening(State state, Path job) throws IOException {
        BadDisk quick = new BadDisk();
        quick.forceLies = true;
        String one = "a line behind it";
        Opened opened = JobFolder.at(job).open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, quick);
        try (Book book = ((Opened.Ready) opened).book()) {
            Shifts.saved(book, Shifts.note(one));
        }
        List<String> wrong = new ArrayList<>();
        if (!conserved(state.bytes(), job.resolve("diary"))) {
            wrong.add(job + ": bytes are gone");
        }
        List<Line> lines = lines(job);
        Set<String> there = new HashSet<>();
        for (Line line : lines) {
            boolean known = asked.contains(line.raw())
                    || line.entry() instanceof SetAside
                    || line.raw().contains(one);
            if (!known || !there.add(line.raw())) {
                wrong.add(job + ": a line is invented: " + line.raw());
            }
        }
        state.promised().stream()
                .filter(line -> !there.contains(line))
                .forEach(line -> wrong.add(job + ": lost " + line));
        if (there.stream().noneMatch(line -> line.contains(one))) {
            wrong.add(job + ": it does not go on");
        }
        return wrong;
    }

    /** Whether the file begins as it was found, up to its end or up to where a sidecar goes on. */
    private static boolean conserved(byte[] found, Path diary) throws IOException {
        byte[] now = Files.readAllBytes(diary.resolve(NAME));
        if (startsWith(now, found)) {
            return true;
        }
        try (Stream<Path> files = Files.list(diary)) {
            for (Path file : files.filter(f -> f.toString().contains(".torn-")).toList()) {
                int at = Integer.parseInt(file.toString().replaceAll(".*\\.torn-(\\d+).*", "$1"));
                byte[] whole = joined(Arrays.copyOf(found, at), Files.readAllBytes(file));
                if (Arrays.equals(whole, found) && startsWith(now, Arrays.copyOf(found, at))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Line> lines(Path job) {
        List<Line> lines = new ArrayList<>();
        for (BookRead book : JobFolder.at(job).shift(Shifts.THIRD).books()) {
            for (Written written : book.lines()) {
                if (written instanceof Line line) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    /** How many lines a reader that only looks for line ends would see and nobody wrote. */
    private int extraLines(State state) {
        int extra = 0;
        int from = 0;
        for (int at = 0; at < state.bytes().length; at++) {
            if (state.bytes()[at] == '\n') {
                extra += asked.contains(text(Arrays.copyOfRange(state.bytes(), from, at))) ? 0 : 1;
                from = at + 1;
            }
        }
        return extra;
    }

    /** Every day one of eight states is opened; which, hangs on their number, and all of them are opened by the profile. */
    private static List<State> everyNth(List<State> all) {
        List<State> some = new ArrayList<>();
        for (int i = all.size() % 8; i < all.size(); i += 8) {
            some.add(all.get(i));
        }
        return some;
    }

    private static int lastLineEnd(byte[] bytes) {
        int at = bytes.length;
        while (at > 0 && bytes[at - 1] != '\n') {
            at--;
        }
        return at;
    }

    private static boolean startsWith(byte[] bytes, byte[] start) {
        return bytes.length >= start.length && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
    }

    private static byte[] joined(byte[] first, byte[] second) {
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        joined.writeBytes(first);
        joined.writeBytes(second);
        return joined.toByteArray();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void write(Path job, String name, byte[] bytes) throws IOException {
        Files.createDirectories(job.resolve("diary"));
        Files.write(job.resolve("diary").resolve(name), bytes);
    }
}
