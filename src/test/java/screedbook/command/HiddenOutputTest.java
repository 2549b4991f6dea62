package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.entry.Field;
import screedbook.entry.Kind;
import screedbook.entry.Shown;
import screedbook.report.Schema;
import screedbook.shelf.KeptShift;

/**
 * Every text of every kind, of the job and of the names of files holds characters without a shape of their own: what a
 * terminal, a spreadsheet or a reader gets has none of them raw. Which those are: the general categories of the Unicode
 * Character Database as Java has them.
 */
class HiddenOutputTest {
    /** All that can drive a terminal or turn a text round; of the large classes a sample. */
    private static final int[] POINTS = IntStream.rangeClosed(1, Character.MAX_CODE_POINT)
            .filter(HiddenOutputTest::sampled)
            .toArray();

    @TempDir
    Path folder;

    private Path job;
    private int at;

    private static boolean sampled(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SPACE_SEPARATOR -> c != ' ';
            case Character.UNASSIGNED, Character.PRIVATE_USE -> c % 9001 == 0;
            case Character.NON_SPACING_MARK -> Shown.hidden(c) && c % 7 == 0;
            default -> false;
        };
    }

    /** A few of the points in a text that cannot be mistaken for another. */
    private String next() {
        StringBuilder text = new StringBuilder("x");
        for (int i = 0; i < 12; i++) {
            text.appendCodePoint(POINTS[at++ % POINTS.length]).append('y');
        }
        return text.toString();
    }

    @BeforeEach
    void keep() throws IOException {
        job = folder.resolve("be\u202end\u009b31m\u200b");
        KeptShift.job(job);
        String text = Files.readString(job.resolve("job.json"));
        Files.writeString(
                job.resolve("job.json"), text.replace("Example overlay", "Example\\u202e\\u001b[31m\\u009boverlay"));
        try (KeptShift kept = KeptShift.opened(JobFolder.at(job), "2026-06-03-day", "paver")) {
            kept.ticket("07:00", "48217", "20.10");
            for (int round = 0; round < 2; round++) {
                for (Kind kind : Kind.values()) {
                    if (kind != Kind.OPENING
                            && kind != Kind.CLOSING
                            && kind != Kind.PLAN
                            && kind != Kind.AMEND
                            && kind != Kind.STRIKE) {
                        kept.key(kind, "07:20", filled(kind));
                    }
                }
            }
            kept.key(Kind.STRIKE, null, Map.of("of", "paver/3", "reason", next()));
            kept.key(Kind.AMEND, null, Map.of("of", "paver/2", "set", Map.of("truck", next()), "reason", next()));
        }
        Files.writeString(job.resolve("diary/2026-06-03-day.paver.torn-1\u009b\u202e"), "");
    }

    private Map<String, Object> filled(Kind kind) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Field field : kind.fields()) {
            if (field.type() == String.class) {
                values.put(field.name(), next());
            } else if (field.element().filter(String.class::equals).isPresent()) {
                values.put(field.name(), List.of(next()));
            }
        }
        return values;
    }

    private static void clean(String text, String what) {
        String bare = text.replace("\r\n", "").replace("\n\fmy-job ", "my-job ").replace("\n", "");
        List<String> raw = new ArrayList<>();
        bare.codePoints().filter(Shown::hidden).forEach(c -> raw.add(String.format("U+%04X", c)));
        assertThat(raw).as(what).isEmpty();
    }

    @Test
    void everyHiddenCharacterIsTriedInSomeField() {
        assertThat(POINTS).hasSizeGreaterThan(250).contains(0x1B, 0x9B, 0x202E, 0x200B, 0x2028, 0xFEFF, 0xE0041);
        assertThat(at).isGreaterThan(POINTS.length);
    }

    @Test
    void noCommandPrintsOneInAnyForm() throws IOException {
        List<List<Object>> all = List.of(
                List.of("day", job),
                List.of("day", job, "--format", "csv"),
                List.of("day", job, "--format", "json"),
                List.of("day", job, "--without-remarks"),
                List.of("findings", job),
                List.of("findings", job, "--format", "json"),
                List.of("verify", job),
                List.of("verify", job, "--format", "json"),
                List.of("plan", job),
                List.of("limits", job),
                List.of("limits", job, "--format", "json"),
                List.of("csv", job, "--to", folder.resolve("tables\u009b")),
                List.of("carry", job, folder.resolve("stick\u202e")),
                List.of("new", folder.resolve("ne\u009bw")),
                List.of("new", folder.resolve("a\u009bb/c")),
                List.of("sheets", "no\u009bsheet"),
                List.of("day", folder.resolve("no\u202ewhere")),
                List.of("day", job, "--shift", "2026\u009b"),
                List.of("da\u009by"),
                List.of("day", "--f\u202e"));
        for (List<Object> words : all) {
            Said said = Said.by(words.toArray());
            clean(said.out(), words + " out");
            clean(said.err(), words + " err");
            assertThat(said.out() + said.err()).as("" + words).isNotEmpty();
            assertThat(said.exit()).as("" + words).isNotEqualTo(4);
        }
        try (Stream<Path> tables = Files.list(folder.resolve("tables\u009b"))) {
            for (Path table : tables.toList()) {
                clean(Files.readString(table), "" + table.getFileName());
            }
        }
        assertThat(Said.by("day", job).out()).contains("Example<U+202E><U+001B>[31m<U+009B>overlay");
    }

    /** A reader of JSON gets the text back as it was keyed; only what the file looks like is safe. */
    @Test
    void jsonHasThemAsEscapes() throws IOException {
        String json = Said.by("day", job, "--format", "json").out();
        assertThat(json).contains("Example\\u202e\\u001B[31m\\u009boverlay");
        assertThat(((Map<?, ?>) Schema.parse(json)).get("name")).isEqualTo("Example\u202e\u001b[31m\u009boverlay");
        String job = Said.by("verify", this.job, "--format", "json").out();
        Map<?, ?> first = (Map<?, ?>) ((List<?>) ((Map<?, ?>) Schema.parse(job)).get("jobs")).get(0);
        assertThat(first.get("folder")).isEqualTo(this.job.toString());
    }

    /** What is read with nothing but a pager drives no terminal either. */
    @Test
    void noFileThatTheProgramWroteHasOneRaw() throws IOException {
        KeptShift.again(JobFolder.at(job), "2026-06-03-day", "paver", "15:00").closed();
        try (Stream<Path> all = Files.walk(job)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                clean(Files.readString(each), "" + each.getFileName());
            }
        }
    }

    @Test
    void halfOfAPairOfCodeUnitsSpoilsNoLine() throws IOException {
        try (KeptShift kept = KeptShift.again(JobFolder.at(job), "2026-06-04-day", "paver", "16:00")) {
            kept.key(Kind.NOTE, "16:00", Map.of("text", "a\ud83db"));
            kept.key(Kind.NOTE, "16:01", Map.of("text", "whole"));
        }
        assertThat(Said.by("verify", job).out())
                .contains("  2026-06-04-day.paver.jsonl  2 lines, open\n")
                .doesNotContain("2026-06-04-day.paver.jsonl:");
        assertThat(Said.by("day", job).out()).contains("whole");
    }
}
