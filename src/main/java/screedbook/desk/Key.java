package screedbook.desk;

import java.util.Objects;

/**
 * One key as the desk knows it: what was struck, and what was held down with it.
 *
 * @param code what kind of key it is
 * @param text for {@link Code#CHAR} the one character (one code point); for {@link Code#PASTE} the pasted text, whole; for
 *     {@link Code#F} the number on the key in digits; else empty
 * @param ctrl whether Ctrl was held; {@code text} is then the letter in lower case
 * @param alt whether Alt was held
 * @param shift whether Shift was held; known for the keys that move and the function keys, while a CHAR shows it by its case
 */
public record Key(Code code, String text, boolean ctrl, boolean alt, boolean shift) {

    /** The kinds of key that reach the desk. */
    public enum Code {
        CHAR,
        ENTER,
        TAB,
        BACK_TAB,
        ESCAPE,
        BACKSPACE,
        DELETE,
        INSERT,
        LEFT,
        RIGHT,
        UP,
        DOWN,
        HOME,
        END,
        PAGE_UP,
        PAGE_DOWN,
        F,
        UNKNOWN,
        PASTE
    }

    public Key {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(text, "text");
        if (code == Code.CHAR && text.codePointCount(0, text.length()) != 1) {
            throw new IllegalArgumentException("a CHAR key holds one character, not \"" + text + "\"");
        }
    }

    /** Written out, for the first comparison that a record makes by itself takes as long as drawing a screen. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Key key
                && code == key.code
                && text.equals(key.text)
                && ctrl == key.ctrl
                && alt == key.alt
                && shift == key.shift;
    }

    @Override
    public int hashCode() {
        return Objects.hash(code, text, ctrl, alt, shift);
    }

    /** A plain character, nothing held down. {@code text} is one code point, else {@link IllegalArgumentException}. */
    public static Key of(String text) {
        return new Key(Code.CHAR, text, false, false, false);
    }

    /** A key that carries no text, nothing held down. */
    public static Key of(Code code) {
        return new Key(code, "", false, false, false);
    }

    /** A letter struck while Ctrl is held. */
    public static Key ctrl(String letter) {
        return new Key(Code.CHAR, letter, true, false, false);
    }

    /** Text that arrived in one piece from the clipboard. */
    public static Key paste(String text) {
        return new Key(Code.PASTE, text, false, false, false);
    }

    /** Whether this is exactly this key with nothing held down. */
    public boolean is(Code other) {
        return code == other && !ctrl && !alt && !shift;
    }

    /** Whether this is exactly this character with neither Ctrl nor Alt. */
    public boolean is(String character) {
        return code == Code.CHAR && !ctrl && !alt && text.equals(character);
    }
}
