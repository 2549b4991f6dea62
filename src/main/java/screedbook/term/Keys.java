package screedbook.term;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.input.MouseCharacterPattern;
import com.googlecode.lanterna.input.ScreenInfoCharacterPattern;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import screedbook.desk.Key;
import screedbook.desk.Key.Code;

/** Turns what the terminal library reads into the keys of the desk: halves of a character are joined, a paste is gathered. */
final class Keys {
    private static final Map<KeyType, Code> CODES = codes();

    private StringBuilder paste;
    private char half;

    /** Adds the key of this stroke, if it is complete; false says that the input has ended. */
    boolean take(KeyStroke stroke, List<Key> found) {
        if (stroke.getKeyType() == KeyType.EOF) {
            return false;
        }
        if (stroke instanceof PasteEdge edge) {
            rest(found);
            paste = edge.opens ? new StringBuilder() : null;
        } else if (paste != null) {
            if (stroke.getCharacter() != null && !stroke.isCtrlDown()) {
                paste.append(stroke.getCharacter().charValue());
            }
        } else {
            key(stroke, found);
        }
        return true;
    }

    /** Hands over a paste whose end has come, or did not come in time. */
    void rest(List<Key> found) {
        if (paste != null) {
            found.add(Key.paste(Normalizer.normalize(paste, Normalizer.Form.NFC)));
            paste = null;
        }
    }

    private void key(KeyStroke stroke, List<Key> found) {
        if (stroke.getKeyType() == KeyType.Character) {
            String text = whole(stroke.getCharacter());
            if (!text.isEmpty()) {
                found.add(new Key(Code.CHAR, text, stroke.isCtrlDown(), stroke.isAltDown(), false));
            }
            return;
        }
        Code code = CODES.getOrDefault(stroke.getKeyType(), Code.UNKNOWN);
        String text = code == Code.F ? stroke.getKeyType().name().substring(1) : "";
        found.add(new Key(code, text, stroke.isCtrlDown(), stroke.isAltDown(), stroke.isShiftDown()));
    }

    /** The character, joined with the half that came before; empty while its other half is missing, and for a half without a partner. */
    private String whole(char c) {
        char before = half;
        half = Character.isHighSurrogate(c) ? c : 0;
        if (Character.isLowSurrogate(c)) {
            return before == 0 ? "" : new String(new char[] {before, c});
        }
        return half == 0 ? String.valueOf(c) : "";
    }

    /** What byte sequences mean; where several match, the last one counts. */
    static List<CharacterPattern> patterns() {
        List<CharacterPattern> all = new ArrayList<>();
        all.add(new UnknownSequence());
        for (CharacterPattern usual : new DefaultKeyDecodingProfile().getPatterns()) {
            // Nothing asks the terminal for its cursor or for a mouse.
            if (!(usual instanceof ScreenInfoCharacterPattern) && !(usual instanceof MouseCharacterPattern)) {
                all.add(usual);
            }
        }
        all.add(sequence(new KeyStroke(KeyType.Enter), "\r"));
        all.add(sequence(new PasteEdge(true), "\033[200~"));
        all.add(sequence(new PasteEdge(false), "\033[201~"));
        all.add(sequence(new KeyStroke(KeyType.Home), "\033[7~"));
        all.add(sequence(new KeyStroke(KeyType.End), "\033[8~"));
        keypad(all);
        return all;
    }

    /** The number block as terminals write it in its application mode: ESC O j to ESC O y, in the order of the signs below. */
    private static void keypad(List<CharacterPattern> all) {
        String signs = "*+,-./0123456789";
        for (int i = 0; i < signs.length(); i++) {
            all.add(sequence(new KeyStroke(signs.charAt(i), false, false), "\033O" + (char) ('j' + i)));
        }
        all.add(sequence(new KeyStroke('=', false, false), "\033OX"));
        all.add(sequence(new KeyStroke(KeyType.Enter), "\033OM"));
    }

    private static BasicCharacterPattern sequence(KeyStroke stroke, String bytes) {
        return new BasicCharacterPattern(stroke, bytes.toCharArray());
    }

    private static Map<KeyType, Code> codes() {
        Map<KeyType, Code> all = new EnumMap<>(KeyType.class);
        all.put(KeyType.Enter, Code.ENTER);
        all.put(KeyType.Tab, Code.TAB);
        all.put(KeyType.ReverseTab, Code.BACK_TAB);
        all.put(KeyType.Escape, Code.ESCAPE);
        all.put(KeyType.Backspace, Code.BACKSPACE);
        all.put(KeyType.Delete, Code.DELETE);
        all.put(KeyType.Insert, Code.INSERT);
        all.put(KeyType.ArrowLeft, Code.LEFT);
        all.put(KeyType.ArrowRight, Code.RIGHT);
        all.put(KeyType.ArrowUp, Code.UP);
        all.put(KeyType.ArrowDown, Code.DOWN);
        all.put(KeyType.Home, Code.HOME);
        all.put(KeyType.End, Code.END);
        all.put(KeyType.PageUp, Code.PAGE_UP);
        all.put(KeyType.PageDown, Code.PAGE_DOWN);
        for (KeyType type : KeyType.values()) {
            if (type.name().matches("F\\d+")) {
                all.put(type, Code.F);
            }
        }
        return all;
    }

    /** The mark that a terminal sets before and after pasted text. */
    private static final class PasteEdge extends KeyStroke {
        private final boolean opens;

        PasteEdge(boolean opens) {
            super(KeyType.Unknown);
            this.opens = opens;
        }
    }

    /** Any whole sequence that nobody else knows is one unknown key, not a row of typed characters (ECMA-48, 5.4). */
    private static final class UnknownSequence implements CharacterPattern {
        @Override
        public Matching match(List<Character> read) {
            if (read.get(0) != '\033') {
                return null;
            }
            if (read.size() == 1) {
                return Matching.NOT_YET;
            }
            char opener = read.get(1);
            if (opener != '[' && opener != 'O') {
                return null;
            }
            for (int i = 2; i < read.size() - 1; i++) {
                if (!inside(read.get(i))) {
                    return null;
                }
            }
            boolean ended = read.size() > 2 && !inside(read.get(read.size() - 1));
            return ended ? new Matching(new KeyStroke(KeyType.Unknown)) : Matching.NOT_YET;
        }

        private static boolean inside(char c) {
            return c >= 0x20 && c <= 0x3F;
        }
    }
}
