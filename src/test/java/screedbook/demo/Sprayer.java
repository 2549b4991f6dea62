package screedbook.demo;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.entry.Refill;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A tack distributor that empties shot by shot, read as its operator reads it: to a quarter inch or to five gallons. */
final class Sprayer {
    private final Job.Distributor distributor;
    private double reading;
    private String paper;

    /** @param reading inches where it has a strapping table, else gallons */
    Sprayer(Job.Distributor distributor, double reading, String paper) {
        this.distributor = distributor;
        this.reading = reading;
        this.paper = paper;
    }

    private boolean stick() {
        return distributor.strapping() != null && !distributor.strapping().isEmpty();
    }

    /** Where a shot goes; a width of 0 is the pull's. */
    record Run(Tack.Under surface, double from, double to, double width, String pull, int lift) {}

    /**
     * A shot over a surface that leaves a residual rate near the one wanted.
     *
     * @param parts of water to one of emulsion; 0 for undiluted
     * @param warm degrees F
     */
    Tack shot(Job.Product product, Run run, double residual, int warm, int parts, String dilutedBy, Tack.After after) {
        double area = (run.to - run.from) * run.width / 9;
        double factor = 1 - 0.00025 * (warm - 60);
        double applied = residual / (product.residue().value().doubleValue() / 100);
        double gallons = applied * area / factor;
        double before = reading;
        reading = less(gallons);
        boolean diluted = parts > 0;
        return new Tack(
                new Tack.Product(
                        product.name(),
                        distributor.name(),
                        paper,
                        diluted ? BigDecimal.ONE : null,
                        diluted ? BigDecimal.valueOf(parts) : null,
                        diluted ? Tack.Dilution.YES : Tack.Dilution.NO,
                        dilutedBy),
                new Tack.Target(
                        run.surface,
                        null,
                        Mat.station(run.from),
                        Mat.station(run.to),
                        feet(run.width),
                        null,
                        run.pull,
                        run.lift),
                gauge(before, reading, warm),
                after);
    }

    private Tack.Gauge gauge(double before, double after, int warm) {
        Amount heat = Amount.of(String.valueOf(warm), Unit.DEG_F);
        return stick()
                ? new Tack.Gauge(null, null, inches(before), inches(after), null, null, heat, null, null)
                : new Tack.Gauge(gallons(before), gallons(after), null, null, null, null, heat, null, null);
    }

    /** Hand work on a face: the volume is an estimate and the area is not noted. */
    static Tack face(
            Job.Product product,
            String distributor,
            Tack.Face face,
            double from,
            double to,
            String pull,
            int lift,
            String gallons,
            int warm,
            OffsetDateTime broken) {
        return new Tack(
                new Tack.Product(product.name(), distributor, null, null, null, Tack.Dilution.NO, null),
                new Tack.Target(null, face, Mat.station(from), Mat.station(to), null, null, pull, lift),
                new Tack.Gauge(
                        null,
                        null,
                        null,
                        null,
                        Amount.of(gallons, Unit.GALLON),
                        null,
                        Amount.of(String.valueOf(warm), Unit.DEG_F),
                        null,
                        "hand wand, operator's estimate"),
                new Tack.After(broken, YesNo.NO, null, null, null));
    }

    Refill refill(Job.Product product, double to, String delivery) {
        double before = reading;
        reading = to;
        paper = delivery;
        return new Refill(distributor.name(), product.name(), gallons(before), gallons(to), delivery);
    }

    private double less(double gallons) {
        return stick() ? depth(volume(reading) - gallons) : Math.round((reading - gallons) / 5) * 5;
    }

    private double volume(double depth) {
        List<Job.Strap> rows = distributor.strapping();
        int i = 0;
        while (rows.get(i + 1).depth().value().doubleValue() < depth) {
            i++;
        }
        return between(depth, depth(rows.get(i)), depth(rows.get(i + 1)), volume(rows.get(i)), volume(rows.get(i + 1)));
    }

    private double depth(double volume) {
        List<Job.Strap> rows = distributor.strapping();
        int i = 0;
        while (volume(rows.get(i + 1)) < volume) {
            i++;
        }
        double exact = between(
                volume, volume(rows.get(i)), volume(rows.get(i + 1)), depth(rows.get(i)), depth(rows.get(i + 1)));
        return Math.round(exact * 4) / 4.0;
    }

    private static double depth(Job.Strap row) {
        return row.depth().value().doubleValue();
    }

    private static double volume(Job.Strap row) {
        return row.volume().value().doubleValue();
    }

    private static double between(double x, double x0, double x1, double y0, double y1) {
        return y0 + (x - x0) / (x1 - x0) * (y1 - y0);
    }

    private static Amount inches(double depth) {
        return new Amount(BigDecimal.valueOf(depth).setScale(2), Unit.INCH);
    }

    private static Amount gallons(double volume) {
        return new Amount(BigDecimal.valueOf(Math.round(volume)), Unit.GALLON);
    }

    private static Amount feet(double width) {
        return new Amount(BigDecimal.valueOf(width), Unit.FOOT);
    }
}
