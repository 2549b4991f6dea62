package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import screedbook.diary.TicketRow.Place;
import screedbook.entry.Field;
import screedbook.entry.Kind;
import screedbook.unit.UnitSystem;

/**
 * A ticket's line read off its bytes, as far as loads, weights and temperatures go: only for lines that a chain has
 * proved to be of this program's own writing, so that its keys stand in their order. Whatever is out of the ordinary is
 * for a reading in full.
 */
final class TicketScan {
    private static final Key[] KEYS = keys();

    private final byte[] file;
    private final byte[] after = new byte[KEYS.length + 1];
    private TicketRow row;
    private int at;
    private int end;
    private int timed = -1;
    private int timedEnd;

    /**
     * A key as it stands in a line.
     *
     * @param bytes from the comma before it to the first byte of its value, with the quotation mark of a text
     * @param place where its value belongs; null for one that does not bear on loads
     * @param system of a figure; null for a text
     */
    private record Key(byte[] bytes, Place place, UnitSystem system) {}

    TicketScan(byte[] file) {
        this.file = file;
        for (byte k = 0; k < after.length; k++) {
            after[k] = k;
        }
    }

    /** Every key that is read or passed over, in the order of the writer. */
    private static Key[] keys() {
        List<Key> keys = new ArrayList<>();
        keys.add(text("time", Place.TIME));
        keys.add(text("keyed", Place.KEYED));
        keys.add(text("who", Place.WHO));
        keys.add(text("source", Place.SOURCE));
        for (Field field : Kind.TICKET.fields()) {
            if (field.measure().isPresent() || field.type() == Integer.class) {
                keys.addAll(figures(field));
            } else if (!field.name().equals("reissue_of")) {
                keys.add(text(field.name(), Place.text(field.name())));
            }
        }
        return keys.toArray(Key[]::new);
    }

    private static Key text(String name, Place place) {
        return new Key((",\"" + name + "\":\"").getBytes(UTF_8), place, null);
    }

    private static List<Key> figures(Field field) {
        List<Key> keys = new ArrayList<>();
        for (UnitSystem system : UnitSystem.values()) {
            String text = ",\"" + field.key(system) + "\":";
            keys.add(new Key(text.getBytes(UTF_8), Place.figure(field.name()), system));
        }
        return keys;
    }

    /**
     * Reads on from the keys that are the same in every line of a book.
     *
     * @param from where the comma before the first of the other keys stands
     * @param to where the comma before {@code prev} stands
     * @return whether the row holds everything of it that bears on loads
     */
    boolean read(TicketRow its, int from, int to) {
        row = its;
        at = from;
        end = to;
        int next = 0;
        while (at < end) {
            next = next(next);
            if (next == KEYS.length || !value(KEYS[next])) {
                return false;
            }
            next++;
        }
        return at == end && row.has(Place.KEYED) && row.has(Place.WHO) && row.has(Place.SOURCE);
    }

    /** The key that stands here, of those from one on; mostly it is the one that stood here last. */
    private int next(int from) {
        int next = after[from];
        if (next < KEYS.length && stands(KEYS[next].bytes)) {
            return next;
        }
        next = from;
        while (next < KEYS.length && !stands(KEYS[next].bytes)) {
            next++;
        }
        after[from] = (byte) next;
        return next;
    }

    private boolean stands(byte[] key) {
        if (at + key.length > end) {
            return false;
        }
        for (int i = 0; i < key.length; i++) {
            if (file[at + i] != key[i]) {
                return false;
            }
        }
        return true;
    }

    private boolean value(Key key) {
        int from = at + key.bytes.length;
        int to = key.system == null ? textEnd(from, key.place == null) : figureEnd(from);
        at = key.system == null ? to + 1 : to;
        if (to < 0 || to == from || key.place == null) {
            return to > from;
        }
        boolean first = !row.has(key.place);
        row.put(key.place, from, to);
        return first && (key.system == null ? text(key.place, from, to) : row.measuredIn(key.system));
    }

    /** The end of a text; -1 where it does not end, or has escapes and may not. */
    private int textEnd(int from, boolean escapes) {
        for (int i = from; i < end; i++) {
            byte b = file[i];
            if (b == '"') {
                return i;
            }
            if (b == '\\' && !escapes || b >= 0 && b < ' ') {
                return -1;
            }
            i += b == '\\' ? 1 : 0;
        }
        return -1;
    }

    /** The end of a decimal as this program writes one, of 12 digits at most; -1 where it is another. */
    private int figureEnd(int from) {
        int i = file[from] == '-' ? from + 1 : from;
        int first = i;
        int point = -1;
        while (i < end && (file[i] >= '0' && file[i] <= '9' || file[i] == '.' && point < 0 && i > first)) {
            point = file[i] == '.' ? i : point;
            i++;
        }
        return i == first || point == i - 1 || i - from > 13 ? -1 : i;
    }

    private boolean text(Place place, int from, int to) {
        return switch (place) {
            case TIME, KEYED -> time(from, to);
            case SOURCE -> row.source() != null;
            case FATE -> row.fate() != null;
            default -> true;
        };
    }

    /**
     * Whether it is a time as this program writes one: {@code 2026-06-03T21:33:08.120-06:00}, with or without
     * milliseconds. Day and offset are mostly those of the time before.
     */
    private boolean time(int from, int to) {
        int length = to - from;
        if (length != 25 && length != 29) {
            return false;
        }
        boolean known = timed >= 0
                && Arrays.equals(file, from, from + 11, file, timed, timed + 11)
                && Arrays.equals(file, to - 6, to, file, timedEnd - 6, timedEnd);
        if (!known && !isTime(from, to)) {
            return false;
        }
        timed = from;
        timedEnd = to;
        return two(from + 11) < 24
                && file[from + 13] == ':'
                && two(from + 14) < 60
                && file[from + 16] == ':'
                && two(from + 17) < 60
                && (length == 25 || file[from + 19] == '.' && two(from + 20) < 100 && two(from + 21) < 100);
    }

    private boolean isTime(int from, int to) {
        int zone = to - 6;
        boolean framed = file[from + 4] == '-'
                && file[from + 7] == '-'
                && file[from + 10] == 'T'
                && file[zone + 3] == ':'
                && (file[zone] == '+' || file[zone] == '-');
        try {
            LocalDateTime.of(two(from) * 100 + two(from + 2), two(from + 5), two(from + 8), 0, 0);
            ZoneOffset.ofHoursMinutes(two(zone + 1), two(zone + 4));
            return framed && two(from) < 100 && two(from + 2) < 100;
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** Two digits; a hundred where they are not. */
    private int two(int from) {
        int ten = file[from] - '0';
        int one = file[from + 1] - '0';
        return ten < 0 || ten > 9 || one < 0 || one > 9 ? 100 : ten * 10 + one;
    }
}
