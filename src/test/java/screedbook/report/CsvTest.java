package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import screedbook.entry.Day;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Shown;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.tally.Figure;
import screedbook.tally.Shift;
import screedbook.unit.UnitSystem;

/** Read back by another program's hands: Commons CSV in its RFC 4180 form. */
class CsvTest {
    private static List<CSVRecord> read(String csv) throws IOException {
        CSVFormat form = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv, form)) {
            return parser.getRecords();
        }
    }

    @Test
    void noTextRunsInASpreadsheetAndEveryTextComesBack() throws IOException {
        Random random = new Random(4180);
        String signs = "=+-@|%'\",\n\t a1é＝＋－＠\u202e";
        for (int round = 0; round < 3000; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(7); i > 0; i--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            String csv =
                    new Cells().text("head").end().text(text.toString()).end().lines();
            String cell = read(csv).get(0).get(0);
            assertThat(cell.isEmpty() || "=+-@|%＝＋－＠\t\r".indexOf(cell.charAt(0)) < 0)
                    .as(cell)
                    .isTrue();
            assertThat(Cells.plain(cell)).isEqualTo(Shown.text(text.toString()));
        }
    }

    @Test
    void numbersStayNumbers() {
        String csv = new Cells()
                .number(new BigDecimal("-0.50"))
                .number(new BigDecimal("1E+3"))
                .number(new BigDecimal("0.0000001"))
                .number(null)
                .text("-0.50")
                .end()
                .lines();
        assertThat(csv).isEqualTo("-0.50,1000,0.0000001,,\"'-0.50\"\r\n");
    }

    @Test
    void everyFigureOfThePageIsALine() throws IOException {
        DayPaper paper = Sample.paper();
        List<CSVRecord> rows = read(DayCsv.text(paper));
        List<Figure> figures = paper.totals().sections().stream()
                .flatMap(s -> s.figures().stream())
                .toList();
        assertThat(rows).hasSameSizeAs(figures);
        for (int i = 0; i < rows.size(); i++) {
            Figure figure = figures.get(i);
            assertThat(rows.get(i).get("figure")).isEqualTo(figure.id());
            assertThat(rows.get(i).get("value"))
                    .isEqualTo(figure.value() == null ? "" : figure.value().toPlainString());
            assertThat(rows.get(i).get("unit")).isEqualTo(figure.unit());
        }
    }

    @Test
    void everyEntryStandsInTheFileOfItsKindWithItsUnitsInTheHead() throws IOException {
        Day day = Sample.paper().day();
        Map<String, String> files = KindCsv.files(List.of(day), UnitSystem.US);
        assertThat(files.keySet())
                .containsExactlyElementsOf(List.of(Kind.values()).stream()
                        .map(k -> k.word() + ".csv")
                        .toList());
        int rows = 0;
        for (String csv : files.values()) {
            rows += read(csv).size();
        }
        assertThat(rows).isEqualTo(day.all().size());
        assertThat(files.get("ticket.csv"))
                .startsWith("\"n\",\"job\",\"shift\",")
                .contains("\"net_ston\"", "\"paver_degF\"");
    }

    @Test
    void anAmendedEntryStandsAsAmendedAndAStruckOneSaysBywhat() throws IOException {
        List<CSVRecord> tickets =
                read(KindCsv.files(List.of(Sample.paper().day()), UnitSystem.US).get("ticket.csv"));
        CSVRecord amended = tickets.stream()
                .filter(t -> t.get("number").equals("106"))
                .findFirst()
                .orElseThrow();
        CSVRecord struck = tickets.stream()
                .filter(t -> t.get("number").equals("107"))
                .findFirst()
                .orElseThrow();
        assertThat(amended.get("net_ston")).isEqualTo("18.20");
        assertThat(amended.get("amended_by")).isEqualTo("paver/17");
        assertThat(struck.get("struck_by")).isEqualTo("paver/16");
    }

    @Test
    void anAmountInAnotherUnitHasAColumnOfItsOwn() throws IOException {
        Day day = Shift.day()
                .ticket("08:00", "1", "20.00")
                .key(Kind.TICKET, "08:10", "number", "2", "net_t", "19.05")
                .read();
        List<CSVRecord> rows = read(KindCsv.text(Kind.TICKET, List.of(day), UnitSystem.US));
        assertThat(rows.get(0).get("net_ston")).isEqualTo("20.00");
        assertThat(rows.get(1).get("net_ston")).isEmpty();
        assertThat(rows.get(1).get("net_t")).isEqualTo("19.05");
    }

    @Test
    void aRowSaysWhatTheEntrySays() throws IOException {
        Day day = Sample.paper().day();
        List<CSVRecord> rows = read(KindCsv.text(Kind.TICKET, List.of(day), UnitSystem.US));
        List<Standing<Ticket>> tickets = day.every(Ticket.class);
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord row = rows.get(i);
            Fields.plain(tickets.get(i).entry()).forEach((key, value) -> {
                String said = value instanceof BigDecimal n ? n.toPlainString() : value.toString();
                assertThat(Cells.plain(row.get(key))).isEqualTo(said);
            });
        }
    }
}
