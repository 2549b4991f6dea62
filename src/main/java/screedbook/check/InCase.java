package screedbook.check;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.entry.Tack;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * Everything that a sheet and the job say of one mix on one lift, by day or by night.
 *
 * @param planned whether the lift is planned with the mix
 * @param light {@code day} or {@code night}; null where the job does not say which it is
 * @param at null for no certain hour
 */
public record InCase(
        Mix mix,
        Job.Lift lift,
        boolean planned,
        String light,
        OffsetDateTime at,
        List<Told> limits,
        List<Asked> asked) {
    /**
     * What is said of one quantity; nothing set where there is no limit.
     *
     * @param on surfaces and products under the tack; empty where all are alike, and for what is no tack
     * @param text {@code at least 35 °F, perhaps 45}, or {@code no limit set}
     * @param silent why the sheet sets none, where it says so
     */
    public record Told(Quantity quantity, String on, String text, List<End> ends, List<String> silent) {}

    /**
     * One limit with its source.
     *
     * @param sure whether it is said and known that it holds
     */
    public record End(Amount low, Amount high, boolean sure, String clause, String working) {}

    private static final List<Quantity> MAT = List.of(
            Quantity.SURFACE,
            Quantity.AIR,
            Quantity.PLANT_TARGET,
            Quantity.PLANT_MIX,
            Quantity.PLANT_DIFFERENCE,
            Quantity.PAVER_MIX,
            Quantity.PAVER_DIFFERENCE,
            Quantity.LIFT,
            Quantity.CORE_HEIGHT,
            Quantity.JOINT_OFFSET,
            Quantity.MAT_RANGE,
            Quantity.UNCOMPACTED_RANGE,
            Quantity.SPREAD);
    /** Told where the sheet has something of them. */
    private static final List<Quantity> SAID = List.of(
            Quantity.SPREAD_PAID,
            Quantity.DEPTH_DIFFERENCE,
            Quantity.MAT_BEHIND_SCREED,
            Quantity.MAT_BELOW_TARGET,
            Quantity.MAT_VIBRATED,
            Quantity.MAT_ROLLING_ENDS,
            Quantity.JOINT_ACROSS_OFFSET,
            Quantity.JOINT_NOTCH_OF_LIFT,
            Quantity.JOINT_WEDGE_SLOPE,
            Quantity.JOINT_ACROSS_SLOPE,
            Quantity.JOINT_OVERLAP,
            Quantity.JOINT_HIGHER,
            Quantity.STRAIGHTEDGE_LENGTH,
            Quantity.STRAIGHTEDGE_ALONG,
            Quantity.STRAIGHTEDGE_ACROSS,
            Quantity.STRAIGHTEDGE_OVER_JOINT,
            Quantity.DENSITY,
            Quantity.DENSITY_MEAN,
            Quantity.DENSITY_QUALITY,
            Quantity.DENSITY_WITHIN,
            Quantity.DENSITY_COLD_SPOT,
            Quantity.OF_CONTROL_STRIP,
            Quantity.MEAN_OF_CONTROL_STRIP,
            Quantity.WATER_ABSORBED);

    private static final List<Quantity> TACK =
            List.of(Quantity.TACK_APPLIED, Quantity.TACK_RESIDUAL, Quantity.TACK_WATER, Quantity.TACK_MATERIAL);

    /**
     * Every mix on every lift, by day and by night.
     *
     * @param mix only this mix; null for every one
     * @param lift only this lift; null for every one
     * @param at by the job's zone; null for day and night, whatever the date
     */
    public static List<InCase> of(Job job, SpecSheet sheet, String mix, Integer lift, LocalDateTime at) {
        OffsetDateTime hour = at == null ? null : at.atZone(job.zone()).toOffsetDateTime();
        List<InCase> cases = new ArrayList<>();
        for (Job.Lift each : job.lifts()) {
            for (Mix one : job.mixes()) {
                boolean asked = (mix == null || mix.equals(one.name())) && (lift == null || lift.equals(each.number()));
                if (asked) {
                    lights(job, hour).forEach(light -> cases.add(of(job, sheet, one, each, light.orElse(null), hour)));
                }
            }
        }
        return cases;
    }

    private static List<Optional<String>> lights(Job job, OffsetDateTime at) {
        return at == null ? List.of(Optional.of("day"), Optional.of("night")) : List.of(Cases.light(job, at));
    }

    private static InCase of(Job job, SpecSheet sheet, Mix mix, Job.Lift lift, String light, OffsetDateTime at) {
        Situation situation =
                Cases.of(job, mix.name(), Optional.of(lift), at, null).lit(light);
        List<Told> limits = new ArrayList<>();
        for (Quantity quantity : MAT) {
            Bounds bounds = bounds(job, sheet, situation, mix, quantity);
            boolean told = quantity == Quantity.PLANT_DIFFERENCE && mix.targetPlant() != null
                    || quantity == Quantity.PAVER_DIFFERENCE && mix.targetPaver() != null;
            if (!told) {
                limits.add(told(quantity, "", bounds));
            }
        }
        SAID.forEach(quantity -> {
            Bounds bounds = bounds(job, sheet, situation, mix, quantity);
            if (!bounds.noLimit()) {
                limits.add(told(quantity, "", bounds));
            }
        });
        TACK.forEach(quantity -> limits.addAll(tack(job, sheet, situation, quantity)));
        List<Asked> asked = Stream.of(Demand.values())
                .flatMap(demand -> sheet.asked(demand, situation).stream())
                .toList();
        return new InCase(mix, lift, mix.name().equals(lift.mix()), light, at, List.copyOf(limits), List.copyOf(asked));
    }

    private static Bounds bounds(Job job, SpecSheet sheet, Situation s, Mix mix, Quantity quantity) {
        if (quantity == Quantity.PLANT_MIX) {
            return Bounds.plantHeat(job, sheet, s, mix.name());
        }
        return quantity == Quantity.PAVER_MIX
                ? Bounds.paverHeat(job, sheet, s, mix.name())
                : Bounds.of(sheet, quantity, s);
    }

    private static Told told(Quantity quantity, String on, Bounds bounds) {
        List<End> ends = bounds.all().stream()
                .map(b -> new End(b.low(), b.high(), b.sure(), b.clause(), b.working()))
                .toList();
        return new Told(quantity, on, bounds.text() + unit(bounds), ends, bounds.silent());
    }

    /** A depth printed in feet is told in inches too. */
    private static String unit(Bounds bounds) {
        if (bounds.noLimit()) {
            return "";
        }
        Unit unit = bounds.all().get(0).unit();
        if (unit != Unit.FOOT || bounds.all().size() > 1) {
            return " " + unit.symbol();
        }
        Bound only = bounds.all().get(0);
        String inches = Stream.of(only.low(), only.high())
                .filter(Objects::nonNull)
                .map(end ->
                        end.to(Unit.INCH).shown(2).value().stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(" to "));
        return " ft (" + inches + " in)";
    }

    /** The limits on every surface under every product; those that are alike are told once. */
    private static List<Told> tack(Job job, SpecSheet sheet, Situation situation, Quantity quantity) {
        Map<Bounds, Set<String>> alike = new LinkedHashMap<>();
        int all = 0;
        for (Tack.Under under : Tack.Under.values()) {
            for (Job.Product product : products(job)) {
                Situation tacked = situation.tacked(under.word(), product.grade());
                Bounds bounds = Bounds.of(sheet, quantity, tacked).and(own(job, under, quantity));
                String name = product.name() == null ? "" : ", " + product.name();
                alike.computeIfAbsent(bounds, b -> new TreeSet<>()).add(under.word() + name);
                all++;
            }
        }
        List<Told> told = new ArrayList<>();
        for (Map.Entry<Bounds, Set<String>> each : alike.entrySet()) {
            String on = each.getValue().size() == all ? "" : String.join("; ", each.getValue());
            told.add(told(quantity, on, each.getKey()));
        }
        return told;
    }

    /** Without a product in the job, its grade is not known. */
    private static List<Job.Product> products(Job job) {
        return job.products().isEmpty() ? List.of(new Job.Product(null, null, null, null, null)) : job.products();
    }

    private static List<Bound> own(Job job, Tack.Under under, Quantity quantity) {
        if (quantity == Quantity.TACK_APPLIED) {
            return Shooting.own(job, under, Job.Basis.APPLIED);
        }
        return quantity == Quantity.TACK_RESIDUAL ? Shooting.own(job, under, Job.Basis.RESIDUAL) : List.of();
    }
}
