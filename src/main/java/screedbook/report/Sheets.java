package screedbook.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Parts of a page brought onto sheets of paper. What a supervisor decides by stands on the first sheet; what finds no
 * room there follows it, and what only reminds is left out before it takes a sheet of its own.
 */
final class Sheets {
    /** Lines of a sheet that are written on, the foot counted. */
    static final int LINES = 60;

    /** Lines that the foot of one sheet of several takes. */
    private static final int FOOT = 2;

    private final List<Part> parts = new ArrayList<>();

    /** Where a part stands. */
    enum Where {
        /** On the first sheet, always. */
        FIRST,
        /** In its place where it finds room on the first sheet, else behind. */
        WHERE_ROOM,
        /** The same; where it would be all that follows it is left out, for it is drawn from what stands there. */
        PICTURE,
        /** At the end, where there is room. */
        SPARE
    }

    /**
     * A part.
     *
     * @param instead what stands in its place where it follows behind; empty for nothing
     * @param brief whether it is a paragraph that stands close under another one
     */
    private record Part(Where where, boolean brief, List<String> lines, String instead) {
        Part behind() {
            return new Part(Where.FIRST, true, instead.isEmpty() ? List.of() : List.of(instead), "");
        }
    }

    void add(Where where, Leaf leaf, String instead) {
        if (!leaf.lines().isEmpty()) {
            boolean brief =
                    where == Where.FIRST && leaf.lines().stream().skip(1).allMatch(line -> line.startsWith("  "));
            parts.add(new Part(where, brief, leaf.lines(), instead));
        }
    }

    /** The sheets, each without its foot; only one where all that is written has room on it. */
    List<List<String>> sheets() {
        Set<Part> on = new HashSet<>(of(Where.FIRST));
        on.addAll(of(Where.WHERE_ROOM));
        if (lines(standing(on)).size() <= LINES) {
            fill(on, Where.PICTURE, LINES);
            return List.of(spare(lines(standing(on)), LINES));
        }
        on.removeAll(of(Where.WHERE_ROOM));
        boolean room = lines(standing(on)).size() <= LINES - FOOT;
        if (room) {
            fill(on, Where.WHERE_ROOM, LINES - FOOT);
            fill(on, Where.PICTURE, LINES - FOOT);
        }
        List<Part> behind = new ArrayList<>(of(Where.WHERE_ROOM));
        behind.addAll(of(Where.PICTURE));
        behind.removeAll(on);
        List<List<String>> sheets = new ArrayList<>();
        if (room) {
            sheets.add(lines(standing(on)));
            sheets.addAll(cut(lines(behind)));
        } else {
            List<Part> all = new ArrayList<>(standing(on));
            all.addAll(behind);
            sheets.addAll(cut(lines(all)));
        }
        sheets.add(spare(sheets.remove(sheets.size() - 1), LINES - FOOT));
        return sheets;
    }

    private List<Part> of(Where where) {
        return parts.stream().filter(p -> p.where() == where).toList();
    }

    /** In their order those that stand here, and for each that follows behind what stands in its place. */
    private List<Part> standing(Set<Part> on) {
        return parts.stream()
                .filter(p -> on.contains(p) || p.where() == Where.WHERE_ROOM)
                .map(p -> on.contains(p) ? p : p.behind())
                .toList();
    }

    /** Puts in each part of a sort for which there is room. */
    private void fill(Set<Part> on, Where where, int most) {
        for (Part each : of(where)) {
            on.add(each);
            if (lines(standing(on)).size() > most) {
                on.remove(each);
            }
        }
    }

    /** With the spare parts at its end, as far as there is room. */
    private List<String> spare(List<String> sheet, int most) {
        List<String> lines = new ArrayList<>(sheet);
        for (Part each : of(Where.SPARE)) {
            if (lines.size() + 1 + each.lines().size() <= most) {
                lines.add("");
                lines.addAll(each.lines());
            }
        }
        return lines;
    }

    private static List<String> lines(List<Part> parts) {
        List<String> lines = new ArrayList<>();
        boolean brief = false;
        for (Part part : parts) {
            if (!part.lines().isEmpty()) {
                if (!lines.isEmpty() && !(brief && part.brief())) {
                    lines.add("");
                }
                lines.addAll(part.lines());
                brief = part.brief();
            }
        }
        return lines;
    }

    /** The lines by sheets; a part that would be torn begins on the next one, when it is not too long for that. */
    private static List<List<String>> cut(List<String> lines) {
        List<List<String>> sheets = new ArrayList<>();
        int at = 0;
        while (lines.size() - at > LINES - FOOT) {
            int end = at + LINES - FOOT;
            int blank = end;
            while (blank > at + 2 * LINES / 3 && !lines.get(blank).isEmpty()) {
                blank--;
            }
            end = lines.get(blank).isEmpty() ? blank : end;
            sheets.add(lines.subList(at, end));
            at = lines.get(end).isEmpty() ? end + 1 : end;
        }
        sheets.add(lines.subList(at, lines.size()));
        return sheets;
    }

    /** A sheet filled up to where its foot stands. */
    static List<String> filled(List<String> sheet) {
        List<String> lines = new ArrayList<>(sheet);
        lines.addAll(Collections.nCopies(Math.max(0, LINES - FOOT - sheet.size()), ""));
        return lines;
    }
}
