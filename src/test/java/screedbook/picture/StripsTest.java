package screedbook.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StripsTest {
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-06-03T20:20:00-06:00");

    private static Dot dot(int minute, String value, boolean outside) {
        return new Dot(EVENING.plusMinutes(minute), new BigDecimal(value), outside);
    }

    /** The lines without the blanks at their ends, which a text block cannot hold. */
    private static String drawn(List<String> lines) {
        return String.join("\n", lines.stream().map(String::stripTrailing).toList());
    }

    private static final List<Dot> DOTS = List.of(
            dot(0, "288", false),
            dot(7, "285", false),
            dot(15, "301", false),
            dot(22, "279", false),
            dot(30, "283", false),
            dot(41, "264", true),
            dot(50, "272", false),
            dot(58, "290", false));

    @Test
    void aLoadBelowTheLimitIsASignOfItsOwnOnOrUnderTheLine() {
        String drawn = drawn(HeatStrip.of(DOTS, Optional.of(new BigDecimal("270")), 45, 6));
        assertThat(drawn).isEqualTo("""
                 301|          .
                    |.   .               .                  .
                    |              .                  .
                 270|----------------------------------------
                 264|                           #
                           20:30     20:45     21:00
                """.stripTrailing());
    }

    @Test
    void threeLinesAreEnough() {
        String drawn = drawn(HeatStrip.of(DOTS, Optional.of(new BigDecimal("270")), 45, 3));
        assertThat(drawn).isEqualTo("""
                 301|.   .     .   .     .            .     .
                 270|---------------------------#------------
                           20:30     20:45     21:00
                """.stripTrailing());
    }

    @Test
    void tonsStandStillWhileNoLoadComes() {
        List<Dot> dots = List.of(
                dot(0, "20", false),
                dot(6, "42", false),
                dot(12, "63", false),
                dot(40, "85", false),
                dot(46, "107", false));
        assertThat(drawn(TonsStrip.of(dots, 40, 6))).isEqualTo("""
                 107|                                  .
                    |                             .----
                    |        .--------------------
                    |    .---
                    |.---
                            20:30      20:45      21:00
                """.stripTrailing());
    }

    @Test
    void aStripHasExactlyTheSizeAskedFor() {
        Random random = new Random(20260603);
        for (int round = 0; round < 2000; round++) {
            int width = random.nextInt(0, 201);
            int height = random.nextInt(0, 61);
            List<Dot> dots = new ArrayList<>();
            int minute = 0;
            BigDecimal sum = BigDecimal.ZERO;
            for (int i = random.nextInt(0, 40); i > 0; i--) {
                minute += random.nextInt(0, 90);
                sum = sum.add(BigDecimal.valueOf(random.nextInt(0, 400)));
                dots.add(new Dot(EVENING.plusMinutes(minute), sum, random.nextInt(5) == 0));
            }
            Optional<BigDecimal> limit =
                    random.nextBoolean() ? Optional.empty() : Optional.of(BigDecimal.valueOf(random.nextInt(500)));
            assertThat(HeatStrip.of(dots, limit, width, height)).hasSize(height).allMatch(l -> l.length() == width);
            assertThat(TonsStrip.of(dots, width, height)).hasSize(height).allMatch(l -> l.length() == width);
        }
    }

    @Test
    void dotsInsideNeverStandOnOrUnderTheLine() {
        Random random = new Random(7);
        BigDecimal limit = new BigDecimal("270");
        for (int round = 0; round < 500; round++) {
            BigDecimal value = BigDecimal.valueOf(random.nextInt(230, 330));
            boolean outside = value.compareTo(limit) < 0;
            List<String> drawn = HeatStrip.of(
                    List.of(
                            dot(0, "330", false),
                            new Dot(EVENING.plusMinutes(30), value, outside),
                            dot(60, "230", true)),
                    Optional.of(limit),
                    66,
                    random.nextInt(4, 12));
            int line = 0;
            while (drawn.get(line).indexOf('-') < 0) {
                line++;
            }
            int middle = 35;
            int row = 0;
            while (".#".indexOf(drawn.get(row).charAt(middle)) < 0) {
                row++;
            }
            assertThat(row < line).as(value + " " + drawn).isEqualTo(!outside);
        }
    }
}
