package screedbook;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What somebody sees first who opens the folder: few files, and two commands that are true. */
class TopLevelTest {
    private static final Pattern MACHINE = Pattern.compile("/(work|root|Users)/[a-z]");

    private static final Set<String> KEPT =
            Set.of("README.md", "DEVELOPERS.md", "LICENSE", "pom.xml", "src", "demo-logs");

    @Test
    void nothingLiesAtTheTopThatDoesNotBelongThere() throws Exception {
        Set<String> top = top(kept());

        assertThat(top).containsAll(KEPT);
        assertThat(strangers(top)).isEmpty();
    }

    @Test
    void aStrayFileWouldBeSeen() {
        assertThat(strangers(top(List.of("README.md", "src/main/sh/screedbook", ".ci/run", "notes.txt", "bin/run"))))
                .containsExactly("bin", "notes.txt");
    }

    @Test
    void theBareMachineRunsTheLineOfTheReadme() throws IOException {
        List<String> run = Files.readAllLines(Path.of(".ci", "run"));

        assertThat(commands(Files.readAllLines(Path.of("README.md")))).contains(run.get(run.size() - 1));
    }

    @Test
    void theScriptsCanBeStarted() {
        for (String script : List.of(".ci/run", ".ci/install", "src/main/sh/screedbook")) {
            assertThat(Path.of(script)).isExecutable();
        }
    }

    @Test
    void noFileNamesAFolderOfTheMachineThatItWasWrittenOn() throws Exception {
        List<String> named = new ArrayList<>();
        for (String file : kept()) {
            if (Files.isRegularFile(Path.of(file))) {
                new String(Files.readAllBytes(Path.of(file)), ISO_8859_1)
                        .lines()
                        .filter(TopLevelTest::namesAFolder)
                        .forEach(line -> named.add(file + ": " + line.strip()));
            }
        }
        assertThat(named).isEmpty();
        assertThat(namesAFolder("see " + String.join("/", "", "work", "notes"))).isTrue();
    }

    /** Of the folders in which machines that build keep their checkouts. */
    private static boolean namesAFolder(String line) {
        return MACHINE.matcher(line).find();
    }

    private static Set<String> strangers(Set<String> top) {
        return top.stream()
                .filter(name -> !name.startsWith(".") && !KEPT.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> top(List<String> files) {
        return files.stream().map(file -> file.split("/", 2)[0]).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The files under version control; of a bare source folder, what lies in it beside the build. */
    private static List<String> kept() throws IOException, InterruptedException {
        if (Files.exists(Path.of(".git"))) {
            // The folder may belong to another user than the one who builds.
            Process git = new ProcessBuilder("git", "-c", "safe.directory=*", "-c", "core.quotePath=false", "ls-files")
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            List<String> files = new String(git.getInputStream().readAllBytes(), UTF_8)
                    .lines()
                    .toList();
            assertThat(git.waitFor()).as("exit code of git ls-files").isZero();
            return files;
        }
        try (Stream<Path> files = Files.list(Path.of(""))) {
            return files.map(Path::toString)
                    .filter(name -> !name.equals("target"))
                    .toList();
        }
    }

    /** The single lines between the fences of the README's shell blocks. */
    private static List<String> commands(List<String> readme) {
        return readme.stream()
                .dropWhile(line -> !line.equals("```sh"))
                .filter(line -> !line.startsWith("```"))
                .toList();
    }
}
