package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.ShiftId;

/** The pages and tables that are kept in a job's folder. */
public final class KeptPages {
    private final Path folder;

    private KeptPages(Path folder) {
        this.folder = folder;
    }

    public static KeptPages in(JobFolder job) {
        return new KeptPages(job.path());
    }

    /**
     * Keeps a page with its CSV under {@code days/}. A page that was saved is never changed: another one for the same
     * shift becomes its next revision.
     *
     * @return the page's file, also when the same page was there already
     */
    public Path page(ShiftId shift, String text, String csv) throws IOException {
        Path days = days();
        byte[] page = text.getBytes(StandardCharsets.UTF_8);
        for (int revision = 1; ; revision++) {
            String stem = shift + (revision == 1 ? "" : ".r" + revision);
            Path file = days.resolve(stem + ".txt");
            Optional<byte[]> there = kept(file);
            if (there.isEmpty()) {
                Folder.replace(days.resolve(stem + ".csv"), csv.getBytes(StandardCharsets.UTF_8), FileChannel::open);
                Folder.replace(file, page, FileChannel::open);
            }
            if (there.isEmpty() || Arrays.equals(there.get(), page)) {
                return file;
            }
        }
    }

    /**
     * Keeps a page with its CSV as far as an open shift has come; it takes the place of an earlier one of its kind.
     *
     * @return the page's file
     */
    public Path soFar(ShiftId shift, String text, String csv) throws IOException {
        Path file = days().resolve(shift + ".so-far.txt");
        Folder.place(file, text.getBytes(StandardCharsets.UTF_8));
        Folder.place(file.resolveSibling(shift + ".so-far.csv"), csv.getBytes(StandardCharsets.UTF_8));
        return file;
    }

    /**
     * Writes tables into any folder, which is made when it is not there; whoever reads sees the old table or the whole
     * new one.
     *
     * @param tables texts by the names of their files
     */
    public static void tables(Path folder, Map<String, String> tables) throws IOException {
        Folder.make(folder, FileChannel::open);
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Folder.place(folder.resolve(table.getKey()), table.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What was kept under a name; what is there and cannot be read is not taken for nothing. */
    private static Optional<byte[]> kept(Path file) throws IOException {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Optional.of(Recovery.read(file)) : Optional.empty();
    }

    /**
     * Keeps a pre-paving sheet under {@code plan/}. One that was saved is never changed: another one of the same day
     * becomes its next revision.
     *
     * @return its file, also when the same one was there already
     */
    public Path plan(LocalDate day, String text) throws IOException {
        byte[] page = text.getBytes(StandardCharsets.UTF_8);
        for (int revision = 1; ; revision++) {
            Path file = folder.resolve("plan").resolve(day + (revision == 1 ? "" : ".r" + revision) + ".txt");
            Optional<byte[]> there = kept(file);
            if (there.isEmpty()) {
                Folder.replace(file, page, FileChannel::open);
            }
            if (there.isEmpty() || Arrays.equals(there.get(), page)) {
                return file;
            }
        }
    }

    private Path days() {
        return folder.resolve("days");
    }
}
