package screedbook.term;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import screedbook.desk.Key;
import screedbook.desk.Look;

/**
 * Runs a program on one thread: takes what happened from one queue, brings the model up to date with all of it, then draws once.
 * It sleeps until something happens or the minute is over.
 */
final class Loop<M, G, E> {
    private static final long MINUTE = TimeUnit.MINUTES.toMillis(1);
    private static final Key SUSPEND = Key.ctrl("z");

    /** Where keys come from: waits for some; an empty list says that none will ever come again. */
    @FunctionalInterface
    interface Source {
        List<Key> next() throws IOException;
    }

    /** Something that has to do with the terminal and may meet its end. */
    @FunctionalInterface
    interface Act {
        void run() throws IOException;
    }

    private final Program<M, G, E> program;
    private final BiConsumer<E, Consumer<G>> carryOut;
    private final Clock clock;
    private final Painter painter;
    private final Act suspend;
    private final boolean colour;

    private final BlockingQueue<Act> queue = new LinkedBlockingQueue<>();
    private final Semaphore readOn = new Semaphore(0);

    private M model;
    private M drawn;
    private Look drawnLook;
    private TerminalSize size;
    private ZonedDateTime minute;
    private boolean keysTaken;
    private boolean stopped;

    /**
     * @param carryOut does an effect, or hands it to a thread that does, and posts what came of it as messages; must not wait
     * @param suspend leaves the terminal to the shell and returns when the program is wanted again
     * @param colour whether colours may be shown at all
     */
    Loop(
            Program<M, G, E> program,
            BiConsumer<E, Consumer<G>> carryOut,
            Clock clock,
            Painter painter,
            Act suspend,
            boolean colour) {
        this.program = program;
        this.carryOut = carryOut;
        this.clock = clock;
        this.painter = painter;
        this.suspend = suspend;
        this.colour = colour;
    }

    /** Runs until the program is over, {@link #stop()} is called, or no key can come any more. */
    void run(Source source) throws IOException {
        Thread reader = new Thread(() -> read(source), "keys");
        reader.setDaemon(true);
        reader.start();
        try {
            start();
            while (!ended()) {
                step(take());
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        } finally {
            reader.interrupt();
        }
    }

    /** A message from another thread, say that a line is on the disk. */
    void post(G message) {
        queue.add(() -> tell(message));
    }

    /** The terminal may have another size now. */
    void sizeMayHaveChanged() {
        queue.add(this::measure);
    }

    /** Something is to be done to the terminal, after which all must be painted anew. */
    void postThenPaintAll(Act act) {
        queue.add(() -> actThenPaintAll(act));
    }

    /** Ends the loop at the next occasion, without drawing again. */
    void stop() {
        queue.add(() -> stopped = true);
    }

    /** Draws for the first time. */
    void start() throws IOException {
        accept(program.start());
        measure();
        step(() -> {});
    }

    /** Brings the model up to date with this and all that waits behind it, then draws once, if there is something new to see. */
    void step(Act first) throws IOException {
        for (Act next = first; next != null && !ended(); next = queue.poll()) {
            lookAtTheClock();
            next.run();
        }
        if (!ended()) {
            lookAtTheClock();
            draw();
            letTheReaderReadOn();
        }
    }

    /** Waits for what happens next, but not beyond the end of the minute. */
    Act take() throws InterruptedException {
        Act next = queue.poll(MINUTE - Math.floorMod(clock.millis(), MINUTE), TimeUnit.MILLISECONDS);
        return next == null ? () -> {} : next;
    }

    private boolean ended() {
        return stopped || program.over().test(model);
    }

    private void keys(List<Key> keys) throws IOException {
        keysTaken = true;
        for (Key key : keys) {
            if (ended()) {
                return;
            }
            if (key.equals(SUSPEND)) {
                actThenPaintAll(suspend);
                lookAtTheClock();
            } else {
                tell(program.key().apply(key));
            }
        }
    }

    private void tell(G message) {
        accept(program.update().apply(model, message));
    }

    private void accept(Program.Step<M, E> step) {
        model = step.model();
        step.effects().forEach(effect -> carryOut.accept(effect, this::post));
    }

    private void lookAtTheClock() {
        ZonedDateTime now = ZonedDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
        if (!now.equals(minute)) {
            minute = now;
            tell(program.minute().apply(now));
        }
    }

    private void actThenPaintAll(Act act) throws IOException {
        act.run();
        painter.forget();
        drawn = null;
        measure();
    }

    private void measure() throws IOException {
        TerminalSize now = painter.measure();
        if (!now.equals(size)) {
            size = now;
            drawn = null;
            tell(program.size().apply(now.getColumns(), now.getRows()));
        }
    }

    private void draw() throws IOException {
        Look look = colour ? program.look().apply(model) : Look.MONO;
        if (model != drawn || look != drawnLook) {
            painter.paint(program.view().draw(model, size.getColumns(), size.getRows()), look);
            drawn = model;
            drawnLook = look;
        }
    }

    private void letTheReaderReadOn() {
        if (keysTaken) {
            keysTaken = false;
            readOn.release();
        }
    }

    /** Reads one batch of keys and waits until it was dealt with: when the program is over, no read is pending that would hold it up. */
    private void read(Source source) {
        try {
            for (List<Key> batch = source.next(); !batch.isEmpty(); batch = source.next()) {
                List<Key> keys = batch;
                queue.add(() -> keys(keys));
                readOn.acquire();
            }
            stop();
        } catch (IOException terminalGone) {
            stop();
        } catch (InterruptedException over) {
            // The loop has ended; nobody waits for another key.
        } catch (RuntimeException | Error unexpected) {
            queue.add(() -> {
                throw new IllegalStateException("reading a key", unexpected);
            });
        }
    }
}
