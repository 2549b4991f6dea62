package screedbook.term;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import screedbook.desk.Effect;
import screedbook.desk.Msg;

/**
 * What the desk wants done outside, done: one thread that nobody interrupts reads and writes the job's folder and tells
 * the desk what came of it.
 */
final class Hands {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> new Thread(work, "disk"));
    private final CompletableFuture<Optional<Msg>> looked = new CompletableFuture<>();
    private final Clock clock;
    private final Browsing browsing;
    private BookHands book;
    private boolean lookTold;
    private Msg ahead;

    /**
     * @param folder the job's folder
     * @param bookName the name of this laptop's book
     * @param program name and version, for opening lines
     */
    Hands(Path folder, String bookName, String program, Clock clock) {
        this(folder, bookName, program, clock, new Browsing(Optional::empty));
    }

    /** @param browsing reads beside the keeping, as far as it recalls what was read before */
    Hands(Path folder, String bookName, String program, Clock clock, Browsing browsing) {
        this.browsing = browsing;
        this.clock = clock;
        thread.execute(() -> book = new BookHands(folder, bookName, program, clock));
    }

    /** Begins to read the folder while the terminal is still being opened; the first screen then need not wait. */
    void readAhead() {
        thread.execute(() -> {
            try {
                looked.complete(folder().look());
                ahead = folder().list();
            } catch (RuntimeException | LinkageError trouble) {
                ahead = null;
            }
        });
    }

    /** The folder as it was read ahead, once; else as it is now. */
    private Msg listed() {
        Msg read = ahead;
        ahead = null;
        return read == null ? folder().list() : read;
    }

    /** Hands an effect to the thread of the disk; returns at once. */
    void carryOut(Effect effect, Consumer<Msg> post) {
        if (effect instanceof Effect.ListShifts && !lookTold) {
            lookTold = true;
            looked.thenAccept(look -> look.ifPresent(post));
        }
        thread.execute(() -> {
            try {
                act(effect, post);
            } catch (RuntimeException | LinkageError trouble) {
                post.accept(new Msg.Refused("the program met " + trouble + "; the lines on disk are as they were"));
                trouble.printStackTrace();
            }
        });
    }

    /** Waits until everything that was handed over is on the disk, then lets the files go. */
    void goodbye() {
        thread.execute(() -> {
            browsing.stop();
            book.letGo();
        });
        thread.shutdown();
        try {
            thread.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private void act(Effect effect, Consumer<Msg> post) {
        if (effect instanceof Effect.ListShifts) {
            post.accept(listed());
        } else if (effect instanceof Effect.Open open) {
            post.accept(book.open(open));
        } else if (effect instanceof Effect.LookAt look) {
            post.accept(book.lookAt(look.shift()));
        } else if (effect instanceof Effect.Write write) {
            post.accept(book.write(write.entries()));
        } else if (effect instanceof Effect.Keep keep) {
            book.keep(keep.draft());
            book.keepDrafts(post);
        } else if (effect instanceof Effect.Drop drop) {
            book.drop(drop.kind());
            book.keepDrafts(post);
        } else if (effect instanceof Effect.ContinueIn other) {
            post.accept(book.continueIn(other.folder()));
        } else if (effect instanceof Effect.Print) {
            post.accept(book.print());
        } else if (effect instanceof Effect.Find find) {
            browsing.find(book.shelf().folder(), find.words(), post);
        } else if (effect instanceof Effect.ReadSeason) {
            browsing.season(book.shelf().folder(), post);
        } else if (effect instanceof Effect.BringList list) {
            post.accept(book.bring(list));
        } else if (effect instanceof Effect.ReadCrewBefore crew) {
            post.accept(folder().crewBefore(crew.shift()));
        } else if (effect instanceof Effect.ReadJobSheet) {
            post.accept(sheet().read());
        } else if (effect instanceof Effect.WriteJobSheet sheet) {
            post.accept(sheet().write(sheet, now()));
            post.accept(folder().list());
        } else if (effect instanceof Effect.KeepJobSheet || effect instanceof Effect.DropJobSheet) {
            sheet().keep(effect).ifPresent(post);
        } else if (effect instanceof Effect.PrintPlan) {
            post.accept(sheet().print(now().toLocalDate()));
        } else if (effect instanceof Effect.Leave) {
            book.letGo();
        }
    }

    private FolderHands folder() {
        return new FolderHands(book.shelf());
    }

    private SheetHands sheet() {
        return new SheetHands(book.shelf().folder(), clock);
    }

    /** What time it is where the job is. */
    private OffsetDateTime now() {
        return book.now(book.shelf().folder().job().job());
    }
}
