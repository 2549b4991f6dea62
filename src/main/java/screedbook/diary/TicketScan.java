package screedbook.diary;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.entry.Aside;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * A ticket's line read off its bytes, as far as loads, weights and temperatures go: only for lines that a chain has
 * proved to be of this program's own writing. Whatever is out of the ordinary gives nothing, and the line is read in
 * full.
 */
final class TicketScan {
    private final byte[] file;
    private final int end;
    private final Same same;
    private int at;

    private String plant;
    private String number;
    private String truck;
    private String mix;
    private String reissueOf;
    private Amount net;
    private Amount returned;
    private Amount plantHeat;
    private Amount paverHeat;
    private Ticket.End fate;
    private OffsetDateTime time;
    private OffsetDateTime keyed;
    private String who;
    private Source source;

    private TicketScan(byte[] file, int from, int end, Same same) {
        this.same = same;
        this.file = file;
        this.at = from;
        this.end = end;
    }

    /** What is the same in every line of a book, and texts and offsets that come again and again. */
    record Same(String job, ShiftId shift, String book, Texts texts, Offsets offsets) {}

    /**
     * The line of a ticket, without its text and without what bears on no load; null when it has to be read in full.
     *
     * @param from where the key {@code time}, or the one behind {@code book}, begins
     * @param end behind the closing brace
     */
    static Line line(byte[] file, int from, int end, Same same, int row, int n) {
        TicketScan scan = new TicketScan(file, from, end, same);
        return scan.read() ? scan.line(row, n) : null;
    }

    private Line line(int row, int n) {
        Ticket ticket = new Ticket(
                new Ticket.Paper(plant, null, number, truck, mix, null, null, null, null),
                new Ticket.Weights(net, null, null, null, null),
                new Ticket.Times(null, null, null),
                new Ticket.Heat(plantHeat, paverHeat, null),
                new Ticket.Spot(null, null, null, null, null, null),
                new Ticket.Fate(fate, returned, null, null, null, null, reissueOf));
        return new Line(
                same.book(),
                row,
                n,
                same.job(),
                same.shift(),
                time,
                keyed,
                who,
                source,
                ticket,
                Aside.NONE,
                List.of(),
                "");
    }

    private boolean read() {
        while (true) {
            if (at >= end || file[at] != '"') {
                return false;
            }
            int key = at + 1;
            int keyEnd = close(key);
            if (keyEnd < 0 || keyEnd + 1 >= end || file[keyEnd + 1] != ':') {
                return false;
            }
            at = keyEnd + 2;
            if (!value(key, keyEnd)) {
                return false;
            }
            if (at == end - 1) {
                return keyed != null && who != null && source != null;
            }
            if (at >= end || file[at] != ',') {
                return false;
            }
            at++;
        }
    }

    /** The end of a text without escapes; -1 where it has some or does not end. */
    private int close(int from) {
        for (int i = from; i < end; i++) {
            byte b = file[i];
            if (b == '"') {
                return i;
            }
            if (b == '\\') {
                return -1;
            }
        }
        return -1;
    }

    private boolean value(int key, int keyEnd) {
        if (file[at] == '"') {
            int from = at + 1;
            int to = close(from);
            at = to + 1;
            return to >= 0 && text(key, keyEnd, from, to);
        }
        int from = at;
        while (at < end && file[at] != ',' && file[at] != '}') {
            byte b = file[at];
            if ((b < '0' || b > '9') && b != '.' && b != '-') {
                return false;
            }
            at++;
        }
        return at > from && number(key, keyEnd, from, at);
    }

    private boolean text(int key, int keyEnd, int from, int to) {
        switch (word(key, keyEnd)) {
            case "time" -> {
                time = time(from, to);
                return time != null;
            }
            case "keyed" -> {
                keyed = time(from, to);
                return keyed != null;
            }
            case "who" -> who = same.texts().of(file, from, to);
            case "source" -> {
                source = source(text(from, to));
                return source != null;
            }
            case "plant" -> plant = same.texts().of(file, from, to);
            case "number" -> number = text(from, to);
            case "truck" -> truck = same.texts().of(file, from, to);
            case "mix" -> mix = same.texts().of(file, from, to);
            case "fate" -> {
                fate = fate(text(from, to));
                return fate != null;
            }
            case "reissue_of" -> reissueOf = text(from, to);
            case "silo",
                    "kept",
                    "weighed_by",
                    "received_by",
                    "cover",
                    "loaded",
                    "arrived",
                    "discharged",
                    "instrument",
                    "from_sta",
                    "to_sta",
                    "pull",
                    "paver",
                    "place",
                    "basis",
                    "reason",
                    "decided_by",
                    "told_to",
                    "prev" -> {
                return true;
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean number(int key, int keyEnd, int from, int to) {
        switch (word(key, keyEnd)) {
            case "net_ston" -> net = amount(from, to, Unit.SHORT_TON);
            case "net_t" -> net = amount(from, to, Unit.TONNE);
            case "returned_ston" -> returned = amount(from, to, Unit.SHORT_TON);
            case "returned_t" -> returned = amount(from, to, Unit.TONNE);
            case "plant_degF" -> plantHeat = amount(from, to, Unit.DEG_F);
            case "plant_degC" -> plantHeat = amount(from, to, Unit.DEG_C);
            case "paver_degF" -> paverHeat = amount(from, to, Unit.DEG_F);
            case "paver_degC" -> paverHeat = amount(from, to, Unit.DEG_C);
            case "gross_lb", "gross_kg", "tare_lb", "tare_kg", "batches", "batch_lb", "batch_kg", "lift" -> {
                return true;
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private String text(int from, int to) {
        return new String(file, from, to - from, StandardCharsets.UTF_8);
    }

    private String word(int from, int to) {
        return Names.of(file, from, to);
    }

    private static Source source(String word) {
        return word.equals("live") ? Source.LIVE : word.equals("notes") ? Source.NOTES : null;
    }

    private static Ticket.End fate(String word) {
        for (Ticket.End each : Ticket.End.values()) {
            if (each.word().equals(word)) {
                return each;
            }
        }
        return null;
    }

    /** A decimal as this program writes one: at most 12 digits, no exponent. */
    private Amount amount(int from, int to, Unit unit) {
        long digits = 0;
        int scale = -1;
        for (int i = from; i < to; i++) {
            byte b = file[i];
            if (b == '-' && i > from || b == '.' && scale >= 0 || to - from > 14) {
                return new Amount(new BigDecimal(text(from, to)), unit);
            }
            scale += scale >= 0 ? 1 : 0;
            if (b == '.') {
                scale = 0;
            } else if (b != '-') {
                digits = digits * 10 + b - '0';
            }
        }
        return new Amount(BigDecimal.valueOf(file[from] == '-' ? -digits : digits, Math.max(0, scale)), unit);
    }

    /** {@code 2026-06-03T21:33:08.120-06:00}, with or without milliseconds; null when it is written otherwise. */
    private OffsetDateTime time(int from, int to) {
        int length = to - from;
        if (length != 25 && length != 29) {
            return null;
        }
        int zone = to - 6;
        try {
            int nano = length == 29 ? two(from + 20) * 10_000_000 + (file[from + 22] - '0') * 1_000_000 : 0;
            LocalDateTime local = LocalDateTime.of(
                    two(from) * 100 + two(from + 2),
                    two(from + 5),
                    two(from + 8),
                    two(from + 11),
                    two(from + 14),
                    two(from + 17),
                    nano);
            int minutes = two(zone + 1) * 60 + two(zone + 4);
            if (file[zone] != '+' && file[zone] != '-' || file[from + 10] != 'T') {
                return null;
            }
            return OffsetDateTime.of(local, same.offsets().of((file[zone] == '-' ? -60 : 60) * minutes));
        } catch (DateTimeException e) {
            return null;
        }
    }

    private int two(int from) {
        return (file[from] - '0') * 10 + file[from + 1] - '0';
    }
}
