package screedbook.diary;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantRows;

/** A plant's own list of loads as it came: a file of comma-separated values. */
public final class ListFile {
    private static final long LARGEST = 2L * 1024 * 1024;

    private final String name;
    private final byte[] bytes;

    private ListFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /** @throws IOException when it cannot be read, or is larger than 2 MiB, which no list of loads is */
    public static ListFile read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new FileSystemException(
                    file.toString(), null, Files.exists(file) ? "it is no file" : "it is not there");
        }
        if (Files.size(file) > LARGEST) {
            throw new FileSystemException(file.toString(), null, "it is larger than 2 MiB");
        }
        return of(file.getFileName().toString(), Files.readAllBytes(file));
    }

    public static ListFile of(String name, byte[] bytes) {
        return new ListFile(name, bytes.clone());
    }

    public String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    public String sha256() {
        return Chain.hash(bytes);
    }

    /** The names of its columns. */
    public List<String> heading(ListColumns columns) {
        return ListTable.of(name, bytes, columns).heading();
    }

    /** The cells of its first rows, at most so many. */
    public List<List<String>> first(ListColumns columns, int most) {
        return ListTable.of(name, bytes, columns).rows().stream()
                .limit(most)
                .map(ListTable.Row::cells)
                .toList();
    }

    /** The columns that are named and not in its heading; with none it can be read. */
    public List<String> missing(ListColumns columns) {
        List<String> heading = heading(columns);
        return Stream.of(
                        columns.numberColumn(),
                        columns.truckColumn(),
                        columns.netColumn(),
                        columns.loadedColumn(),
                        columns.dateColumn(),
                        columns.mixColumn())
                .filter(named -> named != null && !heading.contains(named))
                .toList();
    }

    /** How it may have to be read, by the words of its heading and what stands below; to be offered, never taken. */
    public ListColumns guess() {
        return ListGuess.of(ListTable.of(name, bytes, ListColumns.NONE));
    }

    /** Its loads as the columns say. */
    public PlantRows rows(String plant, ListColumns columns) {
        ListReading reading = reading(columns);
        List<String> said = new ArrayList<>();
        reading.troubles().forEach(t -> said.add(t.text().lines().findFirst().orElse("")));
        return new PlantRows(plant, name, "", reading.rows(), said);
    }

    /** Everything in it that cannot be read, with line, excerpt and what would be right. */
    public List<Trouble> troubles(ListColumns columns) {
        return reading(columns).troubles();
    }

    /** Rows below its heading, those without a ticket number too. */
    public int count(ListColumns columns) {
        return ListTable.of(name, bytes, columns).rows().size();
    }

    private ListReading reading(ListColumns columns) {
        return ListReading.of(name, ListTable.of(name, bytes, columns), columns);
    }
}
