package screedbook.tally;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Restart;
import screedbook.entry.Standing;
import screedbook.entry.Stop;

/**
 * One time that a paver stood: its stop, and the restart that ended it.
 *
 * @param restart empty when none was keyed
 * @param ended when it ended; null while it lasts, and where nobody noted the time
 */
public record Stoppage(Standing<Stop> stop, Optional<Standing<Restart>> restart, OffsetDateTime ended) {
    /** All of a day in the order in which they began. The first restart of a stop ends it, whatever its stop says. */
    public static List<Stoppage> of(Day day) {
        List<Standing<Restart>> restarts = day.standing(Restart.class);
        List<Stoppage> all = new ArrayList<>();
        for (Standing<Stop> stop : day.standing(Stop.class)) {
            Optional<Standing<Restart>> restart = restarts.stream()
                    .filter(r -> stop.ref().equals(r.entry().of()))
                    .findFirst();
            OffsetDateTime ended =
                    restart.map(Standing::time).orElse(stop.entry().ended());
            all.add(new Stoppage(stop, restart, ended));
        }
        return List.copyOf(all);
    }

    /** Whether nothing says that it ended. */
    public boolean lasts() {
        return restart.isEmpty() && ended == null;
    }

    /** Whole minutes from its beginning to its end, or to now while it lasts; empty where a time is not noted. */
    public Optional<Long> minutes(OffsetDateTime now) {
        OffsetDateTime end = lasts() ? now : ended;
        return stop.time() == null || end == null
                ? Optional.empty()
                : Optional.of(Duration.between(stop.time(), end).toMinutes());
    }

    /** The one that began last of those that last. */
    public static Optional<Stoppage> lasting(List<Stoppage> all) {
        List<Stoppage> open = all.stream().filter(Stoppage::lasts).toList();
        return open.isEmpty() ? Optional.empty() : Optional.of(open.get(open.size() - 1));
    }
}
