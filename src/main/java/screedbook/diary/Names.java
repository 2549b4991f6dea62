package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import screedbook.entry.Kind;
import screedbook.unit.UnitSystem;

/** Words that stand in every line, found by their bytes without being made again: the very ones of the source. */
final class Names {
    private static final int PLACES = 1024;
    private static final byte[][] BYTES = new byte[PLACES][];
    private static final String[] WORDS = new String[PLACES];

    static {
        List<String> words = new java.util.ArrayList<>(List.of("n", "kind", "job", "shift", "book", "prev"));
        for (Kind kind : Kind.values()) {
            words.add(kind.word());
        }
        words.addAll(List.of("time", "keyed", "who", "source"));
        Kind.TICKET.fields().forEach(field -> {
            for (UnitSystem system : UnitSystem.values()) {
                words.add(field.key(system));
            }
        });
        words.forEach(Names::put);
    }

    private Names() {}

    private static void put(String word) {
        byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
        int place = place(bytes, 0, bytes.length);
        while (WORDS[place] != null && !WORDS[place].equals(word)) {
            place = (place + 1) % PLACES;
        }
        BYTES[place] = bytes;
        WORDS[place] = word.intern();
    }

    private static int place(byte[] file, int from, int to) {
        int hash = to - from;
        for (int i = from; i < to; i++) {
            hash = hash * 31 + file[i];
        }
        return hash & PLACES - 1;
    }

    /** The word of these bytes; an empty one where it is none of those that are known. */
    static String of(byte[] file, int from, int to) {
        for (int place = place(file, from, to); WORDS[place] != null; place = (place + 1) % PLACES) {
            byte[] known = BYTES[place];
            if (known.length == to - from && Arrays.equals(file, from, to, known, 0, known.length)) {
                return WORDS[place];
            }
        }
        return "";
    }
}
