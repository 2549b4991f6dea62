package screedbook.desk;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Ground;
import screedbook.check.InShort;
import screedbook.entry.Crew;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Draft;
import screedbook.entry.Line;
import screedbook.entry.ListColumns;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.job.Job;
import screedbook.job.Revision;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;

/** What the desk is told: keys, the clock, the size of the screen, and what the disk did. */
public sealed interface Msg {
    /** A key was struck. */
    record Struck(Key key) implements Msg {}

    /** It is another minute. */
    record Minute(ZonedDateTime now) implements Msg {}

    /** The screen has so many columns and rows. */
    record Size(int width, int height) implements Msg {}

    /**
     * What the job's folder seems to hold while it is still being read; it is shown, and no key is taken before the
     * {@link Folder} is told.
     *
     * @param job only what the first screen shows of it
     */
    record Looked(Job job, List<Row> shifts) implements Msg {}

    /**
     * What the job's folder holds.
     *
     * @param job empty when {@code job.json} cannot be read; {@code troubles} then says why
     */
    record Folder(Optional<Job> job, List<String> troubles, List<Row> shifts) implements Msg {}

    /** One shift of the folder, for the first screen. */
    record Row(ShiftId shift, String state, int lines, String who) {}

    /** A shift as the disk has it, for the desk to work out. */
    record Page(
            ShiftId shift,
            String book,
            Day day,
            Ground ground,
            ToDate before,
            List<Seal> seals,
            List<Damage> damages) {}

    /**
     * A shift was opened.
     *
     * @param writable whether entries can be written
     * @param said what the person has to know: bytes set aside, held by another, clock
     */
    record Opened(Page page, List<Draft> drafts, boolean writable, String said) implements Msg {}

    /** Lines were written and forced. */
    record Wrote(List<Line> lines, Page page, String said) implements Msg {}

    /** The disk refused; nothing of what was handed over counts as written. */
    record Refused(String said) implements Msg {}

    /** Something was done that needs no more than a sentence. */
    record Said(String said) implements Msg {}

    /**
     * The job's files as they are on the disk.
     *
     * @param values the plain values of {@code job.json}
     * @param contacts how people are reached, each with initials
     * @param stamp what the disk will know the files by
     * @param commented whether {@code job.json} holds comments of somebody
     * @param there whether there is a job already
     * @param unread sentences about files that cannot be revised from here
     * @param sheets limit sheets to choose from, by name; the job's own copy where it has one
     * @param offered what a new job may begin with, or what was typed and not written before the program ended, with the
     *     contacts among it; empty when the sheet begins with what is on the disk
     */
    record JobSheet(
            Map<String, Object> values,
            List<Map<String, Object>> contacts,
            String stamp,
            boolean commented,
            boolean there,
            List<Revision> revisions,
            List<String> unread,
            Map<String, SpecSheet> sheets,
            Map<String, Object> offered)
            implements Msg {}

    /** The job sheet was written and accepted; it is as the disk has it now. */
    record JobWritten(JobSheet sheet, String said) implements Msg {}

    /**
     * The job sheet was not written.
     *
     * @param elsewhere whether somebody else wrote it since it was read
     */
    record JobNotWritten(String said, boolean elsewhere) implements Msg {}

    /**
     * Who and what was at work before.
     *
     * @param of the shift that tells of it; null when none does
     */
    record CrewBefore(ShiftId of, List<Crew> crews) implements Msg {}

    /**
     * What a search found so far, newest shift first.
     *
     * @param left how many shifts are still to be looked through; 0 when it is over
     */
    record Found(String words, List<Match> matches, int left) implements Msg {
        /** A search ends with so many. */
        public static final int MOST = 500;

        /** All that was found. */
        public Found(String words, List<Match> matches) {
            this(words, matches, 0);
        }
    }

    /**
     * The shifts of the job in one line each, as far as they are read.
     *
     * @param all every shift that has a diary, oldest first
     */
    record SeasonRead(List<ShiftId> all, Map<ShiftId, InShort> read) implements Msg {}

    /** One line that holds the words that were looked for. */
    record Match(ShiftId shift, Ref ref, String text) {}

    /**
     * A plant's list was read, and the job does not say how.
     *
     * @param heading the names of its columns
     * @param rows the cells of its first rows, under the heading
     * @param guess what may be which; offered only
     * @param known what the job says already
     */
    record ListAsked(
            String plant,
            String path,
            List<String> heading,
            List<List<String>> rows,
            ListColumns guess,
            ListColumns known)
            implements Msg {}
}
