package screedbook.unit;

import java.util.Arrays;
import java.util.Optional;

/** What a blank measures, with its unit in either system and the decimals it is usually written with. */
public enum Measure {
    /** A load's net weight as tickets print it. */
    LOAD(Unit.SHORT_TON, Unit.TONNE, 2),
    /** A weight as a truck scale shows it. */
    SCALE(Unit.POUND, Unit.KILOGRAM, 0),
    TEMPERATURE(Unit.DEG_F, Unit.DEG_C, 0),
    DIFFERENCE(Unit.DIFF_F, Unit.DIFF_C, 0),
    VOLUME(Unit.GALLON, Unit.LITRE, 1),
    DEPTH(Unit.INCH, Unit.MILLIMETRE, 2),
    WIDTH(Unit.FOOT, Unit.METRE, 1),
    AREA(Unit.SQUARE_YARD, Unit.SQUARE_METRE, 0),
    SPEED(Unit.MILE_PER_HOUR, Unit.KILOMETRE_PER_HOUR, 0),
    PAVER_SPEED(Unit.FOOT_PER_MINUTE, Unit.METRE_PER_MINUTE, 1),
    RAIN(Unit.INCH_PER_HOUR, Unit.MILLIMETRE_PER_HOUR, 2),
    TACK_RATE(Unit.GALLON_PER_SQUARE_YARD, Unit.LITRE_PER_SQUARE_METRE, 3),
    SPREAD_RATE(Unit.POUND_PER_SQUARE_YARD, Unit.KILOGRAM_PER_SQUARE_METRE, 0),
    UNIT_WEIGHT(Unit.POUND_PER_CUBIC_FOOT, Unit.KILOGRAM_PER_CUBIC_METRE, 1),
    /** Nominal maximum aggregate size, in millimetres in both systems, as mix names have it. */
    AGGREGATE(Unit.MILLIMETRE, Unit.MILLIMETRE, 1),
    PERCENT(Unit.PERCENT, Unit.PERCENT, 1),
    TIMES(Unit.TIMES, Unit.TIMES, 1),
    MINUTES(Unit.MINUTE, Unit.MINUTE, 0);

    private final Unit us;
    private final Unit metric;
    private final int decimals;

    Measure(Unit us, Unit metric, int decimals) {
        this.us = us;
        this.metric = metric;
        this.decimals = decimals;
    }

    /** The unit of this measure in a job of the given system. */
    public Unit unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** Whether a key of a line that carries this measure may end in the unit's suffix. */
    public boolean takes(Unit unit) {
        return unit == us || unit == metric;
    }

    /** What a unit is a unit of; the first of several. */
    public static Optional<Measure> of(Unit unit) {
        return Arrays.stream(values()).filter(m -> m.takes(unit)).findFirst();
    }

    /** Digits after the point that are usual for this measure in US units. */
    public int decimals() {
        return decimals;
    }
}
