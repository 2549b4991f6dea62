package screedbook.entry;

import java.util.ArrayList;
import java.util.List;

/** What a plant says, told in the parts of a line. */
final class PlantTold {
    private final List<String> parts = new ArrayList<>();

    private PlantTold() {}

    /** The parts behind the kind's name; none where the entry is of another kind, or says nothing. */
    static List<String> parts(Entry entry) {
        PlantTold told = new PlantTold();
        if (entry instanceof PlantTotal t) {
            told.add(t.plant())
                    .add(t.mix())
                    .loads(t.loads())
                    .add(t.tons() == null ? null : t.tons().text());
            told.add(t.firstTicket() == null ? null : "from " + t.firstTicket());
            told.add(t.lastTicket() == null ? null : "to " + t.lastTicket());
            told.add(t.toldBy() == null ? null : "told by " + t.toldBy());
        } else if (entry instanceof PlantList l) {
            told.add(l.plant())
                    .loads(l.loads())
                    .add(l.tons() == null ? null : l.tons().text());
            told.add(l.listFile());
        }
        return told.parts;
    }

    private PlantTold loads(Integer loads) {
        return add(loads == null ? null : loads + (loads == 1 ? " load" : " loads"));
    }

    private PlantTold add(String part) {
        if (part != null && !part.isEmpty()) {
            parts.add(part);
        }
        return this;
    }
}
