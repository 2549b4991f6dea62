package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import screedbook.entry.AnyRecord;
import screedbook.entry.Fields;
import screedbook.job.Job;
import screedbook.job.Revision;
import screedbook.unit.UnitSystem;

/** The job's files written from the desk. */
class JobSheetTest {
    private static final OffsetDateTime NOON = OffsetDateTime.of(2026, 5, 11, 12, 0, 0, 0, ZoneOffset.ofHours(-6));

    @TempDir
    Path home;

    private Path folder;
    private JobFolder job;

    @BeforeEach
    void aJobWithCommentsIsThere() throws IOException {
        folder = home.resolve("road");
        JobFolder.make(folder);
        job = JobFolder.at(folder);
    }

    private static JobSheet named(JobSheet read, String name) {
        Map<String, Object> values = new LinkedHashMap<>(read.values());
        values.put("name", name);
        return with(read, values, read.contacts());
    }

    private static JobSheet with(JobSheet read, Map<String, Object> values, List<Map<String, Object>> contacts) {
        return new JobSheet(
                values,
                contacts,
                read.stamp(),
                read.commented(),
                read.there(),
                read.revisions(),
                Map.of(),
                read.unread());
    }

    private Rewritten write(JobSheet sheet, String why) throws IOException {
        return job.rewrite(sheet, "RK", NOON, why);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void anyJobReadsBackAsItWasWritten(long seed) throws Json.NotJson {
        for (UnitSystem system : UnitSystem.values()) {
            Job any = new AnyRecord(seed, system).of(Job.class);
            Map<String, Object> plain = Fields.plain(any);
            byte[] text = JobPaper.bytes(JobPaper.JOB_HEAD, plain);
            Map<String, Object> back = Json.file(text, new HashMap<>());
            assertThat(back).isEqualTo(plain);
            assertThat(Fields.build(Job.class, back).value()).isEqualTo(any);
        }
    }

    @Test
    void theExampleReadsBackAsItWasAndIsAcceptedWithWhoWhenAndWhy() throws IOException {
        Job before = job.job().job().orElseThrow();
        JobSheet read = job.jobSheet();
        Rewritten.Done done = (Rewritten.Done) write(named(read, "Another name"), "renamed by the owner");

        Job after = job.job().job().orElseThrow();
        assertThat(after.name()).isEqualTo("Another name");
        assertThat(Fields.plain(after).entrySet().stream()
                        .filter(e -> !e.getKey().equals("name"))
                        .toList())
                .isEqualTo(Fields.plain(before).entrySet().stream()
                        .filter(e -> !e.getKey().equals("name"))
                        .toList());
        Revision revision = job.jobSheet().revisions().get(0);
        assertThat(revision.number()).isEqualTo(1);
        assertThat(revision.who()).isEqualTo("RK");
        assertThat(revision.when()).isEqualTo(NOON);
        assertThat(revision.why()).isEqualTo("renamed by the owner");
        assertThat(revision.job()).isEqualTo(after);
        assertThat(done.agreed().sha256()).isEqualTo(revision.agreed().sha256());
    }

    @Test
    void aFileWithCommentsIsKeptBesideAndThatIsSaid() throws IOException {
        byte[] old = Files.readAllBytes(folder.resolve("job.json"));
        assertThat(job.jobSheet().commented()).isTrue();
        Rewritten.Done done = (Rewritten.Done) write(named(job.jobSheet(), "A"), "a");
        assertThat(done.said()).isEqualTo("the file before is kept as job.json.before-1");
        assertThat(folder.resolve("job.json.before-1")).hasBinaryContent(old);
        assertThat(folder.resolve("job.json")).content().contains("comments do not survive the next edit at the desk");

        assertThat(job.jobSheet().commented()).isFalse();
        assertThat(((Rewritten.Done) write(named(job.jobSheet(), "B"), "b")).said())
                .isEmpty();
        assertThat(files()).filteredOn(f -> f.contains("before")).containsExactly("job.json.before-1");
    }

    @Test
    void aHandEditThatNobodyAcceptedIsKeptBesideToo() throws IOException {
        write(named(job.jobSheet(), "A"), "a");
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace("\"A\"", "\"by hand\""));
        Rewritten.Done done = (Rewritten.Done) write(named(job.jobSheet(), "B"), "b");
        assertThat(done.said()).isEqualTo("the file before is kept as job.json.before-2");
        assertThat(folder.resolve("job.json.before-2")).content().contains("by hand");
    }

    @Test
    void aFileThatWasChangedMeanwhileIsNotWrittenOver() throws IOException {
        JobSheet read = job.jobSheet();
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file) + "// seen by AS\n");
        byte[] byHand = Files.readAllBytes(file);

        Rewritten.Not not = (Rewritten.Not) write(named(read, "mine"), "mine");

        assertThat(not.elsewhere()).isTrue();
        assertThat(file).hasBinaryContent(byHand);
        assertThat(job.revisions()).isEmpty();
    }

    @Test
    void contactsThatWereChangedMeanwhileAreNotWrittenOver() throws IOException {
        JobSheet read = job.jobSheet();
        Files.writeString(folder.resolve("people.json"), "{\"ZZ\": {\"phone\": \"555-0199\"}}");
        assertThat(((Rewritten.Not) write(named(read, "mine"), "mine")).elsewhere())
                .isTrue();
        assertThat(folder.resolve("people.json")).content().contains("555-0199");
    }

    @Test
    void contactsAloneMakeNoRevisionAndStandInNoRecord() throws IOException {
        write(named(job.jobSheet(), "A"), "a");
        JobSheet read = job.jobSheet();
        byte[] before = Files.readAllBytes(folder.resolve("job.json"));
        Map<String, Object> contact = new LinkedHashMap<>(Map.of("initials", "RK"));
        contact.put("phone", "555-0107");
        Rewritten.Done done = (Rewritten.Done) write(with(read, read.values(), List.of(contact)), "a phone");

        assertThat(done.agreed().revision()).isEqualTo(1);
        assertThat(folder.resolve("job.json")).hasBinaryContent(before);
        assertThat(folder.resolve("people.json")).content().contains("\"RK\": {\"phone\": \"555-0107\"}");
        assertThat(folder.resolve("job.jsonl")).content().doesNotContain("555-0107");
        assertThat(job.jobSheet().contacts()).containsExactly(contact);
    }

    @Test
    void aJobThatLacksSomethingIsNotWritten() throws IOException {
        JobSheet read = job.jobSheet();
        byte[] before = Files.readAllBytes(folder.resolve("job.json"));
        Map<String, Object> values = new LinkedHashMap<>(read.values());
        values.remove("units");
        Rewritten.Not not = (Rewritten.Not) write(with(read, values, read.contacts()), "why");
        assertThat(not.said()).isEqualTo("the job has no units");
        assertThat(folder.resolve("job.json")).hasBinaryContent(before);
    }

    @Test
    void aFolderWithoutAJobGetsItsFilesWithTheFirstRevision() throws IOException {
        Path empty = Files.createDirectories(home.resolve("empty"));
        JobFolder fresh = JobFolder.at(empty);
        JobSheet read = fresh.jobSheet();
        assertThat(read.there()).isFalse();
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("id", "empty");
        values.put("name", "New road");
        values.put("zone", "America/Denver");
        values.put("units", "us");
        values.put("sheet", "practice");
        fresh.rewrite(with(read, values, List.of()), "RK", NOON, "first");

        assertThat(fresh.job().job().orElseThrow().name()).isEqualTo("New road");
        assertThat(fresh.job().job().orElseThrow().mixes()).isEmpty();
        assertThat(empty.resolve("README.txt")).exists();
        assertThat(empty.resolve("people.json")).content().doesNotContain("555");
        assertThat(fresh.revisions()).hasSize(1);
    }

    @Test
    void aFileThatIsNoJsonIsNotRevisedFromTheDesk() throws IOException {
        Files.writeString(folder.resolve("job.json"), "{\"id\": ");
        assertThat(job.jobSheet().unread()).hasSize(1);
        assertThat(job.jobSheet().unread().get(0).text()).startsWith("job.json:1");
    }

    @Test
    void aJobLongerThanALineMayBeLeavesWhatIsThere() throws IOException {
        JobSheet read = job.jobSheet();
        Map<String, Object> values = new LinkedHashMap<>(read.values());
        List<Map<String, Object>> trucks = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            trucks.add(Map.of("number", "T" + i, "tare_lb", new BigDecimal(26000)));
        }
        values.put("trucks", trucks);
        byte[] before = Files.readAllBytes(folder.resolve("job.json"));
        assertThatThrownBy(() -> write(with(read, values, read.contacts()), "many"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("longer than a line may be");
        assertThat(folder.resolve("job.json")).hasBinaryContent(before);
    }

    @Test
    void whatWasTypedIsThereAfterTheProgramEndedUntilItIsWrittenOrDropped() throws IOException {
        JobSheet read = job.jobSheet();
        assertThat(read.typed()).isEmpty();
        Map<String, Object> typed = new LinkedHashMap<>(read.values());
        typed.put("name", "half way");
        job.keepTyped(read.stamp(), typed);

        assertThat(JobFolder.at(folder).jobSheet().typed()).isEqualTo(typed);
        write(named(read, "half way"), "done");
        assertThat(files()).doesNotContain("job.json.draft");
        job.keepTyped(job.jobSheet().stamp(), typed);
        job.dropTyped();
        assertThat(job.jobSheet().typed()).isEmpty();
    }

    @Test
    void whatWasTypedOfOtherFilesIsNotTakenUp() throws IOException {
        JobSheet read = job.jobSheet();
        job.keepTyped(read.stamp(), Map.of("name", "half way"));
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file) + "// seen by AS\n");
        assertThat(job.jobSheet().typed()).isEmpty();
        assertThat(folder.resolve("job.json.draft")).content().contains("half way");
    }

    @Test
    void shortThingsStandInOneLineAndLongOnesInSeveral() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("id", "road");
        values.put("place", Map.of("name", "Harrow Bend"));
        values.put("pavers", List.of());
        values.put("notes", List.of("x".repeat(60), "y".repeat(60)));
        assertThat(new String(JobPaper.bytes("// head\n", values), java.nio.charset.StandardCharsets.UTF_8))
                .isEqualTo("""
                        // head
                        {
                          "id": "road",
                          "place": {"name": "Harrow Bend"},
                          "pavers": [],
                          "notes": [
                            "%s",
                            "%s"
                          ]
                        }
                        """.formatted("x".repeat(60), "y".repeat(60)));
    }

    @Test
    void aSlashInsideAValueIsNoComment() {
        assertThat(JobPaper.commented(
                        "{\"a\": \"km/h \\\" // not\"}".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .isFalse();
        assertThat(JobPaper.commented("{\"a\": 1 /* b */}".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .isTrue();
    }
}
