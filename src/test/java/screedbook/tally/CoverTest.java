package screedbook.tally;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import screedbook.entry.Ref;

/** Stretches laid over one another, held against a road of single feet on which each foot is looked at by itself. */
class CoverTest {
    private static final int FEET = 160;

    /** For each foot of the road, what lies over it. */
    private static final class Feet {
        private final List<List<Stretch>> over = new ArrayList<>();

        Feet(Collection<Stretch> stretches) {
            for (int foot = 0; foot < FEET; foot++) {
                List<Stretch> here = new ArrayList<>();
                for (Stretch each : stretches) {
                    if (each.low().intValue() <= foot && foot < each.high().intValue()) {
                        here.add(each);
                    }
                }
                over.add(here);
            }
        }

        int times(int foot) {
            return over.get(foot).size();
        }

        Set<Ref> by(int foot) {
            Set<Ref> by = new LinkedHashSet<>();
            over.get(foot).forEach(s -> by.addAll(s.by()));
            return by;
        }
    }

    private static Stretch stretch(int low, int high, int n) {
        return new Stretch(BigDecimal.valueOf(low), BigDecimal.valueOf(high), List.of(new Ref("paver", n)));
    }

    private static List<Stretch> random(Random random, int first) {
        List<Stretch> stretches = new ArrayList<>();
        int count = random.nextInt(14);
        for (int i = 0; i < count; i++) {
            int a = random.nextInt(FEET + 1);
            int b = random.nextInt(3) == 0 ? a + random.nextInt(3) : random.nextInt(FEET + 1);
            b = Math.min(FEET, b);
            stretches.add(stretch(Math.min(a, b), Math.max(a, b), first + i));
        }
        return stretches;
    }

    /** Every foot is covered where it should be, by whom it should be, and the length is the number of feet. */
    private static void same(Cover cover, IntPredicate where, IntFunction<Set<Ref>> by) {
        Feet feet = new Feet(cover.stretches());
        int length = 0;
        for (int foot = 0; foot < FEET; foot++) {
            assertThat(feet.times(foot) > 0).as("foot %d", foot).isEqualTo(where.test(foot));
            if (where.test(foot)) {
                length++;
                assertThat(feet.by(foot)).as("foot %d", foot).isEqualTo(by.apply(foot));
            }
        }
        assertThat(cover.length()).isEqualByComparingTo(BigDecimal.valueOf(length));
    }

    @RepeatedTest(400)
    void everyFootIsWhereCountingFootByFootHasIt(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        List<Stretch> one = random(random, 1);
        List<Stretch> two = random(random, 101);
        Cover here = Cover.of(one);
        Cover there = Cover.of(two);
        Feet a = new Feet(one);
        Feet b = new Feet(two);

        same(here.plus(there), f -> a.times(f) + b.times(f) > 0, f -> {
            Set<Ref> both = a.by(f);
            both.addAll(b.by(f));
            return both;
        });
        same(here.minus(there), f -> a.times(f) > 0 && b.times(f) == 0, a::by);
        same(here.and(there), f -> a.times(f) > 0 && b.times(f) > 0, a::by);
        int least = random.nextInt(1, 5);
        same(here.times(least), f -> a.times(f) >= least, a::by);
        int from = random.nextInt(FEET);
        int to = random.nextInt(from, FEET);
        same(
                here.within(BigDecimal.valueOf(from), BigDecimal.valueOf(to)),
                f -> a.times(f) > 0 && from <= f && f < to,
                a::by);
    }

    @RepeatedTest(100)
    void joinedStretchesNeitherTouchNorLieOverOneAnother(RepetitionInfo round) {
        List<Stretch> given = random(new Random(1000 + round.getCurrentRepetition()), 1);
        Feet feet = new Feet(given);
        List<Stretch> joined = Cover.of(given).joined();

        BigDecimal last = null;
        for (Stretch each : joined) {
            assertThat(each.length()).isPositive();
            assertThat(last == null || each.low().compareTo(last) > 0).isTrue();
            last = each.high();
            Set<Ref> by = new LinkedHashSet<>();
            for (int foot = each.low().intValue(); foot < each.high().intValue(); foot++) {
                assertThat(feet.times(foot)).isPositive();
                by.addAll(feet.by(foot));
            }
            assertThat(each.by()).containsExactlyInAnyOrderElementsOf(by);
        }
        int covered = 0;
        for (int foot = 0; foot < FEET; foot++) {
            covered += feet.times(foot) > 0 ? 1 : 0;
        }
        assertThat(joined.stream().mapToInt(s -> s.length().intValue()).sum()).isEqualTo(covered);
    }

    @Test
    void whatHasNoLengthCoversNothing() {
        assertThat(Cover.of(List.of(stretch(12, 12, 1))).empty()).isTrue();
        assertThat(Cover.NONE.length()).isZero();
        assertThat(Cover.NONE.joined()).isEmpty();
    }

    @Test
    void stretchesThatOnlyTouchAreOneAndHaveNothingInCommon() {
        Cover left = Cover.of(List.of(stretch(0, 10, 1)));
        Cover right = Cover.of(List.of(stretch(10, 20, 2)));

        assertThat(left.and(right).empty()).isTrue();
        assertThat(left.plus(right).times(2).empty()).isTrue();
        assertThat(left.plus(right).joined())
                .containsExactly(new Stretch(
                        BigDecimal.ZERO, BigDecimal.valueOf(20), List.of(new Ref("paver", 1), new Ref("paver", 2))));
    }

    @Test
    void twoEqualStretchesCoverTwice() {
        Cover twice = Cover.of(List.of(stretch(5, 9, 1), stretch(5, 9, 1)));

        assertThat(twice.times(2).length()).isEqualByComparingTo("4");
        assertThat(twice.length()).isEqualByComparingTo("4");
        assertThat(twice.times(3).empty()).isTrue();
    }

    @Test
    void aStretchRunsFromItsLowerEnd() {
        assertThatThrownBy(() -> stretch(9, 5, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
