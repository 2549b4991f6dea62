package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every reader of what comes from outside fed by a fuzzer, Jazzer, for two and a half minutes each, or as long as the
 * property screedbook.fuzz.seconds says. What it found to stop a reader lies under target/fuzz/NAME/found afterwards and
 * belongs, once mended, under src/test/resources/seeds/NAME, where {@link FedTest} reads it again every day.
 */
@Tag("fuzz")
class FuzzTest {
    private static final String FUZZER = "com.code_intelligence.jazzer.Jazzer";
    private static final int SECONDS = Integer.getInteger("screedbook.fuzz.seconds", 150);

    static Stream<String> names() {
        return Fed.ALL.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void nothingThatIsFedStopsTheReader(String name) throws Exception {
        assertThat(Class.forName(FUZZER, false, getClass().getClassLoader())).isNotNull();
        Path at = Path.of("target/fuzz", name);
        Path found = Files.createDirectories(at.resolve("found"));
        Path corpus = Files.createDirectories(at.resolve("corpus"));
        Path log = at.resolve("log.txt");
        Process fuzzer = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-Xmx1g",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FUZZER,
                        "--target_class=" + Fed.ALL.get(name).type().getName(),
                        "--instrumentation_includes=screedbook.**" + File.pathSeparator
                                + "com.fasterxml.jackson.core.**" + File.pathSeparator + "org.apache.commons.csv.**",
                        "-max_total_time=" + SECONDS,
                        "-max_len=8192",
                        "-artifact_prefix=" + found + "/",
                        corpus.toString(),
                        Fed.SEEDS.resolve(name).toString()))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            assertThat(fuzzer.waitFor(SECONDS + 300L, TimeUnit.SECONDS)).isTrue();
        } finally {
            fuzzer.destroyForcibly();
        }
        String last = last(log);
        System.out.println(name + ": " + last);
        assertThat(fuzzer.exitValue()).as("%s, see %s", last, log).isZero();
        assertThat(last).as("the fuzzer has to have run").matches("Done [1-9][0-9]* runs in .*");
    }

    private static String last(Path log) throws IOException {
        List<String> lines = Files.readAllLines(log);
        return lines.isEmpty() ? "" : lines.get(lines.size() - 1);
    }
}
