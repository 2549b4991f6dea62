package screedbook.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import screedbook.entry.Ref;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Marks as most rules make them: of a value outside its limits or outside the usual, of what a sheet asks for. */
final class Marks {
    private static final Map<Quantity, Bounds> USUAL = new EnumMap<>(Quantity.class);

    static {
        for (Quantity quantity : Quantity.values()) {
            USUAL.put(quantity, Bounds.of(SpecSheet.usual(), quantity, Situation.UNKNOWN));
        }
    }

    private Marks() {}

    /** The range in which a figure usually lies. */
    static Bounds usual(Quantity quantity) {
        return USUAL.get(quantity);
    }

    static Optional<Asked> asked(SpecSheet sheet, Demand demand, Situation situation) {
        List<Asked> all = sheet.asked(demand, situation);
        return all.stream()
                .filter(Asked::sure)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** What a sheet asks for, as it stands in the middle of a line. */
    static String told(Asked asked) {
        String says = asked.says();
        String bare = says.endsWith(".") ? says.substring(0, says.length() - 1) : says;
        return bare.substring(0, 1).toLowerCase(Locale.ROOT) + bare.substring(1);
    }

    /**
     * One mark for each limit outside of which a value lies; none where it lies inside or no limit is set.
     *
     * @param where {@code at the paver}
     */
    static List<Mark> judged(Bounds bounds, List<Ref> of, String where, Amount value, String more) {
        return judged(bounds, of, () -> where, value, () -> more);
    }

    /** The same; its words are made only where something is to be said. */
    static List<Mark> judged(Bounds bounds, List<Ref> of, Supplier<String> where, Amount value, Supplier<String> more) {
        return judged(bounds, of, where, value, more, Marks::told);
    }

    /**
     * The same of a percent of density, which has one decimal, as the trade writes it; more only where it would else read
     * as if it lay inside.
     */
    static List<Mark> density(Bounds bounds, List<Ref> of, String where, Amount percent) {
        return judged(
                bounds,
                of,
                () -> where,
                percent,
                () -> "",
                (bound, value) -> IntStream.rangeClosed(1, 3)
                        .mapToObj(value::shown)
                        .filter(bound::outside)
                        .findFirst()
                        .orElse(value)
                        .text());
    }

    private static List<Mark> judged(
            Bounds bounds,
            List<Ref> of,
            Supplier<String> where,
            Amount value,
            Supplier<String> more,
            BiFunction<Bound, Amount, String> told) {
        List<Bound> broken = value == null ? List.of() : bounds.broken(value);
        if (broken.isEmpty()) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        for (Bound bound : broken) {
            String working =
                    bound.working() + bound.rounded(value).map(r -> " " + r).orElse("");
            marks.add(new Mark(
                    bound.sure() ? null : Sort.LOOK_AGAIN,
                    of,
                    where.get() + " " + told.apply(bound, value) + more.get(),
                    bound.full(value.unit()),
                    bound.clause(),
                    bound.inside(value.unit()),
                    working,
                    bound.beyond(value)));
        }
        return marks;
    }

    /** The value, and in brackets what it is in the limit's unit where that is another. */
    private static String told(Bound bound, Amount value) {
        Unit unit = bound.unit();
        String text = AmountText.text(AmountText.shown(value));
        return value.unit() == unit
                ? text
                : text + " (" + AmountText.text(value.to(unit).shown(scale(bound) + 1)) + ")";
    }

    /** Digits behind the point with which a limit is printed. */
    private static int scale(Bound bound) {
        return Math.max(
                0, (bound.low() == null ? bound.high() : bound.low()).value().scale());
    }

    /** Marks of the usual range: these are asked about, whatever the rule's sort. */
    static List<Mark> odd(Quantity quantity, List<Ref> of, String where, Amount value) {
        List<Mark> marks = judged(usual(quantity), of, where, value, "");
        return marks.isEmpty()
                ? marks
                : marks.stream().map(m -> m.as(Sort.LOOK_AGAIN)).toList();
    }
}
