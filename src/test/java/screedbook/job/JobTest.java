package screedbook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.entry.AnyRecord;
import screedbook.entry.Fields;
import screedbook.entry.StationBase;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/** A job as it stands after what it is silent about has been settled. */
class JobTest {
    private static Job job(Map<String, Object> values) {
        return Fields.build(Job.class, values).value();
    }

    @Test
    void anEmptyJobHasEveryListAndRhythmAfterItWasSettled() throws ReflectiveOperationException {
        Job settled = job(Map.of()).settled();
        for (RecordComponent component : Job.class.getRecordComponents()) {
            if (component.getType() == List.class) {
                assertThat((List<?>) component.getAccessor().invoke(settled))
                        .as(component.getName())
                        .isEmpty();
            }
        }
        assertThat(settled.stationing().equations()).isEmpty();
        assertThat(settled.stationing().base()).isEqualTo(StationBase.FT_100);
        assertThat(settled.stationing().direction()).isEqualTo(Job.Direction.UP);
    }

    /** First five loads, then one in five: Florida DOT Standard Specifications 330-6.3; the others common practice. */
    @Test
    void rhythmsThatAreNotGivenAreTheUsualOnes() {
        Checks checks = job(Map.of()).settled().checks();
        assertThat(checks)
                .isEqualTo(new Checks(
                        5,
                        5,
                        Checks.HeatWhere.PAVER,
                        Amount.of("120", Unit.MINUTE),
                        Amount.of("240", Unit.MINUTE),
                        Amount.of("120", Unit.MINUTE),
                        null,
                        1,
                        YesNo.NO,
                        null));
    }

    @Test
    void rhythmsThatAreGivenStay() {
        Map<String, Object> given = Map.of("first_loads", new BigDecimal("3"), "gross_and_tare", "yes");
        Checks checks = job(Map.of("checks", given)).settled().checks();
        assertThat(checks.firstLoads()).isEqualTo(3);
        assertThat(checks.grossAndTare()).isEqualTo(YesNo.YES);
        assertThat(checks.thenOneIn()).isEqualTo(5);
    }

    /** What a job has to have beside them is told too; here only the base counts. */
    @Test
    void milepostsGoWithFeetAlone() {
        assertThat(doubtful("metric")).containsExactly("stationing.base is mileposts in a metric job");
        assertThat(doubtful("us")).isEmpty();
    }

    private static List<String> doubtful(String units) {
        Map<String, Object> values = new HashMap<>(
                Map.of("id", "a-job", "name", "A job", "zone", "America/Denver", "units", units, "sheet", "practice"));
        values.put("stationing", Map.of("base", "mileposts"));
        return JobReading.of(values).doubts().stream()
                .map(JobReading.Doubt::said)
                .toList();
    }

    @Test
    void aMetricJobHasStationsOfAThousandMetres() {
        Job settled = job(Map.of("units", "metric")).settled();
        assertThat(settled.stationing().base()).isEqualTo(StationBase.M_1000);
        assertThat(settled.system()).isEqualTo(UnitSystem.METRIC);
        assertThat(job(Map.of("units", "metric", "stationing", Map.of("base", "m-100")))
                        .settled()
                        .stationing()
                        .base())
                .isEqualTo(StationBase.M_100);
    }

    @Test
    void aDistributorWithoutATableHasAnEmptyOne() {
        Job settled = job(Map.of("distributors", List.of(Map.of("name", "D7")))).settled();
        assertThat(settled.distributor("D7").orElseThrow().strapping()).isEmpty();
    }

    @Test
    void settlingTwiceChangesNothingAndLosesNothing() {
        for (long seed = 1; seed <= 30; seed++) {
            Job given = new AnyRecord(seed, UnitSystem.US).of(Job.class);
            Job settled = given.settled();
            assertThat(settled.settled()).isEqualTo(settled);
            assertThat(Fields.plain(settled).keySet())
                    .containsAll(Fields.plain(given).keySet());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "70-22, 70",
        "PG 70-22, 70",
        "PG70-22, 70",
        "PG64-28, 64",
        "pg 58-28, 58",
        "' 76-22 ', 76",
        "PG 76-22 PMA, 76",
        "64-22M, 64",
        "PG 64H-22, 64",
        "64E-28, 64"
    })
    void theHighTemperatureOfABinderIsReadOffItsGrade(String binder, int high) {
        assertThat(grade(binder)).contains(high);
    }

    @ParameterizedTest
    @ValueSource(strings = {"AC-20", "AC-30P", "RAP", "PG", "PG 70", "7022", "120/150", "", "170-22"})
    void anotherGradingSystemHasNoHighTemperature(String binder) {
        assertThat(grade(binder)).isEmpty();
    }

    @Test
    void aMixWithoutABinderHasNoGrade() {
        assertThat(job(Map.of("mixes", List.of(Map.of("name", "x"))))
                        .mixes()
                        .get(0)
                        .highGrade())
                .isEmpty();
    }

    private static Optional<Integer> grade(String binder) {
        Map<String, Object> mix = Map.of("name", "x", "binder", binder);
        return job(Map.of("mixes", List.of(mix)))
                .settled()
                .mix("x")
                .orElseThrow()
                .highGrade();
    }

    @Test
    void aPullIsFoundInItsLiftAndAsWideAsItsEdgesSay() {
        Map<String, Object> a1 = pull("A", "1", "-12.0", "0.0");
        Map<String, Object> a2 = pull("A", "2", "-12.5", "0.5");
        Job job = job(Map.of("pulls", List.of(a1, a2))).settled();
        assertThat(job.pull("A", 2).orElseThrow().width()).isEqualTo(Amount.of("13.0", Unit.FOOT));
        assertThat(job.pull("A", null).orElseThrow().lift()).isEqualTo(1);
        assertThat(job.pull("A", 3)).isEmpty();
        assertThat(job.pull("B", 1)).isEmpty();
    }

    private static Map<String, Object> pull(String name, String lift, String left, String right) {
        return Map.of(
                "name", name,
                "lift", new BigDecimal(lift),
                "left_ft", new BigDecimal(left),
                "right_ft", new BigDecimal(right));
    }
}
