package screedbook.entry;

import java.util.List;

/**
 * A record made from plain values, with what could not be read and what was not known.
 *
 * @param value the record; a value that could not be read is absent in it
 * @param slips one for each value that could not be read, all of them
 * @param unknown keys that no component of the record claims, in their order
 */
public record Built<R>(R value, List<Slip> slips, List<String> unknown) {
    /** A value that could not be read: where (a path such as {@code mixes[1].binder}), what was seen, what would be right. */
    public record Slip(String path, String seen, String right) {
        public String text() {
            return path + " is " + seen + "; right would be " + right;
        }
    }
}
