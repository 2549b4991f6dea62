package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every screen as it looked when somebody last read it, whole; {@code mvn -o test -Dtest=ScreensTest -Dgoldens=keep} writes
 * the pictures anew, to be read again before they are kept.
 */
class ScreensTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "golden", "desk");
    private static final boolean KEEP = "keep".equals(System.getProperty("goldens"));

    static List<Scenes.Scene> scenes() {
        return Scenes.all();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void theScreenLooksAsKept(Scenes.Scene scene) throws IOException {
        Path file = FOLDER.resolve(scene.name() + ".txt");
        String screen = scene.desk().get().screen(scene.width(), scene.height());
        if (KEEP) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, screen);
        }
        assertThat(screen).isEqualTo(Files.readString(file));
    }

    @Test
    void noPictureIsKeptOfAScreenThatIsNotThere() throws IOException {
        List<String> names = Scenes.all().stream().map(s -> s.name() + ".txt").toList();
        assertThat(names).doesNotHaveDuplicates();
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(names);
        }
    }

    /** A new place or a new kind of entry cannot come without a picture. */
    @Test
    void everyPlaceHasAScene() {
        assertThat(Scenes.all().stream().map(s -> s.model().top().place())).contains(Place.values());
    }
}
