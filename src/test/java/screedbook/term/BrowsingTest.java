package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.MadeArchive;

/** The season and a search, read on their own threads and told bit by bit. */
class BrowsingTest {
    private static final int SHIFTS = 4;

    @TempDir
    private Path folder;

    private final BlockingQueue<Msg> told = new LinkedBlockingQueue<>();
    private JobFolder job;
    private Browsing browsing;

    @BeforeEach
    void anArchive() throws IOException {
        MadeArchive.make(folder.resolve("jobs"), 1, SHIFTS, 30);
        job = JobFolder.at(folder.resolve("jobs").resolve("made-01"));
        browsing = new Browsing(Optional::empty);
    }

    @AfterEach
    void leave() {
        browsing.stop();
    }

    private <M extends Msg> List<M> until(Class<M> type, Predicate<M> last) throws Exception {
        List<M> all = new ArrayList<>();
        do {
            Msg next = told.poll(60, TimeUnit.SECONDS);
            assertThat(next).isInstanceOf(type);
            all.add(type.cast(next));
        } while (!last.test(all.get(all.size() - 1)));
        return all;
    }

    @Test
    void theSeasonIsToldShiftByShift() throws Exception {
        browsing.season(job, told::add);

        List<Msg.SeasonRead> all = until(Msg.SeasonRead.class, m -> m.read().size() == SHIFTS);
        assertThat(all.get(0).all()).as("every shift is there at once").hasSize(SHIFTS);
        assertThat(all.get(0).read()).isEmpty();
        assertThat(all).hasSize(SHIFTS + 1);
    }

    @Test
    void whatIsFoundIsToldNewestShiftFirstAndHowManyShiftsAreLeft() throws Exception {
        browsing.find(job, "ticket", told::add);

        List<Msg.Found> all = until(Msg.Found.class, m -> m.left() == 0);
        assertThat(all).extracting(Msg.Found::left).containsExactly(3, 2, 1, 0);
        List<Msg.Match> matches = all.get(all.size() - 1).matches();
        assertThat(matches.get(0).shift()).isEqualTo(job.shifts().get(SHIFTS - 1));
        assertThat(matches).extracting(Msg.Match::shift).doesNotContainNull().hasSizeGreaterThan(SHIFTS);
    }

    @Test
    void ofSeveralSearchesTheNewestIsAnsweredToTheEnd() throws Exception {
        for (String words : List.of("ticket", "truck T101", "note")) {
            browsing.find(job, words, told::add);
        }

        List<Msg.Found> all = until(Msg.Found.class, m -> m.words().equals("note") && m.left() == 0);
        assertThat(all).filteredOn(m -> m.words().equals("note")).hasSize(SHIFTS);
        assertThat(told).isEmpty();
    }

    @Test
    void aJobWithoutAShiftIsToldToo() throws Exception {
        JobFolder empty = JobFolder.at(folder.resolve("nothing"));
        browsing.find(empty, "ticket", told::add);
        assertThat(until(Msg.Found.class, m -> m.left() == 0).get(0).matches()).isEmpty();

        browsing.season(empty, told::add);
        assertThat(until(Msg.SeasonRead.class, m -> true).get(0).all()).isEmpty();
    }
}
