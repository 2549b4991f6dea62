package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;

/** The entries of a kind that count in all shifts up to this one, the earlier shifts first. */
record SoFar(Day day, ToDate before) {
    @SuppressWarnings("unchecked")
    <E extends Entry> List<Standing<E>> all(Class<E> type) {
        List<Standing<E>> all = new ArrayList<>();
        for (Standing<?> each : before.told()) {
            if (type.isInstance(each.entry())) {
                all.add((Standing<E>) each);
            }
        }
        all.addAll(day.standing(type));
        return all;
    }

    /** An entry of a shift by its number, if it is still known. */
    Optional<Standing<?>> find(ShiftId shift, Ref ref) {
        if (shift.equals(day.shift())) {
            return day.find(ref).filter(s -> !s.struck());
        }
        return before.told().stream()
                .filter(s -> s.line().shift().equals(shift) && s.ref().equals(ref))
                .<Standing<?>>map(s -> s)
                .findFirst();
    }

    boolean here(Standing<?> each) {
        return each.line().shift().equals(day.shift());
    }

    /** {@code paver/17}, with its shift where that is another one. */
    String name(Standing<?> each) {
        return here(each) ? each.ref().toString() : each.line().shift() + " " + each.ref();
    }
}
