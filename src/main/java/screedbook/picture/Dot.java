package screedbook.picture;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import screedbook.entry.Day;
import screedbook.entry.Mat;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.tally.Load;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * One figure at one time.
 *
 * @param outside whether it lies outside its limit; then it is drawn with another sign
 * @param sign with which it is drawn otherwise
 */
public record Dot(OffsetDateTime time, BigDecimal value, boolean outside, char sign) {
    /** What stands for a mat temperature behind the screed, and where rolling begins and ends. */
    public static final String MAT_SIGNS = "s behind the screed, b rolling begins, e ends, t traffic";

    public Dot(OffsetDateTime time, BigDecimal value, boolean outside) {
        this(time, value, outside, '.');
    }

    /**
     * The temperatures at the paver, by the time of discharge; loads without a time or a reading have no dot.
     *
     * @param outside entries of which a temperature at the paver was found outside
     */
    public static List<Dot> atThePaver(List<Load> loads, Set<Ref> outside) {
        return of(loads, Ticket.Heat::paver, outside);
    }

    /**
     * The temperatures at the plant, by the time of discharge, so that they stand over those at the paver.
     *
     * @param outside entries of which a temperature at the plant was found outside
     */
    public static List<Dot> atThePlant(List<Load> loads, Set<Ref> outside) {
        return of(loads, Ticket.Heat::plant, outside);
    }

    /**
     * The temperatures of the mat in one unit, each with a sign for when it was taken.
     *
     * @param outside entries of which a temperature of the mat was found outside
     */
    public static List<Dot> ofTheMat(Day day, Unit degree, Set<Ref> outside) {
        List<Dot> dots = new ArrayList<>();
        for (Standing<Mat> each : day.standing(Mat.class)) {
            Amount seen = each.entry().mat();
            if (seen != null && seen.unit() == degree && each.time() != null) {
                dots.add(new Dot(
                        each.time(),
                        seen.value(),
                        outside.contains(each.ref()),
                        sign(each.entry().taken())));
            }
        }
        return List.copyOf(dots);
    }

    private static char sign(Mat.Taken taken) {
        if (taken == null) {
            return '.';
        }
        return switch (taken) {
            case BEHIND_SCREED -> 's';
            case ROLLING_BEGINS -> 'b';
            case ROLLING_ENDS -> 'e';
            case BEFORE_TRAFFIC -> 't';
        };
    }

    private static List<Dot> of(List<Load> loads, Function<Ticket.Heat, Amount> part, Set<Ref> outside) {
        List<Dot> dots = new ArrayList<>();
        for (Load load : loads) {
            Amount seen = part.apply(load.ticket().entry().heat());
            if (seen != null && load.ticket().time() != null) {
                dots.add(new Dot(
                        load.ticket().time(),
                        seen.value(),
                        outside.contains(load.ticket().ref())));
            }
        }
        return List.copyOf(dots);
    }

    /** Tons placed up to each load, by the time of discharge. */
    public static List<Dot> placed(List<Load> loads) {
        List<Dot> dots = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        for (Load load : loads) {
            sum = sum.add(load.placed().value());
            if (load.laid() && load.ticket().time() != null) {
                dots.add(new Dot(load.ticket().time(), sum, false));
            }
        }
        return List.copyOf(dots);
    }
}
