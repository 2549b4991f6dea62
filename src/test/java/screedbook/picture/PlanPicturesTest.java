package screedbook.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.check.CrossSection;
import screedbook.check.HeatBand;
import screedbook.diary.JobFolder;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** A planned road and its target temperatures as characters. */
class PlanPicturesTest {
    private static final Job JOB = JobFolder.at(Path.of("src", "test", "resources", "golden", "plan"))
            .job()
            .job()
            .orElseThrow();
    private static final CrossSection ROAD = CrossSection.of(JOB);
    private static final List<HeatBand> BANDS =
            HeatBand.all(JOB, SpecSheet.shipped("practice").orElseThrow());

    @ParameterizedTest
    @ValueSource(ints = {18, 40, 64, 79, 80, 119, 240})
    void everyLineIsExactlyAsWideAsAsked(int width) {
        assertThat(CrossSectionPicture.of(ROAD, Set.of(), width)).hasSize(6).allMatch(line -> line.length() == width);
        BANDS.forEach(
                band -> assertThat(HeatBandPicture.of(band, width)).hasSize(2).allMatch(l -> l.length() == width));
    }

    @Test
    void whereThereIsNoRoomNothingIsDrawn() {
        assertThat(CrossSectionPicture.of(ROAD, Set.of(), 17)).isEmpty();
        assertThat(HeatBandPicture.of(BANDS.get(0), 9)).isEmpty();
    }

    /** Wheel paths 1.5 to 4.5 and 7.5 to 10.5 ft from the left line of each lane; the shoulder of 6 ft has none. */
    @Test
    void aColumnIsAFootWhereTheWidthIsThatOfTheRoad() {
        List<String> lines = CrossSectionPicture.of(ROAD, Set.of(), 9 + 54 + 1);

        assertThat(lines.get(1)).isEqualTo("lanes    |     " + "| ===   === ".repeat(4) + "|");
    }

    @Test
    void aMarkedJointHasASignOfItsOwnAndTheOthersKeepTheirs() {
        CrossSection.Joint joint = ROAD.courses().get(1).joints().get(2);
        String plain = CrossSectionPicture.of(ROAD, Set.of(), 64).get(2);
        String marked = CrossSectionPicture.of(ROAD, Set.of(joint), 64).get(2);

        assertThat(plain).doesNotContain("#");
        assertThat(marked.indexOf('#')).isEqualTo(9 + 45);
        assertThat(marked.replace('#', '+')).isEqualTo(plain);
    }

    /** One column a degree: limits 260 and 325, window 297 to 300, tolerance 25 and loss 12 from the left. */
    @Test
    void aWindowStandsBetweenToleranceAndLossAndTheToleranceAbove() {
        assertThat(HeatBandPicture.of(BANDS.get(0), 67).get(1))
                .isEqualTo(" |" + ".".repeat(24) + "-".repeat(12) + "====" + "....T" + ".".repeat(19) + "|");
    }

    @Test
    void limitsThatTakeEachOthersRoomAreCrossed() {
        assertThat(HeatBandPicture.of(BANDS.get(1), 67).get(1)).contains("xxxx").doesNotContain("=");
    }
}
