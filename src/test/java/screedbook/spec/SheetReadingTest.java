package screedbook.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sheet's file: what is taken, and that everything that stands in the way is said at once, with its line. */
class SheetReadingTest {
    private static final String HEAD =
            "id,does,quantity,low,high,unit,rounding,lowers,by,not_below,grade,dates,thickness_from,thickness_to,"
                    + "thickness_unit,thickness_rounding,document,edition,clause,known,working\n";

    private static String cited(String row) {
        return row + "Town spec,2024,5.1,read,A sentence.\n";
    }

    private static Loaded read(String text) {
        return SpecSheet.read("town", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> troubles(String text) {
        Loaded loaded = read(text);
        assertThat(loaded.sheet().isPresent()).isEqualTo(loaded.troubles().isEmpty());
        return loaded.troubles().stream().map(SheetTrouble::text).toList();
    }

    static Stream<String> shipped() {
        return Stream.concat(SpecSheet.shippedNames().stream(), Stream.of("usual"));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedSheetLoads(String name) {
        Loaded loaded = SpecSheet.read(name, SpecSheet.shippedBytes(name).orElseThrow());

        assertThat(loaded.troubles()).isEmpty();
        assertThat(loaded.sheet().orElseThrow().foot()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyRowHasItsDocumentItsClauseAndHowItIsKnown(String name) {
        List<Row> rows = SpecSheet.read(name, SpecSheet.shippedBytes(name).orElseThrow())
                .sheet()
                .orElseThrow()
                .rows();

        assertThat(rows).isNotEmpty().allSatisfy(row -> {
            assertThat(row.document()).isNotBlank();
            assertThat(row.clause()).isNotBlank();
            assertThat(row.says()).endsWith(".");
            assertThat(row.known()).isIn("read", "common practice");
        });
    }

    @Test
    void aRowWithoutItsSourceIsNotTaken() {
        assertThat(troubles(HEAD + "a,limit,air,40,,degF,absolute,,,,,,,,,,,,,,\n"))
                .containsExactly(
                        "town.csv:2: document is empty; right would be the short name of the document",
                        "town.csv:2: edition is empty; right would be its edition or year",
                        "town.csv:2: clause is empty; right would be the clause of the document",
                        "town.csv:2: known is \"\"; right would be read: somebody has read this figure in the document",
                        "town.csv:2: working is empty; right would be a sentence that says what the row does");
    }

    @Test
    void aFigureFromMemoryIsNotTaken() {
        assertThat(troubles(HEAD + "a,limit,air,40,,degF,absolute,,,,,,,,,,Town spec,2024,5.1,from memory,Air.\n"))
                .containsExactly(
                        "town.csv:2: known is \"from memory\"; right would be read: somebody has read this figure in"
                                + " the document");
    }

    @Test
    void commonPracticeStandsInThePracticeSheetOnlyAndInItsFrozenCopies() {
        String sheet = HEAD + "a,limit,air,40,,degF,absolute,,,,,,,,,,practice,2024,5.1,common practice,Air.\n";
        byte[] bytes = sheet.getBytes(StandardCharsets.UTF_8);

        assertThat(SpecSheet.read("practice", bytes).sheet()).isPresent();
        assertThat(SpecSheet.read("practice-0a1b2c3d", bytes).sheet()).isPresent();
        assertThat(SpecSheet.read("practices", bytes).sheet()).isEmpty();
        assertThat(SpecSheet.read("town", bytes).sheet()).isEmpty();
    }

    @Test
    void allTroublesOfAllLinesAreSaidAtOnce() {
        String text = "# Town of somewhere\n"
                + HEAD
                + cited("a,limit,air,4O,,degF,absolute,,,,,,,,,,")
                + cited("b,limit,airr,40,,degF,absolute,,,,,,,,,,")
                + "# a remark between rows\n"
                + cited("a,limit,surface,40,30,degF,to the next,,,,,,,,,,")
                + cited("d,lowers,surface,,,,,a|zz,ten,,,,,,,,");

        assertThat(troubles(text))
                .containsExactly(
                        "town.csv:3: low is \"4O\"; right would be a decimal such as 2.5",
                        "town.csv:4: quantity is \"airr\"; right would be one of " + words(),
                        "town.csv:6: low 40 above high 30; right would be low at most high",
                        "town.csv:6: rounding is \"to the next\"; right would be one of half-even, half-up, absolute",
                        "town.csv:7: by is \"ten\"; right would be a decimal such as 2.5",
                        "town.csv:6: the id a a second time; right would be an id of its own",
                        "town.csv:7: lowers names zz; right would be the id of a limit row of the same quantity that"
                                + " has a low end");
    }

    private static String words() {
        return String.join(
                ", ", Stream.of(Quantity.values()).map(Quantity::word).toList());
    }

    @Test
    void theEndsOfABandAreStated() {
        assertThat(troubles(HEAD + cited("a,limit,air,40,,degF,absolute,,,,,,1.5,<=2.9,in,half-even,")))
                .containsExactly("town.csv:2: thickness_from is \"1.5\"; right would be >=1.5 or >1.5: the sign says"
                        + " whether the end is in");
    }

    @Test
    void aUnitThatDoesNotMeasureTheQuantityIsNotTaken() {
        assertThat(troubles(HEAD + cited("a,limit,air,40,,in,absolute,,,,,,,,,,")))
                .containsExactly("town.csv:2: unit is \"in\" for air; right would be degF or degC");
    }

    @Test
    void aDateThatDoesNotExistIsNotTaken() {
        assertThat(troubles(HEAD + cited("a,limit,air,40,,degF,absolute,,,,,11-31..12-31,,,,,")))
                .containsExactly("town.csv:2: dates is \"11-31..12-31\"; right would be months and days such as"
                        + " 11-02..12-31, with ? where the sheet does not say");
    }

    @Test
    void anUnknownColumnAndACellTooManyAreSaid() {
        String text = HEAD.replace("grade", "binder")
                + cited("a,limit,air,40,,degF,absolute,,,,,,,,,,").strip() + ",more\n";

        assertThat(troubles(text))
                .hasSize(2)
                .anyMatch(t -> t.startsWith("town.csv:1: a column named \"binder\"; right would be one of id, does"))
                .anyMatch(t -> t.startsWith("town.csv:2: 22 cells; right would be 21"));
    }

    @Test
    void aFileThatIsNoTextAndAnEmptyOneAreSaid() {
        assertThat(SpecSheet.read("town", new byte[] {(byte) 0xC3, 0x28}).troubles())
                .extracting(SheetTrouble::seen)
                .contains("bytes that are no UTF-8");
        assertThat(troubles(""))
                .containsExactly(
                        "town.csv:1: no row stands here; right would be a line of column names and a line for each row");
        assertThat(troubles(HEAD + "a,\"limit\n")).anyMatch(t -> t.contains("a line that is no CSV"));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreTaken() {
        String text = "\uFEFF" + HEAD + cited("a,limit,air,40,,degF,absolute,,,,,,,,,,");

        assertThat(troubles(text.replace("\n", "\r\n"))).isEmpty();
    }

    @Test
    void theHashIsOfTheExactBytes() {
        SpecSheet practice = SpecSheet.shipped("practice").orElseThrow();
        byte[] changed = (new String(SpecSheet.shippedBytes("practice").orElseThrow(), StandardCharsets.UTF_8) + "\n")
                .getBytes(StandardCharsets.UTF_8);

        assertThat(practice.sha256()).matches("[0-9a-f]{64}");
        assertThat(SpecSheet.read("practice", changed).sheet().orElseThrow().sha256())
                .isNotEqualTo(practice.sha256());
    }
}
