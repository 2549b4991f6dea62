package screedbook.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.Option;

/** The first and the last date that count, as they are typed. */
final class DatesWord {
    @Option(names = "--from", paramLabel = "DATE", description = "the first date that counts, such as 2026-05-12")
    private String from;

    @Option(names = "--to", paramLabel = "DATE", description = "the last date that counts")
    private String to;

    /** @throws Stopped also when the first date lies after the last: then nothing could be meant */
    LocalDate from() throws Stopped {
        LocalDate first = from == null ? LocalDate.MIN : date("--from", from);
        if (first.isAfter(to())) {
            throw Stopped.usage("--from " + from + " lies after --to " + to + "; right would be the earlier one first");
        }
        return first;
    }

    LocalDate to() throws Stopped {
        return to == null ? LocalDate.MAX : date("--to", to);
    }

    private static LocalDate date(String option, String typed) throws Stopped {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeException e) {
            throw Stopped.usage(option + " " + typed + " is no date; right would be 2026-05-12");
        }
    }
}
