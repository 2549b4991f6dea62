package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Station;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.job.Planning;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.Jobs;
import screedbook.tally.Section;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * A plan worked out by hand: two pulls of 12 ft and 4500 ft each, in two lifts of 2.00 in at 110 lb/yd2 for each inch.
 * One pull of one lift is 6000 yd2 and 660 T; the lift is 12,000 yd2 and 1320 T. Own arithmetic throughout, with the
 * formulas that the tests of the calculations hold against print.
 */
class PlanFiguresTest {
    private static final SpecSheet UFC = SpecSheet.shipped("ufc-3-250-03-2001").orElseThrow();
    private static final SpecSheet PRACTICE = SpecSheet.shipped("practice").orElseThrow();

    private static Amount minutes(String value) {
        return Amount.of(value, Unit.MINUTE);
    }

    private static Amount tons(String value) {
        return Amount.of(value, Unit.SHORT_TON);
    }

    private static Planning planning(String haul) {
        List<Planning.Stretch> planned = List.of(stretch("A", 1), stretch("B", 1), stretch("A", 2), stretch("B", 2));
        Planning.Cycle cycle = new Planning.Cycle(
                minutes("15"), minutes("5"), minutes("5"), minutes(haul), minutes("15"), minutes("5"), minutes("20"));
        Planning.Production made = new Planning.Production(
                tons("200"), new BigDecimal("10"), tons("20"), cycle, Amount.of("30", Unit.FOOT_PER_MINUTE), null);
        Planning.Cutoff cutoff = new Planning.Cutoff(
                LocalTime.of(5, 30), YesNo.YES, LocalTime.of(0, 30), minutes("20"), minutes("30"), "traffic plan");
        Planning.Period period = new Planning.Period(
                LocalDate.of(2026, 6, 3), LocalDate.of(2026, 6, 4), LocalTime.of(8, 0), LocalTime.of(18, 0), null);
        return new Planning(List.of(), null, null, List.of(period), made, cutoff, List.of(), planned, null);
    }

    private static Planning.Stretch stretch(String pull, int lift) {
        return new Planning.Stretch(pull, lift, Station.of("10+00"), Station.of("55+00"));
    }

    private static Job job(Planning planning, YesNo dilution, Surface.Base base, Job.TackTarget... targets) {
        Job j = Jobs.us();
        List<Job.Lift> lifts = List.of(
                new Job.Lift(1, Job.Layer.BELOW_RIDING_SURFACE, Amount.of("2.00", Unit.INCH), "12.5-70A", base),
                new Job.Lift(2, Job.Layer.RIDING_SURFACE, Amount.of("2.00", Unit.INCH), "12.5-70A", null));
        List<Job.Pull> pulls = List.of(pull("A", 1, -12), pull("B", 1, 0), pull("A", 2, -12), pull("B", 2, 0));
        List<Job.Product> products =
                List.of(new Job.Product("CSS-1h", "CSS-1h", Amount.of("60", Unit.PERCENT), "emulsion", dilution));
        Lots lots = new Lots(
                tons("1000"), tons("250"), null, null, Lots.RandomBy.TONS, 2, null, null, Lots.Seed.DRAWN, List.of());
        return new Job(
                j.id(),
                j.name(),
                j.contract(),
                j.owner(),
                j.contractor(),
                j.place(),
                j.zone(),
                j.units(),
                j.stationing(),
                j.laneLines(),
                lifts,
                pulls,
                j.mixes(),
                j.plants(),
                j.trucks(),
                j.pavers(),
                products,
                j.distributors(),
                List.of(targets),
                j.thermal(),
                j.night(),
                lots,
                j.checks(),
                j.sheet(),
                j.people(),
                j.instruments(),
                planning);
    }

    private static Job.Pull pull(String name, int lift, int left) {
        return new Job.Pull(
                name,
                lift,
                Amount.of("" + left, Unit.FOOT),
                Amount.of("" + (left + 12), Unit.FOOT),
                Job.Direction.UP,
                null);
    }

    private static Job.TackTarget target(Tack.Under surface, Job.Basis basis, String rate) {
        return new Job.TackTarget(surface, basis, Amount.of(rate, Unit.GALLON_PER_SQUARE_YARD), null, null);
    }

    private static Job usual() {
        return job(
                planning("20"),
                YesNo.YES,
                Surface.Base.ASPHALT,
                target(Tack.Under.MILLED, Job.Basis.RESIDUAL, "0.06"),
                target(Tack.Under.NEW, Job.Basis.RESIDUAL, "0.03"));
    }

    private static Figure figure(Job job, SpecSheet sheet, String id) {
        return PlanFigures.of(job, sheet).stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not in the plan"));
    }

    private static String text(String id) {
        return figure(usual(), UFC, id).text();
    }

    @Test
    void everySectionIsThereAndEveryFigureSaysItsFormulaAndSource() {
        List<Section> sections = PlanFigures.of(usual(), UFC);
        assertThat(sections).extracting(Section::id).containsExactly("plan-lots", "plan-tack", "plan-haul");
        assertThat(sections.stream().flatMap(s -> s.figures().stream())).allSatisfy(f -> {
            assertThat(f.working().formula()).as(f.id()).isNotBlank();
            assertThat(f.working().source()).as(f.id()).isNotBlank();
        });
        assertThat(sections.stream().flatMap(s -> s.figures().stream()).map(Figure::id))
                .doesNotHaveDuplicates();
    }

    @Test
    void theTonsOfAMixMakeItsLotsAndSublots() {
        assertThat(text("plan-tons.12.5-70A")).isEqualTo("2640 T");
        Figure lots = figure(usual(), UFC, "plan-lots.12.5-70A");
        assertThat(lots.text()).isEqualTo("3 lots, 11 sublots");
        assertThat(lots.working().put()).hasSize(11).last().isEqualTo("lot 3 sublot 3: 140 T of 250 T");
        assertThat(text("plan-samples.12.5-70A")).isEqualTo("22");
        assertThat(text("plan-sublot-trucks.12.5-70A")).isEqualTo("12.5");
    }

    /** 12,000 yd2 at 0.06 / 0.60 = 0.100 gal/yd2 and at 0.03 / 0.60 = 0.050: 1200 and 600 gal at 60 degrees F. */
    @Test
    void eachSurfaceTakesItsTack() {
        assertThat(text("plan-tack-area.milled")).isEqualTo("12000 yd²");
        assertThat(text("plan-tack-rate.CSS-1h.milled")).isEqualTo("0.100 gal/yd²");
        assertThat(text("plan-tack-rate-diluted.CSS-1h.milled")).isEqualTo("0.200 gal/yd²");
        assertThat(text("plan-tack-volume.CSS-1h.milled")).isEqualTo("1200 gal");
        assertThat(text("plan-tack-area.new")).isEqualTo("12000 yd²");
        assertThat(text("plan-tack-volume.CSS-1h.new")).isEqualTo("600 gal");
        assertThat(text("plan-tack-total.CSS-1h")).isEqualTo("1800 gal");
        assertThat(text("plan-tack-samples")).isEqualTo("1");
    }

    /** At 70 degrees F 1800 / 0.9975 = 1804.5, at 160 1800 / 0.9750 = 1846.2 gal; a tank holds 1000. */
    @Test
    void theVolumeAtSprayTemperatureAndTheTanksAreRoundedUp() {
        assertThat(text("plan-tack-spray.CSS-1h")).isEqualTo("70 to 160 °F");
        assertThat(figure(usual(), UFC, "plan-tack-spray.CSS-1h").working().source())
                .contains("UFC 3-250-03")
                .contains("Table 3-2");
        assertThat(text("plan-tack-warm.CSS-1h.70")).isEqualTo("1805 gal");
        assertThat(text("plan-tack-warm.CSS-1h.160")).isEqualTo("1847 gal");
        assertThat(text("plan-tack-loads.CSS-1h.D7")).isEqualTo("2");
    }

    @Test
    void aSheetWithoutARangeSaysSoAndThePlanGoesOnAtTheBase() {
        assertThat(figure(usual(), PRACTICE, "plan-tack-spray.CSS-1h").text()).isEqualTo("no range is set");
        assertThat(figure(usual(), PRACTICE, "plan-tack-loads.CSS-1h.D7").text())
                .isEqualTo("2");
    }

    @Test
    void pullsThatTouchHaveAJointFace() {
        assertThat(text("plan-tack-face.lift 1")).isEqualTo("4500 ft");
        assertThat(text("plan-tack-face.lift 2")).isEqualTo("4500 ft");
    }

    @Test
    void aBaseOfAggregateIsNotTackedAndAnUnsettledSurfaceIsNamed() {
        Job aggregate = job(planning("20"), YesNo.NO, Surface.Base.AGGREGATE, target(Tack.Under.NEW, null, "0.03"));
        assertThat(PlanFigures.of(aggregate, UFC).stream()
                        .flatMap(s -> s.figures().stream())
                        .map(Figure::id)
                        .filter(id -> id.startsWith("plan-tack-area")))
                .containsExactly("plan-tack-area.new");
        Job unsettled = job(planning("20"), YesNo.NO, Surface.Base.ASPHALT, target(Tack.Under.NEW, null, "0.03"));
        assertThat(figure(unsettled, UFC, "plan-tack-area.unsettled").text()).startsWith("12000 yd²; ");
    }

    @Test
    void anAppliedTargetIsSprayedAsItStands() {
        Job job = job(
                planning("20"),
                YesNo.YES,
                Surface.Base.CONCRETE,
                target(Tack.Under.CONCRETE, Job.Basis.APPLIED, "0.08"),
                target(Tack.Under.NEW, Job.Basis.RESIDUAL, "0.03"));
        assertThat(figure(job, UFC, "plan-tack-rate.CSS-1h.concrete").text()).isEqualTo("0.080 gal/yd²");
        assertThat(figure(job, UFC, "plan-tack-volume.CSS-1h.concrete").text()).isEqualTo("960 gal");
    }

    /** The parts of the round as printed (Brock, Technical Paper T-135) make 85 minutes; the worksheet's 95 needs 17 and 16. */
    @Test
    void trucksAreCountedByBothConventions() {
        assertThat(text("plan-cycle")).isEqualTo("85 min");
        assertThat(text("plan-shift-tons")).isEqualTo("2000 T");
        assertThat(text("plan-trucks-by-rounds")).isEqualTo("15");
        assertThat(text("plan-trucks-by-rate")).isEqualTo("15");
        Job longer = job(planning("30"), YesNo.NO, Surface.Base.ASPHALT);
        Figure rounds = figure(longer, UFC, "plan-trucks-by-rounds");
        assertThat(rounds.text()).isEqualTo("17");
        assertThat(rounds.working().put())
                .containsExactly("2000 T / 20 T = 100 trips", "60 x 10 h / 95 min = 6 rounds", "100 / 6 = 17 trucks");
        assertThat(figure(longer, UFC, "plan-trucks-by-rate").text()).isEqualTo("16");
        assertThat(text("plan-spacing")).isEqualTo("6.0 min");
    }

    /** 200 t/h over 12 ft of 2 in at 110 lb/yd2/in (146.67 lb/ft3): 400000 / 60 / 293.33 = 22.73 ft/min. */
    @Test
    void thePaverKeepsUpWithThePlant() {
        assertThat(text("plan-paver-speed.lift 2 12 ft")).isEqualTo("22.7 ft/min");
        assertThat(text("plan-paver-takes.lift 2 12 ft")).isEqualTo("264 T");
    }

    /** 05:30 less 30 + 20 + 5 + 15 + 20 = 90 minutes; 00:30 goes back over midnight. */
    @Test
    void theLastLoadLeavesInTime() {
        Figure lanes = figure(usual(), UFC, "plan-last-load.lanes open.the plant");
        assertThat(lanes.text()).isEqualTo("04:00");
        assertThat(lanes.working().formula())
                .startsWith("time by which the mat is done - cooling - rolling - dump - delay at the paver - haul");
        assertThat(lanes.working().source()).isEqualTo("traffic plan");
        assertThat(text("plan-last-load.cold.the plant")).isEqualTo("23:00");
        Figure dark = figure(usual(), UFC, "plan-last-load.dark on 2026-06-03.the plant");
        LocalTime sunset = LocalTime.parse(dark.working().put().get(0).replaceAll(".* ", ""));
        assertThat(LocalTime.parse(dark.text())).isEqualTo(sunset.minusMinutes(90));
        assertThat(sunset).isBetween(LocalTime.of(21, 0), LocalTime.of(21, 30));
    }

    @Test
    void aPlanOfWhichNothingIsSettledHasNoFigures() {
        assertThat(PlanFigures.of(Jobs.us(), PRACTICE)).isEmpty();
        assertThat(PlanFigures.of(Jobs.metric(), PRACTICE)).isEmpty();
    }
}
