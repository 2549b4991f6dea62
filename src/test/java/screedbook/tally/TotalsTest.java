package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.job.Job;

class TotalsTest {
    private final Job job = Jobs.us();

    /**
     * Worked by hand. Lines: 1 to 6 tickets.
     * <pre>
     * 1  20.00 placed A 12+00 to 13+00
     * 2  22.00 placed A, to 15+00; line 7 gives 4.00 of it to pull B, 12+00 to 12+40
     * 3  21.00 part placed, 5.00 not placed: 16.00, A 15+00 to 16+00
     * 4  20.50 rejected
     * 5  19.00 void at the plant
     * 6  18.00 placed A, to 17+00; line 8 throws 1.50 of it away
     * 9  waste of the shift 0.50
     * received  20.00 + 22.00 + 21.00 + 20.50 + 18.00          = 101.50
     * placed    20.00 + 22.00 + 16.00 + 0 + 18.00               =  76.00
     * for pay   76.00 - 1.50 - 0.50                             =  74.00
     * pull A    20.00 + 18.00 + 16.00 + 16.50                   =  70.50, 12+00 to 17+00 = 500 ft
     * area      500 x 12 / 9 = 666.67; rate 70.50 x 2000 / 666.67 = 211.5; target 2.00 x 110 = 220; 96.1 %
     * thickness 211.5 / 110 = 1.92
     * pull B    4.00, 40 ft, 53.33 yd2, rate 150
     * an hour   placed but for the last (20 + 22 + 16 = 58.00) in 08:00 to 08:30 = 116
     * </pre>
     */
    private final Day day = Shift.day()
            .ticket(
                    "08:00",
                    "101",
                    "20.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    "12+00",
                    "to_sta",
                    "13+00",
                    "paver_degF",
                    "290")
            .ticket(
                    "08:10",
                    "102",
                    "22.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    "13+00",
                    "to_sta",
                    "15+00",
                    "paver_degF",
                    "281")
            .ticket(
                    "08:20",
                    "103",
                    "21.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    "15+00",
                    "fate",
                    "part-placed",
                    "returned_ston",
                    "5.00",
                    "paver_degF",
                    "284")
            .ticket("08:22", "104", "20.50", "mix", "12.5-70A", "fate", "rejected", "paver_degF", "231")
            .ticket("08:24", "105", "19.00", "mix", "12.5-70A", "fate", "void-at-plant")
            .ticket(
                    "08:30",
                    "106",
                    "18.00",
                    "mix",
                    "12.5-70A",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    "16+00",
                    "to_sta",
                    "17+00")
            .key(
                    Kind.PART,
                    null,
                    "of",
                    "paver/2",
                    "share_ston",
                    "4.00",
                    "pull",
                    "B",
                    "from_sta",
                    "12+00",
                    "to_sta",
                    "12+40")
            .key(Kind.WASTE, null, "of", "paver/6", "weight_ston", "1.50", "reason", "hopper wing")
            .key(Kind.WASTE, null, "weight_ston", "0.50", "mix", "12.5-70A", "reason", "cleanup")
            .read();

    private final Totals totals = Totals.of(day, job, ToDate.NONE, Shift.day().at("08:40"));

    private String text(String id) {
        return totals.figure(id).orElseThrow(() -> new AssertionError(id)).text();
    }

    @Test
    void loadsAndTonsFollowTheirFate() {
        assertThat(text("loads")).isEqualTo("5");
        assertThat(text("received-tons")).isEqualTo("101.50 T");
        assertThat(text("placed-tons")).isEqualTo("76.00 T");
        assertThat(text("pay-tons")).isEqualTo("74.00 T");
        assertThat(text("tons-per-hour")).isEqualTo("116 T/h");
        assertThat(text("received-tons.fate.rejected")).isEqualTo("20.50 T");
        assertThat(text("received-tons.fate.void-at-plant")).isEqualTo("0.00 T");
    }

    @Test
    void aPartIsLaidInItsOwnPullAndTheTicketKeepsTheRest() {
        assertThat(text("laid-tons.pull.A lift 2")).isEqualTo("70.50 T");
        assertThat(text("laid-tons.pull.B lift 2")).isEqualTo("4.00 T");
        assertThat(text("length.A lift 2")).isEqualTo("500 ft");
        assertThat(text("area.A lift 2")).isEqualTo("667 yd²");
        assertThat(text("spread-rate.A lift 2")).isEqualTo("211.5 lb/yd²");
        assertThat(text("spread-target.A lift 2")).isEqualTo("220.0 lb/yd²");
        assertThat(text("spread-percent.A lift 2")).isEqualTo("96.1 %");
        assertThat(text("equivalent-thickness.A lift 2")).isEqualTo("1.92 in");
        assertThat(text("spread-rate.B lift 2")).isEqualTo("150.0 lb/yd²");
    }

    /** In one lift a load and its part in another pull are two: the words say so, and the shift's loads stay whole. */
    @Test
    void wherePartsAreCountedWithLoadsTheLabelSaysSo() {
        assertThat(label("loads")).isEqualTo("loads");
        assertThat(label("loads.pull.A lift 2")).isEqualTo("A lift 2 loads");
        assertThat(label("loads.pull.B lift 2")).isEqualTo("B lift 2 loads and parts");
        assertThat(label("loads.lift.lift 2")).isEqualTo("lift 2 loads and parts");
    }

    private String label(String id) {
        return totals.figure(id).map(Figure::label).orElse("none");
    }

    @Test
    void temperaturesOfLoadsNotPlacedStandApart() {
        assertThat(text("paver-temperature-least.12.5-70A")).isEqualTo("281 °F");
        assertThat(text("paver-temperature-mean.12.5-70A")).isEqualTo("285.0 °F");
        assertThat(text("paver-temperature-most.12.5-70A")).isEqualTo("290 °F");
        assertThat(text("paver-temperature-least.12.5-70A not placed")).isEqualTo("231 °F");
    }

    @Test
    void everyFigureCanBeOpened() {
        assertThat(totals.sections())
                .isNotEmpty()
                .allSatisfy(s -> assertThat(s.figures()).isNotEmpty().allSatisfy(f -> {
                    assertThat(f.working().formula()).isNotBlank();
                    assertThat(f.working().source()).isNotBlank();
                }));
        List<String> ids = totals.sections().stream()
                .flatMap(s -> s.figures().stream())
                .map(Figure::id)
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void toDateIsWhatTheShiftsBeforeCameToAndThisOne() {
        ToDate before = ToDate.NONE.and(day, job);
        Totals next = Totals.of(day, job, before, Shift.day().at("08:40"));
        assertThat(next.figure("pay-previous.401-1").orElseThrow().value()).isEqualByComparingTo("74.00");
        assertThat(next.figure("pay-to-date.401-1").orElseThrow().value())
                .isEqualByComparingTo(new BigDecimal("148.00"));
    }
}
