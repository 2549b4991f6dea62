package screedbook.desk;

import java.util.List;
import java.util.function.BiFunction;
import screedbook.check.Finding;
import screedbook.check.PlanFigures;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.HaulLoss;
import screedbook.unit.Measure;

/** What the keys do on what the limit sheet says of a plan: findings, drawing, numbers, page. */
final class PlanKeys {
    private PlanKeys() {}

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
}
