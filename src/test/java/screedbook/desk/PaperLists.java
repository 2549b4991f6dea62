package screedbook.desk;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import screedbook.diary.ListFile;
import screedbook.entry.Aside;
import screedbook.entry.Line;
import screedbook.entry.ListColumns;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.unit.Unit;

/** Plants' lists on a paper disk: their texts by path, and those that were brought in. */
final class PaperLists {
    private final Map<String, String> files = new HashMap<>();
    private final Map<Ref, PlantRows> lists = new HashMap<>();
    private final Map<String, ListColumns> kept = new HashMap<>();

    PaperLists put(String path, String text) {
        files.put(path, text);
        return this;
    }

    Map<Ref, PlantRows> lists() {
        return Map.copyOf(lists);
    }

    Msg bring(Effect.BringList bring, DeskRig rig) {
        String text = files.get(bring.path());
        if (text == null) {
            return new Msg.Refused("the list cannot be brought in: " + bring.path() + ": it is not there");
        }
        ListFile list = ListFile.of(bring.path(), text.getBytes(StandardCharsets.UTF_8));
        ListColumns columns =
                bring.columns() == null ? kept.getOrDefault(bring.plant(), ListColumns.NONE) : bring.columns();
        if (!columns.enough() || !list.missing(columns).isEmpty()) {
            return new Msg.ListAsked(
                    bring.plant(),
                    bring.path(),
                    list.heading(ListColumns.NONE),
                    list.first(ListColumns.NONE, 3),
                    list.guess(),
                    columns);
        }
        kept.put(bring.plant(), columns);
        PlantRows rows = list.rows(bring.plant(), columns);
        PlantList entry = new PlantList(
                bring.plant(),
                "2026-06-03-night.quarry-road." + list.sha256().substring(0, 8) + ".csv",
                list.sha256(),
                list.count(columns),
                rows.rows().size(),
                rows.tons().map(t -> t.to(Unit.SHORT_TON).shown(2)).orElse(null),
                columns);
        Line line = rig.add(new Unwritten(rig.now(), "RK", Source.LIVE, entry, Aside.NONE));
        lists.put(line.ref(), rows);
        return new Msg.Wrote(List.of(line), rig.page(), "");
    }
}
