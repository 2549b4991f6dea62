package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.job.Job;
import screedbook.unit.Amount;

/** Whatever is keyed, the parts of a total are the total. */
class PartsTest {
    private final Job job = Jobs.us();

    private static Shift random(Random random) {
        Shift shift = Shift.day();
        int tickets = random.nextInt(1, 40);
        for (int i = 0; i < tickets; i++) {
            List<String> pairs = new ArrayList<>();
            if (random.nextInt(10) > 0) {
                pairs.addAll(List.of("mix", random.nextBoolean() ? "12.5-70A" : "19-64"));
            }
            if (random.nextInt(10) > 1) {
                pairs.addAll(List.of("pull", random.nextBoolean() ? "A" : "B", "lift", "2"));
            }
            if (random.nextInt(4) == 0) {
                pairs.addAll(List.of(
                        "fate",
                        List.of("placed", "part-placed", "rejected", "waste", "void-at-plant", "other-job")
                                .get(random.nextInt(6))));
            }
            if (random.nextInt(6) == 0) {
                pairs.addAll(List.of("returned_ston", weight(random, 5)));
            }
            String clock = String.format("%02d:%02d", random.nextInt(7, 19), random.nextInt(60));
            shift.ticket(
                    clock,
                    Integer.toString(1000 + random.nextInt(45)),
                    weight(random, 25),
                    pairs.toArray(String[]::new));
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            String of = "paver/" + random.nextInt(1, tickets + 3);
            shift.key(Kind.PART, null, "of", of, "share_ston", weight(random, 9), "pull", "B", "lift", "2");
        }
        for (int i = random.nextInt(6); i > 0; i--) {
            String of = "paver/" + random.nextInt(1, tickets + 3);
            if (random.nextBoolean()) {
                shift.key(Kind.WASTE, null, "of", of, "weight_ston", weight(random, 3), "reason", "hopper");
            } else {
                shift.key(Kind.WASTE, null, "weight_ston", weight(random, 3), "mix", "19-64", "reason", "cleanup");
            }
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            shift.strike(random.nextInt(1, tickets + 1), "seen again");
        }
        return shift;
    }

    private static String weight(Random random, int most) {
        return random.nextInt(most) + "." + String.format("%02d", random.nextInt(100));
    }

    private static BigDecimal sum(Totals totals, Tons.By by, Function<Tons, Amount> part) {
        return totals.tons().stream()
                .filter(t -> t.by() == by)
                .map(t -> part.apply(t).value())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void partsAreTheTotal() {
        for (int seed = 0; seed < 400; seed++) {
            Shift shift = random(new Random(seed));
            Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("19:00"));
            Tons all = totals.shift();
            for (Tons.By by : List.of(Tons.By.MIX, Tons.By.PAY_ITEM)) {
                assertThat(sum(totals, by, Tons::received))
                        .as("seed " + seed)
                        .isEqualByComparingTo(all.received().value());
                assertThat(sum(totals, by, Tons::placed))
                        .as("seed " + seed)
                        .isEqualByComparingTo(all.placed().value());
                assertThat(sum(totals, by, Tons::pay))
                        .as("seed " + seed)
                        .isEqualByComparingTo(all.pay().value());
            }
            assertThat(sum(totals, Tons.By.FATE, Tons::received))
                    .as("seed " + seed)
                    .isEqualByComparingTo(all.received().value());
            BigDecimal tickets =
                    totals.loads().stream().map(l -> l.pay().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum(totals, Tons.By.PULL, Tons::pay)).as("seed " + seed).isEqualByComparingTo(tickets);
            assertThat(sum(totals, Tons.By.LIFT, Tons::pay)).as("seed " + seed).isEqualByComparingTo(tickets);
            BigDecimal laid = totals.runs().stream()
                    .map(r -> r.laid().plus(r.elsewhere()).value())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(laid).as("seed " + seed).isEqualByComparingTo(tickets);
        }
    }

    @Test
    void toDateIsTheSumOfTheShifts() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            ToDate before = ToDate.NONE;
            BigDecimal sum = BigDecimal.ZERO;
            for (int i = 0; i < 4; i++) {
                Shift shift = random(random);
                Totals totals = Totals.of(shift.read(), job, before, shift.at("19:00"));
                sum = sum.add(sum(totals, Tons.By.PAY_ITEM, Tons::pay));
                BigDecimal toDate = totals.sections().stream()
                        .flatMap(s -> s.figures().stream())
                        .filter(f -> f.id().startsWith("pay-to-date."))
                        .map(Figure::value)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
                assertThat(toDate).as("seed " + seed + " shift " + i).isEqualByComparingTo(sum);
                before = before.and(shift.read(), job);
            }
            assertThat(before.shifts()).hasSize(4);
        }
    }

    @Test
    void aStruckEntryCountsNowhere() {
        Shift shift = Shift.day().ticket("08:00", "1", "20.00", "mix", "12.5-70A", "paver_degF", "200");
        shift.ticket("08:10", "2", "21.00", "mix", "12.5-70A", "paver_degF", "290")
                .strike(1, "other job's load");
        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("21.00 T");
        assertThat(totals.figure("paver-temperature-least.12.5-70A")
                        .orElseThrow()
                        .text())
                .isEqualTo("290 °F");
        assertThat(totals.figure("struck").orElseThrow().text()).isEqualTo("1");
    }

    @Test
    void weightsInTheOtherSystemAreLeftOutAndNamed() {
        Shift shift = Shift.day()
                .ticket("08:00", "1", "20.00", "mix", "12.5-70A")
                .key(Kind.TICKET, "08:10", "number", "2", "net_t", "19.05", "mix", "12.5-70A");
        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("20.00 T");
        assertThat(totals.left()).singleElement().satisfies(l -> {
            assertThat(l.of()).hasToString("paver/2");
            assertThat(l.why()).isEqualTo("net in t, this job counts T");
        });
    }

    @Test
    void aTicketKeyedTwiceCountsOnceAndAnotherLoadOfTheSameNumberCountsToo() {
        Shift shift = Shift.day()
                .ticket("08:00", "1", "20.00", "truck", "T1", "plant", "Quarry Road")
                .ticket("08:01", "1", "20.0", "truck", "T1", "plant", "Quarry Road")
                .ticket("08:30", "1", "21.00", "truck", "T2", "plant", "Quarry Road");
        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("41.00 T");
        assertThat(totals.shift().loads()).isEqualTo(2);
        assertThat(totals.left()).singleElement().extracting(Left::why).isEqualTo("the same ticket stands at paver/1");
    }

    @Test
    void aTicketThatWasIssuedAgainCountsByItsNewPaper() {
        Shift shift = Shift.day().ticket("08:00", "1", "20.00").ticket("08:00", "9", "20.20", "reissue_of", "1");
        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("20.20 T");
    }

    @Test
    void aPartPlacedLoadOfWhichTheRestIsNotKnownIsNamedAndCountedAsReceivedOnly() {
        Shift shift = Shift.day().ticket("08:00", "1", "20.00", "fate", "part-placed");
        Totals totals = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("20.00 T");
        assertThat(totals.shift().pay().value()).isEqualByComparingTo("0");
        assertThat(totals.left()).hasSize(1);
    }

    @Test
    void aLoadWithoutAnEndIsClosedByTheNextOneAndTheLastStaysOutOfTheRate() {
        Shift shift = Shift.day()
                .ticket("08:00", "1", "20.00", "pull", "A", "lift", "2", "from_sta", "12+00")
                .ticket("08:10", "2", "20.00", "pull", "A", "lift", "2")
                .ticket("08:20", "3", "20.00", "pull", "A", "lift", "2", "from_sta", "15+00");
        Run run = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"))
                .runs()
                .get(0);
        assertThat(run.length().value()).isEqualByComparingTo("300");
        assertThat(run.laid().value()).isEqualByComparingTo("40");
        assertThat(run.elsewhere().value()).isEqualByComparingTo("20");
    }

    @Test
    void groundPavedTwiceIsMeasuredOnce() {
        Shift shift = Shift.day()
                .ticket("08:00", "1", "20.00", "pull", "A", "lift", "2", "from_sta", "12+00", "to_sta", "14+00")
                .ticket("08:10", "2", "20.00", "pull", "A", "lift", "2", "from_sta", "13+00", "to_sta", "15+00")
                .ticket("08:20", "3", "20.00", "pull", "A", "lift", "2", "from_sta", "16+00", "to_sta", "17+00");
        Run run = Totals.of(shift.read(), job, ToDate.NONE, shift.at("09:00"))
                .runs()
                .get(0);
        assertThat(run.length().value()).isEqualByComparingTo("400");
        assertThat(run.pieces()).extracting(Run.Piece::text).containsExactly("12+00 to 15+00", "16+00 to 17+00");
    }

    @Test
    void aDayWithoutAPlanStillAddsUp() {
        Shift shift = Shift.day().ticket("08:00", "1", "20.00", "mix", "12.5-70A", "paver_degC", "150", "pull", "A");
        Totals totals = Unplanned.totals(shift.read(), ToDate.NONE, shift.at("09:00"));
        assertThat(totals.shift().received().text()).isEqualTo("20.00 t");
        assertThat(totals.dues()).isEmpty();
    }
}
