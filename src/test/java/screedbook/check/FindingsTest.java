package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import screedbook.entry.Amend;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Ticket;
import screedbook.job.Agreed;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;

/** How findings stand together: their answers, their order, by what they are judged, and what raises none. */
class FindingsTest {
    private static final String LIMITS = "paver_degF=264";

    private static List<String> rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).distinct().toList();
    }

    @Test
    void aFindingSaysAllThatAReaderNeeds() {
        Finding finding = Shift.night()
                .load("21:38", "48217", LIMITS)
                .findings("heat-at-paver")
                .get(0);

        assertThat(finding)
                .isEqualTo(new Finding(
                        "heat-at-paver",
                        Sort.OUTSIDE,
                        List.of(new Ref("paver", 4)),
                        "at the paver 264 °F",
                        "at least 270 °F",
                        "practice PG 70",
                        "270 °F or more",
                        "At the paver a mix with PG 70 is at least 270.",
                        List.of(),
                        new BigDecimal("-6")));
    }

    @Test
    void anAnswerStandsWithTheFindingOfItsRuleAndEntryOnly() {
        Shift shift = Shift.night()
                .load("21:38", "48217", LIMITS)
                .load("21:44", "48218", LIMITS)
                .at("21:45", "answer of=paver/4 rule=heat-at-paver text=plant~told~21:40 decided_by=RK");

        List<Finding> findings = shift.findings("heat-at-paver");

        assertThat(findings).extracting(Finding::answered).containsExactly(true, false);
        assertThat(findings.get(0).answers().get(0).entry().text()).isEqualTo("plant told 21:40");
        assertThat(shift.findings("tack-face")).noneMatch(Finding::answered);
    }

    @Test
    void aStruckAnswerAnswersNothing() {
        Shift shift = Shift.night()
                .load("21:38", "48217", LIMITS)
                .at("21:45", "answer of=paver/4 rule=heat-at-paver text=plant~told")
                .at("21:46", "strike of=paver/5 reason=other~load");

        assertThat(shift.findings("heat-at-paver")).noneMatch(Finding::answered);
    }

    @Test
    void aStruckEntryCarriesNoMarkAndAnAmendedOneTheMarkOfItsNewValue() {
        assertThat(Shift.night()
                        .load("21:38", "48217", LIMITS)
                        .at("21:40", "strike of=paver/4 reason=other~job's")
                        .findings("heat-at-paver"))
                .isEmpty();
        assertThat(Shift.night()
                        .load("21:38", "48217", LIMITS)
                        .with(new Amend(
                                new Ref("paver", 4), Map.of("paver_degF", new java.math.BigDecimal("294")), "misread"))
                        .findings("heat-at-paver"))
                .isEmpty();
    }

    @Test
    void findingsStandInTheOrderOfTheirEntries() {
        List<Finding> findings = Shift.night()
                .load("21:38", "48217", LIMITS + " truck=T9")
                .at("21:40", "surface surface_degF=20 pull=B lift=2")
                .load("21:44", "48218", LIMITS)
                .findings();

        List<Integer> lines = findings.stream().map(f -> f.of().get(0).n()).toList();
        assertThat(lines).isSorted().contains(4, 5, 6);
    }

    @Test
    @DisplayName("a limit that changes in mid-shift holds from its line on (situation 95)")
    void aLimitThatChangesInMidShiftHoldsFromItsLineOn() {
        Shift shift = Shift.night().load("21:00", "48217", LIMITS).load("21:10", "48218", LIMITS);
        Optional<Agreed> job = shift.ground().inForce().get(0).agreed();
        Ground changed = new Ground(List.of(
                new InForce("paver", 1, job, SpecSheet.shipped("practice")),
                new InForce("paver", 5, job, SpecSheet.shipped("ohio-401-2010"))));

        List<Finding> findings = Findings.of(shift.day(), shift.totals(), changed).stream()
                .filter(f -> f.rule().equals("heat-at-paver"))
                .toList();

        assertThat(findings).extracting(f -> f.of().get(0)).containsExactly(new Ref("paver", 4));
    }

    @Test
    @DisplayName("a mix without limits is kept and no limit is set (situation 96)")
    void aMixWithoutLimitsIsKept() {
        Shift shift = Shift.night(Map.of("sheet", "ohio-401-2010")).load("21:00", "48217", "paver_degF=210");

        assertThat(shift.findings("heat-at-paver")).isEmpty();
        Guide guide = Guides.of(
                shift.ground(),
                shift.day(),
                Shift.entry("ticket mix=12.5-70A lift=2 paver_degF=210"),
                shift.time("21:00"),
                "paver_degF");
        assertThat(guide.verdict()).isEqualTo(Verdict.NO_LIMIT);
        assertThat(guide.limit()).isEqualTo("no limit set");
    }

    @Test
    void withoutItsJobAShiftIsJudgedByNothingButItself() {
        Shift shift = Shift.night().load("21:00", "48217", LIMITS + " loaded=21:05");
        Ground lost = new Ground(List.of(new InForce("paver", 1, Optional.empty(), Optional.empty())));

        List<Finding> findings = Findings.of(shift.day(), Optional.empty(), lost, null);

        assertThat(rules(findings)).containsExactly("plan-not-found", "times-order");
        assertThat(findings.get(0).seen()).isEqualTo("the job revision named in this line is not found by its hash");
    }

    @Test
    void anEmptyDayHasNothingToLookAt() {
        Shift shift = Shift.unopened();

        assertThat(shift.findings()).isEmpty();
    }

    @Test
    @DisplayName("a second book is read together with the first (situation 91)")
    void aTicketKeyedInTwoBooksIsRepeated() {
        Shift shift = Shift.night()
                .load("21:00", "48217", "")
                .book()
                .at("21:00", "opening format=1 zone=America/Denver")
                .load("21:05", "48217", "");

        assertThat(shift.findings("number-repeated"))
                .singleElement()
                .satisfies(f -> assertThat(f.of()).containsExactly(new Ref("second", 2), new Ref("paver", 4)));
    }

    @Test
    void aSampleOfAnEarlierShiftIsASampleOfTheProject() {
        Shift shift = Shift.night()
                .at("21:00", "tack product=CSS-1h surface=milled from_sta=12+00 to_sta=13+00")
                .after(new ToDate(Map.of(), Map.of(), 1, List.of(), 0));

        assertThat(shift.findings("tack-sample")).isEmpty();
    }

    @Test
    void aNumberThatWasReadWithLeadingNoughtsIsTheSameNumber() {
        Shift shift = Shift.night()
                .load("21:00", "0099", "")
                .load("21:10", "0101", "")
                .at("21:20", "number plant=Quarry number=100 what=lost");

        assertThat(shift.findings("number-missing")).isEmpty();
    }

    @Test
    @DisplayName("what is ordinary raises nothing (situations 1, 2, 3, 9, 20, 27, 31, 41, 43, 45, 48)")
    void whatIsOrdinaryRaisesNothing() {
        Map<String, Shift> ordinary = Map.of(
                "1, 2, 3: over midnight, printed before it",
                Shift.night()
                        .at("23:00", "surface surface_degF=60 pull=B lift=2")
                        .at("23:00", "weather air_degF=55 road=dry")
                        .load("00:30", "1001", "loaded=23:58 arrived=00:25"),
                "9: the same numbers in another shift of the date",
                Shift.day(LocalDate.of(2026, 6, 3), Map.of())
                        .at("07:00", "weather air_degF=60 road=dry")
                        .at("07:00", "surface surface_degF=60 pull=B lift=2")
                        .load("08:00", "1001", ""),
                "20: the last day of a leap year's February",
                Shift.day(java.time.LocalDate.of(2028, 2, 29), Map.of("plants", List.of()))
                        .at("07:00", "weather air_degF=60 road=dry")
                        .at("07:00", "surface surface_degF=60 pull=B lift=2")
                        .load("08:00", "1001", ""),
                "27: a load that was loaded later comes first",
                Shift.night().load("21:00", "1002", "loaded=20:20").load("21:10", "1001", "truck=T118 loaded=20:10"),
                "31: a batch plant prints no gross and no tare",
                Shift.night().load("21:00", "1001", "batches=11 batch_lb=4000 net_ston=22.00"),
                "41, 45: another job's load is kept and not counted",
                Shift.night().load("21:00", "1001", "fate=other-job pull= lift= mix=9.5-58 paver_degF="),
                "43: two pavers at once",
                Shift.night()
                        .load("21:00", "1001", "paver=P1 pull=A from_sta=12+00 to_sta=13+00")
                        .load("21:01", "1002", "paver=P2 truck=T118 from_sta=11+00 to_sta=12+00"),
                "48: rejected, and placed later by an amendment",
                Shift.night()
                        .load("21:00", "1001", "fate=rejected")
                        .with(new Amend(new Ref("paver", 4), Map.of("fate", "placed"), "cooled mix was remixed")));

        assertThat(ordinary)
                .allSatisfy((name, shift) ->
                        assertThat(rules(shift.findings())).as(name).isSubsetOf("tack-face"));
    }

    @Test
    @DisplayName("when clocks go back, what comes later is later (situation 4)")
    void whenClocksGoBackWhatComesLaterIsLater() {
        Day day = Shift.clocksGoBack();

        assertThat(day.standing(Ticket.class))
                .extracting(t -> t.entry().paper().number())
                .containsExactly("1001", "1002");
        Shift shift = Shift.night();
        assertThat(Findings.of(day, Optional.empty(), shift.ground(), null))
                .extracting(Finding::rule)
                .doesNotContain("clock-back", "times-order", "keyed-after", "ahead-of-clock");
    }

    @Test
    void aMetricJobIsJudgedInTheSheetsUnits() {
        Map<String, Object> metric = Map.ofEntries(
                Map.entry("units", "metric"),
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
                                + " target_plant_degC=149"))));
        Shift shift = Shift.bare(metric)
                .at("19:40", "weather air_degC=16 road=dry")
                .at("19:45", "surface surface_degC=20 pull=B lift=2")
                .load("21:00", "1001", "paver_degF= paver_degC=131 net_ston= net_t=20.24 plant_degC=135");

        assertThat(shift.findings("heat-at-paver"))
                .singleElement()
                .satisfies(f -> assertThat(f.seen()).isEqualTo("at the paver 131 °C (267.8 °F)"));
        assertThat(rules(shift.findings())).containsExactlyInAnyOrder("heat-at-paver", "tack-face");
    }
}
