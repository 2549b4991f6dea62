package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.calc.StraightLine;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.HaulLoss;
import screedbook.unit.Unit;

/** What the job's own loads say beside the loss that its plan counts. The limits are those of the practice sheet. */
class TaughtLossTest {
    private static final SpecSheet PRACTICE = SpecSheet.shipped("practice").orElseThrow();
    private final Job job = PlannedJob.plan()
            .mix("64", "19", "fine", "in", "2.5")
            .with(
                    "haul",
                    List.of(PlannedJob.object(
                            "plant", "Quarry", "minutes_min", "40", "loss_dF", "5", "source", "winter test")))
            .job();
    private final HeatBand band = HeatBand.all(job, PRACTICE).get(0);

    /** Three loads on a line: 20 min lose 8, 30 lose 10, 40 lose 12, so that a degree goes in five minutes. */
    private static HaulLoss loads(String plant) {
        StraightLine line = StraightLine.NONE;
        for (int i = 2; i <= 4; i++) {
            line = line.and(BigDecimal.valueOf(10L * i), BigDecimal.valueOf(4 + 2L * i));
        }
        return new HaulLoss(plant, line, Unit.DIFF_F);
    }

    /** With 5 on the way the target is at least 290, with 12 at least 297; at most 300 either way. */
    @Test
    void theLossOfTheJobsLoadsStandsBesideThePlansWithTheWindowThatItMakes() {
        assertThat(band.text()).isEqualTo("290 to 300 °F");
        assertThat(TaughtLoss.of(band, job, PRACTICE, List.of(loads("Quarry"))))
                .contains(
                        "the job's own loads lost 10 °F in 30 min of haul and waiting (mean of 3 loads), 0.20 °F a"
                                + " minute, ± 0 °F; for 40 min that is 12 °F where the plan counts 5 °F, and the target would be 297 to 300 °F");
    }

    @Test
    void thePlansOwnWindowStaysAsItIs() {
        TaughtLoss.of(band, job, PRACTICE, List.of(loads("Quarry")));

        assertThat(HeatBand.all(job, PRACTICE).get(0)).isEqualTo(band);
        assertThat(band.loss()).isEqualByComparingTo("5");
    }

    @Test
    void anotherPlantsLoadsSayNothingHere() {
        assertThat(TaughtLoss.of(band, job, PRACTICE, List.of(loads("River")))).isEmpty();
        assertThat(TaughtLoss.of(band, job, PRACTICE, List.of())).isEmpty();
    }
}
