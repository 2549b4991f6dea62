package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** How dense the mat is: a core or a gauge against the theoretical maximum. */
public final class MatDensity {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private MatDensity() {}

    /** Percent of the theoretical maximum: 100 Gmb / Gmm. Both above 0. */
    public static Amount percent(BigDecimal gmb, BigDecimal gmm) {
        return new Amount(HUNDRED.multiply(gmb).divide(gmm, MathContext.DECIMAL64), Unit.PERCENT);
    }

    /** Air voids in percent: (1 - Gmb / Gmm) 100 (common practice, no source). */
    public static Amount voids(Amount percent) {
        return new Amount(HUNDRED.subtract(percent.value()), Unit.PERCENT);
    }

    /** The unit weight of a specific gravity: water weighs 62.4 lb/ft³, 1000 kg/m³ (common practice, no source). */
    public static Amount unitWeight(BigDecimal gravity, Unit unit) {
        String water = unit == Unit.POUND_PER_CUBIC_FOOT ? "62.4" : "1000";
        return new Amount(gravity.multiply(new BigDecimal(water)), unit);
    }

    /** A gauge's density, in hundredths of another one of the same unit, which is above 0. */
    public static Amount percentOf(Amount density, Amount of) {
        return new Amount(HUNDRED.multiply(density.value()).divide(of.value(), MathContext.DECIMAL64), Unit.PERCENT);
    }

    /**
     * After how many passes the density of a place was highest: it rises with the passes and falls when the mat is rolled on
     * after that (a trade article's growth curve: 89.2, 91.8, 93.5, 89.3 after 1 to 4 passes are best after 3).
     *
     * @param byPasses densities of one place by number of passes, in any order, at least one
     */
    public static int bestPasses(Map<Integer, BigDecimal> byPasses) {
        int best = 0;
        BigDecimal highest = null;
        for (Map.Entry<Integer, BigDecimal> each : new TreeMap<>(byPasses).entrySet()) {
            if (highest == null || each.getValue().compareTo(highest) > 0) {
                best = each.getKey();
                highest = each.getValue();
            }
        }
        return best;
    }

    /**
     * What is added to a gauge's readings: the mean of core less gauge, with its standard deviation (Alberta ATT-48/95, 3.1,
     * ten sites for each project, lift, mix and gauge; the mean of differences from memory).
     *
     * @param differences core less gauge at each place, at least one
     */
    public static PercentWithin.Sample correlation(List<BigDecimal> differences) {
        return PercentWithin.Sample.of(differences);
    }
}
