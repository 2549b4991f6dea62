package screedbook.desk;

import java.util.ArrayList;
import java.util.List;

/** The list of kinds: two columns in the order of the work where there is room, else one that moves. */
final class KindView {
    private static final int COLUMN = 38;

    private KindView() {}

    static void draw(Walk walk, Frame frame) {
        List<ListView.Row> left = rows(KindMenu.COLUMNS.get(0), 0);
        int walked = left.stream().mapToInt(ListView.Row::index).max().orElse(-1) + 1;
        List<ListView.Row> right = rows(KindMenu.COLUMNS.get(1), walked);
        boolean two = frame.width() >= 2 * COLUMN && frame.rows() >= Math.max(left.size(), right.size());
        if (two) {
            column(frame, left, 0, walk);
            column(frame, right, COLUMN, walk);
        } else {
            List<ListView.Row> all = new ArrayList<>(left);
            all.addAll(right);
            ListView.walked(frame, all, walk);
        }
    }

    private static List<ListView.Row> rows(List<KindMenu.Group> groups, int from) {
        List<ListView.Row> rows = new ArrayList<>();
        int index = from;
        for (KindMenu.Group group : groups) {
            rows.add(ListView.Row.head(group.heading()));
            for (KindMenu.Choice choice : group.choices()) {
                rows.add(new ListView.Row("  " + choice.key() + "  " + choice.label(), Style.PLAIN, index++));
            }
        }
        return rows;
    }

    private static void column(Frame frame, List<ListView.Row> rows, int x, Walk walk) {
        for (int i = 0; i < rows.size(); i++) {
            ListView.Row row = rows.get(i);
            boolean chosen = row.index() >= 0 && row.index() == walk.at();
            Style style = chosen ? Style.CHOSEN : row.style();
            if (chosen) {
                frame.pen().fill(x, frame.top() + i, COLUMN - 1, 1, ' ', Style.CHOSEN);
            }
            frame.pen().put(x, frame.top() + i, (chosen ? ">" : " ") + row.text(), style);
        }
    }
}
