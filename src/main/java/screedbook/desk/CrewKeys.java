package screedbook.desk;

import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Aside;
import screedbook.entry.Crew;
import screedbook.entry.Entry;
import screedbook.entry.Source;
import screedbook.entry.Told;
import screedbook.entry.Unwritten;

/** The crew of the last shift that has any, taken over into this one line by line. */
final class CrewKeys {
    private CrewKeys() {}

    static Step ask(Model model) {
        if (!model.shift().writable()) {
            return ShiftKeys.lookedAt(model);
        }
        return Step.of(
                model.writing(true).say("looking"),
                new Effect.ReadCrewBefore(model.shift().id()));
    }

    static Model told(Model model, Msg.CrewBefore told) {
        Model read = model.writing(false).with(Notice.NONE);
        return told.of() == null
                ? read.say("no earlier shift of this job tells of a crew; k in the list keys one")
                : read.push(new Screen.CrewLines(told.of(), told.crews(), Walk.FIRST));
    }

    static Step write(Model model, Key key) {
        Screen.CrewLines lines = (Screen.CrewLines) model.top();
        if (lines.crews().isEmpty()) {
            return Step.of(model.pop());
        }
        boolean live = model.source() == Source.LIVE;
        List<Unwritten> entries = new ArrayList<>();
        for (Entry crew : lines.crews()) {
            entries.add(
                    new Unwritten(live ? model.now() : null, model.setting().who(), model.source(), crew, Aside.NONE));
        }
        return Step.of(model.writing(true).say("writing"), new Effect.Write(List.copyOf(entries)));
    }

    static Step leaveOut(Model model, Key key) {
        Screen.CrewLines lines = (Screen.CrewLines) model.top();
        int at = lines.walk().at();
        if (at < 0 || at >= lines.crews().size()) {
            return Step.of(model);
        }
        List<Crew> others = new ArrayList<>(lines.crews());
        others.remove(at);
        return Step.of(model.top(new Screen.CrewLines(
                lines.of(), List.copyOf(others), lines.walk().within(others.size()))));
    }

    static List<ListView.Row> rows(Screen.CrewLines lines) {
        List<ListView.Row> rows = new ArrayList<>();
        rows.add(ListView.Row.head("as in " + Frame.named(lines.of()) + "; each becomes a line of this shift"));
        for (int i = 0; i < lines.crews().size(); i++) {
            rows.add(new ListView.Row("  " + Told.line(lines.crews().get(i)), Style.PLAIN, i));
        }
        return rows;
    }
}
