package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.entry.Amend;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Foreign;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.entry.Unreadable;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;
import screedbook.unit.UnitSystem;

class LineTextTest {
    private static final LineText.Place PLACE =
            new LineText.Place("harrow-bend", ShiftId.of("2026-06-03-night"), "paver");
    private static final OffsetDateTime KEYED = OffsetDateTime.parse("2026-06-03T21:33:08.120-06:00");
    private static final OffsetDateTime TIME = OffsetDateTime.parse("2026-06-03T21:32:00-06:00");

    /** The line that the description of the form shows, key by key. */
    @Test
    void aTicketIsTheLineThatTheFormDescribes() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("plant", "Quarry Road");
        values.put("number", "48217");
        values.put("truck", "T104");
        values.put("mix", "12.5-70A");
        values.put("net_ston", new BigDecimal("21.90"));
        values.put("paver_degF", new BigDecimal("264"));
        values.put("from_sta", "12+03");
        values.put("to_sta", "13+53");
        values.put("pull", "B");
        values.put("lift", new BigDecimal("2"));
        assertThat(text(17, TIME, entry(Kind.TICKET, values)))
                .isEqualTo("{\"n\":17,\"kind\":\"ticket\",\"job\":\"harrow-bend\",\"shift\":\"2026-06-03-night\","
                        + "\"book\":\"paver\",\"time\":\"2026-06-03T21:32:00-06:00\","
                        + "\"keyed\":\"2026-06-03T21:33:08.120-06:00\",\"who\":\"RK\",\"source\":\"live\","
                        + "\"plant\":\"Quarry Road\",\"number\":\"48217\",\"truck\":\"T104\",\"mix\":\"12.5-70A\","
                        + "\"net_ston\":21.90,\"paver_degF\":264,\"from_sta\":\"12+03\",\"to_sta\":\"13+53\","
                        + "\"pull\":\"B\",\"lift\":2,\"prev\":\"" + Chain.NOTHING_BEFORE + "\"}");
    }

    /** Every kind with every blank filled, in either system of units, is the same entry when it is read again. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindIsReadAsItWasWritten(Kind kind) {
        for (UnitSystem system : UnitSystem.values()) {
            Entry entry = entry(kind, Samples.full(kind.type(), system));
            assertThat(kind.fields())
                    .allSatisfy(field -> assertThat(field.get((Record) entry))
                            .as(field.name())
                            .isNotNull());
            Aside aside = new Aside("BT", List.of("P101", "P102"), "crown °F ± é");
            byte[] bytes = LineText.bytes(
                    PLACE, 3, new Unwritten(TIME, "RK", Source.NOTES, entry, aside), KEYED, Chain.NOTHING_BEFORE);
            Written read = LineText.read("paver", 9, bytes);
            assertThat(read).isInstanceOf(Line.class);
            Line line = (Line) read;
            assertThat(line.entry()).isEqualTo(entry);
            assertThat(line.aside()).isEqualTo(aside);
            assertThat(line.time()).isEqualTo(TIME);
            assertThat(line.keyed()).isEqualTo(KEYED);
            assertThat(line.source()).isEqualTo(Source.NOTES);
            assertThat(line.ref()).isEqualTo(new Ref("paver", 3));
            assertThat(line.row()).isEqualTo(9);
            assertThat(line.unknown()).isEmpty();
            assertThat(line.raw()).isEqualTo(new String(bytes, UTF_8));
            assertThat(LineText.bytes(PLACE, 3, unwritten(line), line.keyed(), Chain.NOTHING_BEFORE))
                    .isEqualTo(bytes);
        }
    }

    private static Unwritten unwritten(Line line) {
        return new Unwritten(line.time(), line.who(), line.source(), line.entry(), line.aside());
    }

    /** A kind with nothing but what every line has is read, too: absent means not observed. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindIsReadWithNothingObserved(Kind kind) {
        Entry entry = entry(kind, Map.of());
        Written read = LineText.read("paver", 1, text(1, null, entry).getBytes(UTF_8));
        assertThat(read).isInstanceOf(Line.class);
        assertThat(((Line) read).entry()).isEqualTo(entry);
        assertThat(((Line) read).time()).isNull();
    }

    /** SQL's reserved words, keys that differ by case only, and one key for two things would hurt later readers. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void noKeyOfAKindMeansTwoThingsOrIsAWordOfSql(Kind kind) {
        Set<String> reserved = Set.of(
                "at", "by", "from", "to", "end", "order", "select", "where", "when", "then", "group", "table", "check",
                "user", "default", "limit", "column", "values", "into", "on", "as", "is", "not", "null", "and", "or",
                "in", "all", "any", "case", "for", "grant", "having", "join", "union", "unique", "using", "with");
        List<String> keys = new ArrayList<>();
        for (Field field : Fields.of(LineText.Header.class)) {
            keys.add(field.name());
        }
        keys.add("prev");
        for (Field field : kind.fields()) {
            keys.add(field.key(UnitSystem.US));
        }
        for (Field field : Fields.of(Aside.class)) {
            keys.add(field.name());
        }
        assertThat(keys).doesNotHaveDuplicates().doesNotContainAnyElementsOf(reserved);
        Set<String> lower = new HashSet<>();
        keys.forEach(key ->
                assertThat(lower.add(key.toLowerCase(Locale.ROOT))).as(key).isTrue());
    }

    @Test
    void aCorrectionKeepsItsValuesAndWhatItTakesAway() {
        Map<String, Object> set = new LinkedHashMap<>();
        set.put("net_ston", new BigDecimal("22.30"));
        set.put("time", null);
        Amend amend = new Amend(new Ref("paver", 17), set, "misread");
        Line line = (Line) LineText.read("paver", 1, text(18, null, amend).getBytes(UTF_8));
        assertThat(line.entry()).isEqualTo(amend);
        assertThat(((Amend) line.entry()).set()).containsEntry("time", null);
    }

    @Test
    void digitsStandAsTheyWereKeyed() {
        for (String digits : List.of("2.50", "0", "0.0", "-4", "100", "0.001", "999999999.999")) {
            Entry entry = entry(Kind.SURFACE, Map.of("surface_degF", new BigDecimal(digits)));
            assertThat(text(1, null, entry)).contains("\"surface_degF\":" + digits + ",");
        }
    }

    /** All of Unicode: what has no shape of its own or drives a terminal is an escape in the line and whole when read. */
    @Test
    void noCharacterOfALineDrivesATerminal() {
        int seen = 0;
        for (int from = 0; from <= Character.MAX_CODE_POINT; from += 0x200) {
            StringBuilder text = new StringBuilder();
            for (int c = from; c < from + 0x200; c++) {
                text.append(Shown.hidden(c) ? "a" + Character.toString(c) : "");
                seen += Shown.hidden(c) ? 1 : 0;
            }
            String written = note(text.toString());
            assertThat(written.codePoints().filter(Shown::hidden))
                    .as("from U+%04X", from)
                    .isEmpty();
            Line line = (Line) LineText.read("paver", 1, written.getBytes(UTF_8));
            assertThat(((Note) line.entry()).text()).isEqualTo(text.toString());
        }
        assertThat(seen).isGreaterThan(100_000);
        assertThat(note("é ñ ° ± ü")).contains("é ñ ° ± ü");
    }

    private static String note(String text) {
        return text(1, null, entry(Kind.NOTE, Map.of("text", text)));
    }

    @Test
    void aKeyOfANewerProgramIsKeptAndNamed() {
        String line = ticket("\"number\":\"1\",\"moon\":\"full\"");
        Line read = (Line) LineText.read("paver", 1, line.getBytes(UTF_8));
        assertThat(read.unknown()).containsExactly("moon");
        assertThat(read.raw()).contains("\"moon\":\"full\"");
    }

    @Test
    void aKindOfANewerProgramIsKept() {
        String line = ticket("\"number\":\"1\"").replace("\"ticket\"", "\"moonrise\"");
        assertThat(LineText.read("paver", 4, line.getBytes(UTF_8)))
                .isEqualTo(new Foreign("paver", 4, 17, "moonrise", line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "'net_ston': 'heavy'            | net_ston is heavy; right would be a number",
                "'lift': 2.5                    | lift is 2.5; right would be a whole number",
                "'from_sta': 'here'             | from_sta is \"here\"; right would be a station such as 12+50.5",
                "'fate': 'vanished'             | fate is \"vanished\"; right would be one of placed",
                "'number': null                 | number is null",
                "'net_ston': 1e400              | without exponent",
                "'net_ston': 1234567890123      | at most 12 digits",
                "'number': '1', 'number': '2'   | Duplicate",
                "'remark': [[[[[[[[[1]]]]]]]]]  | nesting depth",
            })
    void whatCannotBeReadIsKeptWithTheReason(String keys, String reason) {
        String line = ticket(keys.replace('\'', '"'));
        Written read = LineText.read("paver", 5, line.getBytes(UTF_8));
        assertThat(read).isInstanceOf(Unreadable.class);
        Unreadable unreadable = (Unreadable) read;
        assertThat(unreadable.reason()).contains(reason);
        assertThat(unreadable.raw()).isEqualTo(line);
        assertThat(unreadable.row()).isEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "[]", "17", "{}", "{\"n\":1}", "{\"n\":1,\"kind\":\"ticket\"}", "{} {}", "nonsense"})
    void whatIsNoLineIsUnreadableAndNoError(String text) {
        assertThat(LineText.read("paver", 1, text.getBytes(UTF_8))).isInstanceOf(Unreadable.class);
    }

    @Test
    void bytesThatAreNotUtf8AreUnreadable() {
        byte[] line = ticket("\"number\":\"é\"").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(((Unreadable) LineText.read("paver", 1, line)).reason()).contains("not UTF-8");
    }

    @Test
    void aTextOfMoreThanEightKibIsNotTaken() {
        String line = ticket("\"remark\":\"" + "x".repeat(8 * 1024 + 1) + "\"");
        assertThat(LineText.read("paver", 1, line.getBytes(UTF_8))).isInstanceOf(Unreadable.class);
        String fits = ticket("\"remark\":\"" + "x".repeat(8 * 1024) + "\"");
        assertThat(LineText.read("paver", 1, fits.getBytes(UTF_8))).isInstanceOf(Line.class);
    }

    private static String ticket(String keys) {
        return "{\"n\":17,\"kind\":\"ticket\",\"job\":\"harrow-bend\",\"shift\":\"2026-06-03-night\",\"book\":\"paver\","
                + "\"keyed\":\"2026-06-03T21:33:08.120-06:00\",\"who\":\"RK\",\"source\":\"live\"," + keys
                + ",\"prev\":\"" + Chain.NOTHING_BEFORE + "\"}";
    }

    private static Entry entry(Kind kind, Map<String, Object> values) {
        var built = Fields.build(kind.type(), values);
        assertThat(built.slips()).isEmpty();
        assertThat(built.unknown()).isEmpty();
        return (Entry) built.value();
    }

    private static String text(int n, OffsetDateTime time, Entry entry) {
        Unwritten unwritten = new Unwritten(time, "RK", Source.LIVE, entry, Aside.NONE);
        return new String(LineText.bytes(PLACE, n, unwritten, KEYED, Chain.NOTHING_BEFORE), UTF_8);
    }
}
