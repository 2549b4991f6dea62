package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.calc.CorrectionTable;
import screedbook.calc.Dilution;
import screedbook.calc.Strip;
import screedbook.calc.TackRate;
import screedbook.calc.VolumeCorrection;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The tack shots of a day worked out one by one. */
final class Shots {
    private final Job job;
    private final Road road;
    private final Tank tank;

    private Shots(Day day, Job job) {
        this.job = job;
        this.road = Road.of(job);
        this.tank = new Tank(day, job, Measure.VOLUME.unit(job.system()));
    }

    /** In the order in which they happened. */
    static List<Shot> of(Day day, Job job) {
        Shots shots = new Shots(day, job);
        return day.standing(Tack.class).stream().map(shots::shot).toList();
    }

    private Shot shot(Standing<Tack> standing) {
        Tack tack = standing.entry();
        List<String> put = new ArrayList<>();
        Tank.Drawn drawn = tank.drawn(standing);
        say(put, drawn.put());
        Warm warm = warm(tack);
        Reckoned at60 = drawn.volume()
                .then(v -> warm.factor == null
                        ? Reckoned.not(warm.why)
                        : Reckoned.of(new Amount(v.value().multiply(warm.factor), v.unit())));
        if (at60.known()) {
            put.add("at " + base() + " " + drawn.volume().amount().text() + " x " + warm.factor.toPlainString() + " = "
                    + at60.amount().shown(2).text() + ": " + warm.why);
        } else {
            put.add("at " + base() + " " + at60.text(2));
        }
        Reckoned area = area(tack, put);
        Reckoned volume = at60.known() ? at60 : drawn.volume();
        Reckoned applied = volume.then(v -> area.then(a -> applied(v, a, at60.known())));
        put.add("applied " + applied.text(4));
        Reckoned residual = applied.then(a -> residual(tack, a, put));
        put.add("residual " + residual.text(4));
        List<Ref> entries = new ArrayList<>(List.of(standing.ref()));
        entries.addAll(drawn.refills());
        return new Shot(
                standing,
                drawn.volume(),
                warm.factor,
                at60,
                area,
                applied,
                at60.known(),
                residual,
                List.copyOf(entries),
                List.copyOf(put));
    }

    private String base() {
        return job.units() == Job.Units.METRIC ? "15 °C" : "60 °F";
    }

    private static void say(List<String> put, String line) {
        if (!line.isEmpty()) {
            put.add(line);
        }
    }

    /** The factor of a shot with its source, or null and the reason. */
    private record Warm(BigDecimal factor, String why) {}

    private Warm warm(Tack tack) {
        Amount material = tack.gauge().material();
        if (tack.gauge().at60() == YesNo.YES) {
            return new Warm(BigDecimal.ONE, "noted as at " + base() + " already");
        }
        Optional<CorrectionTable> table =
                product(tack).map(Job.Product::correction).flatMap(CorrectionTable::ofKey);
        if (table.isEmpty()) {
            return new Warm(null, "no correction table set for the product");
        }
        if (table.get() == CorrectionTable.NONE) {
            return new Warm(BigDecimal.ONE, table.get().source());
        }
        if (material == null) {
            return new Warm(null, "material temperature not noted");
        }
        if (material.unit() != Measure.TEMPERATURE.unit(job.system())) {
            return new Warm(null, "material temperature in " + material.unit().symbol());
        }
        String beyond = table.get().covers(material) ? "" : "; the table does not reach to it";
        return new Warm(
                VolumeCorrection.factor(table.get(), material),
                table.get().source() + ", at " + material.text() + beyond);
    }

    private Optional<Job.Product> product(Tack tack) {
        return Optional.ofNullable(tack.product().product()).flatMap(job::product);
    }

    private Reckoned area(Tack tack, List<String> put) {
        Tack.Target on = tack.target();
        if (on.area() != null) {
            put.add("area as noted " + on.area().text());
            return on.area().unit() == Measure.AREA.unit(job.system())
                    ? Reckoned.of(on.area())
                    : Reckoned.not("area in " + on.area().unit().symbol());
        }
        Optional<Amount> length = road.run(on.from(), on.to());
        Optional<Amount> width = width(on);
        if (length.isEmpty() || width.isEmpty()) {
            return Reckoned.not(length.isEmpty() ? "stations not noted" : "width not noted");
        }
        Amount area = Strip.area(width.get(), length.get());
        String whose = on.width() == null ? " (the pull's, as planned)" : "";
        put.add("area " + length.get().text() + " x " + width.get().text() + whose + " = "
                + area.shown(1).text());
        return Reckoned.of(area);
    }

    /** The width noted; for a surface without one the pull's, for a face nothing. */
    private Optional<Amount> width(Tack.Target on) {
        if (on.width() != null) {
            return Optional.of(on.width()).filter(w -> w.unit() == unitOfWidth());
        }
        return on.face() != null
                ? Optional.empty()
                : job.pull(on.pull(), on.lift()).map(Job.Pull::width);
    }

    private Unit unitOfWidth() {
        return Measure.WIDTH.unit(job.system());
    }

    private static Reckoned applied(Amount volume, Amount area, boolean corrected) {
        return TackRate.applied(volume, area).map(Reckoned::of).orElse(Reckoned.not("no area"));
    }

    private Reckoned residual(Tack tack, Amount applied, List<String> put) {
        Optional<Amount> residue = product(tack).map(Job.Product::residue);
        if (residue.isEmpty()) {
            return Reckoned.not("no residue set for the product");
        }
        if (residue.get().value().signum() <= 0 || residue.get().value().compareTo(BigDecimal.valueOf(100)) > 0) {
            return Reckoned.not("the product's residue is " + residue.get().text());
        }
        Tack.Product product = tack.product();
        boolean parts = product.emulsionParts() != null
                && product.waterParts() != null
                && product.emulsionParts().signum() > 0
                && product.waterParts().signum() >= 0;
        boolean diluted = product.diluted() == Tack.Dilution.YES || product.diluted() == Tack.Dilution.RATIO_UNKNOWN;
        if (product.diluted() == Tack.Dilution.RATIO_UNKNOWN || (diluted && !parts)) {
            return Reckoned.not("diluted, and the ratio is not known");
        }
        Dilution dilution = parts ? new Dilution(product.emulsionParts(), product.waterParts()) : Dilution.NONE;
        String noted = parts || product.diluted() != null ? "" : ", dilution not noted";
        put.add("residue " + residue.get().text() + ", emulsion to water " + dilution.text() + noted);
        return Reckoned.of(TackRate.residual(applied, residue.get().value(), dilution));
    }
}
