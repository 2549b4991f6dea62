package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.diary.JobFolder;

/** The pre-paving sheet as it is printed; {@code mvn test -Dtest=PlanCommandTest -Dgoldens=keep} writes its golden anew. */
class PlanCommandTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "golden", "plan");

    @TempDir
    Path folder;

    @BeforeEach
    void anInventedRoadOfFourLanes() throws IOException {
        Files.copy(GOLDEN.resolve("job.json"), folder.resolve("job.json"));
        Files.writeString(
                folder.resolve("people.json"), "{\"RK\": {\"phone\": \"555 0101\", \"address\": \"\"}, \"XX\": {}}");
    }

    private void change(String from, String to) throws IOException {
        Path file = folder.resolve("job.json");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void anImpossiblePlanIsToldWholeAsSomebodyLastReadIt() throws IOException {
        Said said = Said.by("plan", folder);

        if ("keep".equals(System.getProperty("goldens"))) {
            Files.writeString(GOLDEN.resolve("impossible.txt"), said.out());
        }
        assertThat(said.err()).isEmpty();
        assertThat(said.exit()).isZero();
        assertThat(said.out()).isEqualTo(Files.readString(GOLDEN.resolve("impossible.txt")));
    }

    @Test
    void noLineIsWiderThanThePaper() {
        assertThat(Said.by("plan", folder).out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    }

    @Test
    void aMendedPlanHasNothingThatCannotWork() throws IOException {
        change("\"thickness_in\": 2.25", "\"thickness_in\": 2.5");
        change("\"right_ft\": 15", "\"right_ft\": 12");
        change("\"left_ft\": 15", "\"left_ft\": 12");
        change("\"right_ft\": -12}", "\"right_ft\": -11.5}");
        change("\"left_ft\": -12, \"right_ft\": 0.25", "\"left_ft\": -11.5, \"right_ft\": 0.5");
        change("\"left_ft\": 0.25, \"right_ft\": 12", "\"left_ft\": 0.5, \"right_ft\": 12.5");
        change("\"lift\": 1, \"left_ft\": 12,", "\"lift\": 1, \"left_ft\": 12.5,");
        change(
                "\"name\": \"A\", \"lift\": 2, \"left_ft\": -24, \"right_ft\": -11.5",
                "\"name\": \"A\", \"lift\": 2, \"left_ft\": -24, \"right_ft\": -12");
        change("\"target_plant_degF\": 305", "\"target_plant_degF\": 300");
        change("\"loss_dF\": 18", "\"loss_dF\": 5");
        change("\"loss_dF\": 12", "\"loss_dF\": 4");
        change("\"binder\": \"76-22\"", "\"binder\": \"70-22\"");

        assertThat(Said.by("plan", folder).out()).contains("What cannot work as planned: nothing found");
    }

    @Test
    void aPhoneOfSomebodyWhoIsNotOnTheJobIsNotPrinted() throws IOException {
        Files.writeString(folder.resolve("people.json"), "{\"XX\": {\"phone\": \"555 0199\"}}");

        assertThat(Said.by("plan", folder).out()).doesNotContain("0199");
    }

    @Test
    void peopleThatCannotBeReadLeaveTheRestAsItIs() throws IOException {
        Files.writeString(folder.resolve("people.json"), "no JSON");

        assertThat(Said.by("plan", folder).exit()).isZero();
        assertThat(Said.by("plan", folder).out()).contains("RK R. Keeler, inspector");
    }

    @Test
    void theSheetSaysWhichRevisionItIsOf() throws IOException {
        assertThat(Said.by("plan", folder).out()).contains("job not accepted yet");

        JobFolder.at(folder).accept("RK", OffsetDateTime.parse("2026-06-05T06:00:00-07:00"), null);
        assertThat(Said.by("plan", folder).out()).contains("job revision 1 ");

        change("\"loss_dF\": 18", "\"loss_dF\": 17");
        assertThat(Said.by("plan", folder).out()).contains("job changed since revision 1");
    }

    @Test
    void aJobThatCannotBeReadPrintsNoSheet() throws IOException {
        change("\"plant\": \"Quarry\", \"season\": \"summer\"", "\"plant\": \"Quary\", \"season\": \"summer\"");

        Said said = Said.by("plan", folder);

        assertThat(said.exit()).isEqualTo(Exit.DISK);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("no plant is named Quary").contains("job.json cannot be used as it is");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"loss_dF\": 18; \"loss_dF\": -1; the loss of heat is -1",
                "\"to\": \"2026-06-23\"; \"to\": \"2026-06-20\"; to 2026-06-20 is before 2026-06-21",
                "\"pull\": \"B\", \"lift\": 2, \"from_sta\"; \"pull\": \"E\", \"lift\": 2, \"from_sta\"; lift 2 has no pull E",
                "\"season\": \"autumn\"; \"mix\": \"19-65\"; no mix is named 19-65",
                "\"gradation\": \"fine\"; \"gradation\": \"medium\"; one of fine, coarse"
            })
    void whatThePlanCannotMeanIsToldWithItsLine(String from, String to, String said) throws IOException {
        change(from, to);

        assertThat(Said.by("plan", folder).err()).contains("job.json:").contains(said);
    }

    @Test
    void aSheetThatIsNotThereIsNamed() throws IOException {
        change("\"sheet\": \"practice\"", "\"sheet\": \"town\"");

        assertThat(Said.by("plan", folder).exit()).isEqualTo(Exit.DISK);
        assertThat(Said.by("plan", folder).err()).contains("there is no limit sheet town");
    }

    @Test
    void aJobThatSettlesNothingGivesASheetOfOpenQuestions() throws IOException {
        Files.writeString(
                folder.resolve("job.json"),
                "{\"id\": \"m\", \"name\": \"M\", \"zone\": \"America/Edmonton\", \"units\": \"metric\","
                        + " \"sheet\": \"practice\"}");

        Said said = Said.by("plan", folder);

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("What cannot work as planned: nothing found")
                .contains("Lifts: none are settled")
                .contains("Planned days: none are settled")
                .contains("the job does not settle work, the planned days");
    }
}
