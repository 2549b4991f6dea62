package screedbook.check;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.UnitSystem;

/** Rules about the surface that a plan will find, and about its dates. */
final class SurfacePlan {
    static final List<PlanRule> ALL = List.of(
            new PlanRule(
                    "plan-surface-silent",
                    Sort.MISSING,
                    "The sheet says how warm the surface has to be for each lift, by day and by night.",
                    SurfacePlan::silent),
            new PlanRule(
                    "plan-thermal",
                    Sort.MISSING,
                    "How the mat's temperatures are watched is settled.",
                    SurfacePlan::thermal),
            new PlanRule(
                    "plan-night",
                    Sort.MISSING,
                    "Where limits differ by night, the job tells night from day.",
                    SurfacePlan::night),
            new PlanRule(
                    "plan-dates",
                    Sort.OUTSIDE,
                    "A layer is planned on dates on which the sheet has it placed.",
                    SurfacePlan::dates));

    private SurfacePlan() {}

    private static Situation at(Job job, Job.Lift lift, String light) {
        Situation s = LiftPlan.situation(job, lift);
        return s.with(light, s.thermal(), s.aid());
    }

    /** The lights at which the job plans to work; both where it does not say. */
    private static List<String> lights(Job job) {
        List<PlannedNight> days = PlannedNight.all(job);
        List<String> lights = new ArrayList<>();
        if (days.isEmpty() || days.stream().anyMatch(d -> !d.told() || !allNight(d))) {
            lights.add("day");
        }
        if (days.isEmpty()
                || days.stream().anyMatch(d -> !d.told() || !d.night().isEmpty())) {
            lights.add("night");
        }
        return lights;
    }

    private static boolean allNight(PlannedNight day) {
        return day.night().size() == 1
                && day.night().get(0).from().equals(day.begins())
                && day.night().get(0).to().equals(day.ends());
    }

    private static List<Mark> silent(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        List<String> lights = lights(job);
        for (Job.Lift lift : job.lifts()) {
            List<String> open = new ArrayList<>();
            List<String> why = new ArrayList<>();
            for (String light : lights) {
                Bounds bounds = Bounds.of(sheet, Quantity.SURFACE, at(job, lift, light));
                if (bounds.noLimit()) {
                    open.add("by " + light);
                    why.add("By " + light + ": " + bounds.working());
                }
            }
            if (!open.isEmpty()) {
                marks.add(new Mark(
                                List.of(),
                                LiftPlan.name(lift) + ": no limit is set for the surface " + String.join(" and ", open),
                                "how warm the surface has to be is known before paving",
                                "no limit set in " + sheet.name(),
                                "a figure agreed with the engineer, dated under agreements")
                        .because(String.join(" ", why)));
            }
        }
        return marks;
    }

    private static List<Mark> thermal(Job job, SpecSheet sheet) {
        return job.thermal() != null
                ? List.of()
                : List.of(new Mark(
                        List.of(),
                        "the job does not say how the mat's temperatures are watched",
                        "limits for the surface may depend on it",
                        "job, thermal",
                        "continuous-imaging, handheld-camera or none as thermal"));
    }

    private static List<Mark> night(Job job, SpecSheet sheet) {
        boolean told = job.night() != null
                && Cases.light(job, Instant.EPOCH.atZone(job.zone())).isPresent();
        List<String> differ = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            Bounds day = Bounds.of(sheet, Quantity.SURFACE, at(job, lift, "day"));
            Bounds night = Bounds.of(sheet, Quantity.SURFACE, at(job, lift, "night"));
            if (!day.text().equals(night.text())) {
                UnitSystem system = job.system();
                differ.add(LiftPlan.name(lift) + ": by day " + day.text(system) + ", by night " + night.text(system));
            }
        }
        return told || differ.isEmpty()
                ? List.of()
                : List.of(new Mark(
                        List.of(),
                        String.join("; ", differ) + "; the job does not tell night from day",
                        "night is as the contract defines it",
                        "job, night",
                        "hours under night, or by the sun with latitude and longitude under place"));
    }

    private static List<Mark> dates(Job job, SpecSheet sheet) {
        List<Mark> marks = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            Situation s = LiftPlan.situation(job, lift);
            for (Planning.Period period : job.planning().work()) {
                first(sheet, s, period).ifPresent(date -> {
                    Asked asked = Marks.asked(sheet, Demand.NOT_ON_THESE_DATES, s.on(date))
                            .orElseThrow();
                    marks.add(new Mark(
                            asked.sure() ? null : Sort.LOOK_AGAIN,
                            List.of(),
                            LiftPlan.name(lift) + " may come on " + date + ", planned from " + period.from() + " to "
                                    + period.to(),
                            Marks.told(asked),
                            asked.citation(),
                            "dates on which the clause has it placed",
                            "The plan does not say which lift is laid on which day."));
                });
            }
        }
        return marks;
    }

    private static Optional<LocalDate> first(SpecSheet sheet, Situation s, Planning.Period period) {
        return period.from()
                .datesUntil(period.to().plusDays(1))
                .filter(date -> Marks.asked(sheet, Demand.NOT_ON_THESE_DATES, s.on(date))
                        .isPresent())
                .findFirst();
    }
}
