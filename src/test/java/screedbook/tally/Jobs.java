package screedbook.tally;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import screedbook.entry.Station;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Jobs for tests of what adds up. Invented throughout. */
public final class Jobs {
    private Jobs() {}

    /** Two mixes, two pulls of 12 ft in lift 2 at 2.00 in, one product, one distributor with a strapping table. */
    public static Job us() {
        return with(usChecks());
    }

    public static Checks usChecks() {
        return new Checks(
                5,
                5,
                Checks.HeatWhere.PAVER,
                Amount.of("120", Unit.MINUTE),
                Amount.of("240", Unit.MINUTE),
                Amount.of("120", Unit.MINUTE),
                Amount.of("200", Unit.SHORT_TON),
                1,
                YesNo.NO,
                null);
    }

    /** The same job with another value in one of its components. */
    public static Job with(Job job, String name, Object value) {
        RecordComponent[] parts = Job.class.getRecordComponents();
        Object[] values = new Object[parts.length];
        boolean found = false;
        try {
            for (int i = 0; i < parts.length; i++) {
                boolean other = parts[i].getName().equals(name);
                found |= other;
                values[i] = other ? value : parts[i].getAccessor().invoke(job);
            }
            if (!found) {
                throw new IllegalArgumentException("a job has no " + name);
            }
            return (Job) Job.class.getDeclaredConstructors()[0].newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a job is copied with another " + name, e);
        }
    }

    public static Job with(Checks checks) {
        return new Job(
                        "test-job",
                        "Juniper Flat overlay",
                        "C-104",
                        "County of Juniper",
                        "Bracken Paving",
                        new Job.Place("Juniper Flat", new BigDecimal("43.5"), new BigDecimal("-111.9")),
                        ZoneId.of("America/Boise"),
                        Job.Units.US,
                        new Job.Stationing(null, Job.Direction.UP, Station.of("10+00"), Station.of("90+00"), List.of()),
                        List.of(),
                        List.of(new Job.Lift(
                                2, Job.Layer.RIDING_SURFACE, Amount.of("2.00", Unit.INCH), "12.5-70A", null)),
                        List.of(pull("A", "-12", "0"), pull("B", "0", "12")),
                        List.of(mix("12.5-70A", "110", "401-1"), mix("19-64", null, "401-2")),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Job.Product(
                                "CSS-1h", "CSS-1h", Amount.of("57", Unit.PERCENT), "emulsion", YesNo.NO)),
                        List.of(new Job.Distributor(
                                "D7",
                                Tack.Reading.TANK,
                                List.of(strap("0", "0"), strap("10", "400"), strap("20", "1000")))),
                        List.of(),
                        null,
                        null,
                        null,
                        checks,
                        "practice",
                        List.of(),
                        List.of(),
                        null)
                .settled();
    }

    private static Job.Pull pull(String name, String left, String right) {
        return new Job.Pull(name, 2, Amount.of(left, Unit.FOOT), Amount.of(right, Unit.FOOT), Job.Direction.UP, null);
    }

    private static Mix mix(String name, String spread, String item) {
        return new Mix(
                name,
                null,
                null,
                null,
                "70-22",
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                spread == null ? null : Amount.of(spread, Unit.POUND_PER_SQUARE_YARD),
                item,
                null,
                null);
    }

    private static Job.Strap strap(String depth, String volume) {
        return new Job.Strap(Amount.of(depth, Unit.INCH), Amount.of(volume, Unit.GALLON));
    }

    /** One mix at 2.4 kg/m2 for each mm, one pull of 3.5 m in lift 1 at 50 mm, one product. */
    public static Job metric() {
        return new Job(
                        "test-job",
                        "Sorrel Lake resurfacing",
                        null,
                        null,
                        null,
                        null,
                        ZoneId.of("America/Edmonton"),
                        Job.Units.METRIC,
                        null,
                        null,
                        List.of(new Job.Lift(
                                1, Job.Layer.RIDING_SURFACE, Amount.of("50", Unit.MILLIMETRE), "AC-12", null)),
                        List.of(new Job.Pull(
                                "A", 1, Amount.of("0", Unit.METRE), Amount.of("3.5", Unit.METRE), null, null)),
                        List.of(new Mix(
                                "AC-12",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                Amount.of("2.4", Unit.KILOGRAM_PER_SQUARE_METRE),
                                "SP-4",
                                null,
                                null)),
                        null,
                        null,
                        null,
                        List.of(new Job.Product("SS-1", "SS-1", Amount.of("60", Unit.PERCENT), "emulsion", null)),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        "practice",
                        null,
                        null,
                        null)
                .settled();
    }
}
