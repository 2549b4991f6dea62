package screedbook.diary;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import screedbook.entry.Aside;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Ticket;
import screedbook.entry.Word;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.UnitSystem;

/** A ticket's line in its file, with the places of what bears on loads. */
final class TicketRow {
    private static final int PLACES = Place.values().length;
    private static final List<String> SOURCES = words(Source.values());
    private static final List<String> FATES = words(Ticket.End.values());

    private final byte[] file;
    private final int row;
    private final int n;
    private final int[] from = new int[PLACES];
    private final int[] to = new int[PLACES];
    private UnitSystem system;
    private long numberHash;

    /** What a value says. */
    enum Place {
        TIME,
        KEYED,
        WHO,
        SOURCE,
        PLANT,
        NUMBER,
        TRUCK,
        MIX,
        FATE,
        NET,
        RETURNED,
        PLANT_HEAT,
        PAVER_HEAT;

        /** Of a text by its key; null where it does not bear on loads. */
        static Place text(String key) {
            return switch (key) {
                case "plant" -> PLANT;
                case "number" -> NUMBER;
                case "truck" -> TRUCK;
                case "mix" -> MIX;
                case "fate" -> FATE;
                default -> null;
            };
        }

        /** Of a figure by its key without the unit; null where it does not bear on loads. */
        static Place figure(String key) {
            return switch (key) {
                case "net" -> NET;
                case "returned" -> RETURNED;
                case "plant" -> PLANT_HEAT;
                case "paver" -> PAVER_HEAT;
                default -> null;
            };
        }
    }

    /**
     * @param row of the line in its file, from 1
     * @param n number of the line in its book
     */
    TicketRow(byte[] file, int row, int n) {
        this.file = file;
        this.row = row;
        this.n = n;
    }

    void put(Place place, int its, int end) {
        from[place.ordinal()] = its;
        to[place.ordinal()] = end;
    }

    boolean has(Place place) {
        return to[place.ordinal()] > 0;
    }

    /** Whether all its figures are of one system of units. */
    boolean measuredIn(UnitSystem its) {
        boolean same = system == null || system == its;
        system = its;
        return same;
    }

    int n() {
        return n;
    }

    UnitSystem system() {
        return system;
    }

    /** Whether nothing but another line can make it less than a load that was placed whole. */
    boolean whole() {
        return has(Place.NET)
                && has(Place.MIX)
                && has(Place.NUMBER)
                && !has(Place.RETURNED)
                && (!has(Place.FATE) || fate() == Ticket.End.PLACED);
    }

    /** Whether its mix is written with these bytes. */
    boolean isOfMix(byte[] mix) {
        return Arrays.equals(file, from[Place.MIX.ordinal()], to[Place.MIX.ordinal()], mix, 0, mix.length);
    }

    byte[] mix() {
        return Arrays.copyOfRange(file, from[Place.MIX.ordinal()], to[Place.MIX.ordinal()]);
    }

    /** A hash of the ticket's number; two of one number have the same. */
    long numberHash() {
        if (numberHash == 0) {
            numberHash = hash(file, from[Place.NUMBER.ordinal()], to[Place.NUMBER.ordinal()]);
        }
        return numberHash;
    }

    static long hash(byte[] bytes, int from, int to) {
        long hash = to - from;
        for (int i = from; i < to; i++) {
            hash = hash * 1_000_003 + bytes[i];
        }
        return hash;
    }

    /** Adds a figure, where there is one. */
    void add(Place place, Decimals sum) {
        if (has(place)) {
            sum.add(digits(place), scale(place));
        }
    }

    private int scale(Place place) {
        int end = to[place.ordinal()];
        for (int i = end - 1; i >= from[place.ordinal()]; i--) {
            if (file[i] == '.') {
                return end - 1 - i;
            }
        }
        return 0;
    }

    private long digits(Place place) {
        long digits = 0;
        for (int i = from[place.ordinal()]; i < to[place.ordinal()]; i++) {
            digits = file[i] >= '0' ? digits * 10 + file[i] - '0' : digits;
        }
        return file[from[place.ordinal()]] == '-' ? -digits : digits;
    }

    private static List<String> words(Word[] words) {
        return Arrays.stream(words).map(Word::word).toList();
    }

    /** Null where the word is not known. */
    Source source() {
        int at = word(Place.SOURCE, SOURCES);
        return at < 0 ? null : Source.values()[at];
    }

    /** Null where nobody noted it, or the word is not known. */
    Ticket.End fate() {
        int at = has(Place.FATE) ? word(Place.FATE, FATES) : -1;
        return at < 0 ? null : Ticket.End.values()[at];
    }

    private int word(Place place, List<String> words) {
        int at = words.size() - 1;
        while (at >= 0 && !is(place, words.get(at))) {
            at--;
        }
        return at;
    }

    private boolean is(Place place, String word) {
        int start = from[place.ordinal()];
        int length = to[place.ordinal()] - start;
        for (int i = 0; i < length && i < word.length(); i++) {
            if (file[start + i] != word.charAt(i)) {
                return false;
            }
        }
        return length == word.length();
    }

    /** The line of the ticket, with what bears on loads and no more. */
    Line line(String job, ShiftId shift, String book) {
        Ticket ticket = new Ticket(
                new Ticket.Paper(
                        text(Place.PLANT),
                        null,
                        text(Place.NUMBER),
                        text(Place.TRUCK),
                        text(Place.MIX),
                        null,
                        null,
                        null,
                        null),
                new Ticket.Weights(amount(Place.NET, Measure.LOAD), null, null, null, null),
                new Ticket.Times(null, null, null),
                new Ticket.Heat(
                        amount(Place.PLANT_HEAT, Measure.TEMPERATURE),
                        amount(Place.PAVER_HEAT, Measure.TEMPERATURE),
                        null),
                new Ticket.Spot(null, null, null, null, null, null),
                new Ticket.Fate(fate(), amount(Place.RETURNED, Measure.LOAD), null, null, null, null, null));
        OffsetDateTime time = has(Place.TIME) ? Moment.of(text(Place.TIME)) : null;
        OffsetDateTime keyed = Moment.of(text(Place.KEYED));
        return new Line(
                book, row, n, job, shift, time, keyed, text(Place.WHO), source(), ticket, Aside.NONE, List.of(), "");
    }

    private String text(Place place) {
        int start = from[place.ordinal()];
        return has(place) ? new String(file, start, to[place.ordinal()] - start, StandardCharsets.UTF_8) : null;
    }

    private Amount amount(Place place, Measure measure) {
        return has(place) ? new Amount(BigDecimal.valueOf(digits(place), scale(place)), measure.unit(system)) : null;
    }
}
