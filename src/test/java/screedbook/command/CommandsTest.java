package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.shelf.KeptShift;

/** What all commands have in common: how they are asked for help, what they say of words that cannot be meant. */
class CommandsTest {
    @TempDir
    Path folder;

    private Path job;

    @BeforeEach
    void nameTheJob() {
        job = folder.resolve("bend");
    }

    @Test
    void aFolderWithoutAJobIsSaid() throws IOException {
        assertThat(Said.by("day", job.toString()))
                .isEqualTo(new Said(
                        3, "", "screedbook day: there is no folder " + job + "; right would be the folder of a job\n"));
        Files.createDirectory(job);
        assertThat(Said.by("findings", job.toString()))
                .isEqualTo(new Said(
                        3,
                        "",
                        "screedbook findings: " + job
                                + " is not the folder of a job: it holds no job.json and no diary; screedbook new "
                                + job
                                + " makes one of it\n"));
        KeptShift.job(job.resolve("east"));
        assertThat(Said.by("findings", job.toString()).err())
                .endsWith("no diary; right would be one in it, such as " + job.resolve("east") + "\n");
        Said.by("new", job.toString());
        assertThat(Said.by("csv", job.toString(), "--to", folder.toString()))
                .isEqualTo(new Said(3, "", "screedbook csv: " + job + " holds no shift yet\n"));
    }

    @Test
    void whatCannotBeMeantIsSaidWithAWayOn() {
        Said option = Said.by("day", "--fromat", "csv");
        Said argument = Said.by("new");
        Said command = Said.by("nonsense");

        assertThat(Stream.of(option, argument, command).map(Said::exit)).containsOnly(2);
        assertThat(option.err())
                .startsWith("screedbook day: ")
                .contains("--fromat")
                .endsWith("see: screedbook day --help\n");
        assertThat(argument.err()).contains("DIR").endsWith("see: screedbook new --help\n");
        assertThat(command.err()).contains("nonsense").endsWith("see: screedbook --help\n");
        assertThat(option.out() + argument.out() + command.out()).isEmpty();
    }

    @Test
    void whatIsTypedCannotDriveTheTerminal() throws IOException {
        ExampleShifts.two(job);

        Said shift = Said.by("day", job.toString(), "--shift", "\u001b[31m");
        Said form = Said.by("day", job.toString(), "--format", "\u202ecsv");

        assertThat(shift.err()).contains("<U+001B>[31m").doesNotContain("\u001b");
        assertThat(form.err()).contains("<U+202E>csv").doesNotContain("\u202e");
    }

    @Test
    void helpNamesEveryCommandAndTheExitCodes() {
        Said said = Said.by("--help");

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("screedbook [JOB]", "--demo", "--book", "--who", "--look")
                .contains("  new ", "  day ", "  findings ", "  verify ", "  csv ")
                .contains("1   verify: something is not as it was written");
        assertThat(Said.by("day", "--help").out()).contains("--shift", "--format");
        assertThat(Said.by("-h")).isEqualTo(said);
    }

    @Test
    void versionNamesTheProgram() {
        assertThat(Said.by("--version").out()).startsWith("screedbook");
        assertThat(Said.by("-V")).isEqualTo(Said.by("--version"));
    }

    @Test
    void nothingIsColoured() throws IOException {
        ExampleShifts.cold(job);

        for (List<String> words : List.of(
                List.of("--help"),
                List.of("verify", "--help"),
                List.of("day", job.toString()),
                List.of("findings", job.toString()),
                List.of("verify", job.toString()),
                List.of("day", "--fromat"))) {
            Said said = Said.by(words.toArray());
            assertThat(said.out() + said.err())
                    .as(words.toString())
                    .isNotEmpty()
                    .doesNotContain("\u001b");
        }
    }
}
