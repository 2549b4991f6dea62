package screedbook.tally;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Function;

/** Lines of a working that are written out only when somebody opens it. */
final class Lines<T> extends AbstractList<String> {
    private final List<T> steps;
    private final Function<T, String> said;

    Lines(List<T> steps, Function<T, String> said) {
        this.steps = List.copyOf(steps);
        this.said = said;
    }

    @Override
    public String get(int at) {
        return said.apply(steps.get(at));
    }

    @Override
    public int size() {
        return steps.size();
    }
}
