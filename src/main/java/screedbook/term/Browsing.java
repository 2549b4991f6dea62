package screedbook.term;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.Recall;
import screedbook.entry.ShiftId;
import screedbook.season.Hit;
import screedbook.season.Search;
import screedbook.season.SeasonLines;
import screedbook.season.Sought;
import screedbook.shelf.Shelf;

/**
 * What is looked through beside the keeping of a shift: the season, and what is sought in it. Each has a thread of its
 * own that only reads, so that no entry waits for it; of several askings the newest is answered.
 */
final class Browsing {
    private final Supplier<Optional<Recall>> recall;
    private final Asked season = new Asked("season");
    private final Asked find = new Asked("find");

    /** One kind of asking: while it is answered, a newer one ends the older. */
    private static final class Asked {
        private final ExecutorService thread;
        private final AtomicInteger newest = new AtomicInteger();

        Asked(String name) {
            thread = Executors.newSingleThreadExecutor(work -> {
                Thread reader = new Thread(work, name);
                reader.setDaemon(true);
                return reader;
            });
        }

        void answer(Consumer<Msg> post, Consumer<BooleanSupplier> work) {
            int mine = newest.incrementAndGet();
            if (thread.isShutdown()) {
                return;
            }
            thread.execute(() -> {
                try {
                    work.accept(() -> newest.get() == mine);
                } catch (RuntimeException | LinkageError | OutOfMemoryError trouble) {
                    post.accept(new Msg.Said("the program met " + trouble + " while it read"));
                }
            });
        }

        void stop() {
            newest.incrementAndGet();
            thread.shutdown();
        }
    }

    /** @param recall asked once for each reading, on the thread that reads */
    Browsing(Supplier<Optional<Recall>> recall) {
        this.recall = recall;
    }

    /** Every shift of the job in short. */
    void season(JobFolder folder, Consumer<Msg> post) {
        season.answer(post, on -> {
            if (on.getAsBoolean()) {
                List<ShiftId> all = folder.shifts();
                new SeasonLines(folder, recall.get()).tell(on, lines -> post.accept(new Msg.SeasonRead(all, lines)));
            }
        });
    }

    /** The newest shift comes first; within a shift the order of the lines. */
    void find(JobFolder folder, String words, Consumer<Msg> post) {
        find.answer(post, on -> {
            Sought sought = Sought.of(words);
            List<Msg.Match> matches = new ArrayList<>();
            Shelf listed = Shelf.of(folder.listed());
            List<ShiftId> shifts = new ArrayList<>(listed.shifts());
            Collections.reverse(shifts);
            int left = shifts.size();
            if (left == 0) {
                post.accept(new Msg.Found(words, List.of()));
            }
            for (ShiftId id : shifts) {
                if (!on.getAsBoolean()) {
                    return;
                }
                Search.shift(listed, id, sought).forEach(hit -> matches.add(new Msg.Match(id, hit.ref(), told(hit))));
                left--;
                boolean over = matches.size() >= Msg.Found.MOST;
                List<Msg.Match> shown = List.copyOf(over ? matches.subList(0, Msg.Found.MOST) : matches);
                post.accept(new Msg.Found(words, shown, over ? 0 : left));
                if (over) {
                    return;
                }
            }
        });
    }

    private static String told(Hit hit) {
        return (hit.struck() ? "struck  " : "") + hit.told();
    }

    void stop() {
        season.stop();
        find.stop();
    }
}
