package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import screedbook.desk.Canvas;
import screedbook.desk.Key;
import screedbook.desk.Key.Code;
import screedbook.desk.Look;
import screedbook.desk.Style;

@Timeout(30)
class LoopTest {
    private static final ZonedDateTime NINE = ZonedDateTime.of(2026, 6, 3, 21, 0, 0, 0, ZoneOffset.UTC);

    private final Hands hands = new Hands();
    private final Paper paper = new Paper();
    private final List<String> told = new ArrayList<>();
    private final List<String> effects = new ArrayList<>();
    private final CountDownLatch firstDrawing = new CountDownLatch(1);
    private int drawings;
    private int suspended;
    private BiConsumer<String, Consumer<Object>> carryOut = (effect, post) -> effects.add(effect);

    /** A clock whose hands are set by the test. */
    private static final class Hands extends Clock {
        private volatile Instant now = NINE.toInstant();

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    /** The model is the text so far; a key is added to it, Enter is also an effect, Escape ends. */
    private Program<String, Object, String> program() {
        return new Program<>(
                new Program.Step<>("", List.of("read the day")),
                (text, message) -> {
                    told.add(message instanceof Key key ? key.code() + " " + key.text() : message.toString());
                    return message instanceof Key key ? after(text, key) : step(text);
                },
                (text, width, height) -> {
                    drawings++;
                    firstDrawing.countDown();
                    return Canvas.pen(width, height)
                            .put(0, 0, text, Style.PLAIN)
                            .done();
                },
                text -> Look.MONO,
                text -> text.endsWith("ESCAPE"),
                key -> key,
                minute -> minute.toLocalTime(),
                (width, height) -> width + " x " + height);
    }

    private static Program.Step<String, String> after(String text, Key key) {
        String next = text + (key.code() == Code.ESCAPE ? "ESCAPE" : key.text());
        return key.is(Code.ENTER) ? new Program.Step<>(next, List.of("write " + text)) : step(next);
    }

    private static Program.Step<String, String> step(String text) {
        return new Program.Step<>(text, List.of());
    }

    private Loop<String, Object, String> loop(Tty tty) throws IOException {
        return new Loop<>(
                program(),
                (effect, post) -> carryOut.accept(effect, post),
                hands,
                new Painter(tty),
                () -> suspended++,
                true);
    }

    /** Runs the whole loop over these keys; the first is not read before the first drawing is there. */
    private void run(Keyboard keyboard) throws IOException {
        try (StubTty tty = new StubTty(keyboard, paper)) {
            loop(tty).run(() -> {
                await(firstDrawing);
                return tty.nextKeys();
            });
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void twoHundredCharactersThatArriveTogetherAreOneDrawing() throws IOException {
        run(new Keyboard().then("7".repeat(200)));
        assertThat(told.stream().filter("CHAR 7"::equals)).hasSize(200);
        assertThat(drawings).as("one empty, one with the characters").isEqualTo(2);
    }

    @Test
    void aPasteOfTwoHundredCharactersIsOneMessageAndOneDrawing() throws IOException {
        run(new Keyboard().then("\033[200~" + "7".repeat(200) + "\033[201~"));
        assertThat(told).contains("PASTE " + "7".repeat(200));
        assertThat(drawings).isEqualTo(2);
    }

    @Test
    void timeAndSizeAreToldBeforeTheFirstKeyAndTheFirstEffectIsCarriedOut() throws IOException {
        run(new Keyboard().then("1"));
        assertThat(told).containsExactly("80 x 24", "21:00", "CHAR 1");
        assertThat(effects).containsExactly("read the day");
    }

    @Test
    void whatFollowsTheEndIsNotTold() throws IOException {
        run(new Keyboard().then("1\033").then("2"));
        run(new Keyboard().then("1\n\033").then("2"));
        assertThat(told).doesNotContain("CHAR 2");
        assertThat(effects).containsExactly("read the day", "read the day", "write 1");
    }

    @Test
    void afterTheLastKeyNobodyReadsOn() throws IOException {
        AtomicInteger reads = new AtomicInteger();
        try (StubTty tty = new StubTty(new Keyboard().then("1").then("\033").then("2"), paper)) {
            loop(tty).run(() -> {
                reads.incrementAndGet();
                return tty.nextKeys();
            });
        }
        assertThat(reads).hasValue(2);
    }

    @Test
    void theLoopEndsWhenNoKeyCanComeAnyMore() throws IOException {
        run(new Keyboard());
        assertThat(told).contains("21:00");
    }

    @Test
    void aBrokenReaderIsNotPassedOverInSilence() throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            assertThatThrownBy(() -> loop(tty).run(() -> {
                        throw new IllegalArgumentException("no such byte");
                    }))
                    .hasRootCauseMessage("no such byte");
        }
    }

    @Test
    void aTerminalThatIsGoneEndsTheLoop() throws IOException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            loop(tty).run(() -> {
                throw new IOException("Input/output error");
            });
        }
        assertThat(drawings).isLessThanOrEqualTo(1);
    }

    @Test
    void allThatWaitsIsDealtWithBeforeOneDrawing() throws IOException, InterruptedException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            loop.start();
            loop.post(Key.of("1"));
            loop.post(Key.of("2"));
            tty.answerSize("43 132");
            loop.sizeMayHaveChanged();
            loop.sizeMayHaveChanged();
            loop.post("line 61 on disk");
            paper.taken();
            loop.step(loop.take());
            assertThat(told).containsExactly("80 x 24", "21:00", "CHAR 1", "CHAR 2", "132 x 43", "line 61 on disk");
            assertThat(drawings).isEqualTo(2);
            assertThat(paper.taken()).hasSize(1);
        }
    }

    @Test
    void whereNothingChangedNothingIsDrawn() throws IOException, InterruptedException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            loop.start();
            paper.taken();
            loop.post("nothing of note");
            loop.sizeMayHaveChanged();
            loop.step(loop.take());
            assertThat(told).endsWith("nothing of note");
            assertThat(drawings).isEqualTo(1);
            assertThat(paper.taken()).isEmpty();
        }
    }

    @Test
    void anIdleLoopSleepsToTheEndOfTheMinute() throws IOException, InterruptedException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            hands.now = NINE.plusSeconds(59).plus(Duration.ofMillis(700)).toInstant();
            loop.start();
            long from = System.nanoTime();
            loop.take();
            assertThat(Duration.ofNanos(System.nanoTime() - from))
                    .isBetween(Duration.ofMillis(300), Duration.ofSeconds(5));
        }
    }

    @Test
    void anIdleLoopWaitsAndItsReaderWaitsToo() throws Exception {
        CountDownLatch reading = new CountDownLatch(1);
        CountDownLatch nobodyTypes = new CountDownLatch(1);
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            Thread desk = new Thread(() -> {
                try {
                    loop.run(() -> {
                        reading.countDown();
                        await(nobodyTypes);
                        return List.of();
                    });
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
            });
            desk.start();
            await(reading);
            await(firstDrawing);
            long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
            while (desk.getState() != Thread.State.TIMED_WAITING && System.nanoTime() < deadline) {
                Thread.onSpinWait();
            }
            assertThat(desk.getState()).isEqualTo(Thread.State.TIMED_WAITING);
            loop.stop();
            desk.join(TimeUnit.SECONDS.toMillis(20));
            assertThat(desk.isAlive()).isFalse();
            assertThat(drawings).isEqualTo(1);
            nobodyTypes.countDown();
        }
    }

    @Test
    void aKeyStruckAfterALongSleepKnowsTheTime() throws IOException, InterruptedException {
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            loop.start();
            hands.now = NINE.plusHours(2).plusSeconds(40).toInstant();
            loop.post(Key.of("1"));
            loop.step(loop.take());
            hands.now = NINE.plusHours(1).toInstant();
            loop.step(() -> {});
            assertThat(told).containsExactly("80 x 24", "21:00", "23:00", "CHAR 1", "22:00");
        }
    }

    @Test
    void ctrlZSuspendsAndAllIsPaintedAnew() throws IOException {
        run(new Keyboard().then("48218\u001A").then("9"));
        assertThat(suspended).isEqualTo(1);
        assertThat(told).contains("CHAR 8", "CHAR 9").noneMatch(message -> message.contains("z"));
        assertThat(drawings).isEqualTo(3);
    }

    @Test
    void whatAnEffectLeadsToComesBackAsAMessage() throws IOException, InterruptedException {
        carryOut = (effect, post) -> {
            effects.add(effect);
            post.accept("done: " + effect);
        };
        try (StubTty tty = new StubTty(new Keyboard(), paper)) {
            Loop<String, Object, String> loop = loop(tty);
            loop.start();
            loop.post(Key.of("6"));
            loop.post(Key.of(Code.ENTER));
            loop.step(loop.take());
            assertThat(told).contains("done: read the day").endsWith("CHAR 6", "ENTER ", "done: write 6");
        }
    }

    @Test
    void noColourIsAskedForByAnyValueButNone() {
        assertThat(Sitting.colour(Map.of())).isTrue();
        assertThat(Sitting.colour(Map.of("NO_COLOR", ""))).isTrue();
        assertThat(Sitting.colour(Map.of("NO_COLOR", "1"))).isFalse();
    }
}
