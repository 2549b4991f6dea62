package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import screedbook.desk.Key.Code;

class KeyTest {
    @Test
    void aCharacterKeyHoldsExactlyOneCharacter() {
        assertThat(Key.of("\uD83D\uDE00").text()).hasSize(2);
        assertThatThrownBy(() -> Key.of("ab"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ab");
        assertThatThrownBy(() -> Key.of("")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aKeyIsOnlyItselfWithNothingHeldDown() {
        assertThat(Key.of(Code.UP).is(Code.UP)).isTrue();
        assertThat(new Key(Code.UP, "", true, false, false).is(Code.UP)).isFalse();
        assertThat(Key.of("s").is("s")).isTrue();
        assertThat(Key.ctrl("s").is("s")).isFalse();
        assertThat(Key.paste("s").is("s")).isFalse();
    }
}
