package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.calc.PercentWithin;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
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

/** What the rules about densities find of a lot, or of one of its sublots, as a whole. */
final class LotDensity {
    private LotDensity() {}

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

    static List<Mark> mean(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Densities.OfLot lot : lots(look)) {
                String where = "lot " + lot.lot() + " of " + lot.mix() + ", mean of "
                        + lot.sample().n() + " " + lot.of();
                Amount mean = new Amount(lot.sample().mean(), Unit.PERCENT);
                marks.addAll(soFar(
                        look,
                        lot,
                        Marks.density(
                                bounds(job, sheet, Quantity.DENSITY_MEAN, lot), entries(look, lot), where, mean)));
            }
            return marks;
        });
    }

    static List<Mark> within(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Densities.OfLot lot : lots(look)) {
                Acceptance.within(look.totals().orElseThrow(), job, sheet, lot)
                        .flatMap(PercentWithin::percent)
                        .ifPresent(p -> marks.addAll(soFar(
                                look,
                                lot,
                                Marks.judged(
                                        bounds(job, sheet, Quantity.DENSITY_WITHIN, lot),
                                        entries(look, lot),
                                        "lot " + lot.lot() + " of " + lot.mix() + ", within limits",
                                        new Amount(p, Unit.PERCENT),
                                        ""))));
            }
            return marks;
        });
    }

    static List<Mark> tests(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            Samples samples = look.samples().orElseThrow();
            for (Densities.OfLot lot : lots(look)) {
                Optional<Asked> asked = Marks.asked(sheet, Demand.DENSITY_TESTS, Acceptance.situation(job, lot.mix()));
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

    static List<Mark> meanOfStrip(Look look) {
        return sheeted(look, (job, sheet) -> {
            List<Mark> marks = new ArrayList<>();
            for (Filling.Where where : DensityRules.told(look).stream()
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
                marks.addAll(Marks.density(
                        Bounds.of(sheet, Quantity.MEAN_OF_CONTROL_STRIP, Acceptance.situation(job, where.mix())),
                        here,
                        where.text() + ", mean of " + section.size() + " readings of the control strip",
                        new Amount(mean, Unit.PERCENT)));
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
}
