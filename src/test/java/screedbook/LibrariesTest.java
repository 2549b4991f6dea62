package screedbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The libraries inside the program, with the texts they are given under. */
class LibrariesTest {

    /** A line of the list: artifact, version, licence, its texts, where its source is. */
    private record Library(String artifact, String version, String licence, List<String> texts, String source) {
        String file() {
            return artifact.replaceFirst(".*:", "") + "-" + version + ".jar";
        }
    }

    /** What only the tests use; it is not packed. */
    private static final Pattern OF_THE_TESTS = Pattern.compile(
            "(junit|surefire|assertj|opentest4j|apiguardian|byte-buddy|common-java|failsafe|maven-"
                    + "|json-schema-validator|jackson-databind|jackson-annotations|itu|slf4j-api|commons-math3|duckdb_jdbc).*");

    @Test
    void theListNamesTheVeryFilesOnTheClassPath() throws IOException {
        assertThat(listed().stream().map(Library::file).toList()).containsExactlyInAnyOrderElementsOf(used());
    }

    @Test
    void everyTextThatIsNamedIsThere() throws IOException {
        for (Library library : listed()) {
            assertThat(library.texts()).as(library.artifact()).isNotEmpty();
            for (String text : library.texts()) {
                assertThat(text(text).length()).as(text).isGreaterThan(100);
            }
        }
    }

    @Test
    void theTextsSayWhatTheirNamesSay() throws IOException {
        assertThat(text("LGPL-3.0.txt")).contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 3, 29 June 2007");
        assertThat(text("GPL-3.0.txt")).contains("GNU GENERAL PUBLIC LICENSE", "Version 3, 29 June 2007");
        assertThat(text("Apache-2.0.txt")).contains("Apache License", "Version 2.0, January 2004");
    }

    private static List<Library> listed() throws IOException {
        return text("libraries.csv")
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .map(cell -> new Library(cell[0], cell[1], cell[2], List.of(cell[3].split(" ")), cell[4]))
                .toList();
    }

    private static Set<String> used() {
        return Stream.of(System.getProperty("java.class.path")
                        .split(Pattern.quote(System.getProperty("path.separator"))))
                .filter(place -> place.endsWith(".jar"))
                .map(place -> place.replaceFirst(".*[/\\\\]", ""))
                .filter(file -> !OF_THE_TESTS.matcher(file).matches())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(String name) throws IOException {
        try (InputStream in = LibrariesTest.class.getResourceAsStream("/META-INF/licenses/" + name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), UTF_8);
        }
    }
}
