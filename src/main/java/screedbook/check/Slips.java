package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ticket;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * What somebody may have meant who typed a figure that cannot well be meant: offered, never taken. A figure is doubted
 * when it lies outside the usual range, and another reading of the same digits is offered when that one lies inside.
 */
final class Slips {
    private static final BigDecimal TEN = BigDecimal.TEN;

    private Slips() {}

    /** Whether a figure lies outside what is usual. */
    static boolean unusual(Quantity quantity, Amount amount) {
        return Marks.usual(quantity).of(amount) == Verdict.OUTSIDE;
    }

    /** The one general figure for a loaded truck is a law of the United States and is asked about only in their units. */
    static boolean hasLegalGross(Amount gross) {
        return gross.unit() == Unit.POUND;
    }

    static boolean usual(Quantity quantity, Amount amount) {
        return Marks.usual(quantity).of(amount) == Verdict.INSIDE;
    }

    private static String key(String name, Unit unit) {
        return name + "_" + unit.suffix();
    }

    /** Pounds for tons, kilograms for tonnes. */
    static Optional<Guide.Offer> net(Amount net) {
        if (net == null || !unusual(Quantity.NET, net)) {
            return Optional.empty();
        }
        boolean metric = net.unit() == Unit.TONNE;
        Amount meant = new Amount(net.value(), metric ? Unit.KILOGRAM : Unit.POUND)
                .to(net.unit())
                .shown(2);
        String asks = (metric ? "kilograms? " : "pounds? ") + meant.text();
        return offer(Quantity.NET, meant, asks, key("net", net.unit()));
    }

    /** Tons in a blank for pounds, tonnes in one for kilograms. */
    static Optional<Guide.Offer> scale(String name, Amount weight) {
        if (weight == null || weight.value().signum() <= 0 || unusual(Quantity.SCALE_AS_TONS, weight)) {
            return Optional.empty();
        }
        boolean metric = weight.unit() == Unit.KILOGRAM;
        Amount meant = new Amount(weight.value(), metric ? Unit.TONNE : Unit.SHORT_TON)
                .to(weight.unit())
                .shown(0);
        String asks = (metric ? "tonnes? " : "tons? ") + AmountText.text(meant);
        return Optional.of(new Guide.Offer(asks, key(name, weight.unit()), typed(meant)));
    }

    /** Gross and tare that changed places. */
    static Optional<Guide.Offer> swapped(Ticket.Weights weights) {
        Amount gross = weights.gross();
        Amount tare = weights.tare();
        if (gross == null || tare == null || tare.compareTo(gross) <= 0) {
            return Optional.empty();
        }
        String asks = "gross " + AmountText.plain(tare) + " and tare " + AmountText.plain(gross) + "?";
        return Optional.of(new Guide.Offer(
                asks,
                key("gross", tare.unit()),
                typed(tare),
                new Guide.Offer(asks, key("tare", gross.unit()), typed(gross))));
    }

    /** A mix temperature in the other scale, or with a digit too many or too few. */
    static List<Guide.Offer> mix(String name, Amount heat) {
        List<Guide.Offer> offers = new ArrayList<>();
        if (heat == null || meant(heat)) {
            return offers;
        }
        boolean celsius = heat.unit() == Unit.DEG_C;
        Unit other = celsius ? Unit.DEG_F : Unit.DEG_C;
        Amount meant = new Amount(heat.value(), other).to(heat.unit()).shown(0);
        if (meant(meant)) {
            offers.add(new Guide.Offer(other.symbol() + "? " + meant.text(), key(name, heat.unit()), typed(meant)));
        }
        for (Amount each : List.of(tenth(heat), tenfold(heat))) {
            if (meant(each)) {
                offers.add(new Guide.Offer(each.text() + "?", key(name, heat.unit()), typed(each)));
            }
        }
        return offers;
    }

    private static boolean meant(Amount heat) {
        return usual(Quantity.MIX, heat);
    }

    /** Width 120 for 12.0. */
    static Optional<Guide.Offer> width(String name, Amount width) {
        return width == null || !unusual(Quantity.WIDTH, width)
                ? Optional.empty()
                : offer(Quantity.WIDTH, tenth(width), tenth(width).text() + "?", key(name, width.unit()));
    }

    /** Thickness 20 for 2.0. */
    static Optional<Guide.Offer> thickness(String name, Amount thickness) {
        return thickness == null || !unusual(Quantity.THICKNESS, thickness)
                ? Optional.empty()
                : offer(
                        Quantity.THICKNESS,
                        tenth(thickness),
                        tenth(thickness).text() + "?",
                        key(name, thickness.unit()));
    }

    private static Optional<Guide.Offer> offer(Quantity quantity, Amount meant, String asks, String blank) {
        return usual(quantity, meant) ? Optional.of(new Guide.Offer(asks, blank, typed(meant))) : Optional.empty();
    }

    private static Amount tenth(Amount amount) {
        return new Amount(amount.value().movePointLeft(1), amount.unit());
    }

    private static Amount tenfold(Amount amount) {
        return new Amount(amount.value().multiply(TEN), amount.unit());
    }

    private static String typed(Amount amount) {
        return amount.value().toPlainString();
    }
}
