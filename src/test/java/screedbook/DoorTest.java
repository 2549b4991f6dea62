package screedbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Command;
import screedbook.command.Commands;
import screedbook.shelf.KeptShift;

/** The first word: who gets it, in this Java and in a Java of its own. */
class DoorTest {
    private record Said(int exit, String out, String err) {}

    @TempDir
    Path folder;

    @Test
    void doorLauncherAndLibraryKnowTheSameCommands() throws IOException {
        Set<String> named = Stream.of(
                        Commands.class.getAnnotation(Command.class).subcommands())
                .map(command -> command.getAnnotation(Command.class).name())
                .collect(Collectors.toCollection(TreeSet::new));
        named.addAll(List.of("-h", "--help", "-V", "--version"));

        assertThat(Main.COMMANDS).containsExactlyInAnyOrderElementsOf(named);
        assertThat(launcher("screedbook", "(?m)^case \\$2 in\\n([^)]+)\\)", " \\| "))
                .containsExactlyInAnyOrderElementsOf(named);
        assertThat(launcher("screedbook.cmd", "(?m)^for %%C in \\(([^)]+)\\) do ", " "))
                .containsExactlyInAnyOrderElementsOf(named);
    }

    /** A path such as C:/Program Files (x86) ends a block of the command interpreter; so there is none. */
    @Test
    void theWindowsLauncherHasNoBlockThatAPathCouldEndAndKnowsTheFirstClass() throws IOException {
        String text = Files.readString(Path.of("src/main/sh/screedbook.cmd"));

        assertThat(text.lines()).noneMatch(line -> line.endsWith("("));
        assertThat(text).contains(" screedbook.Start %*").contains("exit /b 3");
        assertThat(text.replace("\r\n", "")).as("line ends").doesNotContain("\n", "\r");
    }

    @Test
    void theDeskNeverLoadsTheCommandLibrary() throws Exception {
        assertThat(said(List.of("-verbose:class"), "--version").out()).contains("picocli.CommandLine");

        String desk = said(List.of("-verbose:class"), folder.resolve("nowhere").toString())
                .out();

        assertThat(desk).contains("screedbook.Main").doesNotContain("picocli").doesNotContain("screedbook.command");
    }

    @Test
    void aPageIsUtf8WhateverTheLocale() throws Exception {
        Path job = folder.resolve("job");
        KeptShift.job(job);
        String text = Files.readString(job.resolve("job.json"));
        Files.writeString(job.resolve("job.json"), text.replace("Example overlay", "Rue de l\u2019\u00c9glise"));
        KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver").closed();

        Said said = said(
                List.of("-Dfile.encoding=ISO-8859-1", "-Dstdout.encoding=US-ASCII", "-Dnative.encoding=US-ASCII"),
                "day",
                job.toString());

        assertThat(said.exit()).as(said.err()).isZero();
        assertThat(said.out()).contains("Rue de l\u2019\u00c9glise");
    }

    @Test
    void theExitCodeOfACommandIsThatOfTheProgram() throws Exception {
        assertThat(said(List.of(), "--help").exit()).isZero();
        assertThat(said(List.of(), "day", folder.resolve("nowhere").toString()).exit())
                .isEqualTo(3);
        assertThat(said(List.of(), "day", "--fromat").exit()).isEqualTo(2);
    }

    @Test
    void anOldJavaIsToldWhatIsWantedInOneSentence() throws Exception {
        String sentence = "this is Java %d, right would be Java 17 or later; or take the image, which brings its own";
        assertThat(Start.tooOld("1.8")).isEqualTo(sentence.formatted(8));
        assertThat(Start.tooOld("11")).isEqualTo(sentence.formatted(11));
        assertThat(Start.tooOld("17")).isEmpty();
        assertThat(Start.tooOld("25")).isEmpty();
        assertThat(started("screedbook.Start", List.of(), "--version").out()).startsWith("screedbook");
    }

    @Test
    void theFirstClassIsOneThatAnyJavaSince8CanRead() throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("target/classes/screedbook/Start.class"));

        assertThat(bytes[7])
                .as("class file version; Java 8 reads 52 (JVMS 4.1)")
                .isEqualTo((byte) 52);
    }

    private static List<String> launcher(String file, String pattern, String between) throws IOException {
        Matcher list = Pattern.compile(pattern).matcher(Files.readString(Path.of("src/main/sh", file)));
        assertThat(list.find()).isTrue();
        return List.of(list.group(1).split(between));
    }

    private Said said(List<String> options, String... words) throws Exception {
        return started("screedbook.Main", options, words);
    }

    private Said started(String door, List<String> options, String... words) throws Exception {
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), door));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command)
                .redirectInput(new File("/dev/null"))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(command + " did not end within a minute");
        }
        return new Said(process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }
}
