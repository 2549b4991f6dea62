package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A text for people in which some stretches are the program's own words, each between {@code <!-- name -->} and
 * {@code <!-- end of name -->}. With {@code -Dgoldens=keep} they are written anew.
 */
public record Handbook(Path file) {
    public static final Handbook README = new Handbook(Path.of("README.md"));
    public static final Handbook DEVELOPERS = new Handbook(Path.of("DEVELOPERS.md"));

    public String text() throws IOException {
        return Files.readString(file);
    }

    /** The stretch says this, and nothing else. */
    public void says(String stretch, String words) throws IOException {
        String whole = text();
        String head = "<!-- " + stretch + " -->\n";
        String tail = "<!-- end of " + stretch + " -->\n";
        int from = whole.indexOf(head) + head.length();
        int to = whole.indexOf(tail);
        assertThat(whole).as(file.toString()).containsOnlyOnce(head).containsOnlyOnce(tail);
        assertThat(from).as("begin of " + stretch).isLessThanOrEqualTo(to);
        if ("keep".equals(System.getProperty("goldens"))) {
            Files.writeString(file, whole.substring(0, from) + words + whole.substring(to));
        } else {
            assertThat(whole.substring(from, to)).isEqualTo(words);
        }
    }

    /** The lines between fences of this sort, such as {@code sh}. */
    public List<String> fenced(String sort) throws IOException {
        List<String> lines = new ArrayList<>();
        boolean inside = false;
        for (String line : text().lines().toList()) {
            if (line.startsWith("```")) {
                inside = line.equals("```" + sort);
            } else if (inside) {
                lines.add(line);
            }
        }
        return List.copyOf(lines);
    }

    /** Text as a block that is shown as it stands. */
    public static String block(String text) {
        return "```text\n" + text + "```\n";
    }
}
