package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Warm volumes of asphalt materials told at the base temperature: 60 degrees F, or 15 degrees C in a metric job. */
public final class VolumeCorrection {
    /** Tables print the factor with four decimals, and the product is formed with the factor as printed. */
    private static final int PRINTED_DECIMALS = 4;

    private static final Amount BASE_F = Amount.of("60", Unit.DEG_F);
    private static final Amount BASE_C = Amount.of("15", Unit.DEG_C);

    private VolumeCorrection() {}

    /** The base temperature that goes with a temperature's unit: 60 degrees F or 15 degrees C. */
    public static Amount base(Amount temperature) {
        return temperature.unit() == Unit.DEG_C ? BASE_C : BASE_F;
    }

    /**
     * Volume at the base temperature for each unit of volume at the temperature, rounded half up to the four decimals
     * of the tables.
     *
     * <p>The factor is the table's formula at the temperature over the same formula at the base temperature. ASTM D4311's own formula for degrees C could not be used: the last
     * digit of its first constant was not legible in the copy that was read; with the digit that makes the factor 1 at
     * 15 degrees C (1.0095) the two agree within 0.00004 from 0 to 250 degrees C.
     *
     * @throws IllegalArgumentException when the amount is not a temperature
     */
    public static BigDecimal factor(CorrectionTable table, Amount temperature) {
        BigDecimal here = table.formula(temperature.to(Unit.DEG_F).value());
        BigDecimal there = table.formula(base(temperature).to(Unit.DEG_F).value());
        return here.divide(there, MathContext.DECIMAL128).setScale(PRINTED_DECIMALS, RoundingMode.HALF_UP);
    }

    /**
     * A volume, measured at the temperature, as it would be at the base temperature: volume times {@link #factor}.
     *
     * @throws IllegalArgumentException when the second amount is not a temperature
     */
    public static Amount atBase(CorrectionTable table, Amount volume, Amount temperature) {
        return new Amount(volume.value().multiply(factor(table, temperature)), volume.unit());
    }
}
