package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.calc.SpreadRate;
import screedbook.calc.Strip;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Ticket;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * A yield check worked out: what some loads came to over what was measured.
 *
 * @param loads that are in it
 * @param weight what was laid of them, less waste, as the tickets say; else as it was keyed
 * @param rate or why there is none
 * @param target empty where none is planned, or the thickness varies
 * @param thickness what the rate is worth on the average; never to be judged against a lift's limit
 * @param without tickets between the first and the last that are not in it, and why
 * @param put the steps
 */
public record Yielded(
        int loads,
        Reckoned weight,
        Reckoned area,
        Reckoned rate,
        Optional<Amount> target,
        Optional<Amount> percent,
        Optional<Amount> thickness,
        List<String> without,
        List<Ref> entries,
        List<String> put) {
    /**
     * One check.
     *
     * @param loads of the shift, in the order in which they were discharged
     */
    public static Yielded of(Yield check, List<Load> loads, Job job) {
        return new Checking(check, loads, job).worked();
    }

    /** One check that is being keyed. */
    public static Yielded of(Yield check, Day day, Job job) {
        return of(check, Loads.of(day, Measure.LOAD.unit(job.system())).loads(), job);
    }

    /** A check being worked out. */
    private static final class Checking {
        private final Yield check;
        private final List<Load> loads;
        private final Job job;
        private final List<String> put = new ArrayList<>();
        private final List<String> without = new ArrayList<>();
        private final Set<Ref> entries = new LinkedHashSet<>();
        private int counted;
        private String mix;

        Checking(Yield check, List<Load> loads, Job job) {
            this.check = check;
            this.loads = loads;
            this.job = job;
        }

        Yielded worked() {
            Reckoned weight = weight();
            Reckoned area = area();
            Reckoned rate = weight.then(w -> area.then(a -> SpreadRate.of(w, a)
                    .map(Reckoned::of)
                    .orElse(Reckoned.not("no area: " + a.shown(1).text()))));
            Target target = Target.of(job, check.pull(), check.lift(), mix);
            put.addAll(target.put());
            rate.seen().ifPresent(r -> put.add("rate " + r.shown(1).text()));
            return new Yielded(
                    counted,
                    weight,
                    area,
                    rate,
                    target.rate(),
                    target.percent(rate.seen()),
                    target.thickness(rate.seen()),
                    List.copyOf(without),
                    List.copyOf(entries),
                    List.copyOf(put));
        }

        private String unknown(boolean first) {
            String number = first ? check.firstTicket() : check.lastTicket();
            return (first ? "first" : "last") + " ticket "
                    + (number == null ? "not noted" : number + " is not in this shift");
        }

        /** By the tickets from the first to the last; else as keyed. */
        private Reckoned weight() {
            int from = at(check.firstTicket());
            int to = at(check.lastTicket());
            boolean named = check.firstTicket() != null || check.lastTicket() != null;
            if (named && from >= 0 && to >= 0) {
                return tickets(loads.subList(Math.min(from, to), Math.max(from, to) + 1));
            }
            String unknown = named ? unknown(from < 0) : "neither both tickets nor tons are noted";
            if (named) {
                put.add(unknown);
            }
            counted = check.loads() == null ? 0 : check.loads();
            if (check.tons() == null) {
                return Reckoned.not(unknown);
            }
            put.add("tons as keyed " + check.tons().text());
            return check.tons().unit() == Measure.LOAD.unit(job.system())
                    ? Reckoned.of(check.tons())
                    : Reckoned.not("tons in " + check.tons().unit().symbol());
        }

        private int at(String number) {
            for (int i = 0; i < loads.size(); i++) {
                Ticket.Paper paper = loads.get(i).ticket().entry().paper();
                if (number != null
                        && number.equals(paper.number())
                        && !loads.get(i).left().startsWith(Loads.AGAIN)) {
                    return i;
                }
            }
            return -1;
        }

        private Reckoned tickets(List<Load> between) {
            BigDecimal sum = BigDecimal.ZERO;
            for (Load load : between) {
                BigDecimal here = BigDecimal.ZERO;
                boolean any = false;
                for (Share share : load.shares()) {
                    if (of(share)) {
                        here = here.add(share.weight().value());
                        entries.add(share.of());
                        any = true;
                    }
                }
                if (any) {
                    counted++;
                    mix = mix == null ? load.ticket().entry().paper().mix() : mix;
                    put.add(load.put() + " " + here.toPlainString() + less(load, here));
                    sum = sum.add(here);
                } else {
                    without.add(load.put() + ": "
                            + (load.laid()
                                    ? "laid elsewhere"
                                    : load.fate().word().replace('-', ' ')));
                }
            }
            without.forEach(w -> put.add("not in it: " + w));
            Amount weight = new Amount(sum, Measure.LOAD.unit(job.system()));
            put.add(counted + (counted == 1 ? " load, " : " loads, ") + weight.text());
            return counted == 0 ? Reckoned.not("none of these loads was laid there") : Reckoned.of(weight);
        }

        /** Why less than the ticket's net is in it. */
        private static String less(Load load, BigDecimal here) {
            BigDecimal net = load.received().value();
            return here.compareTo(net) == 0
                    ? ""
                    : " of " + net.toPlainString() + " (less waste, what was not placed, and shares of other pulls)";
        }

        /** What is not named may be any. */
        private boolean of(Share share) {
            return (check.pull() == null || share.pull() == null || check.pull().equals(share.pull()))
                    && (check.lift() == null || share.lift() == null || Objects.equals(check.lift(), share.lift()));
        }

        private Reckoned area() {
            if (check.area() != null) {
                put.add("area as measured " + check.area().text());
                return Reckoned.of(check.area());
            }
            if (check.from() == null || check.to() == null) {
                return Reckoned.not("one end is not noted");
            }
            Amount length = Road.of(job).length(check.from(), check.to());
            Optional<Amount> planned = job.pull(check.pull(), check.lift()).map(Job.Pull::width);
            Optional<Amount> width = Optional.ofNullable(check.width()).or(() -> planned);
            put.add(check.from() + " to " + check.to() + " is " + length.text());
            if (length.value().signum() == 0) {
                return Reckoned.not("no length, from and to are one place");
            }
            if (width.isEmpty()) {
                return Reckoned.not("the width is not known");
            }
            Amount area = Strip.area(width.get(), length);
            put.add("width " + (check.width() == null ? "of the pull as planned " : "")
                    + width.get().text());
            put.add("area " + area.shown(1).text());
            return Reckoned.of(area);
        }
    }

    /** {@code without ticket 48209, rejected}; empty where all are in it. */
    public String withoutText() {
        return without.isEmpty() ? "" : "without " + without.stream().collect(Collectors.joining(", "));
    }
}
