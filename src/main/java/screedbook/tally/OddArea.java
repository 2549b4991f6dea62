package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import screedbook.calc.Strip;
import screedbook.entry.Area;
import screedbook.entry.Aside;
import screedbook.entry.Line;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * A part of a pull that has a width or an area of its own, in figures.
 *
 * @param on where it lies; null when no two stations were noted
 * @param area of the whole part
 * @param put how the area came about
 */
public record OddArea(Standing<Area> entry, Stretch on, Area.Counts counts, Reckoned area, String put) {
    static OddArea of(Standing<Area> standing, Job job) {
        Area noted = standing.entry();
        Road road = Road.of(job);
        Stretch on = noted.from() == null || noted.to() == null
                ? null
                : Stretch.between(road.along(noted.from()), road.along(noted.to()), List.of(standing.ref()));
        OddArea bare = new OddArea(standing, on, counts(noted), null, "");
        return bare.reckoned(Measure.WIDTH.unit(job.system()), Measure.AREA.unit(job.system()));
    }

    /** As noted; else a strip or a taper takes the place of the planned width, and what has another shape lies beside it. */
    private static Area.Counts counts(Area noted) {
        if (noted.counts() != null) {
            return noted.counts();
        }
        return noted.shape() == Area.Shape.STRIP || noted.shape() == Area.Shape.TAPER
                ? Area.Counts.IN_PLACE
                : Area.Counts.BESIDE;
    }

    private OddArea reckoned(Unit along, Unit square) {
        Area noted = entry.entry();
        if (counts == Area.Counts.IN_PLACE && on == null) {
            return with(Reckoned.not("in place of the planned width, and its stations are not noted"), "");
        }
        if (noted.area() != null) {
            return noted.area().unit() == square
                    ? with(Reckoned.of(noted.area()), "measured " + noted.area().text())
                    : with(Reckoned.not("area in " + noted.area().unit().symbol()), "");
        }
        Optional<Ends> ends = ends(along);
        if (ends.isEmpty()) {
            return with(Reckoned.not("neither area nor widths noted in " + along.symbol()), "");
        }
        if (on == null) {
            return with(Reckoned.not("stations not noted"), "");
        }
        Amount area = ends.get().over(new Amount(on.length(), along));
        return with(
                Reckoned.of(area),
                "(" + ends.get().from().text() + " + " + ends.get().to().text() + ") / 2 x "
                        + new Amount(on.length(), along).text());
    }

    private OddArea with(Reckoned worked, String how) {
        return new OddArea(entry, on, counts, worked, how);
    }

    /** Widths at both ends. */
    private record Ends(Amount from, Amount to) {
        Amount over(Amount length) {
            return Strip.taper(from, to, length);
        }
    }

    /** A strip has one width, a gore is nothing wide at its point; the others need both. */
    private Optional<Ends> ends(Unit along) {
        Amount from = entry.entry().widthFrom();
        Amount to = entry.entry().widthTo();
        if (from == null && to == null) {
            return Optional.empty();
        }
        Amount other = entry.entry().shape() == Area.Shape.STRIP
                ? (from == null ? to : from)
                : entry.entry().shape() == Area.Shape.GORE ? new Amount(BigDecimal.ZERO, along) : null;
        Amount a = from == null ? other : from;
        Amount b = to == null ? other : to;
        return a == null || b == null || a.unit() != along || b.unit() != along
                ? Optional.empty()
                : Optional.of(new Ends(a, b));
    }

    /** What of the area lies between two distances; of a measured one as much as of its length. */
    Amount within(BigDecimal low, BigDecimal high, Unit along, Road road) {
        Stretch part = on.within(low, high);
        if (part.length().compareTo(on.length()) == 0) {
            return area.amount();
        }
        Optional<Ends> ends = entry.entry().area() == null ? ends(along) : Optional.empty();
        if (ends.isEmpty()) {
            BigDecimal share = part.length().divide(on.length(), MathContext.DECIMAL128);
            return new Amount(
                    area.amount().value().multiply(share), area.amount().unit());
        }
        BigDecimal begins = road.along(entry.entry().from());
        Amount a = width(ends.get(), part.low().subtract(begins).abs());
        Amount b = width(ends.get(), part.high().subtract(begins).abs());
        return Strip.taper(a, b, new Amount(part.length(), along));
    }

    private Amount width(Ends ends, BigDecimal fromBegin) {
        BigDecimal gain = ends.to().value().subtract(ends.from().value());
        BigDecimal here = gain.multiply(fromBegin).divide(on.length(), MathContext.DECIMAL128);
        return new Amount(ends.from().value().add(here), ends.from().unit());
    }

    /** What a part that is being keyed comes to, with its steps; empty while that is not known. */
    public static String told(Area area, Job job) {
        Line line = new Line("", 0, 0, job.id(), null, null, null, "", Source.LIVE, area, Aside.NONE, List.of(), "");
        OddArea part = of(new Standing<>(line, area, Aside.NONE, null, null, List.of(), List.of()), job);
        return part.area().known()
                ? part.counts().word().replace('-', ' ') + ": " + part.put() + " = "
                        + part.area().amount().shown(1).text()
                : "";
    }

    /** {@code taper 14+00 to 15+50}. */
    String name() {
        String run = Told.run(entry.entry().from(), entry.entry().to());
        String shape =
                entry.entry().shape() == null ? "part" : entry.entry().shape().word();
        return shape + (run == null ? "" : " " + run);
    }
}
