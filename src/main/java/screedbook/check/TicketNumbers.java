package screedbook.check;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import screedbook.entry.Day;
import screedbook.entry.Moment;
import screedbook.entry.Number;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.tally.Laid;
import screedbook.tally.ToDate;

/** The ticket numbers that a job has already, as they stand beside the blank while another ticket is keyed. */
public final class TicketNumbers {
    /** So many numbers in a row are looked through for a free one. */
    private static final int MOST = 1000;

    private final Day day;
    private final ToDate before;
    private Map<Named, String> kept;
    private final Map<String, Long> highest = new HashMap<>();

    /** A number of a plant; an empty word stands for a plant that was not noted. */
    private record Named(String plant, String number) {}

    private TicketNumbers(Day day, ToDate before) {
        this.day = day;
        this.before = before;
    }

    /** Those of a shift and of the shifts before it; looked through when the first number is asked for. */
    public static TicketNumbers of(Day day, ToDate before) {
        return new TicketNumbers(day, before);
    }

    /** Where a number is kept already, or how far it lies behind the last one of a series of this job's own. */
    public Guide guide(Job job, Ticket partial) {
        String number = partial.paper().number();
        if (number == null || number.equals(partial.fate().reissueOf())) {
            return Guide.NOTHING;
        }
        String plant = plant(partial);
        String already = kept().get(new Named(plant, number));
        if (already != null) {
            return new Guide("kept already, " + already, "one number, one load", Verdict.LOOK_AGAIN, "", List.of());
        }
        Long last = highest.get(plant);
        boolean own = job.plants().stream().anyMatch(p -> plant.equals(p.name()) && p.series() == Job.Series.OWN);
        boolean later = own && last != null && NumberRules.isDigits(number) && Long.parseLong(number) > last + 1;
        return later
                ? new Guide(
                        "after " + last + ", " + (Long.parseLong(number) - last - 1) + " not here",
                        "the plant's own series",
                        Verdict.LOOK_AGAIN,
                        "",
                        List.of())
                : Guide.NOTHING;
    }

    /** The first number from one on, in as many digits, that is neither kept nor explained. */
    public String free(String plant, String from) {
        String number = from;
        for (int i = 0; i < MOST && kept().containsKey(new Named(plant, number)); i++) {
            String next = new BigInteger(number).add(BigInteger.ONE).toString();
            number = "0".repeat(Math.max(0, from.length() - next.length())) + next;
        }
        return number;
    }

    private Map<Named, String> kept() {
        if (kept == null) {
            kept = new HashMap<>();
            int year = day.shift().date().getYear();
            for (Laid laid : before.laid()) {
                if (laid.number() != null && laid.shift().date().getYear() == year) {
                    kept.put(
                            new Named(Objects.requireNonNullElse(laid.plant(), ""), laid.number()),
                            laid.shift().toString());
                }
            }
            day.standing(Number.class).stream()
                    .map(Standing::entry)
                    .filter(NumberRules::explained)
                    .forEach(n -> kept.put(
                            new Named(Objects.requireNonNullElse(n.plant(), ""), n.number()),
                            n.what().word().replace('-', ' ')));
            day.standing(Ticket.class).forEach(this::keep);
        }
        return kept;
    }

    private void keep(Standing<Ticket> ticket) {
        String number = ticket.entry().paper().number();
        if (number == null) {
            return;
        }
        Ticket.Weights weights = ticket.entry().weights();
        String truck = ticket.entry().paper().truck();
        kept.put(
                new Named(plant(ticket.entry()), number),
                Moment.clock(ticket.order())
                        + (truck == null ? "" : " " + truck)
                        + (weights.net() == null ? "" : " " + weights.net().text()));
        if (NumberRules.isDigits(number)) {
            highest.merge(plant(ticket.entry()), Long.valueOf(number), Math::max);
        }
    }

    private static String plant(Ticket ticket) {
        return Objects.requireNonNullElse(ticket.paper().plant(), "");
    }
}
