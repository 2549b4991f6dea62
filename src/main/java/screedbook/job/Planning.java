package screedbook.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Blank;
import screedbook.entry.Station;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * What is settled before paving so that the plan itself can be looked at: hauls, wheel paths, dates, rates and what was
 * agreed. Its keys stand in {@code job.json} beside the others; every one may be absent.
 */
public record Planning(
        @Blank(value = "haul", help = "minutes and loss of heat from each plant")
        List<Haul> haul,

        @Blank(value = "wheel paths", help = "absent: width and place from memory, marked so")
        WheelPaths wheelPaths,

        @Blank(value = "joint rule", help = "where the limit sheet has none")
        JointRule jointRule,

        @Blank("work") List<Period> work,
        @Blank("production") Production production,
        @Blank("cutoff") Cutoff cutoff,
        @Blank("agreements") List<Agreement> agreements,

        @Blank(value = "planned", help = "stretches to be paved")
        List<Stretch> planned,

        @Blank(value = "rolled until", help = "the mat is too cold below; absent: a rule of thumb")
        RollUntil rollUntil) {

    /** Nothing settled. */
    public static final Planning NONE =
            new Planning(List.of(), null, null, List.of(), null, null, List.of(), List.of(), null);

    Planning settled() {
        return new Planning(
                Settled.list(haul),
                wheelPaths,
                jointRule,
                Settled.list(work),
                production,
                cutoff,
                Settled.list(agreements),
                Settled.list(planned),
                rollUntil);
    }

    /** The wheel paths as settled, else the remembered ones. */
    public WheelPaths paths() {
        return wheelPaths == null ? WheelPaths.REMEMBERED : wheelPaths;
    }

    /**
     * The way from a plant to the paver in a season.
     *
     * @param mix null for every mix
     * @param loss heat that a load is expected to lose, as a difference
     * @param source where the loss comes from
     */
    public record Haul(
            @Blank(value = "plant", pick = Blank.Pick.PLANT, due = Blank.Due.ALWAYS)
            String plant,

            @Blank(value = "mix", pick = Blank.Pick.MIX) String mix,

            @Blank("season") String season,

            @Blank(value = "haul", measure = Measure.MINUTES)
            Amount minutes,

            @Blank(value = "loss of heat", measure = Measure.DIFFERENCE, due = Blank.Due.ALWAYS)
            Amount loss,

            @Blank("insulated") YesNo insulated,
            @Blank("source") String source) {
        /** Whether loads of the mix come this way. */
        public boolean carries(String named) {
            return mix == null || mix.equals(named);
        }
    }

    /**
     * The two strips of a lane on which wheels run.
     *
     * @param offset of a strip's centre from the lane's centre
     */
    public record WheelPaths(
            @Blank(value = "width", measure = Measure.WIDTH, due = Blank.Due.ALWAYS)
            Amount width,

            @Blank(value = "centre from lane centre", measure = Measure.WIDTH, due = Blank.Due.ALWAYS)
            Amount offset,

            @Blank("source") String source) {
        /** From memory, nobody has read it: 1.0 m wide, 0.875 m from the lane's centre. */
        static final WheelPaths REMEMBERED = new WheelPaths(
                Amount.of("1.0", Unit.METRE), Amount.of("0.875", Unit.METRE), "AASHTO R 85, from memory");
    }

    /** How far a joint lies from the one below it; an end that is null is not limited. */
    public record JointRule(
            @Blank(value = "at least", measure = Measure.DEPTH)
            Amount least,

            @Blank(value = "at most", measure = Measure.DEPTH)
            Amount most,

            @Blank(value = "source", due = Blank.Due.ALWAYS) String source) {}

    /**
     * Days on which paving is planned, both among them.
     *
     * @param ends of the next day when it is not after the beginning
     */
    public record Period(
            @Blank(value = "from", due = Blank.Due.ALWAYS) LocalDate from,
            @Blank(value = "to", due = Blank.Due.ALWAYS) LocalDate to,
            @Blank("begins") LocalTime begins,
            @Blank("ends") LocalTime ends,
            @Blank("shift") Turn shift) {}

    /** The part of the day in which is paved, as the paper calls it. */
    public enum Turn implements Word {
        DAY,
        NIGHT
    }

    /**
     * How much is made and hauled.
     *
     * @param plantRate tons in one hour
     * @param paverSpeed the fastest that the paver may go; null where nobody limits it
     */
    public record Production(
            @Blank(value = "plant rate an hour", measure = Measure.LOAD)
            Amount plantRate,

            @Blank("hours a shift") BigDecimal hours,

            @Blank(value = "truck load", measure = Measure.LOAD)
            Amount truckLoad,

            @Blank("cycle") Cycle cycle,

            @Blank(value = "paver speed at most", measure = Measure.PAVER_SPEED)
            Amount paverSpeed,

            @Blank("source") String source) {}

    /** The parts of a truck's round; one that is null takes no time. */
    public record Cycle(
            @Blank(value = "wait at the plant", measure = Measure.MINUTES)
            Amount queue,

            @Blank(value = "load", measure = Measure.MINUTES)
            Amount load,

            @Blank(value = "ticket and tarp", measure = Measure.MINUTES)
            Amount ticket,

            @Blank(value = "haul", measure = Measure.MINUTES)
            Amount haul,

            @Blank(value = "delay at the paver", measure = Measure.MINUTES)
            Amount delay,

            @Blank(value = "dump", measure = Measure.MINUTES)
            Amount dump,

            @Blank(value = "return", measure = Measure.MINUTES)
            Amount back) {}

    /** What the last load has to be rolled and cool before. */
    public record Cutoff(
            @Blank("lane opens at") LocalTime lanesOpen,

            @Blank(value = "before dark", help = "yes when paving ends with the light")
            YesNo dark,

            @Blank(value = "too cold from", help = "time of day")
            LocalTime cold,

            @Blank(value = "rolling", measure = Measure.MINUTES)
            Amount rolling,

            @Blank(value = "cooling", measure = Measure.MINUTES)
            Amount cooling,

            @Blank("source") String source) {}

    /** The mat temperature below which rolling makes it no denser. */
    public record RollUntil(
            @Blank(value = "mat", measure = Measure.TEMPERATURE, due = Blank.Due.ALWAYS)
            Amount mat,

            @Blank("source") String source) {}

    /** What was agreed, when and by whom. */
    public record Agreement(
            @Blank("date") LocalDate date,
            @Blank(value = "what", due = Blank.Due.ALWAYS) String what,

            @Blank(value = "agreed by", help = "names or initials")
            String who) {}

    /** A length of a pull that is to be paved. */
    public record Stretch(
            @Blank(value = "pull", pick = Blank.Pick.PULL, due = Blank.Due.ALWAYS)
            String pull,

            @Blank(value = "lift", pick = Blank.Pick.LIFT, due = Blank.Due.ALWAYS)
            Integer lift,

            @Blank(value = "from", due = Blank.Due.ALWAYS) Station from,
            @Blank(value = "to", due = Blank.Due.ALWAYS) Station to) {}

    /** Hauls by which loads of a mix come. */
    public List<Haul> hauls(String mix) {
        return haul.stream().filter(h -> h.carries(mix)).toList();
    }

    /** The joint rule, if the job has one of its own. */
    public Optional<JointRule> rule() {
        return Optional.ofNullable(jointRule);
    }
}
