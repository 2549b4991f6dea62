package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.ShiftId;
import screedbook.shelf.KeptShift;

/** The archivist's copy: complete, checked by other tools, never written over. */
class ArchiveTest {
    private static final Path DEMO = Path.of("demo-logs", "harrow-bend");

    @TempDir
    Path folder;

    private static Map<String, String> hashes(Path of) throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(of)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                hashes.put(of.relativize(file).toString(), Chain.hash(Files.readAllBytes(file)));
            }
        }
        return hashes;
    }

    private static List<CSVRecord> manifest(Path job) throws IOException {
        try (var in = Files.newBufferedReader(job.resolve("manifest.csv"))) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in)
                    .getRecords();
        }
    }

    @Test
    void everyFileOfTheClosedShiftsIsThereByteForByteAndTheJobIsAsItWas() throws IOException {
        Map<String, String> before = hashes(DEMO);
        Archive.Copied copied = Archive.copy(JobFolder.at(DEMO), folder.resolve("a"), "ten years", false);

        assertThat(hashes(DEMO)).isEqualTo(before);
        assertThat(copied.folder().getFileName()).hasToString("job=harrow-bend");
        assertThat(copied.shifts()).isEqualTo(JobFolder.at(DEMO).shifts());
        Map<String, String> there = hashes(copied.folder());
        before.forEach((name, hash) -> {
            String at = name.replaceFirst("^diary/(\\d{4})-(\\d{2})", "year=$1/month=$2/$1-$2");
            if (!List.of("job.json", "people.json", "README.txt").contains(name)) {
                assertThat(there).as(name).containsEntry(at, hash);
            }
        });
        assertThat(there.keySet()).doesNotContain("people.json", "job.json");
        assertThat(folder.resolve("a/schema/ticket.json")).exists();
        assertThat(folder.resolve("a/README.txt")).content().contains("HOW LONG TO KEEP IT");
    }

    @Test
    void theManifestNamesBytesHashesSealsAndHowLongToKeepIt() throws Exception {
        Path job = Archive.copy(JobFolder.at(DEMO), folder.resolve("a"), "ten years", false)
                .folder();

        for (CSVRecord row : manifest(job)) {
            byte[] bytes = Files.readAllBytes(job.resolve(row.get("file")));
            assertThat(row.get("bytes")).isEqualTo(Integer.toString(bytes.length));
            assertThat(row.get("sha256")).isEqualTo(Chain.hash(bytes));
            assertThat(row.get("keep")).isEqualTo("ten years");
        }
        JobFolder demo = JobFolder.at(DEMO);
        for (ShiftId shift : demo.shifts()) {
            for (BookRead book : demo.shift(shift).books()) {
                assertThat(manifest(job))
                        .extracting(r -> r.get("seal"))
                        .contains(book.seal().orElseThrow().sha256());
            }
        }
        Process sums = new ProcessBuilder("sha256sum", "--quiet", "-c", "SHA256SUMS")
                .directory(job.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(sums.getInputStream().readAllBytes());
        assertThat(sums.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(sums.exitValue()).as(said).isZero();
    }

    @Test
    void theCopyIsReadLikeTheJobAndFoundAsItWasWrittenAndLookingWritesNothing() throws IOException {
        Path job =
                Archive.copy(JobFolder.at(DEMO), folder.resolve("a"), "", false).folder();
        Map<String, String> before = hashes(folder);

        Verdict verdict = Verify.of(JobFolder.at(job));

        assertThat(verdict.damages()).isEmpty();
        assertThat(verdict.files())
                .extracting(FileRead::file)
                .isEqualTo(Verify.of(JobFolder.at(DEMO)).files().stream()
                        .map(FileRead::file)
                        .toList());
        assertThat(hashes(folder)).isEqualTo(before);

        Path diary = job.resolve("year=2026/month=05/2026-05-12-day.paver.jsonl");
        Files.writeString(diary, Files.readString(diary).replace("T104", "T105"));
        assertThat(Verify.of(JobFolder.at(job)).sound()).isFalse();
    }

    private List<String> seen(Path job) {
        return Verify.of(JobFolder.at(job)).damages().stream()
                .map(d -> d.file() + ": " + d.said())
                .toList();
    }

    /** Chains and seals of what is left hold; only the manifest knows what was there. */
    @Test
    void whatIsGoneOrAnotherThanTheManifestSaysIsNamed() throws IOException {
        Path job =
                Archive.copy(JobFolder.at(DEMO), folder.resolve("a"), "", true).folder();
        Path month = job.resolve("year=2026/month=05");
        Path page = job.resolve("days/2026-05-12-day.txt");
        Path compact = folder.resolve("a/compact/job=harrow-bend/year=2026/month=05/part-0001.jsonl");
        assertThat(seen(job)).isEmpty();

        Files.delete(month.resolve("2026-05-18-day.tack.jsonl"));
        Files.delete(month.resolve("2026-05-18-day.tack.seal"));
        Files.write(compact, (Files.readString(compact).replace("T104", "T105") + "{\"n\":1}\n").getBytes());
        Files.copy(compact, compact.resolveSibling("part-0002.jsonl"));
        Files.write(page, Files.readString(page).replace("1918.68", "1918.86").getBytes());
        Files.writeString(job.resolve("notes.txt"), "seen on the shelf");
        Files.copy(month.resolve("2026-05-12-day.paver.jsonl"), month.resolve("2026-05-11-day.paver.jsonl"));

        assertThat(seen(job))
                .contains(
                        "year=2026/month=05/2026-05-18-day.tack.jsonl: the manifest names it and it is not there",
                        "year=2026/month=05/2026-05-18-day.tack.seal: the manifest names it and it is not there",
                        "days/2026-05-12-day.txt: its bytes are not those of the manifest",
                        "year=2026/month=05/2026-05-11-day.paver.jsonl: the manifest does not name it",
                        "compact/job=harrow-bend/year=2026/month=05/part-0001.jsonl: it does not hold"
                                + " year=2026/month=05/2026-05-12-day.paver.jsonl where the manifest says",
                        "compact/job=harrow-bend/year=2026/month=05/part-0001.jsonl: it holds more than the manifest says",
                        "compact/job=harrow-bend/year=2026/month=05/part-0002.jsonl: the manifest does not name it");
        assertThat(Verify.of(JobFolder.at(job)).beside())
                .contains(new Verdict.Beside("notes.txt", "the manifest does not name it"));

        Files.writeString(job.resolve("manifest.csv"), "file,weight\n");
        assertThat(seen(job)).anyMatch(line -> line.startsWith("manifest.csv: it cannot be read: "));
    }

    @Test
    void everyFileOfTheCopyIsForReadingAlone() throws IOException {
        Path to = folder.resolve("a");
        Path job = Archive.copy(JobFolder.at(DEMO), to, "", true).folder();

        for (Path each : List.of(job, to.resolve("compact"))) {
            try (Stream<Path> files = Files.walk(each)) {
                assertThat(files.filter(Files::isRegularFile).toList())
                        .isNotEmpty()
                        .allSatisfy(file -> assertThat(Folder.isClosed(file))
                                .as(file.toString())
                                .isTrue());
            }
        }
    }

    /** What was agreed before paving was also printed; the archivist keeps the paper's text with the rest. */
    @Test
    void prePavingSheetsGoAlong() throws IOException {
        Path job = folder.resolve("bend");
        KeptShift.job(job);
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver").closed();
        Files.createDirectories(job.resolve("plan"));
        Files.writeString(job.resolve("plan/2026-06-01.txt"), "agreed");

        Path copy =
                Archive.copy(JobFolder.at(job), folder.resolve("a"), "", false).folder();

        assertThat(copy.resolve("plan/2026-06-01.txt")).hasContent("agreed");
        assertThat(manifest(copy)).extracting(row -> row.get("file")).contains("plan/2026-06-01.txt");
        assertThat(seen(copy)).isEmpty();
    }

    /** A folder where a page should be: reading it goes wrong when half of the job was copied. */
    @Test
    void aCopyThatComesToNoEndLeavesNothingBehind() throws IOException {
        Path job = folder.resolve("bend");
        KeptShift.job(job);
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver").closed();
        Files.createDirectories(job.resolve("days/2026-06-03-day.txt"));
        Path to = folder.resolve("a");

        assertThatThrownBy(() -> Archive.copy(JobFolder.at(job), to, "", true)).isInstanceOf(IOException.class);
        assertThat(to).isEmptyDirectory();
    }

    @Test
    void aCopyThatWasCutShortIsNoJobAndIsInTheWayOfNothingUnseen() throws IOException {
        Path to = folder.resolve("a");
        Path job = Archive.copy(JobFolder.at(DEMO), to, "", false).folder();
        Path left = to.resolve(".job=harrow-bend.new");
        Files.move(job, left);

        assertThat(Jobs.in(to)).isEmpty();
        assertThatThrownBy(() -> Archive.copy(JobFolder.at(DEMO), to, "", false))
                .hasMessage(left + ": is what is left of a copy that was cut short; remove it first");
    }

    @Test
    void whatIsThereIsNeverWrittenOver() throws IOException {
        Path to = folder.resolve("a");
        Archive.copy(JobFolder.at(DEMO), to, "", false);
        Map<String, String> before = hashes(to);

        assertThatThrownBy(() -> Archive.copy(JobFolder.at(DEMO), to, "", false))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("job=harrow-bend")
                .hasMessageContaining("is there already and stays as it is");
        assertThat(hashes(to)).isEqualTo(before);
    }

    @Test
    void aShiftThatIsNotClosedIsLeftOutAndNamed() throws IOException {
        Path job = folder.resolve("job");
        KeptShift.job(job);
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver").closed();
        KeptShift.opened(KeptShift.job(job), "2026-06-04-day", "paver").close();

        Archive.Copied copied = Archive.copy(JobFolder.at(job), folder.resolve("a"), "", false);

        assertThat(copied.shifts()).extracting(ShiftId::toString).containsExactly("2026-06-03-day");
        assertThat(copied.open()).extracting(ShiftId::toString).containsExactly("2026-06-04-day");
        assertThat(copied.folder().resolve("year=2026/month=06")).isDirectoryNotContaining("glob:**2026-06-04*");
    }

    @Test
    void theCompactCopyHoldsEachDiaryAtItsOffset() throws IOException {
        Path job =
                Archive.copy(JobFolder.at(DEMO), folder.resolve("a"), "", true).folder();
        Path compact = folder.resolve("a/compact/job=harrow-bend");

        List<String> found = new ArrayList<>();
        for (CSVRecord row : manifest(job)) {
            if (!row.get("shift").isEmpty()) {
                byte[] part = Files.readAllBytes(compact.resolve(row.get("compact_file")));
                int from = Integer.parseInt(row.get("compact_offset"));
                byte[] its = Arrays.copyOfRange(part, from, from + Integer.parseInt(row.get("bytes")));
                assertThat(Chain.hash(its)).as(row.get("file")).isEqualTo(row.get("sha256"));
                found.add(row.get("file"));
            }
        }
        assertThat(found).hasSize(6);
        assertThat(HexFormat.of().parseHex(manifest(job).get(0).get("sha256"))).hasSize(32);
    }
}
