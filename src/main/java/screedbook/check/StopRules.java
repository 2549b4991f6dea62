package screedbook.check;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Restart;
import screedbook.entry.Safety;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.tally.Stoppage;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about stops of the paver and what was seen of safety. */
final class StopRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "stop-long",
                    Sort.OUTSIDE,
                    "The paver stands no longer than the job allows, where it says so.",
                    StopRules::longer),
            new Rule(
                    "stop-without-end",
                    Sort.MISSING,
                    "A stop of the paver has an end when the shift is closed.",
                    StopRules::endless),
            new Rule(
                    "stop-times",
                    Sort.DOES_NOT_ADD_UP,
                    "A stop of the paver ends after it began.",
                    StopRules::backwards),
            new Rule(
                    "restart-without-stop",
                    Sort.DOES_NOT_ADD_UP,
                    "A restart names a stop that stands.",
                    StopRules::loose),
            new Rule(
                    "safety-action",
                    Sort.MISSING,
                    "What was seen of safety says what was done about it.",
                    StopRules::undone));

    private StopRules() {}

    private static List<Mark> longer(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Stoppage each : Stoppage.of(look.day())) {
            Optional<Checks> checks = look.job(each.stop()).map(Job::checks);
            OffsetDateTime now = look.day().closed() ? null : look.now();
            Optional<Amount> lasted = (each.lasts() && now == null ? Optional.<Long>empty() : each.minutes(now))
                    .map(m -> new Amount(BigDecimal.valueOf(m), Unit.MINUTE));
            Amount most = checks.map(Checks::stopAtMost).orElse(null);
            if (most != null && lasted.isPresent() && lasted.get().compareTo(most) > 0) {
                marks.add(new Mark(
                        each.stop().ref(),
                        "the paver stood for " + AmountText.text(lasted.get())
                                + waiting(each.stop().entry()),
                        "at most " + AmountText.text(most),
                        PlanRules.source(checks.get()),
                        "a restart by "
                                + Look.clock(each.stop()
                                        .order()
                                        .plusMinutes(most.value().longValue()))));
            }
        }
        return marks;
    }

    private static String waiting(Stop stop) {
        return stop.waiting() == null ? "" : ", " + stop.waiting() + " waiting";
    }

    private static List<Mark> endless(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Stoppage each : Stoppage.of(look.day())) {
            if (each.lasts() && look.day().closed()) {
                marks.add(new Mark(
                        each.stop().ref(),
                        "the paver stopped " + Look.clock(each.stop().time()) + ", its restart: not noted",
                        "a stop has an end",
                        "entry",
                        "a restart, or the hour at which it ended"));
            }
        }
        return marks;
    }

    private static List<Mark> backwards(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Stoppage each : Stoppage.of(look.day())) {
            OffsetDateTime began = each.stop().time();
            if (began != null && each.ended() != null && each.ended().isBefore(began)) {
                marks.add(new Mark(
                        each.stop().ref(),
                        "stopped " + Look.clock(began) + ", went on " + Look.clock(each.ended()),
                        "a stop ends after it began",
                        "entry",
                        "an end after " + Look.clock(began)));
            }
        }
        return marks;
    }

    private static List<Mark> loose(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Restart> r : look.day().standing(Restart.class)) {
            boolean stands = r.entry().of() != null
                    && look.day()
                            .find(r.entry().of())
                            .filter(s -> s.entry() instanceof Stop && !s.struck())
                            .isPresent();
            if (!stands) {
                marks.add(new Mark(
                        r.ref(),
                        "the paver goes on after "
                                + (r.entry().of() == null
                                        ? "a stop that is not named"
                                        : r.entry().of() + ", no stop that stands"),
                        "a restart names its stop",
                        "entry",
                        "the line of the stop that it ends"));
            }
        }
        return marks;
    }

    private static List<Mark> undone(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Safety> s : look.day().standing(Safety.class)) {
            if (s.entry().action() == null || s.entry().action().isBlank()) {
                marks.add(new Mark(
                        s.ref(),
                        "safety"
                                + (s.entry().about() == null
                                        ? ""
                                        : ", " + s.entry().about().word())
                                + ": what was done: not noted",
                        "an observation about safety says what was done",
                        "common practice",
                        "what was done, or that nothing was"));
            }
        }
        return marks;
    }
}
