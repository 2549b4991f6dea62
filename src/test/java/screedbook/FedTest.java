package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Everything that a fuzzer found worth keeping is read again, as it is and with some bytes changed. */
class FedTest {
    private static final int CHANGED = 40;

    static Stream<String> names() {
        return Fed.ALL.keySet().stream();
    }

    @Test
    void everyFolderOfInputsHasItsReader() throws IOException {
        try (Stream<Path> folders = Files.list(Fed.SEEDS)) {
            assertThat(folders.map(folder -> folder.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Fed.ALL.keySet());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatWasKeptIsReadAgain(String name) throws Exception {
        List<Path> seeds = Fed.seeds(name);
        assertThat(seeds).hasSizeGreaterThan(4);
        for (Path seed : seeds) {
            read(name, Files.readAllBytes(seed), seed.toString());
        }
    }

    /** The same changes every time. */
    @ParameterizedTest
    @MethodSource("names")
    void someBytesOfItAreChanged(String name) throws Exception {
        Random random = new Random(name.hashCode());
        for (Path seed : Fed.seeds(name)) {
            byte[] whole = Files.readAllBytes(seed);
            for (int round = 0; round < CHANGED; round++) {
                read(name, changed(whole, random), seed + ", change " + round);
            }
        }
    }

    private static byte[] changed(byte[] whole, Random random) {
        byte[] bytes = Arrays.copyOf(whole, Math.max(0, whole.length - random.nextInt(3)));
        for (int i = random.nextInt(4); i >= 0 && bytes.length > 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private static void read(String name, byte[] bytes, String from) {
        try {
            Fed.ALL.get(name).reader().read(bytes);
        } catch (Throwable wrong) {
            throw new AssertionError(from + ": " + wrong, wrong);
        }
    }
}
