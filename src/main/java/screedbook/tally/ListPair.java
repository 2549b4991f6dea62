package screedbook.tally;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import screedbook.entry.Moment;
import screedbook.entry.PlantRows;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.unit.Amount;

/**
 * A row of a plant's list and the ticket here that it speaks of.
 *
 * @param apart what the two say differently, each in words; empty when they agree
 * @param byNumber whether the two bear one number; else they are offered as one for truck, weight and hour
 */
public record ListPair(PlantRows.Row row, Load load, List<Apart> apart, boolean byNumber) {
    private static final int MINUTES_OF_A_DAY = 24 * 60;

    /** A blank in which list and ticket differ, in words: {@code net 21.96 T here, 21.69 T in the list}. */
    public record Apart(What what, String said) {}

    /** What may differ. */
    public enum What {
        NUMBER,
        NET,
        TRUCK,
        LOADED,
        MIX,
        FATE
    }

    public Standing<Ticket> ticket() {
        return load.ticket();
    }

    static ListPair of(PlantRows.Row row, Load load, ListMixes mixes, long clock, boolean byNumber) {
        List<Apart> apart = new ArrayList<>();
        Ticket ticket = load.ticket().entry();
        if (!byNumber) {
            String mine = ticket.paper().number() == null
                    ? "no number noted"
                    : ticket.paper().number();
            apart.add(new Apart(What.NUMBER, "number " + mine + " here, " + row.number() + " in the list"));
        }
        boolean weighed = load.came() && row.net() != null && ticket.weights().net() != null;
        if (weighed && !sameNet(row.net(), ticket.weights().net())) {
            Amount net = ticket.weights().net();
            apart.add(new Apart(What.NET, "net " + net.text() + " here, " + told(row.net(), net) + " in the list"));
        }
        if (row.truck() != null
                && ticket.paper().truck() != null
                && !sameTruck(row.truck(), ticket.paper().truck())) {
            apart.add(new Apart(
                    What.TRUCK, "truck " + ticket.paper().truck() + " here, " + row.truck() + " in the list"));
        }
        minutes(row, ticket)
                .filter(m -> Math.abs(m - clock) > 1)
                .ifPresent(m -> apart.add(new Apart(
                        What.LOADED,
                        "loaded " + Moment.clock(ticket.times().loaded()) + " here, " + row.hour() + " in the list"
                                + (clock == 0 ? "" : ", whose clock differs by " + clock + " min"))));
        mixes.other(row, ticket).ifPresent(said -> apart.add(new Apart(What.MIX, said)));
        if (!load.came() && row.net() != null && row.net().value().signum() > 0) {
            String mine = load.again() ? load.left() : load.fate().word().replace('-', ' ') + " here";
            apart.add(new Apart(What.FATE, mine + ", " + row.net().text() + " in the list"));
        }
        return new ListPair(row, load, List.copyOf(apart), byNumber);
    }

    private static String told(Amount theirs, Amount ours) {
        return theirs.unit() == ours.unit()
                ? theirs.text()
                : theirs.text() + " ("
                        + theirs.to(ours.unit())
                                .shown(Math.max(2, ours.value().scale()))
                                .text() + ")";
    }

    /** Digit for digit in one unit; across units within a step of the last digit that the ticket prints. */
    static boolean sameNet(Amount theirs, Amount ours) {
        if (theirs.unit() == ours.unit()) {
            return theirs.compareTo(ours) == 0;
        }
        BigDecimal step = BigDecimal.ONE.movePointLeft(Math.max(0, ours.value().scale()));
        return theirs.to(ours.unit()).value().subtract(ours.value()).abs().compareTo(step) < 0;
    }

    /** {@code T104}, {@code t-104}, {@code 0104} and {@code 104} are one truck; {@code A104} and {@code B104} are two. */
    public static boolean sameTruck(String theirs, String ours) {
        String a = bare(theirs);
        String b = bare(ours);
        return a.equals(b) || (digits(a) && a.equals(behind(b))) || (digits(b) && b.equals(behind(a)));
    }

    private static String bare(String truck) {
        return truck.toUpperCase(Locale.ROOT).replaceAll("[\\s._#-]", "").replaceFirst("^0+(?=.)", "");
    }

    private static boolean digits(String text) {
        return text.matches("\\d+");
    }

    /** The digits at the end of a truck's name. */
    private static String behind(String truck) {
        return truck.replaceFirst("^\\D+", "").replaceFirst("^0+(?=.)", "");
    }

    /** A number without the zeros before it. */
    static String bareNumber(String number) {
        return number.strip().toUpperCase(Locale.ROOT).replaceFirst("^0+(?=.)", "");
    }

    /** Whether a number with unread digits, each a ?, may be this one. */
    static boolean mayBe(String unread, String number) {
        StringBuilder form = new StringBuilder();
        for (char c : unread.strip().toUpperCase(Locale.ROOT).toCharArray()) {
            form.append(c == '?' ? "." : Pattern.quote(String.valueOf(c)));
        }
        return number.strip().toUpperCase(Locale.ROOT).matches(form.toString());
    }

    /** Minutes from the ticket's loading to the list's, by the plant's own clock; empty where either is not said. */
    static Optional<Long> minutes(PlantRows.Row row, Ticket ticket) {
        OffsetDateTime loaded = ticket.times().loaded();
        if (row.hour() == null || loaded == null) {
            return Optional.empty();
        }
        if (row.date() != null) {
            return Optional.of(Duration.between(
                            loaded.toLocalDateTime().withSecond(0), row.date().atTime(row.hour()))
                    .toMinutes());
        }
        LocalTime ours = loaded.toLocalTime();
        long by = Duration.between(ours.withSecond(0), row.hour()).toMinutes();
        return Optional.of(
                by > MINUTES_OF_A_DAY / 2
                        ? by - MINUTES_OF_A_DAY
                        : by < -MINUTES_OF_A_DAY / 2 ? by + MINUTES_OF_A_DAY : by);
    }
}
