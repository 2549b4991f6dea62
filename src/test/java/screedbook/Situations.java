package screedbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The hundred awkward situations of a shift in {@code situations.csv}: what the program does and what holds it to that. */
public final class Situations {
    private static final CSVFormat TABLE =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private Situations() {}

    /**
     * One of them.
     *
     * @param held tests as {@code TestClass#method}, and ids of rules
     * @param later why it is not held, or not wholly held, yet; empty where it is
     */
    public record Row(int number, String situation, String does, List<String> held, String later) {
        /** The tests among what holds it. */
        public List<String> tests() {
            return held.stream().filter(h -> h.contains("#")).toList();
        }

        /** The rules among what holds it. */
        public List<String> rules() {
            return held.stream().filter(h -> !h.contains("#")).toList();
        }

        @Override
        public String toString() {
            return number + " " + situation;
        }
    }

    /** All rows in the order of the file. */
    public static List<Row> rows() {
        try (InputStream file = Situations.class.getResourceAsStream("/situations.csv")) {
            return TABLE.parse(new InputStreamReader(file, StandardCharsets.UTF_8)).getRecords().stream()
                    .map(Situations::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(CSVRecord line) {
        List<String> held =
                Stream.of(line.get("held").split(" ")).filter(h -> !h.isEmpty()).toList();
        return new Row(
                Integer.parseInt(line.get("number")), line.get("situation"), line.get("does"), held, line.get("later"));
    }
}
