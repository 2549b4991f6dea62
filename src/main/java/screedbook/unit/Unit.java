package screedbook.unit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A unit that a figure of the record may carry. The suffix ends the key of a line ({@code net_ston}); the symbol stands
 * on screen and page. Within a dimension a value in the base unit is {@code value * over / under + offset}.
 *
 * <p>Exact factors: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L, 1 yd2 = 0.83612736 m2 (NIST
 * Handbook 44 Appendix C and SP 811 B.8). Derived from them: 1 short ton = 2000 lb = 907.18474 kg, 1 yd2 = 9 ft2. A
 * compound unit has no figure of its own; it is made from the units it is named after, so nothing is rounded.
 */
public enum Unit {
    DEG_F("degF", "°F", Dimension.TEMPERATURE, "1", "0"),
    DEG_C("degC", "°C", Dimension.TEMPERATURE, "1.8", "32"),
    /** A difference between two temperatures: 10 degrees F of difference is 5.6 degrees C. */
    DIFF_F("dF", "°F", Dimension.DIFFERENCE, "1"),
    DIFF_C("dC", "°C", Dimension.DIFFERENCE, "1.8"),
    POUND("lb", "lb", Dimension.MASS, "0.45359237"),
    KILOGRAM("kg", "kg", Dimension.MASS, "1"),
    SHORT_TON("ston", "T", Dimension.MASS, "907.18474"),
    TONNE("t", "t", Dimension.MASS, "1000"),
    GALLON("gal", "gal", Dimension.VOLUME, "3.785411784"),
    LITRE("L", "L", Dimension.VOLUME, "1"),
    INCH("in", "in", Dimension.LENGTH, "25.4"),
    FOOT("ft", "ft", Dimension.LENGTH, "304.8"),
    MILLIMETRE("mm", "mm", Dimension.LENGTH, "1"),
    METRE("m", "m", Dimension.LENGTH, "1000"),
    SQUARE_FOOT("ft2", "ft²", Dimension.AREA, "0.09290304"),
    SQUARE_YARD("yd2", "yd²", Dimension.AREA, "0.83612736"),
    SQUARE_METRE("m2", "m²", Dimension.AREA, "1"),
    MILE_PER_HOUR("mph", "mph", Dimension.SPEED, "1.609344"),
    KILOMETRE_PER_HOUR("kmh", "km/h", Dimension.SPEED, "1"),
    /** 0.3048 m x 60 / 1000. */
    FOOT_PER_MINUTE("ft_min", "ft/min", Dimension.SPEED, "0.018288"),
    METRE_PER_MINUTE("m_min", "m/min", Dimension.SPEED, "0.06"),
    INCH_PER_HOUR("in_h", "in/h", Dimension.RAIN, INCH),
    MILLIMETRE_PER_HOUR("mm_h", "mm/h", Dimension.RAIN, MILLIMETRE),
    GALLON_PER_SQUARE_YARD("gal_yd2", "gal/yd²", Dimension.TACK_RATE, GALLON, SQUARE_YARD),
    LITRE_PER_SQUARE_METRE("L_m2", "L/m²", Dimension.TACK_RATE, LITRE, SQUARE_METRE),
    POUND_PER_SQUARE_YARD("lb_yd2", "lb/yd²", Dimension.SPREAD_RATE, POUND, SQUARE_YARD),
    KILOGRAM_PER_SQUARE_METRE("kg_m2", "kg/m²", Dimension.SPREAD_RATE, KILOGRAM, SQUARE_METRE),
    POUND_PER_CUBIC_FOOT("lb_ft3", "lb/ft³", Dimension.DENSITY, POUND, SQUARE_FOOT, FOOT),
    /** Unit weight as a mix is ordered by: the spread rate of a mat one inch thick. */
    POUND_PER_SQUARE_YARD_INCH("lb_yd2_in", "lb/yd²/in", Dimension.DENSITY, POUND, SQUARE_YARD, INCH),
    KILOGRAM_PER_CUBIC_METRE("kg_m3", "kg/m³", Dimension.DENSITY, KILOGRAM, SQUARE_METRE, METRE),
    PERCENT("pct", "%", Dimension.RATIO, "1"),
    TIMES("times", "times", Dimension.RATIO, "100"),
    MINUTE("min", "min", Dimension.TIME, "1");

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
    private final BigDecimal over;
    private final BigDecimal under;
    private final BigDecimal offset;

    Unit(String suffix, String symbol, Dimension dimension, BigDecimal over, BigDecimal under, BigDecimal offset) {
        this.suffix = suffix;
        this.symbol = symbol;
        this.dimension = dimension;
        this.over = over;
        this.under = under;
        this.offset = offset;
    }

    Unit(String suffix, String symbol, Dimension dimension, String factor, String offset) {
        this(suffix, symbol, dimension, new BigDecimal(factor), BigDecimal.ONE, new BigDecimal(offset));
    }

    Unit(String suffix, String symbol, Dimension dimension, String factor) {
        this(suffix, symbol, dimension, factor, "0");
    }

    /** One such unit in each hour. */
    Unit(String suffix, String symbol, Dimension dimension, Unit hourly) {
        this(suffix, symbol, dimension, hourly.over, BigDecimal.ONE, BigDecimal.ZERO);
    }

    /** A unit for each unit of area. */
    Unit(String suffix, String symbol, Dimension dimension, Unit amount, Unit area) {
        this(suffix, symbol, dimension, amount.over, area.over, BigDecimal.ZERO);
    }

    /** A unit for each unit of area and depth. */
    Unit(String suffix, String symbol, Dimension dimension, Unit amount, Unit area, Unit depth) {
        this(suffix, symbol, dimension, amount.over, area.over.multiply(depth.over), BigDecimal.ZERO);
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

    /** In what two amounts of this unit differ: degrees of difference for temperatures, else the unit itself. */
    public Unit difference() {
        return this == DEG_F ? DIFF_F : this == DEG_C ? DIFF_C : this;
    }

    BigDecimal over() {
        return over;
    }

    BigDecimal under() {
        return under;
    }

    BigDecimal offset() {
        return offset;
    }

    /**
     * A suffix as written on screen and page, of a unit or of one in each hour or minute: {@code ston_h} is {@code T/h}.
     * What is no unit stays as it is.
     */
    public static String symbol(String suffix) {
        int last = suffix.lastIndexOf('_');
        return ofSuffix(suffix)
                .map(Unit::symbol)
                .orElseGet(
                        () -> last < 0 ? suffix : symbol(suffix.substring(0, last)) + "/" + suffix.substring(last + 1));
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
