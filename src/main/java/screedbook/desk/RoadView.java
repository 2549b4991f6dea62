package screedbook.desk;

import java.util.List;
import screedbook.picture.RoadStrip;
import screedbook.tally.Run;

/** The road by pull and station on a whole screen: a window that goes along it and across. */
final class RoadView {
    private RoadView() {}

    static void draw(Model model, Screen.RoadDrawn screen, Frame frame) {
        RoadStrip strip = model.shift().pictured().road();
        int width = frame.width() - 2;
        if (strip.empty()) {
            frame.pen().put(1, frame.top(), "nothing with stations is noted yet", Style.FAINT);
            return;
        }
        List<String> legend = strip.legend(width);
        int y = frame.top();
        frame.pen().put(1, y++, strip.span(screen.column(), width), Style.FAINT);
        int rows = frame.rows() - 2 - legend.size();
        for (String line : strip.window(screen.column(), screen.row(), width, rows)) {
            frame.pen().put(1, y++, line, Style.PICTURE);
        }
        y++;
        for (String line : legend) {
            if (y < frame.bottom()) {
                frame.pen().put(1, y++, line, Style.FAINT);
            }
        }
    }

    /** Opened where the paver is, with road ahead of it in sight. */
    static Step open(Model model) {
        RoadStrip strip = model.shift().pictured().road();
        List<Run> runs = model.shift().totals().runs();
        int at = 0;
        for (Run run : runs) {
            at = run.end() == null ? at : strip.column(run.end());
        }
        return Step.of(model.push(new Screen.RoadDrawn(within(model, strip, at - wide(model, strip) * 2 / 3), 0)));
    }

    private static int wide(Model model, RoadStrip strip) {
        return Math.max(1, model.width() - 2 - strip.margin());
    }

    private static int within(Model model, RoadStrip strip, int column) {
        return Math.max(0, Math.min(strip.columns() - wide(model, strip), column));
    }

    static Step along(Model model, Key key) {
        Screen.RoadDrawn screen = (Screen.RoadDrawn) model.top();
        RoadStrip strip = model.shift().pictured().road();
        int half = Math.max(1, wide(model, strip) / 2);
        int column = switch (key.code()) {
            case LEFT -> screen.column() - half;
            case RIGHT -> screen.column() + half;
            case HOME -> 0;
            default -> strip.columns();
        };
        return Step.of(model.top(new Screen.RoadDrawn(within(model, strip, column), screen.row())));
    }

    static Step across(Model model, Key key) {
        Screen.RoadDrawn screen = (Screen.RoadDrawn) model.top();
        RoadStrip strip = model.shift().pictured().road();
        int rows =
                Math.max(1, model.height() - 8 - strip.legend(model.width() - 2).size());
        int by = switch (key.code()) {
            case UP -> -1;
            case DOWN -> 1;
            case PAGE_UP -> -rows;
            default -> rows;
        };
        int row = Math.max(0, Math.min(strip.height() - rows, screen.row() + by));
        return Step.of(model.top(new Screen.RoadDrawn(screen.column(), row)));
    }
}
