package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Entry;
import screedbook.entry.Mat;
import screedbook.entry.Ref;
import screedbook.entry.Rolling;
import screedbook.entry.Standing;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;

/** Rules about rollers and the mat under them. */
final class RollingRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "rolling-ends-cold",
                    Sort.OUTSIDE,
                    "Rolling ends while the mat is as warm as the sheet or the job says, else as is usual.",
                    RollingRules::endsCold),
            new Rule(
                    "rolling-vibrated-cold",
                    Sort.OUTSIDE,
                    "Drums vibrate while the mat is as warm as the sheet says.",
                    RollingRules::vibratedCold),
            new Rule(
                    "rolling-last-heat",
                    Sort.MISSING,
                    "Of a roller whose mat was read at first, the mat is read at last too.",
                    RollingRules::lastHeat),
            new Rule(
                    "roller-speed",
                    Sort.LOOK_AGAIN,
                    "A roller goes as fast as is usual for its kind.",
                    RollingRules::speed));

    /** A reading when rolling ended, of a roller or of the mat. */
    private record Last(Standing<? extends Entry> of, String pull, Integer lift, String who, Amount mat) {}

    private static final Map<Rolling.Drums, Quantity> SPEEDS = Map.of(
            Rolling.Drums.STATIC,
            Quantity.ROLLER_STATIC,
            Rolling.Drums.PNEUMATIC,
            Quantity.ROLLER_PNEUMATIC,
            Rolling.Drums.VIBRATORY,
            Quantity.ROLLER_VIBRATORY,
            Rolling.Drums.OSCILLATING,
            Quantity.ROLLER_VIBRATORY);

    private RollingRules() {}

    private static List<Standing<Rolling>> rollers(Look look) {
        return look.day().standing(Rolling.class);
    }

    /** The finish roller takes out marks and may end cold. */
    private static List<Last> lasts(Look look) {
        List<Last> lasts = new ArrayList<>();
        for (Standing<Rolling> r : rollers(look)) {
            Rolling e = r.entry();
            if (e.task() != Rolling.Task.FINISH && e.matEnds() != null) {
                lasts.add(new Last(r, e.pull(), e.lift(), name(e) + " ended at", e.matEnds()));
            }
        }
        for (Standing<Mat> m : look.day().standing(Mat.class)) {
            Mat e = m.entry();
            if (e.taken() == Mat.Taken.ROLLING_ENDS && e.mat() != null) {
                lasts.add(new Last(m, e.pull(), e.lift(), "rolling ended at", e.mat()));
            }
        }
        return lasts;
    }

    private static String name(Rolling roller) {
        return roller.roller() == null ? "a roller" : "roller " + roller.roller();
    }

    private static List<Mark> endsCold(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Last last : lasts(look)) {
            Optional<Case> at = look.ofMat(last.of(), null, last.lift(), last.pull());
            List<Ref> of = List.of(last.of().ref());
            Optional<Bounds> sheet =
                    at.map(c -> c.bounds(Quantity.MAT_ROLLING_ENDS)).filter(b -> !b.noLimit());
            if (sheet.isPresent()) {
                marks.addAll(Marks.judged(sheet.get(), of, last.who(), last.mat(), ""));
            } else if (at.isPresent() && at.get().job().planning().rollUntil() != null) {
                Bounds own = RolledUntil.of(at.get().job()).bounds();
                Marks.judged(own, of, last.who(), last.mat(), "").forEach(m -> marks.add(m.as(Sort.LOOK_AGAIN)));
            } else {
                marks.addAll(Marks.odd(Quantity.MAT_ROLLING_ENDS, of, last.who(), last.mat()));
            }
        }
        return marks;
    }

    static boolean vibrates(Rolling roller) {
        return roller.drums() == Rolling.Drums.VIBRATORY || roller.drums() == Rolling.Drums.OSCILLATING;
    }

    /** How fast a roller with such drums usually goes. */
    static Optional<Quantity> speed(Rolling.Drums drums) {
        return Optional.ofNullable(drums).map(SPEEDS::get);
    }

    private static List<Mark> vibratedCold(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Rolling> r : rollers(look)) {
            if (vibrates(r.entry())) {
                look.ofMat(r, null, r.entry().lift(), r.entry().pull())
                        .ifPresent(c -> marks.addAll(Marks.judged(
                                c.bounds(Quantity.MAT_VIBRATED),
                                List.of(r.ref()),
                                name(r.entry()) + " vibrated to",
                                r.entry().matEnds(),
                                "")));
            }
        }
        return marks;
    }

    private static List<Mark> lastHeat(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Rolling> r : rollers(look)) {
            Rolling e = r.entry();
            if (e.matBegins() != null && e.matEnds() == null && e.task() != Rolling.Task.FINISH) {
                marks.add(new Mark(
                        r.ref(),
                        name(e) + " began at " + AmountText.text(e.matBegins()) + ", mat at last: not noted",
                        "the mat is read when a roller begins and when it ends",
                        "common practice",
                        "a mat temperature when it ended"));
            }
        }
        return marks;
    }

    private static List<Mark> speed(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Rolling> r : rollers(look)) {
            Quantity usual = speed(r.entry().drums()).orElse(null);
            if (usual != null && r.entry().speed() != null) {
                marks.addAll(Marks.odd(
                        usual, List.of(r.ref()), name(r.entry()), r.entry().speed()));
            }
        }
        return marks;
    }
}
