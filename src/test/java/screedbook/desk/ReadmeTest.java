package screedbook.desk;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import screedbook.Handbook;

/** The screen and the keys in the README are the program's; {@code -Dgoldens=keep} writes them there anew. */
class ReadmeTest {
    @Test
    void theScreenIsTheOneThatTheDeskDraws() throws IOException {
        Scenes.Scene scene = Scenes.all().stream()
                .filter(s -> s.name().equals("shift"))
                .findFirst()
                .orElseThrow();

        Handbook.README.says("screen", Handbook.block(scene.desk().get().screen(80, 24)));
    }

    @Test
    void theKeysAreThoseOfTheTable() throws IOException {
        StringBuilder table = new StringBuilder();
        for (Place place : List.of(Place.SHIFT, Place.FORM, Place.START)) {
            table.append("\n| ").append(place.title()).append(" | |\n|---|---|\n");
            KeyTable.at(place).forEach(row -> table.append(row(row)));
        }
        table.append("\n| the other screens | |\n|---|---|\n");
        for (Place place : Place.values()) {
            if (!List.of(Place.SHIFT, Place.FORM, Place.START).contains(place)) {
                String keys = KeyTable.at(place).stream()
                        .map(r -> "`" + r.key() + "` " + r.does())
                        .collect(Collectors.joining("; "));
                table.append("| ")
                        .append(place.title())
                        .append(" | ")
                        .append(keys)
                        .append(" |\n");
            }
        }

        Handbook.README.says("keys", table.append('\n').toString());
    }

    private static String row(KeyTable.Row row) {
        return "| `" + row.key() + "` | " + row.does() + " |\n";
    }
}
