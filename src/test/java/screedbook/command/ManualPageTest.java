package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    void bashReadsTheCompletionAndCompletesCommandsAndValues() throws Exception {
        Path script = Files.writeString(folder.resolve("words"), said("completion"));

        assertThat(completed(script, "ver")).isEqualTo("verify");
        assertThat(completed(script, "--look", "")).isEqualTo("night sun mono");
        assertThat(completed(script, "season", "--fo")).isEqualTo("--format");
        assertThat(completed(script, "season", "--format", "")).isEqualTo("text csv json");
        assertThat(completed(script, "season", "--by", "m")).isEqualTo("month mix");
        assertThat(completed(script, "sql", "--engine", "")).isEqualTo("duckdb spark");
        assertThat(completed(script, "schemas", "ti")).isEqualTo("ticket");
        assertThat(completed(script, "sheets", "wsd")).isEqualTo("wsdot-5-04");
    }

    /** What bash offers for the last word; compopt only works where somebody sits at the keyboard. */
    private String completed(Path script, String... words) throws Exception {
        String typed = Stream.of(words).map(word -> "'" + word + "'").collect(Collectors.joining(" "));
        String ask = "compopt() { :; }; . '" + script + "'; COMP_WORDS=(screedbook " + typed + "); COMP_CWORD="
                + words.length + "; _complete_screedbook screedbook \"${COMP_WORDS[COMP_CWORD]}\""
                + " \"${COMP_WORDS[COMP_CWORD-1]}\"; printf '%s ' \"${COMPREPLY[@]}\"";
        Process bash =
                new ProcessBuilder("bash", "-c", ask).redirectErrorStream(true).start();
        String said = new String(bash.getInputStream().readAllBytes(), UTF_8);
        assertThat(bash.waitFor()).isZero();
        return said.strip();
    }

    /** Read by hand by fish 3.6.0, which completed from it. */
    @Test
    void fishIsToldEveryCommandAndEveryOption() {
        String words = said("completion", "fish");

        for (Class<?> command : Commands.class.getAnnotation(Command.class).subcommands()) {
            assertThat(words)
                    .contains("complete -c screedbook -n __fish_use_subcommand -a '"
                            + command.getAnnotation(Command.class).name() + "' -d '");
        }
        assertThat(words)
                .contains("from season' -l by -x -a 'shift day week month job mix pull lift' -d '")
                .contains("from archive' -l to -r -F -d '")
                .contains("from key' -l help -d '")
                .contains("__fish_use_subcommand -l look -x -a 'night sun mono' -d '")
                .contains("a truck\\'s number");
        assertThat(words.lines()).allMatch(line -> line.startsWith("complete -c screedbook -n "));
    }

    @Test
    void anotherShellIsNamedWithThoseThatAreThere() {
        Said said = Said.by("completion", "csh");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err())
                .isEqualTo(
                        "screedbook completion: there are no words for csh; right would be one of bash, zsh, fish\n");
    }

    private static String said(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(Commands.run(words, out, out, Clock.systemUTC())).isZero();
        return out.toString(UTF_8);
    }
}
