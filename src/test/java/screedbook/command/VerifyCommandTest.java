package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Seal;
import screedbook.report.Schema;
import screedbook.shelf.KeptShift;

/** A whole archive looked at: as text, as JSON, from a disk that takes nothing. */
class VerifyCommandTest {
    @TempDir
    Path folder;

    private Path archive;
    private Seal seal;

    private void archive() throws IOException {
        archive = folder.resolve("attic");
        Path bend = archive.resolve("2026/north/bend");
        seal = KeptShift.opened(KeptShift.job(bend), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "20.10")
                .ticket("07:10", "48218", "21.05")
                .closed();
        KeptShift.opened(KeptShift.job(archive.resolve("2027/juniper")), "2027-05-03-day", "paver")
                .close();
        Files.createDirectories(archive.resolve("2027/papers"));
    }

    private Path diary() {
        return archive.resolve("2026/north/bend/diary/2026-06-03-day.paver.jsonl");
    }

    private static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void everyJobOfAnArchiveIsLookedAtHoweverItIsSorted() throws IOException {
        archive();

        Said said = Said.by("verify", archive);

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines())
                .contains(
                        archive.resolve("2026/north/bend").toString(),
                        archive.resolve("2027/juniper").toString(),
                        "  seal of 2026-06-03-day paver  " + seal.shortForm());
    }

    @Test
    void behindManyJobsStandsWhichOfThemAreNotAsTheyWereWritten() throws IOException {
        archive();
        assertThat(Said.by("verify", archive).out()).endsWith("of 2 jobs 2 are as they were written\n");

        edit(diary(), "48217", "48271");

        Said said = Said.by("verify", archive);
        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out())
                .endsWith("of 2 jobs 1 is as it was written, not so:\n  " + archive.resolve("2026/north/bend") + "\n");
        assertThat(Said.by("verify", archive.resolve("2027/juniper")).out()).doesNotContain(" jobs ");
    }

    @Test
    void aFolderThatIsALinkIsNotGoneInto() throws IOException {
        archive();
        Files.createSymbolicLink(archive.resolve("2027/round"), archive);

        assertThat(Said.by("verify", archive).out().lines().filter(line -> line.endsWith("bend")))
                .hasSize(1);
    }

    @Test
    void aProgramReadsWhatIsNotAsItWasWritten() throws IOException {
        archive();
        String whole = Said.by("verify", archive, "--format", "json").out();
        edit(diary(), "\"net_ston\":20.10", "\"net_ston\":29.10");

        Said said = Said.by("verify", archive, "--format", "json");

        Schema schema = Schema.shipped("verify.json");
        assertThat(schema.wrongs(whole)).isEmpty();
        assertThat(schema.wrongs(said.out())).isEmpty();
        assertThat(schema.wrongs(whole.replace("\"as_written\"", "\"written\"")))
                .isNotEmpty();
        assertThat(said.exit()).isEqualTo(1);
        Map<?, ?> found = (Map<?, ?>) Schema.parse(said.out());
        Map<?, ?> bend = (Map<?, ?>) ((List<?>) found.get("jobs")).get(0);
        assertThat(found.get("as_written")).isEqualTo(false);
        assertThat(bend.get("damages"))
                .isEqualTo(List.of(Map.of(
                        "file", "2026-06-03-day.paver.jsonl",
                        "line", BigDecimal.valueOf(2),
                        "said", "it is not as it was when line 3 was written")));
        Map<?, ?> sealed = (Map<?, ?>) ((List<?>) bend.get("seals")).get(0);
        assertThat(sealed.get("sha256")).isEqualTo(seal.sha256());
        assertThat(sealed.get("short")).isEqualTo(seal.shortForm());
        assertThat(((Map<?, ?>) ((List<?>) found.get("jobs")).get(1)).get("as_written"))
                .isEqualTo(true);
    }

    @Test
    void anotherFormIsNotKnown() throws IOException {
        archive();

        assertThat(Said.by("verify", archive, "--format", "csv"))
                .isEqualTo(new Said(
                        2, "", "screedbook verify: --format csv is not known; right would be one of text, json\n"));
    }

    @Test
    void whoHasABookOpenStandsBesideItsFile() throws IOException {
        archive();
        try (KeptShift open = KeptShift.again(
                screedbook.diary.JobFolder.at(archive.resolve("2027/juniper")), "2027-05-03-day", "paver", "12:00")) {
            Said said = Said.by("verify", archive);

            assertThat(said.exit()).isZero();
            assertThat(said.out())
                    .containsPattern(
                            "diary/2027-05-03-day.paver.held\n {6}held by RK since 2027-05-03T12:00:00-06:00 on"
                                    + " .+, process [0-9]+, or left so by a program that was cut short\n");
            open.ticket("12:10", "1", "20.00");
        }
        assertThat(Said.by("verify", archive).out()).doesNotContain("held by");
    }

    /** As from a disc in an archive: the same words, and not one byte put beside the files. */
    @Test
    void aDiskThatMayOnlyBeReadIsReadAndNotTouched() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=8m", "none", disk.toString()) == 0;
        if (!mounted) {
            System.out.println("NOT TESTED: a record on a disk that may only be read: needs root to mount tmpfs");
        }
        assumeTrue(mounted, "needs root to mount tmpfs");
        try {
            copy(Path.of("demo-logs"), disk.resolve("demo-logs"));
            List<String> words = List.of("verify", "day", "findings", "limits");
            List<Said> before = words.stream().map(word -> looked(word, disk)).toList();
            List<String> names = names(disk);
            assertThat(run("mount", "-o", "remount,ro", disk.toString())).isZero();

            assertThat(words.stream().map(word -> looked(word, disk)).toList()).isEqualTo(before);
            assertThat(before).extracting(Said::exit).containsOnly(0);
            assertThat(names(disk)).isEqualTo(names);
            assertThat(Said.by("csv", disk.resolve("demo-logs/harrow-bend"), "--to", folder.resolve("tables"))
                            .exit())
                    .isZero();
            assertThat(Said.by("csv", disk.resolve("demo-logs/harrow-bend"), "--to", disk.resolve("tables")))
                    .satisfies(no -> assertThat(no.exit()).isEqualTo(3))
                    .satisfies(no -> assertThat(no.err()).contains("Read-only file system"));
        } finally {
            run("umount", "-l", disk.toString());
        }
    }

    private static Said looked(String word, Path disk) {
        return word.equals("verify")
                ? Said.by(word, disk.resolve("demo-logs"))
                : Said.by(word, disk.resolve("demo-logs/harrow-bend"));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.sorted().toList()) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }

    private static int run(String... command) throws Exception {
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }
}
