package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;

/**
 * Turns by sublots or lots as they fill. A check counts where it belongs, whenever it is made; it is missing when the
 * next one is full too, or the shift is closed.
 */
final class SublotTurns implements Turns {
    private final int times;
    private final List<Filled> all;
    private final Function<BigDecimal, String> text;
    private final Map<String, Integer> got = new HashMap<>();
    private boolean closed;

    /**
     * A sublot or a lot to which this shift added.
     *
     * @param left weight that it still takes
     * @param over whether it takes no more
     * @param last load of this shift that lies in it
     */
    record Filled(String name, BigDecimal size, BigDecimal left, boolean over, Ref last) {
        static List<Filled> of(Filling filling, ShiftId shift, String mix, boolean lots) {
            List<Filled> all = new ArrayList<>();
            for (Lot lot : filling.lots(shift)) {
                if (lot.mix().equals(mix) && lots) {
                    add(all, "lot " + lot.number(), lot.size().value(), lot.pieces(), lot.over(), shift);
                } else if (lot.mix().equals(mix)) {
                    lot.sublots()
                            .forEach(s -> add(
                                    all,
                                    "lot " + lot.number() + " sublot " + s.number(),
                                    s.size().value(),
                                    s.pieces(),
                                    s.over(),
                                    shift));
                }
            }
            return all;
        }

        private static void add(
                List<Filled> to, String name, BigDecimal size, List<Lot.Piece> pieces, boolean over, ShiftId shift) {
            Optional<Ref> last = pieces.stream()
                    .map(Lot.Piece::load)
                    .filter(l -> l.shift().equals(shift))
                    .map(Laid::ticket)
                    .reduce((a, b) -> b);
            BigDecimal in = pieces.stream().map(p -> p.tons().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
            last.ifPresent(
                    ref -> to.add(new Filled(name, size, size.subtract(in).max(BigDecimal.ZERO), over, ref)));
        }
    }

    SublotTurns(int times, List<Filled> all, Function<BigDecimal, String> text) {
        this.times = times;
        this.all = all;
        this.text = text;
    }

    /** A check that an earlier shift made in a sublot or lot of this name. */
    void before(String name) {
        got.merge(name, 1, Integer::sum);
    }

    /** Of an answer, what is changed names where it belongs; loads are in what is filled already. */
    @Override
    public void take(Step step) {
        if (step.answers()) {
            got.merge(step.changed(), 1, Integer::sum);
        }
    }

    @Override
    public void close() {
        closed = true;
    }

    private int got(Filled one) {
        return Math.min(times, got.getOrDefault(one.name(), 0));
    }

    private boolean lacks(Filled one) {
        return one.over() && got(one) < times;
    }

    @Override
    public Next next(OffsetDateTime now) {
        for (Filled each : all) {
            if (lacks(each)) {
                return new Next("NOW: " + each.name().replaceFirst("lot \\d+ (?=sublot)", ""), true, BigDecimal.ZERO);
            }
        }
        if (all.isEmpty()) {
            return new Next("with the first", false, null);
        }
        Filled last = all.get(all.size() - 1);
        boolean made = got(last) >= times || last.over();
        BigDecimal rest = made ? last.left().add(last.size()) : last.left();
        return new Next(
                "in " + text.apply(rest), false, rest.divide(last.size().max(BigDecimal.ONE), MathContext.DECIMAL32));
    }

    @Override
    public int done() {
        return all.stream().mapToInt(this::got).sum();
    }

    @Override
    public int asked() {
        return all.stream().mapToInt(a -> a.over() ? times : got(a)).sum();
    }

    @Override
    public List<Over> over() {
        List<Over> over = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean late = closed || i + 1 < all.size() && all.get(i + 1).over();
            if (lacks(all.get(i)) && late) {
                String of = times == 1 ? "" : ", " + got(all.get(i)) + " of " + times;
                over.add(new Over(all.get(i).last(), all.get(i).name() + of));
            }
        }
        return List.copyOf(over);
    }
}
