package screedbook.check;

import java.math.BigDecimal;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Amounts as they are said beside a blank and in a finding. */
final class AmountText {
    private static final BigDecimal GROUPED = new BigDecimal("10000");

    private AmountText() {}

    /** The digits without the unit; from 10,000 on with commas. */
    static String plain(Amount amount) {
        BigDecimal value = amount.value();
        if (value.abs().compareTo(GROUPED) < 0) {
            return value.toPlainString();
        }
        String text = value.toPlainString();
        int point = text.indexOf('.') < 0 ? text.length() : text.indexOf('.');
        StringBuilder out = new StringBuilder(text);
        for (int i = point - 3; i > (value.signum() < 0 ? 1 : 0); i -= 3) {
            out.insert(i, ',');
        }
        return out.toString();
    }

    /** Digits and unit: {@code 27,420 lb}. */
    static String text(Amount amount) {
        return plain(amount) + " " + amount.unit().symbol();
    }

    /** A temperature moved by a difference, told in the difference's scale. */
    static Amount moved(Amount temperature, Amount by) {
        Unit scale = by.unit() == Unit.DIFF_C ? Unit.DEG_C : by.unit() == Unit.DIFF_F ? Unit.DEG_F : by.unit();
        return new Amount(temperature.to(scale).value().add(by.value()), scale);
    }

    /** The size of an amount, without its sign. */
    static Amount size(Amount amount) {
        return new Amount(amount.value().abs(), amount.unit());
    }

    /** A rate to three decimals, as is any figure that was worked out; one that was keyed stays as it is. */
    static Amount shown(Amount amount) {
        return amount.value().scale() > 3 || amount.unit().dimension() == Unit.Dimension.TACK_RATE
                ? amount.shown(3)
                : amount;
    }

    /** {@code 10 ft}, and to a reader in another unit {@code 10 ft (3.05 m)}. */
    static String both(Amount printed, Unit own) {
        return text(printed)
                + (own == printed.unit() ? "" : " (" + text(told(printed, own, OwnUnits.decimals(own))) + ")");
    }

    /** In another unit, rounded to so many decimals for reading. */
    static Amount told(Amount amount, Unit unit, int decimals) {
        return amount.unit() == unit ? amount : amount.to(unit).shown(decimals);
    }
}
