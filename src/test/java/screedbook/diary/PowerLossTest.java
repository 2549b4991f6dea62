package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.LoopDisk;
import screedbook.Tried;
import screedbook.entry.Line;

/**
 * The power goes while another program writes: the file system is shut down under it, what was only in memory is gone,
 * and it is mounted again. Beside it stands the same program without its force, which has to lose lines here.
 */
@ExtendWith(Tried.class)
@Timeout(600)
class PowerLossTest {
    @TempDir
    Path folder;

    private final Random random = new Random(20260603);

    /**
     * How many lines were promised before the power went, how many of those were gone afterwards, and how many more
     * were gone of those promised while the kernel was at it, see {@link LoopDisk#powerOff()}.
     */
    private record Count(int promised, int lost, int meanwhile) {
        Count and(Count more) {
            return new Count(promised + more.promised, lost + more.lost, meanwhile + more.meanwhile);
        }
    }

    /** The hashes of the lines promised before the power went and while the kernel was at it. */
    private record Promised(List<String> before, List<String> meanwhile) {}

    @Test
    @Tag("faults-short")
    void aPromisedLineOutlivesThePower() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 32, folder)) {
            Count count = rounds(disk, 2, "forced");
            assertThat(count.promised()).isPositive();
            assertThat(count.lost()).isZero();
        }
    }

    @Test
    @Tag("faults-short")
    void withoutTheForceThisTestFindsLinesLost() throws Exception {
        try (LoopDisk disk = LoopDisk.mounted("ext4", 32, folder)) {
            assertThat(rounds(disk, 1, "unforced").lost()).isPositive();
        }
    }

    @ParameterizedTest
    @Tag("faults")
    @CsvSource({"ext4, 64", "xfs, 320"})
    void noPromisedLineIsLostInTwentyPowerCuts(String type, int mebibytes) throws Exception {
        try (LoopDisk disk = LoopDisk.mounted(type, mebibytes, folder)) {
            Count count = rounds(disk, 20, "forced");
            Tried.row(
                    "power cut, " + type,
                    "20 rounds",
                    count.promised(),
                    count.lost(),
                    "the next line refused each time; gone of those forced while the kernel was shutting down: "
                            + count.meanwhile());
            assertThat(count.promised()).isGreaterThan(200);
            assertThat(count.lost()).isZero();
        }
        try (LoopDisk disk = LoopDisk.mounted(type, mebibytes, folder)) {
            Count count = rounds(disk, 3, "unforced");
            Tried.row(
                    "the same with the force taken out, " + type,
                    "3 rounds",
                    count.promised(),
                    count.lost(),
                    "lost, as it has to be: the test can fail");
            assertThat(count.lost()).isPositive();
        }
    }

    private Count rounds(LoopDisk disk, int rounds, String how) throws Exception {
        Count count = new Count(0, 0, 0);
        Set<String> ever = new HashSet<>();
        for (int round = 0; round < rounds; round++) {
            Promised promised = untilThePowerGoes(disk, how);
            Set<String> there = opened(disk.at());
            ever.addAll(promised.before());
            count = count.and(new Count(
                    promised.before().size(), gone(promised.before(), there), gone(promised.meanwhile(), there)));
            if (how.equals("forced")) {
                assertThat(gone(ever, there)).as("lost until round %d", round).isZero();
                assertThat(JobFolder.at(disk.at()).shift(Shifts.THIRD).damages())
                        .isEmpty();
            }
        }
        return count;
    }

    private static int gone(Collection<String> promised, Set<String> there) {
        return (int) promised.stream().filter(line -> !there.contains(line)).count();
    }

    /** Lets a program write until the power goes under it, and puts the power on again. */
    private Promised untilThePowerGoes(LoopDisk disk, String how) throws Exception {
        List<String> told = new ArrayList<>();
        long off;
        int more = 3 + random.nextInt(60);
        try (Child child = new Child("book", disk.at().toString(), how)) {
            while (told.size() < more) {
                told.add(child.says());
            }
            off = disk.powerOff();
            String line = child.says();
            for (; !line.startsWith("refused "); line = child.says()) {
                told.add(line);
            }
            assertThat(line).contains("Input/output error");
            assertThat(child.says()).isNull();
            assertThat(child.ended()).isZero();
        }
        disk.unmount();
        disk.mount();
        Map<Boolean, List<String>> before = told.stream()
                .map(line -> line.split(" "))
                .collect(Collectors.partitioningBy(
                        words -> Long.parseLong(words[0]) < off,
                        Collectors.mapping(words -> words[1], Collectors.toList())));
        return new Promised(before.get(true), before.get(false));
    }

    /** Opens the book as the next sitting does, and gives the hashes of what is read in it. */
    private static Set<String> opened(Path job) throws IOException {
        Opened opened = JobFolder.at(job)
                .open(Shifts.THIRD, "paver", "harrow-bend", "RK", Shifts.NOON, java.nio.channels.FileChannel::open);
        assertThat(opened).isInstanceOf(Opened.Ready.class);
        ((Opened.Ready) opened).book().close();
        return JobFolder.at(job).shift(Shifts.THIRD).books().stream()
                .flatMap(book -> book.lines().stream())
                .filter(Line.class::isInstance)
                .map(line -> Chain.hash(((Line) line).raw().getBytes(StandardCharsets.UTF_8)))
                .collect(Collectors.toSet());
    }
}
