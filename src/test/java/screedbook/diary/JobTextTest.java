package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.job.Job;
import screedbook.job.Mix;

class JobTextTest {
    private static final String SMALL = """
            // a small job
            {
              "id": "harrow-bend",
              "name": "Harrow Bend overlay",
              "zone": "America/Denver",
              "units": "us", /* or metric */
              "sheet": "practice",
              "mixes": [
                {"name": "12.5-70A"}
              ],
              "lifts": [
                {"number": 2, "layer": "riding-surface", "thickness_in": 2.50, "mix": "12.5-70A"}
              ],
              "pulls": [
                {"name": "B", "lift": 2, "left_ft": 0, "right_ft": 12.0}
              ]
            }
            """;

    @Test
    void theExampleOfANewJobIsWithoutTrouble() throws IOException {
        byte[] example;
        try (var in = JobTextTest.class.getResourceAsStream("/job/job.json")) {
            example = in.readAllBytes();
        }
        JobRead read = JobText.read("job.json", example).read();
        assertThat(read.troubles()).isEmpty();
        Job job = read.job().orElseThrow();
        assertThat(job.mixes()).extracting(Mix::name).containsExactly("19-64", "12.5-70A");
        assertThat(job.distributors().get(0).strapping()).hasSize(4);
        assertThat(job.checks().grossAndTare()).isNotNull();
    }

    @Test
    void commentsAMarkAndDigitsAsWrittenAreTaken() {
        for (String text : List.of(SMALL, "\uFEFF" + SMALL, SMALL.replace("\n", "\r\n"))) {
            JobRead read = read(text);
            assertThat(read.troubles()).isEmpty();
            assertThat(read.job().orElseThrow().lifts().get(0).thickness().value())
                    .isEqualTo(new BigDecimal("2.50"));
        }
    }

    @Test
    void everyTroubleIsToldWithItsLine() {
        String text = SMALL.replace("\"zone\": \"America/Denver\",\n", "")
                .replace("\"us\"", "\"imperial\"")
                .replace("riding-surface", "top")
                .replace("\"name\": \"12.5-70A\"", "\"nmas\": 12.5")
                .replace("\"left_ft\": 0", "\"left_ft\": \"zero\"");
        assertThat(read(text).troubles().stream().map(Trouble::text)).containsExactly("""
                job.json:2: the job has no zone
                    {
                    right would be: zone""", """
                job.json:5: units is "imperial"
                    "units": "imperial", /* or metric */
                    right would be: one of us, metric""", """
                job.json:8: there is no mixes[0].nmas
                    {"nmas": 12.5}
                    right would be: nmas_mm""", """
                job.json:8: mixes[0] has no name
                    {"nmas": 12.5}
                    right would be: name""", """
                job.json:11: lifts[0].layer is "top"
                    {"number": 2, "layer": "top", "thickness_in": 2.50, "mix": "12.5-70A"}
                    right would be: one of riding-surface, below-riding-surface""", """
                job.json:14: pulls[0].left_ft is zero
                    {"name": "B", "lift": 2, "left_ft": "zero", "right_ft": 12.0}
                    right would be: a number""");
        assertThat(read(text).job()).isEmpty();
    }

    @Test
    void whatDoesNotFitTogetherIsTold() {
        assertThat(said(SMALL.replace("\"mix\": \"12.5-70A\"", "\"mix\": \"9.5\"")))
                .containsExactly("12: no mix is named 9.5, one of 12.5-70A");
        assertThat(said(SMALL.replace("\"lift\": 2", "\"lift\": 3")))
                .containsExactly("15: no lift has number 3, the number of one under lifts");
        assertThat(said(SMALL.replace("\"right_ft\": 12.0", "\"right_ft\": -12.0")))
                .containsExactly("15: pull B is -12.0 ft wide, right greater than left");
        assertThat(said(SMALL.replace(
                        "{\"name\": \"12.5-70A\"}", "{\"name\": \"12.5-70A\"}, {\"name\": \"12.5-70A\"}")))
                .containsExactly("9: mixes has 12.5-70A twice, another name");
        assertThat(said(SMALL.replace("\"us\"", "\"metric\"")))
                .containsExactly(
                        "12: lifts[0].thickness_in is not of the job's units, thickness_mm",
                        "15: pulls[0].left_ft is not of the job's units, left_m",
                        "15: pulls[0].right_ft is not of the job's units, right_m");
        assertThat(said(SMALL.replace("\"harrow-bend\"", "\"Harrow Bend\"")))
                .containsExactly("3: id is \"Harrow Bend\", lower case letters, digits and dashes, at most 32");
    }

    @Test
    void whatIsNoJsonIsToldWithItsLine() {
        List<Trouble> troubles =
                read(SMALL.replace("\"practice\",", "\"practice\"")).troubles();
        assertThat(troubles).hasSize(1);
        assertThat(troubles.get(0).line()).isEqualTo(8);
        assertThat(troubles.get(0).excerpt()).contains("\"mixes\"");
        assertThat(read("").troubles()).hasSize(1);
        assertThat(read("[]").troubles()).hasSize(1);
        assertThat(read("{\"id\":1e9}").troubles()).hasSize(1);
        assertThat(said(SMALL.replace("\"name\": \"B\"", "\"name\": \"B\", \"name\": \"C\"")))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("15: ")
                .contains("Duplicate");
    }

    @Test
    void aTextThatWouldDriveTheTerminalIsShown() {
        List<Trouble> troubles = read(SMALL.replace("\"us\"", "\"\u009b31m\"")).troubles();
        assertThat(troubles.get(0).text()).contains("<U+009B>").doesNotContain("\u009b");
    }

    private static JobRead read(String text) {
        return JobText.read("job.json", text.getBytes(UTF_8)).read();
    }

    private static List<String> said(String text) {
        return read(text).troubles().stream()
                .map(trouble -> trouble.line() + ": " + trouble.said()
                        + (trouble.right().isEmpty() ? "" : ", ") + trouble.right())
                .toList();
    }
}
