package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Finding;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.Verify;
import screedbook.entry.Aside;
import screedbook.entry.Line;
import screedbook.entry.Note;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/**
 * A laptop's clock that jumps in mid-shift: lines keep their order, what can be seen of it is told, nothing is
 * rewritten. The example's job is in Denver; when clocks change there: 15 USC 260a, from memory, and the JDK's zone data.
 */
class ClockJumpTest {
    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void makeTheJob() throws IOException {
        folder = temporary.resolve("job");
        JobFolder.make(folder);
    }

    /** One sitting: the shift is opened and a note is written while the clock stands there. */
    private void sitting(ShiftId shift, Clock clock) {
        Hands hands = new Hands(folder, "paver", "screedbook", clock);
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        hands.carryOut(new Effect.Open(shift, "AB", true), told::add);
        Note note = new Note(null, "keyed at " + clock.instant(), null, null, null, null, null);
        hands.carryOut(new Effect.Write(List.of(new Unwritten(null, "AB", Source.LIVE, note, Aside.NONE))), told::add);
        hands.goodbye();
        assertThat(told.get(told.size() - 1)).isInstanceOf(Msg.Wrote.class);
    }

    private ShiftFile after(String shift, String... clocks) {
        ShiftId id = ShiftId.of(shift);
        for (String clock : clocks) {
            OffsetDateTime now = OffsetDateTime.parse(clock);
            sitting(id, Clock.fixed(now.toInstant(), now.getOffset()));
        }
        ShiftFile file = Shelf.at(folder).shift(id);
        assertThat(file.read().damages()).isEmpty();
        assertThat(Verify.of(JobFolder.at(folder)).sound()).isTrue();
        assertThat(lines(file).stream().map(Line::n))
                .as("the order is the number's")
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, lines(file).size()).boxed().toList());
        return file;
    }

    private static List<Line> lines(ShiftFile file) {
        return file.read().books().get(0).lines().stream().map(Line.class::cast).toList();
    }

    private static List<String> keyed(ShiftFile file) {
        return lines(file).stream()
                .map(line -> line.keyed().toString())
                .distinct()
                .toList();
    }

    private static List<screedbook.entry.Clock> clocks(ShiftFile file) {
        return lines(file).stream()
                .filter(line -> line.entry() instanceof screedbook.entry.Clock)
                .map(line -> (screedbook.entry.Clock) line.entry())
                .toList();
    }

    private static List<String> rules(ShiftFile file) {
        return file.findings().stream().map(Finding::rule).toList();
    }

    @Test
    void aClockYearsAheadIsMarkedAndItsWayBackIsALine() {
        ShiftFile file = after(
                "2026-06-03-day",
                "2026-06-03T07:00:00-06:00",
                "2031-01-01T00:00:00-07:00",
                "2026-06-03T09:00:00-06:00");

        assertThat(keyed(file))
                .containsExactly("2026-06-03T07:00-06:00", "2031-01-01T00:00-07:00", "2026-06-03T09:00-06:00");
        assertThat(clocks(file)).singleElement().satisfies(clock -> {
            assertThat(clock.was()).isEqualTo("2031-01-01T00:00-07:00");
            assertThat(clock.now()).isEqualTo("2026-06-03T09:00-06:00");
        });
        assertThat(rules(file)).contains("clock-changed");
    }

    @Test
    void aShiftThatWasBegunWithADeadBatteryIsMarkedAndKeepsItsLines() {
        ShiftFile file = after("2026-06-03-day", "1970-01-01T00:00:10-07:00", "2026-06-03T07:00:00-06:00");

        assertThat(keyed(file)).containsExactly("1970-01-01T00:00:10-07:00", "2026-06-03T07:00-06:00");
        assertThat(rules(file)).contains("opened-on-other-date", "shift-length");
    }

    /** 1:40 comes twice: the second is later, although the wall shows less than before. */
    @Test
    void whenClocksGoBackAnHourNothingIsTakenForAJump() {
        ShiftFile file = after(
                "2026-10-31-night",
                "2026-10-31T20:00:00-06:00",
                "2026-11-01T01:40:00-06:00",
                "2026-11-01T01:10:00-07:00");

        assertThat(keyed(file))
                .containsExactly("2026-10-31T20:00-06:00", "2026-11-01T01:40-06:00", "2026-11-01T01:10-07:00");
        assertThat(clocks(file)).isEmpty();
        assertThat(rules(file)).doesNotContain("clock-back", "clock-changed", "shift-length");
    }

    @Test
    void whenClocksGoForwardAnHourNothingIsTakenForAJump() {
        ShiftFile file = after(
                "2026-03-07-night",
                "2026-03-07T20:00:00-07:00",
                "2026-03-08T01:55:00-07:00",
                "2026-03-08T03:05:00-06:00");

        assertThat(keyed(file))
                .containsExactly("2026-03-07T20:00-07:00", "2026-03-08T01:55-07:00", "2026-03-08T03:05-06:00");
        assertThat(clocks(file)).isEmpty();
        assertThat(rules(file)).doesNotContain("clock-back", "clock-changed", "shift-length");
    }

    /** The laptop takes the zone of the next tower on the road; the lines stay in the job's. */
    @Test
    void aLaptopThatChangesItsZoneOnTheRoadWritesTheJobsTime() {
        ShiftId id = ShiftId.of("2026-06-03-day");
        sitting(id, at("2026-06-03T07:00:00-06:00", "America/Denver"));
        sitting(id, at("2026-06-03T07:10:00-06:00", "America/Chicago"));
        sitting(id, at("2026-06-03T07:20:00-06:00", "Pacific/Kiritimati"));
        ShiftFile file = Shelf.at(folder).shift(id);

        assertThat(keyed(file))
                .containsExactly("2026-06-03T07:00-06:00", "2026-06-03T07:10-06:00", "2026-06-03T07:20-06:00");
        assertThat(clocks(file)).isEmpty();
        assertThat(rules(file)).doesNotContain("clock-back", "clock-changed");
    }

    private static Clock at(String moment, String zone) {
        return Clock.fixed(OffsetDateTime.parse(moment).toInstant(), ZoneId.of(zone));
    }
}
