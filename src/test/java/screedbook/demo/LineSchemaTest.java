package screedbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.entry.Kind;

/** The lines of the demo keep the schemas that are shipped, as a validator from outside reads them (draft 2020-12). */
class LineSchemaTest {
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final Pattern KIND = Pattern.compile("\"kind\":\"([a-z-]+)\"");
    private static final Map<Kind, JsonSchema> SCHEMAS = new EnumMap<>(Kind.class);

    private static JsonSchema schema(Kind kind) {
        return SCHEMAS.computeIfAbsent(kind, k -> {
            try {
                return FACTORY.getSchema(DemoShifts.resource("/schema/" + k.word() + ".json"));
            } catch (IOException e) {
                throw new IllegalStateException("no schema of " + k, e);
            }
        });
    }

    private static Set<ValidationMessage> wrongs(String line) {
        Matcher kind = KIND.matcher(line);
        assertThat(kind.find()).as(line).isTrue();
        return schema(Kind.ofWord(kind.group(1)).orElseThrow()).validate(line, InputFormat.JSON);
    }

    static List<DemoLogsTest.Shift> shifts() throws IOException {
        return DemoLogsTest.shifts();
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void everyLineKeepsTheSchemaOfItsKind(DemoLogsTest.Shift shift) throws IOException {
        int lines = 0;
        for (Path file : Remembered.files(shift.job(), shift.id())) {
            if (file.toString().endsWith(".jsonl")) {
                for (String line : Files.readAllLines(file)) {
                    assertThat(wrongs(line)).as("%s: %s", file, line).isEmpty();
                    lines++;
                }
            }
        }
        assertThat(lines).isEqualTo(shift.file().day().all().size());
    }

    @Test
    void aLineThatDoesNotKeepItsSchemaIsSeen() throws IOException {
        Path file = Path.of("demo-logs", "harrow-bend", "diary", "2026-05-12-day.paver.jsonl");
        String ticket = Files.readAllLines(file).stream()
                .filter(l -> l.contains("\"kind\":\"ticket\""))
                .findFirst()
                .orElseThrow();

        assertThat(wrongs(ticket)).isEmpty();
        assertThat(wrongs(ticket.replaceFirst("\"net_ston\":[0-9.]+", "\"net_ston\":\"22.4\"")))
                .isNotEmpty();
        assertThat(wrongs(ticket.replaceFirst("\"kept\":\"paper\"", "\"kept\":\"stone\"")))
                .isNotEmpty();
        assertThat(wrongs(ticket.replaceFirst(",\"prev\":\"[0-9a-f]+\"", ""))).isNotEmpty();
        assertThat(wrongs(ticket.replaceFirst("\"from_sta\":\"12\\+00\"", "\"from_sta\":\"12 00\"")))
                .isNotEmpty();
    }
}
