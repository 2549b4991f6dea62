package screedbook.tally;

import java.util.List;
import screedbook.entry.ShiftId;
import screedbook.entry.Station;
import screedbook.job.Road;

/**
 * Where an earlier shift laid a pull of a lift.
 *
 * @param pull null when it was not noted; the same for the lift
 * @param end where the paver came to last
 */
public record PavedBefore(ShiftId shift, String pull, Integer lift, List<Run.Piece> pieces, Station end) {
    static List<PavedBefore> of(ShiftId shift, List<Run> runs) {
        return runs.stream()
                .filter(run -> run.end() != null)
                .map(run -> new PavedBefore(shift, run.pull(), run.lift(), run.pieces(), run.end()))
                .toList();
    }

    /** Where it lies along a road as that is known now. */
    Cover on(Road road) {
        return Cover.of(pieces.stream()
                .map(p -> Stretch.between(road.along(p.from()), road.along(p.to()), List.of()))
                .toList());
    }

    /** Whether some of a stretch was paved then. */
    public boolean meets(Stretch stretch, Road road) {
        return !on(road).within(stretch.low(), stretch.high()).empty();
    }
}
