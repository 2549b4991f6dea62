package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Times read back, held against the platform's own reading of ISO 8601. */
class MomentTest {
    @Test
    void whatIsWrittenIsReadBackAsThePlatformReadsIt() {
        Random random = new Random(11);
        for (int i = 0; i < 5_000; i++) {
            OffsetDateTime time = OffsetDateTime.of(
                    random.nextInt(10_000),
                    1 + random.nextInt(12),
                    1 + random.nextInt(28),
                    random.nextInt(24),
                    random.nextInt(60),
                    random.nextInt(60),
                    random.nextInt(1_000) * 1_000_000,
                    ZoneOffset.ofTotalSeconds((random.nextInt(2 * 1080 + 1) - 1080) * 60));
            String happened = Moment.text(time);
            String keyed = Moment.keyed(time);

            assertThat(Moment.of(happened)).isEqualTo(OffsetDateTime.parse(happened));
            assertThat(Moment.of(keyed)).isEqualTo(OffsetDateTime.parse(keyed)).isEqualTo(time);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-06-03T21:32Z",
                "2026-06-03T21:32:00Z",
                "2026-06-03T21:32:00.5-06:00",
                "2026-06-03T21:32:00.123456-06:00",
                "2026-06-03T21:32:00-00:00",
                "2026-06-03t21:32:00-06:00",
                "2026-06-03T21:32:00.12+06:00:00",
                "2024-02-29T23:59:59.999+18:00"
            })
    void otherFormsAreReadAsThePlatformReadsThem(String text) {
        assertThat(Moment.of(text)).isEqualTo(OffsetDateTime.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "21:32",
                "2026-02-30T21:32:00-06:00",
                "2026-13-03T21:32:00-06:00",
                "2026-06-03T24:00:00-06:00",
                "2026-06-03T21:60:00-06:00",
                "2026-06-03T21:32:60-06:00",
                "2026-06-03T21:32:00-06:60",
                "2026-06-03T21:32:00-18:01",
                "2026-06-03 21:32:00-06:00",
                "2026-06-03T21:32:00 06:00",
                "2026-06-03T21:32:00,123-06:00",
                "2026-06-0aT21:32:00-06:00"
            })
    void whatThePlatformTakesForNoTimeIsNone(String text) {
        assertThatThrownBy(() -> OffsetDateTime.parse(text)).isInstanceOf(DateTimeException.class);
        assertThatThrownBy(() -> Moment.of(text)).isInstanceOf(DateTimeException.class);
    }
}
