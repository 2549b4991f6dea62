package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.entry.ShiftId;
import screedbook.job.Job;

/** What is looked at before a folder is read is what the reading then says. */
class FirstLookTest {
    private static final Path DEMO = Path.of("demo-logs", "harrow-bend");

    @TempDir
    Path temporary;

    private static Optional<Job> head(String text) {
        return FirstLook.head(text.getBytes(UTF_8));
    }

    @Test
    void theHeadOfTheDemoJobIsWhatTheWholeReadingSays() {
        FirstLook look = JobFolder.at(DEMO).firstLook().orElseThrow();
        Job job = JobFolder.at(DEMO).job().job().orElseThrow();

        assertThat(look.job().name()).isEqualTo(job.name());
        assertThat(look.job().contract()).isEqualTo(job.contract());
        assertThat(look.job().place().name()).isEqualTo(job.place().name());
        assertThat(look.job().zone()).isEqualTo(job.zone());
        assertThat(look.job().sheet()).isEqualTo(job.sheet());
        assertThat(look.job().people()).isNotEmpty().isEqualTo(job.people());
    }

    @Test
    void theShiftsOfTheDemoJobAreListedAsWhenTheirLinesAreRead() {
        FirstLook look = JobFolder.at(DEMO).firstLook().orElseThrow();
        var whole = JobFolder.at(DEMO).glances();

        assertThat(look.shifts().keySet()).isNotEmpty().containsExactlyElementsOf(whole.keySet());
        for (ShiftId shift : whole.keySet()) {
            assertThat(look.shifts().get(shift).opening())
                    .isPresent()
                    .isEqualTo(whole.get(shift).opening());
            assertThat(look.shifts().get(shift).closed())
                    .isEqualTo(whole.get(shift).closed());
            assertThat(look.shifts().get(shift).lines())
                    .isEqualTo(whole.get(shift).lines());
        }
    }

    @Test
    void whatIsNotOnTheFirstScreenIsPassedOverHoweverWrongItIs() {
        Optional<Job> job = head("""
                // as typed
                {"mixes": [{"name": 12, "nothing": {"deep": []}}], "name": "Mill Road", "zone": "America/Denver",
                 "sheet": "practice", "contract": 7, "place": null,
                 "people": [{"initials": "AB"}, {"name": "nobody"}, "text"]}""");

        assertThat(job).isPresent();
        assertThat(job.get().contract()).isNull();
        assertThat(job.get().place()).isNull();
        assertThat(job.get().people()).extracting(p -> p.initials()).containsExactly("AB");
    }

    @Test
    void aHeadThatIsNotAsItShouldBeIsLeftToTheWholeReading() throws IOException {
        assertThat(head("{\"name\": \"Mill Road\", \"zone\": \"America/Denver\"}"))
                .isEmpty();
        assertThat(head("{\"name\": \"Mill Road\", \"zone\": \"Nowhere/At all\", \"sheet\": \"practice\"}"))
                .isEmpty();
        assertThat(head("{\"name\": 1, \"zone\": \"America/Denver\", \"sheet\": \"practice\"}"))
                .isEmpty();
        assertThat(head("{\"name\": \"Mill Road\", \"zone\": \"America/Denver\", \"sheet\": \"practice\""))
                .isEmpty();
        assertThat(head("{\"name\": \"a\", \"name\": \"b\", \"zone\": \"America/Denver\", \"sheet\": \"practice\"}"))
                .isEmpty();
        assertThat(JobFolder.at(temporary).firstLook()).isEmpty();
        Files.createDirectory(temporary.resolve("job.json"));
        assertThat(JobFolder.at(temporary).firstLook()).isEmpty();
    }
}
