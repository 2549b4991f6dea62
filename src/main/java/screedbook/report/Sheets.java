package screedbook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Parts of a page brought onto sheets of paper. The first sheet stands by itself: where not everything has room on it,
 * parts are told in fewer words there, in a fixed order, and in full on the sheets behind. What only draws or reminds
 * is left out before it takes a sheet of its own.
 */
final class Sheets {
    /** Lines of a sheet that are written on: what fits on letter (66 lines) and on A4 (70 lines) within their margins. */
    static final int LINES = 60;

    /** Lines that the head of a sheet behind the first takes. */
    static final int HEAD = 2;

    /** More sheets than this are reckoned with nowhere. */
    private static final int MANY = 99;

    private final List<Part> parts = new ArrayList<>();
    private final List<Part> pictures = new ArrayList<>();
    private final List<List<String>> spares = new ArrayList<>();

    /** The order in which parts are told in fewer words, the first of them first. */
    enum Turn {
        ROOM,
        SAMPLES,
        LOTS,
        CORRECTIONS,
        MAT,
        YIELD,
        DENSITY,
        PLACED,
        OPEN,
        NOT_PLACED,
        ALSO,
        TEMPERATURES,
        TACK,
        SPREAD,
        STOPS,
        CHECKS,
        WEATHER,
        DEPTH,
        RECONCILIATION,
        TONS,
        DAMAGES,
        PLACED_IN_SHORT,
        OPEN_IN_SHORT,
        OPEN_CUT,
        PLACED_CUT,
        OPEN_CUT_AGAIN,
        PLACED_BY_NUMBER
    }

    /** A way of telling a part; written when it is asked for. */
    private static final class Form {
        /** When it takes the place of a longer one; null for the part in full. */
        private final Turn turn;

        private final Consumer<Leaf> writes;
        private List<String> lines;

        private Form(Turn turn, Consumer<Leaf> writes) {
            this.turn = turn;
            this.writes = writes;
        }

        private List<String> lines() {
            if (lines == null) {
                Leaf leaf = new Leaf(Leaf.PAPER);
                writes.accept(leaf);
                lines = leaf.lines();
            }
            return lines;
        }
    }

    /** A part with its forms, the longest first, and the one that stands on the first sheet. */
    static final class Part {
        private final List<Form> forms = new ArrayList<>();
        private int now;
        /** The sheet on which the part stands in full, from 1; 0 while that is not known. */
        private int sheet;

        private Part(Consumer<Leaf> full) {
            forms.add(new Form(null, full));
        }

        /** Another form for the first sheet; it is passed over where it is empty or not shorter. */
        Part or(Turn turn, Consumer<Leaf> shorter) {
            forms.add(new Form(turn, shorter));
            return this;
        }

        private void shorten(int form) {
            int lines = forms.get(form).lines().size();
            if (lines > 0 && lines < forms.get(now).lines().size()) {
                now = form;
            }
        }

        /** The form before one that tells anything. */
        private int before(int form) {
            int before = form - 1;
            while (before > 0 && forms.get(before).lines().isEmpty()) {
                before--;
            }
            return before;
        }

        private List<String> full() {
            return forms.get(0).lines();
        }

        /** As it stands on the first sheet; where that is not all, with the sheet on which all is. */
        private List<String> lines() {
            List<String> lines = forms.get(now).lines();
            if (now == 0 || lines.isEmpty()) {
                return lines;
            }
            String note = "[" + (sheet == 0 ? MANY : sheet) + "]";
            List<String> noted = new ArrayList<>(lines);
            int at = brief(lines) ? noted.size() - 1 : 0;
            if (Leaf.columns(noted.get(at)) + 1 + note.length() <= Leaf.PAPER) {
                noted.set(at, noted.get(at) + " " + note);
            } else {
                noted.add(at + 1, "  " + note);
            }
            return noted;
        }
    }

    /** A part of the first sheet, in full; nothing where there is nothing to tell. */
    Part add(Consumer<Leaf> full) {
        Part part = new Part(full);
        if (!part.full().isEmpty()) {
            parts.add(part);
        }
        return part;
    }

    /** What stands in its place where there is room on the first sheet, or behind where anything else has to. */
    void picture(Consumer<Leaf> full) {
        Part part = new Part(full);
        if (!part.full().isEmpty()) {
            part.or(Turn.ROOM, nothing -> {});
            part.now = 1;
            parts.add(part);
            pictures.add(part);
        }
    }

    /** What stands at the end where there is room. */
    void spare(Consumer<Leaf> writes) {
        List<String> lines = new Form(null, writes).lines();
        if (!lines.isEmpty()) {
            spares.add(lines);
        }
    }

    /** Whether a part is a paragraph that stands close under another one. */
    static boolean brief(List<String> lines) {
        return lines.stream().skip(1).allMatch(line -> line.startsWith("  "));
    }

    /** A line across parts what stands over and under it by itself. */
    private static boolean rule(String line) {
        return line.length() == Leaf.PAPER && line.chars().distinct().count() == 1;
    }

    /** The sheets, those behind the first without their heads; only one where all that is written has room on it. */
    List<List<String>> sheets() {
        if (fits()) {
            pictures.forEach(p -> tryForm(p, 0));
            return List.of(spare(first(), LINES));
        }
        shorten();
        lengthen();
        pictures.forEach(p -> tryForm(p, 0));
        List<List<String>> sheets = new ArrayList<>();
        FollowingSheets behind = new FollowingSheets();
        if (fits()) {
            parts.stream()
                    .filter(p -> p.now > 0)
                    .forEach(p -> p.sheet = 1 + behind.add(p.full(), pictures.contains(p)));
            sheets.add(first());
        } else {
            parts.forEach(p -> p.now = 0);
            parts.forEach(p -> behind.add(p.full(), pictures.contains(p)));
        }
        sheets.addAll(behind.sheets());
        int last = sheets.size() - 1;
        sheets.set(last, spare(sheets.get(last), LINES - (last == 0 ? 0 : HEAD)));
        return sheets;
    }

    private boolean fits() {
        return first().size() <= LINES;
    }

    private record Step(Part part, int form) {
        Turn turn() {
            return part.forms.get(form).turn;
        }
    }

    private static final Comparator<Step> IN_TURN =
            Comparator.comparing(Step::turn).thenComparing(Step::form);

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        parts.stream().filter(p -> !pictures.contains(p)).forEach(part -> {
            for (int form = 1; form < part.forms.size(); form++) {
                steps.add(new Step(part, form));
            }
        });
        steps.sort(IN_TURN);
        return steps;
    }

    private void shorten() {
        for (Step step : steps()) {
            if (fits()) {
                return;
            }
            step.part().shorten(step.form());
        }
    }

    /** What had to be short no more, for something behind it gave up more than was wanted. */
    private void lengthen() {
        List<Step> back = new ArrayList<>(steps());
        back.sort(IN_TURN.reversed());
        for (Step step : back) {
            if (step.part().now == step.form()) {
                tryForm(step.part(), step.part().before(step.form()));
            }
        }
    }

    private void tryForm(Part part, int form) {
        int before = part.now;
        part.now = form;
        if (!fits()) {
            part.now = before;
        }
    }

    private List<String> first() {
        List<String> lines = new ArrayList<>();
        boolean close = false;
        for (Part part : parts) {
            List<String> told = part.lines();
            if (!told.isEmpty()) {
                boolean brief = brief(told);
                boolean ruled = lines.isEmpty() || rule(lines.get(lines.size() - 1)) || rule(told.get(0));
                if (!ruled && !(close && brief)) {
                    lines.add("");
                }
                lines.addAll(told);
                close = brief;
            }
        }
        return lines;
    }

    /** With the spare parts at its end, as far as there is room. */
    private List<String> spare(List<String> sheet, int most) {
        List<String> lines = new ArrayList<>(sheet);
        for (List<String> each : spares) {
            if (lines.size() + 1 + each.size() <= most) {
                lines.add("");
                lines.addAll(each);
            }
        }
        return lines;
    }
}
