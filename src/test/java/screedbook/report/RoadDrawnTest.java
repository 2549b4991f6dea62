package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;

/** The road on the page. */
class RoadDrawnTest {
    private static Shift laid(String from, String to) {
        return Shift.day()
                .key(Kind.OPENING, null, "format", "1", "zone", "America/Boise")
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
                        from,
                        "to_sta",
                        to);
    }

    private static String page(Shift shift) {
        return DayPage.text(Sample.paper(shift, Jobs.us()));
    }

    @Test
    void theRoadStandsOnThePageWithWhatItsSignsMean() {
        Shift shift = laid("12+00", "22+00")
                .key(Kind.DEPTH, "08:20", "thickness_in", "2.1", "place_sta", "14+40", "pull", "A", "lift", "2");

        assertThat(page(shift)).contains("""

                ROAD BY PULL AND STATION
                 A lift 2 > ----------
                              D
                            --------+-
                                  20+00
                 - paved, no tack noted   D depth   a column is 100 ft
                """);
    }

    @Test
    void aLongRoadIsPrintedInPiecesOfThePage() {
        List<String> lines = page(laid("12+00", "412+00")).lines().toList();
        long strips = lines.stream().filter(l -> l.startsWith(" A lift 2 > --")).count();

        assertThat(strips).isEqualTo(3);
        assertThat(lines).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    }

    @Test
    void whereNoStationIsNotedNothingIsDrawn() {
        assertThat(page(Shift.day().ticket("08:00", "101", "20.00", "pull", "A")))
                .doesNotContain("ROAD BY PULL AND STATION");
    }

    /** 12 ft over 150 ft and 24 ft over 150 ft: 18 ft on the average. */
    @Test
    void thePageSaysThatAPullHasPartsOfItsOwnWidth() {
        Shift shift = laid("12+00", "15+00")
                .key(
                        Kind.AREA,
                        "08:30",
                        "shape",
                        "strip",
                        "from_sta",
                        "13+50",
                        "to_sta",
                        "15+00",
                        "width_from_ft",
                        "24",
                        "pull",
                        "A",
                        "lift",
                        "2");

        assertThat(page(shift)).contains("A lift 2: the area has 1 part of its own; average width 18.00 ft");
    }
}
