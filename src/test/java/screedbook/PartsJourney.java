package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import screedbook.report.Schema;

/** The list of parts that goes with the packed program, held against the list of licences that is in it. */
@Tag("parts")
class PartsJourney {
    @Test
    void theListOfPartsNamesEveryLibraryWithVersionHashAndLicence() throws IOException {
        Map<?, ?> bom = (Map<?, ?>) Schema.parse(Files.readString(Path.of("target/screedbook.cdx.json")));
        List<?> parts = (List<?>) bom.get("components");
        List<String> listed = Files.readAllLines(Path.of("src/main/resources/META-INF/licenses/libraries.csv")).stream()
                .skip(1)
                .map(line -> line.split(","))
                .map(cells -> cells[0] + ":" + cells[1])
                .toList();

        assertThat(bom.get("bomFormat")).isEqualTo("CycloneDX");
        assertThat(parts)
                .extracting(part -> {
                    Map<?, ?> p = (Map<?, ?>) part;
                    return p.get("group") + ":" + p.get("name") + ":" + p.get("version");
                })
                .containsExactlyInAnyOrderElementsOf(listed);
        for (Object part : parts) {
            assertThat(((List<?>) ((Map<?, ?>) part).get("hashes")))
                    .as("" + part)
                    .isNotEmpty();
            assertThat(((List<?>) ((Map<?, ?>) part).get("licenses")))
                    .as("" + part)
                    .isNotEmpty();
        }
    }
}
