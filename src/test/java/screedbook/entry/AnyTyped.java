package screedbook.entry;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;

/** What people type into blanks, fed with any text: a value that reads back as itself, or a sentence. */
public final class AnyTyped {
    private static final Typed.Clock CLOCK = new Typed.Clock(
            OffsetDateTime.parse("2026-10-31T19:00:00-06:00"),
            OffsetDateTime.parse("2026-11-01T03:30:00-07:00"),
            ZoneId.of("America/Denver"));

    private AnyTyped() {}

    /** The first byte chooses the length between stations; the others are the text. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        if (bytes.length == 0) {
            return;
        }
        StationBase base = StationBase.values()[(bytes[0] & 0xFF) % StationBase.values().length];
        String text = new String(Arrays.copyOfRange(bytes, 1, bytes.length), StandardCharsets.UTF_8);
        Typed<Station> station = Typed.station(text, base);
        told(station);
        if (station.value() != null) {
            same(Typed.station(station.value().text(), base).value(), station.value());
            Station.of(station.value().text());
        }
        Typed<OffsetDateTime> time = Typed.time(text, CLOCK);
        told(time);
        Typed<BigDecimal> decimal = Typed.decimal(text);
        told(decimal);
        if (decimal.value() != null) {
            same(Typed.decimal(decimal.value().toPlainString()).value(), decimal.value());
        }
        Typed<LocalDate> date = Typed.date(text);
        told(date);
        if (date.value() != null) {
            same(Typed.date(date.value().toString()).value(), date.value());
        }
        told(Typed.whole(text));
        told(Typed.hour(text));
        told(Typed.zone(text));
        told(Typed.word(text, List.of("clear", "few", "overcast"), word -> word));
    }

    private static void told(Typed<?> typed) {
        if (!Shown.text(typed.trouble()).equals(typed.trouble())) {
            throw new AssertionError("what is said has a hidden character in it");
        }
    }

    private static void same(Object again, Object value) {
        if (!value.equals(again)) {
            throw new AssertionError("read back " + value + " is " + again);
        }
    }
}
