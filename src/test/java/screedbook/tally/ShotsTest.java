package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;

class ShotsTest {
    private static Shift shot(Shift shift, String clock, String... pairs) {
        List<String> all = new ArrayList<>(List.of(
                "product",
                "CSS-1h",
                "distributor",
                "D7",
                "surface",
                "milled",
                "from_sta",
                "12+00",
                "to_sta",
                "21+00",
                "width_ft",
                "10"));
        all.addAll(List.of(pairs));
        return shift.key(Kind.TACK, clock, all.toArray(String[]::new));
    }

    private static Shift refill(Shift shift, String clock, String before, String after) {
        return shift.key(Kind.REFILL, clock, "distributor", "D7", "before_gal", before, "after_gal", after);
    }

    private static List<Shot> shots(Shift shift) {
        return Shots.of(shift.read(), Jobs.us());
    }

    private static Shot only(String... pairs) {
        return shots(shot(Shift.day(), "07:30", pairs)).get(0);
    }

    /** 60 gal at 60 °F on 900 x 10 / 9 = 1000 yd²: 0.060; 57 % of it 0.0342. No correction: it is noted as at 60 °F. */
    @Test
    void aVolumeThatIsAtSixtyAlreadyIsNotCorrectedAgain() {
        Shot shot = only("before_gal", "500", "after_gal", "440", "at60", "yes", "material_degF", "150");
        assertThat(shot.at60().text(2)).isEqualTo("60.00 gal");
        assertThat(shot.area().text(1)).isEqualTo("1000.0 yd²");
        assertThat(shot.applied().text(4)).isEqualTo("0.0600 gal/yd²");
        assertThat(shot.residual().text(4)).isEqualTo("0.0342 gal/yd²");
    }

    /** Factor 0.9800 at 140 °F: Asphalt Institute table for emulsified asphalts, as in calc. 60 x 0.98 = 58.8. */
    @Test
    void aWarmVolumeIsToldAtSixty() {
        Shot shot = only("before_gal", "500", "after_gal", "440", "material_degF", "140");
        assertThat(shot.factor()).isEqualByComparingTo("0.9800");
        assertThat(shot.at60().text(2)).isEqualTo("58.80 gal");
        assertThat(shot.corrected()).isTrue();
    }

    @Test
    void withoutItsTemperatureTheRateIsFromTheVolumeAsMeasuredAndSaysSo() {
        Shot shot = only("before_gal", "500", "after_gal", "440");
        assertThat(shot.at60().why()).isEqualTo("material temperature not noted");
        assertThat(shot.applied().text(3)).isEqualTo("0.060 gal/yd²");
        assertThat(shot.corrected()).isFalse();
    }

    @Test
    void aMeterRises() {
        assertThat(only("before_gal", "1000", "after_gal", "1060", "reading", "meter")
                        .volume()
                        .text(0))
                .isEqualTo("60 gal");
    }

    /** Table 0 in 0, 10 in 400, 20 in 1000: 15 in is 700, 12 in is 520, 5 in is 200. */
    @Test
    void aDepthGoesThroughTheStrappingTableOnStraightLines() {
        assertThat(only("depth_before_in", "15", "depth_after_in", "12")
                        .volume()
                        .text(1))
                .isEqualTo("180.0 gal");
        assertThat(only("depth_before_in", "12", "depth_after_in", "5").volume().text(1))
                .isEqualTo("320.0 gal");
        assertThat(only("depth_before_in", "21", "depth_after_in", "5").volume().why())
                .isEqualTo("depth 21 in is not in the strapping table");
    }

    /** 1:1 halves what stays: 0.060 x 0.57 / 2 = 0.0171. */
    @Test
    void waterThatWasAddedIsNoResidue() {
        assertThat(only(
                                "before_gal",
                                "500",
                                "after_gal",
                                "440",
                                "at60",
                                "yes",
                                "emulsion_parts",
                                "1",
                                "water_parts",
                                "1",
                                "diluted",
                                "yes")
                        .residual()
                        .text(4))
                .isEqualTo("0.0171 gal/yd²");
    }

    @Test
    void anUnknownRatioLeavesTheResidualOpen() {
        for (String diluted : List.of("yes", "ratio-unknown")) {
            Shot shot = only("before_gal", "500", "after_gal", "440", "diluted", diluted);
            assertThat(shot.residual().known()).isFalse();
            assertThat(shot.residual().why()).isEqualTo("diluted, and the ratio is not known");
        }
    }

    @Test
    void aRefillBetweenTwoShotsBelongsToNeither() {
        Shift shift = shot(Shift.day(), "07:30", "before_gal", "500", "after_gal", "440");
        shot(refill(shift, "07:40", "440", "900"), "07:50", "before_gal", "900", "after_gal", "850");
        assertThat(shots(shift)).extracting(s -> s.volume().text(0)).containsExactly("60 gal", "50 gal");
    }

    /** The shot begins at 440, where the one before ended; 440 - 100 + 900 - 850 = 390. */
    @Test
    void aRefillInTheMiddleOfAShotIsAddedToIt() {
        Shift shift = shot(Shift.day(), "07:30", "before_gal", "500", "after_gal", "440");
        shot(refill(shift, "07:40", "100", "900"), "07:50", "before_gal", "440", "after_gal", "850");
        assertThat(shots(shift)).extracting(s -> s.volume().text(0)).containsExactly("60 gal", "390 gal");
        assertThat(shots(shift).get(1).entries()).hasSize(2);
    }

    @Test
    void aRefillKeyedAfterTheShotStillExplainsTheReadingThatRose() {
        Shift shift = shot(Shift.day(), "07:30", "before_gal", "400", "after_gal", "850");
        refill(shift, "07:45", "380", "900");
        assertThat(shots(shift).get(0).volume().text(0)).isEqualTo("70 gal");
    }

    @Test
    void aReadingThatRoseWithoutARefillComesToNoVolume() {
        assertThat(only("before_gal", "400", "after_gal", "850").volume().why())
                .startsWith("the readings come to less than nothing");
    }

    /** 60 + 40 gal on 1000 + 500 yd²: 0.0667; the second shot has no width, its pull's 12 ft stand in: 375 ft. */
    @Test
    void shotsOnOneSurfaceAreOneRate() {
        Shift shift = shot(Shift.day(), "07:30", "before_gal", "500", "after_gal", "440", "at60", "yes");
        shift.key(
                Kind.TACK,
                "08:30",
                "product",
                "CSS-1h",
                "distributor",
                "D7",
                "surface",
                "milled",
                "from_sta",
                "21+00",
                "to_sta",
                "24+75",
                "pull",
                "A",
                "used_gal",
                "40",
                "at60",
                "yes");
        Totals totals = Totals.of(shift.read(), Jobs.us(), ToDate.NONE, shift.at("09:00"));
        assertThat(totals.figure("tack-volume.CSS-1h on milled").orElseThrow().text())
                .isEqualTo("100.0 gal");
        assertThat(totals.figure("tack-area.CSS-1h on milled").orElseThrow().text())
                .isEqualTo("1500 yd²");
        assertThat(totals.figure("tack-applied.CSS-1h on milled").orElseThrow().text())
                .isEqualTo("0.067 gal/yd²");
    }

    @Test
    void aFaceWithoutAWidthHasNoRate() {
        Shift shift = Shift.day()
                .key(
                        Kind.TACK,
                        "07:30",
                        "product",
                        "CSS-1h",
                        "face",
                        "longitudinal-joint",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "17+00",
                        "used_gal",
                        "5",
                        "at60",
                        "yes",
                        "pull",
                        "A");
        Shot shot = shots(shift).get(0);
        assertThat(shot.name()).isEqualTo("CSS-1h on longitudinal joint");
        assertThat(shot.applied().why()).isEqualTo("width not noted");
    }
}
