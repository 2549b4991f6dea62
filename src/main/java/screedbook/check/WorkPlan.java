package screedbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Instrument;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;

/** Rules about the work that is planned: rates, days, and what has to be in date on them. */
final class WorkPlan {
    static final List<PlanRule> ALL = List.of(
            new PlanRule(
                    "plan-tack-target",
                    Sort.OUTSIDE,
                    "The tack rate agreed for a surface lies where the sheet has it.",
                    WorkPlan::tack),
            new PlanRule(
                    "plan-paver-speed",
                    Sort.OUTSIDE,
                    "The paver keeps up with the plant no faster than it may go.",
                    WorkPlan::speed),
            new PlanRule(
                    "plan-in-date",
                    Sort.LOOK_AGAIN,
                    "Certificates and checks are in date on every planned day.",
                    WorkPlan::inDate),
            new PlanRule(
                    "plan-work-unsettled",
                    Sort.MISSING,
                    "Days, stretches, production and the end of a shift are settled.",
                    WorkPlan::unsettled));

    private WorkPlan() {}

    private static List<Mark> tack(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Job.TackTarget target : job.tackTargets()) {
            Quantity quantity = target.basis() == Job.Basis.APPLIED ? Quantity.TACK_APPLIED : Quantity.TACK_RESIDUAL;
            Situation s = Situation.UNKNOWN.tacked(target.surface().word(), null);
            String basis = target.basis() == null ? "" : " " + target.basis().word();
            marks.addAll(Marks.judged(
                    Bounds.of(sheet, quantity, s),
                    List.of(),
                    "the" + basis + " tack rate agreed on " + target.surface().word() + " is",
                    target.rate(),
                    ""));
        }
        return marks;
    }

    private static List<Mark> speed(Job job, SpecSheet sheet) {
        Planning.Production made = job.planning().production();
        if (made == null || made.paverSpeed() == null) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        PlanFigures.of(job, sheet).stream()
                .flatMap(section -> section.figures().stream())
                .filter(f -> f.id().startsWith("plan-paver-speed."))
                .filter(f -> f.value().compareTo(made.paverSpeed().value()) > 0)
                .forEach(f -> marks.add(faster(f, made)));
        return marks;
    }

    private static Mark faster(Figure needed, Planning.Production made) {
        return new Mark(
                        List.of(),
                        needed.label() + ", with which it keeps up with the plant, is " + needed.text(),
                        "at most " + made.paverSpeed().text(),
                        made.source() == null ? "job, production" : made.source(),
                        "a lower plant rate, or a wider or thicker mat")
                .because(needed.working().formula() + ": "
                        + String.join("; ", needed.working().put()));
    }

    private static List<Mark> inDate(Job job, SpecSheet sheet) {
        Optional<LocalDate> last =
                job.planning().work().stream().map(Planning.Period::to).max(Comparator.naturalOrder());
        List<Mark> marks = new ArrayList<>();
        if (last.isEmpty()) {
            return marks;
        }
        for (Job.Plant plant : job.plants()) {
            if (plant.scaleUntil() != null && plant.scaleUntil().isBefore(last.get())) {
                marks.add(old("the scale certificate of " + plant.name(), plant.scaleUntil(), last.get(), "plants"));
            }
        }
        for (Instrument each : job.instruments()) {
            if (each.due() != null && each.due().isBefore(last.get())) {
                marks.add(old("the check of " + each.id(), each.due(), last.get(), "instruments"));
            }
        }
        return marks;
    }

    private static Mark old(String what, LocalDate until, LocalDate last, String where) {
        return new Mark(
                List.of(),
                what + " is good until " + until + ", the last planned day is " + last,
                "certificates and checks are in date while paving goes on",
                "job, " + where,
                "a new date not before " + last);
    }

    private static List<Mark> unsettled(Job job, SpecSheet sheet) {
        Planning plan = job.planning();
        List<String> open = new ArrayList<>();
        open(open, !plan.work().isEmpty(), "work, the planned days");
        open(open, !plan.planned().isEmpty(), "planned, the stretches");
        open(open, plan.production() != null, "production");
        open(open, plan.cutoff() != null, "cutoff, the end of a shift");
        open(open, job.lots() != null, "lots");
        return open.isEmpty()
                ? List.of()
                : List.of(new Mark(
                        List.of(),
                        "the job does not settle " + String.join("; ", open),
                        "what figures of the plan depend on is settled before paving",
                        "job",
                        "these keys in the job"));
    }

    private static void open(List<String> open, boolean settled, String what) {
        if (!settled) {
            open.add(what);
        }
    }
}
