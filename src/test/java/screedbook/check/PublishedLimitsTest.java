package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The limits of the shipped sheets against tables of their own: each at its edge, and one step outside. The tables hold
 * only figures that were read; the practice table is common practice, no source, and says so in each row.
 */
class PublishedLimitsTest {
    private static final CSVFormat TABLE = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    /** A row of a table with the sheet that it is held against. */
    record Printed(String sheet, Published.Row row) {
        @Override
        public String toString() {
            return sheet + " " + row;
        }
    }

    static Stream<Printed> printed() {
        return sheets().flatMap(
                        name -> Published.rows("limits-" + name).stream().map(row -> new Printed(name, row)));
    }

    /** The shipped sheets that were read in documents, and one of documents that are in no shipped sheet. */
    static Stream<String> sheets() {
        return Stream.concat(
                SpecSheet.shippedNames().stream().filter(name -> !name.equals("practice")), Stream.of("elsewhere"));
    }

    static Stream<String> all() {
        return Stream.concat(Stream.of("practice"), sheets());
    }

    static Stream<Published.Row> practice() throws IOException {
        List<Published.Row> rows = new ArrayList<>();
        try (InputStream in = PublishedLimitsTest.class.getResourceAsStream("/published/limits-practice.csv")) {
            for (CSVRecord line : TABLE.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                rows.add(new Published.Row(line.toMap()));
            }
        }
        return rows.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void aSheetIsAsItsDocumentsArePrinted(Printed printed) {
        holds(printed.sheet(), printed.row());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("practice")
    void commonPracticeIsAsItWasStated(Published.Row row) {
        assertThat(row.text("source")).isEqualTo("common practice, no source");
        holds("practice", row);
    }

    private static void holds(String sheet, Published.Row row) {
        Amount value =
                new Amount(row.number("value"), Unit.ofSuffix(row.text("unit")).orElseThrow());
        Bounds bounds = Bounds.of(sheet(sheet), quantity(row.text("quantity")), situation(row.text("case")));

        assertThat(bounds.text()).isEqualTo(row.text("limit"));
        assertThat(bounds.of(value).text()).isEqualTo(row.text("verdict"));
    }

    private static SpecSheet sheet(String name) {
        return SpecSheet.read(name, bytes(name)).sheet().orElseThrow();
    }

    private static byte[] bytes(String name) {
        return SpecSheet.shippedBytes(name)
                .orElseGet(
                        () -> String.join("\n", Published.lines(name + ".csv")).getBytes(StandardCharsets.UTF_8));
    }

    private static Quantity quantity(String word) {
        return Stream.of(Quantity.values())
                .filter(q -> q.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    private static Situation situation(String told) {
        Map<String, String> is = new HashMap<>();
        for (String each : told.isEmpty() ? new String[0] : told.split(";")) {
            is.put(each.substring(0, each.indexOf('=')), each.substring(each.indexOf('=') + 1));
        }
        String thickness = is.get("thickness");
        String nmas = is.get("nmas");
        String grade = is.get("grade");
        return new Situation(
                is.get("layer"),
                thickness == null ? null : thickness(thickness),
                nmas == null ? null : new BigDecimal(nmas),
                grade == null ? null : Integer.valueOf(grade),
                is.get("polymer"),
                is.get("aid"),
                is.get("light"),
                is.get("thermal"),
                is.get("base"),
                is.get("tack_on"),
                is.get("tack_grade"),
                is.get("date") == null ? null : LocalDate.parse(is.get("date")),
                is.get("mix_type"));
    }

    /** {@code 0.10 ft}; inches where no unit is told. */
    private static Amount thickness(String told) {
        String[] words = told.split(" ");
        return Amount.of(
                words[0],
                words.length == 1 ? Unit.INCH : Unit.ofSuffix(words[1]).orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyLimitOfTheSheetStandsInItsTableAtItsEdgeAndOneStepOutside(String name) throws IOException {
        List<Published.Row> table =
                (name.equals("practice") ? practice() : Published.rows("limits-" + name).stream()).toList();
        Set<String> untried = new LinkedHashSet<>();
        for (CSVRecord row : TABLE.parse(new StringReader(text(name)))) {
            if (row.get("does").equals("limit")) {
                for (String end : List.of("low", "high")) {
                    untried.addAll(untried(row, end, table));
                }
            }
        }

        assertThat(untried).isEmpty();
    }

    private static List<String> untried(CSVRecord row, String end, List<Published.Row> table) {
        if (!row.isMapped(end) || row.get(end).isEmpty()) {
            return List.of();
        }
        BigDecimal limit = new BigDecimal(row.get(end));
        List<Published.Row> tried =
                table.stream().filter(r -> r.text("row").equals(row.get("id"))).toList();
        boolean edge = tried.stream()
                .anyMatch(r ->
                        r.text("verdict").equals("inside") && r.number("value").compareTo(limit) == 0);
        boolean beyond = tried.stream()
                .anyMatch(r -> r.text("verdict").equals("OUT")
                        && (end.equals("low")
                                ? r.number("value").compareTo(limit) < 0
                                : r.number("value").compareTo(limit) > 0));
        List<String> untried = new ArrayList<>();
        if (!edge) {
            untried.add(row.get("id") + " " + end + " at its edge");
        }
        if (!beyond) {
            untried.add(row.get("id") + " " + end + " one step outside");
        }
        return untried;
    }

    private static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** Ohio CMS 2010 401.06, read: none of it after 1 November. Spring is not in the clause, so it is look again. */
    @Test
    void aPolymerSurfaceCourseIsNotPlacedAfterTheFirstOfNovember() {
        assertThat(asked("ohio-401-2010", Demand.NOT_ON_THESE_DATES, "2026-11-01", "yes"))
                .isEmpty();
        assertThat(asked("ohio-401-2010", Demand.NOT_ON_THESE_DATES, "2026-11-02", "yes"))
                .singleElement()
                .matches(Asked::sure);
        assertThat(asked("ohio-401-2010", Demand.NOT_ON_THESE_DATES, "2026-12-31", "yes"))
                .singleElement()
                .matches(Asked::sure);
        assertThat(asked("ohio-401-2010", Demand.NOT_ON_THESE_DATES, "2027-01-01", "yes"))
                .singleElement()
                .matches(a -> !a.sure());
        assertThat(asked("ohio-401-2010", Demand.NOT_ON_THESE_DATES, "2026-11-02", "no"))
                .isEmpty();
    }

    /** WSDOT 5-04.3(1) as reprinted, read: no wearing course on the travelled way from 1 October to 31 March. */
    @Test
    void aWearingCourseIsNotPlacedFromOctoberToMarch() {
        for (String date : List.of("2026-10-01", "2026-12-31", "2027-01-01", "2027-03-31")) {
            assertThat(asked("wsdot-5-04", Demand.NOT_ON_THESE_DATES, date, "no"))
                    .as(date)
                    .singleElement()
                    .matches(Asked::sure);
        }
        for (String date : List.of("2026-09-30", "2027-04-01")) {
            assertThat(asked("wsdot-5-04", Demand.NOT_ON_THESE_DATES, date, "no"))
                    .as(date)
                    .isEmpty();
        }
        assertThat(sheet("wsdot-5-04")
                        .asked(Demand.NOT_ON_THESE_DATES, situation("layer=below-riding-surface;date=2026-12-31")))
                .isEmpty();
    }

    /** Ohio sampling manual 2005, 407, read: tack asks for the surface temperature of the course to be placed. */
    @Test
    void tackAsksForTheSurfaceOfTheCourseThatItIsSprayedFor() {
        Situation course = situation("layer=below-riding-surface;thickness=2.0;base=asphalt;mix_type=448");

        assertThat(Bounds.of(sheet("ohio-401-407-424-2010"), Quantity.SURFACE, course.tacked("milled", "SS-1h")))
                .isEqualTo(Bounds.of(sheet("ohio-401-407-424-2010"), Quantity.SURFACE, course));
    }

    private static List<Asked> asked(String sheet, Demand demand, String date, String polymer) {
        return sheet(sheet).asked(demand, situation("layer=riding-surface;polymer=" + polymer + ";date=" + date));
    }

    @Test
    void theCautiousReadingOfTheAidIsInItsWorking() {
        Situation night =
                situation("layer=riding-surface;light=night;grade=70;aid=warm-mix;thermal=continuous-imaging");

        assertThat(Bounds.of(sheet("practice"), Quantity.SURFACE, night).working())
                .contains("at least 45")
                .contains("read cautiously")
                .contains("45 less 10 is 35, not below 35: 35.");
    }

    @Test
    void aValueIsRoundedAsItsRowSaysBeforeItIsCompared() {
        Bounds ohio = Bounds.of(
                sheet("ohio-401-2010"),
                Quantity.SURFACE,
                situation("layer=below-riding-surface;thickness=2.0;base=asphalt"));

        assertThat(ohio.of(Amount.of("39.5", Unit.DEG_F))).isEqualTo(Verdict.INSIDE);
        assertThat(ohio.of(Amount.of("39.4", Unit.DEG_F))).isEqualTo(Verdict.OUTSIDE);
        assertThat(ohio.of(Amount.of("4", Unit.DEG_C))).isEqualTo(Verdict.OUTSIDE);
        assertThat(ohio.of(Amount.of("4.4", Unit.DEG_C))).isEqualTo(Verdict.INSIDE);
    }
}
