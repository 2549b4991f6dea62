package screedbook.diary;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Aside;
import screedbook.entry.Foreign;
import screedbook.entry.Line;
import screedbook.entry.Refused;
import screedbook.entry.SetAside;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;

/** A shift's book being opened for writing: which file it goes on in, and from which line. */
final class BookOpening {
    private final JobFolder folder;
    private final ShiftId shift;
    private final String book;

    BookOpening(JobFolder folder, ShiftId shift, String book) {
        this.folder = folder;
        this.shift = shift;
        this.book = book;
    }

    /** See {@link JobFolder#open}. */
    Opened open(String job, String who, OffsetDateTime now, Channels channels) {
        if (!FileName.isBook(book)) {
            return new Opened.No(new Refused("a book cannot be named " + book, true));
        }
        BookRead read = read(shift);
        FileName name = FileName.of(shift, book, revision(read));
        Optional<String> before = lastHash(name);
        Path diary = newest(name);
        Optional<GoesOn> elsewhere = GoesOn.of(diary, name).filter(note -> !has(note.file()));
        if (elsewhere.isPresent()) {
            return new Opened.No(new Refused(
                    name.text() + " went on in " + elsewhere.get().file() + " in "
                            + elsewhere.get().folder() + ", and that file is not there now",
                    false));
        }
        Access access = LineFile.open(
                diary, name, Book.words(who, now), before.orElse(Chain.NOTHING_BEFORE), channels, segments(name));
        if (access instanceof Access.Taken taken) {
            return new Opened.Held(Book.heldBy(taken.words()));
        }
        if (access instanceof Appended.Refused refused) {
            return new Opened.No(new Refused(refused.sentence(), false));
        }
        Access.Opened opened = (Access.Opened) access;
        LineText.Place place = new LineText.Place(job, shift, book);
        return ready(new Book(place, opened.file(), lastNumber(read), sealBefore()), opened, who, now);
    }

    private static Opened ready(Book opening, Access.Opened opened, String who, OffsetDateTime now) {
        List<String> said = new ArrayList<>();
        if (!opened.before().isEmpty() && !Book.endedHere(opened.before())) {
            said.add(Book.heldBy(opened.before()).leftOpen());
        }
        opened.left()
                .ifPresent(left -> said.add(left.sentence() + "; it is left as it is and the record goes on in "
                        + opened.file().name().text()));
        opened.torn().ifPresent(torn -> {
            said.add(torn.file() + ": " + torn.count() + " bytes of a line that was not written to its end are kept in "
                    + torn.sidecar());
            Saved saved = opening.append(List.of(line(torn, who)), now).join();
            saved.refused().ifPresent(refused -> said.add(refused.said()));
        });
        return new Opened.Ready(opening, List.copyOf(said));
    }

    private static Unwritten line(Access.Torn torn, String who) {
        SetAside entry = new SetAside(
                torn.sidecar(), BigDecimal.valueOf(torn.offset()), BigDecimal.valueOf(torn.count()), torn.hash());
        return new Unwritten(null, who, Source.LIVE, entry, Aside.NONE);
    }

    private boolean has(String file) {
        return folder.files().keySet().stream()
                .anyMatch(name -> name.name().text().equals(file));
    }

    /** The folder of the newest segment of a diary; the job's own when there is none yet. */
    private Path newest(FileName name) {
        Path newest = folder.diary();
        for (Map.Entry<FileName.Diary, Path> each : folder.files().entrySet()) {
            if (each.getKey().name().stem().equals(name.stem())) {
                newest = each.getValue().getParent();
            }
        }
        return newest;
    }

    /** Every segment of a diary, in whatever folder it lies. */
    private Map<FileName, Path> segments(FileName name) {
        Map<FileName, Path> segments = new HashMap<>();
        folder.files().forEach((diary, path) -> {
            if (diary.name().stem().equals(name.stem())) {
                segments.put(diary.name(), path);
            }
        });
        return segments;
    }

    private BookRead read(ShiftId of) {
        Map<FileName.Diary, Path> files = new LinkedHashMap<>();
        folder.files().forEach((name, path) -> {
            if (name.shift().equals(of) && name.book().equals(book)) {
                files.put(name, path);
            }
        });
        return BookReading.read(book, files);
    }

    /** The newest revision that is not closed: late lines go to a file of their own. */
    private static int revision(BookRead read) {
        if (read.files().isEmpty()) {
            return 1;
        }
        FileRead last = read.files().get(read.files().size() - 1);
        int revision = FileName.diary(last.file()).orElseThrow().revision();
        return last.closed() ? revision + 1 : revision;
    }

    private static int lastNumber(BookRead read) {
        int last = 0;
        for (Written line : read.lines()) {
            if (line instanceof Line known) {
                last = Math.max(last, known.n());
            } else if (line instanceof Foreign foreign) {
                last = Math.max(last, foreign.n());
            }
        }
        return last;
    }

    /** The last hash of the book's newest file before the one named. */
    private Optional<String> lastHash(FileName name) {
        Optional<String> last = Optional.empty();
        for (Map.Entry<FileName.Diary, Path> each : folder.files().entrySet()) {
            FileName.Diary other = each.getKey();
            int order = other.shift().compareTo(shift);
            boolean earlier = order < 0 || order == 0 && !other.name().stem().equals(name.stem());
            if (other.book().equals(book) && earlier) {
                Optional<String> found = hash(each.getValue());
                last = found.isPresent() ? found : last;
            }
        }
        return last;
    }

    /** The seal of the book's newest shift before this one; its last hash is another when something came behind it. */
    private Optional<String> sealBefore() {
        return folder.files().keySet().stream()
                .filter(name -> name.book().equals(book) && name.shift().compareTo(shift) < 0)
                .map(FileName.Diary::shift)
                .reduce((first, later) -> later)
                .flatMap(before -> read(before).seal())
                .map(seal -> seal.sha256());
    }

    private static Optional<String> hash(Path file) {
        try {
            return Optional.ofNullable(Chain.walk(Recovery.read(file), null).head());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
