package screedbook.term;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.TextColor.ANSI;
import java.util.EnumMap;
import java.util.Map;
import screedbook.desk.Look;
import screedbook.desk.Style;

/** How each style looks in each look: the sixteen colours that every terminal has, bold, reverse and underline, nothing else. */
final class Palette {
    private static final SGR[] NOTHING = {};
    private static final SGR[] BOLD = {SGR.BOLD};
    private static final SGR[] UNDERLINE = {SGR.UNDERLINE};
    private static final SGR[] REVERSE = {SGR.REVERSE};
    private static final SGR[] BOLD_UNDERLINE = {SGR.BOLD, SGR.UNDERLINE};
    private static final SGR[] BOLD_REVERSE = {SGR.BOLD, SGR.REVERSE};

    private static final Map<Look, Map<Style, TextCharacter>> ALL = all();

    private Palette() {}

    /** A blank cell of this style. */
    static TextCharacter blank(Look look, Style style) {
        return ALL.get(look).get(style);
    }

    private static Map<Look, Map<Style, TextCharacter>> all() {
        Map<Look, Map<Style, TextCharacter>> all = new EnumMap<>(Look.class);
        for (Look look : Look.values()) {
            Map<Style, TextCharacter> cells = new EnumMap<>(Style.class);
            for (Style style : Style.values()) {
                cells.put(style, cell(look, style));
            }
            all.put(look, cells);
        }
        return all;
    }

    private static TextCharacter cell(Look look, Style style) {
        return switch (look) {
            case NIGHT -> night(style);
            case SUN -> sun(style);
            case MONO -> of(ANSI.DEFAULT, ANSI.DEFAULT, mono(style));
        };
    }

    /** On black, the dim half of the colours; bright black is left out, since some terminals show it as black, and so are the dark ones, blue, magenta and yellow. */
    private static TextCharacter night(Style style) {
        return switch (style) {
            case PLAIN -> onBlack(ANSI.WHITE, NOTHING);
            case FAINT, KEYLINE, RULE, STRUCK -> onBlack(ANSI.CYAN, NOTHING);
            case STRONG -> onBlack(ANSI.WHITE, BOLD);
            case HEAD -> onBlack(ANSI.CYAN, BOLD);
            case FIELD -> onBlack(ANSI.WHITE, UNDERLINE);
            case FIELD_ACTIVE -> onBlack(ANSI.YELLOW_BRIGHT, BOLD_UNDERLINE);
            case CARRIED -> onBlack(ANSI.CYAN, UNDERLINE);
            case CHOSEN -> onBlack(ANSI.WHITE, REVERSE);
            case MARK -> onBlack(ANSI.RED_BRIGHT, BOLD);
            case LOOK_AGAIN -> onBlack(ANSI.YELLOW_BRIGHT, NOTHING);
            case DUE -> onBlack(ANSI.GREEN, BOLD);
            case PICTURE -> onBlack(ANSI.GREEN, NOTHING);
            case ALERT -> of(ANSI.WHITE_BRIGHT, ANSI.RED, BOLD);
        };
    }

    /** Black on white, bold: what washes out in sunlight is hue, not weight. */
    private static TextCharacter sun(Style style) {
        return switch (style) {
            case PLAIN, PICTURE, RULE -> onWhite(ANSI.BLACK, BOLD);
            case FAINT, KEYLINE, STRUCK -> onWhite(ANSI.BLACK, NOTHING);
            case STRONG -> onWhite(ANSI.BLACK, BOLD_UNDERLINE);
            case HEAD, CHOSEN, FIELD_ACTIVE -> of(ANSI.WHITE_BRIGHT, ANSI.BLACK, BOLD);
            case FIELD -> onWhite(ANSI.BLACK, BOLD_UNDERLINE);
            case CARRIED -> onWhite(ANSI.BLACK, UNDERLINE);
            case MARK, ALERT -> of(ANSI.WHITE_BRIGHT, ANSI.RED, BOLD);
            case LOOK_AGAIN, DUE -> onWhite(ANSI.BLUE, BOLD);
        };
    }

    private static SGR[] mono(Style style) {
        return switch (style) {
            case PLAIN, FAINT, STRUCK, RULE, PICTURE, KEYLINE -> NOTHING;
            case STRONG, LOOK_AGAIN, DUE -> BOLD;
            case FIELD, CARRIED -> UNDERLINE;
            case MARK -> BOLD_UNDERLINE;
            case HEAD, CHOSEN, FIELD_ACTIVE -> REVERSE;
            case ALERT -> BOLD_REVERSE;
        };
    }

    private static TextCharacter onBlack(TextColor colour, SGR[] weight) {
        return of(colour, ANSI.BLACK, weight);
    }

    private static TextCharacter onWhite(TextColor colour, SGR[] weight) {
        return of(colour, ANSI.WHITE_BRIGHT, weight);
    }

    private static TextCharacter of(TextColor colour, TextColor ground, SGR[] weight) {
        return TextCharacter.fromCharacter(' ', colour, ground, weight)[0];
    }
}
