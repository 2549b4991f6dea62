package screedbook.entry;

import java.util.List;

/** What may stand on an entry of any kind. */
public record Aside(
        @Blank(value = "seen by", width = 10, help = "where another than the writer saw it")
        String seenBy,

        @Blank(value = "photos", width = 20, help = "their numbers")
        List<String> photos,

        @Blank(value = "remark", width = 50, help = "facts: what, where, how measured, what was done")
        String remark) {
    public static final Aside NONE = new Aside(null, null, null);
}
