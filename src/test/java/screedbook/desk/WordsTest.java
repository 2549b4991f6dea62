package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a colour says is also said in words: a screen without any style tells the same. */
class WordsTest {
    /** The words of which one stands in the same coloured stretch, or at the head of the text that it goes on with. */
    private static final Map<Style, Pattern> WORDS = new EnumMap<>(Map.of(
            Style.MARK, Pattern.compile("OUT|\\d+ outside"),
            Style.LOOK_AGAIN, Pattern.compile("look again|missing|adds up\\?|do(es)? not add up|Ctrl-O takes"),
            Style.STRUCK, Pattern.compile("struck"),
            Style.DUE, Pattern.compile("NOW|half typed|writing|stopped"),
            Style.CHOSEN, Pattern.compile("^>")));

    private record Run(Style style, int x, int y, String text) {}

    static List<Scenes.Scene> scenes() {
        return Scenes.all();
    }

    private static List<Run> runs(Canvas canvas) {
        List<Run> runs = new ArrayList<>();
        for (int y = 0; y < canvas.height(); y++) {
            int from = 0;
            for (int x = 1; x <= canvas.width(); x++) {
                if (x == canvas.width() || canvas.style(x, y) != canvas.style(from, y)) {
                    runs.add(new Run(
                            canvas.style(from, y), from, y, canvas.row(y).substring(from, x)));
                    from = x;
                }
            }
        }
        return runs;
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void everyColouredStretchHasItsWord(Scenes.Scene scene) {
        for (int[] size : new int[][] {{80, 24}, {132, 43}, {60, 20}}) {
            Canvas canvas = View.of(scene.model().size(size[0], size[1]), size[0], size[1]);
            List<Run> runs = runs(canvas);
            for (int i = 0; i < runs.size(); i++) {
                Run run = runs.get(i);
                if (WORDS.containsKey(run.style()) && !goesOn(runs, i)) {
                    assertThat(run.text())
                            .as(run.style() + " at " + run.x() + "," + run.y() + "\n" + canvas.text())
                            .containsPattern(WORDS.get(run.style()));
                }
            }
        }
    }

    /** The second line of a text that was broken: indented under a line of the same style. */
    private static boolean goesOn(List<Run> runs, int at) {
        Run run = runs.get(at);
        return run.text().startsWith("  ")
                && run.x() == 7
                && runs.stream().anyMatch(r -> r.style() == run.style() && r.y() == run.y() - 1 && r.x() == run.x());
    }

    /** The scenes hold every colour that the test speaks of; else it would speak of nothing. */
    @Test
    void everyColourIsSomewhereOnTheScenes() {
        Set<Style> seen = EnumSet.noneOf(Style.class);
        for (Scenes.Scene scene : Scenes.all()) {
            runs(View.of(scene.model(), 80, 24)).forEach(r -> seen.add(r.style()));
        }
        assertThat(seen).contains(Style.values());
    }

    /** Trouble is a sentence: more than one word, never a lone colour. */
    @ParameterizedTest
    @MethodSource("scenes")
    void troubleIsASentenceOrTheLabelOfTheBlankThatItSpeaksOf(Scenes.Scene scene) {
        Canvas canvas = View.of(scene.model(), 80, 24);
        List<Run> alerts =
                runs(canvas).stream().filter(r -> r.style() == Style.ALERT).toList();
        assertThat(alerts.isEmpty()
                        || alerts.stream().anyMatch(r -> r.text().strip().contains(" ")))
                .as(canvas.text())
                .isTrue();
    }
}
