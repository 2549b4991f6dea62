package screedbook.tally;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.Word;
import screedbook.job.Job;

/** Where on the road a shift tacked, paved, sampled, probed and marked, lane by lane. */
public record Roadwork(List<Lane> lanes) {
    public static final Roadwork NONE = new Roadwork(List.of());

    /** What was done at a place beside tacking and paving. */
    public enum What implements Word {
        SAMPLED,
        PROBED,
        MARKED
    }

    /**
     * One place.
     *
     * @param on of no length where a single station was noted
     */
    public record Place(What what, Kind kind, Stretch on) {}

    /**
     * One pull of one lift.
     *
     * @param pull null where it was not noted; the same for the lift
     * @param tacked surfaces that were sprayed; a shot that names no lift is of every lift of its pull
     * @param faces faces of longitudinal joints that were tacked, as shots and joints tell
     * @param paved what the loads covered
     * @param before what earlier shifts paved of it, with no entry of this shift
     * @param ground what is paved of it by now, in as few stretches as can be
     * @param places in the order in which they were noted
     */
    public record Lane(
            String pull,
            Integer lift,
            Cover tacked,
            Cover faces,
            Cover paved,
            Cover before,
            Cover ground,
            List<Place> places) {
        public Lane(
                String pull, Integer lift, Cover tacked, Cover faces, Cover paved, Cover before, List<Place> places) {
            this(
                    pull,
                    lift,
                    tacked,
                    faces,
                    paved,
                    before,
                    Cover.of(paved.plus(before).joined()),
                    places);
        }

        /** {@code A lift 2}, as totals have it. */
        public String name() {
            return (pull == null ? "pull not noted" : pull) + (lift == null ? "" : " lift " + lift);
        }

        /** Whether this shift did something there. */
        public boolean now() {
            return !paved.empty() || !tacked.empty() || !faces.empty() || !places.isEmpty();
        }

        /** Where it was paved and no tack is noted for it. */
        public Cover bare() {
            return paved.minus(tacked);
        }
    }

    /** The lane of a pull and lift, if something is noted of it. */
    public Optional<Lane> lane(String pull, Integer lift) {
        return lanes.stream()
                .filter(l -> Objects.equals(l.pull(), pull) && Objects.equals(l.lift(), lift))
                .findFirst();
    }

    /**
     * The road of a day.
     *
     * @param runs what the day's loads covered
     */
    static Roadwork of(Day day, Job job, List<Run> runs, ToDate before) {
        return new Survey(job).of(day, runs, before);
    }
}
