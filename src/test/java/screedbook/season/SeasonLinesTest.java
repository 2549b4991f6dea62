package screedbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.InShort;
import screedbook.diary.JobFolder;
import screedbook.diary.MadeArchive;
import screedbook.diary.Recall;
import screedbook.entry.ShiftId;

/**
 * The season's lines from bytes that were read before are those of a reading, and nothing that changed since is taken from
 * before. What is expected is the program's own reading of every shift.
 */
class SeasonLinesTest {
    @TempDir
    private Path folder;

    private Path job;
    private Path cache;

    @BeforeEach
    void anArchive() throws IOException {
        MadeArchive.make(folder.resolve("jobs"), 1, 4, 30);
        job = folder.resolve("jobs").resolve("made-01");
        cache = folder.resolve("cache");
    }

    /** What is told each time, the build of the program given. */
    private List<Map<ShiftId, InShort>> told(String build) {
        List<Map<ShiftId, InShort>> told = new ArrayList<>();
        new SeasonLines(JobFolder.at(job), Optional.of(Recall.of(cache, job, build))).tell(() -> true, told::add);
        return told;
    }

    private Map<ShiftId, InShort> anew() {
        List<Map<ShiftId, InShort>> told = new ArrayList<>();
        new SeasonLines(JobFolder.at(job), Optional.empty()).tell(() -> true, told::add);
        assertThat(told.get(0)).as("nothing is known before it is read").isEmpty();
        return told.get(told.size() - 1);
    }

    private Path diary(int which) throws IOException {
        try (Stream<Path> files = Files.list(job.resolve("diary"))) {
            return files.filter(f -> f.toString().endsWith(".jsonl"))
                    .sorted()
                    .toList()
                    .get(which);
        }
    }

    private Path kept() throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            return files.toList().get(0);
        }
    }

    @Test
    void whatWasReadBeforeIsThereAtOnceAndTheSame() {
        List<Map<ShiftId, InShort>> first = told("a");
        assertThat(first).hasSize(5);

        List<Map<ShiftId, InShort>> second = told("a");

        assertThat(second).hasSize(1);
        assertThat(second.get(0)).hasSize(4).isEqualTo(anew()).isEqualTo(first.get(4));
    }

    @Test
    void anotherBuildOfTheProgramTakesNothingFromBefore() {
        told("a");

        assertThat(told("b").get(0)).isEmpty();
    }

    @Test
    void aByteThatChangedInAClosedDiaryMakesItAndAllBehindItReadAnewAndSaysDamaged() throws IOException {
        told("a");
        Path diary = diary(2);
        String text = Files.readString(diary);
        diary.toFile().setWritable(true);
        Files.writeString(diary, text.replaceFirst("\"truck\":\"T1", "\"truck\":\"T2"));

        List<Map<ShiftId, InShort>> told = told("a");

        assertThat(told.get(0)).as("the two shifts before it").hasSize(2);
        Map<ShiftId, InShort> last = told.get(told.size() - 1);
        assertThat(last).isEqualTo(anew());
        assertThat(last.values().stream().mapToInt(InShort::damages).filter(n -> n > 0))
                .hasSize(1);
    }

    @Test
    void aChangedRevisionOrSheetTakesNothingFromBefore() throws IOException {
        told("a");
        Files.writeString(job.resolve("job.jsonl"), "{}\n", java.nio.file.StandardOpenOption.APPEND);

        assertThat(told("a").get(0)).isEmpty();

        try (Stream<Path> sheets = Files.list(job.resolve("spec"))) {
            Files.delete(sheets.sorted().toList().get(0));
        }
        assertThat(told("a").get(0)).isEmpty();
    }

    @Test
    void whatLiesInTheCacheAndIsNotAsItWasWrittenIsPassedOver() throws IOException {
        told("a");
        String text = Files.readString(kept());
        List<String> damaged = List.of(
                "", "x", text.substring(0, text.length() - 5), text.replace(";closed;", ";open;"), text + "more 1\n");

        for (String each : damaged) {
            Files.writeString(kept(), each);
            List<Map<ShiftId, InShort>> told = told("a");
            assertThat(told.get(0)).as(each).isEmpty();
            assertThat(told.get(told.size() - 1)).isEqualTo(anew());
        }
        Files.write(kept(), new byte[] {(byte) 0xff, 0, (byte) 0xc0});
        assertThat(told("a").get(0)).isEmpty();
    }

    @Test
    void aCacheThatCannotBeWrittenTakesNothingAway() throws IOException {
        Files.write(cache, "a file where the folder would be".getBytes(StandardCharsets.UTF_8));

        List<Map<ShiftId, InShort>> told = told("a");

        assertThat(told.get(told.size() - 1)).isEqualTo(anew());
    }

    @Test
    void aShiftThatIsWrittenToWhileItIsReadIsNotKept() {
        List<Map<ShiftId, InShort>> told = new ArrayList<>();
        new SeasonLines(JobFolder.at(job), Optional.of(Recall.of(cache, job, "a"))).tell(() -> true, lines -> {
            told.add(lines);
            if (told.size() == 1) {
                grow();
            }
        });

        assertThat(told("a").get(0)).as("those before the last").hasSize(3);
    }

    private void grow() {
        try {
            Path last = diary(3);
            last.toFile().setWritable(true);
            Files.writeString(last, "more\n", java.nio.file.StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aReadingThatIsNotWantedAnyMoreEnds() {
        List<Map<ShiftId, InShort>> told = new ArrayList<>();

        new SeasonLines(JobFolder.at(job), Optional.empty()).tell(() -> told.size() < 3, told::add);

        assertThat(told).hasSize(3);
        assertThat(told.get(2)).hasSize(2);
    }

    @Test
    void theCacheLiesWhereTheSystemHasIt() {
        assertThat(Recall.place(Map.of("HOME", "/home/rk"))).contains(Path.of("/home/rk/.cache/screedbook"));
        assertThat(Recall.place(Map.of("HOME", "/home/rk", "XDG_CACHE_HOME", "/var/c")))
                .contains(Path.of("/var/c/screedbook"));
        assertThat(Recall.place(Map.of("HOME", "/home/rk", "XDG_CACHE_HOME", "not/absolute")))
                .contains(Path.of("/home/rk/.cache/screedbook"));
        assertThat(Recall.place(Map.of())).isEmpty();
    }
}
