package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.check.InCase;
import screedbook.entry.Damage;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.Jobs;

class JsonFormsTest {
    @Test
    void aShiftFitsItsSchema() throws IOException {
        Schema schema = Schema.shipped("day.json");
        assertThat(schema.wrongs(DayJson.text(Sample.paper()))).isEmpty();
        assertThat(schema.wrongs(DayJson.text(Sample.paper(Sample.metric(), Jobs.metric()))))
                .isEmpty();
        assertThat(schema.wrongs(DayJson.text(Sample.paper(Sample.empty(), Jobs.us()))))
                .isEmpty();
    }

    @Test
    void filesThatAreNotAsTheyWereWrittenFitTheSchemaToo() throws IOException {
        DayPaper p = Sample.paper();
        List<Damage> damages = List.of(new Damage("a.jsonl", 7, "changed"), new Damage("b.jsonl", 0, "gone"));
        DayPaper paper = new DayPaper(
                p.day(), p.totals(), p.findings(), p.agreed(), p.sheet(), p.seals(), damages, p.revision());
        String json = DayJson.text(paper);
        assertThat(Schema.shipped("day.json").wrongs(json)).isEmpty();
        List<?> told = (List<?>) ((Map<?, ?>) Schema.parse(json)).get("damages");
        assertThat(told).hasSize(2);
        assertThat(((Map<?, ?>) told.get(0)).get("line")).isEqualTo(BigDecimal.valueOf(7));
        assertThat(((Map<?, ?>) told.get(1)).get("file")).isEqualTo("b.jsonl");
    }

    /** Tack from 12+00 to 17+00 for pull A; pull B is laid without. */
    @Test
    void theRoadIsThereWithItsStretchesAndEntries() throws IOException {
        Map<?, ?> day = (Map<?, ?>) Schema.parse(DayJson.text(Sample.paper()));
        List<?> road = (List<?>) day.get("road");
        Map<?, ?> a = (Map<?, ?>) road.get(0);
        Map<?, ?> b = (Map<?, ?>) road.get(1);

        assertThat(a.get("pull")).isEqualTo("A");
        assertThat(((Map<?, ?>) ((List<?>) a.get("tacked")).get(0)).get("to_sta"))
                .isEqualTo("17+00");
        assertThat((List<?>) a.get("paved_without_tack")).isEmpty();
        assertThat((List<?>) b.get("tacked")).isEmpty();
        assertThat(((Map<?, ?>) ((List<?>) b.get("paved_without_tack")).get(0)).get("length_ft"))
                .isEqualTo(new BigDecimal("40"));
    }

    @Test
    void findingsFitTheirSchema() throws IOException {
        Schema schema = Schema.shipped("findings.json");
        assertThat(schema.wrongs(FindingsJson.text(Sample.paper()))).isEmpty();
        assertThat(schema.wrongs(FindingsJson.text(Sample.paper(Sample.empty(), Jobs.us()))))
                .isEmpty();
    }

    @Test
    void limitsFitTheirSchemaWhateverTheSheet() throws IOException {
        Schema schema = Schema.shipped("limits.json");
        for (String name : SpecSheet.shippedNames()) {
            SpecSheet sheet = SpecSheet.shipped(name).orElseThrow();
            for (Job job : List.of(Jobs.us(), Jobs.metric())) {
                List<InCase> cases = InCase.of(job, sheet, null, null, null);
                assertThat(cases).isNotEmpty();
                assertThat(schema.wrongs(LimitsJson.text(job, sheet, cases)))
                        .as(name)
                        .isEmpty();
                List<InCase> hour = InCase.of(job, sheet, null, null, LocalDateTime.of(2026, 6, 3, 10, 0));
                assertThat(schema.wrongs(LimitsJson.text(job, sheet, hour)))
                        .as(name)
                        .isEmpty();
                assertThat(LimitsPage.text(job, sheet, hour).lines())
                        .allMatch(line -> line.codePointCount(0, line.length()) <= 80);
            }
        }
        String json = LimitsJson.text(
                Jobs.us(),
                SpecSheet.shipped("practice").orElseThrow(),
                InCase.of(Jobs.us(), SpecSheet.shipped("practice").orElseThrow(), null, null, null));
        assertThat(schema.wrongs(json.replace("\"sure\" : true", "\"sure\" : \"yes\"")))
                .isNotEmpty();
    }

    @Test
    void whatDoesNotFitIsSeen() throws IOException {
        String json = DayJson.text(Sample.paper());
        Schema schema = Schema.shipped("day.json");
        assertThat(schema.wrongs(json.replace("\"placed_ston\"", "\"placed\""))).isNotEmpty();
        assertThat(schema.wrongs(json.replace("\"closed\" : true", "\"closed\" : \"yes\"")))
                .isNotEmpty();
        assertThat(schema.wrongs(json.replace("\"form\"", "\"from\""))).isNotEmpty();
    }

    @Test
    void everyFigureOfThePageIsThereWithItsValue() throws IOException {
        DayPaper paper = Sample.paper();
        Map<?, ?> day = (Map<?, ?>) Schema.parse(DayJson.text(paper));
        List<?> sections = (List<?>) day.get("sections");
        for (int s = 0; s < sections.size(); s++) {
            List<?> figures = (List<?>) ((Map<?, ?>) sections.get(s)).get("figures");
            List<Figure> own = paper.totals().sections().get(s).figures();
            assertThat(figures).hasSameSizeAs(own);
            for (int f = 0; f < own.size(); f++) {
                Map<?, ?> told = (Map<?, ?>) figures.get(f);
                Figure figure = own.get(f);
                String key = figure.unit().isEmpty() ? "value" : "value_" + figure.unit();
                assertThat(told.get("figure")).isEqualTo(figure.id());
                assertThat(told.get(key)).isEqualTo(figure.value());
            }
        }
    }
}
