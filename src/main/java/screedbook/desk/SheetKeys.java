package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import screedbook.check.Finding;
import screedbook.check.PlanFigures;
import screedbook.entry.Field;
import screedbook.entry.Moment;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.job.JobChanges;
import screedbook.job.JobReading;
import screedbook.job.Revision;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.HaulLoss;
import screedbook.unit.Measure;

/** What the keys do on the job sheet. */
final class SheetKeys {
    private SheetKeys() {}

    /** From the first screen: the sheet as it lies on the desk, else as the disk has it. */
    static Step open(Model model) {
        return model.sheet() == null
                ? Step.of(model.writing(true).say("reading the job"), new Effect.ReadJobSheet())
                : Step.of(model.push(new Screen.Parts(Walk.FIRST, "")));
    }

    /** The disk has told of the sheet. */
    static Model told(Model model, Msg.JobSheet read) {
        Model answered = model.writing(false).with(Notice.NONE);
        if (!read.unread().isEmpty()) {
            return answered.alert(
                    "it has to be mended with an editor first: " + read.unread().get(0));
        }
        Model on = answered.with(Sheet.of(read));
        boolean there = on.top() instanceof Screen.Parts;
        if (read.there() && !read.offered().isEmpty()) {
            on = on.say("as it was typed and not written before the program ended; r reads the disk");
        }
        return there
                ? on.top(new Screen.Parts(Walk.FIRST, "")).say("read again")
                : on.push(new Screen.Parts(Walk.FIRST, ""));
    }

    /** The sheet is on disk. */
    static Model written(Model model, Msg.JobWritten written) {
        Model on = model.writing(false).with(Sheet.of(written.sheet()));
        Model back = on.top() instanceof Screen.Reason ? on.pop() : on;
        return back.say(written.said());
    }

    /** The sheet is not on disk; what was typed stays. */
    static Model notWritten(Model model, Msg.JobNotWritten not) {
        Model back = model.top() instanceof Screen.Reason ? model.pop() : model;
        String again = not.elsewhere() ? "; r reads it again" : "";
        return Ahead.drop(back.writing(false), "NOT on disk: " + not.said() + again);
    }

    static Step again(Model model) {
        Screen.Parts parts = (Screen.Parts) model.top();
        if (model.sheet().touched() && !parts.sure().equals("r")) {
            return Step.of(model.top(new Screen.Parts(parts.walk(), "r"))
                    .alert("r again gives up what was typed here: "
                            + String.join(", ", model.sheet().edited())));
        }
        return Step.of(
                model.writing(true).say("reading the job"), new Effect.DropJobSheet(), new Effect.ReadJobSheet());
    }

    /** The sheet that was only looked at is read anew the next time. */
    static Step leave(Model model) {
        Model back = model.pop();
        return Step.of(
                model.sheet().touched()
                        ? back.say("the job sheet stays as typed, nothing is written yet")
                        : back.with((Sheet) null));
    }

    private static Optional<List<Object>> chosen(Model model) {
        if (model.top() instanceof Screen.Parts parts) {
            int at = parts.walk().at();
            List<Field> fields = Sheet.parts();
            return at == 0
                    ? Optional.of(List.of())
                    : at > 0 && at <= fields.size()
                            ? Optional.of(List.of(fields.get(at - 1).name()))
                            : Optional.empty();
        }
        Screen.Items items = (Screen.Items) model.top();
        int at = items.walk().at();
        return at >= 0 && at < rows(model.sheet(), items.path())
                ? Optional.of(Sheet.step(items.path(), at))
                : Optional.empty();
    }

    /** Items of a list, the one that is half typed behind them among them. */
    static int rows(Sheet sheet, List<Object> path) {
        int size = sheet.list(path).size();
        return sheet.half().containsKey(Sheet.step(path, size)) ? size + 1 : size;
    }

    static Step enterList(Model model) {
        return chosen(model)
                .map(path -> Step.of(opened(model, path)))
                .orElseGet(() -> Step.of(model.say("nothing here yet: n makes one")));
    }

    private static Model opened(Model model, List<Object> path) {
        boolean list = !path.isEmpty()
                && path.get(path.size() - 1) instanceof String
                && Sheet.field(path).map(Sheet::list).orElse(false);
        return list
                ? model.push(new Screen.Items(path, Walk.FIRST.within(rows(model.sheet(), path))))
                : model.push(new Screen.Item(path, SheetForms.of(model.sheet(), path)));
    }

    static Step add(Model model) {
        Screen.Items items = (Screen.Items) model.top();
        int size = model.sheet().list(items.path()).size();
        Model at = model.top(new Screen.Items(items.path(), new Walk(size)));
        return Step.of(opened(at, Sheet.step(items.path(), size)));
    }

    static Step takeOut(Model model) {
        Screen.Items items = (Screen.Items) model.top();
        Optional<List<Object>> path = chosen(model);
        if (path.isEmpty()) {
            return Step.of(model.say("nothing here to take out"));
        }
        int depth = items.path().size();
        Optional<List<Object>> half = model.sheet().half().keySet().stream()
                .filter(each -> each.size() > depth && each.subList(0, depth).equals(items.path()))
                .findFirst();
        if (half.isPresent()) {
            return Step.of(model.alert(model.sheet().named(half.get()) + " is half typed: finish or drop it first"));
        }
        String name = model.sheet().name(path.get());
        Sheet without = model.sheet().with(path.get(), null);
        Walk walk = items.walk().within(without.list(items.path()).size());
        return Step.of(
                model.with(without)
                        .top(new Screen.Items(items.path(), walk))
                        .say(name + " is taken out of the sheet; w on the sheet writes that"),
                without.keep());
    }

    static Form form(Screen screen) {
        return screen instanceof Screen.Item item ? item.form() : ((Screen.Reason) screen).form();
    }

    private static Model with(Model model, Form form) {
        return model.top() instanceof Screen.Item item
                ? model.top(new Screen.Item(item.path(), form))
                : model.top(new Screen.Reason(form));
    }

    static Step typed(Model model, String text) {
        Form form = form(model.top());
        return Sheet.nested(form.active().field())
                ? Step.of(model.say("Enter opens it"))
                : Step.of(with(model, form.active(i -> i.insert(text))));
    }

    static Step erase(Model model, Key key) {
        Form form = form(model.top());
        return Sheet.nested(form.active().field())
                ? Step.of(model.say("Enter opens it"))
                : Step.of(with(model, form.active(i -> key.code() == Key.Code.BACKSPACE ? i.backspace() : i.delete())));
    }

    static Step caret(Model model, Key key) {
        Form form = form(model.top());
        if (Sheet.nested(form.active().field())) {
            return Step.of(model);
        }
        return Step.of(with(model, form.active(i -> switch (key.code()) {
            case LEFT -> i.caret(i.caret() - 1);
            case RIGHT -> i.caret(i.caret() + 1);
            case HOME -> i.caret(0);
            default -> i.caret(i.text().length());
        })));
    }

    static Step move(Model model, int by) {
        Form form = form(model.top());
        return Step.of(with(model, form.at(form.at() + by)));
    }

    /** On to the next blank; from the last one the item is kept, or the sheet written. */
    static Step enter(Model model) {
        Form form = form(model.top());
        if (Sheet.nested(form.active().field())) {
            return inside(model, (Screen.Item) model.top());
        }
        String trouble =
                Filled.of(form, model.sheet()).troubles().get(form.active().name());
        if (trouble != null) {
            return Step.of(model.alert(trouble));
        }
        int next = form.nextDue();
        return next < 0 ? keep(model) : Step.of(with(model, form.at(next)));
    }

    /** A list inside an item is opened; what was typed around it is kept first. */
    private static Step inside(Model model, Screen.Item item) {
        Step kept = kept(model, item);
        if (!(kept.model().top() instanceof Screen.Item)
                || kept.model().notice().alert()) {
            return kept;
        }
        List<Object> path = Sheet.step(item.path(), item.form().active().field().name());
        return kept.with(opened(kept.model(), path));
    }

    /** The item as it stands goes into the sheet, and the form stays open. */
    private static Step kept(Model model, Screen.Item item) {
        Filled filled = Filled.of(item.form(), model.sheet());
        if (!filled.readable()) {
            Map.Entry<String, String> first =
                    filled.troubles().entrySet().iterator().next();
            return Step.of(with(model, item.form().at(first.getKey())).alert(first.getValue()));
        }
        List<Object> path = item.path();
        Map<String, Object> old =
                path.isEmpty() ? model.sheet().values() : model.sheet().record(path);
        Map<String, Object> record = SheetForms.record(old, item.form(), filled);
        boolean inList = !path.isEmpty() && path.get(path.size() - 1) instanceof Integer;
        Sheet sheet = model.sheet();
        if (!record.equals(old)) {
            sheet = sheet.with(path, record.isEmpty() && !inList ? null : record);
        }
        sheet = sheet.half(path, null);
        Form fresh = SheetForms.of(sheet, path).at(item.form().at());
        Model next = model.with(sheet).top(new Screen.Item(path, fresh));
        return record.equals(old) ? Step.of(next) : Step.of(next, sheet.keep());
    }

    static Step keep(Model model) {
        if (model.top() instanceof Screen.Reason) {
            return write(model);
        }
        Screen.Item item = (Screen.Item) model.top();
        boolean there = item.path().isEmpty() || model.sheet().at(item.path()) != null;
        if (!item.form().touched() && !there) {
            return Step.of(model.say("nothing was typed yet; Esc leaves"));
        }
        Step kept = kept(model, item);
        if (kept.model().notice().alert()) {
            return kept;
        }
        Model back = shown(kept.model().pop());
        List<JobReading.Doubt> doubts = back.sheet().doubts(item.path());
        String said = doubts.isEmpty()
                ? "kept in the sheet, not written yet"
                : "kept; " + back.sheet().told(doubts.get(0));
        return kept.with(back.say(said));
    }

    /** What a form says of the lists inside it is made anew when one comes back to it. */
    private static Model shown(Model model) {
        return model.top() instanceof Screen.Item item
                ? model.top(new Screen.Item(item.path(), SheetForms.nested(model.sheet(), item.path(), item.form())))
                : model;
    }

    static Step back(Model model) {
        if (model.top() instanceof Screen.Item item && item.form().touched()) {
            Sheet sheet = model.sheet().half(item.path(), item.form());
            return Step.of(shown(model.with(sheet).pop()).say("it stays half typed"));
        }
        return Step.of(shown(model.pop()));
    }

    static Step drop(Model model) {
        if (model.top() instanceof Screen.Item item) {
            Sheet sheet = model.sheet().half(item.path(), null);
            return Step.of(shown(model.with(sheet).pop()).say("dropped; the sheet says what it said before"));
        }
        return Step.of(model.pop());
    }

    /** Everything that is missing or wrong, at once; else who writes, and why. */
    static Step ask(Model model) {
        Sheet sheet = model.sheet();
        if (!sheet.half().isEmpty()) {
            return Step.of(model.alert("half typed: "
                    + String.join(
                            ", ",
                            sheet.half().keySet().stream()
                                    .map(p -> p.isEmpty() ? "the job" : sheet.named(p))
                                    .toList())
                    + "; finish or drop it first"));
        }
        if (!sheet.doubts().isEmpty()) {
            return doubts(model);
        }
        if (!sheet.touched()) {
            return Step.of(model.say("the sheet says what is on disk already"));
        }
        return Step.of(model.push(
                new Screen.Reason(SheetForms.reason(sheet, model.setting().who()))));
    }

    static Step doubts(Model model) {
        List<JobReading.Doubt> doubts = model.sheet().doubts();
        if (doubts.isEmpty()) {
            return Step.of(model.say("nothing is missing or wrong"));
        }
        List<String> lines = new ArrayList<>();
        for (JobReading.Doubt doubt : doubts) {
            lines.add(
                    model.sheet().told(doubt) + (doubt.right().isEmpty() ? "" : "; right would be: " + doubt.right()));
        }
        String title = "to settle before the sheet can be written: " + doubts.size();
        return Step.of(model.push(new Screen.Worked(title, List.copyOf(lines), List.of(), Walk.NOWHERE, 0)));
    }

    static Step findings(Model model) {
        return planned(model, (job, limits) -> new Screen.PlanFound(Walk.FIRST));
    }

    static Step working(Model model) {
        int at = ((Screen.PlanFound) model.top()).walk().at();
        List<Finding> all = model.sheet().findings();
        if (at < 0 || at >= all.size()) {
            return Step.of(model);
        }
        Finding f = all.get(at);
        String title = f.sort().text() + ": " + f.seen();
        return Step.of(model.push(new Screen.Worked(title, ListKeys.findingLines(f), List.of(), Walk.NOWHERE, 0)));
    }

    /** The sheet that the plan is looked at by; empty, with the reason said, where there is none or the plan is not whole. */
    private static Step planned(Model model, BiFunction<Job, SpecSheet, Screen> screen) {
        Sheet sheet = model.sheet();
        if (sheet.job().isEmpty()) {
            return Step.of(model.say("the plan is looked at when nothing is missing or wrong: t tells"));
        }
        Job job = sheet.job().get();
        SpecSheet limits = sheet.read().sheets().get(job.sheet());
        return limits == null
                ? Step.of(model.say("no limit sheet " + job.sheet() + " can be read"))
                : Step.of(model.push(screen.apply(job, limits)));
    }

    static Step drawn(Model model) {
        return planned(
                model, (job, limits) -> new Screen.PlanDrawn(PlanDrawing.lines(job, limits, seen(model, job)), 0));
    }

    /** What the loads of the shift that lies on the desk, and of those before it, lost on the way. */
    private static List<HaulLoss> seen(Model model, Job job) {
        return model.shift() == null
                ? List.of()
                : HaulLoss.toDate(model.shift().totals(), Measure.TEMPERATURE.unit(job.system()));
    }

    static Step numbers(Model model) {
        return planned(model, (job, limits) -> new Screen.PlanSums(PlanFigures.of(job, limits), Walk.FIRST));
    }

    static List<Figure> figures(Screen.PlanSums sums) {
        return sums.sections().stream().flatMap(s -> s.figures().stream()).toList();
    }

    static Step figure(Model model) {
        Screen.PlanSums sums = (Screen.PlanSums) model.top();
        List<Figure> all = figures(sums);
        int at = sums.walk().at();
        if (at < 0 || at >= all.size()) {
            return Step.of(model);
        }
        Figure figure = all.get(at);
        String title = figure.label() + "  " + figure.text();
        return Step.of(model.push(new Screen.Worked(title, ListKeys.workingLines(figure), List.of(), Walk.NOWHERE, 0)));
    }

    /** The page tells of what is written; what is only typed is not on it. */
    static Step print(Model model) {
        return model.sheet().touched()
                ? Step.of(model.alert("the page tells of what is written: w first"))
                : Step.of(model.say("saving the page"), new Effect.PrintPlan());
    }

    private static Step write(Model model) {
        Form form = form(model.top());
        Filled filled = Filled.of(form, model.sheet());
        for (Input input : form.inputs()) {
            if (!filled.plain().containsKey(input.name())) {
                String asked =
                        input.name().equals(SheetForms.WHO) ? "somebody writes it: initials" : "a revision says why";
                return Step.of(with(model, form.at(input.name())).alert(asked));
            }
        }
        String who = filled.plain().get(SheetForms.WHO).toString();
        String why = filled.plain().get(SheetForms.WHY).toString();
        return Step.of(
                model.with(model.setting().by(who)).writing(true).say("writing"),
                new Effect.WriteJobSheet(model.sheet().toWrite(), who, why));
    }

    /** Every accepted revision, oldest first, and the sheet as it lies on the desk behind them. */
    private static List<Revision> versions(Sheet sheet) {
        List<Revision> versions = new ArrayList<>(sheet.read().revisions());
        if (sheet.touched() && sheet.job().isPresent()) {
            Agreed now = new Agreed(sheet.job().get(), versions.size() + 1, "");
            versions.add(new Revision(now, "", null, "as typed here, not written"));
        }
        return versions;
    }

    static Step changes(Model model) {
        int last = versions(model.sheet()).size() - 1;
        if (last < 1) {
            return Step.of(model.say("there is no other revision to hold against"));
        }
        return Step.of(model.push(compared(model, last, last - 1)));
    }

    /** Another revision on one side or the other. */
    static Step other(Model model, int later, int earlier) {
        Screen.Changes changes = (Screen.Changes) model.top();
        return Step.of(model.top(compared(model, changes.later() + later, changes.earlier() + earlier)));
    }

    private static Screen compared(Model model, int later, int earlier) {
        List<Revision> versions = versions(model.sheet());
        int to = Math.max(0, Math.min(versions.size() - 1, later));
        int from = Math.max(0, Math.min(versions.size() - 1, earlier));
        List<String> lines = new ArrayList<>();
        lines.add("to    " + told(versions.get(to)));
        lines.add("from  " + told(versions.get(from)));
        lines.add("");
        List<JobChanges.Change> changes =
                JobChanges.between(versions.get(from).job(), versions.get(to).job());
        changes.forEach(c -> lines.add(c.text()));
        if (changes.isEmpty()) {
            lines.add("both say the same");
        }
        return new Screen.Changes(to, from, List.copyOf(lines), 0);
    }

    static String told(Revision revision) {
        if (revision.agreed().sha256().isEmpty()) {
            return revision.why();
        }
        String when = revision.when() == null
                ? ""
                : " of " + revision.when().toLocalDate() + " " + Moment.clock(revision.when());
        return "revision " + revision.number() + when + " by " + revision.who()
                + (revision.why() == null ? "" : ": " + revision.why());
    }

    static Step scroll(Model model, Key key) {
        int page = Math.max(1, model.height() - 6);
        int by = switch (key.code()) {
            case UP -> -1;
            case DOWN -> 1;
            case PAGE_UP -> -page;
            default -> page;
        };
        if (model.top() instanceof Screen.PlanDrawn drawn) {
            return Step.of(model.top(new Screen.PlanDrawn(drawn.lines(), Math.max(0, drawn.top() + by))));
        }
        Screen.Changes changes = (Screen.Changes) model.top();
        return Step.of(model.top(new Screen.Changes(
                changes.later(), changes.earlier(), changes.lines(), Math.max(0, changes.top() + by))));
    }
}
