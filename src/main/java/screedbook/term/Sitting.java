package screedbook.term;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/** One sitting at the terminal: from the moment the screen is taken until it is given back as it was found, however it ends. */
public final class Sitting {
    private static final Signal STOP_FOR_NOW = new Signal("TSTP");
    /** How long a shutdown waits for the program to come to its end, in seconds. */
    private static final int GRACE = 2;

    private final Tty tty;

    private Sitting(Tty tty) {
        this.tty = tty;
    }

    /**
     * Runs the program on the calling thread until it is over, the terminal is gone, or the machine is told to stop (INT, TERM, HUP:
     * the program then ends as usual, without a further drawing). Ctrl-Z hands the terminal back to the shell for a while. NO_COLOR, if
     * it is set to anything, keeps all colour off the screen (no-color.org).
     *
     * @param carryOut does an effect, or hands it to a thread that does, and posts what came of it as messages; called on the calling
     *     thread, must not wait
     * @param goodbye called once when the program is over and the terminal still ours, say to wait for the last line to reach the disk
     * @param clock the time and zone that the program is told
     * @throws IOException if there is no terminal, or it goes away while being drawn on
     */
    public static <M, G, E> void hold(
            Program<M, G, E> program, BiConsumer<E, Consumer<G>> carryOut, Runnable goodbye, Clock clock)
            throws IOException {
        CountDownLatch left = new CountDownLatch(1);
        try (Tty tty = Tty.open()) {
            Sitting sitting = new Sitting(tty);
            Painter painter = new Painter(tty);
            Loop<M, G, E> loop =
                    new Loop<>(program, carryOut, clock, painter, sitting::suspend, colour(System.getenv()));
            atShutdown(loop, left);
            sitting.listen(loop);
            try {
                loop.run(tty::nextKeys);
            } finally {
                goodbye.run();
            }
        } finally {
            left.countDown();
        }
    }

    /**
     * The same in a window. Its close button ends the program as usual; nothing suspends it.
     *
     * @throws IOException if no window can be shown
     */
    public static <M, G, E> void holdInWindow(
            String title, Program<M, G, E> program, BiConsumer<E, Consumer<G>> carryOut, Runnable goodbye, Clock clock)
            throws IOException {
        CountDownLatch left = new CountDownLatch(1);
        try (Window window = Window.open(title)) {
            Painter painter = new Painter(window.terminal());
            Loop<M, G, E> loop = new Loop<>(program, carryOut, clock, painter, () -> {}, colour(System.getenv()));
            atShutdown(loop, left);
            window.terminal().addResizeListener((terminal, size) -> loop.sizeMayHaveChanged());
            try {
                loop.run(window::nextKeys);
            } finally {
                goodbye.run();
            }
        } finally {
            left.countDown();
        }
    }

    /** Whether this process has a terminal to sit down at. */
    static boolean hasTerminal() {
        return Tty.there();
    }

    static boolean colour(Map<String, String> environment) {
        return environment.getOrDefault("NO_COLOR", "").isEmpty();
    }

    /** A stop from outside ends the program as usual, and the process only after that. */
    private static void atShutdown(Loop<?, ?, ?> loop, CountDownLatch left) {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            loop.stop();
            try {
                left.await(GRACE, TimeUnit.SECONDS);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }));
    }

    private void listen(Loop<?, ?, ?> loop) {
        Signal.handle(new Signal("WINCH"), signal -> {
            tty.sizeMayHaveChanged();
            loop.sizeMayHaveChanged();
        });
        Signal.handle(STOP_FOR_NOW, signal -> loop.postThenPaintAll(this::suspend));
        Signal.handle(new Signal("CONT"), signal -> loop.postThenPaintAll(tty::comeBack));
    }

    /**
     * Stops the whole job, as the terminal itself would on Ctrl-Z, and returns when the shell continues it. Where no shell could
     * continue it, the system does not stop it, and it goes on at once.
     */
    private void suspend() throws IOException {
        tty.leave();
        SignalHandler ours = Signal.handle(STOP_FOR_NOW, SignalHandler.SIG_DFL);
        try {
            new ProcessBuilder(List.of("sh", "-c", "kill -TSTP 0")).start().waitFor();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        } finally {
            Signal.handle(STOP_FOR_NOW, ours);
            tty.comeBack();
        }
    }
}
