package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.spec.SpecSheet;

/** The commands about limits and limit sheets, as they are typed. The job is the example that comes with the program. */
class SheetCommandsTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void makeTheJob() {
        job = folder.resolve("bend");
        said("new", job.toString());
    }

    @Test
    void limitsTellsEveryMixOnEveryLiftByDayAndByNight() {
        Said said = said("limits", job.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out().lines())
                .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
                .contains(
                        "19-64 on lift 1, below riding surface, 2.5 in, by day and by night",
                        "12.5-70A on lift 2, riding surface, 2.0 in, by day",
                        "12.5-70A on lift 2, riding surface, 2.0 in, by night",
                        " mix at the paver        at least 270 °F [11]",
                        " mix at the plant        275 to 325 °F [2] [3]",
                        " [11] practice PG 70: At the paver a mix with PG 70 is at least 270.");
        assertThat(said.out()).contains("(the lift\n  is planned with 19-64)").endsWith("practice govern.\n");
    }

    @Test
    void limitsOfOneHourFollowItsNightAndItsDate() throws IOException {
        edit("\"sheet\": \"practice\"", "\"sheet\": \"wsdot-5-04\"");

        Said june = said("limits", job.toString(), "--mix", "12.5-70A", "--lift", "2", "--at", "2026-06-03 21:30");
        Said october = said("limits", job.toString(), "--mix", "12.5-70A", "--lift", "2", "--at", "2026-10-01 10:00");

        assertThat(june.exit()).as(june.err()).isZero();
        assertThat(june.out())
                .contains("by night, 2026-06-03T21:30:00-06:00")
                .contains(" surface                 at least 45 °F")
                .contains(" planned thickness       at most 0.30 ft (3.6 in) [")
                .contains(" mix at the plant        at most 325 °F")
                .contains(" joint, from one below   2 to 6 in")
                .contains(" water in the tack       at most 100 %")
                .contains("The contract's own edition governs.")
                .doesNotContain("not on these dates");
        assertThat(october.out()).contains("not on these dates").contains("by day, 2026-10-01T10:00:00-06:00");
    }

    @Test
    void aJobWithoutALiftHasNoLimitsYet() throws IOException {
        String text = Files.readString(job.resolve("job.json"));
        Files.writeString(job.resolve("job.json"), without(without(without(text, "lifts"), "pulls"), "planned"));

        Said said = said("limits", job.toString());

        assertThat(said.exit()).as(said.err()).isZero();
        assertThat(said.out()).contains("no lift or no mix in the job yet").doesNotContain("where they come from");
    }

    @Test
    void limitsAsJsonHoldTheSameCases() {
        Said said = said("limits", job.toString(), "--format", "json", "--mix", "12.5-70A", "--lift", "2");

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .startsWith("{")
                .contains("\"form\" : \"screedbook limits 1\"", "\"low_degF\" : 270", "\"clause\" : \"practice PG 70\"")
                .contains("\"light\" : \"day\"", "\"light\" : \"night\"");
    }

    @Test
    void limitsSayWhatCannotBeMeant() {
        assertThat(said("limits", job.toString(), "--at", "2026-02-30 10:00").err())
                .isEqualTo("screedbook limits: --at 2026-02-30 10:00 is no date and hour; right would be"
                        + " \"2026-06-03 21:30\"\n");
        assertThat(said("limits", job.toString(), "--mix", "25-64"))
                .isEqualTo(
                        new Said(2, "", "screedbook limits: --mix 25-64 is not in the job; it has 19-64, 12.5-70A\n"));
        assertThat(said("limits", job.toString(), "--lift", "7"))
                .isEqualTo(new Said(2, "", "screedbook limits: --lift 7 is not in the job; it has 1, 2\n"));
    }

    @Test
    void limitsFromASheetThatCannotBeUsedSayEveryLineOfIt() throws IOException {
        copyOfPractice();
        Path own = job.resolve("spec").resolve("practice.csv");
        Files.writeString(
                own,
                Files.readString(own)
                        .replace("limit,paver-mix,260", "limit,paver-mix,26O")
                        .replace("limit,lift,2.5,,in", "limit,lift,2.5,,degF"));

        Said said = said("limits", job.toString());

        assertThat(said)
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook limits: spec/practice.csv:5: low is \"26O\"; right would be a decimal such as 2.5\n"
                                + "screedbook limits: spec/practice.csv:21: unit is \"degF\" for lift; right would be"
                                + " in or ft or mm\n"
                                + "screedbook limits: the limit sheet practice cannot be used as it is\n"));
    }

    @Test
    void aSheetThatIsNowhereIsSaid() throws IOException {
        edit("\"sheet\": \"practice\"", "\"sheet\": \"town\"");

        assertThat(said("limits", job.toString()))
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook limits: there is no limit sheet town: neither spec/town.csv nor a shipped one of"
                                + " the name\n"));
    }

    @Test
    void aCopyGovernsByItsNameAndIsNeverOverwritten() throws IOException {
        Said made = copyOfPractice();
        Path own = job.resolve("spec").resolve("practice.csv");
        assertThat(made.exit()).isZero();
        assertThat(made.out()).startsWith("made " + own + "\n");
        assertThat(Files.readAllBytes(own))
                .isEqualTo(SpecSheet.shippedBytes("practice").orElseThrow());
        Files.writeString(
                own,
                Files.readString(own).replace("paver-mix-70,limit,paver-mix,270", "paver-mix-70,limit,paver-mix,281"));
        byte[] edited = Files.readAllBytes(own);

        Said again = copyOfPractice();

        assertThat(again)
                .isEqualTo(new Said(3, "", "screedbook sheets: " + own + " is there already and stays as it is\n"));
        assertThat(Files.readAllBytes(own)).isEqualTo(edited);
        assertThat(said("limits", job.toString()).out()).contains("at least 281 °F");
    }

    @Test
    void aCopyNeedsAJobAndOneShippedSheet() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        assertThat(said("sheets", "practice", "--copy", empty.toString()).exit())
                .isEqualTo(3);
        assertThat(empty).isEmptyDirectory();
        assertThat(said("sheets", "--copy", job.toString()).exit()).isEqualTo(2);
        assertThat(said("sheets", "town", "--copy", job.toString()).err())
                .startsWith(
                        "screedbook sheets: no sheet town comes with the program; right would be one of practice, ");
    }

    @Test
    void sheetsListsThoseThatComeWithTheProgramEachWithItsEditionAndWhatGoverns() {
        Said said = said("sheets");

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        for (String name : SpecSheet.shippedNames()) {
            assertThat(said.out()).contains(name + ", ");
            assertThat(String.join(" ", SpecSheet.shipped(name).orElseThrow().foot()))
                    .containsAnyOf("The contract's own edition governs", "The contract and its own documents govern");
        }
    }

    @Test
    void oneSheetIsPrintedRowByRowWithItsClauses() {
        Said said = said("sheets", "ufgs-02749");

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("surface\n at least 40 °F; thickness from >=3 in\n")
                .contains("    3 in and over: the underlying surface is at least 40.\n"
                        + "    UFGS-02749 before 2004 1.10 Table 1, read; row surface-thick\n")
                .contains("The contract's own edition governs.");
    }

    @Test
    void ofTwoSheetsWhatDiffersStandsSideBySide() {
        Said said = said("sheets", "joints-kansas-614", "joints-fp-96");

        assertThat(said.out().lines())
                .allMatch(line -> line.codePointCount(0, line.length()) <= 80)
                .contains(
                        "6 to 12 in (Kansas DOT copy of c. 2017   at least 6 in (FHWA FP-96 401.13)",
                        "0 rows are the same in both.");
    }

    @Test
    void anEditedCopyIsHeldAgainstTheShippedOneByItsFile() throws IOException {
        copyOfPractice();
        Path own = job.resolve("spec").resolve("practice.csv");
        Files.writeString(
                own,
                Files.readString(own).replace("paver-mix-70,limit,paver-mix,270", "paver-mix-70,limit,paver-mix,281"));

        Said said = said("sheets", "practice", own.toString());

        assertThat(said.out())
                .contains("paver-mix\nat least 270 °F; binder grade 70         at least 281 °F; binder grade 70\n")
                .doesNotContain("plant-mix")
                .endsWith("23 rows are the same in both.\n");
    }

    @Test
    void aSheetFileWithLinesThatStandInTheWayIsSaidLineByLine() throws IOException {
        Path town = folder.resolve("town.csv");
        Files.writeString(
                town,
                "id,does,quantity,low,unit,rounding,thickness_from,thickness_to,thickness_unit,thickness_rounding,"
                        + "document,edition,clause,known,working\n"
                        + "a,limit,surface,40,degF,absolute,>=2.0,,in,absolute,Town,2024,5.1,read,Thick.\n"
                        + "b,limit,surface,50,degF,absolute,,<=1.9,in,absolute,Town,2024,5.1,read,Thin.\n"
                        + "c,limit,air,,degF,absolute,,,,,Town,2024,5.2,from memory,Air.\n");

        assertThat(said("sheets", town.toString()).err())
                .isEqualTo(
                        "screedbook sheets: " + town + ":4: neither low nor high; right would be at least one of them\n"
                                + "screedbook sheets: " + town
                                + ":4: known is \"from memory\"; right would be read: somebody has read this figure in the"
                                + " document\n"
                                + "screedbook sheets: " + town
                                + ":3: no row of Town 2024 5.1 for surface at a thickness of 1.91 in; right would be a row for"
                                + " it; prints-nothing where the printed table has a gap, sets-no-limit where it means none\n"
                                + "screedbook sheets: a sheet cannot be used while lines stand in its way\n");
    }

    /** A list of the job file without what is in it. */
    private static String without(String text, String list) {
        int from = text.indexOf("\"" + list + "\": [");
        return text.substring(0, from) + "\"" + list + "\": [\n  " + text.substring(text.indexOf("],\n", from));
    }

    private Said copyOfPractice() {
        return said("sheets", "practice", "--copy", job.toString());
    }

    private void edit(String from, String to) throws IOException {
        String text = Files.readString(job.resolve("job.json"));
        assertThat(text).contains(from);
        Files.writeString(job.resolve("job.json"), text.replace(from, to));
    }

    private static Said said(Object... words) {
        Said said = Said.by(words);
        return new Said(said.exit(), said.out(), said.err().replaceAll("(?m)^see: .*\n", ""));
    }
}
