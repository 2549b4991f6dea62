package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What a build takes from elsewhere: each by one version, so that it takes the same for ever. */
class PinnedTest {
    @Test
    void everyLibraryAndEveryPluginHasOneVersion() throws Exception {
        Document pom = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile());
        List<String> open = new ArrayList<>();
        int seen = 0;
        for (String sort : List.of("dependency", "plugin")) {
            NodeList all = pom.getElementsByTagName(sort);
            for (int i = 0; i < all.getLength(); i++) {
                Element each = (Element) all.item(i);
                NodeList version = each.getElementsByTagName("version");
                String text = version.getLength() == 0 ? "" : version.item(0).getTextContent();
                seen++;
                if (!text.matches("[0-9][0-9A-Za-z.-]*") || text.endsWith("SNAPSHOT")) {
                    open.add(each.getElementsByTagName("artifactId").item(0).getTextContent() + " " + text);
                }
            }
        }
        assertThat(seen).isGreaterThan(15);
        assertThat(open).isEmpty();
    }
}
