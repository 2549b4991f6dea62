package screedbook.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;

/** A figure with its unit, kept with the digits it was written with: 2.50 in stays 2.50 in. */
public record Amount(BigDecimal value, Unit unit) implements Comparable<Amount> {
    public Amount {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
    }

    public static Amount of(String value, Unit unit) {
        return new Amount(new BigDecimal(value), unit);
    }

    /**
     * The same amount in another unit of the dimension, to 34 significant digits.
     *
     * @throws IllegalArgumentException when the units are of different dimensions
     */
    public Amount to(Unit other) {
        if (other == unit) {
            return this;
        }
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(
                    value.toPlainString() + " " + unit.symbol() + " cannot be told in " + other.symbol());
        }
        BigDecimal parts = unit.under().multiply(other.under());
        BigDecimal offsets = unit.offset().subtract(other.offset()).multiply(parts);
        BigDecimal base = value.multiply(unit.over()).multiply(other.under()).add(offsets);
        return new Amount(base.divide(unit.under().multiply(other.over()), MathContext.DECIMAL128), other);
    }

    /** This amount plus another of the same unit. */
    public Amount plus(Amount other) {
        return new Amount(value.add(other.to(unit).value()), unit);
    }

    /** This amount less another of the same unit. */
    public Amount minus(Amount other) {
        return new Amount(value.subtract(other.to(unit).value()), unit);
    }

    /** One amount less another, as a difference; empty where one is not there, or they are in two units. */
    public static Optional<Amount> apart(Amount high, Amount low) {
        return high == null || low == null || high.unit != low.unit
                ? Optional.empty()
                : Optional.of(new Amount(high.value.subtract(low.value), high.unit.difference()));
    }

    /** Rounded half up to so many decimals, for showing; comparisons with limits round as their clause says. */
    public Amount shown(int decimals) {
        return new Amount(value.setScale(decimals, RoundingMode.HALF_UP), unit);
    }

    /** By value, after turning the other into this unit; 2.5 in equals 2.50 in here. */
    @Override
    public int compareTo(Amount other) {
        return value.compareTo(other.to(unit).value());
    }

    /** Digits and symbol: {@code 21.96 T}. */
    public String text() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
