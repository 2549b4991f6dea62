package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Finding as it is typed. */
class FindCommandTest {
    @Test
    void aTicketIsToldWithJobShiftAndEntry() {
        Said said = Said.by("find", "demo-logs/harrow-bend", "--ticket", "48217");

        assertThat(said.exit()).isZero();
        assertThat(said.out()).startsWith("demo-logs/harrow-bend  2026-05-12-day  paver/27  ticket 48217");
    }

    @Test
    void csvHasOneEntryALine() {
        Said said = Said.by("find", "demo-logs/harrow-bend", "--finding", "outside", "--format", "csv");

        assertThat(said.out().lines().findFirst()).contains("\"job\",\"shift\",\"entry\",\"line\",\"struck\",\"told\"");
        assertThat(said.out().lines().skip(1)).isNotEmpty().allMatch(l -> l.startsWith("\"harrow-bend\","));
    }

    @Test
    void datesAloneFindEveryEntryOfTheirShifts() {
        Said said = Said.by("find", "demo-logs/harrow-bend", "--from", "2026-05-13", "--to", "2026-05-13");

        assertThat(said.exit()).isZero();
        assertThat(said.out().lines()).hasSize(6).allMatch(line -> line.contains("  2026-05-13-day  paver/"));
    }

    @Test
    void aWordThatNoFindingHasIsAMistake() {
        Said said = Said.by("find", "demo-logs", "--finding", "heat-at-plnt");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err())
                .isEqualTo("screedbook find: --finding heat-at-plnt is the word of no finding; right would be one of"
                        + " outside, missing, look-again, does-not-add-up, or a rule's, such as heat-at-paver\n");
        assertThat(Said.by("find", "demo-logs", "--finding", "look again").out())
                .contains("  look again: ");
    }

    @Test
    void nothingFoundIsSaidAndNothingAskedIsAMistake() {
        Said none = Said.by("find", "demo-logs", "--text", "zeppelin");

        assertThat(none.exit()).isZero();
        assertThat(none.out()).isEmpty();
        assertThat(none.err()).isEqualTo("screedbook find: nothing found\n");
        assertThat(Said.by("find", "demo-logs").exit()).isEqualTo(2);
        assertThat(Said.by("find", "demo-logs", "--station", "here").exit()).isEqualTo(2);
    }
}
