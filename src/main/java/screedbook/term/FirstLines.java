package screedbook.term;

import java.io.IOException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import screedbook.diary.LimitSheets;
import screedbook.entry.Aside;
import screedbook.entry.Clock;
import screedbook.entry.Entry;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.Plan;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.shelf.SheetNow;
import screedbook.shelf.Shelf;

/** The lines that the program itself writes: opening, another plan, a clock that jumped. */
record FirstLines(Shelf shelf, String program, String who) {
    /** The number of the file format that this program writes. */
    static final int FORMAT = 1;

    private static final Duration CLOCK_MAY_DIFFER = Duration.ofSeconds(2);

    /** A clock that stands before the last line that this laptop wrote is told; older lines stay as they are. */
    Optional<Unwritten> clock(List<Written> own, OffsetDateTime now) {
        for (int i = own.size() - 1; i >= 0; i--) {
            if (own.get(i) instanceof Line line) {
                return now.plus(CLOCK_MAY_DIFFER).isBefore(line.keyed())
                        ? Optional.of(written(
                                now,
                                new Clock(
                                        line.keyed(), now, null, "the clock stands before the last line of this book")))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Unwritten written(OffsetDateTime time, Entry entry) {
        return new Unwritten(time, who, Source.LIVE, entry, Aside.NONE);
    }

    /** The first line of a book: the job file as it is now becomes a revision, the sheet is frozen. */
    Unwritten opening(Optional<Job> job, Optional<String> sealBefore, OffsetDateTime now) throws IOException {
        if (job.isEmpty()) {
            throw new IOException("job.json cannot be read");
        }
        Agreed agreed = shelf.folder().accept(who, now, null);
        String sha256 = frozen(job.get().sheet());
        ZoneId here = ZoneId.systemDefault();
        boolean same = here.getRules().getOffset(now.toInstant()).equals(now.getOffset());
        Opening opening = new Opening(
                FORMAT,
                program,
                HexFormat.of().formatHex(new SecureRandom().generateSeed(8)),
                job.get().zone().getId(),
                same ? null : here.getId(),
                agreed.revision(),
                agreed.sha256(),
                job.get().sheet(),
                sha256,
                job.get().people(),
                job.get().instruments(),
                sealBefore.orElse(null));
        return written(now, opening);
    }

    /** A job file or a sheet that says something else than the one in force is taken from here on. */
    Optional<Unwritten> plan(List<Written> own, Optional<Job> job, OffsetDateTime now) throws IOException {
        if (job.isEmpty()) {
            return Optional.empty();
        }
        Agreed agreed = shelf.folder().accept(who, now, null);
        String sha256 = frozen(job.get().sheet());
        String oldJob = null;
        String oldSheet = null;
        for (Written each : own) {
            if (each instanceof Line l && l.entry() instanceof Opening o) {
                oldJob = o.jobSha256();
                oldSheet = o.sheetSha256();
            } else if (each instanceof Line l && l.entry() instanceof Plan p) {
                oldJob = p.jobSha256() == null ? oldJob : p.jobSha256();
                oldSheet = p.sheetSha256() == null ? oldSheet : p.sheetSha256();
            }
        }
        if (agreed.sha256().equals(oldJob) && (sha256 == null || sha256.equals(oldSheet))) {
            return Optional.empty();
        }
        return Optional.of(written(
                now,
                new Plan(
                        agreed.revision(),
                        agreed.sha256(),
                        sha256 == null ? null : job.get().sheet(),
                        sha256,
                        "found when the shift was opened")));
    }

    /** The hash of the sheet as it is kept from now on; null where there is none that can be used. */
    private String frozen(String name) throws IOException {
        Optional<SheetNow> sheet =
                SheetNow.of(shelf.folder(), name).filter(found -> found.sheet().isPresent());
        return sheet.isPresent()
                ? LimitSheets.in(shelf.folder()).freeze(name, sheet.get().bytes())
                : null;
    }
}
