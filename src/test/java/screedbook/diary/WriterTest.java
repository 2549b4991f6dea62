package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WriterTest {
    @TempDir
    Path folder;

    private final BadDisk disk = new BadDisk();
    private final AtomicInteger n = new AtomicInteger();

    @Test
    void linesAskedForByManyThreadsFollowEachOther() throws Exception {
        LineFile file = Lines.open(folder);
        Writer writer = new Writer(file);
        List<CompletableFuture<Appended>> asked = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        for (int thread = 0; thread < 4; thread++) {
            threads.add(new Thread(() -> {
                for (int line = 0; line < 25; line++) {
                    synchronized (asked) {
                        asked.add(append(writer));
                    }
                }
            }));
        }
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        writer.close().get(30, TimeUnit.SECONDS);
        assertThat(asked).hasSize(100).allMatch(future -> future.join() instanceof Appended.Forced);
        Chain.Walk walk = Chain.walk(Files.readAllBytes(file.path()), Chain.NOTHING_BEFORE);
        assertThat(walk.asWritten()).isTrue();
        assertThat(walk.lines()).hasSize(100);
    }

    /** An interrupt in mid-write would close the channel for good: it never gets to the writing thread. */
    @Test
    void anInterruptedOrImpatientCallerDoesNotHarmTheFile() throws Exception {
        CountDownLatch writing = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        LineFile file = Lines.open(folder, disk);
        disk.beforeWrite = () -> {
            writing.countDown();
            await(goOn);
        };
        Writer writer = new Writer(file);
        CountDownLatch noticed = new CountDownLatch(1);
        Thread caller = new Thread(() -> {
            try {
                append(writer).get();
            } catch (InterruptedException e) {
                noticed.countDown();
            } catch (ExecutionException e) {
                throw new IllegalStateException(e);
            }
        });
        caller.start();
        assertThat(writing.await(30, TimeUnit.SECONDS)).isTrue();
        CompletableFuture<Appended> impatient = append(writer);
        caller.interrupt();
        assertThat(noticed.await(30, TimeUnit.SECONDS)).isTrue();
        impatient.cancel(true);
        CompletableFuture<Void> closed = writer.close();
        goOn.countDown();
        closed.get(30, TimeUnit.SECONDS);
        Chain.Walk walk = Chain.walk(Files.readAllBytes(file.path()), Chain.NOTHING_BEFORE);
        assertThat(walk.asWritten()).isTrue();
        assertThat(walk.lines()).isNotEmpty();
    }

    @Test
    void aSlowDiskHoldsUpNobodyButItself() throws Exception {
        CountDownLatch goOn = new CountDownLatch(1);
        LineFile file = Lines.open(folder, disk);
        disk.beforeWrite = () -> await(goOn);
        Writer writer = new Writer(file);
        CompletableFuture<Appended> asked = append(writer);
        assertThat(asked.isDone()).isFalse();
        goOn.countDown();
        assertThat(asked.get(30, TimeUnit.SECONDS)).isInstanceOf(Appended.Forced.class);
        writer.close().get(30, TimeUnit.SECONDS);
    }

    @Test
    void afterADeadDiskTheWriterGoesOnInTheNewSegment() throws Exception {
        Writer writer = new Writer(Lines.open(folder, disk));
        assertThat(append(writer).get()).isInstanceOf(Appended.Forced.class);
        disk.forceFails = true;
        assertThat(append(writer).get()).isInstanceOf(Appended.Refused.class);
        disk.forceFails = false;
        assertThat(writer.continueIn(folder.resolve("stick")).get()).isInstanceOf(Access.Opened.class);
        Appended appended = append(writer).get();
        assertThat(appended).isInstanceOf(Appended.Forced.class);
        assertThat(((Appended.Forced) appended).file()).isEqualTo("2026-06-03-night.paver-b.jsonl");
        writer.close().get(30, TimeUnit.SECONDS);
        Lines.open(folder).close();
    }

    private CompletableFuture<Appended> append(Writer writer) {
        return writer.append(head -> Lines.line(n.incrementAndGet(), head));
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new AssertionError("the writing thread was interrupted", e);
        }
    }
}
