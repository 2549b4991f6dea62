package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;

/** How warm the surface has to be for each lift, and which planned hours are night. */
class SurfaceMinimumTest {
    private static String text(String sheet, int lift, String light, String thermal, String aid) {
        return SurfaceMinimum.all(Shift.job(Map.of()), SpecSheet.shipped(sheet).orElseThrow()).stream()
                .filter(m -> m.lift().number() == lift
                        && m.light().equals(light)
                        && m.thermal().equals(thermal)
                        && m.aid().equals(aid))
                .findFirst()
                .orElseThrow()
                .text();
    }

    /** Practice sheet: common practice, no source. Lift 1 is PG 64 below the riding surface, lift 2 PG 70 and ridden on. */
    @ParameterizedTest
    @CsvSource({
        "1, day, continuous-imaging, neither, at least 35",
        "1, night, continuous-imaging, warm-mix, at least 35",
        "2, night, continuous-imaging, neither, at least 45",
        "2, night, continuous-imaging, compaction-aid, at least 35",
        "2, day, continuous-imaging, neither, no limit set",
        "2, night, handheld-camera, neither, no limit set",
        "2, night, none, neither, perhaps at least 45"
    })
    void thePracticeSheetSaysSo(int lift, String light, String thermal, String aid, String text) {
        assertThat(text("practice", lift, light, thermal, aid)).isEqualTo(text);
    }

    /** Ohio CMS 2010, Table 401.06-1: 1.5 to 2.9 in at least 40; polymer surface course at least 50; read. */
    @Test
    void ohioTellsThicknessAndPolymerAndNotDayFromNight() {
        assertThat(text("ohio-401-2010", 1, "day", "none", "neither")).isEqualTo("at least 40");
        assertThat(text("ohio-401-2010", 2, "night", "none", "neither")).isEqualTo("at least 50");
    }

    @Test
    void everyLiftStandsAtBothLightsWithEveryMethodAndAidOnce() {
        List<SurfaceMinimum> all = SurfaceMinimum.all(
                Shift.job(Map.of()), SpecSheet.shipped("practice").orElseThrow());

        assertThat(all).hasSize(2 * 2 * 3 * 3);
        assertThat(all.stream().filter(SurfaceMinimum::planned)).hasSize(4);
    }

    @Test
    void hoursOfAPlannedNightAreThoseOfTheContract() {
        Job job = PlannedJob.plan()
                .with(
                        "work",
                        List.of(PlannedJob.object(
                                "from", "2026-06-03", "to", "2026-06-04", "begins", "18:30", "ends", "07:00")))
                .job();

        List<PlannedNight> days = PlannedNight.all(job);

        assertThat(days).hasSize(2);
        assertThat(days.get(0).night()).singleElement().satisfies(spell -> {
            assertThat(spell.from().toLocalTime()).isEqualTo(LocalTime.of(20, 0));
            assertThat(spell.to().toLocalTime()).isEqualTo(LocalTime.of(6, 0));
            assertThat(spell.to().toLocalDate()).isEqualTo(LocalDate.of(2026, 6, 4));
        });
    }

    static Stream<PlannedJob> nights() {
        return Stream.of(
                PlannedJob.plan(),
                PlannedJob.plan().with("night", PlannedJob.object("begins", "01:00", "ends", "05:00")),
                PlannedJob.plan()
                        .with("place", PlannedJob.object("latitude", "40.35", "longitude", "-105.10"))
                        .with("night", PlannedJob.object("sun", "yes", "after_sunset", "30", "before_sunrise", "-15")),
                PlannedJob.plan()
                        .with("place", PlannedJob.object("latitude", "70.0", "longitude", "-105.10"))
                        .with("night", PlannedJob.object("sun", "yes", "after_sunset", "0", "before_sunrise", "0")));
    }

    /** A year with both changes of the clock, every tenth night; each minute of each looked at by itself. */
    @ParameterizedTest
    @MethodSource("nights")
    void theNightHoursAreThoseOfEveryMinuteLookedAtByItself(PlannedJob plan) {
        List<Object> work = new ArrayList<>();
        for (LocalDate date = LocalDate.of(2026, 3, 7); date.getYear() == 2026; date = date.plusDays(10)) {
            work.add(PlannedJob.object(
                    "from", date.toString(), "to", date.toString(), "begins", "17:10", "ends", "08:20"));
        }
        work.add(PlannedJob.object("from", "2026-10-31", "to", "2026-11-01", "begins", "17:10", "ends", "08:20"));
        Job job = plan.with("work", work).job();

        assertThat(PlannedNight.all(job)).hasSize(32).allSatisfy(day -> {
            for (ZonedDateTime at = day.begins(); at.isBefore(day.ends()); at = at.plusMinutes(1)) {
                ZonedDateTime now = at;
                boolean told = day.night().stream().anyMatch(s -> !now.isBefore(s.from()) && now.isBefore(s.to()));
                assertThat(told ? "night" : "day")
                        .as(now.toString())
                        .isEqualTo(Cases.light(job, now).orElseThrow());
            }
        });
    }

    static List<Row> sunrises() {
        return Published.rows("sun", "zenith", "90.833").stream()
                .filter(row -> row.text("id").startsWith("B-SUN-SF"))
                .toList();
    }

    /** Night by the sun, from sunset to sunrise: US Naval Observatory, San Francisco 2012, to a minute. */
    @ParameterizedTest
    @MethodSource("sunrises")
    void nightByTheSunIsWhatTheNavalObservatoryPrints(Row row) {
        Job job = PlannedJob.plan()
                .with("zone", "Etc/GMT+8")
                .with("place", PlannedJob.object("latitude", row.text("latitude"), "longitude", row.text("longitude")))
                .with("night", PlannedJob.object("sun", "yes", "after_sunset", "0", "before_sunrise", "0"))
                .with(
                        "work",
                        List.of(PlannedJob.object(
                                "from", row.text("date"), "to", row.text("date"), "begins", "00:00", "ends", "00:00")))
                .job();

        PlannedNight day = PlannedNight.all(job).get(0);

        assertThat(job.zone()).isEqualTo(ZoneId.of("Etc/GMT+8"));
        assertThat(day.night()).hasSize(2);
        assertThat(minutes(day.night().get(0).to().toLocalTime())).isCloseTo(printed(row, "morning"), within());
        assertThat(minutes(day.night().get(1).from().toLocalTime())).isCloseTo(printed(row, "evening"), within());
    }

    private static org.assertj.core.data.Offset<Integer> within() {
        return org.assertj.core.data.Offset.offset(1);
    }

    private static int minutes(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    private static int printed(Row row, String column) {
        String hhmm = row.text(column);
        return Integer.parseInt(hhmm.substring(0, 2)) * 60 + Integer.parseInt(hhmm.substring(2));
    }
}
