package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import screedbook.Accusing;
import screedbook.unit.UnitSystem;

/** Entries told in one line. */
class ToldTest {
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindIsToldInOneLineThatIsSafeToLookAt(Kind kind) {
        for (UnitSystem system : UnitSystem.values()) {
            for (long seed = 1; seed <= 60; seed++) {
                Entry entry = (Entry) new AnyRecord(seed, system).of(kind.type());
                String line = Told.line(entry);
                assertThat(line).startsWith(kind == Kind.TICKET ? "ticket " : Told.kind(kind));
                assertThat(line.codePoints().noneMatch(Shown::hidden)).as(line).isTrue();
                assertThat(line)
                        .doesNotContain("null")
                        .doesNotContain("Optional")
                        .doesNotContain("[");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void anEntryOfWhichNothingWasObservedIsItsKindAlone(Kind kind) {
        Entry entry = (Entry) Fields.build(kind.type(), Map.of()).value();
        assertThat(Told.line(entry)).isEqualTo(kind == Kind.TICKET ? "ticket without number" : Told.kind(kind));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void noLabelHelpOrWordAccuses(Kind kind) {
        List<String> said = new ArrayList<>(List.of(Told.kind(kind), kind.word()));
        for (Field field : kind.fields()) {
            said.add(field.label());
            said.add(field.help());
            said.addAll(field.words());
        }
        for (String text : said) {
            assertThat(Accusing.in(text)).as(text).isEmpty();
        }
    }

    @Test
    void aTicketIsToldByNumberPlaceTruckWeightAndHeat() {
        Ticket ticket = Book.made(
                Ticket.class,
                "number",
                "48218",
                "truck",
                "T118",
                "net_ston",
                new BigDecimal("22.30"),
                "paver_degF",
                new BigDecimal("264"),
                "from_sta",
                "13+53",
                "to_sta",
                "15+05");
        assertThat(Told.line(ticket)).isEqualTo("ticket 48218  13+53 to 15+05  T118  22.30 T  264 °F");
    }

    @Test
    void aTicketSaysWhatBecameOfItWhenItWasNotSimplyPlaced() {
        Ticket part = Book.made(
                Ticket.class,
                "number",
                "7",
                "plant_degF",
                new BigDecimal("301"),
                "fate",
                "part-placed",
                "returned_ston",
                new BigDecimal("3.0"),
                "from_sta",
                "1+00");
        assertThat(Told.line(part)).isEqualTo("ticket 7  1+00 to ?  plant 301 °F  part-placed  not placed 3.0 T");
        assertThat(Told.line(Book.made(Ticket.class, "number", "8", "fate", "placed")))
                .isEqualTo("ticket 8");
    }

    @Test
    void tackWeatherAndSurfaceAreToldWithTheirUnits() {
        Tack tack = Book.made(
                Tack.class,
                "product",
                "CSS-1h",
                "from_sta",
                "12+00",
                "to_sta",
                "15+00",
                "surface",
                "milled",
                "before_gal",
                new BigDecimal("1480"),
                "after_gal",
                new BigDecimal("1431.5"),
                "material_degF",
                new BigDecimal("152"));
        assertThat(Told.line(tack)).isEqualTo("tack  CSS-1h  12+00 to 15+00  milled  1480 to 1431.5 gal  152 °F");
        Weather weather = Book.made(
                Weather.class,
                "air_degF",
                new BigDecimal("58"),
                "humidity_pct",
                new BigDecimal("40"),
                "wind_mph",
                new BigDecimal("7"),
                "wind_from",
                "nw",
                "sky",
                "few",
                "precipitation",
                "light-rain",
                "road",
                "damp",
                "engineer_call",
                "not-suitable");
        assertThat(Told.line(weather))
                .isEqualTo("weather  58 °F  40 %  wind 7 NW  few  light-rain  road damp  engineer: not-suitable");
        Surface surface = Book.made(
                Surface.class,
                "surface_degC",
                new BigDecimal("9.5"),
                "place_sta",
                "1+250",
                "pull",
                "B",
                "lift",
                new BigDecimal("2"));
        assertThat(Told.line(surface)).isEqualTo("surface  1+250  9.5 °C  pull B lift 2");
    }

    @Test
    void samplesCoresAndReadingsAreToldWithWhatTheirFiguresAre() {
        Core core = Book.made(
                Core.class,
                "core",
                "C-1",
                "place_sta",
                "12+50",
                "pull",
                "B",
                "lift",
                new BigDecimal("2"),
                "lot",
                new BigDecimal("1"),
                "sublot",
                new BigDecimal("2"),
                "height_in",
                new BigDecimal("2.10"),
                "gmb",
                new BigDecimal("2.311"));
        assertThat(Told.line(core))
                .isEqualTo("core  C-1  12+50  pull B lift 2  lot 1 sublot 2  height 2.10 in  Gmb 2.311");
        Custody custody = Book.made(
                Custody.class,
                "sample",
                "S-1",
                "given_by",
                "RK",
                "taken_by",
                "CD",
                "seal_number",
                "4411",
                "whole",
                "no");
        assertThat(Told.line(custody)).isEqualTo("custody  S-1  RK to CD  seal 4411  not whole");
        Result result = Book.made(Result.class, "sample", "S-1", "what", "air-voids", "found", new BigDecimal("3.9"));
        assertThat(Told.line(result)).isEqualTo("result  S-1  air-voids 3.9");
    }

    @Test
    void anAmendmentSaysWhatItSetsAndWhatItTakesAway() {
        Amend amend = new Amend(
                Ref.of("paver/17"), Book.map("net_ston", new BigDecimal("21.20"), "paver_degF", null), "misread");
        assertThat(Told.line(amend)).isEqualTo("amend  paver/17  net_ston 21.20, paver_degF taken away  misread");
    }

    @Test
    void aHashIsNotRecited() {
        SetAside aside =
                Book.made(SetAside.class, "file", "x.torn-12", "byte_count", new BigDecimal("40"), "sha256", "ab12");
        assertThat(Told.line(aside)).isEqualTo("set aside  x.torn-12  40");
    }

    @Test
    void whatAPlantSaysIsToldInLoadsAndTons() {
        PlantTotal total = new PlantTotal(
                "Quarry Road",
                "12.5-70A",
                1,
                screedbook.unit.Amount.of("21.96", screedbook.unit.Unit.SHORT_TON),
                null,
                "48217",
                "the loader");
        assertThat(Told.line(total))
                .isEqualTo("plant's total  Quarry Road  12.5-70A  1 load  21.96 T  to 48217  told by the loader");
        PlantList list = new PlantList(
                "Quarry Road",
                "2026-06-03-day.quarry-road.0a1b2c3d.csv",
                "0a",
                121,
                120,
                screedbook.unit.Amount.of("2622.10", screedbook.unit.Unit.SHORT_TON),
                new ListColumns("Ticket", null, "Net", null, null, null, ListColumns.Weights.TONS, null));
        assertThat(Told.line(list))
                .isEqualTo("plant's list  Quarry Road  120 loads  2622.10 T  2026-06-03-day.quarry-road.0a1b2c3d.csv");
    }

    @Test
    void anAreaIsToldByItsEndsAndWidths() {
        Area taper = new Area(
                Area.Shape.TAPER,
                Station.of("10+00"),
                Station.of("11+00"),
                screedbook.unit.Amount.of("12", screedbook.unit.Unit.FOOT),
                screedbook.unit.Amount.of("0", screedbook.unit.Unit.FOOT),
                null,
                Area.Counts.BESIDE,
                "B",
                2,
                null);
        assertThat(Told.line(taper)).isEqualTo("area  taper  10+00 to 11+00  12 to 0 ft wide  beside  pull B lift 2");
    }

    @Test
    void anExplainedNumberIsToldInWords() {
        Number number = new Number("Quarry Road", "48223", Number.What.VOID_AT_PLANT, "CD");
        assertThat(Told.line(number)).isEqualTo("ticket number  48223  void at plant  Quarry Road  said by CD");
    }
}
