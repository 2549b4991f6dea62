package screedbook.job;

import java.util.List;
import screedbook.entry.StationBase;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What stands where a job file is silent. Each usual setting is common practice, no source, unless one is named. */
final class Settled {
    private Settled() {}

    static <T> List<T> list(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }

    static List<Job.Distributor> distributors(List<Job.Distributor> given) {
        return list(given).stream()
                .map(d -> new Job.Distributor(d.name(), d.reading(), list(d.strapping())))
                .toList();
    }

    static Lots lots(Lots given) {
        return given == null
                ? null
                : new Lots(
                        given.lot(),
                        given.sublot(),
                        given.ends(),
                        given.overnight(),
                        given.randomBy(),
                        given.draws(),
                        given.freeEdge(),
                        given.heldEdge(),
                        given.seed(),
                        list(given.excluded()),
                        given.retest());
    }

    static Job.Stationing stationing(Job.Stationing given, Job.Units units) {
        StationBase usual = units == Job.Units.METRIC ? StationBase.M_1000 : StationBase.FT_100;
        Job.Stationing s = given == null ? new Job.Stationing(null, null, null, null, null) : given;
        return new Job.Stationing(
                or(s.base(), usual), or(s.direction(), Job.Direction.UP), s.begins(), s.ends(), list(s.equations()));
    }

    /** First five loads, then one in five, a mix: Florida DOT Standard Specifications 330-6.3 (2010 package). */
    static Checks checks(Checks given) {
        Checks c = given == null ? new Checks(null, null, null, null, null, null, null, null, null, null) : given;
        return new Checks(
                or(c.firstLoads(), 5),
                or(c.thenOneIn(), 5),
                or(c.heatWhere(), Checks.HeatWhere.PAVER),
                or(c.surfaceEvery(), Amount.of("120", Unit.MINUTE)),
                or(c.weatherEvery(), Amount.of("240", Unit.MINUTE)),
                or(c.loadAge(), Amount.of("120", Unit.MINUTE)),
                c.yieldEvery(),
                or(c.tackSamples(), 1),
                or(c.grossAndTare(), YesNo.NO),
                c.source(),
                list(c.others()),
                c.depthWithin(),
                c.paidUpTo(),
                c.stopAtMost(),
                c.thermometerOff());
    }

    private static <T> T or(T given, T usual) {
        return given == null ? usual : given;
    }
}
