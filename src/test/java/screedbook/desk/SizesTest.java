package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every screen in windows from too small to larger than any laptop's. */
class SizesTest {
    private static final int[] WIDTHS = {20, 60, 80, 200};
    private static final int[] HEIGHTS = {5, 12, 24};

    static List<Scenes.Scene> scenes() {
        return Scenes.all();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void manyWidthsAtSomeHeightsAndManyHeightsAtSomeWidths(Scenes.Scene scene) {
        Model model = scene.model();
        for (int height : HEIGHTS) {
            for (int width = 20; width <= 200; width += 5) {
                holds(model, width, height);
            }
        }
        for (int width : WIDTHS) {
            for (int height = 5; height <= 60; height += 5) {
                holds(model, width, height);
            }
        }
    }

    @Tag("heavy")
    @ParameterizedTest
    @MethodSource("scenes")
    void everyWidthAtEveryHeight(Scenes.Scene scene) {
        Model model = scene.model();
        for (int height = 5; height <= 60; height++) {
            for (int width = 20; width <= 200; width++) {
                holds(model, width, height);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void aWindowThatIsTooSmallSaysSoAndHarmsNothing(Scenes.Scene scene) {
        DeskRig rig = scene.desk().get();
        String before = rig.screen();
        for (int height = 0; height <= 5; height++) {
            for (int width = 0; width <= 20; width++) {
                rig.size(width, height);
                Canvas canvas = rig.canvas(width, height);
                assertThat(canvas.width()).isEqualTo(width);
                assertThat(canvas.height()).isEqualTo(height);
            }
        }
        Canvas small = rig.canvas(19, 4);
        assertThat(List.of(
                        small.row(0).strip(), small.row(1).strip(), small.row(2).strip()))
                .containsExactly("too small, make it", "larger: what was", "typed stays");
        assertThat(rig.canvas(1, 1).row(0)).isEqualTo("t");
        assertThat(rig.size(80, 24).screen()).isEqualTo(before);
    }

    @Test
    void keysInAWindowOfOneCellEndNothing() {
        for (Scenes.Scene scene : Scenes.all()) {
            scene.desk().get().size(1, 1).keys("<up><down><page_up><page_down><tab><left><right>7<backspace><esc>");
        }
    }

    /** Heading, rules and foot stand where they belong, whatever the body holds; the cursor stands in the body. */
    private static void holds(Model model, int width, int height) {
        Canvas canvas = View.of(model.size(width, height), width, height);
        String as = width + " x " + height;
        assertThat(canvas.width()).as(as).isEqualTo(width);
        assertThat(canvas.height()).as(as).isEqualTo(height);
        boolean side = model.top() instanceof Screen.Log && width >= 60;
        for (int x = 0; x < width; x++) {
            if (canvas.style(x, 0) != Style.HEAD
                    || canvas.style(x, height - 1) != Style.KEYLINE
                    || canvas.style(x, 1) != Style.RULE
                    || canvas.style(x, height - 2) != Style.RULE
                            && model.notice().text().isEmpty()) {
                throw new AssertionError(as + ": the frame is drawn over\n" + canvas.text());
            }
        }
        int parting = canvas.row(1).indexOf('┬');
        assertThat(parting >= 0).as(as + ": a side").isEqualTo(side);
        for (int y = 2; side && y < height - 2; y++) {
            if (canvas.at(parting, y) != '│') {
                throw new AssertionError(as + ": the list runs into the side\n" + canvas.text());
            }
        }
        if (canvas.cursorY() >= 0) {
            assertThat(canvas.cursorY()).as(as).isBetween(2, height - 3);
        }
    }
}
