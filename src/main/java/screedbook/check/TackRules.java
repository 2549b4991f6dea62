package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.tally.Reckoned;
import screedbook.tally.Shot;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about tack: what was sprayed, and what was laid on it. */
final class TackRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "tack-rate",
                    Sort.OUTSIDE,
                    "A tack rate lies within the limits and the target of its surface.",
                    TackRules::rate),
            new Rule(
                    "tack-rate-unusual", Sort.LOOK_AGAIN, "A tack rate lies where tack rates lie.", TackRules::oddRate),
            new Rule(
                    "tack-volume-not-known",
                    Sort.MISSING,
                    "What a shot took, and of what area, is noted.",
                    TackRules::notKnown),
            new Rule(
                    "tack-after-above-before",
                    Sort.DOES_NOT_ADD_UP,
                    "A tank holds less after a shot than before it, a meter shows more.",
                    TackRules::rises),
            new Rule(
                    "tack-temperature-not-noted",
                    Sort.MISSING,
                    "A volume that is not at 60 °F has the temperature of the material.",
                    TackRules::cold),
            new Rule(
                    "tack-temperature",
                    Sort.OUTSIDE,
                    "The material is as warm as the sheet says when it is sprayed.",
                    TackRules::material),
            new Rule(
                    "tack-diluted",
                    Sort.OUTSIDE,
                    "Tack is sprayed undiluted where the sheet or the job does not allow water.",
                    TackRules::diluted),
            new Rule("tack-ratio-not-known", Sort.MISSING, "Of diluted tack the parts are noted.", TackRules::ratio),
            new Rule(
                    "tack-not-broken",
                    Sort.LOOK_AGAIN,
                    "Tack is noted as broken before it is paved over.",
                    CoveredTack::notBroken),
            new Rule(
                    "tack-rained-on",
                    Sort.LOOK_AGAIN,
                    "Tack on which rain fell is sprayed again before it is paved over.",
                    CoveredTack::rained),
            new Rule("tack-face", Sort.MISSING, "The contact faces of a pull are tacked.", CoveredTack::face),
            new Rule(
                    "tack-under-mat",
                    Sort.DOES_NOT_ADD_UP,
                    "Where tack was sprayed for a pull, it lies under all that was paved of it.",
                    CoveredTack::under),
            new Rule(
                    "tack-sample",
                    Sort.MISSING,
                    "As many tack samples as the sheet asks for are taken on the project.",
                    TackRules::sample),
            new Rule(
                    "tack-residue",
                    Sort.MISSING,
                    "The residue of a product is in the job, to be held against its specification.",
                    TackRules::residue),
            new Rule(
                    "tack-hand-work",
                    Sort.MISSING,
                    "Of a volume that was not read off a gauge it is noted how it is known.",
                    TackRules::handWork));

    private TackRules() {}

    private static List<Shot> shots(Look look) {
        return look.totals().map(Totals::shots).orElse(List.of());
    }

    private static String name(Shot shot) {
        return shot.name() + place(shot.tack().entry());
    }

    static String place(Tack tack) {
        Tack.Target t = tack.target();
        return t.from() == null || t.to() == null ? "" : " " + t.from() + " to " + t.to();
    }

    private static List<Mark> rate(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Shot shot : shots(look)) {
            marks.addAll(rate(look, shot, Job.Basis.APPLIED, shot.applied()));
            marks.addAll(rate(look, shot, Job.Basis.RESIDUAL, shot.residual()));
        }
        return marks;
    }

    private static List<Mark> rate(Look look, Shot shot, Job.Basis basis, Reckoned rate) {
        Optional<Job> job = look.job(shot.tack());
        if (job.isEmpty() || !rate.known()) {
            return List.of();
        }
        Bounds bounds = Shooting.rate(
                job.get(),
                look.sheet(shot.tack()),
                shot.tack().entry(),
                shot.tack().order(),
                basis);
        String where = name(shot) + ": " + basis.word();
        return Marks.judged(bounds, shot.entries(), where, rate.amount(), "").stream()
                .map(m -> m.because(m.working() + " " + String.join("; ", shot.put())))
                .toList();
    }

    private static List<Mark> oddRate(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Shot shot : shots(look)) {
            shot.applied()
                    .seen()
                    .ifPresent(a -> Marks.odd(Quantity.TACK_APPLIED, shot.entries(), name(shot) + ": applied", a)
                            .forEach(m -> marks.add(m.because(m.working() + " " + String.join("; ", shot.put())))));
        }
        return marks;
    }

    private static List<Mark> notKnown(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Shot shot : shots(look)) {
            Optional<Job> job = look.job(shot.tack());
            boolean rises =
                    job.isPresent() && Shooting.rises(job.get(), shot.tack().entry());
            boolean face = shot.tack().entry().target().face() != null;
            if (!rises && !face && !shot.applied().known()) {
                String why = shot.applied().why();
                marks.add(new Mark(
                        shot.tack().ref(),
                        name(shot) + ": no rate, " + why,
                        "a shot has its volume and its area",
                        "common practice",
                        "readings before and after, stations and width"));
            }
        }
        return marks;
    }

    private static List<Mark> rises(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Shot shot : shots(look)) {
            Optional<Job> job = look.job(shot.tack());
            boolean refilled = shot.entries().size() > 1;
            if (job.isPresent()
                    && !refilled
                    && Shooting.rises(job.get(), shot.tack().entry())) {
                Tack.Gauge g = shot.tack().entry().gauge();
                Amount before = g.before() == null ? g.depthBefore() : g.before();
                Amount after = g.after() == null ? g.depthAfter() : g.after();
                marks.add(new Mark(
                        shot.tack().ref(),
                        name(shot) + ": before " + before.text() + ", after " + after.text(),
                        "a tank falls and a meter rises",
                        "common practice",
                        "an entry of the refill between, or the readings the other way round"));
            }
        }
        return marks;
    }

    private static List<Mark> cold(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            Tack.Gauge g = t.entry().gauge();
            boolean volume = g.used() != null || g.after() != null || g.depthAfter() != null;
            if (g.material() == null && g.at60() != YesNo.YES && volume) {
                marks.add(new Mark(
                        t.ref(),
                        "tack" + place(t.entry()) + ": temperature of the material not noted",
                        "a volume is told at 60 °F (15 °C)",
                        "common practice",
                        "the temperature, or that the volume is at 60 °F (15 °C) already"));
            }
        }
        return marks;
    }

    private static List<Mark> material(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            Amount heat = t.entry().gauge().material();
            Optional<Bounds> bounds = look.ofTack(t).map(c -> c.bounds(Quantity.TACK_MATERIAL));
            if (heat != null && bounds.isPresent()) {
                marks.addAll(Marks.judged(bounds.get(), List.of(t.ref()), "tack material", heat, ""));
                if (bounds.get().noLimit()) {
                    marks.addAll(Marks.odd(Quantity.TACK_MATERIAL, List.of(t.ref()), "tack material", heat));
                }
            }
        }
        return marks;
    }

    private static List<Mark> diluted(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            Optional<Job> job = look.job(t);
            if (Shooting.diluted(t.entry()) && job.isPresent() && !Shooting.dilutionAllowed(job.get(), t.entry())) {
                look.ofTack(t)
                        .flatMap(c -> c.asked(Demand.TACK_UNDILUTED))
                        .ifPresent(a -> marks.add(Mark.asked(
                                a,
                                t.ref(),
                                "tack" + place(t.entry()) + " diluted"
                                        + parts(t.entry().product()),
                                "undiluted, or dilution allowed for the product in the job")));
            }
            marks.addAll(water(look, t));
        }
        return marks;
    }

    /** The water as far as the parts were noted, whatever the job allows. */
    private static List<Mark> water(Look look, Standing<Tack> t) {
        Tack.Product p = t.entry().product();
        boolean known = p.emulsionParts() != null && p.waterParts() != null;
        if (!known || p.emulsionParts().signum() <= 0) {
            return List.of();
        }
        Amount water = new Amount(
                p.waterParts().movePointRight(2).divide(p.emulsionParts(), MathContext.DECIMAL128), Unit.PERCENT);
        return look.ofTack(t)
                .map(c -> Marks.judged(
                        c.bounds(Quantity.TACK_WATER),
                        List.of(t.ref()),
                        "tack" + place(t.entry()) + parts(p) + ": water, of the emulsion,",
                        water,
                        ""))
                .orElse(List.of());
    }

    private static String parts(Tack.Product p) {
        return p.emulsionParts() == null || p.waterParts() == null
                ? ", ratio not noted"
                : ", emulsion to water " + p.emulsionParts().toPlainString() + ":"
                        + p.waterParts().toPlainString();
    }

    private static List<Mark> ratio(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            Tack.Product p = t.entry().product();
            boolean known = p.emulsionParts() != null && p.waterParts() != null;
            if (Shooting.diluted(t.entry()) && (!known || p.diluted() == Tack.Dilution.RATIO_UNKNOWN)) {
                marks.add(new Mark(
                        t.ref(),
                        "tack" + place(t.entry()) + " diluted, ratio not noted; no residual rate",
                        "parts emulsion to parts water",
                        "common practice",
                        "both parts, and who diluted it"));
            }
        }
        return marks;
    }

    private static List<Mark> sample(Look look) {
        if (look.tacks().isEmpty() || look.totals().isEmpty()) {
            return List.of();
        }
        Standing<Tack> first = look.tacks().get(0);
        long here = look.tacks().stream()
                .map(t -> t.entry().after())
                .filter(a -> a.sample() != null || a.sealNumber() != null)
                .count();
        long taken = here + look.totals().get().before().tackSamples();
        return look.ofTack(first)
                .flatMap(c -> c.asked(Demand.TACK_SAMPLED))
                .filter(a -> a.count() != null && BigDecimal.valueOf(taken).compareTo(a.count()) < 0)
                .map(a -> List.of(Mark.asked(
                        a,
                        first.ref(),
                        "tack samples noted on this project: " + taken,
                        "at least " + a.count().toPlainString() + ", with its seal")))
                .orElse(List.of());
    }

    private static List<Mark> residue(Look look) {
        Set<String> said = new LinkedHashSet<>();
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            String product = t.entry().product().product();
            boolean set = look.job(t)
                    .flatMap(j -> j.product(product))
                    .map(p -> p.residue() != null)
                    .orElse(false);
            if (!set && said.add(String.valueOf(product))) {
                look.ofTack(t)
                        .flatMap(c -> c.asked(Demand.TACK_RESIDUE))
                        .ifPresent(a -> marks.add(Mark.asked(
                                a,
                                t.ref(),
                                (product == null ? "tack without a product" : product) + ": residue not in the job",
                                "the residue of the product in the job")));
            }
        }
        return marks;
    }

    private static List<Mark> handWork(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Tack> t : look.tacks()) {
            Tack.Gauge g = t.entry().gauge();
            if (g.used() != null && g.basis() == null) {
                marks.add(new Mark(
                        t.ref(),
                        "tack" + place(t.entry()) + ": used " + g.used().text() + ", known by: not noted",
                        "how a volume is known",
                        "common practice",
                        "delivery paper, bucket count, estimate"));
            }
        }
        return marks;
    }
}
