package screedbook.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Finding;
import screedbook.diary.JobFolder;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;

/** What earlier shifts paved, read from their diaries, stands behind the shift that is kept now. */
class PavedBeforeTest {
    private static final List<String> RULES =
            List.of("paved-before", "paved-twice", "gap-to-last-shift", "station-beyond-job");

    @TempDir
    Path folder;

    private JobFolder job;

    @BeforeEach
    void twoShiftsArePaved() throws IOException {
        job = KeptShift.job(folder);
        KeptShift.opened(job, "2026-06-02-day", "paver")
                .key(Kind.TICKET, "07:00", load("101", "A", "10+00", "20+00"))
                .closed();
        KeptShift.opened(job, "2026-06-03-day", "paver")
                .key(Kind.TICKET, "07:00", load("102", "A", "20+00", "30+00"))
                .key(Kind.TICKET, "07:10", load("103", "B", "10+00", "15+00"))
                .closed();
    }

    private static Map<String, Object> load(String number, String pull, String from, String to) {
        Map<String, Object> load = new HashMap<>(Map.of(
                "plant",
                "Quarry Road",
                "number",
                number,
                "truck",
                "T104",
                "mix",
                "12.5-70A",
                "net_ston",
                new BigDecimal("20.00"),
                "pull",
                pull,
                "lift",
                BigDecimal.valueOf(2)));
        load.put("from_sta", from);
        load.put("to_sta", to);
        return load;
    }

    private List<String> found(String pull, String from, String to) throws IOException {
        KeptShift.opened(job, "2026-06-04-day", "paver")
                .key(Kind.TICKET, "07:00", load("104", pull, from, to))
                .closed();
        return Shelf.at(folder).shift(ShiftId.of("2026-06-04-day")).findings().stream()
                .filter(f -> RULES.contains(f.rule()))
                .map(f -> f.rule() + ": " + f.seen())
                .toList();
    }

    @Test
    void aPullThatGoesOnWhereItEndedIsNotSpokenOf() throws IOException {
        assertThat(found("A", "30+00", "41+00")).isEmpty();
    }

    @Test
    @DisplayName("row 62: a gap to the end of the shift before has its length")
    void aGapToTheEndOfTheShiftBeforeHasItsLength() throws IOException {
        assertThat(found("A", "30+50", "41+00"))
                .containsExactly("gap-to-last-shift: A lift 2 begins at 30+50, 2026-06-03-day ended at 30+00: 50 ft"
                        + " between them not paved");
    }

    @Test
    @DisplayName("row 62: an overlap with the shift before has its length")
    void anOverlapWithTheShiftBeforeHasItsLength() throws IOException {
        assertThat(found("A", "29+50", "41+00"))
                .containsExactly("paved-before: A lift 2: 29+50 to 30+00 (50 ft) was paved in 2026-06-03-day");
    }

    @Test
    @DisplayName("row 63: a lane keyed for another is seen where it was paved already")
    void aLaneKeyedForAnotherIsSeenWhereItWasPavedAlready() throws IOException {
        assertThat(found("A", "15+00", "26+00"))
                .containsExactly("paved-before: A lift 2: 15+00 to 26+00 (1100 ft) was paved in 2026-06-02-day and"
                        + " 2026-06-03-day");
    }

    @Test
    @DisplayName("row 63: what would be inside names the other pull of the lift")
    void whatWouldBeInsideNamesTheOtherPull() throws IOException {
        found("A", "15+00", "26+00");
        Finding finding = Shelf.at(folder).shift(ShiftId.of("2026-06-04-day")).findings().stream()
                .filter(f -> f.rule().equals("paved-before"))
                .findFirst()
                .orElseThrow();

        assertThat(finding.inside()).isEqualTo("a stretch that is not paved yet, or pull B, or another lift");
    }

    @Test
    void anotherLiftOfThePullIsAnotherGround() throws IOException {
        Map<String, Object> lower = load("104", "A", "15+00", "26+00");
        lower.put("lift", BigDecimal.ONE);
        KeptShift.opened(job, "2026-06-04-day", "paver")
                .key(Kind.TICKET, "07:00", lower)
                .closed();

        assertThat(Shelf.at(folder).shift(ShiftId.of("2026-06-04-day")).findings())
                .extracting(Finding::rule)
                .doesNotContain("paved-before", "gap-to-last-shift");
    }

    @Test
    void groundOfEarlierShiftsIsKnownBeforeThisOneLaysAnything() throws IOException {
        KeptShift.opened(job, "2026-06-04-day", "paver").close();

        assertThat(Shelf.at(folder)
                        .shift(ShiftId.of("2026-06-04-day"))
                        .totals()
                        .road()
                        .lanes())
                .extracting(lane -> lane.name() + " " + lane.ground().length().toPlainString() + " " + lane.now())
                .containsExactly("A lift 2 2000 false", "B lift 2 500 false");
    }
}
