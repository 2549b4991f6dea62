package screedbook.check;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Mat;
import screedbook.entry.Profile;
import screedbook.entry.Restart;
import screedbook.entry.Result;
import screedbook.entry.Rolling;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.entry.Straightedge;
import screedbook.entry.Truck;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** What stands beside the blanks of mat, rollers, joints, stops and instruments while they are keyed. */
final class SiteGuides {
    /** A form being keyed, with what it is judged by. */
    private record Keying(Job job, Optional<SpecSheet> sheet, Entry entry, OffsetDateTime at) {}

    private static final Map<String, Function<Keying, Guide>> BY_BLANK = new HashMap<>();

    static {
        BY_BLANK.put("mat.mat", SiteGuides::mat);
        BY_BLANK.put("profile.coldest", SiteGuides::coldest);
        BY_BLANK.put("profile.witness", SiteGuides::witness);
        BY_BLANK.put("profile.action", SiteGuides::action);
        BY_BLANK.put("rolling.mat_ends", SiteGuides::matEnds);
        BY_BLANK.put("rolling.speed", SiteGuides::speed);
        BY_BLANK.put("joint.tacked", SiteGuides::tacked);
        BY_BLANK.put("joint.below", SiteGuides::below);
        BY_BLANK.put("joint.lane_line", SiteGuides::laneLine);
        BY_BLANK.put("joint.overlap", k -> shape(k, Quantity.JOINT_OVERLAP, ((Joint) k.entry()).overlap()));
        BY_BLANK.put(
                "joint.notch",
                k -> shape(
                        k,
                        Quantity.JOINT_NOTCH_OF_LIFT,
                        JointRules.notch(k.job(), (Joint) k.entry()).orElse(null)));
        BY_BLANK.put("joint.slope", k -> shape(k, JointRules.slope((Joint) k.entry()), ((Joint) k.entry()).slope()));
        BY_BLANK.put("joint.higher", k -> shape(k, Quantity.JOINT_HIGHER, ((Joint) k.entry()).higher()));
        BY_BLANK.put("straightedge.edge_length", SiteGuides::edge);
        BY_BLANK.put("straightedge.gap", SiteGuides::gap);
        BY_BLANK.put("straightedge.cross_slope", SiteGuides::slope);
        BY_BLANK.put("stop.cause", SiteGuides::stop);
        BY_BLANK.put("instrument.shows", SiteGuides::shows);
        BY_BLANK.put("truck.truck", SiteGuides::truck);
        BY_BLANK.put("result.found", k -> ResultRules.guide(k.job(), (Result) k.entry()));
        BY_BLANK.put(
                "core.gmb",
                k -> ResultRules.gravity(
                        k.job(), Quantity.GMB, ((Core) k.entry()).measured().gmb()));
        BY_BLANK.put(
                "core.gmm",
                k -> ResultRules.gravity(
                        k.job(), Quantity.GMM, ((Core) k.entry()).measured().gmm()));
        BY_BLANK.put(
                "gauge.gmm",
                k -> ResultRules.gravity(
                        k.job(), Quantity.GMM, ((Gauge) k.entry()).reading().gmm()));
    }

    private SiteGuides() {}

    /** The blanks that something stands beside. */
    static Iterable<String> blanks() {
        return BY_BLANK.keySet();
    }

    static Guide of(Job job, Optional<SpecSheet> sheet, Entry entry, OffsetDateTime at, String blank) {
        return BY_BLANK.get(blank).apply(new Keying(job, sheet, entry, at));
    }

    private static Optional<Case> on(Keying k, String pull, Integer lift) {
        return k.sheet()
                .map(sheet -> new Case(
                        k.job(), sheet, Cases.of(k.job(), null, Cases.lift(k.job(), lift, pull), k.at(), null), null));
    }

    private static Guide said(String limit, String clause, Verdict verdict, String working) {
        return new Guide(limit, clause, verdict, working, List.of());
    }

    private static Guide lost() {
        return said("limit sheet not found", "", Verdict.NONE, "");
    }

    private static Guide limited(Job job, Bounds bounds, Amount value) {
        return said(bounds.text(job.system()), bounds.clause(), bounds.of(value), bounds.working());
    }

    /** What is usual is asked about, never judged by. */
    private static Guide usual(Job job, Quantity quantity, Amount value) {
        return asked(job, Marks.usual(quantity), "usually ", value);
    }

    private static Guide asked(Job job, Bounds bounds, String head, Amount value) {
        Verdict verdict = bounds.of(value) == Verdict.OUTSIDE ? Verdict.LOOK_AGAIN : Verdict.NONE;
        return said(head + bounds.text(job.system()), bounds.clause(), verdict, bounds.working());
    }

    private static Guide mat(Keying k) {
        Mat mat = (Mat) k.entry();
        Optional<Case> at = on(k, mat.pull(), mat.lift());
        if (at.isEmpty()) {
            return lost();
        }
        if (mat.taken() == Mat.Taken.ROLLING_ENDS) {
            return ends(at.get(), mat.mat());
        }
        return mat.taken() == Mat.Taken.BEHIND_SCREED
                ? limited(k.job(), at.get().bounds(Quantity.MAT_BEHIND_SCREED), mat.mat())
                : Guide.NOTHING;
    }

    /** Of the sheet where it has a limit, else of the job, else what is usual; the last two are only asked about. */
    private static Guide ends(Case at, Amount value) {
        Bounds own = at.bounds(Quantity.MAT_ROLLING_ENDS);
        if (!own.noLimit()) {
            return limited(at.job(), own, value);
        }
        return at.job().planning().rollUntil() == null
                ? usual(at.job(), Quantity.MAT_ROLLING_ENDS, value)
                : asked(at.job(), RolledUntil.of(at.job()).bounds(), "", value);
    }

    /** Of the sheet where it has one, else what is usual and only asked about. */
    private static Guide coldest(Keying k) {
        Profile p = (Profile) k.entry();
        Optional<Case> at = on(k, p.pull(), p.lift());
        if (at.isEmpty()) {
            return lost();
        }
        Bounds own =
                MatRules.ranges(at.get().bounds(Quantity.MAT_RANGE), at.get().bounds(Quantity.UNCOMPACTED_RANGE));
        Optional<Amount> apart = p.apart();
        if (!own.noLimit()) {
            return said(
                    apart.map(d -> AmountText.plain(d) + " apart, "
                                    + own.text(k.job().system()))
                            .orElseGet(() -> downTo(k.job(), own, p)),
                    own.clause(),
                    own.of(apart.orElse(null)),
                    own.working());
        }
        Bounds usual = Marks.usual(Quantity.PROFILE_MODERATE);
        Optional<MatRules.Word> word = apart.map(MatRules.Word::of).filter(w -> w != MatRules.Word.NONE);
        String limit = apart.map(d -> AmountText.plain(d) + " apart, ").orElse("");
        return said(
                word.map(w -> w.text() + ", " + limit + usual.text(k.job().system()))
                        .orElseGet(() -> "usually "
                                + (apart.isEmpty()
                                        ? downTo(k.job(), usual, p)
                                        : usual.text(k.job().system()))),
                usual.clause(),
                word.isPresent() ? Verdict.LOOK_AGAIN : Verdict.NONE,
                usual.working());
    }

    /** Counted down from the hottest, so that the limit stands there as a temperature. */
    private static String downTo(Job job, Bounds bounds, Profile p) {
        Optional<Amount> most =
                bounds.all().stream().map(Bound::high).filter(Objects::nonNull).min(Amount::compareTo);
        if (most.isEmpty()) {
            return bounds.text(job.system());
        }
        Unit scale = p.hottest() == null
                ? OwnUnits.of(most.get().unit(), job.system())
                : p.hottest().unit().difference();
        Amount by = OwnUnits.most(most.get(), scale);
        if (p.hottest() == null) {
            return "within " + AmountText.plain(by) + " of the hottest";
        }
        return "at least " + AmountText.plain(AmountText.moved(p.hottest(), negative(by)));
    }

    private static Amount negative(Amount amount) {
        return new Amount(amount.value().negate(), amount.unit());
    }

    private static Guide witness(Keying k) {
        Profile p = (Profile) k.entry();
        return on(k, p.pull(), p.lift())
                .flatMap(c -> c.asked(Demand.UNCOMPACTED_MAT_LOOKED_AT))
                .map(a -> said("the engineer is there", a.citation(), Verdict.NONE, a.says()))
                .orElse(Guide.NOTHING);
    }

    private static Guide action(Keying k) {
        boolean severe = ((Profile) k.entry())
                .apart()
                .filter(d -> MatRules.Word.of(d) == MatRules.Word.SEVERE)
                .isPresent();
        Bounds bounds = Marks.usual(Quantity.PROFILE_SEVERE);
        return severe ? said("severe: what was done", bounds.clause(), Verdict.NONE, bounds.working()) : Guide.NOTHING;
    }

    private static Guide matEnds(Keying k) {
        Rolling r = (Rolling) k.entry();
        Optional<Case> at = on(k, r.pull(), r.lift());
        if (at.isEmpty()) {
            return lost();
        }
        Bounds vibrated = at.get().bounds(Quantity.MAT_VIBRATED);
        if (RollingRules.vibrates(r) && !vibrated.noLimit()) {
            return limited(k.job(), vibrated, r.matEnds());
        }
        return r.task() == Rolling.Task.FINISH ? Guide.NOTHING : ends(at.get(), r.matEnds());
    }

    private static Guide speed(Keying k) {
        Rolling r = (Rolling) k.entry();
        return RollingRules.speed(r.drums())
                .map(q -> usual(k.job(), q, r.speed()))
                .orElse(Guide.NOTHING);
    }

    private static Guide tacked(Keying k) {
        Joint j = (Joint) k.entry();
        Optional<Asked> asked = j.heat() == Joint.Heat.HOT
                ? Optional.empty()
                : on(k, j.pull(), j.lift()).flatMap(c -> c.asked(Demand.TACK_ON_EVERY_FACE));
        Verdict outside = asked.filter(Asked::sure).isPresent() ? Verdict.OUTSIDE : Verdict.LOOK_AGAIN;
        return asked.map(a -> said(
                        "every contact face", a.citation(), j.tacked() == YesNo.NO ? outside : Verdict.NONE, a.says()))
                .orElse(Guide.NOTHING);
    }

    private static Guide below(Keying k) {
        Joint j = (Joint) k.entry();
        return on(k, j.pull(), j.lift())
                .map(c -> limited(
                        k.job(),
                        JointRules.offset(k.job(), k.sheet().orElseThrow(), j, c),
                        j.below() == null ? null : AmountText.size(j.below())))
                .orElseGet(SiteGuides::lost);
    }

    private static Guide laneLine(Keying k) {
        Joint j = (Joint) k.entry();
        Optional<Asked> asked = JointRules.across(j)
                ? Optional.empty()
                : on(k, j.pull(), j.lift()).flatMap(c -> c.asked(Demand.JOINT_ON_LINE));
        Amount off = j.laneLine() == null ? null : AmountText.size(j.laneLine());
        boolean away = off != null && Marks.usual(Quantity.JOINT_FROM_LINE).of(off) == Verdict.OUTSIDE;
        return asked.map(a -> said("on the line", a.citation(), away ? Verdict.LOOK_AGAIN : Verdict.NONE, a.says()))
                .orElse(Guide.NOTHING);
    }

    private static Guide shape(Keying k, Quantity quantity, Amount value) {
        Joint j = (Joint) k.entry();
        return on(k, j.pull(), j.lift())
                .map(c -> c.bounds(quantity))
                .filter(b -> !b.noLimit())
                .map(b -> limited(k.job(), b, value))
                .orElse(Guide.NOTHING);
    }

    private static Guide edge(Keying k) {
        Straightedge s = (Straightedge) k.entry();
        return on(k, s.pull(), s.lift())
                .map(c -> c.bounds(Quantity.STRAIGHTEDGE_LENGTH))
                .filter(b -> !b.noLimit())
                .map(b -> said(
                        length(k.job(), b),
                        b.clause(),
                        b.of(s.edgeLength()) == Verdict.OUTSIDE ? Verdict.LOOK_AGAIN : Verdict.NONE,
                        b.working()))
                .orElse(Guide.NOTHING);
    }

    /** {@code 10 ft}, in a metric job {@code 10 ft (3.05 m)}. */
    private static String length(Job job, Bounds bounds) {
        Amount printed = bounds.all().get(0).low();
        return AmountText.both(printed, OwnUnits.of(printed.unit(), job.system()));
    }

    private static Guide gap(Keying k) {
        Straightedge s = (Straightedge) k.entry();
        Optional<Case> at = on(k, s.pull(), s.lift());
        if (at.isEmpty()) {
            return lost();
        }
        Bounds length = at.get().bounds(Quantity.STRAIGHTEDGE_LENGTH);
        if (!JointRules.asLong(length, s)) {
            return said(
                    "limit for an edge of " + length(k.job(), length),
                    length.clause(),
                    Verdict.LOOK_AGAIN,
                    length.working());
        }
        return limited(k.job(), JointRules.gaps(at.get(), s), s.gap());
    }

    private static Guide slope(Keying k) {
        Straightedge s = (Straightedge) k.entry();
        Optional<Case> at = on(k, s.pull(), s.lift());
        if (at.isEmpty()) {
            return lost();
        }
        Optional<Amount> planned = k.job().pull(s.pull(), s.lift()).map(Job.Pull::crossSlope);
        Amount off = planned.isEmpty() || s.crossSlope() == null
                ? null
                : AmountText.size(s.crossSlope().minus(planned.get()));
        Bounds bounds = at.get().bounds(Quantity.CROSS_SLOPE);
        return said(
                planned.map(p -> "planned " + AmountText.plain(p) + ", ").orElse("")
                        + (bounds.noLimit() ? bounds.text() : "off by " + bounds.text()),
                bounds.clause(),
                bounds.of(off),
                bounds.working());
    }

    private static Guide stop(Keying k) {
        Checks checks = k.job().checks();
        return checks.stopAtMost() == null
                ? Guide.NOTHING
                : said(
                        "stands at most " + AmountText.text(checks.stopAtMost()),
                        PlanRules.source(checks),
                        Verdict.NONE,
                        "The job says how long the paver may stand.");
    }

    /** How long the paver stood, and what waited. */
    static Guide stood(Day day, Restart restart, OffsetDateTime at) {
        Optional<Standing<?>> stop = restart.of() == null ? Optional.empty() : day.find(restart.of());
        if (stop.isEmpty()
                || !(stop.get().entry() instanceof Stop of)
                || stop.get().struck()) {
            return restart.of() == null ? Guide.NOTHING : said("no stop that stands", "", Verdict.LOOK_AGAIN, "");
        }
        if (stop.get().time() == null) {
            return Guide.NOTHING;
        }
        long minutes = Duration.between(stop.get().time(), at).toMinutes();
        String waiting = of.waiting() == null ? "" : ", " + of.waiting() + " waiting";
        return said("stood " + minutes + " min" + waiting, "", Verdict.NONE, "");
    }

    /** What it should show, and how far off the job lets it be. */
    private static Guide shows(Keying k) {
        InstrumentCheck check = (InstrumentCheck) k.entry();
        Checks checks = k.job().checks();
        boolean ice = check.against() == InstrumentCheck.Against.ICE_BATH;
        Amount freezing =
                k.job().system() == UnitSystem.METRIC ? Amount.of("0", Unit.DEG_C) : Amount.of("32", Unit.DEG_F);
        Optional<Amount> known =
                check.known() != null ? Optional.of(check.known()) : ice ? Optional.of(freezing) : Optional.empty();
        if (known.isEmpty()) {
            return checks.thermometerOff() == null
                    ? Guide.NOTHING
                    : said(
                            "off by at most " + AmountText.text(checks.thermometerOff()),
                            PlanRules.source(checks),
                            Verdict.NONE,
                            "");
        }
        if (checks.thermometerOff() == null) {
            return said("should show " + AmountText.plain(known.get()), "", Verdict.NONE, "");
        }
        boolean outside = InstrumentRules.off(check)
                .filter(d -> AmountText.size(d).compareTo(checks.thermometerOff()) > 0)
                .isPresent();
        return said(
                AmountText.plain(known.get()) + " ± " + AmountText.plain(checks.thermometerOff()),
                PlanRules.source(checks),
                outside ? Verdict.OUTSIDE : check.shows() == null ? Verdict.NONE : Verdict.INSIDE,
                "It should show " + AmountText.text(known.get()) + ".");
    }

    private static Guide truck(Keying k) {
        String number = ((Truck) k.entry()).truck();
        boolean listed = number == null
                || k.job().trucks().isEmpty()
                || k.job().truck(number).isPresent();
        return listed ? Guide.NOTHING : said("not in the job's list", "job", Verdict.LOOK_AGAIN, "");
    }
}
