package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Damage;

/** A season's lines and their schema. */
public class SeasonJsonTest {
    /** Whether each line fits the shipped schema. */
    public static void fits(String lines) throws IOException {
        Schema schema = Schema.shipped("season.json");
        assertThat(lines.lines()).isNotEmpty();
        for (String line : lines.lines().toList()) {
            assertThat(schema.wrongs(line)).isEmpty();
        }
    }

    @Test
    void whatIsNotAsItWasWrittenFitsTheSchemaToo() throws IOException {
        SeasonJob job = new SeasonJob(
                "bend",
                "Bend",
                "jobs/bend",
                List.of(),
                List.of(),
                List.of(new Damage("a.jsonl", 7, "changed")),
                List.of("2026-05-12-day paver line 4: it is empty"));

        fits(SeasonJson.record(job));
        assertThat(SeasonJson.record(job.with(List.of()))).contains("\"not_read\":[\"2026-05-12-day paver line 4");
        assertThat(Schema.shipped("season.json")
                        .wrongs(SeasonJson.record(job).replace("\"part\":\"record\"", "\"part\":\"year\"")))
                .isNotEmpty();
    }
}
