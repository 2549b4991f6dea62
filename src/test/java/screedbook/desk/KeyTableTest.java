package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of keys holds together: what the foot and the help say is what the keys do. */
class KeyTableTest {
    /** Rows that tell what may be typed in a blank and claim no key. */
    private static final List<String> TYPED = List.of(".", "3+ 3-");

    private static List<Key> keys() {
        List<Key> keys = new ArrayList<>();
        for (int c = 0x20; c < 0x7F; c++) {
            String text = Character.toString(c);
            keys.add(Key.of(text));
            keys.add(new Key(Key.Code.CHAR, text, false, true, false));
            if (c >= 'a' && c <= 'z') {
                keys.add(Key.ctrl(text));
            }
        }
        for (Key.Code code : Key.Code.values()) {
            if (code != Key.Code.CHAR && code != Key.Code.F && code != Key.Code.PASTE) {
                for (boolean shift : new boolean[] {false, true}) {
                    keys.add(new Key(code, "", false, false, shift));
                }
            }
        }
        return keys;
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void noKeyMeansTwoThingsInOnePlace(Place place) {
        for (Key key : keys()) {
            assertThat(KeyTable.at(place).stream()
                            .filter(r -> r.struck().test(key))
                            .map(KeyTable.Row::key))
                    .as(key.toString())
                    .hasSizeLessThanOrEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void everyRowSaysWhatItDoesAndIsReachedByAKeyThatEveryKeyboardHas(Place place) {
        for (KeyTable.Row row : KeyTable.at(place)) {
            assertThat(row.does()).isNotBlank();
            assertThat(row.key()).isNotBlank();
            boolean reached = keys().stream().anyMatch(row.struck());
            assertThat(reached).as(row.key()).isEqualTo(place != Place.FORM || !TYPED.contains(row.key()));
        }
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void noFunctionKeyIsNeeded(Place place) {
        for (int f = 1; f <= 12; f++) {
            assertThat(KeyTable.find(place, new Key(Key.Code.F, "" + f, false, false, false)))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void everyPlaceButTheFirstIsLeftWithEsc(Place place) {
        assertThat(KeyTable.find(place, Key.of(Key.Code.ESCAPE)).isPresent()).isEqualTo(place != Place.START);
    }

    static List<Scenes.Scene> scenes() {
        return Scenes.all();
    }

    /** While the disk has not answered, keys wait for it. */
    static List<Scenes.Scene> answered() {
        return Scenes.all().stream().filter(s -> !s.model().writing()).toList();
    }

    @ParameterizedTest
    @MethodSource("answered")
    void escGoesBackUntilTheFirstScreenAndWritesNothing(Scenes.Scene scene) {
        DeskRig rig = scene.desk().get();
        int lines = rig.lines().size();
        for (int i = 0; i < 6 && !(rig.model().top() instanceof Screen.Start); i++) {
            int deep = rig.model().screens().size();
            rig.keys("<esc>");
            assertThat(rig.model().screens()).hasSize(deep - 1);
        }
        assertThat(rig.model().top()).isInstanceOf(Screen.Start.class);
        assertThat(rig.lines()).hasSize(lines);
    }

    /** The keys of the help are on every screen that has more keys than its foot can say. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void everyKeyOfAPlaceIsOnItsFootOrItsHelpIsReached(Place place) {
        List<KeyTable.Row> hidden = KeyTable.at(place).stream()
                .filter(r -> r.foot().isEmpty())
                .filter(r -> !r.key().equals("Up Down"))
                .toList();
        boolean help = KeyTable.at(place).stream().anyMatch(r -> r.foot().equals("keys"));
        assertThat(hidden.isEmpty() || help).as(hidden.toString()).isTrue();
    }

    /** What does not fit at the foot is left to the help, and the key of the help is one that holds here. */
    @ParameterizedTest
    @MethodSource("scenes")
    void theFootFitsOrEndsWithAKeyOfTheHelpThatHolds(Scenes.Scene scene) {
        Model model = scene.model();
        Place place = model.top().place();
        String whole = KeyTable.foot(place);
        for (int width = 20; width <= 120; width++) {
            Canvas canvas = View.of(model, width, 24);
            String foot = canvas.row(23).strip();
            if (!foot.equals(whole)) {
                assertThat(foot).as("" + width).endsWith(" keys").doesNotContain("~");
                String key = foot.substring(0, foot.length() - " keys".length());
                key = key.substring(key.lastIndexOf(' ') + 1);
                Key struck =
                        key.startsWith("Ctrl-") ? Key.ctrl(key.substring(5).toLowerCase(Locale.ROOT)) : Key.of(key);
                assertThat(KeyTable.find(place, struck).map(KeyTable.Row::foot))
                        .as(place + " at " + width + ": " + foot)
                        .contains("keys");
            }
        }
    }
}
