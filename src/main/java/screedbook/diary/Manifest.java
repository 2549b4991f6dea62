package screedbook.diary;

import java.io.IOException;
import java.io.Reader;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** The list of an archived job's files, as a table and for {@code sha256sum -c}. */
final class Manifest {
    static final String NAME = "manifest.csv";
    static final String SUMS = "SHA256SUMS";

    private static final String[] HEADS = {
        "file", "bytes", "sha256", "shift", "book", "lines", "seal", "compact_file", "compact_offset", "keep"
    };

    /**
     * One file.
     *
     * @param file its path in the folder of the job
     * @param shift empty where it is no diary
     * @param seal SHA-256 of the closing line; empty where the file does not end with one
     */
    record Row(
            String file,
            String sha256,
            long bytes,
            String shift,
            String book,
            int lines,
            String seal,
            Compact.Place compact) {}

    private Manifest() {}

    /**
     * The rows of a manifest.
     *
     * @throws IllegalArgumentException when it has other columns
     */
    static List<CSVRecord> read(Path folder) throws IOException {
        try (Reader in = Files.newBufferedReader(folder.resolve(NAME), StandardCharsets.UTF_8)) {
            CSVParser rows = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in);
            if (!rows.getHeaderNames().equals(List.of(HEADS))) {
                throw new IllegalArgumentException("its columns are " + rows.getHeaderNames());
            }
            return rows.getRecords();
        }
    }

    static void write(Path folder, List<Row> rows, String keep) throws IOException {
        StringBuilder table = new StringBuilder();
        StringBuilder sums = new StringBuilder();
        try (CSVPrinter out = new CSVPrinter(
                table, CSVFormat.RFC4180.builder().setHeader(HEADS).get())) {
            for (Row row : rows) {
                boolean diary = !row.shift().isEmpty();
                out.printRecord(
                        row.file(),
                        row.bytes(),
                        row.sha256(),
                        row.shift(),
                        row.book(),
                        diary ? row.lines() : "",
                        row.seal(),
                        row.compact().file(),
                        row.compact().offset() < 0 ? "" : row.compact().offset(),
                        keep);
                sums.append(row.sha256()).append("  ").append(row.file()).append('\n');
            }
        }
        Folder.replace(folder.resolve(NAME), Archive.bytes(table.toString()), FileChannel::open);
        Folder.replace(folder.resolve(SUMS), Archive.bytes(sums.toString()), FileChannel::open);
    }
}
