package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
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
