package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * The ends of a printed limit told in the units of a job of the other system. They are rounded towards the inside, so
 * that a figure that is told lies inside; what is judged by stays the printed one.
 */
final class OwnUnits {
    /** Decimals with which a converted end is read; one where nothing else is said. */
    private static final Map<Unit, Integer> DECIMALS = new EnumMap<>(Map.of(
            Unit.KILOGRAM, 0,
            Unit.POUND, 0,
            Unit.TONNE, 2,
            Unit.SHORT_TON, 2,
            Unit.METRE, 2,
            Unit.INCH, 2,
            Unit.LITRE_PER_SQUARE_METRE, 3,
            Unit.GALLON_PER_SQUARE_YARD, 3));

    private OwnUnits() {}

    /** The unit in which a job measures what is printed in another. */
    static Unit of(Unit printed, UnitSystem system) {
        return Measure.of(printed).map(m -> m.unit(system)).orElse(printed);
    }

    /** The least that is inside; the same where it is printed in that unit. */
    static Amount least(Amount printed, Unit own) {
        return told(printed, own, RoundingMode.CEILING);
    }

    /** The most that is inside; the same where it is printed in that unit. */
    static Amount most(Amount printed, Unit own) {
        return told(printed, own, RoundingMode.FLOOR);
    }

    private static Amount told(Amount printed, Unit own, RoundingMode inwards) {
        if (printed == null || printed.unit() == own) {
            return printed;
        }
        BigDecimal value = printed.to(own).value();
        return new Amount(value.setScale(decimals(own), inwards), own);
    }

    /** Digits behind the point with which a figure of another unit is read in this one. */
    static int decimals(Unit own) {
        return DECIMALS.getOrDefault(own, 1);
    }
}
