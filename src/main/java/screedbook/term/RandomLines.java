package screedbook.term;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import screedbook.diary.JobFolder;
import screedbook.diary.LotSeeds;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Draw;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.tally.RandomPlaces;

/**
 * The lines about random places that are to be written after a load.
 *
 * @param said which places were reached, for the echo
 */
record RandomLines(List<Unwritten> lines, String said) {
    private static final int SEED_BYTES = 16;

    /**
     * What the record lacks; nothing behind the close of the book. A seed is kept in the folder before the line that names it is made.
     *
     * @throws IOException when a seed cannot be kept
     */
    static RandomLines owed(JobFolder folder, TakenShift shift, String who, OffsetDateTime now) throws IOException {
        try {
            List<Draw> owed = shift.job()
                    .filter(job -> !shift.closed() && RandomPlaces.drawn(job))
                    .map(job -> owed(folder, shift, job))
                    .orElse(List.of());
            return new RandomLines(
                    owed.stream()
                            .map(d -> new Unwritten(now, who, Source.LIVE, d, Aside.NONE))
                            .toList(),
                    owed.stream()
                            .filter(d -> d.step() == Draw.Step.REACHED)
                            .map(d -> "  random place: lot " + d.lot() + " sublot "
                                    + d.reached().sublot())
                            .collect(Collectors.joining()));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** The seeds that are told when a shift is closed; they stand before its closing. */
    static List<Unwritten> closing(
            JobFolder folder, TakenShift shift, Closing closing, String who, OffsetDateTime now) {
        boolean end = closing.lotsEnd() == YesNo.YES;
        return shift
                .job()
                .map(job -> RandomPlaces.closing(shift.day(), job, shift.before(), LotSeeds.in(folder)::seed, end))
                .orElse(List.of())
                .stream()
                .map(d -> new Unwritten(now, who, Source.LIVE, d, Aside.NONE))
                .toList();
    }

    private static List<Draw> owed(JobFolder folder, TakenShift shift, Job job) {
        return RandomPlaces.owed(shift.day(), job, shift.before(), LotSeeds.in(folder)::seed, () -> fresh(folder));
    }

    private static String fresh(JobFolder folder) {
        byte[] bytes = new byte[SEED_BYTES];
        new SecureRandom().nextBytes(bytes);
        String seed = HexFormat.of().formatHex(bytes);
        try {
            LotSeeds.in(folder).keep(seed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return seed;
    }
}
