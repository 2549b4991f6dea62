package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.check.Findings;
import screedbook.check.Ground;
import screedbook.check.InForce;
import screedbook.check.Rules;
import screedbook.job.Agreed;
import screedbook.tally.Jobs;

/** The page with the findings as the rules make them. */
class FoundTest {
    private static DayPaper paper() {
        DayPaper by = Sample.paper();
        Agreed agreed = new Agreed(Jobs.us(), 2, "ab".repeat(32));
        Ground ground = new Ground(List.of(new InForce("paver", 1, Optional.of(agreed), by.sheet())));
        List<Finding> findings = Findings.of(by.day(), by.totals(), ground);
        return new DayPaper(by.day(), by.totals(), findings, by.agreed(), by.sheet(), by.seals(), List.of(), 1);
    }

    @Test
    void theRulesThatThePageKnowsByNameAreThere() {
        for (String rule : List.of("heat-at-paver", "plan-not-found", "line-not-read", "adrift", "no-close")) {
            assertThat(Rules.of(rule)).as(rule).isPresent();
        }
        assertThat(Groups.JUDGED.keySet())
                .isNotEmpty()
                .allSatisfy(rule -> assertThat(Rules.of(rule)).as(rule).isPresent());
        assertThat(paper().findings()).anyMatch(f -> f.rule().equals("heat-at-paver"));
    }

    @Test
    void theColdLoadIsDrawnUnderTheLineAndWhoDecidedStandsAtTheTop() {
        String page = DayPage.text(paper());
        assertThat(page).contains("  270|---", "at the paver 264 °F; at least 270");
        assertThat(page.lines().filter(l -> l.startsWith("  264|")).findFirst().orElseThrow())
                .contains("#");
        String first = OnPaper.unwrapped(OnPaper.sheets(page).get(0));
        assertThat(first.indexOf("decided by R. Kell; told to foreman"))
                .isBetween(first.indexOf("PLACED OUTSIDE LIMITS"), first.indexOf("RECONCILIATION"));
        assertThat(page.indexOf("08:13 RK: spread at once")).isGreaterThan(page.lastIndexOf("PLACED OUTSIDE LIMITS"));
    }

    @Test
    void everyFindingIsOnItsPage() {
        DayPaper paper = paper();
        assertThat(paper.findings()).isNotEmpty();
        PageHolds.everyFinding(paper, DayPage.text(paper));
        String page = FindingsPage.text(paper).replaceAll("\\s+", " ");
        for (Finding each : paper.findings()) {
            assertThat(page).contains(each.seen().replaceAll("\\s+", " "));
        }
    }
}
