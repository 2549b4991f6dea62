package screedbook.check;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;

/** Entries that are judged alike: by one job and sheet, for one mix on one lift. Its limits are looked up once. */
final class Case {
    private final Job job;
    private final SpecSheet sheet;
    private final Situation situation;
    private final String mix;
    private final Map<Quantity, Bounds> bounds = new EnumMap<>(Quantity.class);

    Case(Job job, SpecSheet sheet, Situation situation, String mix) {
        this.job = job;
        this.sheet = sheet;
        this.situation = situation;
        this.mix = mix;
    }

    Job job() {
        return job;
    }

    Bounds bounds(Quantity quantity) {
        return bounds.computeIfAbsent(quantity, q -> Bounds.of(sheet, q, situation));
    }

    /** A mix temperature: its own limits, and those around the mix's target where it has one. */
    Bounds heat(Quantity own, Quantity around, Function<Mix, Amount> target) {
        return bounds.computeIfAbsent(
                own,
                q -> Bounds.heat(sheet, situation, own, around, job.mix(mix).map(target)));
    }

    /** What the sheet asks for here; something that it asks for surely comes first. */
    Optional<Asked> asked(Demand demand) {
        return Marks.asked(sheet, demand, situation);
    }
}
