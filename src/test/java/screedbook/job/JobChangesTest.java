package screedbook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import screedbook.entry.Fields;

/** What differs between two jobs. */
class JobChangesTest {
    private static Map<String, Object> mix(String name, int target) {
        Map<String, Object> mix = new LinkedHashMap<>();
        mix.put("name", name);
        mix.put("target_plant_degF", BigDecimal.valueOf(target));
        return mix;
    }

    private static Map<String, Object> pull(String name, int lift, int right) {
        Map<String, Object> pull = new LinkedHashMap<>();
        pull.put("name", name);
        pull.put("lift", BigDecimal.valueOf(lift));
        pull.put("left_ft", BigDecimal.ZERO);
        pull.put("right_ft", BigDecimal.valueOf(right));
        return pull;
    }

    private static Job job(String key, Object value) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("id", "road", "units", "us", "sheet", "practice"));
        values.put(key, value);
        return Fields.build(Job.class, values).value().settled();
    }

    private static List<String> between(Job before, Job after) {
        return JobChanges.between(before, after).stream()
                .map(JobChanges.Change::text)
                .toList();
    }

    @Test
    void theSameJobHasNoChanges() {
        Job job = job("mixes", List.of(mix("12.5-70A", 300)));
        assertThat(between(job, job)).isEmpty();
    }

    @Test
    void aNumberIsToldByTheNameOfItsMixWhereverItStandsInTheList() {
        Job before = job("mixes", List.of(mix("19-64", 295), mix("12.5-70A", 300)));
        Job after = job("mixes", List.of(mix("4.75", 290), mix("19-64", 295), mix("12.5-70A", 305)));
        assertThat(between(before, after))
                .containsExactly(
                        "mixes[12.5-70A].target_plant_degF  300 -> 305",
                        "mixes[4.75]  new: name 4.75, target_plant_degF 290");
    }

    @Test
    void whatIsTakenOutIsToldWhole() {
        Job before = job("mixes", List.of(mix("19-64", 295)));
        assertThat(between(before, job("mixes", List.of())))
                .containsExactly("mixes[19-64]  taken out: name 19-64, target_plant_degF 295");
    }

    @Test
    void pullsOfOneNameAreToldApartByTheirLift() {
        Job before = job("pulls", List.of(pull("A", 1, 12), pull("A", 2, 12)));
        Job after = job("pulls", List.of(pull("A", 1, 12), pull("A", 2, 13)));
        assertThat(between(before, after)).containsExactly("pulls[A lift 2].right_ft  12 -> 13");
    }

    @Test
    void anotherOrderIsToldAsSuch() {
        List<Map<String, Object>> mixes = List.of(mix("a", 1), mix("b", 2), mix("c", 3));
        List<Map<String, Object>> others = new ArrayList<>(mixes);
        others.add(0, others.remove(2));
        assertThat(between(job("mixes", mixes), job("mixes", others)))
                .containsExactly("mixes in order  a, b, c -> c, a, b");
    }

    @Test
    void aValueWrittenWithAnotherZeroIsTold() {
        Job before = job("place", Map.of("latitude", new BigDecimal("39.2")));
        Job after = job("place", Map.of("latitude", new BigDecimal("39.20")));
        assertThat(between(before, after)).containsExactly("place.latitude  39.2 -> 39.20");
    }

    @Test
    void wordsAndListsOfWordsAreTold() {
        assertThat(between(job("pavers", List.of("P1")), job("pavers", List.of("P1", "P2"))))
                .containsExactly("pavers  P1 -> P1; P2");
        assertThat(between(job("owner", "County"), job("owner", "State"))).containsExactly("owner  County -> State");
        assertThat(between(job("night", Map.of("begins", "20:00")), job("owner", null)))
                .containsExactly("night  taken out: begins 20:00");
    }
}
