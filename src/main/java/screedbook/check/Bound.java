package screedbook.check;

import java.math.BigDecimal;
import java.util.Optional;
import screedbook.calc.Rounding;
import screedbook.spec.Limit;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * A limit brought to the value that it judges: one that speaks of a difference stands around its target.
 *
 * @param low null where nothing is said; so is high
 * @param sure whether it is said and known that it holds
 * @param around null where the limit speaks of the value itself
 */
record Bound(Amount low, Amount high, boolean sure, String clause, Rounding rounding, String working, Around around) {
    /** What a difference is counted from, and the digits behind the point with which the limit is printed. */
    record Around(Amount target, int decimals) {}

    Bound(Amount low, Amount high, boolean sure, String clause, Rounding rounding, String working) {
        this(low, high, sure, clause, rounding, working, null);
    }

    static Bound of(Limit limit, boolean sure) {
        return new Bound(limit.low(), limit.high(), sure, limit.citation(), rounding(limit), limit.working());
    }

    /** Around a target: the limit speaks of the value less the target, and that is what is rounded. */
    static Bound around(Amount target, Limit limit, boolean sure) {
        return new Bound(
                moved(target, limit.low()),
                moved(target, limit.high()),
                sure,
                limit.citation(),
                rounding(limit),
                limit.working() + " The target is " + target.text() + ".",
                new Around(target, Math.max(scale(limit.low()), scale(limit.high()))));
    }

    private static int scale(Amount amount) {
        return amount == null ? 0 : amount.value().scale();
    }

    private static Amount moved(Amount target, Amount by) {
        return by == null ? null : AmountText.moved(target, by);
    }

    private static Rounding rounding(Limit limit) {
        return Rounding.ofKey(limit.rounding()).orElse(Rounding.ABSOLUTE);
    }

    boolean outside(Amount value) {
        return low != null && compare(value, low) < 0 || high != null && compare(value, high) > 0;
    }

    /** How far a value lies above the most or, with a minus, below the least; 0 inside. */
    BigDecimal beyond(Amount value) {
        BigDecimal under = low == null ? BigDecimal.ZERO : apart(value, low);
        BigDecimal over = high == null ? BigDecimal.ZERO : apart(value, high);
        return under.signum() < 0 ? under : over.max(BigDecimal.ZERO);
    }

    private static BigDecimal apart(Amount value, Amount limit) {
        return value.to(limit.unit()).value().subtract(limit.value());
    }

    private int compare(Amount value, Amount limit) {
        return rounded(value, limit).compareTo(limit.value().subtract(origin()));
    }

    /** What is compared with the printed limit. */
    private BigDecimal rounded(Amount value, Amount limit) {
        int decimals = around == null ? limit.value().scale() : around.decimals();
        BigDecimal told = value.to(limit.unit()).value().subtract(origin());
        return told.scale() <= decimals ? told : rounding.to(decimals, told);
    }

    private BigDecimal origin() {
        return around == null ? BigDecimal.ZERO : around.target().to(unit()).value();
    }

    /** How the value was rounded for the comparison, where that changed it. */
    Optional<String> rounded(Amount value) {
        Amount limit = low == null ? high : low;
        BigDecimal told = value.to(limit.unit()).value().subtract(origin());
        BigDecimal to = rounded(value, limit);
        return to.compareTo(told) == 0
                ? Optional.empty()
                : Optional.of("Compared as " + to.toPlainString() + " (" + rounding.words() + ").");
    }

    /** {@code at least 270}, {@code at most 325}, {@code 275 to 325}. */
    String text() {
        if (low == null) {
            return "at most " + AmountText.plain(high);
        }
        if (high == null) {
            return "at least " + AmountText.plain(low);
        }
        return AmountText.plain(low) + " to " + AmountText.plain(high);
    }

    Unit unit() {
        return (low == null ? high : low).unit();
    }

    /** {@code at least 132.3 °C (270 °F)} for a job of the other system, else as it is printed and without its unit. */
    String text(UnitSystem system) {
        Unit own = OwnUnits.of(unit(), system);
        return own == unit() ? text() : told(own).text() + " " + own.symbol() + " (" + ends() + ")";
    }

    /** The same ends told in another unit. */
    private Bound told(Unit own) {
        return new Bound(OwnUnits.least(low, own), OwnUnits.most(high, own), sure, clause, rounding, working);
    }

    private String also(Unit own) {
        return own == unit() ? "" : " (" + told(own).ends() + ")";
    }

    /** The figures alone with their unit: {@code 270 °F}, {@code 275 to 325 °F}. */
    private String ends() {
        String figures = low != null && high != null ? text() : AmountText.plain(low == null ? high : low);
        return figures + " " + unit().symbol();
    }

    /** With its unit, and beside it in the unit of what is judged. */
    String full(Unit own) {
        return full() + also(own);
    }

    /** What would have been inside, and beside it in the unit of what is judged. */
    String inside(Unit own) {
        return inside() + also(own);
    }

    /** The same with its unit. */
    String full() {
        return text() + " " + unit().symbol();
    }

    /** What would have been inside: {@code 270 °F or more}. */
    String inside() {
        if (low != null && high != null) {
            return full();
        }
        return low == null ? AmountText.text(high) + " or less" : AmountText.text(low) + " or more";
    }
}
