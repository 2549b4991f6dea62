package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.entry.Kind;
import screedbook.entry.Seal;
import screedbook.shelf.KeptShift;

/** The commands as they are typed: what they print, what they say when it cannot be done, and how they end. */
class CommandsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-05T12:00:00Z"), ZoneOffset.UTC);

    private record Said(int exit, String out, String err) {}

    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void newMakesAJobThatCanBeReadAtOnce() {
        Said said = said("new", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines()).contains("made " + job.resolve("job.json"), "made " + job.resolve("README.txt"));
        assertThat(said.out()).endsWith("then open the desk: screedbook " + job + "\n");
        assertThat(JobFolder.at(job).job().troubles()).isEmpty();
        assertThat(JobFolder.at(job).job().job()).isPresent();
    }

    @Test
    void newLeavesWhatIsThereAsItIs() throws IOException {
        said("new", job.toString());
        Files.writeString(job.resolve("job.json"), "mine");
        Files.delete(job.resolve("README.txt"));

        Said said = said("new", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines()).startsWith("made " + job.resolve("README.txt"));
        assertThat(job.resolve("job.json")).hasContent("mine");
        assertThat(said("new", job.toString()).out()).isEqualTo("everything is there already in " + job + "\n");
    }

    @Test
    void newSaysWhereNoFolderCanBeMade() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");

        Said said = said("new", file.resolve("job").toString());

        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith("screedbook new: " + file).hasLineCount(1);
    }

    @Test
    void dayPrintsTheNewestShiftUnlessAnotherIsNamed() throws IOException {
        twoShifts();

        Said newest = said("day", job.toString());
        Said first = said("day", job.toString(), "--shift", "2026-06-03-day");

        assertThat(newest.exit()).isZero();
        assertThat(newest.err()).isEmpty();
        assertThat(newest.out()).contains("Example overlay", "2026-06-04-night").contains("20.55");
        assertThat(newest.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(first.out()).contains("2026-06-03-day").doesNotContain("2026-06-04-night");
    }

    @Test
    void thePageOfAClosedShiftIsTheSameWheneverItIsPrinted() throws IOException {
        twoShifts();
        Said then = said("day", job.toString());
        KeptShift.again(job(), "2026-06-03-day", "paver", "18:00")
                .on("2026-06-09")
                .ticket("08:00", "48299", "21.00")
                .close();

        Said later = said(Clock.fixed(Instant.parse("2031-01-01T00:00:00Z"), ZoneOffset.UTC), "day", job.toString());

        assertThat(later.out()).isEqualTo(then.out());
        assertThat(said("day", job.toString(), "--shift", "2026-06-03-day").out())
                .contains("page revision 2")
                .contains("48299");
    }

    @Test
    void dayHasThreeForms() throws IOException {
        twoShifts();

        assertThat(said("day", job.toString(), "--format", "text").out())
                .isEqualTo(said("day", job.toString()).out());
        assertThat(said("day", job.toString(), "--format", "csv").out())
                .startsWith("\"shift\",\"section\",")
                .contains("\"2026-06-04-night\"");
        assertThat(said("day", job.toString(), "--format", "json").out())
                .startsWith("{")
                .contains("\"2026-06-04-night\"");
    }

    @Test
    void anotherFormIsNotKnown() throws IOException {
        twoShifts();

        assertThat(said("day", job.toString(), "--format", "pdf"))
                .isEqualTo(new Said(
                        2, "", "screedbook day: --format pdf is not known; right would be one of text, csv, json\n"));
        assertThat(said("findings", job.toString(), "--format", "csv"))
                .isEqualTo(new Said(
                        2, "", "screedbook findings: --format csv is not known; right would be one of text, json\n"));
    }

    @Test
    void aShiftThatIsNotThereIsSaidWithThoseThatAre() throws IOException {
        twoShifts();

        assertThat(said("day", job.toString(), "--shift", "2026-06-05-day"))
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook day: " + job
                                + " holds no shift 2026-06-05-day; its newest: 2026-06-03-day, 2026-06-04-night\n"));
        assertThat(said("findings", job.toString(), "--shift", "2026-02-30-day"))
                .isEqualTo(new Said(
                        2,
                        "",
                        "screedbook findings: --shift 2026-02-30-day names no shift; right would be 2026-06-03-day,"
                                + " -night or -extra-2\n"));
    }

    @Test
    void aFolderWithoutAJobIsSaid() throws IOException {
        assertThat(said("day", job.toString()))
                .isEqualTo(new Said(3, "", "screedbook day: there is no folder " + job + "\n"));
        Files.createDirectory(job);
        assertThat(said("findings", job.toString()))
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook findings: " + job
                                + " is not the folder of a job: it holds no job.json and no diary\n"));
        said("new", job.toString());
        assertThat(said("csv", job.toString(), "--to", folder.toString()))
                .isEqualTo(new Said(3, "", "screedbook csv: " + job + " holds no shift yet\n"));
    }

    @Test
    void whatCannotBeMeantIsSaidWithAWayOn() {
        Said option = said("day", "--fromat", "csv");
        Said argument = said("new");
        Said command = said("nonsense");

        assertThat(Stream.of(option, argument, command).map(Said::exit)).containsOnly(2);
        assertThat(option.err())
                .startsWith("screedbook day: ")
                .contains("--fromat")
                .endsWith("see: screedbook day --help\n");
        assertThat(argument.err()).contains("DIR").endsWith("see: screedbook new --help\n");
        assertThat(command.err()).contains("nonsense").endsWith("see: screedbook --help\n");
        assertThat(option.out() + argument.out() + command.out()).isEmpty();
    }

    @Test
    void whatIsTypedCannotDriveTheTerminal() throws IOException {
        twoShifts();

        Said shift = said("day", job.toString(), "--shift", "\u001b[31m");
        Said form = said("day", job.toString(), "--format", "\u202ecsv");

        assertThat(shift.err()).contains("<U+001B>[31m").doesNotContain("\u001b");
        assertThat(form.err()).contains("<U+202E>csv").doesNotContain("\u202e");
    }

    @Test
    void findingsAreListedWithTheirLimits() throws IOException {
        troubled();

        Said text = said("findings", job.toString());
        Said json = said("findings", job.toString(), "--format", "json");

        assertThat(text.exit()).isZero();
        assertThat(text.out()).contains("48217").contains("240");
        assertThat(json.exit()).isZero();
        assertThat(json.out()).startsWith("{").contains("paver/2");
    }

    @Test
    void verifyIsContentWithWhatIsAsItWasWritten() throws IOException {
        List<Seal> seals = twoShifts();

        Said said = said("verify", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines())
                .startsWith(
                        job.toString(),
                        "  job.jsonl  1 line",
                        "  2026-06-03-day.paver.jsonl  4 lines, closed",
                        "  2026-06-04-night.paver.jsonl  3 lines, closed",
                        "  seal of 2026-06-03-day paver  " + seals.get(0).shortForm(),
                        "  seal of 2026-06-04-night paver  " + seals.get(1).shortForm())
                .contains(
                        "    diary/2026-06-03-day.paver.seal",
                        "    diary/2026-06-04-night.paver.lock",
                        "as it was written: 3 files, 8 lines");
    }

    @Test
    void verifyNamesTheLineOfOneChangedByteInAClosedFile() throws IOException {
        twoShifts();
        edit(job.resolve("diary/2026-06-03-day.paver.jsonl"), "\"net_ston\":20.10", "\"net_ston\":29.10");

        Said said = said("verify", job.toString());

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out().lines())
                .contains(
                        "2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written",
                        "    line 1, lines 3 to 4 hold together",
                        "not as it was written: 1 place in 3 files, 8 lines")
                .noneMatch(line -> line.startsWith("as it was written"));
    }

    @Test
    void verifySaysWhenWhatAShiftWasJudgedByIsGone() throws IOException {
        twoShifts();
        Files.delete(job.resolve("job.jsonl"));

        Said job = said("verify", this.job.toString());

        assertThat(job.exit()).isEqualTo(1);
        assertThat(job.out().lines())
                .contains(
                        "2026-06-03-day.paver.jsonl:1: plan not found: no line of job.jsonl has the hash it names",
                        "not as it was written: 2 places in 2 files, 7 lines");
    }

    @Test
    void aPageOfDamagedFilesIsPrintedAndTheDamageSaid() throws IOException {
        twoShifts();
        edit(job.resolve("diary/2026-06-03-day.paver.jsonl"), "\"net_ston\":20.10", "\"net_ston\":29.10");

        Said said = said("day", job.toString(), "--shift", "2026-06-03-day");

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("50.15")
                .containsSubsequence(
                        "FILES NOT AS THEY WERE WRITTEN",
                        " 2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written",
                        "NEEDS A DECISION FROM YOU");
        assertThat(said.err())
                .isEqualTo(
                        "screedbook day: 2026-06-03-day.paver.jsonl:2: it is not as it was when line 3 was written\n");
    }

    @Test
    void verifyLooksAtEveryJobOfAFolder() throws IOException {
        twoShifts();
        Path other = folder.resolve("attic/juniper");
        KeptShift.opened(KeptShift.job(other), "2026-06-03-day", "paver").close();
        Files.createDirectories(folder.resolve("attic/empty"));
        Files.move(job, folder.resolve("attic/bend"));

        Said sound = said("verify", folder.resolve("attic").toString());
        edit(other.resolve("diary/2026-06-03-day.paver.jsonl"), "\"RK\"", "\"JD\"");
        Said changed = said("verify", folder.resolve("attic").toString());

        assertThat(sound.exit()).isZero();
        assertThat(sound.out().lines())
                .contains(folder.resolve("attic/bend").toString(), other.toString())
                .contains("The last lines of a shift that is not closed are not protected yet.");
        assertThat(changed.exit())
                .as("the only line of an open file, which nothing protects yet")
                .isZero();
        Files.writeString(other.resolve("diary/2026-06-03-day.paver.jsonl"), "{}\n{}\n");
        assertThat(said("verify", folder.resolve("attic").toString()).exit()).isEqualTo(1);
    }

    @Test
    void verifySaysWhenThereIsNothingToLookAt() throws IOException {
        assertThat(said("verify", folder.toString()).exit()).isEqualTo(3);
        said("new", job.toString());

        assertThat(said("verify", job.toString()))
                .isEqualTo(new Said(3, "", "screedbook verify: " + job + " holds no record yet\n"));
    }

    @Test
    void csvWritesATableForEachKindAndTheTotals() throws IOException {
        twoShifts();
        Path to = folder.resolve("tables");

        Said said = said("csv", job.toString(), "--to", to.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        int kinds = Kind.values().length;
        assertThat(said.out()).isEqualTo("wrote " + (kinds + 1) + " tables of 2 shifts to " + to + "\n");
        assertThat(names(to))
                .hasSize(kinds + 2)
                .contains("datapackage.json", "ticket.csv", "opening.csv", "totals.csv");
        assertThat(Files.readString(to.resolve("ticket.csv")).lines()).hasSize(4);
        assertThat(Files.readString(to.resolve("totals.csv"))).contains("2026-06-03-day", "2026-06-04-night");
    }

    @Test
    void csvReplacesTheTablesOfAnEarlierRunAndNothingElse() throws IOException {
        twoShifts();
        Path to = Files.createDirectory(folder.resolve("tables"));
        Files.writeString(to.resolve("ticket.csv"), "of an earlier run");
        Files.writeString(to.resolve("mine.csv"), "mine");

        said("csv", job.toString(), "--to", to.toString());

        assertThat(Files.readString(to.resolve("ticket.csv")))
                .doesNotContain("earlier")
                .contains("48217");
        assertThat(to.resolve("mine.csv")).hasContent("mine");
        assertThat(names(to)).noneMatch(name -> name.endsWith(".new"));
    }

    @Test
    void csvSaysWhatIsInNoTable() throws IOException {
        twoShifts();
        Path file = job.resolve("diary/2026-06-03-day.paver.jsonl");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.set(1, "{\"n\":");
        Files.writeString(file, String.join("\n", lines) + "\n");

        Said said = said("csv", job.toString(), "--to", folder.resolve("tables").toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err())
                .contains("screedbook csv: 2026-06-03-day: 1 line is in no table; the diary has it\n")
                .contains("2026-06-03-day.paver.jsonl:2: ");
    }

    @Test
    void csvSaysWhereItCannotWrite() throws IOException {
        twoShifts();
        Path file = Files.writeString(folder.resolve("file"), "");

        Said said = said("csv", job.toString(), "--to", file.toString());

        assertThat(said)
                .isEqualTo(new Said(3, "", "screedbook csv: " + file + " is there already and is not a folder\n"));
    }

    @Test
    void helpNamesEveryCommandAndTheExitCodes() {
        Said said = said("--help");

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("screedbook [JOB]", "--demo", "--book", "--who", "--look")
                .contains("  new ", "  day ", "  findings ", "  verify ", "  csv ")
                .contains("1   verify: something is not as it was written");
        assertThat(said("day", "--help").out()).contains("--shift", "--format");
        assertThat(said("-h")).isEqualTo(said);
    }

    @Test
    void versionNamesTheProgram() {
        assertThat(said("--version").out()).startsWith("screedbook");
        assertThat(said("-V")).isEqualTo(said("--version"));
    }

    @Test
    void nothingIsColoured() throws IOException {
        troubled();

        for (List<String> words : List.of(
                List.of("--help"),
                List.of("verify", "--help"),
                List.of("day", job.toString()),
                List.of("findings", job.toString()),
                List.of("verify", job.toString()),
                List.of("day", "--fromat"))) {
            Said said = said(words.toArray(String[]::new));
            assertThat(said.out() + said.err())
                    .as(words.toString())
                    .isNotEmpty()
                    .doesNotContain("\u001b");
        }
    }

    @Test
    void aPageThatCannotBeWrittenToItsEndIsSaid() throws IOException {
        twoShifts();
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Commands.run(words("day", job.toString()), full("No space left on device"), err, CLOCK);

        assertThat(exit).isEqualTo(3);
        assertThat(err.toString(UTF_8))
                .isEqualTo("screedbook: the page could not be written: No space left on device\n");
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoTrouble() throws IOException {
        twoShifts();
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Commands.run(words("day", job.toString()), full("Broken pipe"), err, CLOCK);

        assertThat(exit).isZero();
        assertThat(err.toString(UTF_8)).isEmpty();
    }

    /** Two closed shifts of the example job, with two tickets and with one. */
    private List<Seal> twoShifts() throws IOException {
        Seal first = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "20.10")
                .ticket("07:10", "48218", "21.05")
                .closed();
        Seal second = KeptShift.opened(job(), "2026-06-04-night", "paver")
                .ticket("21:00", "48301", "20.55")
                .closed();
        return List.of(first, second);
    }

    /** One open shift with a load that came cold: 240 °F where the practice sheet has at least 270 for PG 70. */
    private void troubled() throws IOException {
        try (KeptShift kept = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")) {
            kept.key(
                    Kind.TICKET,
                    "07:00",
                    Map.of(
                            "plant", "Quarry Road",
                            "number", "48217",
                            "truck", "T104",
                            "mix", "12.5-70A",
                            "net_ston", new BigDecimal("20.10"),
                            "paver_degF", new BigDecimal("240"),
                            "pull", "A",
                            "lift", BigDecimal.valueOf(2)));
        }
    }

    private JobFolder job() {
        return JobFolder.at(job);
    }

    private static Said said(String... words) {
        return said(CLOCK, words);
    }

    private static Said said(Clock clock, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Commands.run(words, out, err, clock);
        return new Said(exit, out.toString(UTF_8), err.toString(UTF_8));
    }

    private static String[] words(String... words) {
        return words;
    }

    private static OutputStream full(String says) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(says);
            }
        };
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
    }
}
