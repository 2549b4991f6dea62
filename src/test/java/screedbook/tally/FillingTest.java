package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import screedbook.calc.RandomNumber;
import screedbook.entry.Draw;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Lots and sublots as they fill from tickets. Lots of 200 T in sublots of 100 T unless said otherwise. */
class FillingTest {
    private static final ShiftId SHIFT = ShiftId.of("2026-06-03-day");
    private static final String MIX = "12.5-70A";

    static Job job(Lots.End ends, Lots.Overnight night) {
        return with(new Lots(
                Amount.of("200", Unit.SHORT_TON),
                Amount.of("100", Unit.SHORT_TON),
                ends,
                night,
                Lots.RandomBy.TONS,
                1,
                null,
                null,
                Lots.Seed.DRAWN,
                List.of()));
    }

    static Job with(Lots lots) {
        Job job = Jobs.us();
        return Jobs.with(job, "lots", lots);
    }

    private static Shift load(Shift shift, int number, String net) {
        return shift.ticket(
                String.format("%02d:%02d", 8 + number / 10, number % 10 * 5),
                "" + (100 + number),
                net,
                "mix",
                MIX,
                "pull",
                "B",
                "lift",
                "2",
                "from_sta",
                10 + number + "+00",
                "to_sta",
                11 + number + "+00");
    }

    /** Five loads of 45 T: 225 T. */
    static Shift five() {
        Shift shift = Shift.day();
        for (int i = 0; i < 5; i++) {
            load(shift, i, "45.00");
        }
        return shift;
    }

    private static String told(Filling filling) {
        return filling.lots().stream()
                .flatMap(l -> l.sublots().stream()
                        .map(s -> l.number() + "/" + s.number() + " "
                                + s.tons().value().toPlainString() + (s.over() ? " over" : "")))
                .collect(Collectors.joining(", "));
    }

    @Test
    void aLotThatEndsAtTheExactTonCutsTheLoadInWhichItEnds() {
        Filling filling = Filling.of(five().read(), job(Lots.End.EXACT_TON, Lots.Overnight.CARRY), ToDate.NONE);
        assertThat(told(filling)).isEqualTo("1/1 100.00 over, 1/2 100.00 over, 2/1 25.00");
        Lot.Sublot second = filling.sublot(MIX, 1, 2).orElseThrow();
        assertThat(second.pieces().stream().map(Lot.Piece::put))
                .containsExactly(
                        "2026-06-03-day paver/3 ticket 102 35.00 T of 45.00 T",
                        "2026-06-03-day paver/4 ticket 103 45.00 T",
                        "2026-06-03-day paver/5 ticket 104 20.00 T of 45.00 T");
        assertThat(second.loads()).isEqualTo("3 loads, ticket 102 to 104, pull B lift 2 12+00 to 15+00");
        assertThat(filling.lot(MIX, 1).orElseThrow().full()).isTrue();
        assertThat(filling.lot(MIX, 2).orElseThrow().over()).isFalse();
    }

    /** Load 102 has 10 T before the hundredth ton and 35 T after it; load 104 has 20 T before the two hundredth and 25 after. */
    @Test
    void aLotThatEndsWithTheNearestTicketCutsNoLoad() {
        Filling filling = Filling.of(five().read(), job(Lots.End.NEAREST_TICKET, Lots.Overnight.CARRY), ToDate.NONE);
        assertThat(told(filling)).isEqualTo("1/1 90.00 over, 1/2 90.00 over, 2/1 45.00");
        assertThat(filling.of(SHIFT, Ref.of("paver/3"))).hasValue(new Filling.Where(MIX, 1, 2));
        assertThat(filling.ofTicket("104", SHIFT)).hasValue(new Filling.Where(MIX, 2, 1));
    }

    @Test
    void whatIsNotFullAtNightIsCarriedOnOrClosedAsTheJobSays() {
        for (Lots.Overnight night : Lots.Overnight.values()) {
            Job job = job(Lots.End.EXACT_TON, night);
            Shift first = new Shift("2026-06-02-day", "paver");
            load(first, 0, "45.00");
            Shift second = Shift.day();
            load(second, 1, "80.00");
            Filling filling = Filling.of(second.read(), job, ToDate.of(first.read(), job));
            String expected =
                    night == Lots.Overnight.CARRY ? "1/1 100.00 over, 1/2 25.00" : "1/1 45.00 over, 1/2 80.00";
            assertThat(told(filling)).as(night.toString()).isEqualTo(expected);
        }
    }

    @Test
    void aPlaceOfAPullLiesInTheSublotOfTheLoadThatCoversIt() {
        Filling filling = Filling.of(five().read(), job(Lots.End.NEAREST_TICKET, Lots.Overnight.CARRY), ToDate.NONE);
        assertThat(filling.at(SHIFT, MIX, "B", 2, Station.of("10+50"))).hasValue(new Filling.Where(MIX, 1, 1));
        assertThat(filling.at(SHIFT, MIX, "B", 2, Station.of("13+50"))).hasValue(new Filling.Where(MIX, 1, 2));
        assertThat(filling.at(SHIFT, MIX, "A", 2, Station.of("13+50"))).isEmpty();
        assertThat(filling.at(SHIFT, MIX, "B", 2, Station.of("30+00"))).isEmpty();
        assertThat(filling.newest(MIX)).hasValue(new Filling.Where(MIX, 2, 1));
    }

    @Test
    void aJobWithoutLotsHasNone() {
        assertThat(Filling.of(five().read(), Jobs.us(), ToDate.NONE).lots()).isEmpty();
    }

    /** Against a model that lays every hundredth of a ton by itself; seeded. */
    @Test
    void noTonIsLostOrCountedTwiceHoweverShiftsAndLoadsCome() {
        Random random = new Random(80);
        for (int round = 0; round < 40; round++) {
            Lots.Overnight night = random.nextBoolean() ? Lots.Overnight.CARRY : Lots.Overnight.CLOSE;
            Job job = job(Lots.End.EXACT_TON, night);
            Map<String, Integer> model = new HashMap<>();
            int[] at = {1, 1, 0};
            ToDate before = ToDate.NONE;
            Filling filling = null;
            for (int day = 1; day <= 4; day++) {
                Shift shift = new Shift("2026-06-0" + day + "-day", "paver");
                for (int i = 0; i < random.nextInt(9) + 1; i++) {
                    int hundredths = 1 + random.nextInt(13_000);
                    load(shift, i, BigDecimal.valueOf(hundredths, 2).toPlainString());
                    lay(model, at, hundredths);
                }
                filling = Filling.of(shift.read(), job, before);
                before = before.and(shift.read(), job);
                if (night == Lots.Overnight.CLOSE && at[2] > 0) {
                    next(at);
                }
            }
            Map<String, Integer> told = new HashMap<>();
            filling.lots()
                    .forEach(l -> l.sublots()
                            .forEach(s -> told.put(
                                    l.number() + "/" + s.number(),
                                    s.tons().value().movePointRight(2).intValueExact())));
            assertThat(told).as("round " + round).isEqualTo(model);
        }
    }

    private static void lay(Map<String, Integer> model, int[] at, int hundredths) {
        for (int i = 0; i < hundredths; i++) {
            model.merge(at[0] + "/" + at[1], 1, Integer::sum);
            at[2]++;
            if (at[2] == 10_000) {
                next(at);
            }
        }
    }

    private static void next(int[] at) {
        at[0] += at[1] == 2 ? 1 : 0;
        at[1] = at[1] == 2 ? 1 : 2;
        at[2] = 0;
    }

    private final Map<String, String> kept = new HashMap<>();

    private String fresh() {
        String seed = "seed-" + (kept.size() + 1);
        kept.put(RandomNumber.sha256(seed), seed);
        return seed;
    }

    private void draw(Shift shift, Job job, ToDate before) {
        List<Draw> owed =
                RandomPlaces.owed(shift.read(), job, before, s -> Optional.ofNullable(kept.get(s)), this::fresh);
        owed.forEach(d -> shift.add(d, null));
    }

    @Test
    void theSeedOfALotThatNeverFilledIsToldWhenTheLotsEndAndTheNextTonBeginsALot() {
        Job job = job(Lots.End.EXACT_TON, Lots.Overnight.CARRY);
        Shift first = new Shift("2026-06-02-day", "paver");
        load(first, 0, "45.00");
        draw(first, job, ToDate.NONE);
        assertThat(RandomPlaces.closing(first.read(), job, ToDate.NONE, s -> Optional.ofNullable(kept.get(s)), false))
                .isEmpty();
        List<Draw> told =
                RandomPlaces.closing(first.read(), job, ToDate.NONE, s -> Optional.ofNullable(kept.get(s)), true);
        assertThat(told).singleElement().satisfies(d -> {
            assertThat(d.step()).isEqualTo(Draw.Step.CLOSED);
            assertThat(d.lot()).isEqualTo(1);
            assertThat(d.seed()).isEqualTo("seed-1");
        });
        told.forEach(d -> first.add(d, null));
        assertThat(RandomPlaces.closing(first.read(), job, ToDate.NONE, s -> Optional.ofNullable(kept.get(s)), true))
                .isEmpty();
        Shift second = Shift.day();
        load(second, 1, "30.00");
        Filling filling = Filling.of(second.read(), job, ToDate.of(first.read(), job));
        assertThat(told(filling)).isEqualTo("1/1 45.00 over, 2/1 30.00");
    }

    @Test
    void theSeedOfALotThatTheNightClosesIsToldAtTheClose() {
        Job job = job(Lots.End.EXACT_TON, Lots.Overnight.CLOSE);
        Shift shift = Shift.day();
        load(shift, 0, "100.00");
        draw(shift, job, ToDate.NONE);
        assertThat(RandomPlaces.closing(shift.read(), job, ToDate.NONE, s -> Optional.ofNullable(kept.get(s)), false))
                .isEmpty();
        load(shift, 1, "45.00");
        draw(shift, job, ToDate.NONE);
        assertThat(RandomPlaces.closing(shift.read(), job, ToDate.NONE, s -> Optional.ofNullable(kept.get(s)), false))
                .singleElement()
                .satisfies(d -> assertThat(d.seed()).isEqualTo("seed-1"));
    }

    private Shift drawn(Job job) {
        Shift shift = Shift.day();
        for (int i = 0; i < 6; i++) {
            load(shift, i, "45.00");
            draw(shift, job, ToDate.NONE);
        }
        return shift;
    }

    @Test
    void aLotIsDrawnAgainFromTheSeedThatIsToldWhenItIsFull() {
        Shift shift = drawn(job(Lots.End.EXACT_TON, Lots.Overnight.CARRY));
        assertThat(Redrawn.of(shift.read(), ToDate.NONE)).singleElement().satisfies(r -> {
            assertThat(r.places()).isEqualTo(2);
            assertThat(r.differs()).isEmpty();
        });
    }

    @Test
    void aToldPlaceThatTheSeedDoesNotGiveIsNamed() {
        Job job = job(Lots.End.EXACT_TON, Lots.Overnight.CARRY);
        Shift shift = drawn(job);
        List<Draw> draws = shift.read().standing(Draw.class).stream()
                .map(s -> s.entry())
                .collect(Collectors.toCollection(ArrayList::new));
        Shift other = Shift.day();
        for (Draw d : draws) {
            Draw.Reached r = d.reached();
            boolean move = d.step() == Draw.Step.REACHED && r.sublot() == 2;
            other.add(
                    move
                            ? Draw.reached(
                                    d.mix(),
                                    d.lot(),
                                    new Draw.Reached(
                                            r.sublot(),
                                            r.nth(),
                                            Amount.of("1.00", Unit.SHORT_TON),
                                            r.of(),
                                            r.pull(),
                                            r.lift(),
                                            r.place(),
                                            r.fromLeft(),
                                            r.leftFree(),
                                            r.rightFree(),
                                            List.of(new Draw.Tried(
                                                    Draw.What.TON,
                                                    1,
                                                    new BigDecimal("0.0100"),
                                                    Amount.of("1.00", Unit.SHORT_TON),
                                                    null,
                                                    null,
                                                    null,
                                                    null))))
                            : d,
                    null);
        }
        List<Redrawn> redrawn = Redrawn.of(other.read(), ToDate.NONE);
        assertThat(redrawn).singleElement();
        BigDecimal right = RandomNumber.fraction("seed-1", MIX, 1, 2, 1, "ton", 1);
        assertThat(redrawn.get(0).differs())
                .containsExactly(
                        "sublot 2 draw 1, ton number 1 is " + right + ", told 0.0100",
                        "sublot 2 draw 1 lies "
                                + right.movePointRight(2).setScale(2, RoundingMode.DOWN)
                                + " into the sublot, told 1.00 T");
    }

    @Test
    void aSeedThatIsNotTheOneOfWhichTheHashWasToldIsNamed() {
        Shift shift = Shift.day();
        shift.add(
                Draw.begun(MIX, 1, new Draw.Begun(RandomNumber.METHOD, RandomNumber.sha256("one"), null, null, null)),
                null);
        shift.add(Draw.closed(MIX, 1, "another"), null);
        assertThat(Redrawn.of(shift.read(), ToDate.NONE).get(0).differs())
                .singleElement()
                .asString()
                .contains(RandomNumber.sha256("one"));
    }

    @Test
    void aKindThatIsNoTicketFillsNoLot() {
        Shift shift = five().key(Kind.NOTE, "13:00", "text", "nothing");
        assertThat(told(Filling.of(shift.read(), job(Lots.End.EXACT_TON, Lots.Overnight.CARRY), ToDate.NONE)))
                .startsWith("1/1 100.00 over");
    }
}
