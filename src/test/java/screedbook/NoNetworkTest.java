package screedbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No class of the program names anything that could open a network connection. */
class NoNetworkTest {
    /** Names of places; nothing is opened by them here. */
    private static final Set<String> HARMLESS =
            Set.of("java.net.URI", "java.net.URL", "java.net.URISyntaxException", "java.net.MalformedURLException");

    private static List<String> doors(Path classes) throws IOException {
        return RoomsTest.arrows(classes).stream()
                .filter(arrow -> opens(arrow.to()))
                .map(arrow -> arrow.from() + " names " + arrow.to())
                .toList();
    }

    private static boolean opens(String type) {
        boolean socket = type.matches("java\\.nio\\.channels\\..*(Socket|Datagram|Network|Multicast).*");
        boolean net = type.matches("(java|javax)\\.net\\..*|java\\.rmi\\..*|com\\.sun\\.net\\..*");
        boolean terminal = type.matches("com\\.googlecode\\.lanterna\\..*Telnet.*|.*\\.DefaultTerminalFactory");
        return (socket || net || terminal) && !HARMLESS.contains(type);
    }

    @Test
    void theProgramNamesNoDoorToANetwork() throws IOException {
        assertThat(RoomsTest.arrows(Path.of("target", "classes"))).hasSizeGreaterThan(1000);
        assertThat(doors(Path.of("target", "classes"))).isEmpty();
    }

    @Test
    void aDoorWouldBeSeen(@TempDir Path folder) throws IOException {
        Path classes = RoomsTest.compiled(
                folder,
                "package screedbook.term; class Call { java.net.Socket line; }",
                "package screedbook.desk; class Radio { java.nio.channels.DatagramChannel line; }");

        assertThat(doors(classes))
                .containsExactlyInAnyOrder(
                        "screedbook.term.Call names java.net.Socket",
                        "screedbook.desk.Radio names java.nio.channels.DatagramChannel");
    }
}
