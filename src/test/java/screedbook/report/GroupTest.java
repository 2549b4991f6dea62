package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;

/** How findings are taken together: the same rule, the same mix or pull, the same side of the limit. All invented. */
class GroupTest {
    private static Set<Ref> refs(String... refs) {
        Set<Ref> all = new LinkedHashSet<>();
        for (String each : refs) {
            all.add(Ref.of(each));
        }
        return all;
    }

    @Test
    void entriesThatFollowEachOtherAreToldByTheirEnds() {
        assertThat(Group.shortened(refs("paver/22", "paver/19", "paver/23", "paver/24", "tack/3", "paver/17")))
                .isEqualTo("paver/17, 19, 22-24; tack/3");
        assertThat(Group.shortened(refs("paver/4", "paver/5"))).isEqualTo("paver/4, 5");
        assertThat(Group.shortened(refs("paver/4"))).isEqualTo("paver/4");
    }

    /** Eight loads on two mixes; the readings of six of them are told as findings. */
    private static DayPaper paper(List<Finding> findings) {
        Shift shift = Shift.day().key(Kind.OPENING, null, "format", "1", "zone", "America/Boise");
        for (int i = 0; i < 8; i++) {
            shift.ticket(
                    "08:1" + i,
                    "" + (101 + i),
                    "22.00",
                    "mix",
                    i < 5 ? "12.5-70A" : "19-64",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "plant_degF",
                    "30" + i);
        }
        DayPaper by = Sample.paper(shift, Jobs.us());
        return new DayPaper(by.day(), by.totals(), findings, by.agreed(), Optional.empty(), by.seals(), List.of(), 1);
    }

    private static Finding at(int line, String beyond) {
        return new Finding(
                "heat-at-plant",
                Sort.OUTSIDE,
                List.of(new Ref("paver", line)),
                "at the plant, " + beyond + " beyond",
                "275 to 325 °F",
                "clause 7",
                "",
                "",
                List.of(),
                new BigDecimal(beyond));
    }

    @Test
    void theWorstOfEachMixAndSideIsToldWithHowManyOfHowMany() {
        List<Finding> findings = List.of(at(2, "4"), at(3, "-9"), at(4, "12.5"), at(5, "7"), at(7, "3"), at(8, "2"));
        DayPaper paper = paper(findings);
        List<Group> open = Numbered.of(paper, new Entries(paper)).open();
        assertThat(open)
                .extracting(Group::text)
                .containsExactly(
                        "1-3 OUT  3 of 5 loads of 12.5-70A: worst (2) at the plant, 12.5 beyond; 275 to 325 °F (clause 7);"
                                + " 08:10 to 08:13; paver/2, 4, 5",
                        "4 OUT  08:11 ticket 102 (paver/3): at the plant, -9 beyond; 275 to 325 °F (clause 7)",
                        "5-6 OUT  2 of 3 loads of 19-64: worst (5) at the plant, 3 beyond; 275 to 325 °F (clause 7);"
                                + " 08:15 to 08:16; paver/7, 8");
    }

    @Test
    void numbersRunThroughThePageInItsOrder() {
        DayPaper paper = paper(IntStream.range(2, 9).mapToObj(i -> at(i, "1")).toList());
        assertThat(Numbered.of(paper, new Entries(paper)).open().stream()
                        .flatMap(g -> g.items().stream())
                        .map(Numbered.Item::number))
                .containsExactly(1, 2, 3, 4, 5, 6, 7);
    }
}
