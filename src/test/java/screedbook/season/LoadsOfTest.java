package screedbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.Archive;
import screedbook.diary.JobFolder;
import screedbook.diary.Jobs;
import screedbook.diary.LoadsRead;
import screedbook.diary.MadeArchive;
import screedbook.diary.Verify;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.WholeLoads;
import screedbook.report.LoadsCsv;
import screedbook.shelf.KeptShift;

/**
 * Loads, weights and temperatures by day and mix: the quick way, the long way and DuckDB have to give the same, on the
 * demo, on a made archive with every sort of correction in it, and, of the first two, on damaged files.
 */
class LoadsOfTest {
    private static final Path DEMO = Path.of("demo-logs");

    @TempDir
    static Path folder;

    private static Path made;

    private record Told(String table, List<String> damages, List<String> notRead) {}

    private interface Reading {
        LoadsRead read(JobFolder folder, ShiftId shift);
    }

    @BeforeAll
    static void makeAnArchive() throws IOException {
        made = folder.resolve("made");
        MadeArchive.make(made, 2, 9, 400);
    }

    private static Told told(Path jobs, Reading way) throws IOException {
        StringBuilder table = new StringBuilder(LoadsCsv.head());
        List<String> damages = new ArrayList<>();
        List<String> notRead = new ArrayList<>();
        try (LoadsOf loads = new LoadsOf(way::read)) {
            for (Path job : Jobs.in(jobs)) {
                LoadsOf.Trouble trouble = loads.job(
                        job,
                        LocalDate.MIN,
                        LocalDate.MAX,
                        shift -> {},
                        day -> day.mixes().forEach(mix -> table.append(LoadsCsv.row(day.job(), day.day(), mix))));
                trouble.damages().forEach(d -> damages.add(d.toString()));
                notRead.addAll(trouble.notRead());
            }
        }
        return new Told(table.toString(), damages, notRead);
    }

    private static LoadsRead whole(JobFolder folder, ShiftId shift) {
        return new LoadsRead(folder.shift(shift), List.of());
    }

    @Test
    void theQuickWayGivesWhatTheLongWayGives() throws IOException {
        for (Path jobs : List.of(DEMO, made)) {
            Told quick = told(jobs, JobFolder::loads);
            assertThat(quick).isEqualTo(told(jobs, LoadsOfTest::whole));
            assertThat(quick.table().lines().count()).isGreaterThan(4);
        }
    }

    @Test
    void theQuickWayIsTakenWhereChainAndSealProveTheLines() throws IOException {
        JobFolder job = JobFolder.at(Jobs.in(made).get(0));
        ShiftId shift = job.shifts().get(0);

        LoadsRead quick = job.loads(shift);
        int all = job.shift(shift).day().all().size();

        assertThat(quick.read().day().all().size()).isLessThan(all / 8);
        assertThat(quick.whole().stream().mapToInt(WholeLoads::loads).sum()).isGreaterThan(all / 2);
    }

    @Test
    void theShippedQueryGivesTheSameInDuckDb() throws Exception {
        Path archive = folder.resolve("archive");
        for (Path job : Jobs.in(DEMO)) {
            Archive.copy(JobFolder.at(job), archive, "", false);
        }
        List<String> demo = DuckDb.rows(Query.text("duckdb", archive + "/" + Query.ARCHIVE));
        assertThat(demo)
                .hasSizeGreaterThanOrEqualTo(4)
                .isEqualTo(DuckDb.plain(told(DEMO, JobFolder::loads).table()));

        List<String> rows = DuckDb.rows(Query.text("duckdb", made + "/*/diary/*.jsonl"));
        assertThat(rows)
                .isNotEmpty()
                .isEqualTo(DuckDb.plain(told(made, JobFolder::loads).table()));
    }

    /** A job with a shift in US units, and one in metric units behind it. */
    static Path changedUnits(Path job) throws IOException {
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48201", "21.00")
                .closed();
        String metric = Files.readString(DEMO.resolve("brackwater-quay/job.json"));
        Files.writeString(job.resolve("job.json"), metric.replace("\"brackwater-quay\"", "\"my-job\""));
        KeptShift.opened(JobFolder.at(job), "2026-06-04-day", "paver")
                .key(Kind.TICKET, "07:00", Map.of("number", "48202", "net_t", new BigDecimal("20.00")))
                .closed();
        return job;
    }

    /** Short tons one day, tonnes the next: each row is of one unit and says of which. */
    @Test
    void aJobThatChangedItsUnitsIsTheSameInDuckDb() throws Exception {
        Path job = changedUnits(folder.resolve("changed/bend"));
        Path archive = folder.resolve("changed-archive");
        Archive.copy(JobFolder.at(job), archive, "", false);

        List<String> rows = DuckDb.rows(Query.text("duckdb", archive + "/" + Query.ARCHIVE));

        assertThat(rows).isEqualTo(DuckDb.plain(told(job, JobFolder::loads).table()));
        assertThat(rows).anyMatch(row -> row.contains("us")).anyMatch(row -> row.contains("metric"));
    }

    /** The query is worth its length: without corrections the figures are others. */
    @Test
    void correctionsMakeADifferenceInTheMadeArchive() throws Exception {
        String plain = "SELECT sum(net_ston) FROM read_json('" + made
                + "/*/diary/*.jsonl', format='newline_delimited', columns={kind:'VARCHAR', net_ston:'DECIMAL(12,3)'})"
                + " WHERE kind='ticket'";
        String whole = "SELECT sum(received) FROM ("
                + Query.text("duckdb", made + "/*/diary/*.jsonl").replaceAll(";\\s*$", "") + ")";
        assertThat(DuckDb.rows(plain)).isNotEqualTo(DuckDb.rows(whole));
    }

    @Test
    void damagedFilesAreToldTheSameEitherWay() throws IOException {
        Random random = new Random(11);
        Path small = folder.resolve("small");
        MadeArchive.make(small, 1, 2, 60);
        for (int round = 0; round < 40; round++) {
            Path copy = folder.resolve("round-" + round);
            copy(small.resolve("made-01"), copy);
            List<Path> diaries = diaries(copy);
            Path diary = diaries.get(random.nextInt(diaries.size()));
            byte[] bytes = Files.readAllBytes(diary);
            int at = random.nextInt(bytes.length);
            Files.write(diary, hurt(bytes, at, round % 5));

            Told quick = told(copy, JobFolder::loads);

            assertThat(quick).as("round " + round + " byte " + at).isEqualTo(told(copy, LoadsOfTest::whole));
            assertThat(quick.damages()).as("round " + round + " byte " + at).isNotEmpty();
            assertThat(Verify.of(JobFolder.at(copy)).damages().stream()
                            .map(Object::toString)
                            .toList())
                    .as("round " + round + " byte " + at)
                    .containsAll(quick.damages());
        }
    }

    /** A byte changed, taken out, put in; the end cut off; a line end turned. */
    private static byte[] hurt(byte[] bytes, int at, int how) {
        return switch (how) {
            case 0 -> {
                byte[] other = bytes.clone();
                other[at] ^= 1;
                yield other;
            }
            case 1 -> joined(bytes, at, at + 1, "");
            case 2 -> joined(bytes, at, at, "7");
            case 3 -> Arrays.copyOf(bytes, at);
            default ->
                new String(bytes, StandardCharsets.ISO_8859_1)
                        .replace("\n", "\r\n")
                        .getBytes(StandardCharsets.ISO_8859_1);
        };
    }

    private static byte[] joined(byte[] bytes, int to, int from, String between) {
        byte[] made = new byte[to + between.length() + bytes.length - from];
        System.arraycopy(bytes, 0, made, 0, to);
        System.arraycopy(between.getBytes(StandardCharsets.US_ASCII), 0, made, to, between.length());
        System.arraycopy(bytes, from, made, to + between.length(), bytes.length - from);
        return made;
    }

    private static List<Path> diaries(Path job) throws IOException {
        try (Stream<Path> files = Files.list(job.resolve("diary"))) {
            return files.filter(f -> f.toString().endsWith(".jsonl")).sorted().toList();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path each : files.toList()) {
                Path other = to.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(other);
                } else {
                    Files.copy(each, other);
                }
            }
        }
    }
}
