package screedbook.desk;

/** A model drawn for so many columns and rows: a pure function that works nothing out. */
public final class View {
    private View() {}

    public static Canvas of(Model model, int width, int height) {
        Canvas.Pen pen = Canvas.pen(width, height);
        if (width < 20 || height < 5) {
            return tooSmall(pen, width);
        }
        Frame frame = new Frame(pen, model);
        body(model, frame);
        frame.draw();
        Canvas drawn = pen.done();
        boolean covered = drawn.cursorY() < frame.top() || drawn.cursorY() >= frame.bottom();
        return covered ? pen.cursor(-1, -1).done() : drawn;
    }

    /** What is the matter and what to do, word by word as far as there is room. */
    private static Canvas tooSmall(Canvas.Pen pen, int width) {
        int row = 0;
        String line = "";
        for (String word : "too small, make it larger: what was typed stays".split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            row += longer.length() > width && !line.isEmpty() ? 1 : 0;
            line = longer.length() > width ? word : longer;
            pen.put(0, row, line, Style.ALERT);
        }
        return pen.done();
    }

    private static void body(Model model, Frame frame) {
        Screen top = model.top();
        if (top instanceof Screen.Start start) {
            StartView.draw(model, start, frame);
        } else if (top instanceof Screen.Log log) {
            ShiftView.draw(model, log, frame);
        } else if (top instanceof Screen.Keying keying) {
            FormView.draw(model, keying.form(), frame);
        } else if (top instanceof Screen.Whole whole) {
            EntryView.draw(model, whole, frame);
        } else if (top instanceof Screen.Pictures) {
            PictureView.draw(model, frame);
        } else if (top instanceof Screen.RoadDrawn road) {
            RoadView.draw(model, road, frame);
        } else if (top instanceof Screen.Season season) {
            SeasonView.draw(season, frame);
        } else if (sheet(top)) {
            SheetView.draw(model, top, frame);
        } else {
            ListView.draw(model, top, frame);
        }
    }

    private static boolean sheet(Screen top) {
        return switch (top.place()) {
            case SHEET, PLAN, DRAWN, NUMBERS, ITEMS, ITEM, REASON, CHANGES -> true;
            default -> false;
        };
    }
}
