package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Accusing;
import screedbook.Situations;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.tally.ToDate;

/** Every rule is raised by what it is for and not by what is just inside, and its findings say all there is to say. */
class RulesTest {
    static Stream<RuleCase> cases() {
        return RuleCases.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aRuleIsRaisedByWhatItIsForAndNotByWhatIsJustInside(RuleCase c) {
        List<Finding> raised = c.raising().findings(c.rule());

        assertThat(raised).as("findings of %s", c.rule()).anySatisfy(f -> {
            assertThat(f.seen()).contains(c.seen());
            assertThat(f.sort()).isEqualTo(c.sort());
        });
        assertThat(c.quiet().findings(c.rule())).as("findings just inside").isEmpty();
    }

    @Test
    void everyRuleHasSuchACase() {
        Set<String> tried = new LinkedHashSet<>();
        RuleCases.all().forEach(c -> tried.add(c.rule()));
        tried.add("no-close");
        tried.add("days-without-shift");

        assertThat(tried)
                .containsExactlyInAnyOrderElementsOf(
                        Rules.all().stream().map(Rule::id).toList());
    }

    @Test
    void aShiftThatWasNotClosedIsSaidWhenItHasBeenSilentForHours() {
        Shift open = Shift.night().at("21:00", "note text=a");
        Shift closed = Shift.night().at("21:00", "closing agreed=yes");

        assertThat(notClosed(open, "00:01")).isEmpty();
        assertThat(notClosed(open, "00:02")).singleElement().satisfies(f -> {
            assertThat(f.seen()).isEqualTo("not closed, last line 21:01, since then 181 min");
            assertThat(f.sort()).isEqualTo(Sort.MISSING);
            assertThat(f.of()).containsExactly(new Ref("paver", 1));
        });
        assertThat(notClosed(closed, "09:00")).isEmpty();
        assertThat(open.findings("no-close")).isEmpty();
    }

    @Test
    void daysWithoutAnyShiftAreNamedUntilTheyHaveOne() {
        Shift shift = Shift.night().at("21:00", "note text=a");
        LocalDate date = shift.day().shift().date();

        assertThat(shift.after(before(date.minusDays(4))).findings("days-without-shift"))
                .singleElement()
                .satisfies(f -> assertThat(f.seen())
                        .isEqualTo("no shift on " + date.minusDays(3) + " to " + date.minusDays(1)));
        assertThat(Shift.night()
                        .at("21:00", "note text=a")
                        .after(before(date.minusDays(1)))
                        .findings("days-without-shift"))
                .isEmpty();
        assertThat(Shift.night().at("21:00", "note text=a").findings("days-without-shift"))
                .as("nothing is known of the days before the first shift")
                .isEmpty();
    }

    @Test
    void theSituationsOfACaseNameItsRule() {
        Map<Integer, List<String>> rules = new HashMap<>();
        Situations.rows().forEach(row -> rules.put(row.number(), row.rules()));
        for (RuleCase c : RuleCases.all()) {
            for (String number :
                    c.situations().isEmpty() ? new String[0] : c.situations().split(", ")) {
                assertThat(rules.get(Integer.valueOf(number)))
                        .as("row %s of situations.csv, %s", number, c)
                        .contains(c.rule());
            }
        }
    }

    private static ToDate before(LocalDate date) {
        return new ToDate(Map.of(), Map.of(), 0, List.of(new ShiftId(date, "day")), 0);
    }

    private static List<Finding> notClosed(Shift shift, String now) {
        OffsetDateTime at = shift.time(now);
        return Findings.of(shift.day(), Optional.of(shift.totals()), shift.ground(), at).stream()
                .filter(f -> f.rule().equals("no-close"))
                .toList();
    }

    @Test
    void everyFindingSaysWhatWasSeenTheRuleItsSourceAndWhatWouldHaveBeenInside() {
        assertThat(RuleCases.all())
                .allSatisfy(c -> assertThat(c.raising().findings()).allSatisfy(f -> {
                    assertThat(f.of()).isNotEmpty();
                    assertThat(f.seen()).isNotBlank();
                    assertThat(f.limit()).isNotBlank();
                    assertThat(f.clause()).isNotBlank();
                    assertThat(f.inside()).isNotBlank();
                    assertThat(Rules.of(f.rule())).isPresent();
                }));
    }

    @Test
    void noSentenceHasAWordThatAccuses() {
        List<String> sentences = new ArrayList<>();
        Rules.all().forEach(r -> sentences.add(r.id() + " " + r.says()));
        RuleCases.all()
                .forEach(c -> c.raising()
                        .findings()
                        .forEach(f -> sentences.add(String.join(
                                " ",
                                f.rule(),
                                f.seen(),
                                f.limit(),
                                f.clause(),
                                f.inside(),
                                f.working(),
                                f.sort().text()))));
        for (Sort sort : Sort.values()) {
            sentences.add(sort.text() + " " + sort.mark());
        }

        assertThat(sentences)
                .isNotEmpty()
                .allSatisfy(s -> assertThat(Accusing.in(s)).isEmpty());
    }

    @Test
    void ruleIdsAreWordsAndStandOnce() {
        assertThat(Rules.all()).extracting(Rule::id).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z-]{3,30}"));
    }
}
