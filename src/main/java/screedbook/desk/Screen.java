package screedbook.desk;

import java.util.List;
import java.util.Map;
import screedbook.check.InShort;
import screedbook.entry.Crew;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.tally.Section;

/** A screen that one can be on; they lie on each other and Esc takes the top one away. */
public sealed interface Screen {
    /** Who writes, and which shift. */
    record Start(Walk walk, String sure) implements Screen {}

    /** The shift: entries on the left, what they come to on the right. */
    record Log(Walk walk) implements Screen {}

    /** An entry being keyed. */
    record Keying(Form form) implements Screen {}

    /** Kinds that have no key of their own. */
    record Kinds(Walk walk) implements Screen {}

    /** Who and what was at work in an earlier shift, to be taken over into this one. */
    record CrewLines(ShiftId of, List<Crew> crews, Walk walk) implements Screen {}

    /** One entry in full, with its corrections and findings. */
    record Whole(Ref ref, int top) implements Screen {}

    record FindingList(Walk walk) implements Screen {}

    record Sums(Walk walk) implements Screen {}

    /** How a figure or a limit came about; its entries can be walked and opened. */
    record Worked(String title, List<String> lines, List<Ref> entries, Walk walk, int top) implements Screen {}

    record Pictures() implements Screen {}

    /**
     * The road by pull and station.
     *
     * @param column the first column of road in sight
     * @param row the first line in sight
     */
    record RoadDrawn(int column, int row) implements Screen {}

    /** What is missing before the last line is written. */
    record BeforeClosing(int top) implements Screen {}

    record Search(String words, List<Msg.Match> matches, Walk walk, boolean asked) implements Screen {}

    /**
     * The season.
     *
     * @param shifts oldest first; such as are not read yet are there all the same
     * @param calendar the ruler and a line for each month
     * @param sums what the shifts come to, in some lines
     */
    record Season(List<InShort> shifts, List<String> calendar, List<String> sums, Walk walk) implements Screen {
        Season with(Walk other) {
            return new Season(shifts, calendar, sums, other);
        }
    }

    /** Where a plant's own list lies, and whose it is. */
    record PlantFile(String plant, String typed) implements Screen {}

    /** Which column of a plant's list is which: what was chosen, by the names of the blanks. */
    record PlantColumns(Msg.ListAsked asked, Map<String, String> chosen, Walk walk) implements Screen {}

    /** Where to go on when the disk refuses. */
    record OtherFolder(String typed) implements Screen {}

    /**
     * The job sheet: its parts.
     *
     * @param sure a key that waits for being struck again
     */
    record Parts(Walk walk, String sure) implements Screen {}

    /** What the limit sheet says of the plan. */
    record PlanFound(Walk walk) implements Screen {}

    /** The plan as pictures. */
    record PlanDrawn(List<String> lines, int top) implements Screen {}

    /** What the plan comes to: tons, tack, trucks, each with its working. */
    record PlanSums(List<Section> sections, Walk walk) implements Screen {}

    /** A list of the job sheet. */
    record Items(List<Object> path, Walk walk) implements Screen {}

    /** One part of the job sheet, or one item of a list, as a form. */
    record Item(List<Object> path, Form form) implements Screen {}

    /** Who writes the job sheet, and why. */
    record Reason(Form form) implements Screen {}

    /**
     * What changed between two revisions.
     *
     * @param later the place of one revision among all, from 0 at the oldest
     * @param earlier the place of the one that it is held against
     */
    record Changes(int later, int earlier, List<String> lines, int top) implements Screen {}

    record Help(Place about, int top) implements Screen {}

    /** Which table of keys holds here; no screen may name a part of its own like this. */
    default Place place() {
        if (this instanceof Start) {
            return Place.START;
        }
        if (this instanceof Log) {
            return Place.SHIFT;
        }
        if (this instanceof Keying) {
            return Place.FORM;
        }
        if (this instanceof Kinds) {
            return Place.KINDS;
        }
        if (this instanceof CrewLines) {
            return Place.CREW;
        }
        if (this instanceof Whole) {
            return Place.ENTRY;
        }
        if (this instanceof FindingList) {
            return Place.FINDINGS;
        }
        if (this instanceof Sums) {
            return Place.TOTALS;
        }
        if (this instanceof Worked) {
            return Place.WORKING;
        }
        if (this instanceof Pictures) {
            return Place.PICTURES;
        }
        if (this instanceof RoadDrawn) {
            return Place.ROAD;
        }
        if (this instanceof BeforeClosing) {
            return Place.CLOSING;
        }
        if (this instanceof Search) {
            return Place.SEARCH;
        }
        if (this instanceof Season) {
            return Place.SEASON;
        }
        if (this instanceof PlantFile) {
            return Place.LIST_FILE;
        }
        if (this instanceof PlantColumns) {
            return Place.COLUMNS;
        }
        if (this instanceof OtherFolder) {
            return Place.FOLDER;
        }
        if (this instanceof Parts) {
            return Place.SHEET;
        }
        if (this instanceof PlanFound) {
            return Place.PLAN;
        }
        if (this instanceof PlanDrawn) {
            return Place.DRAWN;
        }
        if (this instanceof PlanSums) {
            return Place.NUMBERS;
        }
        if (this instanceof Items) {
            return Place.ITEMS;
        }
        if (this instanceof Item) {
            return Place.ITEM;
        }
        if (this instanceof Reason) {
            return Place.REASON;
        }
        if (this instanceof Changes) {
            return Place.CHANGES;
        }
        return Place.HELP;
    }
}
