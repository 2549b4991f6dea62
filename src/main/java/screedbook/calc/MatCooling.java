package screedbook.calc;

import java.util.OptionalDouble;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * How long a lift stays warm enough to be rolled: heat that flows down into what it lies on and up into air and sky.
 *
 * <p>Source: conduction in one dimension with the loss of {@code SurfaceLoss}, as the literature on the cooling of lifts
 * has it since Corlew and Dickson (1968, from memory; Maupin, VTRC 72-R24, 1973, abstract, read, found their curves
 * in the field). What it needs are the six figures that an abstract names as those that matter: thickness, temperatures
 * of air, base and mix, wind, sun and cloud (trid.trb.org/view/209656, read). Wind takes heat by {@link #byWind};
 * radiation is counted apart from it.
 *
 * <p>It is an estimate. It leaves out rain and a wet base, the water of rollers, the mat becoming denser while it is
 * rolled, edges, and a gap under the lift. Cells and steps cost less than 0.5 % (see the test), but what is put in (how
 * well mix and base lead heat, and the wind at the mat) makes a quarter either way; so nobody should show it without
 * {@link #BAND}, or with decimals.
 */
public final class MatCooling {
    /** How far the estimate may be off either way, as a share of it. */
    public static final double BAND = 0.25;

    /** Of the surface of hot mix (Corlew and Dickson's later reports, from memory). */
    static final double EMISSIVITY = 0.95;

    /** Share of sunlight that fresh mix takes up (the same, from memory). */
    static final double ABSORBED = 0.85;

    /** Minutes after which nothing is looked for any more. */
    public static final int LONGEST = 240;

    private static final int CELLS = 20;
    private static final double WIDER = 1.15;
    private static final double BASE = 1.0;
    private static final double SHORTEST_STEP = 0.25;
    private static final double LONGEST_STEP = 20;
    private static final double STEP = 0.02;
    private static final double FAST = 5;

    private MatCooling() {}

    /**
     * A lift just laid.
     *
     * @param thickness above 0
     * @param mix its temperature, the same all through
     * @param base temperature of what it lies on, the same all through
     * @param under what it lies on
     */
    public record Lift(Amount thickness, Amount mix, Amount base, Stuff under) {}

    /**
     * What is over it.
     *
     * @param wind not below 0
     * @param sky temperature that the sky radiates with; see {@link SkyLight#radiates}
     * @param sun heat of the sun on level ground, W/m2; see {@link SkyLight#sun}
     */
    public record Above(Amount air, Amount wind, Amount sky, double sun) {}

    /**
     * Minutes from laying until a temperature is reached, each empty where it is not within {@link #LONGEST}.
     *
     * @param mean of the lift through its depth
     * @param middle at half its depth
     * @param surface as an instrument from above reads it; of a thick lift in half the time of the mean
     */
    public record Minutes(OptionalDouble mean, OptionalDouble middle, OptionalDouble surface) {}

    /**
     * Minutes until a lift has fallen to a temperature; 0 where it lies below it from the start.
     *
     * @throws IllegalArgumentException when the thickness is not above 0, the wind is below 0, or an amount is of
     *     another dimension
     */
    public static Minutes until(Amount stop, Lift lift, Above above) {
        double start = celsius(lift.mix());
        Conduction cooling = cooling(metres(lift.thickness()), start, celsius(lift.base()), lift.under(), loss(above));
        return until(celsius(stop), cooling, start);
    }

    /**
     * Heat that wind carries off, W/m2K: {@code 5.7 + 3.8 U} below 5 m/s (ASHRAE 1985 after McAdams, read in the notes of
     * a climate model), {@code 6.47 U^0.78} above (the same, from memory); the two do not meet, and between them it stays
     * at 24.7, so that more wind never takes less.
     *
     * <p>Barber's {@code 1.3 + 0.62 v^(3/4)} (Highway Research Board Bulletin 168, 1957, eq. 2) says of itself that it
     * holds "average re-radiation"; with radiation counted apart that part would be counted twice. This pair counts each
     * once. Barber's makes the time shorter by a tenth, which lies within {@link #BAND}.
     *
     * @param wind not below 0
     * @throws IllegalArgumentException when it is below 0 or not a speed
     */
    public static double byWind(Amount wind) {
        double u = wind.to(Unit.KILOMETRE_PER_HOUR).value().doubleValue() / 3.6;
        if (u < 0) {
            throw new IllegalArgumentException("wind of " + wind.text());
        }
        double slow = 5.7 + 3.8 * Math.min(u, FAST);
        return u < FAST ? slow : Math.max(slow, 6.47 * Math.pow(u, 0.78));
    }

    private static SurfaceLoss loss(Above above) {
        return new SurfaceLoss(
                byWind(above.wind()), celsius(above.air()), EMISSIVITY, celsius(above.sky()), ABSORBED * above.sun());
    }

    /** A lift of 20 equal cells on a metre of base, whose cells grow with the depth. */
    static Conduction cooling(double thickness, double mix, double base, Stuff under, SurfaceLoss loss) {
        if (!(thickness > 0)) {
            throw new IllegalArgumentException("a lift " + thickness + " m thick");
        }
        double cell = thickness / CELLS;
        int more = 0;
        double deep = 0;
        for (double width = cell; deep < BASE; width *= WIDER) {
            deep += width;
            more++;
        }
        double[] widths = new double[CELLS + more];
        double[] start = new double[CELLS + more];
        Stuff[] stuff = new Stuff[CELLS + more];
        for (int i = 0; i < widths.length; i++) {
            boolean hot = i < CELLS;
            widths[i] = i <= CELLS ? cell : widths[i - 1] * WIDER;
            start[i] = hot ? mix : base;
            stuff[i] = hot ? Stuff.HOT_MIX : under;
        }
        return new Conduction(widths, stuff, start, loss);
    }

    /** Seconds of the next step. */
    static double next(double seconds) {
        return Math.min(LONGEST_STEP, Math.max(SHORTEST_STEP, STEP * seconds));
    }

    static Minutes until(double stop, Conduction cooling, double start) {
        double[] now = {start, start, start};
        double first = start <= stop ? 0 : Double.NaN;
        double[] reached = {first, first, first};
        double since = 0;
        while (open(reached) && cooling.seconds() < LONGEST * 60) {
            cooling.step(next(cooling.seconds()));
            double[] then = {cooling.mean(CELLS), middle(cooling), cooling.surface()};
            for (int i = 0; i < now.length; i++) {
                if (Double.isNaN(reached[i]) && then[i] <= stop) {
                    reached[i] = since + (cooling.seconds() - since) * (now[i] - stop) / (now[i] - then[i]);
                }
            }
            now = then;
            since = cooling.seconds();
        }
        return new Minutes(minutes(reached[0]), minutes(reached[1]), minutes(reached[2]));
    }

    /** At half the depth of the lift. */
    static double middle(Conduction cooling) {
        return (cooling.cell(CELLS / 2 - 1) + cooling.cell(CELLS / 2)) / 2;
    }

    private static boolean open(double[] reached) {
        for (double each : reached) {
            if (Double.isNaN(each)) {
                return true;
            }
        }
        return false;
    }

    private static OptionalDouble minutes(double seconds) {
        return Double.isNaN(seconds) ? OptionalDouble.empty() : OptionalDouble.of(seconds / 60);
    }

    private static double celsius(Amount temperature) {
        return temperature.to(Unit.DEG_C).value().doubleValue();
    }

    private static double metres(Amount length) {
        return length.to(Unit.METRE).value().doubleValue();
    }
}
