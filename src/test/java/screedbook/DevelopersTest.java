package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What DEVELOPERS.md names is there. */
class DevelopersTest {
    private static final Pattern TEST = Pattern.compile("`(\\w+Test)`");
    private static final Pattern FILE = Pattern.compile("`([a-z]+/\\w+\\.java)`");
    private static final Pattern PROMISE = Pattern.compile("(?m)^\\| (\\d+) \\| (.+) \\| (.+) \\|$");
    private static final Pattern PROFILE = Pattern.compile("(?m)^\\| `([a-z]+)` \\| .+ \\| (?:`.+`|below) \\|$");
    private static final Pattern PROFILE_ID = Pattern.compile("<profile>\\s*<id>([a-z]+)</id>");
    private static final Pattern ROOM = Pattern.compile("(?m)^\\| `([a-z]+)` \\|");

    private static Set<String> named(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(f -> f.getFileName().toString().replaceFirst("\\.java$", ""))
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void everyTestThatIsNamedIsThere() throws IOException {
        Set<String> named = named(TEST, Handbook.DEVELOPERS.text());

        assertThat(named).hasSizeGreaterThan(20);
        assertThat(names(Path.of("src/test/java"))).containsAll(named);
    }

    @Test
    void everyPromiseHasATest() throws IOException {
        List<MatchResult> promises =
                PROMISE.matcher(Handbook.DEVELOPERS.text()).results().toList();

        assertThat(promises.stream().map(p -> Integer.valueOf(p.group(1))))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 10).boxed().toList());
        assertThat(promises).allSatisfy(p -> assertThat(named(TEST, p.group(3))).isNotEmpty());
    }

    @Test
    void everyFileOnTheWayOfAKeyIsThere() throws IOException {
        Set<String> files = named(FILE, Handbook.DEVELOPERS.text());

        assertThat(files).hasSizeGreaterThan(12);
        assertThat(files)
                .allSatisfy(file ->
                        assertThat(Path.of("src/main/java/screedbook", file)).exists());
    }

    @Test
    void theRoomsArePackagesAndEveryPackageIsARoom() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("src/main/java/screedbook"))) {
            Set<String> packages = folders.filter(Files::isDirectory)
                    .map(f -> f.getFileName().toString())
                    .collect(Collectors.toSet());
            String rooms = Handbook.DEVELOPERS.text().split("## Promises")[0];
            assertThat(named(ROOM, rooms)).isEqualTo(packages);
        }
    }

    @Test
    void everyProfileOfTheBuildIsTold() throws IOException {
        Set<String> profiles = named(PROFILE_ID, Files.readString(Path.of("pom.xml")));

        assertThat(profiles).contains("heavy", "faults");
        assertThat(named(PROFILE, Handbook.DEVELOPERS.text())).isEqualTo(profiles);
    }
}
