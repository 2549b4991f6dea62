package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import screedbook.check.Finding;
import screedbook.entry.Shown;

/** What a page holds of what was found, whatever its sheets look like. */
public final class PageHolds {
    private static final Pattern MARKED =
            Pattern.compile(" (\\d+)(?:-\\d+)? (?:OUT|missing|look again|adds up\\?) (.*)");
    private static final Pattern UNDER = Pattern.compile("  (\\d+ .*)");

    private PageHolds() {}

    /**
     * The first sheet leads to every finding by its number, once; and somewhere on the page each stands in full, with the
     * entry that carries it, what was seen, the limit and its clause.
     */
    public static void everyFinding(DayPaper paper, String page) {
        List<Integer> all =
                IntStream.rangeClosed(1, paper.findings().size()).boxed().toList();
        List<List<String>> sheets = OnPaper.sheets(page);
        assertThat(OnPaper.findings(sheets.get(0))).as(page).isEqualTo(all);
        List<String> told = told(page);
        for (Finding each : paper.findings()) {
            String of = each.of().isEmpty() ? "" : "(" + each.of().get(0) + ")";
            assertThat(told)
                    .as(each.rule() + " " + of)
                    .anyMatch(text -> text.contains(of)
                            && text.contains(one(each.seen()))
                            && text.contains(one(each.limit()))
                            && text.contains(one(each.clause())));
        }
    }

    private static String one(String text) {
        return Shown.text(text).replaceAll("\\s+", " ").strip();
    }

    /** Each finding of the page as one line; one that stands under its limit has the limit behind it. */
    private static List<String> told(String page) {
        List<String> told = new ArrayList<>();
        String limit = "";
        for (String text : paragraphs(page)) {
            Matcher marked = MARKED.matcher(text);
            Matcher under = UNDER.matcher(text);
            if (marked.matches()) {
                limit = marked.group(2);
                told.add(limit);
            } else if (under.matches()) {
                told.add(under.group(1) + " " + limit);
            }
        }
        return told;
    }

    private static List<String> paragraphs(String page) {
        List<String> paragraphs = new ArrayList<>();
        for (String line : page.lines().toList()) {
            if (line.startsWith("   ") && !paragraphs.isEmpty()) {
                paragraphs.add(paragraphs.remove(paragraphs.size() - 1) + " " + line.strip());
            } else {
                paragraphs.add(line);
            }
        }
        return paragraphs.stream().map(p -> p.replaceAll("(?<=\\S)\\s+", " ")).toList();
    }
}
