package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Damage;
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

    @Test
    void findingsFitTheirSchema() throws IOException {
        Schema schema = Schema.shipped("findings.json");
        assertThat(schema.wrongs(FindingsJson.text(Sample.paper()))).isEmpty();
        assertThat(schema.wrongs(FindingsJson.text(Sample.paper(Sample.empty(), Jobs.us()))))
                .isEmpty();
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
