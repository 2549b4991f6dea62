package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Core;
import screedbook.entry.Gauge;
import screedbook.entry.Profile;
import screedbook.entry.Standing;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.spec.Quantity;
import screedbook.tally.Density;

/** Rules about cores and densities. */
final class DensityRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "density",
                    Sort.OUTSIDE,
                    "A test of density lies within the limits of the sheet.",
                    look -> each(look, Quantity.DENSITY)),
            new Rule("density-unusual", Sort.LOOK_AGAIN, "A density lies in the usual range.", DensityRules::unusual),
            new Rule(
                    "density-mean",
                    Sort.OUTSIDE,
                    "The mean of a lot's densities lies within the limits of the sheet.",
                    LotDensity::mean),
            new Rule(
                    "density-within",
                    Sort.OUTSIDE,
                    "The percent of a lot within limits is what the sheet asks for.",
                    LotDensity::within),
            new Rule(
                    "density-cold-spot",
                    Sort.OUTSIDE,
                    "Where the mat was colder than beside it, its density is what the sheet asks for.",
                    DensityRules::cold),
            new Rule(
                    "density-tests",
                    Sort.LOOK_AGAIN,
                    "A sublot that is tested has as many tests of density as the sheet asks for.",
                    LotDensity::tests),
            new Rule(
                    "of-control-strip",
                    Sort.OUTSIDE,
                    "A gauge reading is what the sheet asks for, of the control strip's density.",
                    DensityRules::ofStrip),
            new Rule(
                    "mean-of-control-strip",
                    Sort.OUTSIDE,
                    "The mean of a sublot's gauge readings is what the sheet asks for, of the control strip's density.",
                    LotDensity::meanOfStrip),
            new Rule(
                    "water-absorbed",
                    Sort.OUTSIDE,
                    "A core takes up no more water than its test method holds for.",
                    CutCores::water),
            new Rule(
                    "core-height",
                    Sort.OUTSIDE,
                    "An untrimmed core is as high as the sheet asks for.",
                    CutCores::height),
            new Rule("core-off-mark", Sort.MISSING, "A core that was cut beside its mark says why.", CutCores::offMark),
            new Rule(
                    "retest-rule",
                    Sort.LOOK_AGAIN,
                    "Where a test is repeated the job says which of them counts.",
                    DensityRules::retest));

    private DensityRules() {}

    /** Densities that this shift tells, and that could be worked out. */
    static List<Density> told(Look look) {
        return look.samples().map(s -> s.densities().all()).orElse(List.of()).stream()
                .filter(d -> SampleRules.here(look, d.from()))
                .toList();
    }

    private static List<Mark> each(Look look, Quantity quantity) {
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            if (d.percent().known()) {
                of(look, d)
                        .ifPresent(c -> marks.addAll(Marks.density(
                                c.bounds(quantity),
                                List.of(d.from().ref()),
                                where(d),
                                d.percent().amount())));
            }
        }
        return marks;
    }

    private static String where(Density d) {
        return d.name() + (d.place() == null ? "" : " at " + d.place()) + ", density";
    }

    private static Optional<Case> of(Look look, Density d) {
        if (d.of().entry() instanceof Core c) {
            return look.ofMat(d.from(), d.mix(), c.spot().lift(), c.spot().pull());
        }
        Gauge g = (Gauge) d.of().entry();
        return look.ofMat(d.from(), d.mix(), g.spot().lift(), g.spot().pull());
    }

    private static List<Mark> unusual(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            d.percent()
                    .seen()
                    .ifPresent(p -> Marks.density(
                                    Marks.usual(Quantity.DENSITY),
                                    List.of(d.from().ref()),
                                    where(d),
                                    p)
                            .forEach(m -> marks.add(m.as(Sort.LOOK_AGAIN))));
        }
        for (Standing<Core> each : look.day().standing(Core.class)) {
            marks.addAll(Marks.odd(
                    Quantity.CORE_HEIGHT,
                    List.of(each.ref()),
                    CutCores.name(each) + ", height",
                    each.entry().measured().height()));
        }
        return marks;
    }

    /** Within a length of which a thermal profile says that the density is to be looked at. */
    private static List<Mark> cold(Look look) {
        List<Standing<Profile>> cold = look.day().standing(Profile.class).stream()
                .filter(p -> p.entry().densityWanted() == YesNo.YES)
                .toList();
        if (cold.isEmpty() || look.job().isEmpty()) {
            return List.of();
        }
        Road road = Road.of(look.job().get());
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            boolean there =
                    d.place() != null && d.percent().known() && cold.stream().anyMatch(p -> covers(road, p.entry(), d));
            if (there) {
                of(look, d)
                        .ifPresent(c -> marks.addAll(Marks.density(
                                c.bounds(Quantity.DENSITY_COLD_SPOT),
                                List.of(d.from().ref()),
                                where(d) + " at a cold spot",
                                d.percent().amount())));
            }
        }
        return marks;
    }

    private static boolean covers(Road road, Profile profile, Density d) {
        String pull = d.of().entry() instanceof Core c
                ? c.spot().pull()
                : ((Gauge) d.of().entry()).spot().pull();
        if (profile.from() == null || profile.to() == null || !Objects.equals(pull, profile.pull())) {
            return false;
        }
        return road.between(road.along(d.place()), profile.from(), profile.to());
    }

    private static List<Mark> ofStrip(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            d.ofTarget()
                    .ifPresent(p -> of(look, d)
                            .ifPresent(c -> marks.addAll(Marks.density(
                                    c.bounds(Quantity.OF_CONTROL_STRIP),
                                    List.of(d.from().ref()),
                                    where(d) + " of the control strip",
                                    p))));
        }
        return marks;
    }

    private static List<Mark> retest(Look look) {
        Optional<Job> job = look.job();
        if (job.isEmpty() || job.get().lots() != null && job.get().lots().retest() != null) {
            return List.of();
        }
        return told(look).stream()
                .filter(d -> d.again() && !d.counts())
                .map(d -> new Mark(
                        d.from().ref(),
                        where(d) + " " + d.percent().text(1) + ", a test of the same place again; the first is counted",
                        "which of a test and its repeat counts",
                        "the contract",
                        "the job's lots saying first, newer or both"))
                .toList();
    }
}
