package screedbook.diary;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** Things being read by some threads ahead of the one that takes them, in their order; never many at once. */
public final class Ahead implements AutoCloseable {
    private final int threads;
    private final ExecutorService readers;

    private record One<T, R>(T thing, Future<R> read) {}

    /** As many threads as pay on this machine. */
    public Ahead() {
        this(Math.min(4, Runtime.getRuntime().availableProcessors()));
    }

    public Ahead(int threads) {
        this.threads = threads;
        this.readers = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "reader");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Reads every thing and gives each with what was read, in their order, on the thread that asks.
     *
     * @param reading may run on several threads at once
     */
    public <T, R> void each(Iterable<T> things, Function<T, R> reading, BiConsumer<T, R> taken) {
        Deque<One<T, R>> ahead = new ArrayDeque<>();
        for (T thing : things) {
            ahead.add(new One<>(thing, readers.submit(() -> reading.apply(thing))));
            if (ahead.size() > 2 * threads) {
                take(ahead.remove(), taken);
            }
        }
        while (!ahead.isEmpty()) {
            take(ahead.remove(), taken);
        }
    }

    private static <T, R> void take(One<T, R> one, BiConsumer<T, R> taken) {
        try {
            taken.accept(one.thing(), one.read().get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the reading was cut short", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException mistake ? mistake : new IllegalStateException(e.getCause());
        }
    }

    @Override
    public void close() {
        readers.shutdownNow();
    }
}
