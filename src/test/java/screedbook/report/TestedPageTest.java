package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.job.Lots;
import screedbook.tally.Jobs;
import screedbook.tally.LotJobs;
import screedbook.tally.Shift;

/** Lots, densities and samples on the supervisor's page. */
class TestedPageTest {
    private static final String MIX = "12.5-70A";

    private static Shift shift() {
        Shift shift = Shift.day();
        for (int i = 0; i < 3; i++) {
            shift.ticket(
                    "08:0" + i,
                    "" + (101 + i),
                    "45.00",
                    "mix",
                    MIX,
                    "pull",
                    "B",
                    "lift",
                    "2",
                    "from_sta",
                    12 + i + "+00",
                    "to_sta",
                    13 + i + "+00");
        }
        return shift.key(
                        Kind.SAMPLE, "09:00", "sample", "S-1", "ticket", "101", "taken_by", "RK", "seal_number", "4411")
                .key(
                        Kind.CORE,
                        "10:00",
                        "core",
                        "C-1",
                        "place_sta",
                        "12+50",
                        "pull",
                        "B",
                        "gmb",
                        "2.310",
                        "gmm",
                        "2.500")
                .key(
                        Kind.CORE,
                        "10:05",
                        "core",
                        "C-2",
                        "place_sta",
                        "14+50",
                        "pull",
                        "B",
                        "gmb",
                        "2.350",
                        "gmm",
                        "2.500")
                .key(Kind.CORE, "10:10", "core", "C-3", "place_sta", "14+60", "pull", "B")
                .key(
                        Kind.GAUGE,
                        "10:20",
                        "first_reading_lb_ft3",
                        "143.0",
                        "place_sta",
                        "12+60",
                        "pull",
                        "B",
                        "gmm",
                        "2.480");
    }

    private static String part(String page, String heading) {
        int from = page.indexOf(heading);
        assertThat(from).as(heading).isPositive();
        int to = page.indexOf("\n\n", from);
        return page.substring(from, to + 1);
    }

    @Test
    void lotsDensitiesAndSamplesEachHaveTheirPartOpenSamplesFirst() {
        String page = DayPage.text(Sample.paper(shift(), LotJobs.of("200", "100", Lots.End.EXACT_TON)));

        assertThat(part(page, "LOTS\n")).isEqualTo("""
                LOTS
                 lot 1 of 12.5-70A: 135.00 T of 200 T; 3 loads, ticket 101 to 103, pull B lift 2
                   12+00 to 15+00
                   sublot 1: 100.00 T of 100 T; 3 loads, ticket 101 to 103, pull B lift 2 12+00
                     to 15+00; sample S-1, 1 core, 1 reading
                   sublot 2: 35.00 T of 100 T, open; ticket 103, pull B lift 2 14+00 to 15+00; 2
                     cores
                """);
        assertThat(part(page, "DENSITY, ")).isEqualTo("""
                DENSITY, % of the theoretical maximum
                 core C-1, lot 1 sublot 1, 12+50: 92.4 %
                 core C-2, lot 1 sublot 2, 14+50: 94.0 %
                 1 gauge reading: 92.4
                 lot 1 of 12.5-70A, cores, mean: 93.20 %, voids 6.80 %, 2 tests
                 lot 1 of 12.5-70A, cores, standard deviation: 1.13
                 lot 1 of 12.5-70A, gauge readings, mean: 92.41 %, voids 7.59 %, 1 test
                """);
        assertThat(part(page, "SAMPLES\n")).isEqualTo("""
                SAMPLES
                 sample S-1: open, with RK; lot 1 sublot 1 stands for 100.00 T, 3 loads, ticket
                   101 to 103, pull B lift 2 12+00 to 15+00
                 core C-3: open, no density told, 14+60; lot 1 sublot 2 stands for 35.00 T so
                   far, ticket 103, pull B lift 2 14+00 to 15+00
                """);
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void aShiftWithoutThemHasNoSuchPart() {
        String page = DayPage.text(Sample.paper(Sample.shift(), Jobs.us()));
        List.of("LOTS", "DENSITY", "SAMPLES").forEach(h -> assertThat(page).doesNotContain(h));
    }
}
