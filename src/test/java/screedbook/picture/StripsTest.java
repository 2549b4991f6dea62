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
    void plantPaverAndMatStandOverOneClockEachWithItsOwnLines() {
        List<Dot> plant = List.of(dot(0, "301", false), dot(20, "329", true), dot(58, "297", false));
        List<Dot> paver = List.of(dot(0, "288", false), dot(20, "264", true), dot(58, "279", false));
        List<Dot> mat = List.of(
                new Dot(EVENING.plusMinutes(2), new BigDecimal("281"), false, 's'),
                new Dot(EVENING.plusMinutes(12), new BigDecimal("240"), false, 'b'),
                new Dot(EVENING.plusMinutes(30), new BigDecimal("171"), false, 'e'));
        List<HeatStrip> strips = List.of(
                new HeatStrip(
                        "at the plant", plant, Optional.of(new BigDecimal("275")), Optional.of(new BigDecimal("325"))),
                new HeatStrip("at the paver", paver, Optional.of(new BigDecimal("270")), Optional.empty()),
                new HeatStrip("mat", mat, Optional.of(new BigDecimal("175")), Optional.empty()));

        assertThat(drawn(HeatStrip.of(strips, 45, 19))).isEqualTo("""
                at the plant
                 329|             #
                 325|----------------------------------------
                    |.
                    |                                       .
                 275|----------------------------------------
                at the paver
                 288|.
                    |                                       .
                    |
                 270|----------------------------------------
                 264|             #
                mat
                 281| s
                    |        b
                    |
                 175|----------------------------------------
                 171|                    e
                           20:30     20:45     21:00
                """.stripTrailing());
    }

    @Test
    void aStripWithoutReadingsLeavesItsRoomToTheOthers() {
        List<HeatStrip> strips = List.of(
                new HeatStrip("at the plant", List.of(), Optional.empty(), Optional.empty()),
                new HeatStrip("at the paver", DOTS, Optional.of(new BigDecimal("270")), Optional.empty()));

        List<String> lines = HeatStrip.of(strips, 45, 7);

        assertThat(lines.get(0).strip()).isEqualTo("at the paver");
        assertThat(lines.subList(1, 7)).isEqualTo(HeatStrip.of(DOTS, Optional.of(new BigDecimal("270")), 45, 6));
    }

    /** 60 T in half an hour, 60 more in the next: foretold from the last load to the plan's line, the cutoff upright. */
    @Test
    void whatIsForetoldIsDrawnWithSignsOfItsOwn() {
        List<Dot> dots = List.of(dot(0, "20", false), dot(10, "40", false), dot(20, "60", false), dot(30, "80", false));
        TonsStrip.Target target = new TonsStrip.Target(
                new BigDecimal("140"), EVENING.plusMinutes(60), Optional.of(EVENING.plusMinutes(50)));

        assertThat(drawn(TonsStrip.of(dots, Optional.of(target), 40, 6))).isEqualTo("""
                 140|===========================::::::::
                    |                   :::::::: !
                    |           .-----.:         !
                    |     .-----                 !
                    |.----                       !
                          20:30            21:00
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
            Optional<TonsStrip.Target> target = Optional.of(new TonsStrip.Target(
                    sum.add(BigDecimal.TEN),
                    EVENING.plusMinutes(minute + 1L + random.nextInt(300)),
                    Optional.of(EVENING.plusMinutes(random.nextInt(900)))));
            assertThat(TonsStrip.of(dots, target, width, height))
                    .hasSize(height)
                    .allMatch(l -> l.length() == width);
            List<HeatStrip> strips = List.of(
                    new HeatStrip("one", dots, limit, Optional.of(BigDecimal.valueOf(random.nextInt(500)))),
                    new HeatStrip("another", dots, Optional.empty(), limit));
            assertThat(HeatStrip.of(strips, width, height)).hasSize(height).allMatch(l -> l.length() == width);
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
