package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Samples, cores and gauge readings with what became of them. Lots of 200 T in sublots of 100 T. */
class SamplesTest {
    private static final String MIX = "12.5-70A";
    private static final Job JOB = FillingTest.job(Lots.End.EXACT_TON, Lots.Overnight.CARRY);

    private static Job retest(Lots.Retest retest) {
        return FillingTest.with(new Lots(
                Amount.of("200", Unit.SHORT_TON),
                Amount.of("100", Unit.SHORT_TON),
                Lots.End.EXACT_TON,
                Lots.Overnight.CARRY,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                retest));
    }

    private static Samples of(Shift shift, Job job, ToDate before) {
        return Samples.of(shift.read(), job, before);
    }

    private static Shift core(Shift shift, String number, String... more) {
        String[] all = new String[more.length + 10];
        String[] own = {"core", number, "place_sta", "12+50", "pull", "B", "lift", "2", "mix", MIX};
        System.arraycopy(own, 0, all, 0, 10);
        System.arraycopy(more, 0, all, 10, more.length);
        return shift.key(Kind.CORE, "13:00", all);
    }

    private static String percents(Samples samples) {
        return samples.densities().all().stream()
                .map(d -> d.name() + " " + d.percent().text(2) + (d.counts() ? "" : " kept"))
                .collect(Collectors.joining("; "));
    }

    /** 2.310 of 2.480 is 93.15 %: common practice, no source. */
    @Test
    void aCoreIsHeldAgainstItsOwnGmmElseTheLotsElseTheDaysElseTheMixs() {
        Shift shift = FillingTest.five();
        core(shift, "C-1", "gmb", "2.310");
        assertThat(percents(of(shift, JOB, ToDate.NONE))).isEqualTo("core C-1 not worked out: no Gmm is noted");

        shift.key(Kind.RESULT, "14:00", "what", "gmm", "found", "2.500", "mix", MIX, "tested", "2026-06-03");
        assertThat(percents(of(shift, JOB, ToDate.NONE))).isEqualTo("core C-1 92.40 %");

        shift.key(Kind.RESULT, "14:10", "what", "gmm", "found", "2.400", "mix", MIX, "tested", "2026-06-04");
        assertThat(percents(of(shift, JOB, ToDate.NONE)))
                .as("a Gmm of the day after is not this day's")
                .isEqualTo("core C-1 92.40 %");

        shift.key(Kind.RESULT, "14:20", "what", "gmm", "found", "2.490", "mix", MIX, "lot", "1");
        assertThat(percents(of(shift, JOB, ToDate.NONE))).isEqualTo("core C-1 92.77 %");

        shift.key(Kind.RESULT, "14:30", "sample", "C-1", "what", "gmm", "found", "2.480");
        Samples samples = of(shift, JOB, ToDate.NONE);
        assertThat(percents(samples)).isEqualTo("core C-1 93.15 %");
        assertThat(samples.densities().all().get(0).working().put())
                .containsExactly("Gmb 2.310, paver/6", "Gmm 2.480, its own, paver/10", "voids 6.85 %");
    }

    @Test
    void aReadingIsItsMeanAndTheCorrelationOfItsGaugeToTheMix() {
        Shift first = new Shift("2026-06-02-day", "paver")
                .key(
                        Kind.INSTRUMENT,
                        "08:00",
                        "instrument",
                        "G-1",
                        "against",
                        "cores",
                        "correlated_mix",
                        MIX,
                        "correlation_lb_ft3",
                        "2.0");
        Shift shift = FillingTest.five()
                .key(
                        Kind.GAUGE,
                        "13:00",
                        "first_reading_lb_ft3",
                        "142.0",
                        "second_reading_lb_ft3",
                        "143.0",
                        "place_sta",
                        "12+50",
                        "pull",
                        "B",
                        "lift",
                        "2",
                        "mix",
                        MIX,
                        "instrument",
                        "G-1",
                        "gmm",
                        "2.480",
                        "target_lb_ft3",
                        "145.0");
        Density density =
                of(shift, JOB, ToDate.of(first.read(), JOB)).densities().all().get(0);
        // (142.5 + 2.0) / (2.480 x 62.4) = 144.5 / 154.752
        assertThat(density.percent().text(2)).isEqualTo("93.38 %");
        assertThat(density.ofTarget().orElseThrow().shown(2).text()).isEqualTo("99.66 %");
        assertThat(density.where()).hasValue(new Filling.Where(MIX, 1, 2));
        assertThat(density.working().put())
                .containsExactly(
                        "mean of 142.0 lb/ft³, 143.0 lb/ft³: 142.50 lb/ft³",
                        "correlation 2.0 lb/ft³, 2026-06-02-day paver/1",
                        "Gmm 2.480, keyed with it, 154.8 lb/ft³",
                        "target 145.0 lb/ft³, 99.7 % of it");
    }

    @Test
    void whichOfATestAndItsRepeatCountsIsForTheJobToSay() {
        Shift shift = FillingTest.five();
        core(shift, "C-1", "gmb", "2.310", "gmm", "2.500");
        core(shift, "C-2", "gmb", "2.350", "gmm", "2.500", "again", "paver/6");
        assertThat(percents(of(shift, JOB, ToDate.NONE))).isEqualTo("core C-1 92.40 %; core C-2 94.00 % kept");
        assertThat(percents(of(shift, retest(Lots.Retest.FIRST), ToDate.NONE)))
                .isEqualTo("core C-1 92.40 %; core C-2 94.00 % kept");
        assertThat(percents(of(shift, retest(Lots.Retest.NEWER), ToDate.NONE)))
                .isEqualTo("core C-1 92.40 % kept; core C-2 94.00 %");
        assertThat(percents(of(shift, retest(Lots.Retest.BOTH), ToDate.NONE)))
                .isEqualTo("core C-1 92.40 %; core C-2 94.00 %");
    }

    @Test
    void whatALaboratoryTellsOfACoreCountsBeforeWhatWasMeasuredOnIt() {
        Shift shift = FillingTest.five();
        core(shift, "C-1", "gmb", "2.310", "gmm", "2.500");
        shift.key(Kind.RESULT, "14:00", "sample", "C-1", "what", "gmb", "found", "2.325");
        assertThat(percents(of(shift, JOB, ToDate.NONE))).isEqualTo("core C-1 92.40 % kept; core C-1 93.00 %");
    }

    @Test
    void aSampleStandsForItsSublotAndIsClosedByAResultOfALaterShift() {
        Shift first = FillingTest.five()
                .key(
                        Kind.SAMPLE,
                        "11:00",
                        "sample",
                        "S-1",
                        "material",
                        "mix",
                        "ticket",
                        "103",
                        "taken_by",
                        "RK",
                        "seal_number",
                        "4411");
        Totals totals = Totals.of(first.read(), JOB, ToDate.NONE, first.at("16:00"));
        assertThat(totals.figure("sample.S-1").orElseThrow().text())
                .isEqualTo(
                        "open, with RK; lot 1 sublot 2 stands for 100.00 T, 3 loads, ticket 102 to 104, pull B lift 2"
                                + " 12+00 to 15+00");
        ToDate before = ToDate.of(first.read(), JOB);
        Shift second = new Shift("2026-06-04-day", "paver")
                .key(
                        Kind.CUSTODY,
                        "08:00",
                        "sample",
                        "S-1",
                        "given_by",
                        "RK",
                        "taken_by",
                        "Lab",
                        "seal_number",
                        "4411");
        Samples open = of(second, JOB, before);
        assertThat(open.open())
                .singleElement()
                .satisfies(t -> assertThat(t.holder()).isEqualTo("Lab"));
        second.key(Kind.RESULT, "15:00", "sample", "S-1", "what", "binder-content", "found", "5.4", "closes", "no");
        assertThat(of(second, JOB, before).open()).hasSize(1);
        second.key(Kind.RESULT, "16:00", "sample", "S-1", "what", "air-voids", "found", "3.9", "closes", "yes");
        Samples closed = of(second, JOB, before);
        assertThat(closed.open()).isEmpty();
        assertThat(Totals.of(second.read(), JOB, before, second.at("17:00"))
                        .figure("sample.S-1")
                        .orElseThrow()
                        .text())
                .startsWith("closed, binder-content 5.4, air-voids 3.9; lot 1 sublot 2 stands for 100.00 T");
        Day third = new Shift("2026-06-05-day", "paver")
                .key(Kind.NOTE, "08:00", "text", "nothing")
                .read();
        ToDate all = before.and(second.read(), JOB);
        assertThat(Totals.of(third, JOB, all, second.at("17:00")).figure("sample.S-1"))
                .as("what a shift did not touch is not told in it once it is closed")
                .isEmpty();
    }

    @Test
    void aSublotTellsHowManyOfItsRandomSamplesWereTaken() {
        Shift shift = FillingTest.five()
                .key(Kind.SAMPLE, "11:00", "sample", "S-1", "ticket", "103", "at_random", "yes")
                .key(Kind.SAMPLE, "11:10", "sample", "S-2", "ticket", "103", "at_random", "no");
        Totals totals = Totals.of(shift.read(), JOB, ToDate.NONE, shift.at("16:00"));
        assertThat(totals.figure("sublot-tons." + MIX + ".1.2").orElseThrow().text())
                .endsWith("; samples S-1, S-2, 1 at random, 1 asked for");
        assertThat(totals.figure("sublot-tons." + MIX + ".1.1").orElseThrow().text())
                .endsWith("; 0 at random, 1 asked for");
    }

    @Test
    void aCoreWithoutADensityIsOpen() {
        Shift shift = FillingTest.five();
        core(shift, "C-1");
        assertThat(of(shift, JOB, ToDate.NONE).openCores()).hasSize(1);
        shift.key(Kind.RESULT, "14:00", "sample", "C-1", "what", "density", "found", "93.4");
        assertThat(of(shift, JOB, ToDate.NONE).openCores()).isEmpty();
    }

    /** Mean and s by hand: 92.4, 93.2, 94.0 have the mean 93.2 and s 0.8. */
    @Test
    void aLotHasTheMeanAndTheStandardDeviationOfItsCores() {
        Shift shift = FillingTest.five();
        core(shift, "C-1", "gmb", "2.310", "gmm", "2.500");
        core(shift, "C-2", "gmb", "2.330", "gmm", "2.500");
        core(shift, "C-3", "gmb", "2.350", "gmm", "2.500");
        Totals totals = Totals.of(shift.read(), JOB, ToDate.NONE, shift.at("16:00"));
        assertThat(totals.figure("density-mean." + MIX + ".1.core")
                        .orElseThrow()
                        .text())
                .isEqualTo("93.20 %, voids 6.80 %, 3 tests");
        assertThat(totals.figure("density-s." + MIX + ".1.core").orElseThrow().value())
                .isEqualByComparingTo("0.8");
        assertThat(totals.figure("core-density.C-2").orElseThrow().text()).isEqualTo("93.2 %");
        assertThat(totals.figure("sublot-tons." + MIX + ".1.2").orElseThrow().text())
                .isEqualTo("100.00 T of 100 T; 3 loads, ticket 102 to 104, pull B lift 2 12+00 to 15+00; 3 cores,"
                        + " 0 at random, 1 asked for");
    }

    @Test
    void readingsBesideCoresTellTheGaugesCorrelation() {
        Shift shift = FillingTest.five();
        core(shift, "C-1", "gmb", "2.310");
        core(shift, "C-2", "gmb", "2.330");
        for (int i = 1; i <= 2; i++) {
            shift.key(
                    Kind.GAUGE,
                    "13:1" + i,
                    "first_reading_lb_ft3",
                    i == 1 ? "142.144" : "143.392",
                    "place_sta",
                    "12+50",
                    "mix",
                    MIX,
                    "core",
                    "C-" + i,
                    "instrument",
                    "G-1");
        }
        // 2.310 x 62.4 = 144.144 and 2.330 x 62.4 = 145.392: both 2.000 above the gauge
        Optional<Figure> figure =
                Totals.of(shift.read(), JOB, ToDate.NONE, shift.at("16:00")).figure("gauge-correlation.G-1." + MIX);
        assertThat(figure.orElseThrow().text()).isEqualTo("2.00 lb/ft³, s 0.00, 2 places");
    }

    @Test
    void readingsAfterMorePassesTellAfterHowManyItWasDensest() {
        Shift shift = FillingTest.five();
        String[] readings = {"138.0", "142.0", "144.7", "138.2"};
        for (int i = 0; i < readings.length; i++) {
            shift.key(
                    Kind.GAUGE,
                    "13:1" + i,
                    "first_reading_lb_ft3",
                    readings[i],
                    "passes",
                    i + 1 + "",
                    "place_sta",
                    "12+50",
                    "pull",
                    "B",
                    "gmm",
                    "2.480");
        }
        assertThat(Totals.of(shift.read(), JOB, ToDate.NONE, shift.at("16:00"))
                        .figure("density-passes.pull-B-12+50")
                        .orElseThrow()
                        .text())
                .isEqualTo("highest after 3 passes, 93.5 %; 1 pass: 89.2 %, 2 passes: 91.8 %, 3 passes: 93.5 %,"
                        + " 4 passes: 89.3 %");
        assertThat(of(shift, JOB, ToDate.NONE).densities().lots())
                .as("what was read before the last pass is in no mean")
                .singleElement()
                .satisfies(l -> assertThat(l.tests()).hasSize(1));
    }

    @Test
    void aJobThatSaysNothingOfSamplesHasNoFigureOfThem() {
        Job silent = retest(null);
        Totals totals = Totals.of(
                FillingTest.five().read(),
                silent,
                ToDate.NONE,
                FillingTest.five().at("16:00"));
        assertThat(totals.sections()).extracting(Section::id).doesNotContain("lots", "density", "samples");
    }
}
