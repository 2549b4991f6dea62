package screedbook.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** A pay factor for density as an agency printed its formula. Which one holds is said by the job's limit sheet alone. */
public enum PayFormula {
    /**
     * Three tests and more: (55 + 0.5 PWL) / 100 (334-8.2.2.2). One or two: Table 334-6, by the deviation from the target
     * (334-8.2.1).
     */
    FLORIDA_334("Florida DOT 334-8.2, c. 2005-2007") {
        @Override
        public Factor factor(Lot lot) {
            return lot.values().size() < PercentWithin.LEAST ? small(lot) : linear(lot, "0.5", "55");
        }
    },
    /** a + b (QL / 100) + c (QL / 100)², at most the table's last column; 3 to 9 tests. */
    COLORADO_105_3("Colorado DOT, revision of 105 and 106, February 2011, Table 105-3") {
        @Override
        public Factor factor(Lot lot) {
            return quadratic(lot);
        }
    },
    /** 1 + 0.004 PWL - 0.360. */
    HRT_12_027("FHWA-HRT-12-027 appendix B, figure 103") {
        @Override
        public Factor factor(Lot lot) {
            return linear(lot, "0.4", "64");
        }
    };

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final String source;

    PayFormula(String source) {
        this.source = source;
    }

    /** Where the formula is printed. */
    public String source() {
        return source;
    }

    /**
     * What a factor is counted from.
     *
     * @param values the tests, in percent of Gmm
     * @param percent within limits; null where there is none
     * @param coarse null where the job does not say whether the mix is coarse or fine
     */
    public record Lot(List<BigDecimal> values, BigDecimal percent, Boolean coarse) {}

    /**
     * A factor with its arithmetic, or why there is none.
     *
     * @param how the formula with its figures; the reason where the factor is empty
     */
    public record Factor(Optional<BigDecimal> value, String how) {}

    /** The factor of a lot: 1 is full pay. */
    public abstract Factor factor(Lot lot);

    private static Factor none(String why) {
        return new Factor(Optional.empty(), why);
    }

    private static Factor linear(Lot lot, String slope, String base) {
        if (lot.percent() == null) {
            return none("no percent within limits");
        }
        BigDecimal factor = new BigDecimal(slope)
                .multiply(lot.percent())
                .add(new BigDecimal(base))
                .divide(HUNDRED, 4, RoundingMode.HALF_UP);
        String how = "(" + base + " + " + slope + " x " + lot.percent().toPlainString() + ") / 100 = "
                + factor.toPlainString();
        return new Factor(Optional.of(factor), how);
    }

    private static Factor quadratic(Lot lot) {
        if (lot.percent() == null) {
            return none("no percent within limits");
        }
        String tests = "" + lot.values().size();
        Optional<List<String>> found = QualityTable.rows("pay-colorado-105-3").stream()
                .filter(row -> row.get(0).equals(tests))
                .findFirst();
        if (found.isEmpty()) {
            return none("the formula for " + tests + " tests is not here; those for 3 to 9 are");
        }
        List<String> row = found.get();
        BigDecimal level = lot.percent().divide(HUNDRED, MathContext.DECIMAL64);
        BigDecimal reckoned = new BigDecimal(row.get(1))
                .add(new BigDecimal(row.get(2)).multiply(level))
                .add(new BigDecimal(row.get(3)).multiply(level).multiply(level))
                .setScale(5, RoundingMode.HALF_UP);
        BigDecimal most = new BigDecimal(row.get(4));
        String how = row.get(1) + " + " + row.get(2) + " x " + level.toPlainString() + " + " + row.get(3) + " x "
                + level.toPlainString() + "² = " + reckoned.toPlainString() + ", at most " + most.toPlainString();
        return new Factor(Optional.of(reckoned.min(most)), how);
    }

    private static Factor small(Lot lot) {
        if (lot.coarse() == null) {
            return none("the job does not say whether the mix is coarse or fine");
        }
        if (lot.values().isEmpty()) {
            return none("no test");
        }
        String mix = lot.coarse() ? "coarse" : "fine";
        List<List<String>> rows = QualityTable.rows("pay-florida-334-6").stream()
                .filter(r -> r.get(0).equals(mix))
                .toList();
        BigDecimal target = new BigDecimal(rows.get(0).get(4));
        BigDecimal sum =
                lot.values().stream().map(v -> v.subtract(target).abs()).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal deviation = sum.divide(BigDecimal.valueOf(lot.values().size()), 2, RoundingMode.HALF_UP);
        int column = lot.values().size() == 1 ? 2 : 3;
        List<String> row = rows.stream()
                .filter(r -> r.get(column).isEmpty() || deviation.compareTo(new BigDecimal(r.get(column))) <= 0)
                .findFirst()
                .orElseThrow();
        String how = (column == 2 ? "one test" : "two tests") + " of a " + mix + " mix, target "
                + target.toPlainString() + ", deviation " + deviation.toPlainString() + ": Table 334-6";
        return new Factor(Optional.of(new BigDecimal(row.get(1))), how);
    }
}
