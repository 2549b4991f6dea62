package screedbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The sheets behind the first, filled one after the other. */
final class FollowingSheets {
    private static final int ROOM = Sheets.LINES - Sheets.HEAD;

    /** A part of so many lines is never torn; nor is any that has room on one sheet, where little is left on this one. */
    private static final int SMALL = 15;

    private final List<List<String>> sheets = new ArrayList<>();
    private List<String> sheet;
    private boolean close;

    /** Each without its head. */
    List<List<String>> sheets() {
        return sheets;
    }

    /**
     * A part, under those that are there already.
     *
     * @param whole whether it is torn only where it is longer than a sheet
     * @return on which of these sheets it begins, from 1
     */
    int add(List<String> part, boolean whole) {
        boolean under = close && Sheets.brief(part);
        close = Sheets.brief(part) && !whole;
        if (sheet == null || !room(part, whole)) {
            next();
        } else if (!under) {
            sheet.add("");
        }
        int begins = sheets.size();
        List<String> left = part;
        while (sheet.size() + left.size() > ROOM) {
            int end = end(left, ROOM - sheet.size());
            sheet.addAll(left.subList(0, end));
            left = left.subList(end, left.size());
            next();
            continued(part);
        }
        sheet.addAll(left);
        return begins;
    }

    private void continued(List<String> part) {
        String heading = part.get(0);
        if (!heading.startsWith(" ") && !Sheets.brief(part)) {
            sheet.add(heading.split("[,:]", 2)[0] + ", continued");
        }
    }

    private boolean room(List<String> part, boolean whole) {
        int free = ROOM - sheet.size() - 1;
        boolean keep = whole || part.size() <= SMALL || free < ROOM / 3;
        boolean torn = !keep || part.size() > ROOM;
        return part.size() <= free || torn && free > SMALL / 2;
    }

    private void next() {
        sheet = new ArrayList<>();
        sheets.add(sheet);
    }

    /** Where lines are torn: before the last one of so many that begins something. */
    private static int end(List<String> lines, int most) {
        Predicate<String> begins = line -> !line.isEmpty() && !line.startsWith("   ");
        for (int end = most; end > 1; end--) {
            if (begins.test(lines.get(end)) || lines.get(end - 1).isEmpty()) {
                return end;
            }
        }
        return most;
    }
}
