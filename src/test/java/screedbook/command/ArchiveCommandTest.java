package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.report.SeasonJsonTest;

/** The archive and the schemas as they are typed. */
class ArchiveCommandTest {
    @TempDir
    Path folder;

    @Test
    void theArchiveIsAskedLikeTheJob() throws IOException {
        Said copied = Said.by("archive", "demo-logs/harrow-bend", "--to", folder);
        assertThat(copied.exit()).as(copied.err()).isZero();
        assertThat(copied.out()).startsWith("copied 4 shifts, ").contains("job=harrow-bend");

        assertThat(Said.by("verify", folder).exit()).isZero();
        String csv =
                Said.by("season", "demo-logs/harrow-bend", "--format", "csv").out();
        assertThat(Said.by("season", folder, "--format", "csv").out()).isEqualTo(csv);
        assertThat(Said.by("find", folder, "--ticket", "48217").out()).contains("paver/27");

        Said again = Said.by("archive", "demo-logs/harrow-bend", "--to", folder);
        assertThat(again.exit()).isEqualTo(3);
        assertThat(again.err()).contains("is there already and stays as it is").hasLineCount(1);
    }

    @Test
    void queriesArePrintedForTheFilesThatAreNamed() {
        assertThat(Said.by("sql", "--engine", "duckdb").out()).contains("'job=*/year=*/month=*/*.jsonl'", "DECIMAL");
        assertThat(Said.by("sql", "--engine", "spark", "--files", "o'clock/*.jsonl")
                        .out())
                .contains("path 'o''clock/*.jsonl'");
        assertThat(Said.by("sql", "--engine", "abacus").exit()).isEqualTo(2);
    }

    @Test
    void loadsAloneAreATable() {
        Said said = Said.by("season", "demo-logs/harrow-bend", "--loads", "--from", "2026-05-14", "--to", "2026-05-14");

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines().toList())
                .hasSize(2)
                .element(1)
                .asString()
                .startsWith("\"harrow-bend\",2026-05-14,\"19-64\",\"us\",67,1467.78,1467.78,");
    }

    @Test
    void schemasAreListedAndPrinted() throws IOException {
        assertThat(Said.by("schemas").out().lines()).contains("ticket", "weather", "day", "season");
        assertThat(Said.by("schemas", "season").out()).contains("\"screedbook season 1\"");
        assertThat(Said.by("schemas", "nothing").exit()).isEqualTo(2);
        SeasonJsonTest.fits(Said.by("season", "demo-logs", "--format", "json").out());
    }
}
