package screedbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed program and its launcher, started as somebody would who has only these two files. */
class PackedJourney {

    private static final Path JAR = Path.of(System.getProperty("screedbook.jar"));
    private static final Path LAUNCHER = JAR.resolveSibling("screedbook");
    private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

    private record Said(int exit, String out, String err) {}

    @TempDir
    Path home;

    private Path elsewhere;

    @BeforeEach
    void standElsewhere() throws IOException {
        elsewhere = Files.createDirectory(home.resolve("elsewhere"));
    }

    @Test
    void theFileHoldsTheProgramItsLibrariesAndTheirTextsAndNoStraySignature() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> names = jar.stream().map(ZipEntry::getName).toList();
            assertThat(names)
                    .contains(
                            "screedbook/Main.class",
                            "com/googlecode/lanterna/TextColor.class",
                            "com/fasterxml/jackson/core/JsonParser.class",
                            "org/apache/commons/csv/CSVParser.class",
                            "picocli/CommandLine.class",
                            "META-INF/licenses/libraries.csv",
                            "META-INF/licenses/LGPL-3.0.txt",
                            "META-INF/licenses/GPL-3.0.txt");
            assertThat(names).noneMatch(name -> name.matches("META-INF/.*\\.(SF|DSA|RSA)|.*module-info\\.class"));
            assertThat(jar.getManifest().getMainAttributes().getValue("Main-Class"))
                    .isEqualTo("screedbook.Start");
        }
    }

    @Test
    void theLauncherSaysWhatTheFileSays() throws Exception {
        Said file = said(Map.of(), JAVA_HOME.resolve("bin/java").toString(), "-jar", JAR.toString(), "--help");
        Said launcher = said(Map.of(), LAUNCHER.toString(), "--help");

        assertThat(file.out() + file.err()).contains("screedbook");
        assertThat(launcher).isEqualTo(file);
    }

    /**
     * A stand-in for Java 8: it refuses every option of later ones, unless it is told first to pass over them, and can
     * read no class but the first one.
     */
    @Test
    void theLauncherComesAsFarAsTheFirstClassUnderAnOldJava() throws Exception {
        Path old = Files.createDirectories(home.resolve("old/bin")).resolve("java");
        Files.writeString(old, """
                #!/bin/sh
                case $1 in -XX:+IgnoreUnrecognizedVMOptions) ;; *) echo "Unrecognized option"; exit 1 ;; esac
                for word; do case $word in screedbook.*) echo "first class $word"; exit 3 ;; esac; done
                """);
        assertThat(old.toFile().setExecutable(true)).isTrue();

        for (String word : List.of("--help", "nowhere")) {
            assertThat(said(Map.of("JAVA_HOME", home.resolve("old").toString()), LAUNCHER.toString(), word))
                    .isEqualTo(new Said(3, "first class screedbook.Start\n", ""));
        }
    }

    @Test
    void theLauncherIsFoundThroughALinkAndUnderAPlainLocale() throws Exception {
        Path link = Files.createSymbolicLink(home.resolve("log"), LAUNCHER);

        Said linked = said(Map.of("LC_ALL", "C"), link.toString(), "--help");
        Files.delete(link);

        assertThat(linked).isEqualTo(said(Map.of(), LAUNCHER.toString(), "--help"));
    }

    @Test
    void theFirstDeskLeavesAnArchiveOfClassesAndTheNextUsesIt() throws Exception {
        Path archive = home.resolve("cache/screedbook/classes.jsa");
        Files.writeString(elsewhere.resolve("job.json"), "{}");

        Said first = said(Map.of(), LAUNCHER.toString());
        assertThat(archive).exists();
        FileTime made = Files.getLastModifiedTime(archive);
        Said second = said(Map.of(), LAUNCHER.toString());

        assertThat(second).isEqualTo(first);
        assertThat(Files.getLastModifiedTime(archive))
                .as("time of the archive: a desk that does not use it makes it anew")
                .isEqualTo(made);
    }

    @Test
    void theFirstStartOfACommandThatReadsLongRecordsLeavesAnArchiveAndTheNextUsesIt() throws Exception {
        String demo = Path.of("demo-logs").toAbsolutePath().toString();
        Path archive = home.resolve("cache/screedbook/season.jsa");

        Said first = said(Map.of(), LAUNCHER.toString(), "season", demo, "--loads");
        assertThat(first.exit()).isZero();
        FileTime made = Files.getLastModifiedTime(archive);
        Said second = said(Map.of(), LAUNCHER.toString(), "season", demo, "--loads");

        assertThat(second).isEqualTo(first);
        assertThat(Files.getLastModifiedTime(archive)).isEqualTo(made);
    }

    @Test
    void aCommandOrAFolderWithoutAJobLeavesNoArchive() throws Exception {
        said(Map.of(), LAUNCHER.toString(), "--help");
        said(Map.of(), LAUNCHER.toString(), elsewhere.toString());

        assertThat(home.resolve("cache/screedbook/classes.jsa")).doesNotExist();
    }

    @Test
    void aCacheThatCannotBeWrittenDoesNotStopTheDesk() throws Exception {
        Path notAFolder = Files.writeString(home.resolve("file"), "");
        Files.writeString(elsewhere.resolve("job.json"), "{}");

        assertThat(said(Map.of("XDG_CACHE_HOME", notAFolder.toString()), LAUNCHER.toString()))
                .isEqualTo(said(Map.of(), LAUNCHER.toString()));
    }

    private Said said(Map<String, String> environment, String... command) throws Exception {
        Path out = Files.createTempFile(home, "out", "");
        Path err = Files.createTempFile(home, "err", "");
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                .directory(elsewhere.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", JAVA_HOME.toString());
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        builder.environment().putAll(environment);
        Process process = builder.start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(List.of(command) + " did not end within a minute");
        }
        return new Said(process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }
}
