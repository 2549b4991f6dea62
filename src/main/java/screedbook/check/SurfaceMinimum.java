package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Unit;

/**
 * What the sheet says of the surface for one lift at one light, with one thermal method and one aid.
 *
 * @param text {@code at least 35}, {@code no limit set}
 * @param unit in which it is said; null where no limit is set
 * @param silent whether the sheet sets no limit; that never means that any temperature is good
 * @param planned whether thermal method and aid are those of the job
 */
public record SurfaceMinimum(
        Job.Lift lift,
        String light,
        String thermal,
        String aid,
        String text,
        Unit unit,
        boolean silent,
        String clause,
        String working,
        boolean planned) {
    private static final List<String> LIGHTS = List.of("day", "night");

    /** Every lift at day and night, with every thermal method and aid, in that order. */
    public static List<SurfaceMinimum> all(Job job, SpecSheet sheet) {
        List<SurfaceMinimum> all = new ArrayList<>();
        for (Job.Lift lift : job.lifts()) {
            for (String light : LIGHTS) {
                for (Job.Thermal thermal : Job.Thermal.values()) {
                    for (Mix.Aid aid : Mix.Aid.values()) {
                        all.add(of(job, sheet, lift, light, thermal, aid));
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    private static SurfaceMinimum of(
            Job job, SpecSheet sheet, Job.Lift lift, String light, Job.Thermal thermal, Mix.Aid aid) {
        Situation s = LiftPlan.situation(job, lift).with(light, thermal.word(), aid.word());
        Bounds bounds = Bounds.of(sheet, Quantity.SURFACE, s);
        Optional<Mix.Aid> settled = job.mix(lift.mix()).map(Mix::aid);
        return new SurfaceMinimum(
                lift,
                light,
                thermal.word(),
                aid.word(),
                bounds.text(),
                bounds.noLimit() ? null : bounds.all().get(0).unit(),
                bounds.noLimit(),
                bounds.clause(),
                bounds.working(),
                job.thermal() == thermal && settled.filter(aid::equals).isPresent());
    }
}
