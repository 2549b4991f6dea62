package screedbook.entry;

import java.util.Locale;

/** A word of a fixed list: what is offered on the form and what stands in the line. Implemented by enums only. */
public interface Word {
    String name();

    /** Lower case, dashes for underlines: {@code PART_PLACED} is written {@code part-placed}. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
