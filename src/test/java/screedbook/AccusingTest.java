package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of accusing words finds them in a sentence, and no others. */
class AccusingTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "fraud",
                "cheated",
                "violation",
                "fails",
                "failure",
                "illegal",
                "false",
                "falsified",
                "fake",
                "fault",
                "guilty",
                "wrong",
                "wrongly",
                "error",
                "suspicious",
                "tampered",
                "manipulated",
                "penalty",
                "blamed",
                "negligent",
                "careless",
                "theft",
                "stealing",
                "stolen",
                "deceived",
                "misconduct",
                "offended",
                "offence",
                "bad",
                "badly",
                "copied",
                "lied",
                "a lie",
                "lie about",
                "lies about",
                "passes the",
                "pass",
                "passed",
                "must not",
                "reject by"
            })
    void aWordThatAccusesIsFoundInASentenceHoweverItIsWritten(String word) {
        assertThat(Accusing.in("ticket 1001: " + word + ", 240 °F")).containsExactly(word);
        assertThat(Accusing.in(word.toUpperCase(Locale.ROOT))).hasSize(1);
        assertThat(Accusing.in("(" + word + ")")).containsExactly(word);
    }

    @Test
    void aWordThatOnlySoundsLikeOneIsNotFound() {
        assertThat(
                        Accusing.in(
                                "5 passes of the roller; the rate lies where rates lie; by default; often; terror of bridges; badge"))
                .isEmpty();
    }

    @Test
    void everyWordOfASentenceIsTold() {
        assertThat(Accusing.in("a bad load, wrong by far")).containsExactly("bad", "wrong");
    }

    @Test
    void noPageOfTheDemoHasOne() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("demo-logs"))) {
            List<Path> pages = files.filter(f -> f.toString().endsWith(".txt")).toList();
            assertThat(pages).hasSizeGreaterThan(8);
            for (Path page : pages) {
                assertThat(Accusing.in(Files.readString(page)))
                        .as(page.toString())
                        .isEmpty();
            }
        }
    }
}
