package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import screedbook.entry.Moment;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The sections that count loads and weights. */
final class TonsSections {
    private static final String TICKETS = "the tickets as printed, read from the entries named";
    private static final Map<Tons.By, String> WORDS = Map.of(
            Tons.By.SHIFT, "shift",
            Tons.By.MIX, "mix",
            Tons.By.PULL, "pull",
            Tons.By.LIFT, "lift",
            Tons.By.PAY_ITEM, "pay-item",
            Tons.By.FATE, "fate");

    private final Job job;

    TonsSections(Job job) {
        this.job = job;
    }

    /** Loads and tons of the shift and by all that loads have in common. */
    List<Section> of(List<Tons> tons) {
        return List.of(
                section(tons, "Loads and tons", Tons.By.SHIFT),
                section(tons, "By mix", Tons.By.MIX),
                section(tons, "By pull", Tons.By.PULL),
                section(tons, "By lift", Tons.By.LIFT),
                section(tons, "By fate", Tons.By.FATE));
    }

    private Section section(List<Tons> tons, String heading, Tons.By by) {
        Figures figures = new Figures();
        for (Tons each : tons) {
            if (each.by() == by) {
                add(figures, each);
            }
        }
        return figures.section("tons-by-" + WORDS.get(by), heading);
    }

    private void add(Figures figures, Tons tons) {
        String tail = tons.by() == Tons.By.SHIFT ? "" : "." + WORDS.get(tons.by()) + "." + tons.of();
        String of = tons.of().isEmpty() ? "" : tons.of() + " ";
        String counted = tons.parts() ? "loads and parts" : "loads";
        figures.count("loads" + tail, of + counted, tons.loads(), working(tons, counted + " counted one by one"));
        switch (tons.by()) {
            case SHIFT, MIX -> whole(figures, tons, tail, of);
            case FATE -> weight(figures, "received-tons" + tail, of + "received", tons.received(), tons, "sum of net");
            default ->
                weight(figures, "laid-tons" + tail, of + "laid", tons.pay(), tons, "sum of the shares laid there");
        }
        if (tons.by() != Tons.By.FATE) {
            time(figures, "first-load" + tail, of + "first load", tons.first(), tons);
            time(figures, "last-load" + tail, of + "last load", tons.last(), tons);
        }
        tons.perHour().ifPresent(rate -> perHour(figures, tail, of, tons, rate));
    }

    private void whole(Figures figures, Tons tons, String tail, String of) {
        weight(figures, "received-tons" + tail, of + "received", tons.received(), tons, "sum of net as printed");
        weight(
                figures,
                "placed-tons" + tail,
                of + "placed",
                tons.placed(),
                tons,
                "sum of net less what was not placed; a load rejected or thrown away whole is 0");
        weight(
                figures,
                "pay-tons" + tail,
                of + "for pay as kept here",
                tons.pay(),
                tons,
                "placed less waste; the pay office decides");
    }

    private static void weight(Figures figures, String id, String label, Amount amount, Tons tons, String formula) {
        figures.amount(id, label, amount, 2, working(tons, formula));
    }

    private static void time(Figures figures, String id, String label, OffsetDateTime time, Tons tons) {
        if (time != null) {
            Working working = new Working(
                    "time of discharge, else of arrival", List.of(Moment.text(time)), tons.entries(), TICKETS);
            figures.text(id, label, Moment.clock(time), working);
        }
    }

    private void perHour(Figures figures, String tail, String of, Tons tons, BigDecimal rate) {
        String unit = Measure.LOAD.unit(job.system()).symbol() + "/h";
        String suffix = Measure.LOAD.unit(job.system()).suffix() + "_h";
        List<String> put = List.of(
                "first " + Moment.text(tons.first()),
                "last " + Moment.text(tons.last()),
                "weights as placed or laid, but for the last load: it was laid after that time");
        Working working = new Working(
                "weight of all loads but the last / hours from the first discharge to the last",
                put,
                tons.entries(),
                TICKETS);
        figures.add(
                "tons-per-hour" + tail,
                of + "an hour",
                rate.setScale(0, RoundingMode.HALF_UP) + " " + unit,
                rate,
                suffix,
                working);
    }

    private static Working working(Tons tons, String formula) {
        return new Working(formula, tons.put(), tons.entries(), TICKETS);
    }

    /** Tons for pay as kept here: previous, this shift, to date. */
    Section pay(List<Tons> tons, ToDate before) {
        Figures figures = new Figures();
        TreeSet<String> items = new TreeSet<>(before.pay().keySet());
        tons.stream().filter(t -> t.by() == Tons.By.PAY_ITEM).forEach(t -> items.add(t.of()));
        for (String item : items) {
            Tons now = tons.stream()
                    .filter(t -> t.by() == Tons.By.PAY_ITEM && t.of().equals(item))
                    .findFirst()
                    .orElse(null);
            pay(figures, item, now, before);
        }
        return figures.section("pay", "Tons for pay as kept here; the pay office decides");
    }

    private void pay(Figures figures, String item, Tons now, ToDate before) {
        Amount zero = new Amount(BigDecimal.ZERO, Measure.LOAD.unit(job.system()));
        Amount previous = before.pay().getOrDefault(item, zero);
        Amount mine = now == null ? zero : now.pay();
        List<String> shifts = before.shifts().stream().map(s -> "shift " + s).toList();
        String source = "the closed shifts before this one, as they stand";
        figures.amount(
                "pay-previous." + item,
                item + " previous",
                previous,
                2,
                new Working("sum over the shifts before", shifts, List.of(), source));
        figures.amount(
                "pay-this-shift." + item,
                item + " this shift",
                mine,
                2,
                now == null
                        ? new Working("no load of this item", List.of(), List.of(), TICKETS)
                        : working(now, "placed less waste"));
        figures.amount(
                "pay-to-date." + item,
                item + " to date",
                previous.plus(mine),
                2,
                new Working(
                        "previous + this shift",
                        List.of(previous.text() + " + " + mine.text() + " = "
                                + previous.plus(mine).text()),
                        now == null ? List.of() : now.entries(),
                        source));
    }
}
