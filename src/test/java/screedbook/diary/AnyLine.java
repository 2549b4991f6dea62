package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import screedbook.entry.Day;
import screedbook.entry.Fields;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Told;
import screedbook.entry.Written;

/** The reader of lines, fed with any bytes: it tells of each line what it is, and loses none. */
public final class AnyLine {
    private AnyLine() {}

    /** A whole file of these bytes, and each of its lines. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        Chain.Walk walk = Chain.walk(bytes, null);
        int kept = walk.tail().length + (walk.bom() && !walk.lines().isEmpty() ? 3 : 0) + walk.carriageReturns();
        for (RawLine line : walk.lines()) {
            kept += line.bytes().length + 1;
            one(line.bytes());
        }
        if (kept != bytes.length) {
            throw new AssertionError(kept + " of " + bytes.length + " bytes are kept");
        }
        one(bytes);
    }

    private static void one(byte[] bytes) {
        Written read = LineText.read("paver", 1, bytes);
        Day day = Day.of(ShiftId.of("2026-06-03-day"), List.of(List.of(read)));
        if (day.written().size() != 1) {
            throw new AssertionError("the line is not in the day");
        }
        if (read instanceof Line line) {
            Told.line(line.entry());
            Record again = Fields.build(line.kind().type(), Fields.plain((Record) line.entry()))
                    .value();
            if (!again.equals(line.entry())) {
                throw new AssertionError("read back it is " + again + " and not " + line.entry());
            }
            if (!Arrays.equals(bytes, line.raw().getBytes(StandardCharsets.UTF_8))) {
                throw new AssertionError("its text is not kept");
            }
        }
    }
}
