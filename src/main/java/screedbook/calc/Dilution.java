package screedbook.calc;

import java.math.BigDecimal;

/** How an emulsion was let down with water: so many parts of emulsion to so many parts of water. */
public record Dilution(BigDecimal emulsion, BigDecimal water) {
    /** As it came from the maker. */
    public static final Dilution NONE = Dilution.of("1", "0");

    /** @throws IllegalArgumentException when the emulsion is not above zero or the water is below it */
    public Dilution {
        if (emulsion.signum() <= 0 || water.signum() < 0) {
            throw new IllegalArgumentException(
                    "parts of emulsion to parts of water: " + emulsion.toPlainString() + ":" + water.toPlainString());
        }
    }

    public static Dilution of(String emulsion, String water) {
        return new Dilution(new BigDecimal(emulsion), new BigDecimal(water));
    }

    /** Whether there is water in it beyond the maker's own. */
    public boolean diluted() {
        return water.signum() > 0;
    }

    /** Emulsion and water together, in the same parts. */
    public BigDecimal parts() {
        return emulsion.add(water);
    }

    /** As it is written: {@code 1:1}, emulsion first. */
    public String text() {
        return emulsion.toPlainString() + ":" + water.toPlainString();
    }
}
