package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.entry.ListColumns;
import screedbook.entry.ListColumns.Dates;
import screedbook.entry.ListColumns.Weights;
import screedbook.entry.PlantRows;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A plant's own list as it may come: quotes, marks, signs between the cells (RFC 4180 and what is met beside it). */
class ListFileTest {
    private static final ListColumns COLUMNS = columns(Weights.TONS, Dates.MDY);

    private static ListColumns columns(Weights weights, Dates dates) {
        return new ListColumns("Ticket", "Truck", "Net", "Loaded", null, "Mix", weights, dates);
    }

    private static ListFile list(String text) {
        return ListFile.of("list.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static PlantRows rows(String text) {
        return list(text).rows("Quarry", COLUMNS);
    }

    private static final String HEAD = "Ticket,Truck,Net,Loaded,Mix\n";

    private static final PlantRows.Row FIRST = new PlantRows.Row(
            2,
            "48217",
            "T104",
            Amount.of("21.96", Unit.SHORT_TON),
            LocalDate.of(2026, 6, 3),
            LocalTime.of(21, 2),
            "12.5 surf");

    @Test
    void eachRowIsALoadAsItsColumnsSay() {
        PlantRows read = rows(HEAD + "48217,T104,21.96,6/3/2026 21:02,12.5 surf\n");
        assertThat(read.rows()).containsExactly(FIRST);
        assertThat(read.troubles()).isEmpty();
        assertThat(read.tons()).contains(Amount.of("21.96", Unit.SHORT_TON));
    }

    @Test
    void quotesAMarkOfTheFileAndOtherSignsBetweenTheCellsMakeNoDifference() {
        assertThat(rows("\uFEFF" + HEAD + "\"48217\",\"T104\",\"21.96\",\"6/3/2026 21:02\",\"12.5 surf\"\r\n")
                        .rows())
                .containsExactly(FIRST);
        assertThat(rows("Ticket;Truck;Net;Loaded;Mix\n48217;T104;21,96;6/3/2026 21:02;12.5 surf\n")
                        .rows())
                .containsExactly(FIRST);
        assertThat(rows("Ticket\tTruck\tNet\tLoaded\tMix\r48217\tT104\t21.96\t6/3/2026 21:02\t12.5 surf\r")
                        .rows())
                .containsExactly(FIRST);
        assertThat(rows("sep=;\nTicket;Truck;Net;Loaded;Mix\n=\"48217\";T104;21.96;6/3/2026 21:02;12.5 surf")
                        .rows())
                .extracting(PlantRows.Row::number)
                .containsExactly("48217");
    }

    @Test
    void aTitleAboveTheHeadingIsToldAndTheHeadingFound() {
        PlantRows read = rows("Loads of the day\n\n" + HEAD + "48217,T104,21.96,6/3/2026 21:02,12.5 surf\n");
        assertThat(read.rows()).extracting(PlantRows.Row::number).containsExactly("48217");
        assertThat(read.rows().get(0).line()).isEqualTo(4);
        assertThat(read.troubles()).containsExactly("list.csv:1: a line above the heading");
    }

    @Test
    void oneDamagedLineSpoilsNoOther() {
        PlantRows read = rows(HEAD + "48217,T104,21.96,,\n48218,\"T118,22.10,,\n48219,T104,22.00,,\n");
        assertThat(read.rows()).extracting(PlantRows.Row::number).containsExactly("48217", "48219");
        assertThat(list(HEAD + "48217,T104,21.96,,\n48218,\"T118,22.10,,\n48219,T104,22.00,,\n")
                        .troubles(COLUMNS))
                .extracting(Trouble::text)
                .containsExactly("list.csv:3: a line that is no CSV\n    48218,\"T118,22.10,,\n"
                        + "    right would be: cells parted by one sign, quotes closed");
    }

    @Test
    void aCellMayRunOverLinesWhenTheRowComesOutWhole() {
        PlantRows read = rows(HEAD + "48217,T104,21.96,,\"12.5\nsurf\"\n48218,T118,22.10,,\n");
        assertThat(read.rows()).extracting(PlantRows.Row::number).containsExactly("48217", "48218");
        assertThat(read.rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void whatCannotBeReadIsToldWithItsLineAndTheRestOfTheRowStays() {
        PlantRows read = rows(HEAD + "48217,T104,heavy,yesterday,\n,,43.10,,\n48219,T104,22.00,6/31/2026 21:00,x,y\n");
        assertThat(read.rows())
                .containsExactly(
                        new PlantRows.Row(2, "48217", "T104", null, null, null, null),
                        new PlantRows.Row(
                                4,
                                "48219",
                                "T104",
                                Amount.of("22.00", Unit.SHORT_TON),
                                null,
                                LocalTime.of(21, 0),
                                "x"));
        assertThat(read.troubles())
                .containsExactly(
                        "list.csv:2: net \"heavy\" is not read",
                        "list.csv:2: hour \"yesterday\" is not read",
                        "list.csv:3: no ticket number; it is compared with nothing",
                        "list.csv:4: 6 cells",
                        "list.csv:4: date \"6/31/2026\" is not read");
    }

    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "21.96|TONS|21.96",
                "21,96|TONS|21.96",
                "21.960 t|TONS|21.960",
                "1,021.96|TONS|1021.96",
                "1.021,96|TONS|1021.96",
                "43,920|LB|43920",
                "43.920|LB|43920",
                "43 920 lb|LB|43920",
                "19922|KG|19922",
                "19.92|TONNES|19.92",
                "-1.50|TONS|-1.50"
            })
    void aWeightIsReadAsThePlantsPrintIt(String cell, Weights weights, String value) {
        String text = HEAD + "1,T1,\"" + cell + "\",,\n";
        assertThat(list(text)
                        .rows("Quarry", columns(weights, null))
                        .rows()
                        .get(0)
                        .net())
                .isEqualTo(Amount.of(value, weights.unit()));
    }

    @ParameterizedTest(name = "{0} in {1} is not read")
    @CsvSource(
            delimiter = '|',
            value = {"43920 lb|TONS", "21.9.6|TONS", "2,19,6|LB", "1e3|TONS", "T 21|TONS", "1234567890123|KG"})
    void aWeightThatMayMeanAnythingIsNotGuessed(String cell, Weights weights) {
        PlantRows read = list(HEAD + "1,T1,\"" + cell + "\",,\n").rows("Quarry", columns(weights, null));
        assertThat(read.rows().get(0).net()).isNull();
        assertThat(read.troubles()).containsExactly("list.csv:2: net \"" + cell + "\" is not read");
    }

    @ParameterizedTest(name = "{0} written {1} is {2} {3}")
    @CsvSource({
        "2026-06-03 21:02,,2026-06-03,21:02",
        "2026-06-03T21:02:41-06:00,,2026-06-03,21:02",
        "20260603 2102,,2026-06-03,21:02",
        "6/3/2026 9:02 PM,MDY,2026-06-03,21:02",
        "3.6.26 21:02,DMY,2026-06-03,21:02",
        "3-Jun-2026 12:02 am,,2026-06-03,00:02",
        "21:02,,,21:02",
        "2102,,,21:02"
    })
    void aDateAndAnHourAreReadInTheOrderThatIsSettled(String cell, Dates dates, LocalDate date, LocalTime hour) {
        PlantRows read = list(HEAD + "1,T1,1," + cell + ",\n").rows("Quarry", columns(Weights.TONS, dates));
        assertThat(read.troubles()).isEmpty();
        assertThat(read.rows().get(0).date()).isEqualTo(date);
        assertThat(read.rows().get(0).hour()).isEqualTo(hour);
    }

    @Test
    void aDateWhoseOrderIsNotSettledIsNotGuessed() {
        PlantRows read = list(HEAD + "1,T1,1,6/3/2026 21:02,\n").rows("Quarry", columns(Weights.TONS, null));
        assertThat(read.rows().get(0).date()).isNull();
        assertThat(read.rows().get(0).hour()).isEqualTo(LocalTime.of(21, 2));
        assertThat(read.troubles())
                .containsExactly("list.csv:2: date \"6/3/2026\", whose order is not settled, is not read");
    }

    @Test
    void aDateMayHaveAColumnOfItsOwn() {
        ListColumns own = new ListColumns("No", null, "Net", "Time", "Date", null, Weights.TONS, Dates.MDY);
        PlantRows read = list("No,Date,Time,Net\n7,6/3/26,21:02,20\n").rows("Quarry", own);
        assertThat(read.rows())
                .containsExactly(new PlantRows.Row(
                        2,
                        "7",
                        null,
                        Amount.of("20", Unit.SHORT_TON),
                        LocalDate.of(2026, 6, 3),
                        LocalTime.of(21, 2),
                        null));
    }

    @Test
    void linesThatAreTooLongOrInAnotherCodeAreTold() {
        PlantRows read = rows(HEAD + "48217,T104,21.96,,\"" + "x".repeat(ListTable.LONGEST) + "\"\n48218,T1,22.10,,\n");
        assertThat(read.rows()).extracting(PlantRows.Row::number).containsExactly("48218");
        assertThat(read.troubles()).containsExactly("list.csv:2: a line of 65556 bytes is not read");
        byte[] latin = (HEAD + "48217,T104,21.96,,caf\u00e9\n").getBytes(StandardCharsets.ISO_8859_1);
        PlantRows other = ListFile.of("list.csv", latin).rows("Quarry", COLUMNS);
        assertThat(other.rows()).extracting(PlantRows.Row::number).containsExactly("48217");
        assertThat(other.troubles()).containsExactly("list.csv:2: bytes that are no UTF-8");
        PlantRows wide =
                ListFile.of("list.csv", HEAD.getBytes(StandardCharsets.UTF_16)).rows("Quarry", COLUMNS);
        assertThat(wide.rows()).isEmpty();
        assertThat(wide.troubles()).first().isEqualTo("list.csv:1: it is written in UTF-16");
        assertThat(rows("").troubles()).first().isEqualTo("list.csv: it holds no row");
    }

    @Test
    void whatMayBeWhichColumnIsOfferedByTheHeadingAndWhatStandsBelow() {
        ListColumns guess = list("Date,Time,Ticket No,Vehicle,Product,Gross lb,Tare lb,Net lb\n"
                        + "6/13/2026,21:02,48217,104,12.5,71320,27400,43920\n")
                .guess();
        assertThat(guess)
                .isEqualTo(new ListColumns(
                        "Ticket No", "Vehicle", "Net lb", "Time", "Date", "Product", Weights.LB, Dates.MDY));
        assertThat(list("a,b,c\n1,2,3\n").guess()).isEqualTo(ListColumns.NONE);
    }

    @Test
    void columnsOfOneNameAreNumberedAndThoseWithoutOneToo() {
        assertThat(list("No,Weight,Weight,\n1,2,3,4\n").heading(ListColumns.NONE))
                .containsExactly("No", "Weight", "Weight #2", "column 4");
        assertThat(list("No,Weight,Time\n1,2,3\n")
                        .missing(new ListColumns("No", "Truck", "Weight", null, null, null, Weights.LB, null)))
                .containsExactly("Truck");
    }

    @Test
    @DisplayName("a list is a file of at most 2 MiB")
    void whatIsNoListIsNotRead(@TempDir Path folder) throws IOException {
        Path large = folder.resolve("large.csv");
        Files.write(large, new byte[2 * 1024 * 1024 + 1]);
        assertThatThrownBy(() -> ListFile.read(large))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("2 MiB");
        assertThatThrownBy(() -> ListFile.read(folder))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("no file");
        assertThatThrownBy(() -> ListFile.read(folder.resolve("none.csv")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("not there");
        Path small = folder.resolve("small.csv");
        Files.writeString(small, HEAD + "1,T1,20,,\n");
        assertThat(ListFile.read(small).rows("Quarry", COLUMNS).rows()).hasSize(1);
        assertThat(List.of(ListFile.read(small).count(COLUMNS))).containsExactly(1);
    }
}
