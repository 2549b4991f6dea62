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

    private static String band(String id, String low, String from, String to) {
        return cited(id + ",limit,surface," + low + ",,degF,absolute,,,,,," + from + "," + to + ",in,half-even,");
    }

    @Test
    void aThicknessThatNoBandHasIsSaidWithTheLineOfTheBandBelowIt() {
        assertThat(troubles(HEAD
                        + band("a", "40", ">=2.0", "")
                        + band("b", "50", ">=1.0", "<=1.8")
                        + band("c", "60", "", "<1.0")))
                .containsExactly("town.csv:3: no row of Town spec 2024 5.1 for surface at a thickness of 1.86 in; right"
                        + " would be a row for it; prints-nothing where the printed table has a gap, sets-no-limit where"
                        + " it means none");
    }

    @Test
    void theEndsOfATableAreCoveredToo() {
        assertThat(troubles(HEAD + band("a", "40", ">=1.0", "<=2.0")))
                .containsExactly(
                        "town.csv:2: no row of Town spec 2024 5.1 for surface at a thickness of 0.01 in; right would be"
                                + " a row for it; prints-nothing where the printed table has a gap, sets-no-limit where"
                                + " it means none",
                        "town.csv:2: no row of Town spec 2024 5.1 for surface at a thickness of 2.06 in; right would be"
                                + " a row for it; prints-nothing where the printed table has a gap, sets-no-limit where"
                                + " it means none");
    }

    @Test
    void aGapOfThePrintedTableIsARowOfItsOwn() {
        String gap = cited("g,prints-nothing,surface,,,,,,,,,,>=1.5,<=1.9,in,half-even,");
        Loaded loaded = read(HEAD + band("a", "40", ">=2.0", "") + gap + band("b", "50", "", "<=1.4"));

        assertThat(loaded.troubles()).isEmpty();
        Ruling ruling = loaded.sheet()
                .orElseThrow()
                .ruling(
                        Quantity.SURFACE,
                        Situation.UNKNOWN.thick(screedbook.unit.Amount.of("1.7", screedbook.unit.Unit.INCH)));
        assertThat(ruling.noLimit()).isTrue();
        assertThat(ruling.silent()).containsExactly("A sentence.");
    }

    @Test
    void bandsThatOverlapAreSaid() {
        assertThat(troubles(HEAD + band("a", "40", ">=1.5", "") + band("b", "50", "", "<=1.5")))
                .containsExactly("town.csv:3: to <=1.5 in beside from >=1.5 in of line 2: both hold at 1.49 in; right"
                        + " would be bands of one clause that do not overlap");
    }

    @Test
    void bandsOutOfTheirOrderAreSaid() {
        assertThat(troubles(HEAD
                        + band("a", "40", ">=2.0", "")
                        + band("b", "60", "", "<1.0")
                        + band("c", "50", ">=1.0", "<=1.9")))
                .containsExactly("town.csv:4: from >=1.0 to <=1.9 in behind to <1.0 in; right would be the bands of one"
                        + " clause in the order of thickness");
    }

    @Test
    void bandsOfOneClauseHaveOneUnitAndOneRounding() {
        assertThat(troubles(HEAD
                        + band("a", "40", ">=2.0", "")
                        + band("b", "60", "", "<=1.9").replace("half-even", "absolute")))
                .containsExactly("town.csv:3: a band in in, absolute, where the table has in, half-even; right would be"
                        + " one unit and one rounding for all bands of a clause");
    }

    @Test
    void aSheetThatWasInForceOnceIsStillTakenWithItsGap() {
        byte[] gap = (HEAD + band("a", "40", ">=2.0", "")).getBytes(StandardCharsets.UTF_8);

        assertThat(SpecSheet.read("town", gap).sheet()).isEmpty();
        assertThat(SpecSheet.kept("town", gap).sheet()).isPresent();
    }

    @Test
    void datesThatOverlapAreSaid() {
        assertThat(troubles(HEAD + cited("a,limit,air,40,,degF,absolute,,,,,11-02..12-31|12-31..03-31?,,,,,")))
                .containsExactly(
                        "town.csv:2: dates is \"11-02..12-31|12-31..03-31?\", which has 12-31 twice; right would"
                                + " be windows that do not overlap");
    }

    @Test
    void aRowMayHoldUnlessTheCaseIsSaidToBeAnother() {
        String text = HEAD.replace("grade", "mix_type")
                + cited("a,limit,air,40,,degF,absolute,,,,!424,,,,,,")
                + cited("b,limit,air,60,,degF,absolute,,,,424,,,,,,");
        SpecSheet sheet = read(text).sheet().orElseThrow();

        assertThat(sheet.ruling(Quantity.AIR, type("448")).inForce())
                .extracting(Limit::id)
                .containsExactly("a");
        assertThat(sheet.ruling(Quantity.AIR, type("424")).inForce())
                .extracting(Limit::id)
                .containsExactly("b");
        assertThat(sheet.ruling(Quantity.AIR, Situation.UNKNOWN).inForce())
                .extracting(Limit::id)
                .containsExactly("a");
        assertThat(sheet.ruling(Quantity.AIR, Situation.UNKNOWN).unsure())
                .extracting(Limit::id)
                .containsExactly("b");
        assertThat(troubles(HEAD + cited("a,limit,air,40,,degF,absolute,,,,64|!70,,,,,,")))
                .containsExactly(
                        "town.csv:2: grade is \"64|!70\"; right would be either the words that it holds for, or"
                                + " those with ! that it does not hold for");
    }

    private static Situation type(String mix) {
        return new Situation(null, null, null, null, null, null, null, null, null, null, null, null, mix);
    }

    @Test
    void aDepthMayBePrintedInFeet() {
        String text = HEAD + cited("a,limit,lift,,0.30,ft,absolute,,,,,,,,,,");

        assertThat(read(text).sheet().orElseThrow().printed())
                .extracting(Printed::figures)
                .containsExactly("at most 0.30 ft");
    }
}
