package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.entry.Moment;

/**
 * What a metric job is told of limits that are printed in Fahrenheit, inches, pounds and gallons. Converted by the
 * exact factors of NIST Handbook 44 Appendix C: C = (F - 32) / 1.8, 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 gal = 3.785411784
 * L, 1 yd2 = 0.83612736 m2; told towards the inside.
 */
class MetricJobTest {
    private static Map<String, Object> metric(String sheet) {
        return new HashMap<>(Map.ofEntries(
                Map.entry("units", "metric"),
                Map.entry("sheet", sheet),
                Map.entry("stationing", Shift.map("base=m-1000 begins_sta=1+000 ends_sta=9+000")),
                Map.entry(
                        "lifts",
                        List.of(Shift.map(
                                "number=2 layer=riding-surface thickness_mm=50.8 mix=12.5-70A base=asphalt"))),
                Map.entry("pulls", List.of(Shift.map("name=B lift=2 left_m=0 right_m=3.6"))),
                Map.entry("lane_lines", List.of()),
                Map.entry("trucks", List.of()),
                Map.entry("products", List.of()),
                Map.entry("tack_targets", List.of()),
                Map.entry(
                        "mixes",
                        List.of(Shift.map("name=12.5-70A nmas_mm=12.5 binder=70-22 polymer=yes aid=neither"
                                + " target_plant_degC=149")))));
    }

    private static Guide guide(String sheet, String partial, String blank) {
        Shift shift = Shift.bare(metric(sheet));
        return Guides.of(shift.ground(), shift.day(), Shift.entry(partial), shift.time("21:30"), blank);
    }

    /** 270 F is 132.2 C, 45 F is 7.2 C; 325 F is 162.8 C; 149 C and 25 F around it are 135.1 to 162.9 C. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            practice   | ticket mix=12.5-70A lift=2                  | paver_degC      | at least 132.3 °C (270 °F)
            practice   | ticket mix=12.5-70A lift=2                  | plant_degC      | 135.2 to 162.7 °C (275.2 to 325 °F), target 149 ± 13.8
            practice   | surface lift=2 pull=B                       | surface_degC    | at least 7.3 °C (45 °F)
            wsdot-5-04 | surface lift=2 pull=B                       | surface_degC    | at least 7.3 °C (45 °F)
            wsdot-5-04 | straightedge laid=along edge_length_m=3.048 | gap_mm          | at most 3.1 mm (0.125 in)
            wsdot-5-04 | straightedge laid=along                     | edge_length_m   | 10 ft (3.05 m)
            wsdot-5-04 | joint run=longitudinal lift=2               | below_mm        | 50.8 to 152.4 mm (2 to 6 in)
            practice   | rolling drums=vibratory lift=2              | speed_kmh       | usually 3.3 to 5.6 km/h (2 to 3.5 mph)
            practice   | core lift=2 pull=B mix=12.5-70A             | height_mm       | at least 31.8 mm (1.25 in)
            practice   | profile lift=2 pull=B method=camera         | coldest_degC    | usually within 13.8 of the hottest
            """)
    void besideABlankTheLimitStandsInTheUnitOfTheBlank(String sheet, String partial, String blank, String limit) {
        assertThat(guide(sheet, partial, blank).limit()).isEqualTo(limit);
    }

    /** 131 C is 267.8 F and lies below 270 F; 4 mm is 0.157 in and more than 1/8 in. */
    @Test
    void aFindingTellsThePrintedLimitAndWhatWouldHaveBeenInsideInTheUnitOfTheJob() {
        Shift shift = Shift.bare(metric("practice"))
                .load("21:00", "1001", "paver_degF= paver_degC=131 net_ston= net_t=20.24");
        assertThat(shift.findings("heat-at-paver")).singleElement().satisfies(f -> {
            assertThat(f.seen()).isEqualTo("at the paver 131 °C (267.8 °F)");
            assertThat(f.limit()).isEqualTo("at least 270 °F (132.3 °C)");
            assertThat(f.inside()).isEqualTo("270 °F or more (132.3 °C)");
        });

        Shift gap = Shift.bare(metric("wsdot-5-04"))
                .at("21:00", "straightedge edge_length_m=3.048 laid=along gap_mm=4 place_sta=1+020 pull=B lift=2");
        assertThat(gap.findings("straightedge-gap"))
                .singleElement()
                .satisfies(f -> assertThat(f.limit()).isEqualTo("at most 0.125 in (3.1 mm)"));
    }

    /** What is told as inside is inside: one tenth of a degree less is not where the sheet does not round. */
    @Test
    void whatIsToldAsTheLeastIsInside() {
        Guide least = guide("wsdot-5-04", "surface lift=2 pull=B surface_degC=7.3", "surface_degC");
        assertThat(least.verdict()).isEqualTo(Verdict.INSIDE);
        Guide less = guide("wsdot-5-04", "surface lift=2 pull=B surface_degC=7.2", "surface_degC");
        assertThat(less.verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    /** 13, 11 and 9 C an hour apart fall 2 an hour; 45 F are 7.22 C, from 9 C at 23:00 that is 0.89 h: 23:53. */
    @Test
    void aFallingSurfaceIsToldInTheDegreesInWhichItIsRead() {
        Shift shift = Shift.bare(metric("practice"))
                .at("21:00", "surface surface_degC=13 pull=B lift=2 base=asphalt")
                .at("22:00", "surface surface_degC=11 pull=B lift=2 base=asphalt")
                .at("23:00", "surface surface_degC=9 pull=B lift=2 base=asphalt");

        assertThat(Nearing.of(shift.day(), shift.job(), shift.ground().sheet().orElseThrow(), shift.time("23:10")))
                .singleElement()
                .satisfies(near -> {
                    assertThat(near.limit().text()).isEqualTo("7.3 °C");
                    assertThat(Moment.clock(near.at())).isEqualTo("23:53");
                    assertThat(near.working().put())
                            .contains("the line falls by 2.0 °C an hour and is at 8.7 °C at 23:10")
                            .anyMatch(l -> l.startsWith("limit at that time at least 45 °F (7.3 °C), practice"));
                });
    }

    /** 23 USC 127 is a law of the United States: 36,287 kg are no figure for a truck elsewhere. */
    @Test
    void noTruckElsewhereIsAskedAboutByTheLawOfTheUnitedStates() {
        String heavy = "paver_degF= paver_degC=150 net_ston= net_t=30.00 gross_kg=47000 tare_kg=17000";
        assertThat(Shift.bare(metric("practice")).load("21:00", "1001", heavy).findings("gross-legal"))
                .isEmpty();
        assertThat(guide("practice", "ticket gross_kg=47000", "gross_kg").verdict())
                .isEqualTo(Verdict.NONE);

        Map<String, Object> own = metric("practice");
        own.put("trucks", List.of(Shift.map("number=T104 tare_kg=17000 legal_gross_kg=46000")));
        assertThat(Shift.bare(own).load("21:00", "1001", heavy).findings("gross-legal"))
                .singleElement()
                .satisfies(f -> assertThat(f.limit()).isEqualTo("at most 46,000 kg"));
    }
}
