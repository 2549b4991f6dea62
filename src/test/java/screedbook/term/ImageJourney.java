package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The image that brings its own Java, unpacked and started where no other Java is to be found. Needs tmux. */
@Tag("image")
class ImageJourney {
    private static final String WITHOUT_JAVA = "env -u JAVA_HOME PATH=\"$PWD/bin\"";

    @TempDir
    Path home;

    private Pane pane;

    @AfterEach
    void closeTheWindow() throws Exception {
        if (pane != null) {
            pane.close();
        }
    }

    @Test
    void aLoadIsKeyedWhereThereIsNoJava() throws Exception {
        Path program = unpacked().resolve("screedbook");
        Path bin = Files.createDirectories(home.resolve("bin"));
        for (String needed : new String[] {"sh", "env", "readlink", "dirname", "stty", "mkdir"}) {
            Files.createSymbolicLink(bin.resolve(needed), onPath(needed));
        }
        String command = "cd '" + home + "'; export XDG_CACHE_HOME='" + home + "'; " + WITHOUT_JAVA + " sh -c '"
                + "command -v java; " + program + " --demo; echo ended with $?'; exec cat";

        pane = new Pane(home, command);
        pane.waitFor("12 loads");
        pane.type("118");
        pane.strike("Enter");
        pane.type("21.37");
        pane.strike("C-s");

        assertThat(pane.waitFor("T118  21.37 T")).contains("13 loads");
        pane.strike("Escape");
        pane.waitFor("who writes");
        pane.type("q");
        assertThat(pane.waitFor("ended with 0")).doesNotContain("/java");
    }

    private Path unpacked() throws Exception {
        Path packed;
        try (Stream<Path> files =
                Files.list(Path.of(System.getProperty("screedbook.jar")).resolveSibling("image"))) {
            packed = files.filter(file -> file.toString().endsWith(".tar.gz"))
                    .findFirst()
                    .orElseThrow();
        }
        Process tar = new ProcessBuilder("tar", "-xzf", packed.toString(), "-C", home.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(new String(tar.getInputStream().readAllBytes(), UTF_8)).isEmpty();
        assertThat(tar.waitFor()).isZero();
        try (Stream<Path> made = Files.list(home)) {
            return made.filter(Files::isDirectory).findFirst().orElseThrow();
        }
    }

    private static Path onPath(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }
}
