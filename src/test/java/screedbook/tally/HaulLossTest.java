package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Heat that loads lost on the way, against another library's straight line. All loads are invented. */
class HaulLossTest {
    private final Job job = Jobs.us();

    /** Loads of two plants with both temperatures and both times; what they come to is told to the reference. */
    private static Shift loads(Random random, int count, String plant, SimpleRegression reference) {
        Shift shift = Shift.day();
        for (int i = 0; i < count; i++) {
            int minutes = 15 + random.nextInt(60);
            int loss = 4 + minutes / 4 + random.nextInt(7);
            load(shift, i, plant, minutes, 300, 300 - loss);
            reference.addData(minutes, loss);
        }
        return shift;
    }

    private static void load(Shift shift, int i, String plant, int minutes, int hot, int cool) {
        LocalTime came = LocalTime.of(8, 0).plusMinutes(4L * i);
        shift.key(
                Kind.TICKET,
                came.toString(),
                "number",
                String.valueOf(1000 + i),
                "plant",
                plant,
                "net_ston",
                "20.00",
                "loaded",
                came.minusMinutes(minutes).toString(),
                "discharged",
                came.toString(),
                "plant_degF",
                String.valueOf(hot),
                "paver_degF",
                String.valueOf(cool));
    }

    private double value(Totals totals, String id) {
        return totals.figure(id)
                .orElseThrow(() -> new AssertionError(id))
                .value()
                .doubleValue();
    }

    @Test
    void aShiftsLossIsTheLineOfAnotherLibrary() {
        SimpleRegression theirs = new SimpleRegression();
        Shift shift = loads(new Random(7), 40, "Quarry", theirs);

        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("12:00"));

        assertThat(value(totals, "haul-loads.Quarry")).isEqualTo(40);
        assertThat(value(totals, "haul-loss-rate.Quarry")).isEqualTo(theirs.getSlope(), within(1e-6));
        assertThat(value(totals, "haul-loss-spread.Quarry"))
                .isEqualTo(Math.sqrt(theirs.getMeanSquareError()), within(1e-6));
        assertThat(totals.figure("haul-loss-rate.Quarry")
                        .orElseThrow()
                        .working()
                        .put())
                .hasSize(41)
                .last()
                .asString()
                .startsWith("n 40, Sx ");
        assertThat(totals.figure("haul-loss-to-date.Quarry")).isEmpty();
    }

    @Test
    void theJobsLossIsTheLineThroughTheLoadsOfAllItsShifts() {
        SimpleRegression theirs = new SimpleRegression();
        Shift first = loads(new Random(8), 25, "Quarry", theirs);
        Shift second = loads(new Random(9), 30, "Quarry", theirs);
        ToDate before = ToDate.NONE.and(first.read(), job);

        Totals totals = Totals.of(second.read(), job, before, second.at("12:00"));

        assertThat(value(totals, "haul-loads-to-date.Quarry")).isEqualTo(55);
        assertThat(value(totals, "haul-loss-rate-to-date.Quarry")).isEqualTo(theirs.getSlope(), within(1e-6));
        HaulLoss taught =
                HaulLoss.of(before.and(second.read(), job), Unit.DEG_F).get(0);
        assertThat(taught.at(Amount.of("45", Unit.MINUTE)).orElseThrow().value().doubleValue())
                .isEqualTo(theirs.predict(45), within(1e-6));
        assertThat(taught.text())
                .matches(
                        "\\d+ °F in \\d+ min of haul and waiting \\(mean of 55 loads\\), 0\\.\\d\\d °F a minute, ± \\d °F");
    }

    @Test
    void plantsAreToldApartAndFewLoadsSayNothing() {
        Shift shift = Shift.day();
        for (int i = 0; i < 4; i++) {
            load(shift, i, "Quarry", 20 + i, 300, 290);
        }
        load(shift, 5, "River", 30, 300, 280);
        load(shift, 6, "River", 40, 300, 278);

        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("12:00"));

        assertThat(totals.figure("haul-loads.Quarry")).isPresent();
        assertThat(totals.figure("haul-loads.River")).isEmpty();
    }

    @Test
    void aLoadCountsOnlyWithBothTemperaturesAndTimesThatGoForward() {
        Shift shift = Shift.day();
        for (int i = 0; i < 3; i++) {
            load(shift, i, "Quarry", 30, 300, 285);
        }
        load(shift, 3, "Quarry", -10, 300, 250);
        shift.ticket("09:30", "2000", "20.00", "plant", "Quarry", "plant_degF", "300", "paver_degF", "250");

        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("12:00"));

        assertThat(value(totals, "haul-loads.Quarry")).isEqualTo(3);
        assertThat(value(totals, "haul-loss.Quarry")).isEqualTo(15);
        assertThat(totals.figure("haul-loss-rate.Quarry"))
                .as("all were on the way equally long")
                .isEmpty();
    }

    @Test
    void nothingIsToldBeforeTheFirstShift() {
        assertThat(HaulLoss.of(ToDate.NONE, Unit.DEG_F)).isEqualTo(List.of());
    }
}
