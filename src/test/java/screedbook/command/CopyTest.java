package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.Field;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Station;
import screedbook.report.Schema;
import screedbook.shelf.KeptShift;
import screedbook.unit.Amount;
import screedbook.unit.UnitSystem;

/**
 * The contractor's copy. Diaries may be closed to the contractor until the final estimate is paid (common practice, no
 * source at hand for one agency's clause): every free text of every kind is filled with a word that occurs nowhere else,
 * and none of those words may come out.
 */
class CopyTest {
    /** What is a remark, or says who spoke, decided, was told or stood by; kept apart from the program's own list. */
    private static final Set<String> TEXTS =
            Set.of(("text answer from_whom tags said_by detail called_by weighed_by received_by basis reason decided_by"
                            + " told_to went_where diluted_by next_who their_name why action cause witness taken_by"
                            + " operated_by given_by allowed_by told_by")
                    .split(" "));

    private static final Set<Kind> NOT_KEYED = Set.of(
            Kind.OPENING, Kind.CLOSING, Kind.DRAW, Kind.SET_ASIDE, Kind.PLAN, Kind.STRIKE, Kind.AMEND, Kind.CLOCK);
    private static final Pattern WORD = Pattern.compile("qz\\w+?zq");

    @TempDir
    Path folder;

    private Path job;
    private final Set<String> keyed = new TreeSet<>();

    @BeforeEach
    void keep() throws IOException {
        job = folder.resolve("bend");
        try (KeptShift kept = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")) {
            kept.ticket("07:00", "48217", "20.10").ticket("07:10", "48218", "21.05");
            for (Kind kind : Kind.values()) {
                if (!NOT_KEYED.contains(kind)) {
                    kept.key(kind, "07:20", filled(kind));
                }
            }
            kept.key(
                    Kind.AMEND,
                    null,
                    Map.of(
                            "of",
                            "paver/2",
                            "set",
                            Map.of("net_ston", new BigDecimal("20.40")),
                            "reason",
                            word("amend")));
            kept.key(
                    Kind.AMEND,
                    null,
                    Map.of(
                            "of",
                            "paver/3",
                            "set",
                            Map.of("remark", word("remark"), "reason", word("fate")),
                            "reason",
                            "x"));
            kept.ticket("07:30", "48219", "20.00");
            kept.key(Kind.STRIKE, null, Map.of("of", "paver/4", "reason", word("strike")));
            kept.key(Kind.CLOSING, null, filled(Kind.CLOSING));
        }
    }

    private String word(String of) {
        String word = "qz" + of.replaceAll("\\W", "") + keyed.size() + "zq";
        keyed.add(word);
        return word;
    }

    private Map<String, Object> filled(Kind kind) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Field field : kind.fields()) {
            Object value = value(kind, field);
            if (value != null) {
                values.put(field.key(UnitSystem.US), value);
            }
        }
        return values;
    }

    private Object value(Kind kind, Field field) {
        Class<?> type = field.type();
        if (TEXTS.contains(field.name()) && (type == String.class || type == List.class)) {
            String word = word(kind.word() + field.name());
            return type == List.class ? List.of(word) : word;
        }
        return switch (field.name()) {
            case "pull" -> "A";
            case "mix" -> "12.5-70A";
            case "number" -> "4831" + kind.ordinal();
            case "fate" -> "rejected";
            case "agreed" -> "no";
            default -> plain(type, field);
        };
    }

    private static Object plain(Class<?> type, Field field) {
        if (type == Amount.class || type == BigDecimal.class || type == Integer.class) {
            return BigDecimal.valueOf(2);
        }
        if (type.isEnum()) {
            return field.words().get(0);
        }
        if (type == Station.class) {
            return "12+00";
        }
        if (type == Ref.class) {
            return "paver/2";
        }
        if (type == OffsetDateTime.class) {
            return "2026-06-03T07:20:00-06:00";
        }
        return type == LocalDate.class ? "2026-06-03" : null;
    }

    private Set<String> found(String text) {
        Set<String> found = new TreeSet<>();
        Matcher words = WORD.matcher(text.replaceAll("\n +", " "));
        while (words.find()) {
            found.add(words.group());
        }
        return found;
    }

    @Test
    void everyTextOfEveryKindIsKeyedHere() {
        List<String> neither = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (Kind kind : Kind.values()) {
            kind.fields().forEach(field -> seen.add(field.name()));
        }
        TEXTS.stream().filter(name -> !seen.contains(name)).forEach(neither::add);
        assertThat(neither).isEmpty();
        assertThat(keyed).hasSizeGreaterThan(50);
        assertThat(found(Said.by("day", job).out()))
                .as("the whole page has them")
                .hasSizeGreaterThan(10);
        assertThat(found(Said.by("day", job).out())).anyMatch(word -> word.startsWith("qznotetext"));
    }

    @Test
    void noRemarkIsInACopyInAnyForm() throws IOException {
        for (String form : List.of("text", "csv", "json")) {
            Said said = Said.by("day", job, "--without-remarks", "--format", form);
            assertThat(said.exit()).isZero();
            assertThat(found(said.out() + said.err())).as(form).isEmpty();
        }
        for (String form : List.of("text", "json")) {
            Said said = Said.by("findings", job, "--without-remarks", "--format", form);
            assertThat(said.exit()).isZero();
            assertThat(found(said.out() + said.err())).as(form).isEmpty();
        }
        Said said = Said.by("csv", job, "--without-remarks", "--to", folder.resolve("tables"));
        assertThat(said.exit()).isZero();
        try (Stream<Path> tables = Files.list(folder.resolve("tables"))) {
            List<Path> all = tables.toList();
            assertThat(all)
                    .extracting(file -> file.getFileName().toString())
                    .contains("ticket.csv", "totals.csv", "closing.csv")
                    .doesNotContain("note.csv", "answer.csv", "review.csv", "hand-over.csv");
            for (Path table : all) {
                assertThat(found(Files.readString(table))).as("" + table).isEmpty();
            }
        }
    }

    @Test
    void theFiguresOfACopyAreThoseOfTheWhole() {
        assertThat(Said.by("day", job, "--without-remarks", "--format", "csv")
                        .out()
                        .lines())
                .hasSizeGreaterThan(20)
                .filteredOn(line -> !line.contains("\"record\""))
                .containsExactlyElementsOf(Said.by("day", job, "--format", "csv")
                        .out()
                        .lines()
                        .filter(line -> !line.contains("\"record\""))
                        .toList());
    }

    @Test
    void aCopySaysThatItIsOne() throws IOException {
        String text = Said.by("day", job, "--without-remarks").out();
        assertThat(text)
                .contains("copy without remarks")
                .contains("20.40")
                .contains("amended paver/2 net_ston: was 20.1")
                .doesNotContain("SAID AND SEEN", "null", "DECISION FROM YOU", "DECIDED BY, TOLD TO", "decided by");
        assertThat(text.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(Said.by("day", job).out()).doesNotContain("copy without remarks");
        String json =
                Said.by("day", job, "--without-remarks", "--format", "json").out();
        assertThat(Schema.shipped("day.json").wrongs(json)).isEmpty();
        assertThat(json).contains("\"without_remarks\" : true");
        String findings = Said.by("findings", job, "--without-remarks", "--format", "json")
                .out();
        assertThat(Schema.shipped("findings.json").wrongs(findings)).isEmpty();
    }
}
