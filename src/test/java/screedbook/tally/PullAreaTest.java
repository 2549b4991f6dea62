package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.Ref;

/** The area of a pull whose width is not everywhere the planned one. */
class PullAreaTest {
    private final Shift shift = Shift.day();

    /** Pull A of the test job is 12 ft wide; its target is 110 lb/yd2 for each inch of 2.00 in. */
    private Run run() {
        return totals().runs().get(0);
    }

    private Totals totals() {
        return Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("19:00"));
    }

    private PullAreaTest laid(String from, String to) {
        shift.ticket("08:00", "1001", "22.00", "pull", "A", "lift", "2", "from_sta", from, "to_sta", to);
        return this;
    }

    private PullAreaTest part(String shape, String from, String to, String... more) {
        List<String> pairs =
                new ArrayList<>(List.of("shape", shape, "pull", "A", "lift", "2", "from_sta", from, "to_sta", to));
        pairs.addAll(List.of(more));
        shift.key(Kind.AREA, "09:00", pairs.toArray(String[]::new));
        return this;
    }

    private String area() {
        return run().area().orElseThrow().shown(2).text();
    }

    /**
     * Own arithmetic on the trapezoid rule (printed with 50 and 70 over 100 make 6000 in an explainer of average ends):
     * 12 ft over 200 ft, from 12 to 24 ft over 150 ft, 24 ft over 100 ft are 2400 + 2700 + 2400 = 7500 ft2.
     */
    @Test
    @DisplayName("row 67: a lane, a taper and a wide lane make 7500 square feet")
    void aTaperAndAWideStripStandInPlaceOfThePlannedWidth() {
        laid("12+00", "16+50")
                .part("taper", "14+00", "15+50", "width_from_ft", "12", "width_to_ft", "24")
                .part("strip", "15+50", "16+50", "width_from_ft", "24");

        assertThat(area()).isEqualTo("833.33 yd²");
        assertThat(run().parts()).containsExactly(new Ref("paver", 2), new Ref("paver", 3));
        assertThat(totals().figure("average-width.A lift 2").orElseThrow().text())
                .isEqualTo("16.67 ft");
        assertThat(totals().left()).isEmpty();
    }

    /** 22.00 T over 833.33 yd2: 22 x 2000 / 833.33 = 52.8 lb/yd2. */
    @Test
    void theSpreadRateIsOfTheAreaWithItsParts() {
        laid("12+00", "16+50")
                .part("taper", "14+00", "15+50", "width_from_ft", "12", "width_to_ft", "24")
                .part("strip", "15+50", "16+50", "width_from_ft", "24");

        assertThat(run().rate().orElseThrow().shown(1).text()).isEqualTo("52.8 lb/yd²");
        assertThat(totals().figure("area.A lift 2").orElseThrow().working().put())
                .contains(
                        "paver/2 taper 14+00 to 15+50 in place: (12 ft + 24 ft) / 2 x 150 ft = 300.0 yd²",
                        "as planned 12 ft x 200 ft = 266.7 yd²",
                        "area 833.3 yd²");
    }

    /** Triangle b L / 2: 18 x 100 / 2 = 900 ft2 = 100 yd2; the lane is 12 x 300 = 3600 ft2 = 400 yd2. */
    @Test
    @DisplayName("row 67: a gore lies beside the pull and is half of its rectangle")
    void aGoreIsAddedBesideThePull() {
        laid("12+00", "15+00").part("gore", "13+00", "14+00", "width_to_ft", "18");

        assertThat(area()).isEqualTo("500.00 yd²");
    }

    /** 400 yd2 less 15 measured for an island, and 22 measured for an apron. */
    @Test
    @DisplayName("row 67: a measured area counts beside or is taken off, with how it is known")
    void aMeasuredAreaIsAddedOrTakenOff() {
        laid("12+00", "15+00")
                .part("other", "13+00", "13+20", "area_yd2", "15", "counts", "off", "basis", "island, tape")
                .part("other", "14+00", "14+40", "area_yd2", "22", "basis", "apron, wheel");

        assertThat(area()).isEqualTo("407.00 yd²");
    }

    /** The taper from 12 to 24 ft ends 50 ft ahead of the paver: 100 ft of it, from 12 to 20 ft, are 1600 ft2. */
    @Test
    void ofAPartInPlaceOnlyWhatWasLaidCounts() {
        laid("12+00", "15+00").part("taper", "14+00", "15+50", "width_from_ft", "12", "width_to_ft", "24");

        assertThat(area())
                .isEqualTo(new BigDecimal(2400 + 1600).divide(new BigDecimal(9), 2, RoundingMode.HALF_UP) + " yd²");
    }

    @Test
    void aTaperKeyedTowardLowerStationsIsTheSame() {
        laid("12+00", "15+00").part("taper", "15+50", "14+00", "width_from_ft", "24", "width_to_ft", "12");

        assertThat(area()).isEqualTo("444.44 yd²");
    }

    @Test
    void aPartOfWhichNothingIsKnownIsLeftOutAndNamed() {
        laid("12+00", "15+00").part("taper", "14+00", "14+50", "width_from_ft", "12");
        shift.key(Kind.AREA, "09:10", "shape", "other", "area_yd2", "20", "pull", "B", "lift", "2");
        shift.key(Kind.AREA, "09:11", "shape", "strip", "width_from_ft", "20", "pull", "A", "lift", "2");

        assertThat(area()).isEqualTo("400.00 yd²");
        assertThat(totals().left())
                .extracting(l -> l.of() + " " + l.why())
                .containsExactly(
                        "paver/2 neither area nor widths noted in ft",
                        "paver/3 pull B lift 2: nothing laid of which it could be a part",
                        "paver/4 in place of the planned width, and its stations are not noted");
    }

    @Test
    void withoutAPlaceThatWasLaidThereIsNoRate() {
        shift.ticket("08:00", "1001", "22.00", "pull", "A", "lift", "2");
        part("gore", "13+00", "14+00", "width_to_ft", "18");

        assertThat(run().rate()).isEmpty();
        assertThat(run().parts()).isEmpty();
    }

    @Test
    void aPullThatIsNotPlannedHasTheAreaOfItsPartsWhereTheyAreAllOfIt() {
        shift.ticket("08:00", "1001", "22.00", "pull", "C", "lift", "2", "from_sta", "12+00", "to_sta", "15+00");
        assertThat(run().area()).isEmpty();
        String[] strip = {"shape", "strip", "pull", "C", "from_sta", "12+00", "to_sta", "15+00", "width_from_ft", "6"};
        shift.key(Kind.AREA, "09:00", strip);

        assertThat(area()).isEqualTo("200.00 yd²");
    }

    /**
     * Widths that change foot by foot, added up foot by foot at the middle of each (the middle rule is exact where widths
     * change evenly), against the sum of the parts.
     */
    @RepeatedTest(100)
    void anyRowOfTapersIsTheSumOfItsFeet(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        int end = 200 + random.nextInt(400);
        laid("12+00", sta(1200 + end));
        BigDecimal[] wide = new BigDecimal[end];
        Arrays.fill(wide, new BigDecimal(12));
        int at = random.nextInt(60);
        for (int i = random.nextInt(1, 5); i > 0; i--) {
            int length = random.nextInt(1, 9) * 20;
            int a = random.nextInt(0, 30);
            int b = random.nextInt(0, 30);
            part("taper", sta(1200 + at), sta(1200 + at + length), "width_from_ft", "" + a, "width_to_ft", "" + b);
            for (int foot = 0; foot < length; foot++) {
                BigDecimal middle =
                        new BigDecimal(2 * foot + 1).divide(new BigDecimal(2 * length), MathContext.DECIMAL128);
                if (at + foot < end) {
                    wide[at + foot] = new BigDecimal(a).add(new BigDecimal(b - a).multiply(middle));
                }
            }
            at += length + random.nextInt(40);
        }
        BigDecimal feet = Arrays.stream(wide).reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(area()).isEqualTo(feet.divide(new BigDecimal(9), 2, RoundingMode.HALF_UP) + " yd²");
    }

    private static String sta(int feet) {
        return feet / 100 + "+" + String.format("%02d", feet % 100);
    }
}
