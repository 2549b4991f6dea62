package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Ref;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Loads and weights being added up, one after another. */
final class Sum {
    private static final BigDecimal SECONDS = BigDecimal.valueOf(3600);

    private final Tons.By by;
    private final String of;
    private final Unit unit;
    private BigDecimal received = BigDecimal.ZERO;
    private BigDecimal placed = BigDecimal.ZERO;
    private BigDecimal pay = BigDecimal.ZERO;
    private BigDecimal timed = BigDecimal.ZERO;
    private BigDecimal lastTimed = BigDecimal.ZERO;
    private int loads;
    private boolean parts;
    private OffsetDateTime first;
    private OffsetDateTime last;
    private final List<Ref> entries = new ArrayList<>();
    private final List<Step> put = new ArrayList<>();

    Sum(Tons.By by, String of, Unit unit) {
        this.by = by;
        this.of = of;
        this.unit = unit;
    }

    /** What went in: a load whole, a share of it, or waste of the shift. */
    private record Step(Load load, Share share, Ref of, Amount waste) {
        String text() {
            if (load == null) {
                return of + " waste of the shift, less " + waste.value().toPlainString();
            }
            if (share == null) {
                return load.put() + weights(load);
            }
            String part = share.of().equals(load.ticket().ref()) ? "" : share.of() + " part of ";
            return part + load.put() + " " + share.weight().value().toPlainString();
        }
    }

    /** A load of this sum; loads come in the order of their discharge. */
    void add(Load load) {
        received = received.add(load.received().value());
        placed = placed.add(load.placed().value());
        pay = pay.add(load.pay().value());
        loads += load.came() ? 1 : 0;
        entries.add(load.ticket().ref());
        put.add(new Step(load, null, null, null));
        time(load, load.placed().value());
    }

    private static String weights(Load load) {
        String received = load.received().value().toPlainString();
        String placed = load.placed().value().toPlainString();
        String pay = load.pay().value().toPlainString();
        String more = load.left().isEmpty() ? "" : " (" + load.left() + ")";
        return placed.equals(received) && pay.equals(placed)
                ? " " + received + more
                : " received " + received + ", placed " + placed + ", for pay " + pay + more;
    }

    /** What a load left here. */
    void add(Load load, Share share) {
        pay = pay.add(share.weight().value());
        loads++;
        parts |= !share.of().equals(load.ticket().ref());
        entries.add(share.of());
        put.add(new Step(load, share, null, null));
        time(load, share.weight().value());
    }

    /** Waste of the shift, which no ticket bears. */
    void less(Ref of, Amount waste) {
        pay = pay.subtract(waste.value());
        entries.add(of);
        put.add(new Step(null, null, of, waste));
    }

    private void time(Load load, BigDecimal weight) {
        OffsetDateTime time = load.ticket().time();
        if (time != null && load.laid()) {
            first = first == null ? time : first;
            last = time;
            timed = timed.add(weight);
            lastTimed = weight;
        }
    }

    Tons tons() {
        return new Tons(
                by,
                of,
                loads,
                parts,
                amount(received),
                amount(placed),
                amount(pay),
                first,
                last,
                perHour(),
                List.copyOf(entries),
                new Lines<>(put, Step::text));
    }

    private Amount amount(BigDecimal value) {
        return new Amount(value, unit);
    }

    private Optional<BigDecimal> perHour() {
        if (first == null || !first.toInstant().isBefore(last.toInstant())) {
            return Optional.empty();
        }
        BigDecimal seconds = BigDecimal.valueOf(Duration.between(first, last).toSeconds());
        BigDecimal weight = timed.subtract(lastTimed).multiply(SECONDS);
        return Optional.of(weight.divide(seconds, 1, RoundingMode.HALF_UP));
    }
}
