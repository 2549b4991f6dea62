package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import screedbook.entry.Day;
import screedbook.entry.Joint;
import screedbook.entry.Kind;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.job.Wanted;

/**
 * What a shift has of that by which a check is counted: loads, shots, joints across the road, and changes of mix, plant, pull or weather.
 *
 * @param asked the row of the job's list
 * @param laid the loads that went into the mat
 */
record WantedSteps(Wanted asked, Day day, List<Load> laid) {
    /** What is counted and what changes, not in order. */
    List<Turns.Step> steps(String mix) {
        List<Turns.Step> steps = new ArrayList<>(
                asked.of() == Wanted.Count.SHOTS ? shots() : asked.of() == Wanted.Count.JOINTS ? joints() : loads(mix));
        if (asked.change() == Wanted.Change.WEATHER) {
            steps.addAll(weather());
        }
        return steps;
    }

    /** Each load; its own entry may answer. */
    private List<Turns.Step> loads(String mix) {
        List<Turns.Step> steps = new ArrayList<>();
        String last = null;
        for (Load load : laid) {
            String is = changing(load);
            boolean changed = last != null && !Objects.equals(last, is);
            if (mix.isEmpty() || mix.equals(load.mix())) {
                BigDecimal much = asked.of() == Wanted.Count.LOADS || asked.of() == null
                        ? BigDecimal.ONE
                        : load.placed().value();
                boolean answered = asked.kind() == Kind.TICKET && new WantedEntry(asked).answers(load.ticket());
                steps.add(
                        new Turns.Step(load.ticket().order(), load.ticket().ref(), much, answered, changed ? is : ""));
            }
            last = is;
        }
        return steps;
    }

    private String changing(Load load) {
        Ticket ticket = load.ticket().entry();
        if (asked.change() == Wanted.Change.MIX) {
            return "mix " + load.mix();
        }
        if (asked.change() == Wanted.Change.PLANT) {
            return "plant " + ticket.paper().plant();
        }
        if (asked.change() == Wanted.Change.PULL) {
            Integer lift = ticket.spot().lift();
            return "pull " + ticket.spot().pull() + (lift == null ? "" : " lift " + lift);
        }
        return "";
    }

    /** Every shot over a surface; a contact face is no shot of its own here. */
    private List<Turns.Step> shots() {
        return day.standing(Tack.class).stream()
                .filter(t -> t.entry().target().face() == null)
                .map(t -> new Turns.Step(t.order(), t.ref(), BigDecimal.ONE, false, ""))
                .toList();
    }

    /** Every joint across the road; one along it has no end at which it is measured. */
    private List<Turns.Step> joints() {
        return day.standing(Joint.class).stream()
                .filter(j -> j.entry().run() == Joint.Run.TRANSVERSE)
                .map(j -> new Turns.Step(j.order(), j.ref(), BigDecimal.ONE, false, ""))
                .toList();
    }

    /** Rain and the road, where they are noted otherwise than before; the sky alone is no change. */
    private List<Turns.Step> weather() {
        List<Turns.Step> steps = new ArrayList<>();
        Weather last = null;
        for (Standing<Weather> each : day.standing(Weather.class)) {
            Weather is = each.entry();
            if (last != null && !same(last, is)) {
                String told = Stream.of(is.precipitation(), is.road())
                        .filter(Objects::nonNull)
                        .map(w -> w.word().replace('-', ' '))
                        .reduce((a, b) -> a + ", road " + b)
                        .orElse("weather");
                steps.add(new Turns.Step(each.order(), each.ref(), BigDecimal.ZERO, false, told));
            }
            last = is;
        }
        return steps;
    }

    private static boolean same(Weather a, Weather b) {
        return Objects.equals(a.precipitation(), b.precipitation()) && Objects.equals(a.road(), b.road());
    }
}
