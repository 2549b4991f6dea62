package screedbook.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import screedbook.check.Finding;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** What is remembered of a demo shift from the day on which it was added: its bytes, totals and findings. */
final class Remembered {
    private Remembered() {}

    /**
     * One thing that is remembered.
     *
     * @param what file, seal, figure or finding
     * @param name of the file, book or figure; of a finding its rule and the entry that carries it
     * @param value SHA-256 of the file's bytes, hash of the seal, the figure's value, or the finding's sort and answers
     */
    record Row(String job, String shift, String what, String name, String value) {}

    static List<Row> rows(Path job, ShiftId shift) throws IOException {
        ShiftFile file = Shelf.at(job).shift(shift);
        List<Row> rows = new ArrayList<>();
        String name = job.getFileName().toString();
        for (Path each : files(job, shift)) {
            String path = job.relativize(each).toString();
            rows.add(new Row(name, shift.toString(), "file", path, sha256(each)));
        }
        for (Seal seal : file.seals()) {
            rows.add(new Row(name, shift.toString(), "seal", seal.book(), seal.sha256()));
        }
        for (Section section : file.totals().sections()) {
            for (Figure figure : section.figures()) {
                if (figure.value() != null) {
                    rows.add(new Row(name, shift.toString(), "figure", figure.id(), value(figure)));
                }
            }
        }
        for (Finding finding : file.findings()) {
            String of = finding.of().isEmpty() ? "shift" : finding.of().get(0).toString();
            String value =
                    finding.sort().text() + ", answers " + finding.answers().size();
            rows.add(new Row(name, shift.toString(), "finding", finding.rule() + " " + of, value));
        }
        return rows;
    }

    /** A figure to six decimals, with its unit. */
    private static String value(Figure figure) {
        String digits = figure.value()
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return (digits + " " + figure.unit()).strip();
    }

    /** Every file of the folder that bears the shift's name, in order. */
    static List<Path> files(Path job, ShiftId shift) throws IOException {
        try (Stream<Path> all = Files.walk(job)) {
            return all.filter(Files::isRegularFile)
                    .filter(f -> f.getFileName().toString().startsWith(shift + "."))
                    .sorted()
                    .toList();
        }
    }

    private static String sha256(Path file) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The rows as lines of {@code expected.csv}. */
    static String csv(List<Row> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter out = new CSVPrinter(
                text, CSVFormat.RFC4180.builder().setRecordSeparator("\n").get())) {
            for (Row row : rows) {
                out.printRecord(row.job(), row.shift(), row.what(), row.name(), row.value());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory can be written", e);
        }
        return text.toString();
    }
}
