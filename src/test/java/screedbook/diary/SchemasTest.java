package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.unit.UnitSystem;

/** The schemas that are shipped are those that the kinds make; {@code mvn test -Dgoldens=keep} writes them anew. */
class SchemasTest {
    private static final Path SHIPPED = Path.of("src", "main", "resources", "schema");
    private static final boolean KEEP = "keep".equals(System.getProperty("goldens"));

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theShippedSchemaIsTheOneThatTheKindMakes(Kind kind) throws IOException {
        Path file = SHIPPED.resolve(kind.word() + ".json");
        if (KEEP) {
            Files.createDirectories(SHIPPED);
            Files.writeString(file, Schemas.of(kind));
        }
        assertThat(Files.readString(file)).isEqualTo(Schemas.of(kind));
    }

    /** Beside the kinds only the pages that are given out as JSON have one. */
    @Test
    void noSchemaIsShippedForWhatIsNoKind() throws IOException {
        try (Stream<Path> files = Files.list(SHIPPED)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                    Stream.of("day.json", "findings.json", "limits.json", "season.json", "verify.json"),
                                    Stream.of(Kind.values()).map(kind -> kind.word() + ".json"))
                            .toList());
        }
    }

    @Test
    void everySchemaIsGivenByItsName() throws IOException {
        for (String name : Schemas.names()) {
            assertThat(Schemas.shipped(name)).hasValue(Files.readAllBytes(SHIPPED.resolve(name + ".json")));
        }
        assertThat(Schemas.shipped("../job/job")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aFullLineAndABareOneAgreeWithTheirSchema(Kind kind) throws Json.NotJson {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(SchemaCheck.wrong(Schemas.of(kind), line(kind, Samples.full(kind.type(), system))))
                    .isEmpty();
        }
        assertThat(SchemaCheck.wrong(Schemas.of(kind), line(kind, Map.of()))).isEmpty();
    }

    /** The schema names every key that the kind can write: a full line has no key that it does not know. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void theSchemaKnowsEveryKeyOfTheKind(Kind kind) throws Json.NotJson {
        Map<String, Object> schema = Json.file(Schemas.of(kind).getBytes(UTF_8), new HashMap<>());
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(((Map<?, ?>) schema.get("properties")).keySet().stream().map(Object::toString))
                    .containsAll(Json.line(line(kind, Samples.full(kind.type(), system)))
                            .keySet());
        }
    }

    @Test
    void aLineThatDoesNotAgreeIsFound() throws Json.NotJson {
        String line = new String(line(Kind.TICKET, Samples.full(Kind.TICKET.type(), UnitSystem.US)), UTF_8);
        String schema = Schemas.of(Kind.TICKET);
        for (List<String> change : List.of(
                List.of("\"kind\":\"ticket\"", "\"kind\":\"tickets\"", "/kind"),
                List.of("\"who\":\"RK\",", "", "who"),
                List.of("\"n\":3", "\"n\":0", "/n"),
                List.of("\"n\":3", "\"n\":3.5", "/n"),
                List.of("T21:32:00-06:00", "T21:32-06:00", "/time"),
                List.of("\"from_sta\":\"", "\"from_sta\":\"x", "/from_sta"),
                List.of("\"photos\":[\"1\"]", "\"photos\":[1]", "/photos/*"),
                List.of("\"prev\":\"0", "\"prev\":\"g", "/prev"))) {
            assertThat(line).contains(change.get(0));
            assertThat(SchemaCheck.wrong(
                            schema, line.replace(change.get(0), change.get(1)).getBytes(UTF_8)))
                    .as(change.get(1))
                    .hasSize(1)
                    .first()
                    .asString()
                    .contains(change.get(2));
        }
    }

    private static byte[] line(Kind kind, Map<String, Object> values) {
        Entry entry = (Entry) Fields.build(kind.type(), values).value();
        Aside aside = new Aside("BT", List.of("1"), "remark");
        Unwritten unwritten = new Unwritten(Shifts.NOON, "RK", Source.LIVE, entry, aside);
        LineText.Place place = new LineText.Place("harrow-bend", Shifts.THIRD, "paver");
        byte[] line = LineText.bytes(place, 3, unwritten, Shifts.NOON, Chain.NOTHING_BEFORE);
        return new String(line, UTF_8)
                .replace("\"time\":\"2026-06-03T12:00:00-06:00\"", "\"time\":\"2026-06-03T21:32:00-06:00\"")
                .getBytes(UTF_8);
    }
}
