package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.StandardOpenOption.APPEND;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Day;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;

/** A glance at a shift says what the whole shift, read, says. */
class GlanceTest {
    @TempDir
    Path temporary;

    private Path job;

    @BeforeEach
    void makeTheFolder() throws IOException {
        job = temporary.resolve("harrow-bend");
        JobFolder.make(job);
    }

    private Glance looksLikeTheWhole(ShiftId shift) {
        Glance glance = JobFolder.at(job).glances().get(shift);
        Day day = JobFolder.at(job).shift(shift).day();
        assertThat(glance.closed()).isEqualTo(day.closed());
        assertThat(glance.lines()).isEqualTo(day.written().size());
        Optional<Glance.Mark> opening = day.opening()
                .map(Standing::line)
                .map(line -> new Glance.Mark(true, line.book(), line.keyed(), line.who()));
        assertThat(glance.opening()).isEqualTo(opening);
        return glance;
    }

    @Test
    void aClosedShiftIsSeenToBeClosed() {
        Shifts.whole(job, Shifts.THIRD, "paver", 3);
        Shifts.whole(job, Shifts.FOURTH, "paver", 1);

        assertThat(looksLikeTheWhole(Shifts.THIRD).closed()).isTrue();
        assertThat(JobFolder.at(job).glances().keySet()).containsExactly(Shifts.THIRD, Shifts.FOURTH);
    }

    @Test
    void aShiftIsOpenWhileOneOfItsBooksIs() {
        Shifts.whole(job, Shifts.THIRD, "paver", 3);
        try (Book book = Shifts.open(job, Shifts.THIRD, "tack")) {
            Shifts.saved(book, Shifts.opening(), Shifts.note("the \"closing\" of the lane comes later"));
        }

        assertThat(looksLikeTheWhole(Shifts.THIRD).closed()).isFalse();
    }

    @Test
    void aTornTailCountsAsALineAndAFileThatIsNoDiaryHoldsNothing() throws IOException {
        Shifts.whole(job, Shifts.THIRD, "paver", 2);
        Path file = job.resolve("diary").resolve(Shifts.THIRD + ".paver.jsonl");
        int lines = looksLikeTheWhole(Shifts.THIRD).lines();
        Files.write(file, "{\"n\":9,\"kind\":\"no".getBytes(UTF_8), APPEND);

        assertThat(looksLikeTheWhole(Shifts.THIRD).lines()).isEqualTo(lines + 1);
        Files.write(file, new byte[0]);
        assertThat(looksLikeTheWhole(Shifts.THIRD).opening()).isEmpty();
    }
}
