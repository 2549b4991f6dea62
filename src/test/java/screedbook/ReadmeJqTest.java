package screedbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.ShiftId;
import screedbook.season.DuckDb;
import screedbook.shelf.Shelf;

/** What the README says about reading the files without the program is true. */
class ReadmeJqTest {
    @Test
    void theTonsThatJqAddsUpAreThoseOfTheProgram() throws Exception {
        List<String> lines = Handbook.README.fenced("sh").stream()
                .filter(line -> line.startsWith("jq "))
                .toList();
        assertThat(lines).hasSize(1);
        Process jq = new ProcessBuilder("sh", "-c", lines.get(0))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String tons = new String(jq.getInputStream().readAllBytes(), UTF_8).strip();

        assertThat(jq.waitFor()).isZero();
        assertThat(new BigDecimal(tons)).isEqualByComparingTo(received());
    }

    @Test
    void theLoadsByMixThatDuckDbAddsUpAreThoseOfTheProgram() throws Exception {
        List<String> queries = Handbook.README.fenced("sql");
        assertThat(queries).hasSize(1);

        List<String> rows = DuckDb.rows(queries.get(0));

        assertThat(rows).isNotEmpty();
        BigDecimal tons =
                rows.stream().map(row -> new BigDecimal(row.split(",")[2])).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(tons).isEqualByComparingTo(received());
        int loads = rows.stream()
                .mapToInt(row -> Integer.parseInt(row.split(",")[1]))
                .sum();
        assertThat(loads)
                .isEqualTo(Shelf.at(Path.of("demo-logs", "harrow-bend"))
                        .shift(ShiftId.of("2026-05-12-day"))
                        .totals()
                        .loads()
                        .size());
    }

    private static BigDecimal received() {
        return Shelf.at(Path.of("demo-logs", "harrow-bend"))
                .shift(ShiftId.of("2026-05-12-day"))
                .totals()
                .sections()
                .stream()
                .flatMap(section -> section.figures().stream())
                .filter(figure -> figure.id().equals("received-tons"))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
