package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Short texts that stand in many lines of a file, made once. */
final class Texts {
    private static final int PLACES = 128;

    private final byte[][] bytes = new byte[PLACES][];
    private final String[] texts = new String[PLACES];

    String of(byte[] file, int from, int to) {
        int hash = to - from;
        for (int i = from; i < to; i++) {
            hash = hash * 31 + file[i];
        }
        int place = hash & PLACES - 1;
        byte[] known = bytes[place];
        if (known == null || !Arrays.equals(file, from, to, known, 0, known.length)) {
            bytes[place] = Arrays.copyOfRange(file, from, to);
            texts[place] = new String(file, from, to - from, StandardCharsets.UTF_8);
        }
        return texts[place];
    }
}
