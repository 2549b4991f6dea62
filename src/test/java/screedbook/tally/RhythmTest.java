package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.job.Checks;
import screedbook.job.Job;

/** First five loads of a mix, then one in five: Florida DOT Standard Specifications 330-6.3 (2010 package). */
class RhythmTest {
    private final Job job = Jobs.us();

    private static Shift loads(Shift shift, int from, int to, String mix, List<Integer> read) {
        for (int i = from; i <= to; i++) {
            List<String> pairs = new ArrayList<>(List.of("mix", mix));
            if (read.contains(i)) {
                pairs.addAll(List.of("paver_degF", "290"));
            }
            shift.ticket(
                    String.format("%02d:%02d", 8 + i / 12, i % 12 * 5), mix + i, "20.00", pairs.toArray(String[]::new));
        }
        return shift;
    }

    private List<Integer> due(Shift shift) {
        return Rhythm.turns(shift.read(), job).stream()
                .filter(Rhythm.Turn::due)
                .map(Rhythm.Turn::place)
                .toList();
    }

    @Test
    void theFirstFiveLoadsAreDueAndThenTheLastOfEachFive() {
        assertThat(due(loads(Shift.day(), 1, 17, "12.5-70A", List.of()))).containsExactly(1, 2, 3, 4, 5, 10, 15);
    }

    @Test
    void aReadingTakenEarlierInAFiveIsTheOneOfThatFive() {
        Shift shift = loads(Shift.day(), 1, 12, "12.5-70A", List.of(1, 2, 3, 4, 5, 7));
        assertThat(due(shift)).containsExactly(1, 2, 3, 4, 5);
        assertThat(Rhythm.loadsUntil(shift.read(), job, "12.5-70A")).isEqualTo(2);
        assertThat(due(loads(shift, 13, 15, "12.5-70A", List.of()))).containsExactly(1, 2, 3, 4, 5, 15);
    }

    @Test
    void theNextLoadIsDueAtTheStartAndInEachMixAnew() {
        Shift shift = Shift.day();
        assertThat(Rhythm.loadsUntil(shift.read(), job, "12.5-70A")).isZero();
        loads(shift, 1, 6, "12.5-70A", List.of(1, 2, 3, 4, 5, 6));
        assertThat(Rhythm.loadsUntil(shift.read(), job, "12.5-70A")).isEqualTo(8);
        assertThat(Rhythm.loadsUntil(shift.read(), job, "19-64")).isZero();
    }

    @Test
    void onlyPlacedLoadsTakeATurnAndTimeComesBeforeTheOrderOfKeying() {
        Shift shift = Shift.day()
                .ticket("09:00", "2", "20.00", "mix", "12.5-70A")
                .ticket("08:50", "1", "20.00", "mix", "12.5-70A")
                .ticket("08:55", "x", "20.00", "mix", "12.5-70A", "fate", "rejected")
                .ticket("09:05", "3", "20.00", "mix", "12.5-70A")
                .strike(4, "keyed on the wrong shift");
        List<Rhythm.Turn> turns = Rhythm.turns(shift.read(), job);
        assertThat(turns).extracting(t -> t.ticket().entry().paper().number()).containsExactly("1", "2");
        assertThat(turns).extracting(Rhythm.Turn::place).containsExactly(1, 2);
    }

    @Test
    void whatIsDueIsCountedAndSaid() {
        Shift shift = loads(Shift.day(), 1, 10, "12.5-70A", List.of(1, 2, 4, 5, 10));
        Due due = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00")).dues().stream()
                .filter(d -> d.id().equals("temperature.12.5-70A"))
                .findFirst()
                .orElseThrow();
        assertThat(due.asked()).isEqualTo(6);
        assertThat(due.done()).isEqualTo(5);
        assertThat(due.when()).isEqualTo("in 4 loads");
        assertThat(due.now()).isFalse();
    }

    /** Of loads 6 to 10 the seventh was read, of 11 to 15 none: seven wanted, six done. */
    @Test
    void aFiveThatWasReadEarlyCountsAsDone() {
        Shift shift = loads(Shift.day(), 1, 16, "12.5-70A", List.of(1, 2, 3, 4, 5, 7, 8));
        List<Rhythm.Turn> counts = Rhythm.turns(shift.read(), job).stream()
                .filter(Rhythm.Turn::counts)
                .toList();
        assertThat(counts).extracting(Rhythm.Turn::place).containsExactly(1, 2, 3, 4, 5, 7, 15);
        assertThat(counts).filteredOn(Rhythm.Turn::done).hasSize(6);
    }

    @Test
    void aJobThatAsksOnlyForTheFirstLoadsAsksForNoMore() {
        Checks c = Jobs.usChecks();
        Job few = Jobs.with(new Checks(
                2, 0, c.heatWhere(), c.surfaceEvery(), c.weatherEvery(), c.loadAge(), null, 1, c.grossAndTare(), null));
        Shift shift = loads(Shift.day(), 1, 4, "12.5-70A", List.of(1));
        assertThat(Rhythm.turns(shift.read(), few)).filteredOn(Rhythm.Turn::due).hasSize(2);
        assertThat(Rhythm.loadsUntil(shift.read(), few, "12.5-70A")).isEqualTo(Rhythm.NEVER);
    }
}
