package screedbook.desk;

import java.util.List;
import java.util.Map;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.ListColumns;
import screedbook.entry.ShiftId;
import screedbook.entry.Unwritten;

/** What the desk wants done outside: the terminal's room carries it out and tells the outcome as a {@link Msg}. */
public sealed interface Effect {
    /** Read the job's folder. */
    record ListShifts() implements Effect {}

    /** Open a shift for writing; begin it when it is not there and {@code begin} says so. */
    record Open(ShiftId shift, String who, boolean begin) implements Effect {}

    /** Read a shift without touching it. */
    record LookAt(ShiftId shift) implements Effect {}

    /** Append entries, all or none. */
    record Write(List<Unwritten> entries) implements Effect {}

    /** Keep a half-typed entry through a crash. */
    record Keep(Draft draft) implements Effect {}

    /** The half-typed entry of this kind is written or given up. */
    record Drop(Kind kind) implements Effect {}

    /** Go on writing in another folder. */
    record ContinueIn(String folder) implements Effect {}

    /** Save the page of the shift so far as text and CSV. */
    record Print() implements Effect {}

    /** Look for words in every shift of the job. */
    record Find(String words) implements Effect {}

    /** Read who and what was at work in the last shift before this one that tells of it. */
    record ReadCrewBefore(ShiftId shift) implements Effect {}

    /** Read and judge every shift of the job. */
    record ReadSeason() implements Effect {}

    /** Read the job's files to revise them. */
    record ReadJobSheet() implements Effect {}

    /** Keep a job sheet that is typed and not written through a crash; the values with the contacts among them. */
    record KeepJobSheet(String stamp, Map<String, Object> values) implements Effect {}

    /** What was typed of the job sheet is given up. */
    record DropJobSheet() implements Effect {}

    /** Write the job's files anew and accept the job as its next revision. */
    record WriteJobSheet(Msg.JobSheet sheet, String who, String why) implements Effect {}

    /** Save the pre-paving sheet of the job as it is on the disk. */
    record PrintPlan() implements Effect {}

    /**
     * Lay a plant's own list beside the shift.
     *
     * @param columns how it is read; null as the job says
     */
    record BringList(String plant, String path, ListColumns columns) implements Effect {}

    /** Leave the shift: let go of its files. */
    record Leave() implements Effect {}
}
