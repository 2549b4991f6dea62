package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import screedbook.Situations.Row;
import screedbook.check.Rules;

/** The list of awkward situations names tests and rules that are there. */
class SituationsTest {
    private static final List<Row> ROWS = Situations.rows();

    /** Test classes by their simple names. */
    private static Map<String, String> classes() throws IOException, URISyntaxException {
        Path root = Path.of(SituationsTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        Map<String, String> classes = new HashMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            files.filter(f -> f.toString().endsWith("Test.class")).forEach(f -> {
                String name = root.relativize(f).toString().replace('/', '.').replace('\\', '.');
                String whole = name.substring(0, name.length() - ".class".length());
                classes.put(whole.substring(whole.lastIndexOf('.') + 1), whole);
            });
        }
        return classes;
    }

    /** Whether a method is run as a test: {@code Test}, {@code ParameterizedTest} and the like. */
    private static boolean isTest(Method method) {
        return Stream.of(method.getAnnotations())
                .map(Annotation::annotationType)
                .anyMatch(a -> a.getSimpleName().matches("(Parameterized|Repeated)?Test"));
    }

    @Test
    void thereAreAHundredInTheirOrder() {
        assertThat(ROWS)
                .extracting(Row::number)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 100).boxed().toList());
        assertThat(ROWS).allSatisfy(row -> {
            assertThat(row.situation()).isNotBlank();
            assertThat(row.does()).isNotBlank();
        });
    }

    @Test
    void everyTestThatIsNamedIsThere() throws IOException, URISyntaxException, ClassNotFoundException {
        Map<String, String> classes = classes();
        for (Row row : ROWS) {
            for (String test : row.tests()) {
                String[] named = test.split("#");
                assertThat(classes).as("row %s: %s", row, test).containsKey(named[0]);
                Class<?> type =
                        Class.forName(classes.get(named[0]), false, getClass().getClassLoader());
                assertThat(type.getDeclaredMethods())
                        .as("row %s: %s", row, test)
                        .anyMatch(m -> m.getName().equals(named[1]) && isTest(m));
            }
        }
    }

    @Test
    void everyRuleThatIsNamedIsThere() {
        for (Row row : ROWS) {
            assertThat(row.rules())
                    .allSatisfy(rule -> assertThat(Rules.of(rule))
                            .as("row %s: %s", row, rule)
                            .isPresent());
        }
    }

    @Test
    void everyRowIsHeldOrSaysWhyNotYet() {
        for (Row row : ROWS) {
            assertThat(row.held().isEmpty() && row.later().isEmpty())
                    .as("row %s holds nothing and says nothing", row)
                    .isFalse();
            assertThat(row.later()).as("row %s", row).matches("|later: .{20,}");
        }
        assertThat(ROWS.stream().filter(r -> !r.later().isEmpty()).map(Row::number))
                .as("what is not wholly held yet")
                .isEmpty();
    }
}
