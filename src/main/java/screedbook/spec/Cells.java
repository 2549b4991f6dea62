package screedbook.spec;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/** The cells of one row by the names of their columns; what cannot be read is told to a listener. */
final class Cells {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,9}(\\.\\d{1,6})?");

    private final CSVRecord record;
    private final Map<String, Integer> heads;
    private final BiConsumer<String, String> trouble;

    /** @param trouble is told what was seen and what would be right */
    Cells(CSVRecord record, Map<String, Integer> heads, BiConsumer<String, String> trouble) {
        this.record = record;
        this.heads = heads;
        this.trouble = trouble;
    }

    /** The cell's text; empty where nothing stands. */
    String text(String head) {
        Integer at = heads.get(head);
        return at == null || at >= record.size() ? "" : record.get(at).strip();
    }

    boolean empty(String head) {
        return text(head).isEmpty();
    }

    /** The cell's text, which must be there. */
    String needed(String head, String right) {
        if (empty(head)) {
            trouble(head + " is empty", right);
        }
        return text(head);
    }

    /** The cell's decimal with its digits as printed; null where nothing or no decimal stands. */
    BigDecimal decimal(String head) {
        if (empty(head)) {
            return null;
        }
        if (!DECIMAL.matcher(text(head)).matches()) {
            trouble(head + " is \"" + text(head) + "\"", "a decimal such as 2.5");
            return null;
        }
        return new BigDecimal(text(head));
    }

    /** The words of a cell, which a stroke parts. */
    List<String> words(String head) {
        return empty(head)
                ? List.of()
                : Arrays.stream(text(head).split("\\|", -1)).map(String::strip).toList();
    }

    /** Cells that this sort of row has no use for. */
    void unused(String... heads) {
        for (String head : heads) {
            if (!empty(head)) {
                trouble(
                        head + " is \"" + text(head) + "\" in a row that " + text("does") + " something else",
                        "nothing in this cell");
            }
        }
    }

    void trouble(String seen, String right) {
        trouble.accept(seen, right);
    }
}
