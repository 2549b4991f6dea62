package screedbook.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Places along one line that are left to choose from: stretches with both ends in, apart and in order. */
record Spans(List<Span> all) {
    /** From one place to another, both in; a single place where they are the same. */
    record Span(BigDecimal low, BigDecimal high) {}

    /** Digits behind the point of a place that somebody can lay out: a hundredth of a foot or a metre. */
    private static final int DIGITS = 2;

    static Spans between(BigDecimal low, BigDecimal high) {
        return new Spans(low.compareTo(high) <= 0 ? List.of(new Span(low, high)) : List.of());
    }

    Spans within(BigDecimal low, BigDecimal high) {
        List<Span> left = new ArrayList<>();
        for (Span span : all) {
            add(left, span.low().max(low), span.high().min(high));
        }
        return new Spans(List.copyOf(left));
    }

    /** Without what lies between two places; the places themselves stay. */
    Spans without(BigDecimal low, BigDecimal high) {
        if (low.compareTo(high) >= 0) {
            return this;
        }
        List<Span> left = new ArrayList<>();
        for (Span span : all) {
            if (high.compareTo(span.low()) <= 0 || low.compareTo(span.high()) >= 0) {
                left.add(span);
            } else {
                add(left, span.low(), low);
                add(left, high, span.high());
            }
        }
        return new Spans(List.copyOf(left));
    }

    Spans onlyAt(List<BigDecimal> places) {
        List<Span> left = new ArrayList<>();
        places.stream().sorted().filter(this::has).forEach(at -> add(left, at, at));
        return new Spans(List.copyOf(left));
    }

    private static void add(List<Span> to, BigDecimal low, BigDecimal high) {
        if (low.compareTo(high) <= 0) {
            to.add(new Span(low, high));
        }
    }

    boolean has(BigDecimal at) {
        return all.stream().anyMatch(s -> s.low().compareTo(at) <= 0 && at.compareTo(s.high()) <= 0);
    }

    /** The nearest of them that is not right of a place, moved into its stretch to a hundredth where that has room. */
    Optional<BigDecimal> leftOf(BigDecimal at) {
        return all.stream()
                .filter(s -> s.low().compareTo(at) <= 0)
                .reduce((before, last) -> last)
                .map(s -> s.high().compareTo(at) >= 0 ? at : tidy(s.high(), RoundingMode.FLOOR, s));
    }

    /** The nearest of them that is not left of a place. */
    Optional<BigDecimal> rightOf(BigDecimal at) {
        return all.stream()
                .filter(s -> s.high().compareTo(at) >= 0)
                .findFirst()
                .map(s -> s.low().compareTo(at) <= 0 ? at : tidy(s.low(), RoundingMode.CEILING, s));
    }

    private static BigDecimal tidy(BigDecimal end, RoundingMode inward, Span span) {
        if (end.scale() <= DIGITS) {
            return end;
        }
        BigDecimal tidy = end.setScale(DIGITS, inward);
        boolean in = span.low().compareTo(tidy) <= 0 && tidy.compareTo(span.high()) <= 0;
        return in ? tidy : end;
    }
}
