package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Source;

/** Who may read and write what the program makes; and an ordinary user at work, who has no right to pass over that. */
class PermissionsTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void posix() {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (!posix) {
            System.out.println("NOT TESTED: who may read and write the files: there are no POSIX permissions");
        }
        assumeTrue(posix, "needs POSIX permissions");
        job = folder.resolve("bend");
    }

    private Map<String, String> modes() throws IOException {
        Map<String, String> modes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(job)) {
            for (Path each : all.toList()) {
                modes.put(
                        job.relativize(each).toString(),
                        PosixFilePermissions.toString(Files.getPosixFilePermissions(each, LinkOption.NOFOLLOW_LINKS)));
            }
        }
        return modes;
    }

    @Test
    void everythingIsForOwnerAndGroupAloneAndWhatIsClosedIsForReading() throws IOException {
        JobFolder made = JobFolder.at(job);
        JobFolder.make(job);
        made.accept("RK", Shifts.NOON, null);
        Shifts.whole(job, Shifts.THIRD, "paver", 2);
        Book open = Shifts.open(job, Shifts.FOURTH, "paver");
        Shifts.saved(open, Shifts.opening());
        made.saveDrafts(
                Shifts.FOURTH, "paver", List.of(new Draft(Kind.TICKET, Source.LIVE, null, Map.of("net", "21"), "net")));
        made.keepTyped("stamp", Map.of("name", "half"));
        LimitSheets.in(made).freeze("practice", new byte[] {'a'});
        KeptPages.in(made).page(Shifts.THIRD, "page", "csv");
        KeptPages.in(made).soFar(Shifts.FOURTH, "page", "csv");
        KeptPages.in(made).plan(Shifts.THIRD.date(), "plan");
        LotSeeds.in(made).keep("seed");
        KeptPages.tables(job.resolve("tables"), Map.of("ticket.csv", "n"));
        Carry.run(made, job.resolve("stick"), false, Shifts.NOON);

        Map<String, String> modes = modes();
        open.close();

        assertThat(modes).hasSizeGreaterThan(25).containsKeys("job.json.draft", "diary/2026-06-04-day.paver.draft");
        modes.forEach((name, mode) -> {
            boolean closed = name.matches("(stick/)?diary/2026-06-03-day\\.paver\\.(jsonl|seal)");
            boolean directory = Files.isDirectory(job.resolve(name));
            assertThat(mode).as(name).isEqualTo(closed ? "r--r-----" : directory ? "rwxr-x---" : "rw-r-----");
        });
    }

    @Test
    void anOrdinaryUserClosesAShiftAndWritesBehindTheClose() throws Exception {
        try (Child child = Child.ordinary("sitting", job.toString())) {
            assertThat(child.says()).isEqualTo("sealed");
            assertThat(child.says()).isEqualTo("2026-06-03-day.paver.r2.jsonl");
            assertThat(child.says()).isEqualTo("as written: true");
            assertThat(child.says())
                    .as("nobody writes in a closed file by mistake")
                    .isEqualTo("AccessDeniedException");
            assertThat(child.ended()).isZero();
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidAndReadAllTheSame() throws Exception {
        Book open = Shifts.open(job, Shifts.THIRD, "paver");
        Shifts.saved(open, Shifts.opening(), Shifts.ticket(1));
        Map<String, String> before = modes();
        Files.setPosixFilePermissions(job.resolve("diary"), PosixFilePermissions.fromString("r-xr-x---"));
        for (String file : List.of("jsonl", "lock")) {
            Files.setPosixFilePermissions(
                    job.resolve("diary/2026-06-03-day.paver." + file), PosixFilePermissions.fromString("r--r-----"));
        }
        try (Child child = Child.ordinary("look", job.toString())) {
            assertThat(child.says()).isEqualTo("diary: nothing can be written there: no permission");
            assertThat(child.says()).isEqualTo("entries 2");
            assertThat(child.says()).isEqualTo("as written: true");
            assertThat(child.ended()).isZero();
        }
        Files.setPosixFilePermissions(job.resolve("diary"), PosixFilePermissions.fromString("rwxr-x---"));
        assertThat(modes().keySet()).isEqualTo(before.keySet());
        open.close();
    }

    @Test
    void nothingIsWrittenThroughALinkThatLiesInTheWay() throws IOException {
        JobFolder made = JobFolder.at(job);
        JobFolder.make(job);
        Path other = Files.writeString(folder.resolve("other"), "of somebody else");
        Files.createDirectories(job.resolve("days"));
        Files.createDirectories(job.resolve("diary"));
        for (String name : List.of(
                "days/2026-06-03-day.so-far.txt",
                "days/2026-06-03-day.so-far.txt.new",
                "ticket.csv",
                "ticket.csv.new",
                "job.json.draft",
                "job.json.draft.new",
                "diary/2026-06-03-day.paver.draft",
                "diary/2026-06-03-day.paver.draft.new",
                "diary/2026-06-03-day.paver.held")) {
            Files.createSymbolicLink(job.resolve(name), other);
        }

        KeptPages.in(made).soFar(Shifts.THIRD, "page", "csv");
        KeptPages.tables(job, Map.of("ticket.csv", "n"));
        made.keepTyped("stamp", Map.of("name", "half"));
        made.saveDrafts(
                Shifts.THIRD, "paver", List.of(new Draft(Kind.TICKET, Source.LIVE, null, Map.of("net", "21"), "net")));
        Shifts.whole(job, Shifts.THIRD, "paver", 1);

        assertThat(other).hasContent("of somebody else");
        assertThat(job.resolve("ticket.csv")).hasContent("n").isRegularFile();
    }
}
