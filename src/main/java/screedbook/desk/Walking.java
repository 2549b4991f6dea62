package screedbook.desk;

/** Walking lists and moving texts. */
final class Walking {
    private Walking() {}

    static Step walk(Model model, Key key) {
        int page = Math.max(1, model.height() - 6);
        int by = switch (key.code()) {
            case UP -> -1;
            case DOWN -> 1;
            case PAGE_UP -> -page;
            case PAGE_DOWN -> page;
            case HOME -> Integer.MIN_VALUE / 2;
            default -> Integer.MAX_VALUE / 2;
        };
        return Step.of(model.top(walked(model, by)));
    }

    private static Screen walked(Model model, int by) {
        Screen top = model.top();
        if (top instanceof Screen.Start s) {
            return new Screen.Start(s.walk().by(by, model.shifts().size()), "");
        }
        if (top instanceof Screen.Log l) {
            return new Screen.Log(l.walk().by(by, model.shift().day().all().size()));
        }
        if (top instanceof Screen.Kinds k) {
            return new Screen.Kinds(k.walk().by(by, KindMenu.all().size()));
        }
        if (top instanceof Screen.CrewLines c) {
            return new Screen.CrewLines(
                    c.of(), c.crews(), c.walk().by(by, c.crews().size()));
        }
        if (top instanceof Screen.PlantColumns c) {
            return new Screen.PlantColumns(
                    c.asked(), c.chosen(), c.walk().by(by, PlantKeys.fields().size()));
        }
        if (top instanceof Screen.FindingList f) {
            return new Screen.FindingList(
                    f.walk().by(by, model.shift().findings().size()));
        }
        if (top instanceof Screen.Sums s) {
            return new Screen.Sums(s.walk().by(by, ListKeys.figures(model).size()));
        }
        if (top instanceof Screen.Parts p) {
            return new Screen.Parts(p.walk().by(by, Sheet.parts().size() + 1), "");
        }
        if (top instanceof Screen.PlanFound p) {
            return new Screen.PlanFound(p.walk().by(by, model.sheet().findings().size()));
        }
        if (top instanceof Screen.PlanSums s) {
            int figures = PlanKeys.figures(s).size();
            return new Screen.PlanSums(s.sections(), s.walk().by(by, figures));
        }
        if (top instanceof Screen.Items i) {
            return new Screen.Items(i.path(), i.walk().by(by, SheetKeys.rows(model.sheet(), i.path())));
        }
        if (top instanceof Screen.Worked w) {
            boolean entries = !w.entries().isEmpty();
            Walk walk = entries ? w.walk().by(by, w.entries().size()) : w.walk();
            int line = entries ? w.top() : Math.max(0, w.top() + by);
            return new Screen.Worked(w.title(), w.lines(), w.entries(), walk, line);
        }
        if (top instanceof Screen.Season s) {
            return s.with(s.walk().by(by, s.shifts().size()));
        }
        Screen.Search s = (Screen.Search) top;
        return new Screen.Search(
                s.words(), s.matches(), s.walk().by(by, s.matches().size()), s.asked());
    }

    static Step scroll(Model model, Key key) {
        int page = Math.max(1, model.height() - 6);
        int by = switch (key.code()) {
            case UP -> -1;
            case DOWN -> 1;
            case PAGE_UP -> -page;
            default -> page;
        };
        Screen top = model.top();
        if (top instanceof Screen.Whole w) {
            return Step.of(model.top(new Screen.Whole(w.ref(), Math.max(0, w.top() + by))));
        }
        if (top instanceof Screen.BeforeClosing b) {
            return Step.of(model.top(new Screen.BeforeClosing(Math.max(0, b.top() + by))));
        }
        if (top instanceof Screen.PlanDrawn d) {
            return Step.of(model.top(new Screen.PlanDrawn(d.lines(), Math.max(0, d.top() + by))));
        }
        if (top instanceof Screen.Changes c) {
            return Step.of(model.top(new Screen.Changes(c.later(), c.earlier(), c.lines(), Math.max(0, c.top() + by))));
        }
        Screen.Help h = (Screen.Help) top;
        return Step.of(model.top(new Screen.Help(h.about(), Math.max(0, h.top() + by))));
    }
}
