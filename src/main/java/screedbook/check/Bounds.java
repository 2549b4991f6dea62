package screedbook.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Ruling;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** Everything that limits one value in one case. */
record Bounds(List<Bound> all, List<String> silent) {
    static final Bounds NONE = new Bounds(List.of(), List.of());

    static Bounds of(SpecSheet sheet, Quantity quantity, Situation situation) {
        Ruling ruling = sheet.ruling(quantity, situation);
        List<Bound> all = new ArrayList<>();
        ruling.inForce().forEach(limit -> all.add(Bound.of(limit, true)));
        ruling.unsure().forEach(limit -> all.add(Bound.of(limit, false)));
        return new Bounds(List.copyOf(all), ruling.silent());
    }

    /** A mix temperature: its own limits, and those around a target where there is one. */
    static Bounds heat(SpecSheet sheet, Situation situation, Quantity own, Quantity around, Optional<Amount> target) {
        Bounds bounds = of(sheet, own, situation);
        return target.isEmpty() ? bounds : bounds.and(around(sheet, situation, around, target.get()));
    }

    static Bounds plantHeat(Job job, SpecSheet sheet, Situation situation, String mix) {
        return heat(
                sheet,
                situation,
                Quantity.PLANT_MIX,
                Quantity.PLANT_DIFFERENCE,
                job.mix(mix).map(Mix::targetPlant));
    }

    static Bounds paverHeat(Job job, SpecSheet sheet, Situation situation, String mix) {
        return heat(
                sheet,
                situation,
                Quantity.PAVER_MIX,
                Quantity.PAVER_DIFFERENCE,
                job.mix(mix).map(Mix::targetPaver));
    }

    static List<Bound> around(SpecSheet sheet, Situation situation, Quantity quantity, Amount target) {
        Ruling ruling = sheet.ruling(quantity, situation);
        List<Bound> all = new ArrayList<>();
        ruling.inForce().forEach(limit -> all.add(Bound.around(target, limit, true)));
        ruling.unsure().forEach(limit -> all.add(Bound.around(target, limit, false)));
        return all;
    }

    Bounds and(List<Bound> more) {
        List<Bound> both = new ArrayList<>(all);
        both.addAll(more);
        return new Bounds(List.copyOf(both), silent);
    }

    boolean noLimit() {
        return all.isEmpty();
    }

    /** What they say of a value. One that certainly holds is enough for outside. */
    Verdict of(Amount value) {
        if (value == null) {
            return Verdict.NONE;
        }
        if (noLimit()) {
            return Verdict.NO_LIMIT;
        }
        boolean unsure = false;
        for (Bound bound : all) {
            if (bound.outside(value)) {
                if (bound.sure()) {
                    return Verdict.OUTSIDE;
                }
                unsure = true;
            }
        }
        return unsure ? Verdict.LOOK_AGAIN : Verdict.INSIDE;
    }

    /** Those outside of which a value lies, the sure ones alone where there are any. */
    List<Bound> broken(Amount value) {
        List<Bound> sure = new ArrayList<>(0);
        List<Bound> unsure = new ArrayList<>(0);
        for (Bound bound : all) {
            if (bound.outside(value)) {
                (bound.sure() ? sure : unsure).add(bound);
            }
        }
        return sure.isEmpty() ? unsure : sure;
    }

    /** {@code at least 35}; {@code at least 35, perhaps 45} where the sheet or the case leaves it open. */
    String text() {
        return text(Bound::text);
    }

    /** The same for a job; where the sheet has units of the other system both are told. */
    String text(UnitSystem system) {
        return text(b -> b.text(system));
    }

    private String text(Function<Bound, String> told) {
        if (noLimit()) {
            return "no limit set";
        }
        Optional<Bound> sure = joined(true);
        Optional<Bound> unsure = joined(false);
        if (sure.isEmpty()) {
            return "perhaps " + told.apply(unsure.get());
        }
        return told.apply(sure.get())
                + unsure.map(b -> ", perhaps " + told.apply(b)).orElse("");
    }

    /** The tightest of both ends. */
    private Optional<Bound> joined(boolean sure) {
        Amount low = null;
        Amount high = null;
        Bound any = null;
        for (Bound bound : all) {
            if (bound.sure() == sure) {
                any = bound;
                low = bound.low() != null && (low == null || low.compareTo(bound.low()) < 0) ? bound.low() : low;
                high = bound.high() != null && (high == null || high.compareTo(bound.high()) > 0) ? bound.high() : high;
            }
        }
        if (any == null) {
            return Optional.empty();
        }
        return Optional.of(new Bound(low, high, sure, any.clause(), any.rounding(), any.working()));
    }

    /** Where they come from, each once. */
    String clause() {
        Set<String> clauses = new LinkedHashSet<>();
        all.forEach(b -> clauses.add(b.clause()));
        return String.join(", ", clauses);
    }

    /** The sentences that lead to them. */
    String working() {
        Set<String> sentences = new LinkedHashSet<>();
        all.forEach(b -> sentences.add(b.working()));
        sentences.addAll(silent);
        return sentences.isEmpty() ? "The sheet has no row for this." : String.join(" ", sentences);
    }

    /** The rows of a difference to a target, as they are printed: {@code ± 25}, {@code -20 to 30}, {@code + 25 at most}. */
    static Optional<String> tolerance(SpecSheet sheet, Quantity quantity, Situation situation, UnitSystem system) {
        return sheet.ruling(quantity, situation).inForce().stream().findFirst().map(limit -> tolerance(limit, system));
    }

    private static String tolerance(Limit limit, UnitSystem system) {
        Unit own = OwnUnits.of((limit.low() == null ? limit.high() : limit.low()).unit(), system);
        Amount low = OwnUnits.least(limit.low(), own);
        Amount high = OwnUnits.most(limit.high(), own);
        boolean even = low != null && high != null && low.value().negate().compareTo(high.value()) == 0;
        if (even) {
            return "± " + AmountText.plain(high);
        }
        if (low == null) {
            return "+ " + AmountText.plain(high) + " at most";
        }
        return high == null ? limit.text() : AmountText.plain(low) + " to " + AmountText.plain(high);
    }
}
