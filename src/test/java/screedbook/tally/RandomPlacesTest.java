package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.calc.RandomNumber;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Kind;
import screedbook.entry.Station;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Random places as the loads come to them. Lots of 200 T in sublots of 100 T; the seeds are the test's own. */
class RandomPlacesTest {
    private static final String MIX = "12.5-70A";

    private final Map<String, String> kept = new HashMap<>();
    private final Shift shift = Shift.day();
    private int seeds;

    private String fresh() {
        String seed = "seed-" + ++seeds;
        kept.put(RandomNumber.sha256(seed), seed);
        return seed;
    }

    private List<Draw> owed(Job job, ToDate before) {
        return RandomPlaces.owed(shift.read(), job, before, sha -> Optional.ofNullable(kept.get(sha)), this::fresh);
    }

    /** A load of 20 T with its stations, and whatever the record owes after it. */
    private List<Draw> load(Job job, int number) {
        shift.ticket(
                String.format("%02d:%02d", 8 + number / 10, number % 10 * 5),
                "" + number,
                "20.00",
                "mix",
                MIX,
                "pull",
                "B",
                "lift",
                "2",
                "from_sta",
                Station.at(
                                BigDecimal.valueOf(1000 + 100L * number),
                                job.stationing().base())
                        .text(),
                "to_sta",
                Station.at(
                                BigDecimal.valueOf(1100 + 100L * number),
                                job.stationing().base())
                        .text());
        List<Draw> owed = owed(job, ToDate.NONE);
        owed.forEach(d -> shift.add(d, null));
        return owed;
    }

    static Job job(Lots.RandomBy by, int draws, Lots.Overnight night, Lots.Excluded... excluded) {
        Job job = Jobs.us();
        Lots lots = new Lots(
                Amount.of("200", Unit.SHORT_TON),
                Amount.of("100", Unit.SHORT_TON),
                Lots.End.EXACT_TON,
                night,
                by,
                draws,
                Amount.of("1.5", Unit.FOOT),
                Amount.of("0.5", Unit.FOOT),
                Lots.Seed.DRAWN,
                List.of(excluded));
        return Jobs.with(job, "lots", lots);
    }

    private static BigDecimal ton(String seed, int lot, int sublot, int nth) {
        return RandomNumber.fraction(seed, MIX, lot, sublot, nth, "ton", 1)
                .multiply(BigDecimal.valueOf(100))
                .setScale(2, RoundingMode.DOWN);
    }

    @Test
    void aLotBeginsWithTheHashOfItsSeedAndEndsWithTheSeed() {
        Job job = job(Lots.RandomBy.TONS, 1, Lots.Overnight.CARRY);
        List<Draw> all = new ArrayList<>();
        for (int number = 1; number <= 11; number++) {
            all.addAll(load(job, number));
        }
        assertThat(all).extracting(Draw::step).startsWith(Draw.Step.BEGUN);
        Draw first = all.get(0);
        assertThat(first.begun().seedSha256()).isEqualTo(RandomNumber.sha256("seed-1"));
        assertThat(first.seed()).isNull();
        Draw closed = all.stream()
                .filter(d -> d.step() == Draw.Step.CLOSED)
                .findFirst()
                .orElseThrow();
        assertThat(closed.seed()).isEqualTo("seed-1");
        assertThat(closed.lot()).isEqualTo(1);
        assertThat(all.stream().filter(d -> d.step() == Draw.Step.BEGUN).map(Draw::lot))
                .containsExactly(1, 2);
        assertThat(all.indexOf(closed))
                .isLessThan(all.lastIndexOf(all.stream()
                        .filter(d -> d.step() == Draw.Step.BEGUN && d.lot() == 2)
                        .findFirst()
                        .orElseThrow()));
    }

    /** The load that holds the drawn ton is the one that brings the line, and none before it. */
    @Test
    void aPlaceIsToldWithTheLoadThatHoldsItAndNotBefore() {
        Job job = job(Lots.RandomBy.TONS, 3, Lots.Overnight.CARRY);
        int told = 0;
        for (int number = 1; number <= 10; number++) {
            for (Draw draw : load(job, number)) {
                if (draw.step() == Draw.Step.REACHED) {
                    Draw.Reached r = draw.reached();
                    BigDecimal ton = ton("seed-1", 1, r.sublot(), r.nth());
                    assertThat(r.into().value()).isEqualByComparingTo(ton);
                    double inLot = 100 * (r.sublot() - 1) + ton.doubleValue();
                    assertThat((int) (inLot / 20) + 1).isEqualTo(number);
                    told++;
                }
            }
        }
        assertThat(told).isEqualTo(6);
    }

    @Test
    void aPlaceLiesAsFarAlongTheLoadAsItsTonAndAwayFromTheEdges() {
        Job job = job(Lots.RandomBy.PLACES, 4, Lots.Overnight.CARRY);
        int again = 0;
        for (int number = 1; number <= 10; number++) {
            for (Draw draw : load(job, number)) {
                if (draw.step() == Draw.Step.REACHED) {
                    Draw.Reached r = draw.reached();
                    double inLot = 100 * (r.sublot() - 1) + r.into().value().doubleValue();
                    assertThat(r.place().distance().doubleValue())
                            .isCloseTo(1100 + 5 * inLot, org.assertj.core.data.Offset.offset(0.51));
                    assertThat(r.leftFree().text()).isEqualTo("0.5 ft");
                    assertThat(r.rightFree().text()).isEqualTo("1.5 ft");
                    assertThat(r.fromLeft().value()).isBetween(new BigDecimal("0.5"), new BigDecimal("10.5"));
                    again += offsets(r);
                }
            }
        }
        assertThat(again).as("offsets drawn again").isPositive();
    }

    /**
     * Saskatchewan STP 107 (1994), 2.2 f: no place nearer than 0.5 m to an edge that nothing holds, and 0.1 m to one that
     * is held.
     */
    @Test
    void inMetresAPlaceKeepsHalfAMetreFromAFreeEdgeAndATenthFromAHeldOne() {
        Job job = Jobs.with(
                Jobs.with(Jobs.metric(), "pulls", List.of(metric("A", "-3.5", "0"), metric("B", "0", "3.5"))),
                "lots",
                new Lots(
                        Amount.of("1000", Unit.TONNE),
                        Amount.of("100", Unit.TONNE),
                        Lots.End.EXACT_TON,
                        Lots.Overnight.CARRY,
                        Lots.RandomBy.PLACES,
                        40,
                        Amount.of("0.5", Unit.METRE),
                        Amount.of("0.1", Unit.METRE),
                        Lots.Seed.DRAWN,
                        List.of()));
        List<BigDecimal> places = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (int number = 0; number < 6; number++) {
            shift.key(
                    Kind.TICKET,
                    "09:" + (10 + number),
                    "number",
                    "" + number,
                    "net_t",
                    "20.00",
                    "mix",
                    "AC-12",
                    "pull",
                    "B",
                    "lift",
                    "1");
            for (Draw draw : owed(job, ToDate.NONE)) {
                shift.add(draw, null);
                if (draw.step() == Draw.Step.REACHED) {
                    places.add(draw.reached().fromLeft().value());
                    draw.reached().tried().stream().filter(t -> t.why() != null).forEach(t -> refused.add(t.why()));
                }
            }
        }
        assertThat(places).hasSizeGreaterThanOrEqualTo(40);
        assertThat(places).allMatch(p -> p.doubleValue() >= 0.1 && p.doubleValue() <= 3.0);
        assertThat(places).as("near the joint, where it is held").anyMatch(p -> p.doubleValue() < 0.5);
        assertThat(refused).contains("nearer than 0.5 m to the right edge");
    }

    private static Job.Pull metric(String id, String left, String right) {
        return new Job.Pull(id, 1, Amount.of(left, Unit.METRE), Amount.of(right, Unit.METRE), null, null);
    }

    /** Every number but the last is not used and says why; each is the method's own. */
    private static int offsets(Draw.Reached r) {
        List<Draw.Tried> offsets =
                r.tried().stream().filter(t -> t.what() == Draw.What.OFFSET).toList();
        for (int i = 0; i < offsets.size(); i++) {
            Draw.Tried tried = offsets.get(i);
            boolean last = i == offsets.size() - 1;
            assertThat(tried.number()).isEqualTo(i + 1);
            assertThat(tried.used()).isEqualTo(last ? YesNo.YES : YesNo.NO);
            assertThat(tried.why() == null).isEqualTo(last);
            assertThat(tried.fraction())
                    .isEqualTo(RandomNumber.fraction("seed-1", MIX, 1, r.sublot(), r.nth(), "offset", i + 1));
        }
        return offsets.size() - 1;
    }

    @Test
    void aPlaceOnABridgeIsDrawnAgainAndBothAreTold() {
        Job job = job(
                Lots.RandomBy.PLACES,
                6,
                Lots.Overnight.CARRY,
                new Lots.Excluded(Station.of("11+00"), Station.of("14+00"), "bridge"));
        List<Draw.Tried> refused = new ArrayList<>();
        for (int number = 1; number <= 10; number++) {
            for (Draw draw : load(job, number)) {
                if (draw.step() == Draw.Step.REACHED) {
                    assertThat(draw.reached().place().distance()).isGreaterThan(new BigDecimal("1400"));
                    draw.reached().tried().stream()
                            .filter(t -> t.what() == Draw.What.TON && t.used() == YesNo.NO)
                            .forEach(refused::add);
                }
            }
        }
        assertThat(refused)
                .isNotEmpty()
                .allMatch(t -> t.why().equals("no places in 11+00 to 14+00: bridge"))
                .allMatch(t -> t.place().distance().doubleValue() <= 1400);
    }

    @Test
    void withoutItsSeedALotTellsNothing() {
        Job job = job(Lots.RandomBy.TONS, 3, Lots.Overnight.CARRY);
        load(job, 1);
        kept.clear();
        for (int number = 2; number <= 10; number++) {
            assertThat(load(job, number)).isEmpty();
        }
    }

    @Test
    void aLotGoesOnInTheNextShiftUnderTheSameSeed() {
        Job job = job(Lots.RandomBy.TONS, 2, Lots.Overnight.CARRY);
        load(job, 1);
        Day first = shift.read();
        ToDate before = ToDate.of(first, job);
        Shift next = new Shift("2026-06-04-day", "paver").ticket("08:00", "90", "79.00", "mix", MIX);
        List<Draw> owed =
                RandomPlaces.owed(next.read(), job, before, sha -> Optional.ofNullable(kept.get(sha)), this::fresh);
        assertThat(owed).noneMatch(d -> d.step() == Draw.Step.BEGUN);
        long inFirst = ToDate.draws(first).stream()
                .filter(d -> d.step() == Draw.Step.REACHED)
                .count();
        long due = List.of(1, 2).stream()
                .filter(nth -> ton("seed-1", 1, 1, nth).doubleValue() < 99)
                .count();
        assertThat(owed.stream().filter(d -> d.step() == Draw.Step.REACHED).count())
                .isEqualTo(due - inFirst);
    }

    @Test
    void aSublotThatIsClosedOverNightIsNotGoneOnWith() {
        Job job = job(Lots.RandomBy.TONS, 1, Lots.Overnight.CLOSE);
        load(job, 1);
        ToDate before = ToDate.of(shift.read(), job);
        Shift next = new Shift("2026-06-04-day", "paver").ticket("08:00", "90", "100.00", "mix", MIX);
        List<Draw> owed =
                RandomPlaces.owed(next.read(), job, before, sha -> Optional.ofNullable(kept.get(sha)), this::fresh);
        assertThat(owed.stream().filter(d -> d.step() == Draw.Step.REACHED))
                .hasSize(1)
                .allMatch(d -> d.reached().sublot() == 2);
        assertThat(owed.get(owed.size() - 1).step()).isEqualTo(Draw.Step.CLOSED);
    }

    @Test
    void nothingIsDrawnWhereTheJobDoesNotSayWhatOrOthersGiveTheSeed() {
        shift.ticket("08:00", "1", "20.00", "mix", MIX);
        assertThat(RandomPlaces.drawn(Jobs.us())).isFalse();
        assertThat(owed(Jobs.us(), ToDate.NONE)).isEmpty();
        assertThat(RandomPlaces.drawn(job(null, 1, null))).isFalse();
    }

    private static Due due(String id, boolean now, List<Due.Missed> missed) {
        return new Due(id, id, "NOW", now, 0, 1, null, BigDecimal.ZERO, missed);
    }

    @Test
    void aReachedPlaceIsDueUntilANoteSaysThatItWasSampled() {
        Job job = job(Lots.RandomBy.TONS, 1, Lots.Overnight.CARRY);
        for (int number = 1; number <= 5; number++) {
            load(job, number);
        }
        Due due = sample(job);
        assertThat(due.now()).isTrue();
        assertThat(due.when()).startsWith("NOW: lot 1 sublot 1, ticket ");
        assertThat(List.of(due("check", true, List.of(new Due.Missed(null, "", "", ""))), due).stream()
                        .sorted(Due.MOST_URGENT_FIRST)
                        .findFirst())
                .as("its load drives off")
                .contains(due);
        assertThat(due.asked()).isEqualTo(1);
        shift.key(Kind.NOTE, "09:30", "tags", "sample", "text", "bag 1");
        assertThat(sample(job).now()).isFalse();
        assertThat(sample(job).done()).isEqualTo(1);
    }

    private Due sample(Job job) {
        return Totals.of(shift.read(), job, ToDate.NONE, shift.at("10:00")).dues().stream()
                .filter(d -> d.id().equals("sample"))
                .findFirst()
                .orElseThrow();
    }
}
