package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Published;
import screedbook.Published.Row;
import screedbook.spec.Quantity;
import screedbook.spec.SpecSheet;

/** Findings of a plan: what was planned, the limit with its clause, what would be inside. */
class PlanFindingsTest {
    private static final List<String> LINES = List.of("-12", "0", "12");

    static List<Row> liftSizes() {
        return Published.rows("lift-sizes").stream()
                .filter(row -> !row.text("nmas_mm").isEmpty())
                .toList();
    }

    private static List<Finding> sizes(String nmas, String gradation, String thickness) {
        return PlannedJob.plan()
                .mix("64", nmas, gradation, "mm", thickness)
                .with("units", "metric")
                .with("mixes", List.of(PlannedJob.object("name", "M", "nmas_mm", nmas, "gradation", gradation)))
                .with("pulls", null)
                .with("lane_lines", null)
                .with("trucks", null)
                .with("tack_targets", null)
                .with("distributors", null)
                .findings("practice", "plan-lift-sizes");
    }

    @ParameterizedTest
    @MethodSource("liftSizes")
    void aLiftAsManySizesThickAsPrintedIsInsideAndATenthOfAMillimetreLessIsNot(Row row) {
        for (String gradation : List.of("fine", "coarse")) {
            String least = row.text(gradation + "_mm");
            String less = row.number(gradation + "_mm")
                    .subtract(new java.math.BigDecimal("0.1"))
                    .toPlainString();

            assertThat(sizes(row.text("nmas_mm"), gradation, least)).isEmpty();
            assertThat(sizes(row.text("nmas_mm"), gradation, less))
                    .singleElement()
                    .satisfies(f -> {
                        assertThat(f.sort()).isEqualTo(Sort.LOOK_AGAIN);
                        assertThat(f.limit()).contains(gradation);
                        assertThat(f.clause()).contains("Brown, Hainin, Cooley");
                    });
        }
    }

    @Test
    void theSizesInTheUsualTableAreThosePrinted() {
        Row printed = Published.rows("lift-sizes").get(0);

        assertThat(Marks.usual(Quantity.LIFT_SIZES_FINE).all().get(0).low().value())
                .isEqualByComparingTo(printed.number("fine_mm"));
        assertThat(Marks.usual(Quantity.LIFT_SIZES_COARSE).all().get(0).low().value())
                .isEqualByComparingTo(printed.number("coarse_mm"));
    }

    @Test
    void aLiftThinnerThanTheSheetSaysForItsMixIsOutside() {
        assertThat(PlannedJob.plan().mix("64", "19", "fine", "in", "2.25").findings("practice", "plan-lift-thickness"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.seen()).isEqualTo("lift 1 of M is planned 2.25 in");
                    assertThat(f.limit()).isEqualTo("at least 2.5 in");
                    assertThat(f.clause()).isEqualTo("practice 19 mm mix");
                    assertThat(f.inside()).isEqualTo("2.5 in or more");
                });
    }

    @Test
    void aLiftThinnerThanACoreHasToBeHighIsOutside() {
        assertThat(PlannedJob.plan().mix("64", "12.5", "fine", "in", "1.0").findings("practice", "plan-core-height"))
                .hasSize(1);
        assertThat(PlannedJob.plan().mix("64", "12.5", "fine", "in", "1.25").findings("practice", "plan-core-height"))
                .isEmpty();
    }

    private static PlannedJob road(List<String> below, List<String> riding) {
        return PlannedJob.plan().road(LINES, List.of(below, riding)).wheels("3.0", "3.0");
    }

    @Test
    void aRidingSurfaceJointInASettledWheelPathIsOutsideAndInARememberedOneWorthALook() {
        List<String> whole = List.of("-12", "12");
        List<String> joint = List.of("-12", "3", "12");

        assertThat(road(whole, joint).findings("practice", "plan-joint-wheel-path"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.sort()).isEqualTo(Sort.OUTSIDE);
                    assertThat(f.seen()).contains("at 3 ft lies in the wheel path from 1.50 to 4.50 ft");
                    assertThat(f.inside()).isEqualTo("this joint at 0 ft");
                });
        assertThat(PlannedJob.plan().road(LINES, List.of(whole, joint)).findings("practice", "plan-joint-wheel-path"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.sort()).isEqualTo(Sort.LOOK_AGAIN);
                    assertThat(f.working()).contains("from memory");
                });
    }

    @Test
    void aJointOfALowerLiftMayLieInAWheelPath() {
        assertThat(road(List.of("-12", "3", "12"), List.of("-12", "12")).findings("practice", "plan-joint-wheel-path"))
                .isEmpty();
    }

    /** Offsets in feet. WSDOT 5-04.3(12)A2: 2 to 6 in; FP-96 401.13: at least 6 in; Kansas 614.3: 6 to 12 in; all read. */
    @ParameterizedTest
    @CsvSource({
        "wsdot-5-04, 0.16, OUT, 2 to 6 in",
        "wsdot-5-04, 0.17, in, ",
        "wsdot-5-04, 0.5, in, ",
        "wsdot-5-04, 0.51, OUT, 2 to 6 in",
        "joints-fp-96, 0.49, OUT, at least 6 in",
        "joints-fp-96, 0.5, in, ",
        "joints-fp-96, 9, in, ",
        "joints-kansas-614, 0.49, OUT, 6 to 12 in",
        "joints-kansas-614, 1, in, ",
        "joints-kansas-614, 1.01, OUT, 6 to 12 in"
    })
    void aJointIsAsFarFromTheOneBelowAsEachSheetSays(String sheet, String below, String verdict, String limit) {
        List<Finding> found = road(List.of("-12", "-" + below, "12"), List.of("-12", "0", "12"))
                .findings(sheet, "plan-joint-offset");

        assertThat(found).hasSize(verdict.equals("in") ? 0 : 1);
        found.forEach(f -> {
            assertThat(f.limit()).isEqualTo(limit);
            assertThat(f.sort()).isEqualTo(Sort.OUTSIDE);
        });
    }

    @Test
    void stackedJointsAreShownWhereTheLowerOneCouldLie() {
        assertThat(road(List.of("-12", "0", "12"), List.of("-12", "0", "12"))
                        .findings("wsdot-5-04", "plan-joint-offset"))
                .singleElement()
                .satisfies(f -> assertThat(f.inside()).isEqualTo("the joint of lift 1 at -0.17 ft or 0.17 ft"));
    }

    /** On the lane line at 12 lies a joint below; the riding joint at 15 is in a wheel path. */
    @Test
    void whereNoPlaceIsLeftForAJointTheOneBelowIsMovedWithIt() {
        assertThat(PlannedJob.plan()
                        .road(
                                List.of("-12", "0", "12", "24"),
                                List.of(List.of("-12", "12", "24"), List.of("-12", "15", "24")))
                        .wheels("3.0", "3.0")
                        .findings("wsdot-5-04", "plan-joint-line"))
                .singleElement()
                .satisfies(f -> assertThat(f.inside())
                        .isEqualTo("this joint at 12 ft with the joint of lift 1 moved from 12 ft to 11.83 ft or"
                                + " 12.17 ft"));
    }

    @Test
    void theJobsOwnJointRuleHoldsWhereTheSheetHasNone() {
        PlannedJob stacked = road(List.of("-12", "0", "12"), List.of("-12", "0", "12"));

        assertThat(stacked.findings("practice", "plan-joint-rule")).hasSize(1);
        assertThat(stacked.with("joint_rule", PlannedJob.object("least_in", "6", "source", "special provision 9"))
                        .findings("practice", "plan-joint-offset"))
                .singleElement()
                .extracting(Finding::clause)
                .isEqualTo("special provision 9");
        assertThat(stacked.findings("practice", "plan-joint-rule")).isEmpty();
    }

    @Test
    void aRidingSurfaceJointBesideItsLaneLineIsOutsideWhereTheSheetSaysSoAndElseWorthALook() {
        List<String> whole = List.of("-12", "12");
        PlannedJob off = road(whole, List.of("-12", "0.5", "12"));

        assertThat(off.findings("wsdot-5-04", "plan-joint-line"))
                .extracting(Finding::sort)
                .containsExactly(Sort.OUTSIDE);
        assertThat(off.findings("practice", "plan-joint-line"))
                .extracting(Finding::sort)
                .containsExactly(Sort.LOOK_AGAIN);
        assertThat(road(whole, List.of("-12", "0.0", "12")).findings("wsdot-5-04", "plan-joint-line"))
                .isEmpty();
    }

    @Test
    void pullsThatDoNotMeetAreWorthALook() {
        PlannedJob gap = PlannedJob.plan()
                .with(
                        "pulls",
                        List.of(
                                PlannedJob.object("name", "A", "lift", "2", "left_ft", "-12", "right_ft", "-0.5"),
                                PlannedJob.object("name", "B", "lift", "2", "left_ft", "0", "right_ft", "12")));

        assertThat(gap.findings("practice", "plan-pulls-meet"))
                .singleElement()
                .extracting(Finding::seen)
                .isEqualTo("lift 2: pull A ends at -0.5 ft, pull B begins at 0 ft");
    }

    @Test
    void everyRuleHasAWordOfItsOwnThatBeginsWithPlanAndIsNoRuleOfADay() {
        Set<String> ids =
                PlanFindings.rules().stream().map(PlanRule::id).collect(Collectors.toCollection(TreeSet::new));

        assertThat(ids).hasSize(PlanFindings.rules().size()).allMatch(id -> id.startsWith("plan-"));
        assertThat(ids)
                .doesNotContainAnyElementsOf(Rules.all().stream().map(Rule::id).toList());
    }

    /** Answers and archives name them for ever. */
    @Test
    void theWordsOfTheRulesStay() {
        assertThat(PlanFindings.rules())
                .extracting(PlanRule::id)
                .contains(
                        "plan-lift-thickness",
                        "plan-lift-sizes",
                        "plan-core-height",
                        "plan-mix-unsettled",
                        "plan-joint-wheel-path",
                        "plan-joint-line",
                        "plan-joint-offset",
                        "plan-joint-rule",
                        "plan-lines",
                        "plan-pulls-meet",
                        "plan-heat-window",
                        "plan-heat-target",
                        "plan-haul",
                        "plan-haul-source",
                        "plan-surface-silent",
                        "plan-thermal",
                        "plan-night",
                        "plan-dates",
                        "plan-tack-target",
                        "plan-paver-speed",
                        "plan-in-date",
                        "plan-work-unsettled");
    }

    /** Ohio CMS 2010, 401.06: polymer surface courses not after 1 November; read. */
    @Test
    void aPolymerSurfacePlannedIntoNovemberIsOutsideFromTheSecondDayOn() {
        PlannedJob plan =
                PlannedJob.plan().with("work", List.of(PlannedJob.object("from", "2026-10-20", "to", "2026-11-01")));
        assertThat(plan.findings("ohio-401-2010", "plan-dates")).isEmpty();

        assertThat(plan.with("work", List.of(PlannedJob.object("from", "2026-10-20", "to", "2026-11-05")))
                        .findings("ohio-401-2010", "plan-dates"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.seen()).contains("lift 2 of 12.5-70A may come on 2026-11-02");
                    assertThat(f.sort()).isEqualTo(Sort.OUTSIDE);
                });
    }

    @Test
    void aJobThatSaysNothingOfItsPlanIsLookedAtAllTheSame() {
        assertThat(PlanFindings.of(
                        Shift.job(Map.of()), SpecSheet.shipped("practice").orElseThrow()))
                .allSatisfy(f -> {
                    assertThat(f.of()).isEmpty();
                    assertThat(f.seen()).isNotBlank();
                    assertThat(f.limit()).isNotBlank();
                    assertThat(f.clause()).isNotBlank();
                    assertThat(f.inside()).isNotBlank();
                });
    }

    /**
     * NCF relation, NAVEDTRA 14080 (read): 200 t an hour, 12 ft, 2 in, 146 lb/ft3 need 22.83 ft/min; own arithmetic from
     * it for the rest.
     */
    @ParameterizedTest
    @CsvSource({"22, 1", "22.84, 0", "23, 0"})
    void aPaverThatMayNotGoAsFastAsThePlantMakesIsFound(String most, int found) {
        PlannedJob plan = PlannedJob.plan()
                .with(
                        "lifts",
                        List.of(PlannedJob.object(
                                "number", "2", "layer", "riding-surface", "thickness_in", "2", "mix", "M")))
                .with("mixes", List.of(PlannedJob.object("name", "M", "unit_weight_lb_ft3", "146")))
                .with("pulls", List.of(PlannedJob.object("name", "A", "lift", "2", "left_ft", "-12", "right_ft", "0")))
                .with("production", PlannedJob.object("plant_rate_ston", "200", "paver_speed_ft_min", most));

        assertThat(plan.findings("practice", "plan-paver-speed")).hasSize(found).allSatisfy(f -> {
            assertThat(f.seen()).contains("22.8 ft/min");
            assertThat(f.limit()).isEqualTo("at most 22 ft/min");
        });
    }

    @Test
    void aCertificateThatEndsBeforeTheLastPlannedDayIsWorthALook() {
        PlannedJob plan =
                PlannedJob.plan().with("work", List.of(PlannedJob.object("from", "2026-12-01", "to", "2027-01-01")));

        assertThat(plan.findings("practice", "plan-in-date"))
                .extracting(Finding::seen)
                .contains(
                        "the scale certificate of Quarry is good until 2026-12-31, the last planned day is 2027-01-01");
        assertThat(plan.with("work", List.of(PlannedJob.object("from", "2026-12-01", "to", "2026-12-31")))
                        .findings("practice", "plan-in-date"))
                .isEmpty();
    }

    /** Florida DOT 300-8.4, Table 300-1 (2010, read): at least 0.02 on new asphalt; whether it holds depends on more. */
    @Test
    void aTackRateBelowThatOfTheSheetIsFound() {
        PlannedJob plan = PlannedJob.plan()
                .with(
                        "tack_targets",
                        List.of(PlannedJob.object("surface", "new", "basis", "applied", "rate_gal_yd2", "0.01")));

        assertThat(plan.findings("florida-300-330-334", "plan-tack-target"))
                .extracting(Finding::seen)
                .contains("the applied tack rate agreed on new is 0.010 gal/yd²");
        assertThat(plan.findings("practice", "plan-tack-target")).isEmpty();
    }

    @Test
    void whatFiguresDependOnAndTheJobDoesNotSettleIsTold() {
        assertThat(PlannedJob.plan().findings("practice", "plan-work-unsettled"))
                .singleElement()
                .satisfies(f ->
                        assertThat(f.seen()).contains("work, the planned days").contains("cutoff"));
    }
}
