package screedbook.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A unit that a figure of the record may carry. The suffix ends the key of a line ({@code net_ston}); the symbol stands
 * on screen and page. Within a dimension a value in the base unit is {@code value * factor + offset}.
 *
 * <p>Exact factors: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L, 1 yd2 = 0.83612736 m2 (NIST
 * Handbook 44 Appendix C and SP 811 B.8). Derived from them: 1 short ton = 907.18474 kg.
 */
public enum Unit {
    DEG_F("degF", "°F", Dimension.TEMPERATURE, "1", "0"),
    DEG_C("degC", "°C", Dimension.TEMPERATURE, "1.8", "32"),
    /** A difference between two temperatures: 10 degrees F of difference is 5.6 degrees C. */
    DIFF_F("dF", "°F", Dimension.DIFFERENCE, "1", "0"),
    DIFF_C("dC", "°C", Dimension.DIFFERENCE, "1.8", "0"),
    POUND("lb", "lb", Dimension.MASS, "0.45359237", "0"),
    KILOGRAM("kg", "kg", Dimension.MASS, "1", "0"),
    SHORT_TON("ston", "T", Dimension.MASS, "907.18474", "0"),
    TONNE("t", "t", Dimension.MASS, "1000", "0"),
    GALLON("gal", "gal", Dimension.VOLUME, "3.785411784", "0"),
    LITRE("L", "L", Dimension.VOLUME, "1", "0"),
    INCH("in", "in", Dimension.LENGTH, "25.4", "0"),
    FOOT("ft", "ft", Dimension.LENGTH, "304.8", "0"),
    MILLIMETRE("mm", "mm", Dimension.LENGTH, "1", "0"),
    METRE("m", "m", Dimension.LENGTH, "1000", "0"),
    SQUARE_YARD("yd2", "yd²", Dimension.AREA, "0.83612736", "0"),
    SQUARE_METRE("m2", "m²", Dimension.AREA, "1", "0"),
    MILE_PER_HOUR("mph", "mph", Dimension.SPEED, "1.609344", "0"),
    KILOMETRE_PER_HOUR("kmh", "km/h", Dimension.SPEED, "1", "0"),
    INCH_PER_HOUR("in_h", "in/h", Dimension.RAIN, "25.4", "0"),
    MILLIMETRE_PER_HOUR("mm_h", "mm/h", Dimension.RAIN, "1", "0"),
    GALLON_PER_SQUARE_YARD("gal_yd2", "gal/yd²", Dimension.TACK_RATE, "4.52731447", "0") {
        @Override
        BigDecimal factor() {
            return GALLON.factor().divide(SQUARE_YARD.factor(), MathContext.DECIMAL128);
        }
    },
    LITRE_PER_SQUARE_METRE("L_m2", "L/m²", Dimension.TACK_RATE, "1", "0"),
    POUND_PER_SQUARE_YARD("lb_yd2", "lb/yd²", Dimension.SPREAD_RATE, "0.5424920", "0") {
        @Override
        BigDecimal factor() {
            return POUND.factor().divide(SQUARE_YARD.factor(), MathContext.DECIMAL128);
        }
    },
    KILOGRAM_PER_SQUARE_METRE("kg_m2", "kg/m²", Dimension.SPREAD_RATE, "1", "0"),
    POUND_PER_CUBIC_FOOT("lb_ft3", "lb/ft³", Dimension.DENSITY, "16.01846", "0") {
        @Override
        BigDecimal factor() {
            return POUND.factor().divide(new BigDecimal("0.028316846592"), MathContext.DECIMAL128);
        }
    },
    KILOGRAM_PER_CUBIC_METRE("kg_m3", "kg/m³", Dimension.DENSITY, "1", "0"),
    PERCENT("pct", "%", Dimension.RATIO, "1", "0"),
    MINUTE("min", "min", Dimension.TIME, "1", "0");

    /** What a unit measures; only units of one dimension can be turned into each other. */
    public enum Dimension {
        TEMPERATURE,
        DIFFERENCE,
        MASS,
        VOLUME,
        LENGTH,
        AREA,
        SPEED,
        RAIN,
        TACK_RATE,
        SPREAD_RATE,
        DENSITY,
        RATIO,
        TIME
    }

    private final String suffix;
    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;
    private final BigDecimal offset;

    Unit(String suffix, String symbol, Dimension dimension, String factor, String offset) {
        this.suffix = suffix;
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.offset = new BigDecimal(offset);
    }

    /** The end of a key of a line: {@code degF}, {@code ston}. */
    public String suffix() {
        return suffix;
    }

    /** As written on screen and page: {@code °F}, {@code T}. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    BigDecimal factor() {
        return factor;
    }

    BigDecimal offset() {
        return offset;
    }

    /** The unit whose keys end with the suffix, if there is one. */
    public static Optional<Unit> ofSuffix(String suffix) {
        for (Unit unit : values()) {
            if (unit.suffix.equals(suffix)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
