package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import screedbook.entry.Number;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.spec.Demand;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Laid;
import screedbook.tally.Load;

/** Rules about ticket numbers, by the series of their plant. */
final class NumberRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "number-repeated",
                    Sort.DOES_NOT_ADD_UP,
                    "A plant's ticket number stands for one load.",
                    NumberRules::repeated),
            new Rule(
                    "number-in-earlier-shift",
                    Sort.DOES_NOT_ADD_UP,
                    "A load does not bear the number of one that an earlier shift of the year placed.",
                    NumberRules::earlier),
            new Rule(
                    "number-missing",
                    Sort.MISSING,
                    "Each number of a plant's own series is here or explained.",
                    NumberRules::missing),
            new Rule(
                    "number-out-of-order",
                    Sort.LOOK_AGAIN,
                    "In a plant's own series a load that was loaded later has the higher number.",
                    NumberRules::outOfOrder),
            new Rule("number-not-noted", Sort.MISSING, "A load has its ticket with a number.", NumberRules::notNoted),
            new Rule(
                    "number-not-read",
                    Sort.LOOK_AGAIN,
                    "Every digit of a ticket number is read.",
                    NumberRules::notRead),
            new Rule(
                    "issued-again",
                    Sort.LOOK_AGAIN,
                    "The ticket in whose place another was issued is here.",
                    NumberRules::issuedAgain));

    private static final Pattern DIGITS = Pattern.compile("\\d{1,18}");

    private NumberRules() {}

    static boolean isDigits(String number) {
        return DIGITS.matcher(number).matches();
    }

    private static String plant(Ticket ticket) {
        return ticket.paper().plant() == null ? "" : ticket.paper().plant();
    }

    private static String plantNamed(String plant) {
        return plant.isEmpty() ? "the plant" : "plant " + plant;
    }

    /** A number of a plant. */
    private record Named(String plant, String number) {}

    private static Map<Named, List<Standing<Ticket>>> byNumber(Look look) {
        Map<Named, List<Standing<Ticket>>> all = new LinkedHashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            String number = t.entry().paper().number();
            if (number != null && !number.contains("?")) {
                all.computeIfAbsent(new Named(plant(t.entry()), number), n -> new ArrayList<>())
                        .add(t);
            }
        }
        return all;
    }

    private static List<Mark> repeated(Look look) {
        List<Mark> marks = new ArrayList<>();
        byNumber(look).forEach((named, tickets) -> {
            List<Standing<Ticket>> rest = tickets.stream()
                    .filter(t -> !named.number().equals(t.entry().fate().reissueOf()))
                    .toList();
            if (rest.size() > 1) {
                marks.add(new Mark(
                        lastFirst(rest),
                        "number " + named.number() + " of " + plantNamed(named.plant()) + " stands at "
                                + String.join(
                                        " and ",
                                        rest.stream()
                                                .map(t -> t.ref().toString())
                                                .toList())
                                + (alike(rest) ? ", with the same truck and net" : ", with other figures"),
                        "one number, one load",
                        "job, " + plantNamed(named.plant()),
                        "another number, another plant, or instead of " + named.number()));
            }
        });
        return marks;
    }

    /** A plant may begin its numbers anew with the year, so a shift of another year says nothing. */
    private static List<Mark> earlier(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<Named, List<Standing<Ticket>>> here = byNumber(look);
        int year = look.day().shift().date().getYear();
        for (Laid laid : look.totals().map(t -> t.before().laid()).orElse(List.of())) {
            List<Standing<Ticket>> again = laid.number() == null
                            || laid.shift().date().getYear() != year
                    ? List.of()
                    : here.getOrDefault(new Named(laid.plant() == null ? "" : laid.plant(), laid.number()), List.of());
            again.stream()
                    .filter(t -> Load.laid(t.entry()))
                    .filter(t -> !laid.number().equals(t.entry().fate().reissueOf()))
                    .forEach(t -> marks.add(new Mark(
                            t.ref(),
                            "number " + laid.number() + " of " + plantNamed(plant(t.entry())) + " was placed in "
                                    + laid.shift() + " too, at " + laid.ticket(),
                            "one number, one load",
                            "job, " + plantNamed(plant(t.entry())),
                            "another number, another plant, or instead of " + laid.number())));
        }
        return marks;
    }

    private static List<Ref> lastFirst(List<Standing<Ticket>> tickets) {
        List<Ref> refs = new ArrayList<>(Look.refs(tickets));
        Collections.reverse(refs);
        return refs;
    }

    private static boolean alike(List<Standing<Ticket>> tickets) {
        Ticket first = tickets.get(0).entry();
        return tickets.stream()
                .map(Standing::entry)
                .allMatch(t -> Objects.equals(t.paper().truck(), first.paper().truck())
                        && Objects.equals(t.weights().net(), first.weights().net()));
    }

    /** The numbers of each plant that counts for this job alone, where they are plain digits, with their loads. */
    private static Map<String, TreeMap<Long, Standing<Ticket>>> ownSeries(Look look) {
        Map<String, TreeMap<Long, Standing<Ticket>>> series = new LinkedHashMap<>();
        for (Standing<Ticket> t : look.tickets()) {
            String number = t.entry().paper().number();
            boolean own = number != null
                    && look.plant(t).map(p -> p.series() == Job.Series.OWN).orElse(false);
            if (own && DIGITS.matcher(number).matches()) {
                series.computeIfAbsent(plant(t.entry()), p -> new TreeMap<>()).putIfAbsent(Long.valueOf(number), t);
            }
        }
        return series;
    }

    private static List<Mark> missing(Look look) {
        Map<Named, Number> said = new HashMap<>();
        for (Standing<Number> n : look.day().standing(Number.class)) {
            String plant = n.entry().plant() == null ? "" : n.entry().plant();
            said.put(new Named(plant, digits(n.entry().number())), n.entry());
        }
        List<Mark> marks = new ArrayList<>();
        ownSeries(look).forEach((plant, numbers) -> {
            Long last = null;
            for (Map.Entry<Long, Standing<Ticket>> each : numbers.entrySet()) {
                if (last != null) {
                    marks.addAll(gap(plant, last, each.getKey(), each.getValue(), said));
                }
                last = each.getKey();
            }
        });
        return marks;
    }

    private static String digits(String number) {
        return number != null && DIGITS.matcher(number).matches()
                ? Long.valueOf(number).toString()
                : String.valueOf(number);
    }

    /** Longer gaps are told as a whole: nobody explains thousands of numbers one by one. */
    private static final long ONE_BY_ONE = Marks.asked(SpecSheet.usual(), Demand.TOLD_AS_A_WHOLE, Situation.UNKNOWN)
            .map(asked -> asked.count().longValueExact())
            .orElse(Long.MAX_VALUE);

    private static List<Mark> gap(String plant, long last, long next, Standing<Ticket> at, Map<Named, Number> said) {
        long first = last + 1;
        long size = next - first;
        if (size > ONE_BY_ONE) {
            return List.of(mark(plant, last, next, at, first + " to " + (next - 1), size, ""));
        }
        List<Mark> marks = new ArrayList<>();
        long from = first;
        for (long n = first; n <= next; n++) {
            boolean open = n < next && open(said.get(new Named(plant, Long.toString(n))));
            if (!open) {
                if (n > from) {
                    String which = n - 1 == from ? Long.toString(from) : from + " to " + (n - 1);
                    marks.add(mark(plant, last, next, at, which, n - from, word(said, plant, from)));
                }
                from = n + 1;
            }
        }
        return marks;
    }

    /** Whether somebody said what became of a number, so that no load is missed. */
    static boolean explained(Number said) {
        return !open(said);
    }

    private static boolean open(Number said) {
        return said == null
                || said.what() == null
                || said.what() == Number.What.NOT_KNOWN
                || said.what() == Number.What.STILL_COMING;
    }

    private static String word(Map<Named, Number> said, String plant, long from) {
        return Optional.ofNullable(said.get(new Named(plant, Long.toString(from))))
                .map(Number::what)
                .map(w -> ", said to be " + w.word().replace('-', ' '))
                .orElse("");
    }

    private static Mark mark(
            String plant, long last, long next, Standing<Ticket> at, String which, long count, String said) {
        return new Mark(
                at.ref(),
                "after " + last + " comes " + next + " of " + plantNamed(plant) + "; not here: " + which + said,
                "each number of the plant's own series is here or explained",
                "job, " + plantNamed(plant) + " has a series of its own",
                (count == 1 ? "a ticket " + which : count + " tickets")
                        + ", or an entry that says what became of the number");
    }

    private static List<Mark> outOfOrder(Look look) {
        List<Mark> marks = new ArrayList<>();
        ownSeries(look).forEach((plant, numbers) -> {
            Standing<Ticket> newest = null;
            for (Standing<Ticket> t : numbers.values()) {
                OffsetDateTime loaded = t.entry().times().loaded();
                if (loaded == null) {
                    continue;
                }
                if (newest != null
                        && loaded.toInstant()
                                .isBefore(newest.entry().times().loaded().toInstant())) {
                    marks.add(new Mark(
                            List.of(t.ref(), newest.ref()),
                            Look.name(t) + " loaded " + Look.clock(loaded) + ", " + Look.name(newest) + " loaded "
                                    + Look.clock(newest.entry().times().loaded()),
                            "a load that was loaded later has the higher number",
                            "job, " + plantNamed(plant) + " has a series of its own",
                            "loaded " + Look.clock(newest.entry().times().loaded()) + " or later"));
                } else {
                    newest = t;
                }
            }
        });
        return marks;
    }

    private static List<Mark> notNoted(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Paper paper = t.entry().paper();
            if (paper.kept() == Ticket.Kept.LOST || paper.number() == null) {
                String truck = paper.truck() == null ? "a load" : "truck " + paper.truck();
                String number = paper.number() == null ? ", no number noted" : ", number " + paper.number();
                marks.add(new Mark(
                        t.ref(),
                        truck + (paper.kept() == Ticket.Kept.LOST ? ": ticket lost" : "") + number,
                        "each load has its ticket",
                        "common practice",
                        "the plant's copy of the ticket, amended here"));
            }
        }
        return marks;
    }

    private static List<Mark> notRead(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            String number = t.entry().paper().number();
            if (number != null && number.contains("?")) {
                marks.add(new Mark(
                        t.ref(),
                        "ticket number read as " + number,
                        "every digit is read",
                        "common practice",
                        "a number without ?"));
            }
        }
        return marks;
    }

    private static List<Mark> issuedAgain(Look look) {
        Map<Named, List<Standing<Ticket>>> all = byNumber(look);
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            String old = t.entry().fate().reissueOf();
            if (old != null && !all.containsKey(new Named(plant(t.entry()), old))) {
                marks.add(new Mark(
                        t.ref(),
                        Look.name(t) + " is instead of " + old + ", which is not in this shift",
                        "both tickets are kept; one counts",
                        "common practice",
                        "ticket " + old + " in this shift"));
            }
        }
        return marks;
    }
}
