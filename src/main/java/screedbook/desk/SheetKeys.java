package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Field;
import screedbook.job.JobReading;

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
            String half = on.sheet().halfNamed();
            on = on.say(
                    half.isEmpty()
                            ? "as it was typed and not written before the program ended; r reads the disk"
                            : "typed before the program ended; half typed: " + half);
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

    static Model opened(Model model, List<Object> path) {
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

    /** Everything that is missing or wrong, at once; else who writes, and why. */
    static Step ask(Model model) {
        Sheet sheet = model.sheet();
        if (!sheet.half().isEmpty()) {
            return Step.of(model.alert("half typed: " + sheet.halfNamed() + "; finish or drop it first"));
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
}
