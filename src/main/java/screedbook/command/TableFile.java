package screedbook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import screedbook.report.DataPackage;

/** A table being written into a folder as it comes, with what its columns hold beside it; put in place whole. */
final class TableFile implements AutoCloseable {
    private final Path file;
    private final Path made;
    private final PrintWriter to;
    private boolean whole;

    /** @param holds the text of {@code datapackage.json} */
    TableFile(Path folder, String name, String holds) throws IOException {
        Files.createDirectories(folder);
        this.file = folder.resolve(name);
        this.made = folder.resolve(name + ".new");
        this.to = new PrintWriter(Files.newBufferedWriter(made, StandardCharsets.UTF_8));
        Files.writeString(folder.resolve(DataPackage.FILE), holds);
    }

    /** The whole table was printed; without this word nothing takes the place of an earlier one. */
    void whole() {
        whole = true;
    }

    void print(String text) {
        to.print(text);
    }

    @Override
    public void close() throws IOException {
        to.close();
        if (whole && !to.checkError()) {
            Files.move(made, file, StandardCopyOption.REPLACE_EXISTING);
            return;
        }
        Files.deleteIfExists(made);
        if (whole) {
            throw new IOException(file + " could not be written");
        }
    }
}
