package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** Records as plain values and back. No source: the form of the record is this program's own. */
class FieldsTest {
    static Stream<Arguments> everyRecordInBothSystems() {
        Stream<Class<? extends Record>> types = Stream.concat(
                Stream.of(Kind.values()).map(Kind::type),
                Stream.of(Aside.class, Person.class, Instrument.class, Job.class));
        return types.flatMap(type -> Stream.of(UnitSystem.values()).map(system -> Arguments.of(type, system)));
    }

    @ParameterizedTest
    @MethodSource("everyRecordInBothSystems")
    void aRecordMadePlainAndBuiltAgainIsTheSameRecord(Class<? extends Record> type, UnitSystem system) {
        for (long seed = 1; seed <= 40; seed++) {
            Record written = new AnyRecord(seed, system).of(type);
            Built<? extends Record> built = Fields.build(type, Fields.plain(written));
            assertThat(built.slips()).isEmpty();
            assertThat(built.unknown()).isEmpty();
            assertThat(built.value()).isEqualTo(written);
        }
    }

    @ParameterizedTest
    @MethodSource("everyRecordInBothSystems")
    void plainKeysComeInTheOrderOfTheBlanks(Class<? extends Record> type, UnitSystem system) {
        List<String> order = Fields.of(type).stream().map(f -> f.key(system)).toList();
        Record record = new AnyRecord(7, system).of(type);
        assertThat(order).containsSubsequence(List.copyOf(Fields.plain(record).keySet()));
    }

    @Test
    void aRecordWithNothingObservedHasNoKeysAndNoNulls() {
        for (Kind kind : Kind.values()) {
            Record empty = Fields.build(kind.type(), Map.of()).value();
            assertThat(Fields.plain(empty)).as(kind.word()).isEmpty();
        }
    }

    @Test
    void keysThatNoBlankClaimsAreNamedInTheirOrderAndWithTheirPath() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("colour", "red");
        values.put("truck", "T104");
        values.put("Net_ston", new BigDecimal("22.1"));
        assertThat(Fields.build(Ticket.class, values).unknown()).containsExactly("colour", "Net_ston");
        Map<String, Object> job = Map.of("mixes", List.of(Map.of("name", "19-64"), Map.of("colour", "red")));
        assertThat(Fields.build(Job.class, job).unknown()).containsExactly("mixes[1].colour");
    }

    @Test
    void everyValueThatCannotBeReadIsASlipWithItsPathAndWhatWouldBeRightAllAtOnce() {
        Map<String, Object> mix = new LinkedHashMap<>();
        mix.put("name", new BigDecimal("5"));
        mix.put("polymer", "maybe");
        mix.put("gmm", "2.5");
        mix.put("gmm_date", "2026-02-30");
        mix.put("nmas_mm", "19");
        Map<String, Object> job = new LinkedHashMap<>();
        job.put("zone", "Middle/Earth");
        job.put("pavers", "P1");
        job.put("place", List.of());
        job.put("stationing", Map.of("begins_sta", "twelve", "equations", List.of("x")));
        job.put("lifts", List.of(Map.of("number", new BigDecimal("1.5"))));
        job.put("mixes", List.of(mix));
        job.put("night", Map.of("begins", "25:00"));
        job.put("sheet", null);
        Built<Job> built = Fields.build(Job.class, job);
        assertThat(built.slips())
                .extracting(Built.Slip::path)
                .containsExactlyInAnyOrder(
                        "zone",
                        "pavers",
                        "place",
                        "stationing.begins_sta",
                        "stationing.equations[0]",
                        "lifts[0].number",
                        "mixes[0].name",
                        "mixes[0].polymer",
                        "mixes[0].gmm",
                        "mixes[0].gmm_date",
                        "mixes[0].nmas_mm",
                        "night.begins",
                        "sheet");
        assertAll(built.slips().stream()
                .map(slip -> () -> assertThat(slip.right()).as(slip.path()).isNotBlank()));
        assertThat(said(built, "mixes[0].polymer"))
                .isEqualTo("mixes[0].polymer is \"maybe\"; right would be one of yes, no");
        assertThat(said(built, "sheet")).isEqualTo("sheet is null; right would be text in quotation marks");
        assertThat(said(built, "lifts[0].number")).endsWith("a whole number");
        assertThat(built.value().zone()).isNull();
        assertThat(built.value().mixes().get(0).polymer()).isNull();
    }

    private static String said(Built<?> built, String path) {
        return built.slips().stream()
                .filter(s -> s.path().equals(path))
                .findFirst()
                .orElseThrow()
                .text();
    }

    @Test
    void whatIsSeenInASlipIsSafeToLookAt() {
        Built<Ticket> built = Fields.build(Ticket.class, Map.of("fate", "placed\u001b[2J"));
        assertThat(built.slips().get(0).seen()).isEqualTo("\"placed<U+001B>[2J\"");
    }

    @Test
    @DisplayName("row 65: no mixing of units: a figure given in both systems is a slip and not one of them silently")
    void oneBlankHoldsOneFigure() {
        Built<Ticket> built = Fields.build(
                Ticket.class, Map.of("net_ston", new BigDecimal("22.10"), "net_t", new BigDecimal("20.05")));
        assertThat(built.slips()).extracting(Built.Slip::path).containsExactly("net_t");
        assertThat(built.value().weights().net()).isNull();
        assertThat(built.unknown()).isEmpty();
    }

    @Test
    @DisplayName("row 65: the value is stored with the unit of the job's system")
    void theKeyOfAMeasuredBlankEndsInItsUnit() {
        assertThat(keys(Kind.TICKET, UnitSystem.US)).contains("net_ston", "gross_lb", "paver_degF", "plant_degF");
        assertThat(keys(Kind.TICKET, UnitSystem.METRIC)).contains("net_t", "gross_kg", "paver_degC", "plant_degC");
        assertThat(keys(Kind.TACK, UnitSystem.US)).contains("before_gal", "depth_before_in", "width_ft", "area_yd2");
        assertThat(keys(Kind.TACK, UnitSystem.METRIC)).contains("before_L", "depth_before_mm", "width_m", "area_m2");
        assertThat(keys(Kind.WEATHER, UnitSystem.US)).contains("air_degF", "wind_mph", "rain_in_h", "humidity_pct");
        assertThat(keys(Kind.WEATHER, UnitSystem.METRIC)).contains("air_degC", "wind_kmh", "rain_mm_h", "humidity_pct");
    }

    private static List<String> keys(Kind kind, UnitSystem system) {
        return kind.fields().stream().map(f -> f.key(system)).toList();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void aFigureKeepsItsDigitsAndTheUnitOfItsKey(UnitSystem system) {
        Unit unit = system == UnitSystem.US ? Unit.SHORT_TON : Unit.TONNE;
        Built<Ticket> built = Fields.build(Ticket.class, Map.of("net_" + unit.suffix(), new BigDecimal("22.50")));
        assertThat(built.value().weights().net()).isEqualTo(Amount.of("22.50", unit));
    }

    @Test
    void whatAnAmendmentSetsCannotBeChangedAfterwards() {
        Map<String, Object> set = new LinkedHashMap<>(Map.of("net_ston", new BigDecimal("22.10")));
        Amend amend =
                Fields.build(Amend.class, Map.of("of", "paver/3", "set", set)).value();
        set.put("net_ston", new BigDecimal("99"));
        assertThat(amend.set()).containsEntry("net_ston", new BigDecimal("22.10"));
        List<String> immutable = new ArrayList<>();
        try {
            amend.set().clear();
        } catch (UnsupportedOperationException e) {
            immutable.add("cannot be changed");
        }
        assertThat(immutable).hasSize(1);
    }
}
