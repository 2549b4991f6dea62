package screedbook.tally;

import java.util.List;
import java.util.Optional;
import screedbook.entry.Core;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.Sample;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Mix;

/**
 * To which sublot of which mix an entry belongs: as it says itself; else as its random place, its ticket or the loads that
 * cover its place say.
 */
final class Belonging {
    private final Job job;
    private final SoFar soFar;
    private final Filling filling;
    private final Filling earlier;

    Belonging(Job job, SoFar soFar, Filling filling) {
        this.earlier = Filling.earlier(job, soFar.before());
        this.job = job;
        this.soFar = soFar;
        this.filling = filling;
    }

    Optional<Filling.Where> of(Standing<?> each) {
        ShiftId shift = each.line().shift();
        return soFar.here(each) ? of(each.entry(), shift) : earlier.placed(each, () -> of(each.entry(), shift));
    }

    /** Also of an entry that is not written yet. */
    Optional<Filling.Where> of(Entry entry, ShiftId shift) {
        if (entry instanceof Sample s) {
            Sample.Origin o = s.origin();
            String mix = mix(o.mix(), o.lift());
            return told(mix, o.lot(), o.sublot())
                    .or(() -> drawn(shift, o.draw()))
                    .or(() -> ticket(o.ticket(), shift))
                    .or(() -> at(shift, mix, o.pull(), o.lift(), o.place()));
        }
        if (entry instanceof Core c) {
            Core.Spot o = c.spot();
            String mix = mix(o.mix(), o.lift());
            return told(mix, o.lot(), o.sublot()).or(() -> at(shift, mix, o.pull(), o.lift(), o.place()));
        }
        if (entry instanceof Gauge g) {
            Gauge.Spot o = g.spot();
            String mix = mix(o.mix(), o.lift());
            return told(mix, o.lot(), o.sublot()).or(() -> at(shift, mix, o.pull(), o.lift(), o.place()));
        }
        if (entry instanceof Profile p) {
            String mix = mix(null, p.lift());
            return told(mix, p.lot(), p.sublot()).or(() -> at(shift, mix, p.pull(), p.lift(), p.from()));
        }
        return Optional.empty();
    }

    /** The mix that is named; else the one of the lift; else the only one of the job. */
    String mix(String named, Integer lift) {
        if (named != null) {
            return named;
        }
        List<Mix> all = job.mixes();
        return job.lift(lift == null ? -1 : lift)
                .map(Job.Lift::mix)
                .orElse(all.size() == 1 ? all.get(0).name() : null);
    }

    private Optional<Filling.Where> told(String mix, Integer lot, Integer sublot) {
        if (lot == null || mix == null) {
            return Optional.empty();
        }
        return Optional.of(new Filling.Where(mix, lot, sublot == null ? 0 : sublot));
    }

    private Optional<Filling.Where> drawn(ShiftId shift, Ref draw) {
        return Optional.ofNullable(draw)
                .flatMap(ref -> soFar.find(shift, ref))
                .filter(s -> s.entry() instanceof Draw)
                .map(s -> (Draw) s.entry())
                .filter(d -> d.lot() != null && d.reached().sublot() != null)
                .map(d -> new Filling.Where(d.mix(), d.lot(), d.reached().sublot()));
    }

    private Optional<Filling.Where> ticket(String number, ShiftId shift) {
        return number == null ? Optional.empty() : filling.ofTicket(number, shift);
    }

    private Optional<Filling.Where> at(ShiftId shift, String mix, String pull, Integer lift, Station place) {
        return place == null ? Optional.empty() : filling.at(shift, mix, pull, lift, place);
    }
}
