package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Core;
import screedbook.entry.Depth;
import screedbook.entry.Result;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What the rules about densities find of cores themselves: where they were cut, how high they are, what water they take up. */
final class CutCores {
    private CutCores() {}

    static List<Mark> water(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Result> each : look.day().standing(Result.class)) {
            Result r = each.entry();
            if (r.what() == Result.What.WATER_ABSORBED && r.found() != null) {
                look.ofMat(each, r.mix(), null, null)
                        .ifPresent(c -> marks.addAll(Marks.judged(
                                c.bounds(Quantity.WATER_ABSORBED),
                                List.of(each.ref()),
                                (r.sample() == null ? "core" : r.sample()) + ", water taken up",
                                new Amount(r.found(), Unit.PERCENT),
                                "")));
            }
        }
        return marks;
    }

    /** As it was measured on the core, or as a thickness keyed for an untrimmed core. */
    static List<Mark> height(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Core> each : look.day().standing(Core.class)) {
            Core c = each.entry();
            String mix = mix(look, c.spot().mix(), c.spot().lift(), c.spot().pull());
            look.ofMat(each, mix, c.spot().lift(), c.spot().pull())
                    .ifPresent(k -> marks.addAll(Marks.judged(
                            k.bounds(Quantity.CORE_HEIGHT),
                            List.of(each.ref()),
                            name(each) + ", height untrimmed",
                            c.measured().height(),
                            "")));
        }
        for (Standing<Depth> each : look.day().standing(Depth.class)) {
            Depth d = each.entry();
            if (d.state() == Depth.State.CORE_UNTRIMMED) {
                String mix = mix(look, null, d.lift(), d.pull());
                look.ofMat(each, mix, d.lift(), d.pull())
                        .ifPresent(k -> marks.addAll(Marks.judged(
                                k.bounds(Quantity.CORE_HEIGHT),
                                List.of(each.ref()),
                                "core " + (d.core() == null ? each.ref() : d.core()) + ", height untrimmed",
                                d.thickness(),
                                "")));
            }
        }
        return marks;
    }

    private static String mix(Look look, String named, Integer lift, String pull) {
        return named != null
                ? named
                : look.job()
                        .flatMap(j -> Cases.lift(j, lift, pull))
                        .map(Job.Lift::mix)
                        .orElse(null);
    }

    static List<Mark> offMark(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Core> each : look.day().standing(Core.class)) {
            Core.Spot s = each.entry().spot();
            boolean along = s.markedAt() != null && !s.markedAt().equals(s.place());
            boolean across = s.markedLeft() != null
                    && (s.fromLeft() == null || s.markedLeft().compareTo(s.fromLeft()) != 0);
            if ((along || across) && s.why() == null) {
                marks.add(new Mark(
                        each.ref(),
                        name(each) + " cut at " + place(s.place(), s.fromLeft()) + ", marked at "
                                + place(s.markedAt() == null ? s.place() : s.markedAt(), s.markedLeft())
                                + ", why: not noted",
                        "a core is cut at its mark",
                        "common practice, no source",
                        "why it was cut elsewhere"));
            }
        }
        return marks;
    }

    static String name(Standing<Core> core) {
        String number = core.entry().cut().core();
        return "core " + (number == null ? core.ref() : number);
    }

    private static String place(Station station, Amount left) {
        return (station == null ? "-" : station.text()) + (left == null ? "" : ", " + left.text() + " from left");
    }
}
