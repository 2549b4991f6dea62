package screedbook.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.job.Planning;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The target discharge temperatures of a mix that keep its loads inside at the plant and, after the haul's loss, at the
 * paver, each with the tolerance that the plant has around its target. Every figure is in the job's degrees.
 *
 * @param lift number of the lift that the mix is for; null where no lift has it
 * @param haul null where no haul of the mix is settled, and then no loss is counted
 * @param below how far loads may be under the target; 0 where the sheet has no tolerance
 * @param above how far they may be over it
 * @param floor the lowest target; null where nothing limits it
 * @param ceiling the highest target; null where nothing limits it
 * @param target as the job settles it; null where it does not
 */
public record HeatBand(
        String mix,
        Integer lift,
        Planning.Haul haul,
        Unit unit,
        BigDecimal loss,
        BigDecimal below,
        BigDecimal above,
        boolean tolerance,
        Optional<End> floor,
        Optional<End> ceiling,
        BigDecimal target,
        String aid) {

    /**
     * One end of the window.
     *
     * @param at the target itself
     * @param limit what it comes from: a temperature of loads, or of the target where {@code ofTarget}
     * @param where {@code at the paver}, {@code at the plant} or {@code target}
     * @param steps the sum that leads to it
     * @param sure whether the limit is said and known to hold
     */
    public record End(BigDecimal at, BigDecimal limit, String where, String clause, String steps, boolean sure) {}

    /** The windows of every mix of a plan: for each lift that has it, and each haul by which it comes. */
    public static List<HeatBand> all(Job job, SpecSheet sheet) {
        Set<HeatBand> bands = new LinkedHashSet<>();
        for (Mix mix : job.mixes()) {
            List<Job.Lift> lifts =
                    job.lifts().stream().filter(l -> l.mix().equals(mix.name())).toList();
            if (lifts.isEmpty()) {
                hauls(job, mix, null, bands, sheet);
            }
            lifts.forEach(lift -> hauls(job, mix, lift, bands, sheet));
        }
        return List.copyOf(bands);
    }

    private static void hauls(Job job, Mix mix, Job.Lift lift, Set<HeatBand> bands, SpecSheet sheet) {
        List<Planning.Haul> hauls = job.planning().hauls(mix.name());
        if (hauls.isEmpty()) {
            bands.add(of(job, sheet, mix, lift, null));
        }
        hauls.forEach(haul -> bands.add(of(job, sheet, mix, lift, haul)));
    }

    /**
     * The window of one mix on one lift by one haul.
     *
     * @param lift null for a mix that no lift has
     * @param haul null where none is settled
     */
    public static HeatBand of(Job job, SpecSheet sheet, Mix mix, Job.Lift lift, Planning.Haul haul) {
        Situation s = Cases.of(job, mix.name(), Optional.ofNullable(lift), null, null);
        return new Making(job, sheet, mix, s, haul).band(lift == null ? null : lift.number());
    }

    /** Whether no target holds both limits. */
    public boolean empty() {
        return floor.isPresent()
                && ceiling.isPresent()
                && floor.get().at().compareTo(ceiling.get().at()) > 0;
    }

    /** Whether both ends are sure to hold. */
    boolean sure() {
        return floor.map(End::sure).orElse(true) && ceiling.map(End::sure).orElse(true);
    }

    /** Whether the settled target lies in the window; empty where no target is settled or nothing limits it. */
    public Optional<Boolean> holdsTarget() {
        if (target == null || floor.isEmpty() && ceiling.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(floor.map(f -> f.at().compareTo(target) <= 0).orElse(true)
                && ceiling.map(c -> target.compareTo(c.at()) <= 0).orElse(true));
    }

    /**
     * The greatest loss on the way with which there still is a target; below zero where not even a haul without loss
     * has one. Empty where the two limits are not one at the paver and one before it.
     */
    public Optional<Amount> mostLoss() {
        if (floor.isEmpty() || ceiling.isEmpty() || !floor.get().where().equals(Making.PAVER)) {
            return Optional.empty();
        }
        BigDecimal most = loss.add(ceiling.get().at()).subtract(floor.get().at());
        return Optional.of(new Amount(most, unit.difference()));
    }

    /** {@code 285 to 300 °F}, {@code at least 285 °F}, {@code no limit set}, {@code no target}. */
    public String text() {
        if (empty()) {
            return "no target";
        }
        String sign = " " + unit.symbol();
        if (floor.isPresent() && ceiling.isPresent()) {
            return plain(floor.get().at()) + " to " + plain(ceiling.get().at()) + sign;
        }
        return floor.map(f -> "at least " + plain(f.at()) + sign)
                .or(() -> ceiling.map(c -> "at most " + plain(c.at()) + sign))
                .orElse("no limit set");
    }

    /** As written; what was turned from another unit to a tenth. */
    static String plain(BigDecimal number) {
        BigDecimal told = number.scale() > 3 ? number.setScale(1, RoundingMode.HALF_UP) : number;
        BigDecimal bare = told.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }

    /** {@code 19-64 on lift 1 from Quarry Road, summer, 40 min}. */
    public String name() {
        StringBuilder name = new StringBuilder(mix);
        if (lift != null) {
            name.append(" on lift ").append(lift);
        }
        if (haul == null) {
            return name.append(", no haul settled").toString();
        }
        name.append(" from ").append(haul.plant());
        if (haul.season() != null) {
            name.append(", ").append(haul.season());
        }
        if (haul.minutes() != null) {
            name.append(", ").append(haul.minutes().text());
        }
        return name.toString();
    }

    /** What would open an empty window; another binder grade is never among it. */
    public List<String> opens() {
        if (!empty()) {
            return List.of();
        }
        List<String> opens = new ArrayList<>();
        mostLoss().ifPresent(most -> opens.add(lossOpens(most)));
        tightOpens().ifPresent(opens::add);
        if (!"warm-mix".equals(aid)) {
            opens.add("warm mix, where the contract lets it be cooler at the paver");
        }
        return opens;
    }

    private String lossOpens(Amount most) {
        if (most.value().signum() < 0) {
            return "nothing on the way, since even without any loss the limits are "
                    + plain(most.value().negate()) + " " + unit.symbol() + " too near to each other";
        }
        boolean insulated = haul != null && haul.insulated() == YesNo.YES;
        return "a loss of at most " + plain(most.value()) + " " + unit.symbol() + " on the way: a shorter haul"
                + (insulated ? "" : ", insulated bodies") + " or trucks that lose less";
    }

    /** Limits as they are, loads nearer to the target. */
    private Optional<String> tightOpens() {
        BigDecimal room = above.add(below)
                .add(ceiling.orElseThrow().at())
                .subtract(floor.orElseThrow().at());
        boolean wide = tolerance && room.signum() > 0 && above.compareTo(below) == 0;
        return wide
                ? Optional.of("a plant that keeps its loads within "
                        + plain(room.divide(BigDecimal.valueOf(2), MathContext.DECIMAL128)) + " " + unit.symbol()
                        + " of the target")
                : Optional.empty();
    }

    /** One window while it is made. */
    private static final class Making {
        static final String PAVER = "at the paver";
        static final String PLANT = "at the plant";
        static final String TARGET = "target";

        private final Job job;
        private final SpecSheet sheet;
        private final Mix mix;
        private final Situation s;
        private final Planning.Haul haul;
        private final Unit unit;
        private final BigDecimal loss;
        private BigDecimal below;
        private BigDecimal above;

        Making(Job job, SpecSheet sheet, Mix mix, Situation s, Planning.Haul haul) {
            this.job = job;
            this.sheet = sheet;
            this.mix = mix;
            this.s = s;
            this.haul = haul;
            this.unit = Measure.TEMPERATURE.unit(job.system());
            this.loss = haul == null
                    ? BigDecimal.ZERO
                    : haul.loss().to(unit.difference()).value();
        }

        HeatBand band(Integer lift) {
            List<Limit> around = sheet.ruling(Quantity.PLANT_DIFFERENCE, s).inForce();
            below = side(around, true);
            above = side(around, false);
            return new HeatBand(
                    mix.name(),
                    lift,
                    haul,
                    unit,
                    loss,
                    below,
                    above,
                    !around.isEmpty(),
                    tightest(floors(), true),
                    tightest(ceilings(), false),
                    mix.targetPlant() == null
                            ? null
                            : mix.targetPlant().to(unit).value(),
                    s.aid());
        }

        /** The tolerance at one side, without its sign; the tightest where there are more. */
        private BigDecimal side(List<Limit> around, boolean low) {
            return around.stream()
                    .map(l -> low ? l.low() : l.high())
                    .filter(Objects::nonNull)
                    .map(a -> a.to(unit.difference()).value())
                    .map(v -> low ? v.negate() : v)
                    .min(BigDecimal::compareTo)
                    .orElse(BigDecimal.ZERO);
        }

        private List<End> floors() {
            List<End> ends = new ArrayList<>();
            for (Bound b : paver().all()) {
                add(ends, b, b.low(), PAVER, below.add(loss), " + " + plain(loss) + " loss");
            }
            for (Bound b : Bounds.of(sheet, Quantity.PLANT_MIX, s).all()) {
                add(ends, b, b.low(), PLANT, below, "");
            }
            for (Bound b : Bounds.of(sheet, Quantity.PLANT_TARGET, s).all()) {
                add(ends, b, b.low(), TARGET, null, "");
            }
            return ends;
        }

        private List<End> ceilings() {
            List<End> ends = new ArrayList<>();
            for (Bound b : Bounds.of(sheet, Quantity.PLANT_MIX, s).all()) {
                add(ends, b, b.high(), PLANT, above.negate(), "");
            }
            for (Bound b : Bounds.of(sheet, Quantity.PLANT_TARGET, s).all()) {
                add(ends, b, b.high(), TARGET, null, "");
            }
            for (Bound b : paver().all()) {
                add(ends, b, b.high(), PAVER, loss.subtract(above), " + " + plain(loss) + " loss");
            }
            return ends;
        }

        private Bounds paver() {
            return Bounds.paverHeat(job, sheet, s, mix.name());
        }

        private void add(List<End> ends, Bound bound, Amount limit, String where, BigDecimal by, String lost) {
            if (limit == null) {
                return;
            }
            BigDecimal at = limit.to(unit).value();
            BigDecimal target = by == null ? at : at.add(by);
            String steps = by == null ? plain(at) + ", the target itself" : sum(at, where, by, lost, target);
            ends.add(new End(target, at, where, bound.clause(), steps, bound.sure()));
        }

        private String sum(BigDecimal at, String where, BigDecimal by, String lost, BigDecimal target) {
            BigDecimal tolerance = lost.isEmpty() ? by : by.subtract(loss);
            return plain(at) + " " + where + (tolerance.signum() < 0 ? " - " : " + ") + plain(tolerance.abs())
                    + " tolerance" + lost + " = " + plain(target);
        }

        /** The tightest sure end, unless one that is not sure is tighter still. */
        private static Optional<End> tightest(List<End> ends, boolean floor) {
            Comparator<End> tight = Comparator.comparing(End::at);
            Comparator<End> best = (floor ? tight : tight.reversed()).thenComparing(End::sure);
            return ends.stream().max(best);
        }
    }
}
