package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.entry.Clock;
import screedbook.entry.Line;
import screedbook.entry.NoWork;
import screedbook.entry.Opening;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.tally.Load;

/** Rules about times: of a load, of the keying, of the shift. */
final class TimeRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "times-order",
                    Sort.DOES_NOT_ADD_UP,
                    "A load is loaded, arrives and is discharged in this order.",
                    TimeRules::order),
            new Rule("ahead-of-clock", Sort.LOOK_AGAIN, "Nothing happened after it was keyed.", TimeRules::ahead),
            new Rule(
                    "keyed-after",
                    Sort.LOOK_AGAIN,
                    "What is said to be keyed live is keyed soon.",
                    TimeRules::keyedAfter),
            new Rule("clock-back", Sort.LOOK_AGAIN, "The clock that keyed the lines runs forward.", TimeRules::back),
            new Rule(
                    "clock-changed",
                    Sort.LOOK_AGAIN,
                    "The laptop's clock is not changed during a shift.",
                    TimeRules::changed),
            new Rule("zone-differs", Sort.LOOK_AGAIN, "The laptop keeps the job's time zone.", TimeRules::zone),
            new Rule(
                    "opened-on-other-date",
                    Sort.LOOK_AGAIN,
                    "A shift bears the date on which it began.",
                    TimeRules::otherDate),
            new Rule(
                    "shift-length",
                    Sort.LOOK_AGAIN,
                    "A shift does not last longer than shifts last.",
                    TimeRules::length),
            new Rule(
                    "no-work-and-loads",
                    Sort.DOES_NOT_ADD_UP,
                    "On a shift without work nothing is placed.",
                    TimeRules::idle));

    private TimeRules() {}

    private static List<Mark> order(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Ticket> t : look.tickets()) {
            Ticket.Times times = t.entry().times();
            OffsetDateTime last = null;
            boolean wrong = false;
            for (OffsetDateTime each : Stream.of(times.loaded(), times.arrived(), times.discharged())
                    .filter(Objects::nonNull)
                    .toList()) {
                wrong |= last != null && each.toInstant().isBefore(last.toInstant());
                last = each;
            }
            if (wrong) {
                marks.add(new Mark(
                        t.ref(),
                        "loaded " + Look.clock(times.loaded()) + ", arrived " + Look.clock(times.arrived())
                                + ", discharged " + Look.clock(times.discharged()),
                        "loading, arrival and discharge in this order",
                        "common practice",
                        "none of them before the one before it"));
            }
        }
        return marks;
    }

    private static List<Mark> ahead(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            OffsetDateTime keyed = each.line().keyed();
            if (!each.struck() && each.time() != null && each.time().isAfter(keyed)) {
                marks.addAll(apart(each, Quantity.AHEAD_OF_CLOCK, keyed, each.time()));
            }
        }
        return marks;
    }

    private static List<Mark> keyedAfter(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            boolean live = each.line().source() == Source.LIVE && !each.struck() && each.time() != null;
            if (live && each.time().isBefore(each.line().keyed())) {
                marks.addAll(apart(
                        each, Quantity.KEYED_AFTER, each.time(), each.line().keyed()));
            }
        }
        return marks;
    }

    private static List<Mark> apart(Standing<?> entry, Quantity quantity, OffsetDateTime from, OffsetDateTime to) {
        return Marks.judged(
                Marks.usual(quantity),
                List.of(entry.ref()),
                () -> "happened " + Look.clock(entry.time()) + ", keyed "
                        + Look.clock(entry.line().keyed()) + ", apart",
                Look.minutes(from, to),
                () -> "");
    }

    private static List<Mark> back(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Line> last = new HashMap<>();
        for (Standing<?> each : look.day().all()) {
            Line line = each.line();
            Line before = last.put(line.book(), line);
            if (before != null
                    && line.keyed().toInstant().isBefore(before.keyed().toInstant())) {
                marks.add(new Mark(
                        List.of(line.ref(), before.ref()),
                        "line " + before.n() + " keyed " + Look.clock(before.keyed()) + ", line " + line.n() + " keyed "
                                + Look.clock(line.keyed()),
                        "lines of a book are keyed one after the other",
                        "record, format 1",
                        "keyed " + Look.clock(before.keyed()) + " or later; the order of the lines holds"));
            }
        }
        return marks;
    }

    private static List<Mark> changed(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Clock> c : look.day().standing(Clock.class)) {
            marks.add(new Mark(
                    c.ref(),
                    "the laptop's clock went from " + Look.clock(c.entry().was()) + " to "
                            + Look.clock(c.entry().now()),
                    "the clock is not changed during a shift",
                    "record, format 1",
                    "one clock from opening to close; older lines stay as they are"));
        }
        return marks;
    }

    private static List<Mark> zone(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Opening> o : look.day().every(Opening.class)) {
            String laptop = o.entry().laptopZone();
            if (laptop != null && !laptop.equals(o.entry().zone())) {
                marks.add(new Mark(
                        o.ref(),
                        "the laptop's zone is " + laptop + ", the job's "
                                + o.entry().zone(),
                        "times are kept in the job's zone",
                        "job, zone",
                        "a laptop in " + o.entry().zone()));
            }
        }
        return marks;
    }

    private static List<Mark> otherDate(Look look) {
        Optional<Standing<Opening>> opening = look.opening();
        Optional<Job> job = look.job();
        if (opening.isEmpty() || job.isEmpty() || look.day().shift() == null) {
            return List.of();
        }
        var began = opening.get().order().atZoneSameInstant(job.get().zone()).toLocalDate();
        if (began.equals(look.day().shift().date())) {
            return List.of();
        }
        return List.of(new Mark(
                opening.get().ref(),
                "shift " + look.day().shift() + " was opened on " + began,
                "a shift bears the date on which it began",
                "record, format 1",
                "opened on " + look.day().shift().date()));
    }

    private static List<Mark> length(Look look) {
        List<Standing<?>> all = look.day().all();
        if (look.opening().isEmpty() || all.isEmpty()) {
            return List.of();
        }
        OffsetDateTime from = look.opening().get().order();
        Standing<?> last = all.get(all.size() - 1);
        OffsetDateTime to = last.line().keyed();
        return Marks.judged(
                Marks.usual(Quantity.SHIFT_LENGTH),
                look.shift(),
                "opened " + Look.clock(from) + ", last line " + Look.clock(to) + ", between",
                Look.minutes(from, to),
                "");
    }

    private static List<Mark> idle(Look look) {
        List<Load> laid = look.laid();
        return look.day().standing(NoWork.class).stream()
                .filter(n -> !laid.isEmpty())
                .map(n -> new Mark(
                        List.of(n.ref(), laid.get(0).ticket().ref()),
                        "no work noted, and " + Look.loads(laid.size()) + " placed",
                        "on a shift without work nothing is placed",
                        "common practice",
                        "one of the two struck"))
                .toList();
    }
}
