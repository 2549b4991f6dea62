package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;

/** Loads in a row that have the same thing said of them, so that it is said once. */
final class Spells {
    private final List<List<Standing<Ticket>>> spells = new ArrayList<>();
    private String last;

    /** @param why null where nothing is to be said of the load */
    void next(String why, Standing<Ticket> load) {
        if (why != null) {
            if (!Objects.equals(why, last)) {
                spells.add(new ArrayList<>());
            }
            spells.get(spells.size() - 1).add(load);
        }
        last = why;
    }

    /** One mark for each spell, made of its first load and all of them. */
    List<Mark> marks(BiFunction<Standing<Ticket>, List<Standing<Ticket>>, Mark> made) {
        return spells.stream().map(s -> made.apply(s.get(0), s)).toList();
    }
}
