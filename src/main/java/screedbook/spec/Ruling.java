package screedbook.spec;

import java.util.List;

/**
 * What a sheet says of a quantity in one case.
 *
 * @param inForce limits that hold; a value is inside when it is inside all of them
 * @param unsure limits of which the sheet does not say, or the case does not tell, whether they hold
 * @param silent sentences of the sheet for cases in which it sets no limit on purpose
 */
public record Ruling(Quantity quantity, List<Limit> inForce, List<Limit> unsure, List<String> silent) {
    /** Whether no limit is set: the screen then says so, and never that a value is good. */
    public boolean noLimit() {
        return inForce.isEmpty() && unsure.isEmpty();
    }
}
