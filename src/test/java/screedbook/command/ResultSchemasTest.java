package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.diary.JobFolder;
import screedbook.entry.ShiftId;
import screedbook.report.Schema;

/** What the commands print as JSON of the demo fits the schemas that are printed with it. */
class ResultSchemasTest {
    static Stream<Path> jobs() {
        return Stream.of("harrow-bend", "tanager-flats", "brackwater-quay").map(name -> Path.of("demo-logs", name));
    }

    private static List<String> wrongs(String schema, Object... words) throws IOException {
        Said said = Said.by(words);
        assertThat(said.out()).as(said.err()).isNotEmpty();
        return Schema.shipped(schema + ".json").wrongs(said.out());
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyShiftFitsItsSchema(Path job) throws IOException {
        List<ShiftId> shifts = JobFolder.at(job).shifts();
        assertThat(shifts).isNotEmpty();
        for (ShiftId shift : shifts) {
            for (String result : List.of("day", "findings")) {
                assertThat(wrongs(result, result, job, "--shift", shift, "--format", "json"))
                        .as(result + " of " + shift)
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void limitsAndTheRecordFitTheirSchemas(Path job) throws IOException {
        for (String result : List.of("limits", "verify")) {
            assertThat(wrongs(result, result, job, "--format", "json"))
                    .as(result)
                    .isEmpty();
        }
    }
}
