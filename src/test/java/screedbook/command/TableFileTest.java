package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table that is put in place whole or not at all. */
class TableFileTest {
    @TempDir
    Path folder;

    @Test
    void aTableThatWasNotPrintedToItsEndTakesNoOthersPlace() throws IOException {
        Path table = folder.resolve("season.csv");
        try (TableFile sheet = new TableFile(folder, "season.csv", "{}")) {
            sheet.print("whole\n");
            sheet.whole();
        }
        assertThat(table).hasContent("whole");

        try (TableFile sheet = new TableFile(folder, "season.csv", "{}")) {
            sheet.print("half");
        }
        assertThat(table).hasContent("whole");
        assertThat(Files.list(folder).map(file -> file.getFileName().toString()))
                .containsExactlyInAnyOrder("season.csv", "datapackage.json");
    }
}
