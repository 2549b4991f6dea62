package screedbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import screedbook.spec.Printed;
import screedbook.spec.SpecSheet;

/** A limit sheet as plain text, 80 columns wide; or two beside each other, with what differs. */
public final class SheetPage {
    private static final int HALF = 39;

    private final Leaf leaf = new Leaf(Leaf.PAPER);

    private SheetPage() {}

    /** Every sheet with what it says of itself. */
    public static String list(List<SpecSheet> sheets) {
        SheetPage page = new SheetPage();
        for (SpecSheet sheet : sheets) {
            page.leaf.heading(sheet.name() + ", " + Leaf.many(sheet.printed().size(), "row"));
            sheet.foot().stream().limit(2).forEach(line -> page.leaf.say(2, line));
        }
        return page.text();
    }

    /** One sheet, row by row, with its clauses. */
    public static String one(SpecSheet sheet) {
        SheetPage page = new SheetPage();
        page.leaf.ends("limit sheet " + sheet.name(), sheet.sha256().substring(0, 8));
        page.leaf.blank();
        sheet.foot().forEach(line -> page.leaf.say(0, line));
        String before = "";
        for (Printed row : sheet.printed()) {
            if (!row.of().equals(before)) {
                page.leaf.heading(row.of());
                before = row.of();
            }
            page.leaf.say(1, row.figures() + (row.when().isEmpty() ? "" : "; " + row.when()));
            page.leaf.say(4, row.says());
            page.leaf.say(4, row.citation() + ", " + row.known() + "; row " + row.id());
        }
        return page.text();
    }

    /** What differs between two sheets, quantity by quantity: the rows of one at the left, of the other at the right. */
    public static String two(SpecSheet left, SpecSheet right) {
        SheetPage page = new SheetPage();
        page.beside(
                left.name() + " " + left.sha256().substring(0, 8),
                right.name() + " " + right.sha256().substring(0, 8));
        page.leaf.rule('-');
        Map<String, List<Printed>> lefts = by(left);
        Map<String, List<Printed>> rights = by(right);
        Set<String> all = new LinkedHashSet<>(lefts.keySet());
        all.addAll(rights.keySet());
        int same = 0;
        for (String of : all) {
            same += page.quantity(of, lefts.getOrDefault(of, List.of()), rights.getOrDefault(of, List.of()));
        }
        page.leaf.blank();
        page.leaf.say(0, Leaf.many(same, "row is", "rows are") + " the same in both.");
        return page.text();
    }

    private static Map<String, List<Printed>> by(SpecSheet sheet) {
        Map<String, List<Printed>> by = new LinkedHashMap<>();
        sheet.printed()
                .forEach(row ->
                        by.computeIfAbsent(row.of(), of -> new ArrayList<>()).add(row));
        return by;
    }

    /** @return how many rows both have alike */
    private int quantity(String of, List<Printed> left, List<Printed> right) {
        List<Printed> onlyLeft = new ArrayList<>(left);
        List<Printed> onlyRight = new ArrayList<>(right);
        onlyLeft.removeIf(row -> right.stream().anyMatch(other -> alike(row, other)));
        onlyRight.removeIf(row -> left.stream().anyMatch(other -> alike(row, other)));
        if (!onlyLeft.isEmpty() || !onlyRight.isEmpty()) {
            leaf.heading(of);
            for (Printed row : onlyLeft) {
                Printed other = partner(row, onlyRight);
                onlyRight.remove(other);
                rows(row, other);
            }
            onlyRight.forEach(row -> rows(null, row));
        }
        return left.size() - onlyLeft.size();
    }

    private static boolean alike(Printed a, Printed b) {
        return a.figures().equals(b.figures())
                && a.when().equals(b.when())
                && a.citation().equals(b.citation())
                && a.says().equals(b.says());
    }

    /** The row that stands for the same case, by its id or by its conditions; null where there is none. */
    private static Printed partner(Printed row, List<Printed> others) {
        return others.stream()
                .filter(other -> other.id().equals(row.id()))
                .findFirst()
                .or(() -> others.stream()
                        .filter(other -> other.when().equals(row.when()))
                        .findFirst())
                .orElse(null);
    }

    private void rows(Printed left, Printed right) {
        beside(told(left), told(right));
    }

    private static String told(Printed row) {
        if (row == null) {
            return "no such row";
        }
        return row.figures() + (row.when().isEmpty() ? "" : "; " + row.when()) + " (" + row.citation() + ")";
    }

    private void beside(String left, String right) {
        List<String> a = wrapped(left);
        List<String> b = wrapped(right);
        for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
            String one = i < a.size() ? a.get(i) : "";
            String other = i < b.size() ? b.get(i) : "";
            leaf.drawn(one + " ".repeat(HALF + 2 - Leaf.columns(one)) + other);
        }
    }

    private static List<String> wrapped(String text) {
        Leaf half = new Leaf(HALF);
        half.say(0, text);
        return half.lines();
    }

    private String text() {
        return String.join("\n", leaf.lines()) + "\n";
    }
}
