package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.calc.CorrectionTable;
import screedbook.calc.Dilution;
import screedbook.calc.TackRate;
import screedbook.calc.VolumeCorrection;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;

/** The tack that a plan takes: areas by surface, rates, volumes, tank loads, contact faces, samples. */
final class TackPlan {
    private static final String ORDER = "always to the next higher number (NAVEDTRA 14081, prime and tack examples)";
    private static final Dilution HALF = Dilution.of("1", "1");

    private final Job job;
    private final Function<Job.Product, Optional<Spray>> sprays;
    private final Figures figures = new Figures();
    private final Map<Tack.Under, List<Length>> surfaces = new EnumMap<>(Tack.Under.class);
    private final List<Length> unsettled = new ArrayList<>();

    private TackPlan(Job job, Function<Job.Product, Optional<Spray>> sprays) {
        this.job = job;
        this.sprays = sprays;
    }

    static Section of(Job job, Function<Job.Product, Optional<Spray>> sprays) {
        TackPlan plan = new TackPlan(job, sprays);
        List<Length> all = Length.all(job);
        all.forEach(plan::lay);
        plan.areas();
        job.products().forEach(plan::product);
        plan.faces(all);
        if (!all.isEmpty() && job.checks().tackSamples() > 0) {
            plan.figures.count(
                    "plan-tack-samples",
                    "samples of tack in the job",
                    job.checks().tackSamples(),
                    plan.working("the job's checks", List.of(), "job, checks"));
        }
        return plan.figures.section("plan-tack", "Tack");
    }

    /** What a lift is laid on: the lowest on its base, the others on a new one. An aggregate base is not tacked. */
    private void lay(Length length) {
        int lowest = job.lifts().stream().mapToInt(Job.Lift::number).min().orElse(0);
        Surface.Base base = length.lift().base();
        if (length.lift().number() > lowest) {
            add(Tack.Under.NEW, length);
        } else if (base == Surface.Base.CONCRETE) {
            add(Tack.Under.CONCRETE, length);
        } else if (base != Surface.Base.AGGREGATE) {
            boolean milled = job.tackTarget(Tack.Under.MILLED).isPresent();
            boolean existing = job.tackTarget(Tack.Under.EXISTING).isPresent();
            if (milled == existing) {
                unsettled.add(length);
            } else {
                add(milled ? Tack.Under.MILLED : Tack.Under.EXISTING, length);
            }
        }
    }

    private void add(Tack.Under surface, Length length) {
        surfaces.computeIfAbsent(surface, s -> new ArrayList<>()).add(length);
    }

    private Working working(String formula, List<String> put, String source) {
        return new Working(formula, List.copyOf(put), List.of(), source);
    }

    private void areas() {
        surfaces.forEach((surface, lengths) -> figures.amount(
                "plan-tack-area." + surface.word(),
                "on " + surface.word() + ", area",
                area(lengths),
                0,
                areaWorking(lengths)));
        if (!unsettled.isEmpty()) {
            figures.text(
                    "plan-tack-area.unsettled",
                    "on existing or milled, area",
                    area(unsettled).shown(0).text() + "; the job's tack targets do not tell which of the two it is",
                    areaWorking(unsettled));
        }
    }

    private static Amount area(List<Length> lengths) {
        return lengths.stream().map(Length::area).reduce(Amount::plus).orElseThrow();
    }

    private Working areaWorking(List<Length> lengths) {
        return working(
                "area = width x length, stretch by stretch",
                lengths.stream().map(Length::put).toList(),
                "planned stretches and pulls of the job");
    }

    private void product(Job.Product product) {
        Amount sum = null;
        List<String> put = new ArrayList<>();
        for (Map.Entry<Tack.Under, List<Length>> each : surfaces.entrySet()) {
            Optional<Job.TackTarget> target = job.tackTarget(each.getKey());
            String tail = "." + product.name() + "." + each.getKey().word();
            String of = product.name() + " on " + each.getKey().word() + ", ";
            if (target.isEmpty()) {
                figures.text(
                        "plan-tack-rate" + tail,
                        of + "rate",
                        "no target is settled",
                        working("the job's tack targets", List.of(), "job, tack targets"));
                continue;
            }
            Reckoned applied = applied(product, target.get());
            figures.reckoned(
                    "plan-tack-rate" + tail, of + "spray at base temperature", applied, 3, rate(product, target.get()));
            diluted(product, target.get(), tail, of);
            if (applied.known()) {
                Amount area = area(each.getValue());
                Amount volume = TackRate.volumeFor(area, applied.amount(), BigDecimal.ZERO);
                String step = area.shown(1).text() + " x " + applied.text(4) + " = "
                        + volume.shown(1).text();
                figures.amount(
                        "plan-tack-volume" + tail,
                        of + base() + ", to order",
                        TackRate.toOrder(volume),
                        0,
                        working(
                                "volume = area x rate, nothing added for loss; " + ORDER,
                                List.of(step),
                                "US Army FM 5-436, chapter 6; NAVEDTRA 14081"));
                sum = sum == null ? volume : sum.plus(volume);
                put.add(step);
            }
        }
        if (sum != null) {
            total(product, sum, put);
        }
    }

    private static Job.Basis basis(Job.TackTarget target) {
        return target.basis() == null ? Job.Basis.RESIDUAL : target.basis();
    }

    private static Optional<BigDecimal> residue(Job.Product product) {
        return Optional.ofNullable(product.residue())
                .map(Amount::value)
                .filter(r -> r.signum() > 0 && r.compareTo(BigDecimal.valueOf(100)) <= 0);
    }

    private static Reckoned applied(Job.Product product, Job.TackTarget target) {
        if (basis(target) == Job.Basis.APPLIED) {
            return Reckoned.of(target.rate());
        }
        return residue(product)
                .map(r -> Reckoned.of(TackRate.appliedFor(target.rate(), r, Dilution.NONE)))
                .orElse(Reckoned.not("no residue set for the product"));
    }

    private Working rate(Job.Product product, Job.TackTarget target) {
        String source = target.source() == null ? "job, tack targets" : target.source();
        String agreed = "target " + target.rate().text() + " " + basis(target).word();
        return basis(target) == Job.Basis.APPLIED
                ? working("the target is what is sprayed", List.of(agreed), source)
                : working(
                        "sprayed = residual x 100 / residue, undiluted",
                        List.of(
                                agreed,
                                "residue "
                                        + (product.residue() == null
                                                ? "not set"
                                                : product.residue().text())),
                        source + "; Asphalt Institute, answer on tack rates, the other way round");
    }

    /** Only where the job allows water and the target is what stays. */
    private void diluted(Job.Product product, Job.TackTarget target, String tail, String of) {
        if (product.dilution() != YesNo.YES
                || basis(target) != Job.Basis.RESIDUAL
                || residue(product).isEmpty()) {
            return;
        }
        Amount rate = TackRate.appliedFor(target.rate(), residue(product).get(), HALF);
        figures.amount(
                "plan-tack-rate-diluted" + tail,
                of + "spray if diluted 1:1",
                rate,
                3,
                working(
                        "sprayed = residual x 100 / residue x (emulsion + water) / emulsion",
                        List.of("one part of emulsion to one of water"),
                        "Asphalt Institute, answer on tack rates, the other way round"));
    }

    private String base() {
        return "at " + (job.units() == Job.Units.METRIC ? "15 °C" : "60 °F");
    }

    private void total(Job.Product product, Amount sum, List<String> put) {
        figures.amount(
                "plan-tack-total." + product.name(),
                product.name() + ", all surfaces " + base() + ", to order",
                TackRate.toOrder(sum),
                0,
                working("sum of the surfaces; " + ORDER, put, "NAVEDTRA 14081"));
        Optional<Spray> spray = sprays.apply(product);
        figures.text(
                "plan-tack-spray." + product.name(),
                product.name() + ", sprayed at",
                spray.map(TackPlan::range).orElse("no range is set"),
                working(
                        "the limit sheet's range for the grade",
                        List.of(),
                        spray.map(Spray::source).orElse("the limit sheet sets none")));
        sprayed(
                product,
                sum,
                spray.stream()
                        .flatMap(s -> Stream.of(s.low(), s.high()))
                        .filter(Objects::nonNull)
                        .toList());
    }

    /** The volume as it is at the ends of the range, and what that makes of full tanks. */
    private void sprayed(Job.Product product, Amount sum, List<Amount> heats) {
        Optional<CorrectionTable> table =
                Optional.ofNullable(product.correction()).flatMap(CorrectionTable::ofKey);
        Amount most = sum;
        String at = base();
        for (Amount heat : table.isPresent() ? heats : List.<Amount>of()) {
            Amount volume = warm(table.get(), sum, heat);
            most = volume.compareTo(most) > 0 ? volume : most;
            at = "at " + heat.text();
            figures.amount(
                    "plan-tack-warm." + product.name() + "." + heat.value().toPlainString(),
                    product.name() + ", all surfaces at " + heat.text(),
                    TackRate.toOrder(volume),
                    0,
                    working(
                            "volume as measured = volume " + base() + " / factor; " + ORDER,
                            List.of(sum.shown(1).text() + " / "
                                    + VolumeCorrection.factor(table.get(), heat).toPlainString() + " = "
                                    + volume.shown(1).text()),
                            table.get().source()));
        }
        tanks(product, most, at);
    }

    private static Amount warm(CorrectionTable table, Amount atBase, Amount heat) {
        BigDecimal factor = VolumeCorrection.factor(table, heat);
        return new Amount(atBase.value().divide(factor, MathContext.DECIMAL128), atBase.unit());
    }

    private static String range(Spray spray) {
        if (spray.low() == null || spray.high() == null) {
            return spray.low() == null
                    ? "at most " + spray.high().text()
                    : "at least " + spray.low().text();
        }
        return spray.low().value().toPlainString() + " to " + spray.high().text();
    }

    /** Full loads of each distributor that has a strapping table, for the volume as it is when it is sprayed warmest. */
    private void tanks(Job.Product product, Amount volume, String at) {
        for (Job.Distributor tank : job.distributors()) {
            Optional<Amount> holds = tank.strapping().stream()
                    .map(Job.Strap::volume)
                    .max(Comparator.naturalOrder())
                    .filter(most -> most.value().signum() > 0);
            holds.ifPresent(full -> {
                BigDecimal loads = volume.value().divide(full.to(volume.unit()).value(), MathContext.DECIMAL128);
                figures.count(
                        "plan-tack-loads." + product.name() + "." + tank.name(),
                        product.name() + ", full tanks of " + tank.name(),
                        loads.setScale(0, RoundingMode.CEILING).intValueExact(),
                        working(
                                "volume / the most that the strapping table holds, rounded up",
                                List.of(volume.shown(1).text() + " " + at + " / " + full.text() + " = "
                                        + loads.setScale(2, RoundingMode.HALF_UP)
                                                .toPlainString()),
                                "strapping table of the job; common practice, no source"));
            });
        }
    }

    /** Longitudinal faces: edges that two planned pulls of a lift share, as far as both are planned. */
    private void faces(List<Length> all) {
        Road road = Road.of(job);
        Map<Integer, Amount> lengths = new TreeMap<>();
        Map<Integer, List<String>> put = new TreeMap<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                Length one = all.get(i);
                Length other = all.get(j);
                BigDecimal both = together(road, one, other);
                if (one.lift().equals(other.lift()) && touch(one.pull(), other.pull()) && both.signum() > 0) {
                    Amount along = new Amount(both, one.along().unit());
                    lengths.merge(one.lift().number(), along, Amount::plus);
                    put.computeIfAbsent(one.lift().number(), n -> new ArrayList<>())
                            .add(one.pull().name() + " beside " + other.pull().name() + " " + along.text());
                }
            }
        }
        lengths.forEach((lift, along) -> figures.amount(
                "plan-tack-face.lift " + lift,
                "joint faces of lift " + lift,
                along,
                0,
                working(
                        "length over which two planned pulls of the lift touch; transverse joints, curbs and castings are"
                                + " not in it",
                        put.get(lift),
                        "planned stretches and pulls of the job")));
    }

    private static boolean touch(Job.Pull one, Job.Pull other) {
        return one.right().compareTo(other.left()) == 0 || one.left().compareTo(other.right()) == 0;
    }

    private static BigDecimal together(Road road, Length one, Length other) {
        BigDecimal a = road.along(one.stretch().from());
        BigDecimal b = road.along(one.stretch().to());
        BigDecimal c = road.along(other.stretch().from());
        BigDecimal d = road.along(other.stretch().to());
        return a.max(b).min(c.max(d)).subtract(a.min(b).max(c.min(d)));
    }
}
