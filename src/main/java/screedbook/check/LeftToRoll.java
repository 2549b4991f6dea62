package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import screedbook.calc.DewPoint;
import screedbook.calc.MatCooling;
import screedbook.calc.SkyCover;
import screedbook.calc.SkyLight;
import screedbook.calc.Stuff;
import screedbook.calc.Sun;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Mat;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.job.Job;
import screedbook.tally.FeltAir;
import screedbook.tally.Load;
import screedbook.unit.Amount;

/**
 * Minutes left to roll, estimated while a load or a mat temperature is keyed, from what is keyed already.
 *
 * @param text one line: {@code estimate: 12 to 18 min left to roll, mean of the lift}
 * @param working what went in, what it comes to at each depth, and what it leaves out
 */
public record LeftToRoll(String text, List<String> working) {
    private static final String LEAVES_OUT =
            "It is an estimate, a quarter more or less. It leaves out rain and a wet base, the rollers' water, the mat"
                    + " growing denser, its edges, and mix that came cooler at the ends of a load.";
    private static final String SOURCE =
            "Heat flowing down into the base and up into wind and sky, in one dimension: the model of Corlew and Dickson"
                    + " (1968, from memory) in finite volumes, within half a percent of its closed form; wind after"
                    + " McAdams, radiation counted apart.";

    /**
     * What of a shift goes into an estimate, looked for once.
     *
     * @param read the last load of each lift whose temperature was read at the paver
     */
    public record Seen(
            Optional<Standing<Weather>> weather,
            Optional<Standing<Surface>> surface,
            Map<Integer, Standing<Ticket>> read) {
        public static Seen of(Day day, Job job) {
            Map<Integer, Standing<Ticket>> read = new HashMap<>();
            for (Standing<Ticket> each : day.standing(Ticket.class)) {
                Ticket ticket = each.entry();
                if (Load.laid(ticket) && ticket.heat().paver() != null) {
                    Cases.lift(job, ticket.spot().lift(), ticket.spot().pull())
                            .ifPresent(lift -> read.put(lift.number(), each));
                }
            }
            return new Seen(day.last(Weather.class), day.last(Surface.class), Map.copyOf(read));
        }
    }

    /**
     * The estimate for a ticket with a temperature at the paver, from its discharge; or for a mat temperature, from its
     * reading. Empty where nothing was keyed to work it out from: that temperature, the lift and its planned thickness,
     * and a weather with air and wind.
     *
     * @param at when it happens; null where nobody noted it, and then no sun is counted
     */
    public static Optional<LeftToRoll> of(Job job, Seen seen, Entry partial, OffsetDateTime at) {
        if (partial instanceof Ticket ticket && Load.laid(ticket)) {
            Optional<Job.Lift> lift =
                    Cases.lift(job, ticket.spot().lift(), ticket.spot().pull());
            return lift.flatMap(l -> new Making(job, seen, l, at)
                    .fresh("at the paver", ticket.heat().paver()));
        }
        if (partial instanceof Mat mat && rolled(mat)) {
            Optional<Job.Lift> lift = Cases.lift(job, mat.lift(), mat.pull());
            return lift.flatMap(l -> new Making(job, seen, l, at).mat(mat));
        }
        return Optional.empty();
    }

    private static boolean rolled(Mat mat) {
        return mat.taken() != Mat.Taken.ROLLING_ENDS && mat.taken() != Mat.Taken.BEFORE_TRAFFIC;
    }

    /** One estimate while it is made. */
    private static final class Making {
        private final RolledUntil until;
        private final Job job;
        private final Seen seen;
        private final Job.Lift lift;
        private final OffsetDateTime at;
        private final List<String> put = new ArrayList<>();

        Making(Job job, Seen seen, Job.Lift lift, OffsetDateTime at) {
            this.job = job;
            this.seen = seen;
            this.lift = lift;
            this.at = at;
            this.until = RolledUntil.of(job);
        }

        /** A mat that was laid just now and is as warm all through. */
        Optional<LeftToRoll> fresh(String where, Amount mix) {
            return cooling(where, mix, until.mat()).map(minutes -> told(minutes, 0));
        }

        /** A mat that rolling begins on has cooled from above: it is as old as the load's cooling down to the reading. */
        Optional<LeftToRoll> mat(Mat mat) {
            Optional<Standing<Ticket>> load = mat.taken() == Mat.Taken.ROLLING_BEGINS
                    ? Optional.ofNullable(seen.read().get(lift.number()))
                    : Optional.empty();
            if (mat.mat() == null || load.isEmpty()) {
                return fresh("of the mat", mat.mat());
            }
            Amount mix = load.get().entry().heat().paver();
            Optional<MatCooling.Minutes> old =
                    cooling("at the paver, " + load.get().ref(), mix, mat.mat());
            put.clear();
            OptionalDouble age = old.map(o -> mat.readIn() == Mat.ReadIn.INSIDE ? o.middle() : o.surface())
                    .orElse(OptionalDouble.empty());
            if (age.isEmpty()) {
                return fresh("of the mat", mat.mat());
            }
            Optional<MatCooling.Minutes> all =
                    cooling("at the paver, " + load.get().ref(), mix, until.mat());
            put.add("the mat reads " + mat.mat().text() + ": as " + Math.round(age.getAsDouble())
                    + " min after laying");
            return all.map(minutes -> told(minutes, age.getAsDouble()));
        }

        private Optional<MatCooling.Minutes> cooling(String where, Amount mix, Amount stop) {
            Optional<Standing<Weather>> weather = seen.weather();
            boolean thick = lift.thickness() != null && lift.thickness().value().signum() > 0;
            if (mix == null || !thick || weather.isEmpty()) {
                return Optional.empty();
            }
            Weather air = weather.get().entry();
            if (air.air() == null || air.wind() == null || air.wind().value().signum() < 0) {
                return Optional.empty();
            }
            put.add("lift " + lift.number() + ", " + lift.thickness().text() + " as planned, mix " + mix.text() + " "
                    + where);
            MatCooling.Lift laid = new MatCooling.Lift(lift.thickness(), mix, base(air.air()), under());
            MatCooling.Above above = above(weather.get());
            return Optional.of(MatCooling.until(stop, laid, above));
        }

        private Amount base(Amount air) {
            Optional<Standing<Surface>> read =
                    seen.surface().filter(s -> s.entry().surface() != null);
            put.add(read.map(s -> s.ref() + " surface " + s.entry().surface().text())
                    .orElse("surface not read: taken to be as warm as the air"));
            return read.map(s -> s.entry().surface()).orElse(air);
        }

        /** As seen at the last surface reading, else as planned, else asphalt. */
        private Stuff under() {
            Surface.Base noted = seen.surface().map(s -> s.entry().base()).orElse(null);
            Surface.Base base = noted == null ? lift.base() : noted;
            put.add("laid on " + (base == null ? "asphalt, since nothing is noted" : base.word()));
            if (base == Surface.Base.CONCRETE) {
                return Stuff.CONCRETE;
            }
            return base == Surface.Base.AGGREGATE ? Stuff.AGGREGATE : Stuff.HOT_MIX;
        }

        private MatCooling.Above above(Standing<Weather> weather) {
            Weather air = weather.entry();
            double eighths = eighths(air.sky());
            Optional<Amount> dew = Optional.ofNullable(air.humidity()).flatMap(h -> DewPoint.of(air.air(), h.value()));
            Amount sky = dew.map(d -> SkyLight.radiates(air.air(), d, eighths)).orElse(air.air());
            double sun = sun(eighths);
            put.add(weather.ref() + " air " + air.air().text() + ", wind "
                    + air.wind().text() + ", sky "
                    + (air.sky() == null ? "not noted" : air.sky().word()) + ", radiates as "
                    + sky.shown(0).text());
            return new MatCooling.Above(air.air(), air.wind(), sky, sun);
        }

        /** W/m2 on level ground; none where the last surface was read in the shade. */
        private double sun(double eighths) {
            Optional<Cases.Spot> spot = Cases.spot(job);
            boolean shade = seen.surface()
                    .filter(s -> s.entry().light() == Surface.Light.SHADE)
                    .isPresent();
            if (shade || at == null || spot.isEmpty()) {
                put.add("no sun counted: "
                        + (shade
                                ? "the surface was read in the shade"
                                : at == null ? "no time is noted" : "the job does not say where it is"));
                return 0;
            }
            double height =
                    Sun.height(at.toInstant(), spot.get().north(), spot.get().east());
            double sun = SkyLight.sun(height, eighths);
            put.add(
                    sun > 0
                            ? "sun " + Math.round(height) + " degrees high, " + Math.round(sun)
                                    + " W/m2 on level ground"
                            : "no sun");
            return sun;
        }

        /** A sky that nobody noted is taken to be clear. */
        private static double eighths(Weather.Sky sky) {
            return (sky == null ? SkyCover.CLEAR : FeltAir.cover(sky)).eighths();
        }

        private LeftToRoll told(MatCooling.Minutes minutes, double age) {
            List<String> working = new ArrayList<>();
            working.add("until " + until.mat().text() + ": mean of the lift " + span(minutes.mean(), age)
                    + ", half its depth " + span(minutes.middle(), age) + ", surface " + span(minutes.surface(), age));
            working.add(until.mat().text() + ": " + until.source());
            working.addAll(put);
            working.add(LEAVES_OUT);
            working.add(SOURCE);
            return new LeftToRoll(
                    "estimate: " + span(minutes.mean(), age) + " left to roll, mean of the lift", working);
        }

        /** Whole minutes, the band rounded outwards. */
        private static String span(OptionalDouble minutes, double age) {
            if (minutes.isEmpty()) {
                return "more than " + MatCooling.LONGEST / 60 + " h";
            }
            double left = Math.max(0, minutes.getAsDouble() - age);
            long least = (long) Math.floor(left * (1 - MatCooling.BAND));
            long most = (long) Math.ceil(left * (1 + MatCooling.BAND));
            return least == most ? least + " min" : least + " to " + most + " min";
        }
    }
}
