package screedbook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Behind;
import screedbook.check.Finding;
import screedbook.entry.Answer;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.tally.Figure;
import screedbook.tally.Run;
import screedbook.tally.Section;

/** What the keys do on lists: kinds, findings, totals, workings, search. */
final class ListKeys {
    private ListKeys() {}

    static Step kind(Model model, Key key) {
        int at = ((Screen.Kinds) model.top()).walk().at();
        return KindMenu.all().get(Math.max(0, at)).act().apply(model.pop());
    }

    /** A share or waste is most often of the entry walked to. */
    static Map<String, String> given(Model log, Kind kind) {
        if (kind != Kind.PART && kind != Kind.WASTE && kind != Kind.STRIKE || !(log.top() instanceof Screen.Log)) {
            return Map.of();
        }
        Optional<Standing<?>> chosen = ShiftKeys.chosen(log);
        return chosen.map(s -> Map.of("of", s.ref().toString())).orElse(Map.of());
    }

    private static Optional<Standing<?>> whole(Model model) {
        return model.shift().find(((Screen.Whole) model.top()).ref());
    }

    static Step amend(Model model, Key key) {
        return whole(model).map(s -> ShiftKeys.amend(model, s)).orElse(Step.of(model));
    }

    static Step strike(Model model, Key key) {
        return ShiftKeys.strike(model, ((Screen.Whole) model.top()).ref());
    }

    static Step answerHere(Model model, Key key) {
        Ref ref = ((Screen.Whole) model.top()).ref();
        for (Finding finding : model.shift().marks(ref)) {
            if (!finding.answered()) {
                return answer(model, finding);
            }
        }
        return Step.of(model.say("no open finding stands beside this entry"));
    }

    private static Optional<Finding> chosenFinding(Model model) {
        int at = ((Screen.FindingList) model.top()).walk().at();
        List<Finding> all = model.shift().findings();
        return at < 0 || at >= all.size() ? Optional.empty() : Optional.of(all.get(at));
    }

    static Step finding(Model model, Key key) {
        return chosenFinding(model)
                .map(f -> Step.of(model.push(new Screen.Worked(
                        f.sort().text() + ": " + f.seen(),
                        with(
                                findingLines(f),
                                model,
                                Behind.run(f, model.shift().day(), model.shift().totals())),
                        f.of(),
                        Walk.FIRST,
                        0))))
                .orElse(Step.of(model));
    }

    /** How wide the name of a line of a finding is. */
    static final int NAMED = 10;

    static List<String> findingLines(Finding finding) {
        List<String> lines = new ArrayList<>();
        lines.add("seen      " + finding.seen());
        lines.add("limit     " + finding.limit());
        lines.add("clause    " + finding.clause());
        lines.add("inside    " + finding.inside());
        if (!finding.working().isBlank()) {
            lines.add("working   " + finding.working());
        }
        lines.add("rule      " + finding.rule());
        for (Standing<Answer> answer : finding.answers()) {
            lines.add(
                    "answer    " + answer.entry().text() + "  (" + answer.line().who() + ", " + answer.ref() + ")");
        }
        return lines;
    }

    static Step answer(Model model, Key key) {
        return chosenFinding(model).map(f -> answer(model, f)).orElse(Step.of(model));
    }

    /** A finding that speaks of the whole shift is answered at its opening line. */
    static Step answer(Model model, Finding finding) {
        Map<String, String> given = new HashMap<>();
        given.put("rule", finding.rule());
        Optional<Ref> ref = finding.of().stream()
                .findFirst()
                .or(() -> model.shift().day().opening().map(Standing::ref));
        ref.ifPresent(r -> given.put("of", r.toString()));
        Step step = ShiftKeys.begin(model, Kind.ANSWER, given);
        if (step.model().top() instanceof Screen.Keying keying) {
            return step.with(step.model().top(new Screen.Keying(keying.form().at("text"))));
        }
        return step;
    }

    static Step findingTicket(Model model, Key key) {
        return chosenFinding(model).map(f -> PlantKeys.ticket(model, f)).orElse(Step.of(model));
    }

    static Step findingEntry(Model model, Key key) {
        return chosenFinding(model)
                .flatMap(f -> f.of().stream().findFirst())
                .map(r -> Step.of(model.push(new Screen.Whole(r, 0))))
                .orElse(Step.of(model.say("this finding speaks of the whole shift")));
    }

    /** All figures in the order of their sections. */
    static List<Figure> figures(Model model) {
        List<Figure> figures = new ArrayList<>();
        for (Section section : model.shift().sections()) {
            figures.addAll(section.figures());
        }
        return figures;
    }

    static Step figure(Model model, Key key) {
        int at = ((Screen.Sums) model.top()).walk().at();
        List<Figure> all = figures(model);
        if (at < 0 || at >= all.size()) {
            return Step.of(model);
        }
        Figure figure = all.get(at);
        return Step.of(model.push(new Screen.Worked(
                figure.label() + "  " + figure.text(),
                with(
                        workingLines(figure),
                        model,
                        Behind.run(figure, model.shift().totals())),
                figure.working().entries(),
                Walk.FIRST,
                0)));
    }

    /** With how a pull comes out, and what may be behind it; for the screen alone. */
    private static List<String> with(List<String> lines, Model model, Optional<Run> of) {
        if (of.isEmpty()) {
            return lines;
        }
        Shift shift = model.shift();
        List<String> all = new ArrayList<>(lines);
        shift.totals().yields().ahead().stream()
                .filter(o -> o.run().equals(of.get()))
                .findFirst()
                .ifPresent(o -> {
                    all.add("");
                    all.addAll(Echo.ahead(o));
                });
        List<String> behind = Behind.of(of.get(), shift.day(), shift.totals(), shift.job());
        if (!behind.isEmpty()) {
            all.add("");
            all.addAll(behind);
        }
        return all;
    }

    static List<String> workingLines(Figure figure) {
        List<String> lines = new ArrayList<>();
        lines.add("formula   " + figure.working().formula());
        figure.working().put().forEach(p -> lines.add("put in    " + p));
        lines.add("source    " + figure.working().source());
        return lines;
    }

    static Step workedEntry(Model model, Key key) {
        Screen.Worked worked = (Screen.Worked) model.top();
        int at = worked.walk().at();
        if (at < 0 || at >= worked.entries().size()) {
            return Step.of(model);
        }
        return Step.of(model.push(new Screen.Whole(worked.entries().get(at), 0)));
    }

    static Step search(Model model) {
        return Step.of(model.push(new Screen.Search("", List.of(), Walk.NOWHERE, false)));
    }

    static Step searchEnter(Model model, Key key) {
        Screen.Search search = (Screen.Search) model.top();
        if (!search.asked()) {
            return search.words().isBlank()
                    ? Step.of(
                            model.say(
                                    "type words, or: ticket 48217, truck T104, station 12+00 to 14+00, person RK, finding outside"))
                    : Step.of(
                            model.top(new Screen.Search(search.words(), List.of(), Walk.NOWHERE, true))
                                    .say("looking"),
                            new Effect.Find(search.words().strip()));
        }
        int at = search.walk().at();
        if (at < 0 || at >= search.matches().size()) {
            return Step.of(model);
        }
        return found(model, search.matches().get(at));
    }

    private static Step found(Model model, Msg.Match match) {
        boolean here = model.shift() != null
                && model.shift().id().equals(match.shift())
                && model.screens().stream().anyMatch(s -> s instanceof Screen.Log);
        if (here) {
            return Step.of(model.push(new Screen.Whole(match.ref(), 0)));
        }
        return Step.of(
                model.writing(true).say("line " + match.ref() + " of " + match.shift()),
                new Effect.LookAt(match.shift()));
    }

    static Step folderEnter(Model model, Key key) {
        String typed = ((Screen.OtherFolder) model.top()).typed().strip();
        if (typed.isEmpty()) {
            return Step.of(model.say("type the path of a folder on another disk"));
        }
        return Step.of(
                model.pop().say("going on in " + screedbook.entry.Shown.text(typed)), new Effect.ContinueIn(typed));
    }
}
