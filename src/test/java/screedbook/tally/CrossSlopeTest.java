package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.job.Job;

/**
 * Cross slopes beside the plan. Counted as Florida DOT 330-12.3 does (training slides, read): the deviation is the
 * measured slope less the design slope without sign, and ten in a row are averaged. The figures are worked by hand.
 */
class CrossSlopeTest {
    private static Job job(String planned) {
        Map<String, Object> pull = planned == null
                ? Map.of("name", "B", "lift", new BigDecimal("2"))
                : Map.of("name", "B", "lift", new BigDecimal("2"), "cross_slope_pct", new BigDecimal(planned));
        return Fields.build(Job.class, Map.of("units", "us", "pulls", List.of(pull)))
                .value()
                .settled();
    }

    private static Shift read(String... slopes) {
        Shift shift = Shift.day();
        for (int i = 0; i < slopes.length; i++) {
            shift.key(
                    Kind.STRAIGHTEDGE,
                    "08:" + (10 + i),
                    "pull",
                    "B",
                    "lift",
                    "2",
                    "cross_slope_pct",
                    slopes[i],
                    "place_sta",
                    (10 + i) + "+00");
        }
        return shift;
    }

    private static String text(Shift shift, Job job, String id) {
        return Totals.of(shift.read(), job, ToDate.NONE, shift.at("12:00"))
                .figure(id)
                .map(Figure::text)
                .orElse("none");
    }

    /** Off -2.0 by 0.1 0.2 0 0.1 0.3 0.1 0 0.2 0.1 0.1: 1.2 in ten, 0.12; without the first and with 0.5: 1.6, 0.16. */
    @Test
    void theMeanOfTenInARowGoesOnWithEachReading() {
        Shift shift = read("-2.1", "-1.8", "-2.0", "-1.9", "-2.3", "-2.1", "-2.0", "-2.2", "-1.9", "-2.1", "-2.5");
        CrossSlope on = CrossSlope.of(shift.read(), job("-2.0")).get(0);
        assertThat(on.mean(8)).isEmpty();
        assertThat(on.mean(9).orElseThrow().text()).isEqualTo("0.12 %");
        assertThat(on.mean(10).orElseThrow().text()).isEqualTo("0.16 %");
        assertThat(text(shift, job("-2.0"), "cross-slope-mean.B lift 2")).isEqualTo("0.16 %");
        assertThat(text(shift, job("-2.0"), "cross-slope-off.B lift 2")).isEqualTo("0.5 %");
        assertThat(text(shift, job("-2.0"), "cross-slope-range.B lift 2")).isEqualTo("-2.5 to -1.8 %, planned -2.0 %");
    }

    @Test
    void withoutAPlanTheReadingsStandAlone() {
        Shift shift = read("2.1", "1.9");
        assertThat(text(shift, job(null), "cross-slope-readings.B lift 2")).isEqualTo("2");
        assertThat(text(shift, job(null), "cross-slope-range.B lift 2")).isEqualTo("1.9 to 2.1 %, none planned");
        assertThat(text(shift, job(null), "cross-slope-off.B lift 2")).isEqualTo("none");
    }

    @Test
    void aGapAloneIsNoCrossSlope() {
        Shift shift = Shift.day()
                .key(Kind.STRAIGHTEDGE, "08:10", "pull", "B", "lift", "2", "gap_in", "0.06", "place_sta", "10+00");
        assertThat(CrossSlope.of(shift.read(), job("2.0"))).isEmpty();
    }
}
