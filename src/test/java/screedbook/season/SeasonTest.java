package screedbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.ShiftId;
import screedbook.picture.CalendarPicture;
import screedbook.report.SeasonJob;
import screedbook.report.SeasonPart;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Figure;

/** A season is its shifts taken together: held against the shifts of the demo, each read by itself. */
class SeasonTest {
    private static final Path DEMO = Path.of("demo-logs", "harrow-bend");

    @TempDir
    Path folder;

    private final List<SeasonPart> parts = new ArrayList<>();
    private final List<ShiftId> read = new ArrayList<>();

    private SeasonJob season(Path job) {
        parts.clear();
        read.clear();
        return Season.read(job, LocalDate.MIN, LocalDate.MAX, read::add, parts::add);
    }

    private List<SeasonPart> of(String by) {
        return parts.stream().filter(p -> p.by().equals(by)).toList();
    }

    private static BigDecimal value(SeasonPart part, String id) {
        return part.sections().stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().equals(id))
                .map(Figure::value)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private BigDecimal sum(String by, String id) {
        return of(by).stream().map(p -> value(p, id)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void whatAddsUpIsTheSameByShiftDayWeekMonthAndJob() {
        season(DEMO);
        Shelf shelf = Shelf.at(DEMO);
        List<ShiftFile> alone = shelf.shifts().stream().map(shelf::shift).toList();

        assertThat(read).isEqualTo(shelf.shifts());
        for (String id :
                List.of("loads", "received-tons", "placed-tons", "pay-tons", "lines", "struck", "amendments")) {
            BigDecimal sum = alone.stream()
                    .map(s -> s.totals().figure(id).orElseThrow().value())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            for (String by : List.of("shift", "day", "week", "month", "job")) {
                assertThat(sum(by, id)).as(id + " by " + by).isEqualByComparingTo(sum);
            }
        }
        BigDecimal found = BigDecimal.valueOf(
                alone.stream().mapToInt(s -> s.findings().size()).sum());
        BigDecimal sorts = Stream.of("outside", "missing", "look-again", "does-not-add-up")
                .map(sort -> sum("month", "found." + sort))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sorts).isEqualByComparingTo(found);
    }

    @Test
    void mixesPullsAndLiftsComeToTheWholeJob() {
        season(DEMO);
        SeasonPart job = of("job").get(0);

        assertThat(of("mix").stream()
                        .map(p -> value(p, "placed-tons.mix." + p.of()))
                        .reduce(BigDecimal::add))
                .hasValueSatisfying(s -> assertThat(s).isEqualByComparingTo(value(job, "placed-tons")));
        BigDecimal lifts = of("lift").stream()
                .map(p -> value(p, "laid-tons.lift." + p.of()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(of("pull").stream()
                        .map(p -> value(p, "laid-tons.pull." + p.of()))
                        .reduce(BigDecimal::add))
                .hasValueSatisfying(s -> assertThat(s).isEqualByComparingTo(lifts));
    }

    /** Tons of the lift that lie in its area, over that area; the pulls' own rates have decimals cut off. */
    @Test
    void aLiftsSpreadRateIsItsTonsOverItsArea() {
        season(DEMO);
        SeasonPart lift = of("lift").stream()
                .filter(p -> p.of().equals("lift 1"))
                .findFirst()
                .orElseThrow();
        BigDecimal area = of("pull").stream()
                .filter(p -> p.of().endsWith(" lift 1"))
                .map(p -> value(p, "area." + p.of()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal pounds = value(lift, "laid-tons.lift.lift 1")
                .subtract(value(of("job").get(0), "laid-elsewhere.B lift 1"))
                .multiply(BigDecimal.valueOf(2000));

        assertThat(value(lift, "area.lift 1")).isEqualByComparingTo(area);
        assertThat(value(lift, "spread-rate.lift 1"))
                .isCloseTo(pounds.divide(area, 4, RoundingMode.HALF_UP), within(new BigDecimal("0.01")));
        assertThat(value(lift, "spread-percent.lift 1")).isBetween(new BigDecimal("100.3"), new BigDecimal("100.5"));
    }

    @Test
    void aMeanIsThatOfAllReadingsAndNotOfTheShiftsMeans() {
        season(DEMO);
        Shelf shelf = Shelf.at(DEMO);
        List<BigDecimal> readings = shelf.shifts().stream()
                .flatMap(id -> shelf.shift(id).totals().loads().stream())
                .filter(load -> load.laid() && load.mix().equals("19-64"))
                .map(load -> load.ticket().entry().heat().paver())
                .filter(amount -> amount != null)
                .map(amount -> amount.value())
                .toList();
        BigDecimal mean = readings.stream()
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(readings.size()), 6, RoundingMode.HALF_UP);

        assertThat(value(of("job").get(0), "paver-temperature-mean.19-64")).isEqualByComparingTo(mean);
        assertThat(value(of("job").get(0), "paver-temperature-least.19-64"))
                .isEqualByComparingTo(readings.stream().reduce(BigDecimal::min).orElseThrow());
    }

    @Test
    void onlyTheDatesThatAreAskedForCountAndEarlierShiftsStayInWhatRunsOn() {
        Season.read(DEMO, LocalDate.parse("2026-05-14"), LocalDate.parse("2026-05-14"), read::add, parts::add);
        Shelf shelf = Shelf.at(DEMO);
        ShiftFile night = shelf.shift(ShiftId.of("2026-05-14-night"));

        assertThat(of("shift")).extracting(SeasonPart::of).containsExactly("2026-05-14-night");
        assertThat(of("week")).extracting(SeasonPart::of).containsExactly("2026-W20");
        assertThat(value(of("job").get(0), "pay-to-date.403.19"))
                .isEqualByComparingTo(night.totals()
                        .figure("pay-to-date.403.19")
                        .orElseThrow()
                        .value());
    }

    @Test
    void aChangedByteIsNamedAndALineThatCannotBeReadIsCounted() throws IOException {
        Path job = copy();
        Path diary = job.resolve("diary/2026-05-12-day.paver.jsonl");
        String text = Files.readString(diary);
        int line = text.indexOf("\"kind\":\"weather\"");
        Files.writeString(diary, text.substring(0, line) + "\"kind\";" + text.substring(line + 7));

        SeasonJob season = season(job);

        assertThat(season.damages()).isNotEmpty().allMatch(d -> d.file().equals("2026-05-12-day.paver.jsonl"));
        assertThat(season.notRead()).hasSize(1).first().asString().startsWith("2026-05-12-day paver line ");
        assertThat(sum("job", "not-read")).isEqualByComparingTo("1");
        assertThat(sum("job", "lines")).isEqualByComparingTo("357");
    }

    @Test
    void theCalendarHasEveryDayAndNamesTheGaps() {
        SeasonJob season = season(DEMO);

        assertThat(CalendarPicture.gaps(season.shifts())).containsExactly("2026-05-15 to 2026-05-17");
        assertThat(CalendarPicture.lines(season.shifts()))
                .containsExactly("         1   5    10   15   20   25   30", "2026-05             don...d");
    }

    private Path copy() throws IOException {
        Path to = folder.resolve("job");
        try (Stream<Path> files = Files.walk(DEMO)) {
            for (Path each : files.toList()) {
                Path other = to.resolve(DEMO.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(other);
                } else {
                    Files.copy(each, other);
                }
            }
        }
        return to;
    }
}
