package screedbook.term;

import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import screedbook.desk.Key;

/** The decoder of keys, fed with any bytes of a terminal: it ends with them, and no key is half a character. */
public final class AnyKeys {
    private AnyKeys() {}

    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        InputDecoder decoder =
                new InputDecoder(new InputStreamReader(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8));
        decoder.addProfile(Keys::patterns);
        Keys keys = new Keys();
        List<Key> found = new ArrayList<>();
        int strokes = 0;
        for (boolean open = true; open; strokes++) {
            KeyStroke stroke = decoder.getNextCharacter(true);
            open = stroke != null && keys.take(stroke, found);
            if (strokes > 2 * bytes.length + 2) {
                throw new AssertionError("more strokes than bytes");
            }
        }
        keys.rest(found);
        for (Key key : found) {
            int[] points = key.text().codePoints().toArray();
            boolean half = key.code() == Key.Code.CHAR
                    && (points.length != 1 || Character.getType(points[0]) == Character.SURROGATE);
            if (half) {
                throw new AssertionError("not one character: " + key);
            }
        }
    }
}
