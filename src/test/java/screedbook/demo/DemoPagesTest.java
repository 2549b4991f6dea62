package screedbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Seal;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.report.DayPage;
import screedbook.report.DayPaper;
import screedbook.report.OnPaper;
import screedbook.report.PageHolds;
import screedbook.shelf.Papers;
import screedbook.tally.Load;
import screedbook.tally.Tons;

/**
 * The pages of the demo as they are printed today, and those that were kept at the close: the layout may change, and what
 * a kept page says of tons, temperatures, findings and seals may not differ from what is printed now.
 */
class DemoPagesTest {
    static List<DemoLogsTest.Shift> shifts() throws IOException {
        return DemoLogsTest.shifts();
    }

    private static DayPaper paper(DemoLogsTest.Shift shift) {
        return Papers.of(shift.file());
    }

    private static String[] belongs(DayPaper paper) {
        return new String[] {
            paper.day().shift().toString(),
            "page revision " + paper.revision(),
            "seal " + paper.seals().get(0).shortForm()
        };
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void theFirstSheetFitsOnPaperAndSaysWhatASupervisorAsks(DemoLogsTest.Shift shift) {
        DayPaper paper = paper(shift);
        List<List<String>> sheets = OnPaper.numbered(DayPage.text(paper), belongs(paper));
        String first = OnPaper.unwrapped(sheets.get(0));
        Tons all = paper.totals().shift();
        assertThat(first)
                .contains(
                        paper.day().shift().toString(),
                        "job " + shift.job().getFileName(),
                        "NEEDS A DECISION FROM YOU",
                        "PLACED OUTSIDE LIMITS",
                        "WEATHER AND SURFACE: air ",
                        "AT THE CLOSE: ",
                        "kept by ",
                        "read by ___");
        if (all.loads() > 0) {
            assertThat(first)
                    .contains(
                            all.received().shown(2).value().toPlainString(),
                            all.placed().shown(2).value().toPlainString(),
                            all.pay().shown(2).value().toPlainString());
        }
        for (Seal seal : paper.seals()) {
            assertThat(first).contains("seal " + seal.book() + " " + seal.shortForm() + " " + seal.lines() + " lines");
        }
        PageHolds.everyFinding(paper, DayPage.text(paper));
    }

    /** The newest page that was kept of a shift. */
    private static String kept(DemoLogsTest.Shift shift) throws IOException {
        try (Stream<Path> days = Files.list(shift.job().resolve("days"))) {
            Path newest = days.filter(p -> p.getFileName().toString().matches(shift.id() + "(\\.r\\d+)?\\.txt"))
                    .max(Comparator.comparing(p -> p.getFileName().toString().length()))
                    .orElseThrow();
            return Files.readString(newest);
        }
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void aKeptPageHasTheSealsTonsAndTemperaturesThatArePrintedToday(DemoLogsTest.Shift shift) throws IOException {
        DayPaper paper = paper(shift);
        String kept = kept(shift);
        List<String> today = DayPage.text(paper).lines().toList();
        for (Seal seal : paper.seals()) {
            assertThat(kept).contains(seal.shortForm());
        }
        List<String> rows = new ArrayList<>(rows(kept, "LOADS AND TONS"));
        rows.addAll(rows(kept, "MIX TEMPERATURES"));
        assertThat(today).containsAll(rows);
        if (paper.totals().shift().loads() > 0) {
            assertThat(rows).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    /** The lines under a heading of a kept page that hold figures. */
    private static List<String> rows(String page, String heading) {
        return page.lines()
                .dropWhile(line -> !line.startsWith(heading))
                .takeWhile(line -> !line.isEmpty())
                .filter(line -> line.matches(" \\S.*\\d.*"))
                .toList();
    }

    /** A kept page names the entry of every finding, but for loads that were not placed: those it left out. */
    @ParameterizedTest
    @MethodSource("shifts")
    void aKeptPageHasTheFindingsThatArePrintedToday(DemoLogsTest.Shift shift) throws IOException {
        DayPaper paper = paper(shift);
        String kept = OnPaper.unwrapped(kept(shift).lines().toList());
        for (Finding each : paper.findings()) {
            if (each.sort() != Sort.OUTSIDE || stayed(paper, each)) {
                assertThat(kept).as(each.rule()).contains(each.of().get(0).toString());
            }
        }
    }

    private static boolean stayed(DayPaper paper, Finding finding) {
        return paper.day().standing(Ticket.class).stream()
                .filter(t -> t.ref().equals(finding.of().get(0)))
                .map(Standing::entry)
                .allMatch(Load::laid);
    }
}
