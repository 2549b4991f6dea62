package screedbook.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import screedbook.unit.Amount;

/** The parts of the line that tells of densities, cores, samples, hand-overs and results. */
final class SampleTold {
    private SampleTold() {}

    /** Empty for every other kind. */
    static List<String> parts(Entry entry) {
        if (entry instanceof Gauge g) {
            return gauge(g);
        }
        if (entry instanceof Core c) {
            return core(c);
        }
        if (entry instanceof Sample s) {
            return sample(s);
        }
        if (entry instanceof Custody c) {
            String hands =
                    c.givenBy() == null && c.takenBy() == null ? null : dash(c.givenBy()) + " to " + dash(c.takenBy());
            return parts(c.sample(), hands, seal(c.sealNumber()), whole(c.whole()), c.condition(), c.location());
        }
        if (entry instanceof Result r) {
            String found = r.found() == null ? null : joined(r.found().toPlainString(), r.inUnit());
            String lot = r.lot() == null ? null : "for lot " + r.lot();
            String tested = r.tested() == null ? null : "tested " + r.tested();
            return parts(r.sample(), joined(word(r.what()), found), r.mix(), lot, tested, r.laboratory());
        }
        return List.of();
    }

    private static List<String> gauge(Gauge g) {
        Gauge.Reading r = g.reading();
        String readings = Stream.of(r.firstReading(), r.secondReading(), r.thirdReading(), r.fourthReading())
                .filter(Objects::nonNull)
                .map(Amount::text)
                .reduce((a, b) -> a + ", " + b)
                .orElse(null);
        Gauge.Spot s = g.spot();
        return parts(
                readings,
                text(s.place()),
                left(s.fromLeft()),
                on(s.pull(), s.lift()),
                lot(s.lot(), s.sublot()),
                r.passes() == null ? null : r.passes() + (r.passes() == 1 ? " pass" : " passes"),
                g.keeping().instrument());
    }

    private static List<String> core(Core c) {
        Core.Spot s = c.spot();
        Core.Measured m = c.measured();
        return parts(
                c.cut().core(),
                text(s.place()),
                left(s.fromLeft()),
                on(s.pull(), s.lift()),
                lot(s.lot(), s.sublot()),
                s.markedAt() == null ? null : "marked at " + s.markedAt(),
                m.height() == null ? null : "height " + m.height().text(),
                number("Gmb ", m.gmb()),
                number("Gmm ", m.gmm()),
                m.density() == null ? null : m.density().text());
    }

    private static List<String> sample(Sample s) {
        Sample.Origin o = s.origin();
        return parts(
                s.what().sample(),
                word(s.what().material()),
                word(s.what().purpose()),
                o.ticket() == null ? null : "of ticket " + o.ticket(),
                text(o.place()),
                on(o.pull(), o.lift()),
                lot(o.lot(), o.sublot()),
                seal(s.keeping().sealNumber()),
                o.insteadOf() == null ? null : "instead of " + o.insteadOf());
    }

    private static List<String> parts(String... parts) {
        List<String> told = new ArrayList<>();
        for (String each : parts) {
            if (each != null && !each.isEmpty()) {
                told.add(each);
            }
        }
        return told;
    }

    private static String joined(String one, String other) {
        return one == null ? other : other == null ? one : one + " " + other;
    }

    private static String dash(String text) {
        return text == null ? "-" : text;
    }

    private static String word(Word word) {
        return word == null ? null : word.word();
    }

    private static String text(Station place) {
        return place == null ? null : place.text();
    }

    private static String number(String name, BigDecimal value) {
        return value == null ? null : name + value.toPlainString();
    }

    private static String left(Amount left) {
        return left == null ? null : left.text() + " from left";
    }

    private static String on(String pull, Integer lift) {
        return pull == null ? null : "pull " + pull + (lift == null ? "" : " lift " + lift);
    }

    private static String lot(Integer lot, Integer sublot) {
        return lot == null ? null : "lot " + lot + (sublot == null ? "" : " sublot " + sublot);
    }

    private static String seal(String number) {
        return number == null ? null : "seal " + number;
    }

    private static String whole(YesNo whole) {
        return whole == null ? null : whole == YesNo.YES ? "whole" : "not whole";
    }
}
