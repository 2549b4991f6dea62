package screedbook.entry;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as people type it, read as a value.
 *
 * @param value the value; null when the text cannot be read or the blank is empty
 * @param trouble why it cannot be read and what would be right; empty when it can
 * @param could other readings that the person may have meant, most likely first; never chosen silently
 */
public record Typed<T>(T value, String trouble, List<T> could) {
    /** How far ahead of the clock a typed time may lie: 15 minutes. */
    public static final Duration AHEAD = Duration.ofMinutes(15);

    private static final Pattern DECIMAL = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)");
    private static final Pattern FRACTION = Pattern.compile("(-?)(?:(\\d{1,3}) )?(\\d{1,2})/(2|4|8|16|32|64)");
    private static final Pattern MILES =
            Pattern.compile("(?:(?:mp|mm|mile|milepost) ?)?(-?)(\\d{1,4})(\\.\\d{1,4})? ?(bk|ah)?");
    private static final Pattern STATION = Pattern.compile("(-?)(\\d{1,6})\\+(\\d{1,3})(\\.\\d{1,3})?( ?(bk|ah))?");
    private static final Pattern PLAIN = Pattern.compile("(-?)(\\d{1,8})(\\.\\d{1,3})?( ?(bk|ah))?");

    static <T> Typed<T> of(T value) {
        return new Typed<>(value, "", List.of());
    }

    static <T> Typed<T> not(String trouble) {
        return new Typed<>(null, trouble, List.of());
    }

    /** Whether the text could be read; an empty blank can. */
    public boolean read() {
        return trouble.isEmpty();
    }

    /** A decimal with the digits as typed, at most 12 of them; a leading minus is always a number. {@code 1 3/8} is 1.375. */
    public static Typed<BigDecimal> decimal(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return of(null);
        }
        Matcher part = FRACTION.matcher(t);
        if (part.matches()) {
            return of(fraction(part));
        }
        if (!DECIMAL.matcher(t).matches()) {
            return not("\"" + Shown.text(t) + "\" is no number; right would be 22.31");
        }
        BigDecimal value = new BigDecimal(t.endsWith(".") ? t.substring(0, t.length() - 1) : t);
        if (value.precision() > 12 || value.scale() > 9) {
            return not(t + " has more than 12 digits, or more than 9 behind the point");
        }
        return of(value);
    }

    /** What a rule with inches shows: an eighth is 0.125. */
    private static BigDecimal fraction(Matcher part) {
        BigDecimal whole = part.group(2) == null ? BigDecimal.ZERO : new BigDecimal(part.group(2));
        BigDecimal value = whole.add(new BigDecimal(part.group(3)).divide(new BigDecimal(part.group(4))));
        return part.group(1).isEmpty() ? value : value.negate();
    }

    /** A whole number. */
    public static Typed<Integer> whole(String text) {
        Typed<BigDecimal> number = decimal(text);
        if (number.value() == null) {
            return new Typed<>(null, number.trouble(), List.of());
        }
        if (number.value().scale() > 0 || number.value().precision() > 9) {
            return not("\"" + text.strip() + "\" is no whole number; right would be 3");
        }
        return of(number.value().intValue());
    }

    /** A date: {@code 2026-06-03} or {@code 20260603}. */
    public static Typed<LocalDate> date(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return of(null);
        }
        String dashed = t.matches("\\d{8}") ? t.substring(0, 4) + "-" + t.substring(4, 6) + "-" + t.substring(6) : t;
        try {
            return of(LocalDate.parse(dashed));
        } catch (DateTimeException e) {
            return not("\"" + Shown.text(t) + "\" is no date; right would be 2026-06-03");
        }
    }

    /** An hour of any day: {@code 2130} or {@code 21:30}. */
    public static Typed<LocalTime> hour(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return of(null);
        }
        String digits = t.matches("\\d{3,4}") ? "0".repeat(4 - t.length()) + t : t;
        String apart = digits.matches("\\d{4}") ? digits.substring(0, 2) + ":" + digits.substring(2) : digits;
        try {
            return of(LocalTime.parse(apart.matches("\\d:\\d\\d") ? "0" + apart : apart));
        } catch (DateTimeException e) {
            return not("\"" + Shown.text(t) + "\" is no hour; right would be 21:30");
        }
    }

    /** A time zone by the name of a place in it: {@code America/Denver}. */
    public static Typed<ZoneId> zone(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return of(null);
        }
        try {
            return of(ZoneId.of(t));
        } catch (DateTimeException e) {
            return not("\"" + Shown.text(t) + "\" is no zone; right would be America/Denver");
        }
    }

    /**
     * A station: {@code 1250}, {@code 12+50}, {@code 12+50.5}, metric {@code 1+250}; {@code bk} or {@code ah} behind it
     * where an equation makes it double. One digit behind the plus is read as it stands and the tens are offered. By
     * mileposts: {@code 12.35}, {@code mp 12.35}; digits without a point are full miles, and hundredths are offered.
     */
    public static Typed<Station> station(String text, StationBase base) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return of(null);
        }
        if (base == StationBase.MILEPOSTS) {
            return milepost(t);
        }
        Matcher plus = STATION.matcher(t);
        if (plus.matches() && plus.group(3).length() <= base.digits()) {
            return plusStation(plus, base);
        }
        Matcher plain = PLAIN.matcher(t);
        if (plain.matches()) {
            return plainStation(plain, base);
        }
        String right = base.digits() == 3 ? "1+250" : "12+50.5";
        return not("\"" + Shown.text(t) + "\" is no station; right would be " + right);
    }

    private static Typed<Station> milepost(String typed) {
        Matcher m = MILES.matcher(typed);
        if (!m.matches()) {
            return not("\"" + Shown.text(typed) + "\" is no milepost; right would be 12.35");
        }
        String side = m.group(4) == null ? "" : " " + m.group(4);
        if (m.group(3) != null) {
            return of(Station.of(m.group(1) + m.group(2) + m.group(3) + side));
        }
        Station full = Station.of(m.group(1) + m.group(2) + ".0" + side);
        int point = m.group(2).length() - 2;
        return point < 1
                ? of(full)
                : new Typed<>(
                        full,
                        "",
                        List.of(Station.of(m.group(1) + m.group(2).substring(0, point) + "."
                                + m.group(2).substring(point) + side)));
    }

    private static Typed<Station> plusStation(Matcher m, StationBase base) {
        Station asTyped = made(m.group(1), m.group(2), pad(m.group(3), base, true), m.group(4), m.group(6));
        if (m.group(3).length() == base.digits()) {
            return of(asTyped);
        }
        Station tens = made(m.group(1), m.group(2), pad(m.group(3), base, false), m.group(4), m.group(6));
        return new Typed<>(asTyped, "", List.of(tens));
    }

    private static String pad(String digits, StationBase base, boolean front) {
        String zeros = "0".repeat(base.digits() - digits.length());
        return front ? zeros + digits : digits + zeros;
    }

    private static Station made(String sign, String full, String rest, String fraction, String side) {
        String behind = side == null ? "" : " " + side;
        return Station.of(sign + full + "+" + rest + (fraction == null ? "" : fraction) + behind);
    }

    private static Typed<Station> plainStation(Matcher m, StationBase base) {
        String digits = m.group(2);
        if (m.group(3) != null
                && digits.length() + base.digits() <= 8
                && m.group(3).length() == base.digits() + 1) {
            Station asPoint = made(m.group(1), digits, m.group(3).substring(1), null, m.group(5));
            Station asFeet = cut(m, base);
            return new Typed<>(asFeet, "", List.of(asPoint));
        }
        return of(cut(m, base));
    }

    private static Station cut(Matcher m, StationBase base) {
        String digits = m.group(2);
        int at = digits.length() - base.digits();
        String full = at > 0 ? digits.substring(0, at) : "0";
        String rest = at > 0 ? digits.substring(at) : pad(digits, base, true);
        return made(m.group(1), full, rest, m.group(3), m.group(5));
    }

    /**
     * What a person needs told to read an hh:mm: the shift's opening, the latest instant that may be meant (the clock,
     * or the closing of a shift long past) and the job's zone.
     */
    public record Clock(OffsetDateTime opening, OffsetDateTime latest, ZoneId zone) {
        /** The last instant that a typed time can mean. */
        OffsetDateTime last() {
            return latest.plus(AHEAD);
        }

        /** Whether an instant lies in the shift so far. */
        boolean holds(OffsetDateTime time) {
            return !time.isBefore(opening) && !time.isAfter(last());
        }
    }

    /**
     * A time of day: {@code 2132}, {@code 21:32}, {@code 9:32p}. It is the latest such instant that is not more than 15
     * minutes ahead of the clock and not before the opening. An instant that exists twice when clocks go back is chosen
     * by {@code a} (first) or {@code b} (second) behind it; one that does not exist when they go forward cannot be
     * read. Where no instant fits the shift the last one before the opening is given, and the other half of the day is
     * offered, or the next one to come where the other half does not fit either.
     */
    public static Typed<OffsetDateTime> time(String text, Clock clock) {
        return HourTyped.read(text, clock);
    }

    /** A word of a fixed list: in full, by its first letters, or by its number from 1; a space does for a dash. */
    public static <E> Typed<E> word(String text, List<E> choices, Function<E, String> name) {
        String t = plainWord(text.strip());
        if (t.isEmpty()) {
            return of(null);
        }
        List<E> begin = new ArrayList<>();
        for (E choice : choices) {
            String word = plainWord(name.apply(choice));
            if (word.equals(t)) {
                return of(choice);
            }
            if (word.startsWith(t)) {
                begin.add(choice);
            }
        }
        Optional<E> counted = counted(t, choices);
        if (counted.isPresent()) {
            return of(counted.get());
        }
        if (begin.size() == 1) {
            return of(begin.get(0));
        }
        String all = String.join(", ", choices.stream().map(name).toList());
        return new Typed<>(null, "\"" + Shown.text(text.strip()) + "\" is not in the list: " + all, begin);
    }

    private static String plainWord(String text) {
        return text.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private static <E> Optional<E> counted(String text, List<E> choices) {
        int at = text.matches("\\d{1,2}") ? Integer.parseInt(text) : 0;
        return at >= 1 && at <= choices.size() ? Optional.of(choices.get(at - 1)) : Optional.empty();
    }
}
