package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.spec.Situation;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The case for which a limit is looked up, made of job, mix, lift and hour. */
class CasesTest {
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-06-03T21:32:00-06:00");

    private static Job job(String key, Object value) {
        Map<String, Object> changes = new HashMap<>();
        changes.put(key, value);
        return Shift.job(changes);
    }

    private static Optional<String> light(Job job, String time) {
        return Cases.light(job, OffsetDateTime.parse(time));
    }

    @Test
    void aLoadIsOfItsMixItsLiftAndItsHour() {
        Ticket ticket = (Ticket) Shift.entry("ticket mix=12.5-70A pull=B");

        assertThat(Cases.of(Shift.job(Map.of()), ticket, EVENING))
                .isEqualTo(new Situation(
                        "riding-surface",
                        Amount.of("2.0", Unit.INCH),
                        new java.math.BigDecimal("12.5"),
                        70,
                        "yes",
                        "compaction-aid",
                        "night",
                        "continuous-imaging",
                        "asphalt",
                        null,
                        null,
                        LocalDate.of(2026, 6, 3),
                        null));
    }

    @Test
    void aSurfaceReadingIsOfTheMixOfItsLiftAndOfWhatWasSeenUnderIt() {
        Situation situation =
                Cases.of(Shift.job(Map.of()), (Surface) Shift.entry("surface lift=1 base=aggregate"), EVENING);

        assertThat(situation.grade()).isEqualTo(64);
        assertThat(situation.layer()).isEqualTo("below-riding-surface");
        assertThat(situation.base()).isEqualTo("aggregate");
    }

    @Test
    void aShotIsOfTheSurfaceUnderItAndOfItsProductsGrade() {
        Situation situation = Cases.of(
                Shift.job(Map.of()), (Tack) Shift.entry("tack product=Dilutable surface=milled pull=B"), EVENING);

        assertThat(situation.tackOn()).isEqualTo("milled");
        assertThat(situation.tackGrade()).isEqualTo("SS-1");
        assertThat(situation.layer()).isEqualTo("riding-surface");
    }

    @Test
    void whatTheJobDoesNotSettleIsNotKnown() {
        Ticket ticket = (Ticket) Shift.entry("ticket mix=9.5-58");
        Situation situation = Cases.of(job("night", null), ticket, EVENING);

        assertThat(situation.grade()).isNull();
        assertThat(situation.layer()).isNull();
        assertThat(situation.light()).isNull();
        assertThat(Cases.of(Shift.job(Map.of()), ticket, null).date()).isNull();
    }

    @Test
    void aPullThatLiesInTwoLiftsTellsNone() {
        Job both = Shift.job(Map.of(
                "pulls",
                List.of(
                        Shift.map("name=B lift=1 left_ft=0 right_ft=12"),
                        Shift.map("name=B lift=2 left_ft=0 right_ft=12"))));

        assertThat(Cases.lift(both, null, "B")).isEmpty();
        assertThat(Cases.lift(both, 1, "B").orElseThrow().number()).isEqualTo(1);
    }

    /** By hours: the hour at which night begins is night, the one at which it ends is day. */
    @Test
    void nightByFixedHoursRunsOverMidnight() {
        Job job = Shift.job(Map.of());

        assertThat(light(job, "2026-06-03T19:59:59-06:00")).contains("day");
        assertThat(light(job, "2026-06-03T20:00:00-06:00")).contains("night");
        assertThat(light(job, "2026-06-04T00:00:00-06:00")).contains("night");
        assertThat(light(job, "2026-06-04T05:59:59-06:00")).contains("night");
        assertThat(light(job, "2026-06-04T06:00:00-06:00")).contains("day");
    }

    @Test
    void nightThatBeginsAfterMidnightEndsTheSameMorning() {
        Job job = job("night", Shift.map("begins=01:00 ends=05:00"));

        assertThat(light(job, "2026-06-03T23:00:00-06:00")).contains("day");
        assertThat(light(job, "2026-06-04T01:00:00-06:00")).contains("night");
        assertThat(light(job, "2026-06-04T05:00:00-06:00")).contains("day");
    }

    @Test
    void anHourToldInAnotherZoneIsTheJobsHour() {
        assertThat(light(Shift.job(Map.of()), "2026-06-04T03:00:00+00:00")).contains("night");
        assertThat(light(Shift.job(Map.of()), "2026-06-04T01:00:00+00:00")).contains("day");
    }

    /**
     * By the sun at 40 N, 105 W on 3 June 2026. Sunset there and then is at about 20:24 and sunrise at about 05:32,
     * mountain daylight time, give or take two minutes (from memory of almanacs; the sun's times have their own tests).
     */
    @Test
    void nightByTheSunIsMovedByTheContractsMinutes() {
        Map<String, Object> changes = new HashMap<>();
        changes.put("place", Shift.map("name=Bend latitude=40 longitude=-105"));
        changes.put("night", Shift.map("sun=yes"));
        Job bare = Shift.job(changes);
        changes.put("night", Shift.map("sun=yes after_sunset=30 before_sunrise=30"));
        Job moved = Shift.job(changes);

        assertThat(light(bare, "2026-06-03T20:18:00-06:00")).contains("day");
        assertThat(light(bare, "2026-06-03T20:30:00-06:00")).contains("night");
        assertThat(light(moved, "2026-06-03T20:48:00-06:00")).contains("day");
        assertThat(light(moved, "2026-06-03T21:00:00-06:00")).contains("night");
        assertThat(light(bare, "2026-06-04T05:26:00-06:00")).contains("night");
        assertThat(light(moved, "2026-06-04T05:26:00-06:00")).contains("day");
        assertThat(light(moved, "2026-06-04T04:56:00-06:00")).contains("night");
    }

    @Test
    void whereTheSunDoesNotSetThereIsNoNight() {
        Map<String, Object> changes = new HashMap<>();
        changes.put("zone", "Europe/Oslo");
        changes.put("place", Shift.map("name=North latitude=70 longitude=25"));
        changes.put("night", Shift.map("sun=yes"));
        Job job = Shift.job(changes);

        assertThat(light(job, "2026-06-21T00:30:00+02:00")).contains("day");
        assertThat(light(job, "2026-12-21T12:00:00+01:00")).contains("night");
    }

    @Test
    void theSunNeedsAPlace() {
        assertThat(light(job("night", Shift.map("sun=yes")), "2026-06-03T23:00:00-06:00"))
                .isEmpty();
        assertThat(light(job("night", Shift.map("begins=20:00")), "2026-06-03T23:00:00-06:00"))
                .isEmpty();
    }
}
