package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A printed page cut into its sheets, with what holds of the sheets of any page. */
public final class OnPaper {
    /** Lines on which a printer writes within the margins of letter (66 lines at six to the inch) and of A4 (70). */
    public static final int LINES = 60;

    private static final int COLUMNS = 80;
    private static final Pattern NUMBER = Pattern.compile("=.* sheet (\\d+) of (\\d+) ==");
    private static final Pattern FOUND = Pattern.compile("(\\d+)(?:-(\\d+))? (OUT|missing|look again|adds up\\?) .*");
    private static final Pattern SPAN = Pattern.compile("findings?(?: more)?, numbers? (\\d+)(?: to (\\d+))?");

    private OnPaper() {}

    /** The sheets of a page, each as its lines. */
    public static List<List<String>> sheets(String page) {
        List<List<String>> sheets = new ArrayList<>();
        for (String sheet : page.split("\n\f", -1)) {
            sheets.add(sheet.lines().toList());
        }
        return sheets;
    }

    /**
     * Every sheet fits on paper and bears its number; all but the first tell in their first line where they belong.
     *
     * @return the sheets
     */
    public static List<List<String>> numbered(String page, String... belongs) {
        List<List<String>> sheets = sheets(page);
        for (int i = 0; i < sheets.size(); i++) {
            List<String> sheet = sheets.get(i);
            String told = String.join("\n", sheet);
            assertThat(sheet.size()).as(told).isLessThanOrEqualTo(LINES);
            assertThat(sheet).as(told).allMatch(line -> line.codePointCount(0, line.length()) <= COLUMNS);
            assertThat(told).doesNotContain("\f");
            List<String> numbers = sheet.stream()
                    .map(NUMBER::matcher)
                    .filter(Matcher::matches)
                    .map(m -> m.group(1) + "/" + m.group(2))
                    .toList();
            assertThat(numbers).as(told).containsExactly((i + 1) + "/" + sheets.size());
            if (i > 0) {
                assertThat(sheet.get(0)).contains(belongs);
                assertThat(sheet.get(1)).matches(NUMBER);
            }
        }
        return sheets;
    }

    /** The text of lines as if they were one, so that it does not matter where they wrap. */
    public static String unwrapped(List<String> lines) {
        return String.join(" ", lines).replaceAll("\\s+", " ");
    }

    /** The numbers of findings that a sheet names, by themselves or in a span. */
    public static List<Integer> findings(List<String> sheet) {
        List<Integer> numbers = new ArrayList<>();
        for (String line : sheet) {
            Matcher found = FOUND.matcher(line.strip());
            if (line.startsWith(" ") && !line.startsWith("  ") && found.matches()) {
                add(numbers, found.group(1), found.group(2));
            }
        }
        Matcher span = SPAN.matcher(unwrapped(sheet));
        while (span.find()) {
            add(numbers, span.group(1), span.group(2));
        }
        return numbers.stream().sorted().toList();
    }

    private static void add(List<Integer> numbers, String first, String last) {
        for (int n = Integer.parseInt(first); n <= Integer.parseInt(last == null ? first : last); n++) {
            numbers.add(n);
        }
    }
}
