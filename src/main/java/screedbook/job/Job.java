package screedbook.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

            @Blank("base") screedbook.entry.Surface.Base base,

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

            @Blank("direction") Direction direction) {
        /** Right edge less left edge. */
        public Amount width() {
            return right.minus(left);
        }
    }

    /** One mix as designed. */
    public record Mix(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
            @Blank("design no.") String design,
            @Blank("design revision") String revision,

            @Blank(value = "nominal maximum size", measure = Measure.AGGREGATE)
            Amount nmas,

            @Blank(value = "binder", help = "performance grade, such as 70-22")
            String binder,

            @Blank("polymer") YesNo polymer,
            @Blank("aid") Aid aid,

            @Blank(value = "target at the plant", measure = Measure.TEMPERATURE)
            Amount targetPlant,

            @Blank(value = "target at the paver", measure = Measure.TEMPERATURE)
            Amount targetPaver,

            @Blank(value = "Gmm", help = "theoretical maximum specific gravity")
            BigDecimal gmm,

            @Blank("Gmm of") LocalDate gmmDate,

            @Blank(value = "unit weight", measure = Measure.UNIT_WEIGHT)
            Amount unitWeight,

            @Blank(
                    value = "spread rate for a unit of thickness",
                    measure = Measure.SPREAD_RATE,
                    help = "lb/yd2 for each inch, kg/m2 for each mm")
            Amount spread,

            @Blank("pay item") String payItem,

            @Blank(value = "gradation", help = "fine or coarse, as designed")
            Gradation gradation,

            @Blank(value = "type", help = "the specification's own word for it, such as 424 or open-graded")
            String type) {
        /** A letter between the temperatures names the traffic: AASHTO M 332 (from memory). */
        private static final Pattern GRADE = Pattern.compile("(?i)(?:PG\\s*)?(\\d{2})[SHVE]?-\\d{2}.*");

        /** The high temperature of the binder grade: 70 of 70-22, also of PG 70-22; empty when it is not settled. */
        public Optional<Integer> highGrade() {
            if (binder == null) {
                return Optional.empty();
            }
            Matcher m = GRADE.matcher(binder.strip());
            return m.matches() ? Optional.of(Integer.valueOf(m.group(1))) : Optional.empty();
        }
    }

    /** Which side of the design's line the aggregate lies on. */
    public enum Gradation implements Word {
        FINE,
        COARSE
    }

    /** What makes a mix workable at lower heat. */
    public enum Aid implements Word {
        NEITHER,
        WARM_MIX,
        COMPACTION_AID
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

            @Blank(value = "correction", help = "emulsion, group-0, group-00 or none")
            String correction,

            @Blank("dilution allowed") YesNo dilution) {}

    /** A tack distributor; the table turns a gauge stick's depth into volume, straight lines between its rows. */
    public record Distributor(
            @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
            @Blank("reads") screedbook.entry.Tack.Reading reading,
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

    /** How lots are cut. */
    public record Lots(
            @Blank(value = "lot", measure = Measure.LOAD) Amount lot,
            @Blank(value = "sublot", measure = Measure.LOAD) Amount sublot,
            @Blank("ends at") LotEnd ends,
            @Blank("over night") Overnight overnight,

            @Blank(value = "random by", help = "tons or places")
            RandomBy randomBy,

            @Blank("draws a sublot") Integer draws,

            @Blank(value = "no place nearer to a free edge than", measure = Measure.WIDTH)
            Amount freeEdge,

            @Blank(value = "no place nearer to a held edge than", measure = Measure.WIDTH)
            Amount heldEdge,

            @Blank(value = "seed", help = "drawn by the program, or given by somebody")
            Seed seed,

            @Blank(value = "no places in") List<Excluded> excluded,

            @Blank(value = "of a test and its repeat counts", help = "first, newer or both, as the contract says")
            Retest retest) {
        /** Lots of which it is not settled what counts of a test that is repeated. */
        public Lots(
                Amount lot,
                Amount sublot,
                LotEnd ends,
                Overnight overnight,
                RandomBy randomBy,
                Integer draws,
                Amount freeEdge,
                Amount heldEdge,
                Seed seed,
                List<Excluded> excluded) {
            this(lot, sublot, ends, overnight, randomBy, draws, freeEdge, heldEdge, seed, excluded, null);
        }
    }

    /** What counts of a test and of the one that repeats it; both are kept. */
    public enum Retest implements Word {
        FIRST,
        NEWER,
        BOTH
    }

    /** What random numbers are turned into. */
    public enum RandomBy implements Word {
        TONS,
        PLACES
    }

    /** Where the seed of random numbers comes from. */
    public enum Seed implements Word {
        DRAWN,
        GIVEN
    }

    /** A stretch in which no sample is taken, as a bridge. */
    public record Excluded(
            @Blank(value = "from", due = Blank.Due.ALWAYS) Station from,
            @Blank(value = "to", due = Blank.Due.ALWAYS) Station to,
            @Blank("why") String why) {}

    /** Where a lot ends. */
    public enum LotEnd implements Word {
        EXACT_TON,
        NEAREST_TICKET
    }

    /** What becomes of an unfinished sublot at the end of a shift. */
    public enum Overnight implements Word {
        CARRY,
        CLOSE
    }

    /** How often is looked. */
    public record Checks(
            @Blank(value = "first loads with temperature") Integer firstLoads,
            @Blank(value = "then one load in") Integer thenOneIn,
            @Blank(value = "temperature where") HeatWhere heatWhere,

            @Blank(value = "surface temperature good for", measure = Measure.MINUTES)
            Amount surfaceEvery,

            @Blank(value = "weather good for", measure = Measure.MINUTES)
            Amount weatherEvery,

            @Blank(value = "load age at most", measure = Measure.MINUTES)
            Amount loadAge,

            @Blank(value = "spread rate once in", measure = Measure.LOAD)
            Amount yieldEvery,

            @Blank(value = "tack samples a job") Integer tackSamples,
            @Blank(value = "gross and tare keyed") YesNo grossAndTare,
            @Blank(value = "source of these") String source,

            @Blank(value = "other checks", help = "what else the contract wants, and how often")
            List<Wanted> others,

            @Blank(
                    value = "compacted thickness within",
                    measure = Measure.DEPTH,
                    help = "of the planned one, more or less; no limit where nothing stands")
            Amount depthWithin,

            @Blank(value = "spread rate paid up to", measure = Measure.PERCENT, help = "of the planned one")
            Amount paidUpTo,

            @Blank(
                    value = "a stop of the paver at most",
                    measure = Measure.MINUTES,
                    help = "no limit where nothing stands")
            Amount stopAtMost,

            @Blank(
                    value = "a thermometer off by at most",
                    measure = Measure.DIFFERENCE,
                    help = "no limit where nothing stands")
            Amount thermometerOff) {
        /** Without what is asked beside the usual checks. */
        public Checks(
                Integer firstLoads,
                Integer thenOneIn,
                HeatWhere heatWhere,
                Amount surfaceEvery,
                Amount weatherEvery,
                Amount loadAge,
                Amount yieldEvery,
                Integer tackSamples,
                YesNo grossAndTare,
                String source) {
            this(
                    firstLoads,
                    thenOneIn,
                    heatWhere,
                    surfaceEvery,
                    weatherEvery,
                    loadAge,
                    yieldEvery,
                    tackSamples,
                    grossAndTare,
                    source,
                    List.of(),
                    null,
                    null);
        }

        /** Without what is allowed of stops and thermometers. */
        public Checks(
                Integer firstLoads,
                Integer thenOneIn,
                HeatWhere heatWhere,
                Amount surfaceEvery,
                Amount weatherEvery,
                Amount loadAge,
                Amount yieldEvery,
                Integer tackSamples,
                YesNo grossAndTare,
                String source,
                List<Wanted> others,
                Amount depthWithin,
                Amount paidUpTo) {
            this(
                    firstLoads,
                    thenOneIn,
                    heatWhere,
                    surfaceEvery,
                    weatherEvery,
                    loadAge,
                    yieldEvery,
                    tackSamples,
                    grossAndTare,
                    source,
                    others,
                    depthWithin,
                    paidUpTo,
                    null,
                    null);
        }
    }

    /** Where a due mix temperature is taken. */
    public enum HeatWhere implements Word {
        PAVER,
        PLANT,
        BOTH
    }

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
