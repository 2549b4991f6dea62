package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The densities that gauges read: the mean of the readings at a place, with the correlation of the gauge to the mix. */
final class GaugeDensities {
    private final SoFar soFar;
    private final Belonging belonging;
    private final Gmms gmms;
    private final Unit unit;

    GaugeDensities(SoFar soFar, Belonging belonging, Gmms gmms, Unit unit) {
        this.soFar = soFar;
        this.belonging = belonging;
        this.gmms = gmms;
        this.unit = unit;
    }

    /** What a reading comes to. */
    record Read(Reckoned percent, Optional<Amount> ofTarget, List<String> put) {}

    Density of(Standing<Gauge> gauge) {
        Gauge g = gauge.entry();
        Read read = read(g, gauge.line().shift());
        return new Density(
                gauge,
                gauge,
                Density.By.GAUGE,
                "gauge " + soFar.name(gauge),
                belonging.mix(g.spot().mix(), g.spot().lift()),
                g.spot().place(),
                belonging.of(gauge),
                read.percent(),
                read.ofTarget(),
                false,
                true,
                Figures.working(
                        "(mean of the readings + correlation) / unit weight of the Gmm x 100",
                        read.put(),
                        soFar.here(gauge) ? List.of(gauge.ref()) : List.of(),
                        Densities.SOURCE));
    }

    Read read(Gauge g, ShiftId shift) {
        String mix = belonging.mix(g.spot().mix(), g.spot().lift());
        List<String> put = new ArrayList<>();
        Optional<Densities.Correlation> added = correlation(g, mix);
        Reckoned density = mean(g, put).then(m -> {
            put.add(added.map(a -> "correlation " + a.amount().text() + ", " + a.from())
                    .orElse("no correlation to this mix is noted"));
            return Reckoned.of(added.map(a -> m.plus(a.amount())).orElse(m));
        });
        Integer lot = belonging.of(g, shift).map(Filling.Where::lot).orElse(null);
        Optional<Gmms.Gmm> gmm = gmms.of(g.reading().gmm(), List.of(), mix, lot, shift.date());
        gmm.ifPresent(m -> put.add(
                m.put() + ", " + MatDensity.unitWeight(m.value(), unit).shown(1).text()));
        Reckoned percent = density.then(d -> gmm.map(
                        m -> Reckoned.of(MatDensity.percentOf(d, MatDensity.unitWeight(m.value(), unit))))
                .orElse(Reckoned.not("no Gmm is noted")));
        Amount target = g.reading().target();
        Optional<Amount> ofTarget =
                target == null || target.unit() != unit || target.value().signum() <= 0
                        ? Optional.empty()
                        : density.seen().map(d -> MatDensity.percentOf(d, target));
        ofTarget.ifPresent(
                p -> put.add("target " + target.text() + ", " + p.shown(1).text() + " of it"));
        return new Read(percent, ofTarget, put);
    }

    /** The mean of the readings at one place; what it is made of goes into the working. */
    Reckoned mean(Gauge g, List<String> put) {
        List<Amount> readings = Stream.of(
                        g.reading().firstReading(),
                        g.reading().secondReading(),
                        g.reading().thirdReading(),
                        g.reading().fourthReading())
                .filter(Objects::nonNull)
                .toList();
        if (readings.isEmpty()) {
            return Reckoned.not("no reading is noted");
        }
        if (readings.stream().anyMatch(r -> r.unit() != unit)) {
            return Reckoned.not("a reading is in the other system's unit");
        }
        BigDecimal sum = readings.stream().map(Amount::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        Amount mean = new Amount(sum.divide(BigDecimal.valueOf(readings.size()), MathContext.DECIMAL64), unit);
        put.add("mean of "
                + String.join(", ", readings.stream().map(Amount::text).toList()) + ": "
                + mean.shown(2).text());
        return Reckoned.of(mean);
    }

    /** The correlation of a reading: as keyed with it, else the newest one of its gauge to its mix. */
    Optional<Densities.Correlation> correlation(Gauge gauge, String mix) {
        Amount keyed = gauge.reading().correlation();
        if (keyed != null && keyed.unit() == unit) {
            return Optional.of(new Densities.Correlation(keyed, "keyed with it"));
        }
        String instrument = gauge.keeping().instrument();
        Standing<InstrumentCheck> last = null;
        for (Standing<InstrumentCheck> each : soFar.all(InstrumentCheck.class)) {
            InstrumentCheck check = each.entry();
            boolean of = check.correlation() != null
                    && check.correlation().unit() == unit
                    && Objects.equals(instrument, check.instrument())
                    && (check.correlatedMix() == null || check.correlatedMix().equals(mix));
            last = of ? each : last;
        }
        return Optional.ofNullable(last)
                .map(c -> new Densities.Correlation(c.entry().correlation(), soFar.name(c)));
    }
}
