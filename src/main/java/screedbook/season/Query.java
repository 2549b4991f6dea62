package screedbook.season;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The shipped queries: what {@link LoadsOf} tells, asked by an engine that somebody else made, over the same files. */
public final class Query {
    /** The engines by their words. */
    public static final List<String> ENGINES = List.of("duckdb", "spark");

    /** The diaries of an archive, seen from its folder. */
    public static final String ARCHIVE = "job=*/year=*/month=*/*.jsonl";

    private Query() {}

    /**
     * A query's text.
     *
     * @param engine one of {@link #ENGINES}
     * @param files the diaries, with stars where the engine takes them
     */
    public static String text(String engine, String files) {
        try (InputStream in = Query.class.getResourceAsStream("/sql/loads-" + engine + ".sql")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.replace("{files}", files.replace("'", "''"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
