package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Kind;

/** The tables of a job as they are written to a folder. */
class CsvCommandTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void csvWritesATableForEachKindAndTheTotals() throws IOException {
        ExampleShifts.two(job);
        Path to = folder.resolve("tables");

        Said said = Said.by("csv", job.toString(), "--to", to.toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        int kinds = Kind.values().length;
        assertThat(said.out()).isEqualTo("wrote " + (kinds + 1) + " tables of 2 shifts to " + to + "\n");
        assertThat(names(to))
                .hasSize(kinds + 2)
                .contains("datapackage.json", "ticket.csv", "opening.csv", "totals.csv");
        assertThat(Files.readString(to.resolve("ticket.csv")).lines()).hasSize(4);
        assertThat(Files.readString(to.resolve("totals.csv"))).contains("2026-06-03-day", "2026-06-04-night");
    }

    @Test
    void csvReplacesTheTablesOfAnEarlierRunAndNothingElse() throws IOException {
        ExampleShifts.two(job);
        Path to = Files.createDirectory(folder.resolve("tables"));
        Files.writeString(to.resolve("ticket.csv"), "of an earlier run");
        Files.writeString(to.resolve("mine.csv"), "mine");

        Said.by("csv", job.toString(), "--to", to.toString());

        assertThat(Files.readString(to.resolve("ticket.csv")))
                .doesNotContain("earlier")
                .contains("48217");
        assertThat(to.resolve("mine.csv")).hasContent("mine");
        assertThat(names(to)).noneMatch(name -> name.endsWith(".new"));
    }

    @Test
    void csvSaysWhatIsInNoTable() throws IOException {
        ExampleShifts.two(job);
        Path file = job.resolve("diary/2026-06-03-day.paver.jsonl");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.set(1, "{\"n\":");
        Files.writeString(file, String.join("\n", lines) + "\n");

        Said said =
                Said.by("csv", job.toString(), "--to", folder.resolve("tables").toString());

        assertThat(said.exit()).isZero();
        assertThat(said.err())
                .contains("screedbook csv: 2026-06-03-day: 1 line is in no table; the diary has it\n")
                .contains("2026-06-03-day.paver.jsonl:2: ");
    }

    @Test
    void csvSaysWhereItCannotWrite() throws IOException {
        ExampleShifts.two(job);
        Path file = Files.writeString(folder.resolve("file"), "");

        Said said = Said.by("csv", job.toString(), "--to", file.toString());

        assertThat(said)
                .isEqualTo(new Said(3, "", "screedbook csv: " + file + " is there already and is not a folder\n"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
