package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Core;
import screedbook.entry.Gauge;
import screedbook.entry.Ref;
import screedbook.entry.Result;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about what a laboratory tells: values that are unlike any usual one are asked about, never judged. */
final class ResultRules {
    private static final Map<Result.What, Quantity> QUANTITIES = new EnumMap<>(Map.of(
            Result.What.GMM, Quantity.GMM,
            Result.What.GMB, Quantity.GMB,
            Result.What.DENSITY, Quantity.DENSITY,
            Result.What.AIR_VOIDS, Quantity.AIR_VOIDS,
            Result.What.BINDER_CONTENT, Quantity.BINDER_CONTENT,
            Result.What.THICKNESS, Quantity.CORE_HEIGHT,
            Result.What.RESIDUE, Quantity.RESIDUE));

    static final List<Rule> ALL = List.of(new Rule(
            "result-unusual",
            Sort.LOOK_AGAIN,
            "A laboratory's value, a Gmm or a Gmb lies where such values lie as a rule.",
            ResultRules::unusual));

    private ResultRules() {}

    private static List<Mark> unusual(Look look) {
        Set<Ref> judged = densities(look);
        List<Mark> marks = new ArrayList<>();
        for (Standing<Result> each : look.day().standing(Result.class)) {
            if (!judged.contains(each.ref())) {
                amount(look.job(), each.entry())
                        .ifPresent(a ->
                                marks.addAll(odd(QUANTITIES.get(each.entry().what()), each, name(each), a)));
            }
        }
        for (Standing<Core> each : look.day().standing(Core.class)) {
            Core.Measured m = each.entry().measured();
            if (!judged.contains(each.ref())) {
                marks.addAll(odd(Quantity.GMB, each, CutCores.name(each) + ", Gmb", gravity(m.gmb())));
            }
            marks.addAll(odd(Quantity.GMM, each, CutCores.name(each) + ", Gmm", gravity(m.gmm())));
        }
        for (Standing<Gauge> each : look.day().standing(Gauge.class)) {
            BigDecimal gmm = each.entry().reading().gmm();
            marks.addAll(odd(Quantity.GMM, each, "reading at " + each.ref() + ", Gmm", gravity(gmm)));
        }
        return marks;
    }

    /** A percent of density that comes of it is looked at already. */
    private static Set<Ref> densities(Look look) {
        Set<Ref> judged = new HashSet<>();
        DensityRules.told(look).stream()
                .filter(d -> d.percent().known())
                .forEach(d -> judged.add(d.from().ref()));
        return judged;
    }

    private static String name(Standing<Result> each) {
        Result r = each.entry();
        String of = r.sample() != null ? r.sample() : r.mix() != null ? r.mix() : "result at " + each.ref();
        return of + ", " + r.what().word().replace('-', ' ').replaceFirst("^g(m[bm])$", "G$1");
    }

    /** A specific gravity is told without a unit. */
    private static List<Mark> odd(Quantity quantity, Standing<?> each, String where, Amount value) {
        return Marks.odd(quantity, List.of(each.ref()), where, value).stream()
                .map(m -> m.told(ResultRules::bare))
                .toList();
    }

    private static String bare(String text) {
        return text.replace(" " + Unit.TIMES.symbol(), "");
    }

    private static Amount gravity(BigDecimal value) {
        return value == null ? null : new Amount(value, Unit.TIMES);
    }

    /** In the unit that goes without saying; empty where another is written, for nobody here knows what it means. */
    private static Optional<Amount> amount(Optional<Job> job, Result result) {
        if (result.found() == null
                || result.what() == null
                || !QUANTITIES.containsKey(result.what())
                || job.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = QUANTITIES.get(result.what()).measure().unit(job.get().system());
        String said = result.inUnit() == null ? "" : result.inUnit().strip();
        boolean plain = said.isEmpty() || said.equals(unit.symbol()) || said.equals(unit.suffix());
        return plain ? Optional.of(new Amount(result.found(), unit)) : Optional.empty();
    }

    /** What stands beside a value while it is keyed. */
    static Guide guide(Job job, Result result) {
        Quantity quantity = result.what() == null ? null : QUANTITIES.get(result.what());
        return quantity == null
                ? Guide.NOTHING
                : guide(job, quantity, amount(Optional.of(job), result).orElse(null));
    }

    /** The same of a specific gravity. */
    static Guide gravity(Job job, Quantity quantity, BigDecimal value) {
        return guide(job, quantity, gravity(value));
    }

    private static Guide guide(Job job, Quantity quantity, Amount value) {
        Bounds usual = Marks.usual(quantity);
        Verdict verdict = usual.of(value) == Verdict.OUTSIDE ? Verdict.LOOK_AGAIN : Verdict.NONE;
        String text = "usually " + bare(usual.text(job.system()));
        return new Guide(text, usual.clause(), verdict, usual.working(), List.of());
    }
}
