package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.ListIterator;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Core;
import screedbook.entry.Custody;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.entry.YesNo;
import screedbook.tally.Filling;
import screedbook.tally.Lot;
import screedbook.tally.Reckoned;
import screedbook.tally.Samples;
import screedbook.tally.Taken;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** What forms of samples, cores, readings, hand-overs and results begin with, and what is told beside them. */
final class SampleForms {
    private SampleForms() {}

    private static Samples samples(Model model) {
        return model.shift().totals().samples();
    }

    /** The numbers of the samples that no result has closed, and of the cores without a density. */
    static List<String> open(Model model) {
        List<String> numbers = new ArrayList<>();
        samples(model).open().forEach(t -> numbers.add(t.number()));
        samples(model).openCores().stream()
                .map(c -> c.entry().cut().core())
                .filter(c -> c != null && !numbers.contains(c))
                .forEach(numbers::add);
        return numbers;
    }

    static void carried(Model model, Kind kind, Map<String, String> carried) {
        switch (kind) {
            case SAMPLE -> sample(model, carried);
            case CORE, GAUGE -> open(model, carried, kind);
            case CUSTODY -> custody(model, carried);
            case RESULT -> only(model, carried);
            default -> {}
        }
    }

    /** The oldest random place of which nothing was taken; without one, the last load, and whether at random is asked. */
    private static void sample(Model model, Map<String, String> carried) {
        if (open(model, carried, Kind.SAMPLE)) {
            ofTheMix(carried);
        } else {
            lastLoad(model).ifPresent(load -> load(model, load, carried));
        }
    }

    /** At a random place of a mix nothing else is taken: what the last sample was of, in its jar, does not go on. */
    private static void ofTheMix(Map<String, String> carried) {
        String of = carried.getOrDefault("material", Sample.Material.MIX.word());
        if (!of.equals(Sample.Material.MIX.word()) && !of.equals(Sample.Material.CORE.word())) {
            carried.remove("material");
            carried.remove("container");
        }
    }

    /** A load that was drawn by its tons is for a sample; a place in the mat is for a core or a reading too. */
    private static boolean isFor(Kind kind, Standing<Draw> place) {
        return kind == Kind.SAMPLE || place.entry().reached().fromLeft() != null;
    }

    private static boolean open(Model model, Map<String, String> carried, Kind kind) {
        Optional<Standing<Draw>> place = samples(model).places().stream()
                .filter(p -> p.taken().isEmpty())
                .map(Samples.Place::draw)
                .filter(p -> isFor(kind, p))
                .findFirst();
        place.ifPresent(p -> place(model, p, carried, kind));
        return place.isPresent();
    }

    private static void place(Model model, Standing<Draw> place, Map<String, String> carried, Kind kind) {
        Draw draw = place.entry();
        Draw.Reached r = draw.reached();
        put(carried, "mix", draw.mix());
        put(carried, "lot", draw.lot());
        put(carried, "sublot", r.sublot());
        put(carried, "pull", r.pull());
        put(carried, "lift", r.lift());
        put(carried, "place_sta", text(r.place()));
        put(carried, "at_random", YesNo.YES.word());
        Amount left = r.fromLeft();
        if (left != null) {
            put(carried, "from_left_" + left.unit().suffix(), left.value().toPlainString());
        }
        if (kind == Kind.SAMPLE) {
            put(carried, "draw", place.ref());
            find(model, r.of()).ifPresent(t -> put(carried, "ticket", t.paper().number()));
        }
    }

    private static String text(Station station) {
        return station == null ? null : station.text();
    }

    private static void put(Map<String, String> carried, String blank, Object value) {
        if (value != null) {
            carried.put(blank, value.toString());
        }
    }

    private static Optional<Ticket> find(Model model, Ref ref) {
        return Optional.ofNullable(ref)
                .flatMap(r -> model.shift().find(r))
                .filter(s -> s.entry() instanceof Ticket)
                .map(s -> (Ticket) s.entry());
    }

    private static Optional<Standing<?>> lastLoad(Model model) {
        List<Standing<?>> all = model.shift().day().all();
        ListIterator<Standing<?>> back = all.listIterator(all.size());
        while (back.hasPrevious()) {
            Standing<?> each = back.previous();
            if (!each.struck() && each.entry() instanceof Ticket) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    private static void load(Model model, Standing<?> load, Map<String, String> carried) {
        Ticket ticket = (Ticket) load.entry();
        put(carried, "ticket", ticket.paper().number());
        put(carried, "mix", ticket.paper().mix());
        put(carried, "pull", ticket.spot().pull());
        put(carried, "lift", ticket.spot().lift());
        put(carried, "place_sta", text(ticket.spot().to()));
        samples(model).filling().of(load.line().shift(), load.ref()).ifPresent(w -> {
            put(carried, "lot", w.lot());
            put(carried, "sublot", w.sublot());
        });
    }

    /** The only open sample, given by whoever has it. */
    private static void custody(Model model, Map<String, String> carried) {
        List<Taken> open = samples(model).open();
        if (open.size() == 1) {
            put(carried, "sample", open.get(0).number());
            put(carried, "given_by", open.get(0).holder());
        }
    }

    private static void only(Model model, Map<String, String> carried) {
        List<String> open = open(model);
        if (open.size() == 1) {
            put(carried, "sample", open.get(0));
        }
    }

    /** To which sublot it belongs, what that holds so far, and what a density comes to; empty for other kinds. */
    static Optional<String> echo(Model model, Entry entry) {
        if (entry instanceof Custody custody) {
            return Optional.of(held(model, custody));
        }
        if (!(entry instanceof Sample) && !(entry instanceof Core) && !(entry instanceof Gauge)) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        Reckoned percent = samples(model).densities().keyed(entry);
        if (percent.known()) {
            words.add(percent.text(1) + " of the maximum");
        }
        samples(model).where(entry).ifPresent(w -> words.add(sublot(model, w)));
        return Optional.of(String.join("  ", words));
    }

    private static String sublot(Model model, Filling.Where where) {
        Optional<Lot.Sublot> sublot = samples(model).filling().sublot(where.mix(), where.lot(), where.sublot());
        String name = where.sublot() == 0 ? "lot " + where.lot() : where.text();
        return name
                + sublot.map(s -> ", " + s.tons().shown(Measure.LOAD.decimals()).text() + (s.over() ? "" : " so far"))
                        .orElse("");
    }

    /** The sealed number is told once one was read, so that it is read and not copied. */
    private static String held(Model model, Custody custody) {
        return Optional.ofNullable(custody.sample())
                .flatMap(samples(model)::of)
                .map(t -> "last with " + t.holder()
                        + (custody.sealNumber() == null
                                        || t.sample().entry().keeping().sealNumber() == null
                                ? ""
                                : ", sealed under "
                                        + t.sample().entry().keeping().sealNumber()))
                .orElse("");
    }
}
