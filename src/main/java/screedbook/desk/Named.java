package screedbook.desk;

import java.util.Optional;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Moment;
import screedbook.entry.Part;
import screedbook.entry.Ref;
import screedbook.entry.Restart;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.entry.Waste;

/** An entry in one line; a load or a stop that it speaks of stands there as people call it, not by its line. */
final class Named {
    private Named() {}

    static String line(Shift shift, Entry entry) {
        String line = Told.line(entry);
        Optional<Ref> of = of(entry);
        return of.flatMap(shift::find)
                .flatMap(Named::name)
                .map(name -> line.replace(" " + of.get(), " " + name))
                .orElse(line);
    }

    private static Optional<Ref> of(Entry entry) {
        if (entry instanceof Part p) {
            return Optional.ofNullable(p.of());
        }
        if (entry instanceof Waste w) {
            return Optional.ofNullable(w.of());
        }
        if (entry instanceof Draw d) {
            return Optional.ofNullable(d.reached()).map(Draw.Reached::of);
        }
        return entry instanceof Restart r ? Optional.ofNullable(r.of()) : Optional.empty();
    }

    private static Optional<String> name(Standing<?> standing) {
        if (standing.entry() instanceof Ticket t) {
            return Optional.ofNullable(t.paper().number()).map(number -> "ticket " + number);
        }
        return standing.entry() instanceof Stop && standing.time() != null
                ? Optional.of("stop " + Moment.clock(standing.time()))
                : Optional.empty();
    }
}
