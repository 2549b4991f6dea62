package screedbook.diary;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/**
 * The one thread that writes a diary. Nobody can interrupt it: callers hold futures, and cancelling a future does not
 * reach the thread.
 */
final class Writer {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "diary");
        made.setDaemon(true);
        return made;
    });

    private LineFile file;

    /** Takes over a file that was just opened; nobody else may use it from here on. */
    Writer(LineFile file) {
        this.file = file;
    }

    /**
     * Appends a line.
     *
     * @param line makes the line, without LF, from the hash it has to name; called on the writer's thread
     */
    CompletableFuture<Appended> append(Function<String, byte[]> line) {
        return with(open -> open.append(line.apply(open.head())));
    }

    /** Does something with the file, on the writer's thread. */
    <T> CompletableFuture<T> with(Function<LineFile, T> work) {
        return CompletableFuture.supplyAsync(() -> work.apply(file), thread);
    }

    /** Goes on in a new segment in a folder; see {@link LineFile#continueIn}. */
    CompletableFuture<Access> continueIn(Path folder) {
        return CompletableFuture.supplyAsync(() -> goOn(folder), thread);
    }

    /** Writes what was asked for before, then closes the file and ends; done when the locks are given up. */
    CompletableFuture<Void> close() {
        CompletableFuture<Void> closed = CompletableFuture.runAsync(() -> file.close(), thread);
        thread.shutdown();
        return closed;
    }

    private Access goOn(Path folder) {
        Access opening = file.continueIn(folder);
        if (opening instanceof Access.Opened) {
            file = ((Access.Opened) opening).file();
        }
        return opening;
    }
}
