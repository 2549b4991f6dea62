package screedbook.entry;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    private static final Pattern DECIMAL = Pattern.compile("[-+]?(\\d{1,12}(\\.\\d{0,9})?|\\.\\d{1,9})");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.]?(\\d{2})?\\s*([ap])?m?");
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

    /** A decimal with the digits as typed, at most 12 of them; a leading minus is always a number. */
    public static Typed<BigDecimal> decimal(String text) {
        String t = text.strip();
        if (t.isEmpty()) {
            return of(null);
        }
        if (!DECIMAL.matcher(t).matches()) {
            return not("\"" + Shown.text(t) + "\" is no number; right would be 22.31");
        }
        BigDecimal value = new BigDecimal(t.endsWith(".") ? t.substring(0, t.length() - 1) : t);
        if (value.precision() > 12) {
            return not(t + " has more than 12 digits");
        }
        return of(value);
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

    /**
     * A station: {@code 1250}, {@code 12+50}, {@code 12+50.5}, metric {@code 1+250}; {@code bk} or {@code ah} behind it
     * where an equation makes it double. One digit behind the plus is read as it stands and the tens are offered.
     */
    public static Typed<Station> station(String text, StationBase base) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return of(null);
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
    public record Clock(OffsetDateTime opening, OffsetDateTime latest, ZoneId zone) {}

    /**
     * A time of day: {@code 2132}, {@code 21:32}, {@code 9:32p}. It is the latest such instant that is not more than 15
     * minutes ahead of the clock and not before the opening. An instant that exists twice when clocks go back is chosen
     * by {@code a} (first) or {@code b} (second) behind it. Where no instant fits the shift the nearest one is given
     * and the other half of the day is offered.
     */
    public static Typed<OffsetDateTime> time(String text, Clock clock) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return of(null);
        }
        String which = "";
        if (t.matches(".*\\d\\s*[ab]") && !t.matches("\\d{1,2}(:\\d{2})?\\s*a") || t.matches("\\d{4}[ab]")) {
            which = t.substring(t.length() - 1);
            t = t.substring(0, t.length() - 1).strip();
        }
        LocalTime hour = hour(t);
        if (hour == null) {
            return not("\"" + Shown.text(text.strip()) + "\" is no time; right would be 2132, 21:32 or 9:32p");
        }
        return instant(hour, which, clock);
    }

    private static LocalTime hour(String t) {
        String padded = t.matches("\\d{3}") ? "0" + t : t;
        Matcher m = CLOCK.matcher(padded);
        if (!m.matches() || (m.group(2) == null && m.group(3) == null)) {
            return null;
        }
        int h = Integer.parseInt(m.group(1));
        int min = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
        if (m.group(3) != null) {
            if (h < 1 || h > 12) {
                return null;
            }
            h = h % 12 + (m.group(3).equals("p") ? 12 : 0);
        }
        if (h == 24 && min == 0) {
            return LocalTime.MIDNIGHT;
        }
        return h > 23 || min > 59 ? null : LocalTime.of(h, min);
    }

    private static Typed<OffsetDateTime> instant(LocalTime hour, String which, Clock clock) {
        OffsetDateTime last = clock.latest().plus(AHEAD);
        LocalDate today = last.atZoneSameInstant(clock.zone()).toLocalDate();
        List<OffsetDateTime> fits = new ArrayList<>();
        List<OffsetDateTime> others = new ArrayList<>();
        for (int back = -1; back <= 3; back++) {
            for (OffsetDateTime each : instants(today.minusDays(back), hour, clock.zone())) {
                boolean inside = !each.isAfter(last) && !each.isBefore(clock.opening());
                (inside ? fits : others).add(each);
            }
        }
        if (!fits.isEmpty()) {
            return chosen(fits, which);
        }
        if (instants(today, hour, clock.zone()).isEmpty()) {
            return not(Moment.clock(today.atTime(hour).atOffset(ZoneOffset.UTC))
                    + " does not exist on this date, clocks go forward; right would be an hour later");
        }
        return outside(hour, others, clock, last);
    }

    private static Typed<OffsetDateTime> chosen(List<OffsetDateTime> fits, String which) {
        OffsetDateTime newest =
                fits.stream().max(OffsetDateTime.timeLineOrder()).get();
        List<OffsetDateTime> same = fits.stream()
                .filter(t -> t.toLocalDateTime().equals(newest.toLocalDateTime()))
                .sorted(OffsetDateTime.timeLineOrder())
                .toList();
        if (same.size() < 2) {
            return of(newest);
        }
        if (which.isEmpty()) {
            return new Typed<>(
                    null,
                    Moment.clock(newest) + " comes twice, clocks go back; add a for the first, b for the second",
                    same);
        }
        return of(same.get(which.equals("a") ? 0 : 1));
    }

    private static List<OffsetDateTime> instants(LocalDate date, LocalTime hour, ZoneId zone) {
        ZoneRules rules = zone.getRules();
        return rules.getValidOffsets(date.atTime(hour)).stream()
                .map(offset -> OffsetDateTime.of(date, hour, offset))
                .toList();
    }

    private static Typed<OffsetDateTime> outside(
            LocalTime hour, List<OffsetDateTime> others, Clock clock, OffsetDateTime last) {
        OffsetDateTime nearest = others.stream()
                .filter(t -> !t.isAfter(last))
                .max(OffsetDateTime.timeLineOrder())
                .get();
        List<OffsetDateTime> could = new ArrayList<>();
        for (OffsetDateTime each : List.of(nearest.plusHours(12), nearest.plusHours(24))) {
            if (!each.isBefore(clock.opening()) && !each.isAfter(last)) {
                could.add(each);
            }
        }
        for (OffsetDateTime each : others) {
            if (each.isAfter(last) && each.isBefore(last.plusHours(24)) && could.isEmpty()) {
                could.add(each);
            }
        }
        return new Typed<>(nearest, "", could);
    }

    /** A word of a fixed list: in full, by its first letters, or by its number from 1. */
    public static <E> Typed<E> word(String text, List<E> choices, java.util.function.Function<E, String> name) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return of(null);
        }
        if (t.matches("\\d{1,2}")) {
            int at = Integer.parseInt(t);
            if (at >= 1 && at <= choices.size()) {
                return of(choices.get(at - 1));
            }
        }
        List<E> begin = new ArrayList<>();
        for (E choice : choices) {
            String word = name.apply(choice).toLowerCase(Locale.ROOT);
            if (word.equals(t)) {
                return of(choice);
            }
            if (word.startsWith(t)) {
                begin.add(choice);
            }
        }
        if (begin.size() == 1) {
            return of(begin.get(0));
        }
        String all = String.join(", ", choices.stream().map(name).toList());
        return new Typed<>(null, "\"" + Shown.text(text.strip()) + "\" is not in the list: " + all, begin);
    }
}
