package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.calc.PercentWithin;
import screedbook.entry.Core;
import screedbook.entry.Depth;
import screedbook.entry.Gauge;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.Result;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;
import screedbook.tally.Densities;
import screedbook.tally.Density;
import screedbook.tally.Filling;
import screedbook.tally.Lot;
import screedbook.tally.Samples;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

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
                    DensityRules::mean),
            new Rule(
                    "density-within",
                    Sort.OUTSIDE,
                    "The percent of a lot within limits is what the sheet asks for.",
                    DensityRules::within),
            new Rule(
                    "density-cold-spot",
                    Sort.OUTSIDE,
                    "Where the mat was colder than beside it, its density is what the sheet asks for.",
                    DensityRules::cold),
            new Rule(
                    "density-tests",
                    Sort.LOOK_AGAIN,
                    "A sublot that is tested has as many tests of density as the sheet asks for.",
                    DensityRules::tests),
            new Rule(
                    "of-control-strip",
                    Sort.OUTSIDE,
                    "A gauge reading is what the sheet asks for, of the control strip's density.",
                    DensityRules::ofStrip),
            new Rule(
                    "mean-of-control-strip",
                    Sort.OUTSIDE,
                    "The mean of a sublot's gauge readings is what the sheet asks for, of the control strip's density.",
                    DensityRules::meanOfStrip),
            new Rule(
                    "water-absorbed",
                    Sort.OUTSIDE,
                    "A core takes up no more water than its test method holds for.",
                    DensityRules::water),
            new Rule(
                    "core-height",
                    Sort.OUTSIDE,
                    "An untrimmed core is as high as the sheet asks for.",
                    DensityRules::height),
            new Rule(
                    "core-off-mark",
                    Sort.MISSING,
                    "A core that was cut beside its mark says why.",
                    DensityRules::offMark),
            new Rule(
                    "retest-rule",
                    Sort.LOOK_AGAIN,
                    "Where a test is repeated the job says which of them counts.",
                    DensityRules::retest));

    private DensityRules() {}

    /** Densities that this shift tells, and that could be worked out. */
    private static List<Density> told(Look look) {
        return look.samples().map(s -> s.densities().all()).orElse(List.of()).stream()
                .filter(d -> SampleRules.here(look, d.from()))
                .toList();
    }

    private static List<Mark> each(Look look, Quantity quantity) {
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            if (d.percent().known()) {
                of(look, d)
                        .ifPresent(c -> marks.addAll(Look.density(
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
                    .ifPresent(p -> Look.density(
                                    Look.usual(Quantity.DENSITY),
                                    List.of(d.from().ref()),
                                    where(d),
                                    p)
                            .forEach(m -> marks.add(m.as(Sort.LOOK_AGAIN))));
        }
        for (Standing<Core> each : look.day().standing(Core.class)) {
            marks.addAll(Look.odd(
                    Quantity.CORE_HEIGHT,
                    List.of(each.ref()),
                    name(each) + ", height",
                    each.entry().measured().height()));
        }
        return marks;
    }

    private static String name(Standing<Core> core) {
        String number = core.entry().cut().core();
        return "core " + (number == null ? core.ref() : number);
    }

    /** The lots of which this shift tells, each with the entries of this shift that tell of it. */
    private static List<Densities.OfLot> lots(Look look) {
        return look.totals().map(Acceptance::told).orElse(List.of());
    }

    private static List<Ref> entries(Look look, Densities.OfLot lot) {
        List<Ref> refs = lot.kept().stream()
                .map(Density::from)
                .filter(s -> SampleRules.here(look, s))
                .map(Standing::ref)
                .toList();
        return refs.isEmpty() ? look.shift() : refs;
    }

    /** Until no ton comes to a lot any more what it comes to may still change. */
    private static List<Mark> soFar(Look look, Densities.OfLot lot, List<Mark> marks) {
        boolean over = look.samples()
                .flatMap(s -> s.filling().lot(lot.mix(), lot.lot()))
                .map(Lot::over)
                .orElse(true);
        return over
                ? marks
                : marks.stream()
                        .map(m -> new Mark(
                                Sort.LOOK_AGAIN,
                                m.of(),
                                m.seen() + " so far",
                                m.limit(),
                                m.clause(),
                                m.inside(),
                                m.working(),
                                m.beyond()))
                        .toList();
    }

    private static Bounds bounds(Job job, SpecSheet sheet, Quantity quantity, Densities.OfLot lot) {
        return Bounds.of(sheet, quantity, Acceptance.situation(job, lot.mix()));
    }

    private static List<Mark> mean(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Densities.OfLot lot : lots(look)) {
                String where = "lot " + lot.lot() + " of " + lot.mix() + ", mean of "
                        + lot.sample().n() + " " + lot.of();
                Amount mean = new Amount(lot.sample().mean(), Unit.PERCENT);
                marks.addAll(soFar(
                        look,
                        lot,
                        Look.density(bounds(job, sheet, Quantity.DENSITY_MEAN, lot), entries(look, lot), where, mean)));
            }
            return marks;
        });
    }

    private static List<Mark> within(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Densities.OfLot lot : lots(look)) {
                Acceptance.within(look.totals().orElseThrow(), job, sheet, lot)
                        .flatMap(PercentWithin::percent)
                        .ifPresent(p -> marks.addAll(soFar(
                                look,
                                lot,
                                Look.judged(
                                        bounds(job, sheet, Quantity.DENSITY_WITHIN, lot),
                                        entries(look, lot),
                                        "lot " + lot.lot() + " of " + lot.mix() + ", within limits",
                                        new Amount(p, Unit.PERCENT),
                                        ""))));
            }
            return marks;
        });
    }

    private interface Sheeted {
        List<Mark> marks(Job job, SpecSheet sheet);
    }

    private static List<Mark> sheeted(Look look, Sheeted rule) {
        Optional<SpecSheet> sheet = look.ground().sheet();
        return look.job().isEmpty() || sheet.isEmpty() || look.samples().isEmpty()
                ? List.of()
                : rule.marks(look.job().get(), sheet.get());
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
                        .ifPresent(c -> marks.addAll(Look.density(
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

    private static List<Mark> tests(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            Samples samples = look.samples().orElseThrow();
            for (Densities.OfLot lot : lots(look)) {
                Optional<Asked> asked = Look.asked(sheet, Demand.DENSITY_TESTS, Acceptance.situation(job, lot.mix()));
                List<Lot.Sublot> over =
                        samples.filling().lot(lot.mix(), lot.lot()).map(Lot::sublots).orElse(List.of()).stream()
                                .filter(Lot.Sublot::over)
                                .toList();
                for (Lot.Sublot sublot : over) {
                    asked.filter(a -> a.count() != null)
                            .ifPresent(a -> few(look, lot, sublot.number(), a).ifPresent(marks::add));
                }
            }
            return marks;
        });
    }

    private static Optional<Mark> few(Look look, Densities.OfLot lot, int sublot, Asked asked) {
        List<Density> tests = lot.kept().stream()
                .filter(d -> d.where().map(Filling.Where::sublot).orElse(0) == sublot)
                .toList();
        long count = tests.stream().map(Density::of).distinct().count();
        List<Ref> here = tests.stream()
                .map(Density::from)
                .filter(s -> SampleRules.here(look, s))
                .map(Standing::ref)
                .toList();
        return here.isEmpty() || BigDecimal.valueOf(count).compareTo(asked.count()) >= 0
                ? Optional.empty()
                : Optional.of(new Mark(
                        here,
                        "lot " + lot.lot() + " sublot " + sublot + ": " + count + (count == 1 ? " test" : " tests")
                                + " of density",
                        asked.count().toPlainString() + " in each sublot",
                        asked.citation(),
                        asked.count().toPlainString() + " or more"));
    }

    private static List<Mark> ofStrip(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Density d : told(look)) {
            d.ofTarget()
                    .ifPresent(p -> of(look, d)
                            .ifPresent(c -> marks.addAll(Look.density(
                                    c.bounds(Quantity.OF_CONTROL_STRIP),
                                    List.of(d.from().ref()),
                                    where(d) + " of the control strip",
                                    p))));
        }
        return marks;
    }

    private static List<Mark> meanOfStrip(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Filling.Where where : told(look).stream()
                    .filter(d -> d.ofTarget().isPresent())
                    .flatMap(d -> d.where().stream())
                    .distinct()
                    .toList()) {
                List<Density> section = look.samples().orElseThrow().densities().all().stream()
                        .filter(d -> d.ofTarget().isPresent()
                                && d.where().filter(where::equals).isPresent())
                        .toList();
                BigDecimal mean = PercentWithin.Sample.of(section.stream()
                                .map(d -> d.ofTarget().orElseThrow().value())
                                .toList())
                        .mean();
                List<Ref> here = section.stream()
                        .map(Density::from)
                        .filter(s -> SampleRules.here(look, s))
                        .map(Standing::ref)
                        .toList();
                marks.addAll(Look.density(
                        Bounds.of(sheet, Quantity.MEAN_OF_CONTROL_STRIP, Acceptance.situation(job, where.mix())),
                        here,
                        where.text() + ", mean of " + section.size() + " readings of the control strip",
                        new Amount(mean, Unit.PERCENT)));
            }
            return marks;
        });
    }

    private static List<Mark> water(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Result> each : look.day().standing(Result.class)) {
            Result r = each.entry();
            if (r.what() == Result.What.WATER_ABSORBED && r.found() != null) {
                look.ofMat(each, r.mix(), null, null)
                        .ifPresent(c -> marks.addAll(Look.judged(
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
    private static List<Mark> height(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Core> each : look.day().standing(Core.class)) {
            Core c = each.entry();
            String mix = mix(look, c.spot().mix(), c.spot().lift(), c.spot().pull());
            look.ofMat(each, mix, c.spot().lift(), c.spot().pull())
                    .ifPresent(k -> marks.addAll(Look.judged(
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
                        .ifPresent(k -> marks.addAll(Look.judged(
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

    private static List<Mark> offMark(Look look) {
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

    private static String place(Station station, Amount left) {
        return (station == null ? "-" : station.text()) + (left == null ? "" : ", " + left.text() + " from left");
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
