package screedbook.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Blank;
import screedbook.entry.Instrument;
import screedbook.entry.ListColumns;
import screedbook.entry.Person;
import screedbook.entry.Station;
import screedbook.entry.StationBase;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.UnitSystem;

/**
 * What was agreed before paving, as {@code job.json} holds it. A component that is null was not settled; lists are
 * never null after {@link #settled()}.
 */
public record Job(
        @Blank(
                value = "id",
                due = Blank.Due.ALWAYS,
                help = "lower case letters, digits and dashes; stands in every line")
        String id,

        @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
        @Blank("contract no.") String contract,
        @Blank("owner") String owner,
        @Blank("contractor") String contractor,
        @Blank("place") Place place,
        @Blank(value = "zone", due = Blank.Due.ALWAYS) ZoneId zone,

        @Blank(value = "units", due = Blank.Due.ALWAYS, help = "us or metric")
        Units units,

        @Blank("stationing") Stationing stationing,
        @Blank("final lane lines") List<LaneLine> laneLines,
        @Blank("lifts") List<Lift> lifts,
        @Blank("pulls") List<Pull> pulls,
        @Blank("mixes") List<Mix> mixes,
        @Blank("plants") List<Plant> plants,
        @Blank("trucks") List<Truck> trucks,
        @Blank("pavers") List<String> pavers,
        @Blank("tack products") List<Product> products,
        @Blank("distributors") List<Distributor> distributors,

        @Blank(value = "tack targets", help = "residual or applied rate for each surface")
        List<TackTarget> tackTargets,

        @Blank("thermal method") Thermal thermal,
        @Blank("night") Night night,
        @Blank("lots") Lots lots,
        @Blank("checks") Checks checks,

        @Blank(value = "limit sheet", due = Blank.Due.ALWAYS, help = "name of a shipped sheet or of a file in spec/")
        String sheet,

        @Blank("people") List<Person> people,
        @Blank("instruments") List<Instrument> instruments,
        Planning planning) {

    /** Where the job is; for sun times. Degrees, north and east positive. */
    public record Place(
            @Blank("name") String name,
            @Blank("latitude") BigDecimal latitude,
            @Blank("longitude") BigDecimal longitude) {}

    /** The system of units, as a word of the job file. */
    public enum Units implements Word {
        US(UnitSystem.US),
        METRIC(UnitSystem.METRIC);

        private final UnitSystem system;

        Units(UnitSystem system) {
            this.system = system;
        }

        public UnitSystem system() {
            return system;
        }
    }

    /** How places along the road are named, and where the job begins and ends. */
    public record Stationing(
            @Blank("base") StationBase base,

            @Blank(value = "direction", help = "up when paving runs toward higher stations")
            Direction direction,

            @Blank("begins") Station begins,
            @Blank("ends") Station ends,
            @Blank("equations") List<Equation> equations) {}

    /** Toward higher or lower stations. */
    public enum Direction implements Word {
        UP,
        DOWN
    }

    /** Where the figures jump: the station seen from behind equals another one seen ahead. */
    public record Equation(
            @Blank(value = "back", due = Blank.Due.ALWAYS) Station back,
            @Blank(value = "ahead", due = Blank.Due.ALWAYS) Station ahead) {}

    /** A line of the final striping; offset from the reference line, left negative. */
    public record LaneLine(
            @Blank("name") String name,

            @Blank(value = "offset", measure = Measure.WIDTH, due = Blank.Due.ALWAYS)
            Amount offset) {}

    /** One layer; thickness as planned after compaction. */
    public record Lift(
            @Blank(value = "number", due = Blank.Due.ALWAYS) Integer number,
            @Blank(value = "layer", due = Blank.Due.ALWAYS) Layer layer,

            @Blank(value = "thickness", measure = Measure.DEPTH, due = Blank.Due.ALWAYS)
            Amount thickness,

            @Blank(value = "mix", pick = Blank.Pick.MIX, due = Blank.Due.ALWAYS)
            String mix,

            @Blank("base") Surface.Base base,

            @Blank(value = "thickness varies", help = "yes for leveling: then no thickness is judged")
            YesNo varies) {
        /** Of one thickness throughout. */
        public Lift(Integer number, Layer layer, Amount thickness, String mix, Surface.Base base) {
            this(number, layer, thickness, mix, base, null);
        }

        /** Whether it levels, so that a thickness at one place says nothing. */
        public boolean levels() {
            return varies == YesNo.YES;
        }
    }

    /** Whether traffic will ride on it. */
    public enum Layer implements Word {
        RIDING_SURFACE,
        BELOW_RIDING_SURFACE
    }

    /** One width laid in one run: left and right edge from the reference line, left negative. */
    public record Pull(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ALWAYS)
            Integer lift,

            @Blank(value = "left", measure = Measure.WIDTH, due = Blank.Due.ALWAYS)
            Amount left,

            @Blank(value = "right", measure = Measure.WIDTH, due = Blank.Due.ALWAYS)
            Amount right,

            @Blank("direction") Direction direction,

            @Blank(value = "cross slope", measure = Measure.PERCENT, help = "planned, signed as on the plans")
            Amount crossSlope) {
        /** Right edge less left edge. */
        public Amount width() {
            return right.minus(left);
        }
    }

    /** A plant and how its tickets are numbered and printed. */
    public record Plant(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
            @Blank("series") Series series,
            @Blank("tickets print") Prints prints,
            @Blank("scale certificate until") LocalDate scaleUntil,
            ListColumns list) {}

    /** Whose ticket numbers a plant counts: this job's alone, or all its customers'. */
    public enum Series implements Word {
        OWN,
        SHARED
    }

    /** What a plant's tickets print of the weight. */
    public enum Prints implements Word {
        NET,
        GROSS_AND_TARE,
        BATCHES
    }

    /** A truck hauling for the job. */
    public record Truck(
            @Blank(value = "number", due = Blank.Due.ALWAYS) String number,

            @Blank(value = "usual tare", measure = Measure.SCALE)
            Amount tare,

            @Blank(value = "legal gross", measure = Measure.SCALE)
            Amount legalGross,

            @Blank("insulated") YesNo insulated) {}

    /** A tack product. */
    public record Product(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
            @Blank("grade") String grade,

            @Blank(value = "residue", measure = Measure.PERCENT)
            Amount residue,

            @Blank(value = "correction", help = "emulsion, group-0, group-1, group-00 or none")
            String correction,

            @Blank("dilution allowed") YesNo dilution) {}

    /** A tack distributor; the table turns a gauge stick's depth into volume, straight lines between its rows. */
    public record Distributor(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
            @Blank("reads") Tack.Reading reading,
            @Blank("strapping table") List<Strap> strapping) {}

    /** One row of a strapping table. */
    public record Strap(
            @Blank(value = "depth", measure = Measure.DEPTH, due = Blank.Due.ALWAYS)
            Amount depth,

            @Blank(value = "volume", measure = Measure.VOLUME, due = Blank.Due.ALWAYS)
            Amount volume) {}

    /** The rate agreed for a surface, with its source. */
    public record TackTarget(
            @Blank(value = "surface", due = Blank.Due.ALWAYS)
            Tack.Under surface,

            @Blank("basis") Basis basis,

            @Blank(value = "rate", measure = Measure.TACK_RATE, due = Blank.Due.ALWAYS)
            Amount rate,

            @Blank(value = "tolerance", measure = Measure.TACK_RATE)
            Amount tolerance,

            @Blank("source") String source) {}

    /** What a tack rate speaks of. */
    public enum Basis implements Word {
        APPLIED,
        RESIDUAL
    }

    /** How the mat's temperatures are watched. */
    public enum Thermal implements Word {
        CONTINUOUS_IMAGING,
        HANDHELD_CAMERA,
        NONE
    }

    /** Night as the contract defines it: fixed hours, or sunset to sunrise moved by minutes. */
    public record Night(
            @Blank("begins") LocalTime begins,
            @Blank("ends") LocalTime ends,
            @Blank("by the sun") YesNo sun,

            @Blank(value = "minutes after sunset", help = "may be negative")
            Integer afterSunset,

            @Blank(value = "minutes before sunrise", help = "may be negative")
            Integer beforeSunrise) {}

    /** The same job with empty lists for absent ones and the usual settings for absent rhythms. */
    public Job settled() {
        return new Job(
                id,
                name,
                contract,
                owner,
                contractor,
                place,
                zone,
                units,
                Settled.stationing(stationing, units),
                Settled.list(laneLines),
                Settled.list(lifts),
                Settled.list(pulls),
                Settled.list(mixes),
                Settled.list(plants),
                Settled.list(trucks),
                Settled.list(pavers),
                Settled.list(products),
                Settled.distributors(distributors),
                Settled.list(tackTargets),
                thermal,
                night,
                Settled.lots(lots),
                Settled.checks(checks),
                sheet,
                Settled.list(people),
                Settled.list(instruments),
                planning == null ? Planning.NONE : planning.settled());
    }

    public UnitSystem system() {
        return units.system();
    }

    public Optional<Mix> mix(String named) {
        return mixes.stream().filter(m -> m.name().equals(named)).findFirst();
    }

    public Optional<Lift> lift(Integer numbered) {
        return lifts.stream().filter(l -> l.number().equals(numbered)).findFirst();
    }

    public Optional<Pull> pull(String named, Integer lift) {
        return pulls.stream()
                .filter(p -> p.name().equals(named) && (lift == null || lift.equals(p.lift())))
                .findFirst();
    }

    public Optional<Plant> plant(String named) {
        return plants.stream().filter(p -> p.name().equals(named)).findFirst();
    }

    public Optional<Truck> truck(String numbered) {
        return trucks.stream().filter(t -> t.number().equals(numbered)).findFirst();
    }

    public Optional<Product> product(String named) {
        return products.stream().filter(p -> p.name().equals(named)).findFirst();
    }

    public Optional<Distributor> distributor(String named) {
        return distributors.stream().filter(d -> d.name().equals(named)).findFirst();
    }

    public Optional<TackTarget> tackTarget(Tack.Under surface) {
        return tackTargets.stream().filter(t -> t.surface() == surface).findFirst();
    }
}
