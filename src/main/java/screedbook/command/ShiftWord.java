package screedbook.command;

import java.time.DateTimeException;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import screedbook.entry.ShiftId;
import screedbook.shelf.Shelf;

/** The shift of a job as it is typed: the newest unless another is named. */
final class ShiftWord {
    private static final int SHOWN = 5;

    @Option(
            names = "--shift",
            paramLabel = "SHIFT",
            description = "such as 2026-06-03-day, -night or -extra-2; without it, the newest")
    private String typed;

    /** @throws Stopped when the words name no shift, or the job does not have it */
    ShiftId of(Shelf shelf) throws Stopped {
        List<ShiftId> shifts = shelf.shifts();
        if (shifts.isEmpty()) {
            throw Stopped.disk(shelf.folder().path() + " holds no shift yet");
        }
        ShiftId asked = typed == null ? shifts.get(shifts.size() - 1) : read();
        if (!shifts.contains(asked)) {
            throw Stopped.disk(shelf.folder().path() + " holds no shift " + asked + "; " + newest(shifts));
        }
        return asked;
    }

    private ShiftId read() throws Stopped {
        try {
            return ShiftId.of(typed);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw Stopped.usage(
                    "--shift " + typed + " names no shift; right would be 2026-06-03-day, -night or" + " -extra-2");
        }
    }

    private static String newest(List<ShiftId> shifts) {
        List<ShiftId> last = shifts.subList(Math.max(0, shifts.size() - SHOWN), shifts.size());
        return "its newest: " + last.stream().map(ShiftId::toString).collect(Collectors.joining(", "));
    }
}
