package screedbook.entry;

/**
 * Text from a file or a key made safe to look at: control, C1, bidi, zero-width and lone-surrogate characters, and spaces that are not the common one, stand as
 * {@code <U+202E>}. Everything that goes to a screen, a page or an error line passes here.
 */
public final class Shown {
    private Shown() {}

    /** The text with every unseen character made visible; the same object when there is none. */
    public static String text(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (hidden(c)) {
                return replaced(text);
            }
            i += Character.charCount(c);
        }
        return text;
    }

    private static String replaced(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (hidden(c)) {
                out.append(String.format("<U+%04X>", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** Whether a character has no shape of its own or can drive a terminal; of the spaces only the common one is seen. */
    public static boolean hidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE -> true;
            case Character.SPACE_SEPARATOR -> c != ' ';
            default -> c > 0xFF && shapeless(c);
        };
    }

    /** Letters, marks and symbols that are drawn as nothing: the fillers, the joiner, the selectors, an empty cell. */
    private static boolean shapeless(int c) {
        return c == 0x034F
                || c == 0x115F
                || c == 0x1160
                || c == 0x17B4
                || c == 0x17B5
                || (c >= 0x180B && c <= 0x180F)
                || c == 0x2800
                || c == 0x3164
                || (c >= 0xFE00 && c <= 0xFE0F)
                || c == 0xFFA0
                || (c >= 0xE0100 && c <= 0xE01EF);
    }
}
