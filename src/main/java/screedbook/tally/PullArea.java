package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import screedbook.calc.Strip;
import screedbook.entry.Area;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The area that was laid of a pull: its planned width over the length, but where a part of it is noted with a width or
 * an area of its own.
 *
 * @param area empty when the width is not known everywhere
 * @param parts entries of the parts that are in it
 * @param own where parts stand in place of the planned width, within what was laid
 * @param put the steps
 */
record PullArea(Optional<Amount> area, List<Ref> parts, Cover own, List<String> put) {
    /**
     * The area of a pull.
     *
     * @param paved what was covered of it, in feet or metres along the road
     * @param width as planned; empty when it is not known
     * @param noted parts of this pull and lift
     */
    static PullArea of(Cover paved, Optional<Amount> width, List<OddArea> noted, Unit along, Road road) {
        return new Sum(paved, along, road).of(width, noted);
    }

    /** An area being added up. */
    private static final class Sum {
        private final Cover paved;
        private final Unit along;
        private final Road road;
        private final List<Ref> parts = new ArrayList<>();
        private final List<String> put = new ArrayList<>();
        private Amount sum;

        Sum(Cover paved, Unit along, Road road) {
            this.paved = paved;
            this.along = along;
            this.road = road;
        }

        PullArea of(Optional<Amount> width, List<OddArea> noted) {
            List<Stretch> own = new ArrayList<>();
            for (OddArea each : paved.empty() ? List.<OddArea>of() : noted) {
                if (each.area().known()) {
                    add(each);
                    if (each.counts() == Area.Counts.IN_PLACE) {
                        own.add(each.on());
                    }
                }
            }
            BigDecimal rest = paved.minus(Cover.of(own)).length();
            put.add(width.map(w -> "width of the pull as planned " + w.text()).orElse("width of the pull not known"));
            if (width.isEmpty() && rest.signum() > 0) {
                return new PullArea(Optional.empty(), List.of(), Cover.NONE, List.copyOf(put));
            }
            width.ifPresent(w -> planned(w, rest));
            if (sum != null) {
                put.add("area " + sum.shown(1).text());
            }
            Optional<Amount> area =
                    Optional.ofNullable(sum).filter(a -> a.value().signum() >= 0);
            return new PullArea(area, List.copyOf(parts), Cover.of(own).and(paved), List.copyOf(put));
        }

        private void planned(Amount width, BigDecimal rest) {
            Amount area = Strip.area(width, new Amount(rest, along));
            if (!parts.isEmpty()) {
                put.add("as planned " + width.text() + " x " + new Amount(rest, along).text() + " = "
                        + area.shown(1).text());
            }
            sum = sum == null ? area : sum.plus(area);
        }

        private void add(OddArea part) {
            Amount whole = part.area().amount();
            Amount here = part.counts() == Area.Counts.IN_PLACE ? laid(part) : whole;
            if (here.value().signum() == 0 && whole.value().signum() != 0) {
                put.add(part.name() + " in place: nothing of it was laid");
                return;
            }
            boolean all = here.compareTo(whole) == 0;
            parts.add(part.entry().ref());
            String counts = part.counts().word().replace('-', ' ');
            put.add(part.entry().ref() + " " + part.name() + " " + counts + ": " + part.put() + " = "
                    + whole.shown(1).text()
                    + (all ? "" : ", laid of it " + here.shown(1).text()));
            Amount signed =
                    part.counts() == Area.Counts.OFF ? new Amount(here.value().negate(), here.unit()) : here;
            sum = sum == null ? signed : sum.plus(signed);
        }

        private Amount laid(OddArea part) {
            BigDecimal laid = BigDecimal.ZERO;
            for (Stretch each : paved.within(part.on().low(), part.on().high()).joined()) {
                laid = laid.add(
                        part.within(each.low(), each.high(), along, road).value());
            }
            return new Amount(laid, part.area().amount().unit());
        }
    }

    /**
     * Whether a part is of this pull and lift.
     *
     * @param only whether the pull was laid in no other lift, so that a part need not name it
     */
    static boolean of(Area part, String pull, Integer lift, boolean only) {
        return Objects.equals(part.pull(), pull) && (Objects.equals(part.lift(), lift) || part.lift() == null && only);
    }

    /** Parts that are in no area, and why. */
    static List<Left> left(Day day, Job job, List<Run> runs) {
        Set<Ref> counted = new HashSet<>();
        runs.forEach(r -> counted.addAll(r.parts()));
        List<Left> left = new ArrayList<>();
        for (Standing<Area> each : day.standing(Area.class)) {
            if (!counted.contains(each.ref())) {
                Reckoned area = OddArea.of(each, job).area();
                left.add(new Left(each.ref(), area.known() ? unlaid(each.entry()) : area.why()));
            }
        }
        return left;
    }

    private static String unlaid(Area part) {
        return part.pull() == null
                ? "pull not noted"
                : "pull " + part.pull() + (part.lift() == null ? "" : " lift " + part.lift())
                        + ": nothing laid of which it could be a part";
    }
}
