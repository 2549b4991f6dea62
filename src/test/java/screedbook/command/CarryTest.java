package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.diary.JobFolder;
import screedbook.diary.Opened;
import screedbook.shelf.KeptShift;

/** A job carried between two laptops on a stick. */
class CarryTest {
    private static final String DIARY = "diary/2026-06-03-day.paver.jsonl";

    @TempDir
    Path folder;

    private Path paver;
    private Path stick;
    private Path tack;

    @BeforeEach
    void twoLaptopsAndAStick() throws IOException {
        paver = folder.resolve("paver/bend");
        stick = folder.resolve("stick/bend");
        tack = folder.resolve("tack/bend");
        KeptShift.opened(KeptShift.job(paver), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "20.10")
                .close();
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(each).toString(), Files.readString(each));
            }
        }
        return files;
    }

    private static Said carried(Path from, Path to) {
        return Said.by("carry", from, to);
    }

    @Test
    void twoBooksOfOneShiftMeetOnBothLaptops() throws IOException {
        assertThat(carried(paver, stick).exit()).isZero();
        assertThat(carried(stick, tack).exit()).isZero();
        KeptShift.opened(JobFolder.at(tack), "2026-06-03-day", "tack")
                .ticket("08:00", "48300", "21.00")
                .ticket("08:05", "48217", "20.10")
                .closed();
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00")
                .ticket("12:10", "48218", "22.00")
                .closed();

        assertThat(carried(tack, stick).exit()).isZero();
        Said home = carried(stick, paver);
        Said away = carried(paver, stick);

        assertThat(home.exit()).isZero();
        assertThat(home.out()).contains("new      diary/2026-06-03-day.tack.jsonl  4 lines\n", "ahead    " + DIARY);
        assertThat(away.exit()).isZero();
        assertThat(away.out()).contains("longer   " + DIARY + "  lines 3 to 4\n");
        assertThat(carried(stick, tack).exit()).isZero();
        assertThat(Said.by("day", tack).out())
                .isEqualTo(Said.by("day", paver).out())
                .contains("63.10")
                .contains("not counted: 08:05 ticket 48217 (tack/3): the same ticket stands at paver/2");
        assertThat(Said.by("findings", paver).out())
                .as("one ticket keyed on both laptops")
                .containsPattern(
                        "number 48217 of plant Quarry Road stands\\s+at paver/2 and tack/3, with the same truck");
        assertThat(Said.by("verify", folder).exit()).isZero();
        assertThat(carried(paver, stick).out()).contains("same").doesNotContain("new ", "longer", "differs");
    }

    @Test
    void whatBelongsToOneLaptopStaysThere() throws IOException {
        Files.writeString(paver.resolve("diary/2026-06-03-day.paver.draft"), "half typed");
        Files.writeString(paver.resolve("diary/mine.txt"), "mine");
        Files.writeString(paver.resolve("letter.txt"), "mine");

        Said said = carried(paver, stick);

        assertThat(said.out())
                .contains("not      diary/2026-06-03-day.paver.draft\n", "not      diary/2026-06-03-day.paver.lock\n");
        assertThat(files(stick).keySet())
                .contains(DIARY, "job.json", "job.jsonl", "people.json", "README.txt")
                .noneMatch(name -> name.endsWith("draft") || name.endsWith("lock") || name.endsWith("mine.txt"))
                .doesNotContain("letter.txt");
    }

    @Test
    void whatDiffersIsSaidWithItsLineAndLeftAsItIs() throws IOException {
        carried(paver, stick);
        String job = Files.readString(stick.resolve("job.json"));
        Files.writeString(stick.resolve("job.json"), job.replace("Example overlay", "Another\u202e overlay"));
        Files.writeString(
                stick.resolve(DIARY), Files.readString(stick.resolve(DIARY)).replace("20.10", "29.10"));
        Map<String, String> before = files(stick);

        Said said = carried(paver, stick);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out())
                .contains("differs  " + DIARY + "  from line 2 on; one book was written in two places")
                .containsPattern("differs  job.json  at line [0-9]+\n {11}here   .*Example overlay.*\n"
                        + " {11}there  .*Another<U\\+202E> overlay.*\n");
        assertThat(files(stick)).isEqualTo(before);
    }

    /** Two sittings that both went on from the same line: neither may take the place of the other. */
    @Test
    void aBookThatWasWrittenInTwoPlacesIsNotJoined() throws IOException {
        carried(paver, stick);
        KeptShift.again(JobFolder.at(stick), "2026-06-03-day", "paver", "12:00")
                .ticket("12:10", "1", "21.00")
                .close();
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00")
                .ticket("12:10", "2", "22.00")
                .close();
        Map<String, String> before = files(stick);

        Said said = carried(paver, stick);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out()).contains("differs  " + DIARY + "  from line 3 on");
        assertThat(files(stick)).isEqualTo(before);
    }

    @Test
    void aBookThatIsOpenThereIsNotTouched() throws IOException {
        carried(paver, stick);
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00")
                .ticket("12:10", "2", "22.00")
                .close();
        try (KeptShift open = KeptShift.again(JobFolder.at(stick), "2026-06-03-day", "paver", "12:30")) {
            Map<String, String> before = files(stick);

            Said said = carried(paver, stick);

            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.out()).contains("held     " + DIARY + "  held by RK since 2026-06-03T12:30:00-06:00 on ");
            assertThat(files(stick)).isEqualTo(before);
            open.ticket("12:40", "3", "20.00");
        }
    }

    @Test
    void ofABookThatIsBeingWrittenHereWholeLinesAreCarried() throws IOException {
        try (KeptShift open = KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00")) {
            open.ticket("12:10", "2", "22.00");
            String whole = Files.readString(paver.resolve(DIARY));
            Files.writeString(paver.resolve(DIARY), whole + "{\"n\":4,\"ki");

            assertThat(carried(paver, stick).exit()).isZero();

            assertThat(stick.resolve(DIARY)).content().isEqualTo(whole);
        }
    }

    @Test
    void aDamagedDiaryIsCarriedAsItIsButTakesNoOthersPlace() throws IOException {
        carried(paver, stick);
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00")
                .ticket("12:10", "2", "22.00")
                .ticket("12:20", "3", "22.00")
                .close();
        Files.writeString(
                paver.resolve(DIARY),
                Files.readString(paver.resolve(DIARY)).replace("\"number\":\"2\"", "\"number\":\"7\""));

        assertThat(carried(paver, stick).out()).contains("differs  " + DIARY);
        Said anew = carried(paver, tack);
        assertThat(anew.out()).contains("new      " + DIARY + "  4 lines, not every one as it was written\n");
        assertThat(files(tack).get(DIARY)).isEqualTo(files(paver).get(DIARY));
    }

    @Test
    void lookingChangesNothingAndSaysTheSame() throws IOException {
        Said look = Said.by("carry", paver, stick, "--look");
        assertThat(stick).doesNotExist();
        Said done = carried(paver, stick);
        assertThat(look.out().replace("would be carried", "carried")).isEqualTo(done.out());
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "12:00").closed();
        Map<String, String> before = files(stick);
        look = Said.by("carry", paver, stick, "--look");
        assertThat(files(stick)).isEqualTo(before);
        assertThat(look.out().replace("would be carried", "carried"))
                .isEqualTo(carried(paver, stick).out())
                .contains("longer");
    }

    @Test
    void aDiaryThatWentOnElsewhereIsBroughtTogether() throws IOException {
        Path spare = folder.resolve("spare");
        try (var book = ((Opened.Ready) JobFolder.at(paver)
                        .open(
                                screedbook.entry.ShiftId.of("2026-06-03-day"),
                                "paver",
                                "my-job",
                                "RK",
                                java.time.OffsetDateTime.parse("2026-06-03T12:00:00-06:00")))
                .book()) {
            assertThat(book.continueIn(spare).join()).isEmpty();
        }
        KeptShift.again(JobFolder.at(paver), "2026-06-03-day", "paver", "13:00")
                .ticket("13:10", "2", "22.00")
                .close();

        assertThat(carried(paver, stick).exit()).isZero();

        assertThat(files(stick).keySet()).contains("diary/2026-06-03-day.paver-b.jsonl");
        assertThat(Said.by("day", stick).out()).contains("42.10");
        KeptShift.again(JobFolder.at(stick), "2026-06-03-day", "paver", "14:00").closed();
        assertThat(Said.by("verify", stick).exit()).isZero();
    }

    @Test
    void aLinkIsNeitherReadNorWrittenThrough() throws IOException {
        Path other = Files.writeString(folder.resolve("other"), "of somebody else");
        Files.delete(paver.resolve("people.json"));
        Files.createSymbolicLink(paver.resolve("people.json"), other);
        Files.createDirectories(stick.resolve("diary"));
        Files.createSymbolicLink(stick.resolve("job.json"), other);

        Said said = carried(paver, stick);

        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.out())
                .contains("not      people.json  it is a link or a folder\n")
                .contains("refused  job.json  what is there is a link or a folder\n");
        assertThat(other).hasContent("of somebody else");
        assertThat(stick.resolve("people.json")).doesNotExist();
    }

    @Test
    void anotherJobOrSomethingElseIsNotWrittenTo() throws IOException {
        Path another = folder.resolve("another");
        KeptShift.job(another);
        String text = Files.readString(another.resolve("job.json"));
        Files.writeString(another.resolve("job.json"), text.replace("\"id\": \"my-job\"", "\"id\": \"other-job\""));
        Path music = Files.createDirectory(folder.resolve("music"));
        Files.writeString(music.resolve("song"), "la");

        assertThat(carried(paver, another))
                .isEqualTo(new Said(
                        2,
                        "",
                        "screedbook carry: " + another + " is the folder of another job, other-job, and this one is"
                                + " my-job\n"));
        assertThat(carried(paver, music))
                .isEqualTo(new Said(
                        2,
                        "",
                        "screedbook carry: " + music + " holds something else; right would be " + music.resolve("bend")
                                + "\n"));
        assertThat(carried(paver, paver).exit()).isEqualTo(2);
        assertThat(carried(music, stick).exit()).isEqualTo(3);
    }

    /** How general sync clients name their folders and what they leave in them: from memory, each client's default. */
    @ParameterizedTest
    @CsvSource({
        "Dropbox/jobs, , Dropbox",
        "OneDrive/jobs, , OneDrive",
        "OneDrive - Example County/jobs, , OneDrive",
        "Google Drive/My Drive, , Google Drive",
        "Mobile Documents/com~apple~CloudDocs, , iCloud Drive",
        "cloud/jobs, cloud/.owncloudsync.log, ownCloud",
        "cloud/jobs, cloud/.nextcloudsync.log, Nextcloud",
        "shared/jobs, shared/.stfolder, Syncthing"
    })
    void aFolderThatAClientKeepsInStepIsWarnedOf(String jobs, String sign, String client) throws IOException {
        Path to = folder.resolve(jobs).resolve("bend");
        Files.createDirectories(to.getParent());
        if (sign != null) {
            Files.writeString(folder.resolve(sign), "");
        }

        Said said = carried(paver, to);

        assertThat(said.exit()).isZero();
        assertThat(said.err())
                .isEqualTo("screedbook carry: " + to + " is kept in step by " + client
                        + ", where two writers become two copies: keep the job outside, and carry it in and out\n");
        assertThat(Said.by("new", to).err()).contains(client);
        assertThat(carried(to, stick).err()).isEmpty();
    }
}
