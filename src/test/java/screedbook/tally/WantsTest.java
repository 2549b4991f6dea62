package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.job.Wanted;
import screedbook.job.Wanted.Change;
import screedbook.job.Wanted.Count;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The job's own checks come due by what is counted, and what the work went on without is named. */
class WantsTest {
    private static Wanted row(Kind kind, Integer first, String each, Count of) {
        return new Wanted(kind, null, first, new BigDecimal(each), of, null, null, null, "clause 7");
    }

    private static Job job(Wanted... rows) {
        Checks c = Jobs.usChecks();
        return Jobs.with(new Checks(
                c.firstLoads(),
                c.thenOneIn(),
                c.heatWhere(),
                c.surfaceEvery(),
                c.weatherEvery(),
                c.loadAge(),
                c.yieldEvery(),
                c.tackSamples(),
                c.grossAndTare(),
                c.source(),
                List.of(rows),
                null,
                null));
    }

    private static Due due(Shift shift, String now, Wanted row) {
        return due(shift, now, row, ToDate.NONE);
    }

    private static Due due(Shift shift, String now, Wanted row, ToDate before) {
        List<Due> dues =
                Totals.of(shift.read(), job(row), before, shift.at(now)).dues();
        return dues.get(dues.size() - 1);
    }

    private static Shift loads(int from, int to) {
        return loads(Shift.day(), from, to);
    }

    /** A load of 20.00 T every 10 minutes from 08:00. */
    private static Shift loads(Shift shift, int from, int to) {
        for (int i = from; i <= to; i++) {
            shift.ticket(
                    String.format("%02d:%02d", 8 + (i - 1) / 6, (i - 1) % 6 * 10), "" + i, "20.00", "mix", "12.5-70A");
        }
        return shift;
    }

    private static Shift checked(Shift shift, String clock) {
        return shift.key(Kind.YIELD, clock, "from_sta", "10+00", "to_sta", "12+00");
    }

    /** Florida DOT training on spread rates, slide 24: at least once in 200 tons. Ten loads of 20 T are 200 T. */
    @Test
    void aYieldCheckComesDueWithTheTonsThatWerePlaced() {
        Wanted each200 = row(Kind.YIELD, null, "200", Count.TONS);

        Due soon = due(loads(1, 6), "09:00", each200);
        assertThat(soon.when()).isEqualTo("in 80 T");
        assertThat(soon.now()).isFalse();
        assertThat(soon.what()).isEqualTo("yield check");

        Due due = due(loads(1, 10), "09:35", each200);
        assertThat(due.when()).isEqualTo("NOW");
        assertThat(due.missed()).isEmpty();
        assertThat(due.asked()).isEqualTo(1);

        Due done = due(checked(loads(1, 10), "09:38"), "09:40", each200);
        assertThat(done.when()).isEqualTo("in 200 T");
        assertThat(done.done()).isEqualTo(1);
        assertThat(done.asked()).isEqualTo(1);
    }

    @Test
    void whenTheNextLoadComesWithoutItItIsOver() {
        Wanted each200 = row(Kind.YIELD, null, "200", Count.TONS);

        Due over = due(loads(1, 11), "09:50", each200);
        assertThat(over.missed()).hasSize(1);
        assertThat(over.missed().get(0).seen()).isEqualTo("no yield check in 200 T");
        assertThat(over.missed().get(0).wanted()).isEqualTo("once in 200 T");
        assertThat(over.missed().get(0).source()).isEqualTo("clause 7");
        assertThat(over.missed().get(0).of().n()).isEqualTo(11);
        assertThat(over.when()).isEqualTo("NOW");
        assertThat(over.asked()).isEqualTo(1);
        assertThat(over.done()).isZero();
    }

    /** 500 T in all: 200 and 400 were due; the first was made, the second never was. */
    @Test
    void whatWasMadeAndWhatWasNotIsCounted() {
        Wanted each200 = row(Kind.YIELD, null, "200", Count.TONS);
        Shift shift = checked(loads(1, 9), "09:25");
        Due due = due(loads(shift, 10, 25), "12:10", each200);
        assertThat(due.asked()).isEqualTo(2);
        assertThat(due.done()).isEqualTo(1);
        assertThat(due.missed()).hasSize(1);
        assertThat(due.when()).as("it is owed until it is made").isEqualTo("NOW");
        Due made = due(checked(shift, "12:12"), "12:15", each200);
        assertThat(made.when()).isEqualTo("in 300 T");
        assertThat(made.asked()).isEqualTo(3);
        assertThat(made.done()).isEqualTo(2);
    }

    /** Florida DOT training on spread rates: at the start of the day, then once in 200 tons. */
    @Test
    void theFirstLoadMayHaveATurnOfItsOwn() {
        Wanted start = row(Kind.YIELD, 1, "200", Count.TONS);
        assertThat(due(Shift.day(), "07:30", start).when()).isEqualTo("with the next");
        assertThat(due(loads(1, 1), "08:05", start).when()).isEqualTo("NOW");
        assertThat(due(checked(loads(1, 1), "08:08"), "08:09", start).when()).isEqualTo("in 200 T");
        assertThat(due(loads(1, 2), "08:15", start).missed()).hasSize(1);
    }

    /** First five loads, then one in five, at the plant too: Florida DOT 330-6.3. The rhythm of the usual check. */
    @Test
    void aBlankOfTheTicketIsDueInTheRhythmOfTheUsualTemperature() {
        Wanted plant =
                new Wanted(Kind.TICKET, "plant", 5, new BigDecimal("5"), Count.LOADS, null, YesNo.YES, null, null);
        Shift shift = Shift.day();
        for (int i = 1; i <= 13; i++) {
            boolean read = List.of(1, 2, 4, 5, 7, 10).contains(i);
            String clock = String.format("%02d:%02d", 8 + i / 12, i % 12 * 5);
            shift.ticket(clock, "" + i, "20.00", "mix", "12.5-70A", read ? "plant_degF" : "truck", read ? "300" : "T1");
        }
        Due due = due(shift, "09:30", plant);
        assertThat(due.asked()).isEqualTo(6);
        assertThat(due.done()).isEqualTo(5);
        assertThat(due.when()).isEqualTo("in 1 load");
        assertThat(due.missed()).extracting(m -> m.of().n()).containsExactly(3);
        assertThat(due.id()).isEqualTo("ticket.plant.12.5-70A");
    }

    /** NHDOT 401 3.13.6 (read): a transverse joint is measured with a straightedge of 10 ft. */
    @Test
    void eachJointAcrossTheRoadWantsItsStraightedge() {
        Wanted edge =
                new Wanted(Kind.STRAIGHTEDGE, "over-joint", null, BigDecimal.ONE, Count.JOINTS, null, null, null, null);
        Shift along = Shift.day().key(Kind.JOINT, "08:00", "run", "longitudinal", "from_sta", "10+00");
        assertThat(due(along, "08:30", edge).when()).isEqualTo("in 1 joint across");

        Shift one = along.key(Kind.JOINT, "09:00", "run", "transverse", "from_sta", "12+00");
        assertThat(due(one, "09:30", edge).when()).isEqualTo("NOW");
        Shift measured =
                one.key(Kind.STRAIGHTEDGE, "09:40", "laid", "over-joint", "gap_in", "0.1", "place_sta", "12+00");
        assertThat(due(measured, "09:50", edge).done()).isEqualTo(1);
        assertThat(due(measured, "09:50", edge).when()).isEqualTo("in 1 joint across");

        Shift next = measured.key(Kind.JOINT, "10:00", "run", "transverse", "from_sta", "14+00")
                .key(Kind.JOINT, "11:00", "run", "transverse", "from_sta", "16+00");
        assertThat(due(next, "11:30", edge).missed())
                .singleElement()
                .satisfies(m -> assertThat(m.seen()).isEqualTo("no straightedge over joint in 1 joint across"));
    }

    @Test
    void shotsAndShiftsAndMinutesAreCountedToo() {
        Wanted third = row(Kind.NOTE, null, "3", Count.SHOTS);
        Shift shots = Shift.day();
        for (int i = 0; i < 3; i++) {
            shots.key(Kind.TACK, "08:0" + i, "surface", "milled", "from_sta", "10+00", "to_sta", "12+00");
        }
        assertThat(due(shots, "08:30", third).when()).isEqualTo("NOW");

        Wanted twice = new Wanted(Kind.TACK, "sample", null, BigDecimal.ONE, Count.SHIFTS, 2, null, null, null);
        Shift one = loads(1, 3).key(Kind.TACK, "08:40", "surface", "new", "sample", "S1");
        assertThat(due(one, "09:00", twice).when()).isEqualTo("NOW, 1 of 2");
        Shift closed = one.key(Kind.CLOSING, "18:00");
        assertThat(due(closed, "18:00", twice).missed()).hasSize(1);
        assertThat(due(closed, "18:00", twice).missed().get(0).seen())
                .isEqualTo("no tack sample in this shift, 1 of 2");

        Wanted hourly = row(Kind.MAT, null, "60", Count.MINUTES);
        Shift mat = loads(1, 2).key(Kind.MAT, "08:20");
        assertThat(due(mat, "08:50", hourly).when()).isEqualTo("in 30 min");
        assertThat(due(loads(mat, 3, 7), "09:25", hourly).missed()).isEmpty();
        assertThat(due(mat, "09:25", hourly).when()).isEqualTo("NOW");
        loads(mat, 9, 11);
        assertThat(due(mat, "09:45", hourly).missed()).hasSize(1);
    }

    private static Job lotted() {
        Job base = job(row(Kind.GAUGE, null, "1", Count.SUBLOTS));
        return withLots(
                base,
                new Lots(ton("2000"), ton("500"), null, Lots.Overnight.CARRY, null, null, null, null, null, List.of()));
    }

    private static Due density(Shift shift, String now) {
        Job job = lotted();
        ToDate before = ToDate.NONE.and(
                loads(new Shift("2026-06-02-day", "paver"), 1, 24).read(), job);
        List<Due> dues = Totals.of(shift.read(), job, before, shift.at(now)).dues();
        return dues.get(dues.size() - 1);
    }

    /** 480 T of a sublot of 500 came in the shift before: the next 20 T fill it. */
    @Test
    void aSublotGoesOnFromTheShiftBefore() {
        Due due = density(loads(1, 1), "08:05");
        assertThat(due.when()).isEqualTo("NOW: sublot 1");
        assertThat(due.what()).isEqualTo("density");
        assertThat(due.missed()).isEmpty();
    }

    /** A reading is made behind the rollers, when the next sublot is being laid: it counts where it says. */
    @Test
    void aCheckCountsInTheSublotThatItNamesWheneverItIsMade() {
        Shift read = loads(1, 6).key(Kind.GAUGE, "08:55", "mix", "12.5-70A", "lot", "1", "sublot", "1");
        Due made = density(read, "09:00");
        assertThat(made.when()).isEqualTo("in 400 T");
        assertThat(made.done()).isEqualTo(1);
        assertThat(made.asked()).isEqualTo(1);

        Due late = density(loads(1, 27), "12:30");
        assertThat(late.missed())
                .as("two sublots are full, the first of them without a reading")
                .hasSize(1);
        assertThat(late.missed().get(0).seen()).isEqualTo("no density in lot 1 sublot 1");
        assertThat(late.when()).isEqualTo("NOW: sublot 1");
        Due closed = density(loads(1, 27).key(Kind.CLOSING, "18:00"), "18:00");
        assertThat(closed.missed()).hasSize(2);
        assertThat(closed.asked()).isEqualTo(2);
    }

    private static Amount ton(String tons) {
        return Amount.of(tons, Unit.SHORT_TON);
    }

    private static Job withLots(Job j, Lots lots) {
        return Jobs.with(j, "lots", lots);
    }

    /** A ticket's plant is both a name, carried on, and a temperature: a check asks for the reading. */
    @Test
    void aPlantTemperatureIsNotAnsweredByThePlantsName() {
        Wanted heat = new Wanted(
                Kind.TICKET, "plant", null, new BigDecimal("5"), Count.LOADS, null, null, null, "Florida DOT 330-6.3");
        Shift named = Shift.day();
        for (int i = 1; i <= 6; i++) {
            named.ticket("08:0" + i, "" + i, "20.00", "mix", "12.5-70A", "plant", "Quarry Road");
        }
        Due without = due(named, "08:10", heat);
        assertThat(without.what()).isEqualTo("plant temperature");
        assertThat(without.done()).isZero();
        assertThat(without.missed().get(0).seen()).startsWith("no plant temperature");
        named.ticket("08:09", "7", "20.00", "mix", "12.5-70A", "plant", "Quarry Road", "plant_degF", "305");
        assertThat(due(named, "08:10", heat).done()).isEqualTo(1);
    }

    /** Weather is written down at each change: University of Delaware, T2 Center, on inspectors' diaries (2020). */
    @Test
    void aChangeAsksOnce() {
        Wanted wet = new Wanted(Kind.SURFACE, null, null, null, null, null, null, Change.WEATHER, "diary rule");
        Shift dry = loads(1, 1).key(Kind.WEATHER, "08:05", "precipitation", "none", "road", "dry");
        assertThat(due(dry, "08:06", wet).when()).isEqualTo("at a change");
        Shift rain = dry.key(Kind.WEATHER, "08:30", "precipitation", "rain", "road", "damp");
        Due due = due(rain, "08:31", wet);
        assertThat(due.when()).isEqualTo("NOW: rain, road damp");
        assertThat(due.asked()).isEqualTo(1);
        Due over = due(loads(rain, 5, 6), "08:55", wet);
        assertThat(over.missed()).hasSize(1);
        assertThat(over.missed().get(0).seen()).isEqualTo("no surface after rain, road damp");
        Due read = due(rain.key(Kind.SURFACE, "08:45", "surface_degF", "60"), "08:55", wet);
        assertThat(read.done()).isEqualTo(1);
    }

    @Test
    void theMostUrgentComesFirstAndWhatIsOverBeforeIt() {
        List<Due> dues = Stream.of(
                        due("a", "in 90 min", false, new BigDecimal("0.75")),
                        due("b", "NOW", true, BigDecimal.ZERO),
                        due("c", "in 1 load", false, new BigDecimal("0.2")),
                        due("d", "not yet", false, null))
                .sorted(Due.MOST_URGENT_FIRST)
                .toList();
        assertThat(dues).extracting(Due::id).containsExactly("b", "c", "a", "d");
    }

    private static Due due(String id, String when, boolean now, BigDecimal left) {
        return new Due(id, id, when, now, 0, 0, null, left, List.of());
    }

    /** Seeded shifts: checks at random minutes among loads of random weight, against plain counting by hand. */
    @Test
    void ofRandomShiftsTheCountsHoldTogether() {
        Random random = new Random(200);
        for (int round = 0; round < 200; round++) {
            Shift shift = Shift.day();
            BigDecimal tons = BigDecimal.ZERO;
            int checks = 0;
            for (int i = 1; i <= 40; i++) {
                BigDecimal net = BigDecimal.valueOf(1500 + random.nextInt(1000), 2);
                shift.ticket(
                        String.format("%02d:%02d", 8 + i / 6, i % 6 * 10), "" + i, net.toPlainString(), "mix", "M");
                tons = tons.add(net);
                if (random.nextInt(6) == 0) {
                    checked(shift, String.format("%02d:%02d", 8 + i / 6, i % 6 * 10 + 5));
                    checks++;
                }
            }
            Due due = due(shift.key(Kind.CLOSING, "18:00"), "18:00", row(Kind.YIELD, null, "100", Count.TONS));
            int turns = tons.divideToIntegralValue(new BigDecimal("100")).intValue();
            assertThat(due.asked())
                    .as("each full 100 T, and one more where the next is made early")
                    .isBetween(turns, turns + 1);
            assertThat(due.done()).isLessThanOrEqualTo(Math.min(checks, due.asked()));
            assertThat(due.missed().isEmpty())
                    .as("closed: what was not done is named")
                    .isEqualTo(due.done() == due.asked());
            assertThat(due.missed().size()).isLessThanOrEqualTo(due.asked() - due.done());
        }
    }
}
