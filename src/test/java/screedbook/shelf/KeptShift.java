package screedbook.shelf;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.diary.Opened;
import screedbook.diary.Saved;
import screedbook.entry.Aside;
import screedbook.entry.Built;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.job.Agreed;
import screedbook.spec.SpecSheet;

/**
 * A book of a shift being kept on a disk in a test: every line a minute after the one before, from 06:00 on. The job is
 * the example that comes with the program. Invented throughout.
 */
public final class KeptShift implements AutoCloseable {
    private static final ZoneOffset ZONE = ZoneOffset.ofHours(-6);

    private final Book book;
    private OffsetDateTime keyed;

    private KeptShift(Book book, OffsetDateTime keyed) {
        this.book = book;
        this.keyed = keyed;
    }

    /** The example job in a folder. */
    public static JobFolder job(Path folder) throws IOException {
        JobFolder.make(folder);
        return JobFolder.at(folder);
    }

    /** The first line is there: job and sheet as they are now. */
    public static KeptShift opened(JobFolder folder, String shift, String book) throws IOException {
        KeptShift kept = again(folder, shift, book, "06:00");
        Agreed agreed = folder.accept("RK", kept.keyed, null);
        String sheet = agreed.job().sheet();
        String sha256 = LimitSheets.in(folder)
                .freeze(sheet, SpecSheet.shippedBytes(sheet).orElseThrow());
        return kept.key(
                Kind.OPENING,
                null,
                Map.of(
                        "format",
                        BigDecimal.ONE,
                        "zone",
                        "America/Denver",
                        "job_revision",
                        BigDecimal.valueOf(agreed.revision()),
                        "job_sha256",
                        agreed.sha256(),
                        "sheet",
                        sheet,
                        "sheet_sha256",
                        sha256));
    }

    /** A book that was opened, and perhaps closed, before. */
    public static KeptShift again(JobFolder folder, String shift, String book, String clock) {
        ShiftId id = ShiftId.of(shift);
        OffsetDateTime now = OffsetDateTime.of(id.date(), LocalTime.parse(clock), ZONE);
        Opened opened = folder.open(id, book, "my-job", "RK", now);
        return new KeptShift(((Opened.Ready) opened).book(), now);
    }

    /** From here on lines are keyed on another day: a date of the zone at 06:00. */
    public KeptShift on(String date) {
        keyed = OffsetDateTime.parse(date + "T06:00:00-06:00");
        return this;
    }

    public KeptShift ticket(String clock, String number, String net) {
        return key(
                Kind.TICKET,
                clock,
                Map.of(
                        "plant", "Quarry Road",
                        "number", number,
                        "truck", "T104",
                        "mix", "12.5-70A",
                        "net_ston", new BigDecimal(net),
                        "pull", "A",
                        "lift", BigDecimal.valueOf(2)));
    }

    /** A line of a kind; a clock time of null was not noted. */
    public KeptShift key(Kind kind, String clock, Map<String, Object> plain) {
        Built<? extends Record> built = Fields.build(kind.type(), new LinkedHashMap<>(plain));
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new IllegalArgumentException(built.slips() + " " + built.unknown());
        }
        written((Entry) built.value(), clock);
        return this;
    }

    /** The closing line; the book is done with. */
    public Seal closed() {
        try (this) {
            return written((Entry) Fields.build(Kind.CLOSING.type(), Map.of()).value(), null)
                    .seal()
                    .orElseThrow();
        }
    }

    private Saved written(Entry entry, String clock) {
        keyed = keyed.plusMinutes(1);
        OffsetDateTime time =
                clock == null ? null : OffsetDateTime.of(book.shift().date(), LocalTime.parse(clock), ZONE);
        Saved saved = book.append(List.of(new Unwritten(time, "RK", Source.LIVE, entry, Aside.NONE)), keyed)
                .join();
        saved.refused().ifPresent(refused -> {
            throw new IllegalStateException(refused.said());
        });
        return saved;
    }

    @Override
    public void close() {
        book.close();
    }
}
