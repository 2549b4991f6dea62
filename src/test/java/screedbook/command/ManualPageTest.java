package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Command;

/** The manual page and the completion, both made from the commands. The macros are those of man(7), groff 1.22. */
class ManualPageTest {
    @TempDir
    Path folder;

    @Test
    void thePageTellsEveryCommandAndEveryOption() {
        String page = said("man");

        for (Class<?> command : Commands.class.getAnnotation(Command.class).subcommands()) {
            assertThat(page)
                    .contains(".SS \""
                            + command.getAnnotation(Command.class).name().replace("-", "\\-"));
        }
        assertThat(page).contains("\\-\\-copy", "\\-\\-format", "EXIT STATUS", "screedbook.conf");
    }

    @Test
    void noLineOfTextIsTakenForAMacro() {
        List<String> macros = List.of(".TH", ".SH", ".SS", ".TP", ".B", ".br", ".nf", ".fi");

        assertThat(said("man").lines().filter(line -> line.startsWith(".")))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(macros).contains(line.split(" ")[0]));
        assertThat(said("man").lines().filter(line -> line.startsWith("'"))).isEmpty();
    }

    @Test
    void bashReadsTheCompletionAndCompletesACommand() throws Exception {
        Path script = Files.writeString(folder.resolve("words"), said("completion"));
        String ask = ". '" + script + "'; COMP_WORDS=(screedbook ver); COMP_CWORD=1; _complete_screedbook;"
                + " printf '%s ' \"${COMPREPLY[@]}\"";
        Process bash =
                new ProcessBuilder("bash", "-c", ask).redirectErrorStream(true).start();

        assertThat(new String(bash.getInputStream().readAllBytes(), UTF_8)).isEqualTo("verify ");
        assertThat(bash.waitFor()).isZero();
    }

    private static String said(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(Commands.run(words, out, out, Clock.systemUTC())).isZero();
        return out.toString(UTF_8);
    }
}
