package screedbook.diary;

import screedbook.entry.ListColumns;
import screedbook.entry.PlantRows;

/** The reader of a plant's own list, fed with any bytes: loads, or troubles with their lines; no row is lost silently. */
public final class AnyPlantList {
    private AnyPlantList() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        ListFile list = ListFile.of("any.csv", bytes);
        ListColumns columns = list.guess();
        if (!list.missing(columns).isEmpty()) {
            throw new AssertionError("a column was offered that is not there: " + list.missing(columns));
        }
        PlantRows rows = list.rows("Quarry Road", columns);
        if (rows.rows().size() > list.count(columns)) {
            throw new AssertionError("more loads than rows");
        }
        rows.tons();
        list.troubles(columns).forEach(Trouble::text);
        list.rows(null, ListColumns.NONE);
    }
}
