package screedbook.entry;

import java.util.Map;

/** Another value beside the old one, in one or more blanks of an entry. */
public record Amend(
        @Blank(value = "entry", due = Blank.Due.ALWAYS, width = 10)
        Ref of,

        @Blank(
                value = "set",
                due = Blank.Due.ALWAYS,
                help = "keys of the line with their new values; null takes a value away")
        Map<String, Object> set,

        @Blank(value = "reason", due = Blank.Due.ALWAYS, width = 40)
        String reason)
        implements Entry {}
