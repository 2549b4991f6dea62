package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Yield checks and probes in one line. */
class YieldToldTest {
    private static String told(Class<? extends Record> type, Map<String, Object> values) {
        return Told.line((Entry) Fields.build(type, values).value());
    }

    @Test
    void aYieldCheckIsToldByItsPlaceAndItsTickets() {
        assertThat(told(
                        Yield.class,
                        Map.of(
                                "from_sta",
                                "12+03",
                                "to_sta",
                                "21+01",
                                "pull",
                                "B",
                                "lift",
                                new BigDecimal("2"),
                                "first_ticket",
                                "48212",
                                "last_ticket",
                                "48217")))
                .isEqualTo("yield check  12+03 to 21+01  pull B lift 2  tickets 48212 to 48217");
        assertThat(told(Yield.class, Map.of("from_sta", "12+03", "tons_ston", new BigDecimal("44.10"))))
                .isEqualTo("yield check  12+03 to ?  44.10 T");
    }

    @Test
    void aProbeIsToldWithItsStateAndPlace() {
        assertThat(told(
                        Depth.class,
                        Map.of(
                                "thickness_in",
                                new BigDecimal("2.10"),
                                "state",
                                "compacted",
                                "place_sta",
                                "13+00",
                                "pull",
                                "B",
                                "lift",
                                new BigDecimal("2"))))
                .isEqualTo("depth  2.10 in compacted  13+00  pull B lift 2");
    }
}
