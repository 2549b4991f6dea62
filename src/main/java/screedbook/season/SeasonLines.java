package screedbook.season;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import screedbook.check.InShort;
import screedbook.diary.Basis;
import screedbook.diary.JobFolder;
import screedbook.diary.Recall;
import screedbook.entry.ShiftId;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/**
 * The shifts of a job in one line each. A shift all of whose bytes are as they were when its line was worked out has that
 * line at once; every other one is read and judged, and its line kept for the next time.
 */
public final class SeasonLines {
    private final JobFolder folder;
    private final Optional<Recall> recall;

    /** @param recall what was worked out before; empty when every shift is to be read */
    public SeasonLines(JobFolder folder, Optional<Recall> recall) {
        this.folder = folder.listed();
        this.recall = recall;
    }

    /**
     * Tells of all shifts, again with each that is read.
     *
     * @param on whether to go on; asked before each shift
     * @param told by shift, oldest first; complete when told for the last time, unless it did not go on
     */
    public void tell(BooleanSupplier on, Consumer<Map<ShiftId, InShort>> told) {
        Map<ShiftId, InShort> lines = new TreeMap<>();
        Map<ShiftId, String> bases = bases(on);
        Map<String, String> known = recall.map(Recall::read).orElse(Map.of());
        bases.forEach((shift, basis) -> Optional.ofNullable(known.get(basis))
                .flatMap(InOneLine::read)
                .ifPresent(line -> lines.put(shift, line)));
        told.accept(Map.copyOf(lines));
        int all = folder.shifts().size();
        int before = lines.size();
        Shelf.of(folder)
                .each(shift -> !lines.containsKey(shift), () -> on.getAsBoolean() && lines.size() < all, file -> {
                    lines.put(file.day().shift(), line(file));
                    told.accept(Map.copyOf(lines));
                });
        if (lines.size() > before || known.size() > lines.size()) {
            keep(bases, lines, on);
        }
    }

    private static InShort line(ShiftFile file) {
        return InShort.of(
                file.day(),
                file.totals(),
                file.findings(),
                file.read().damages().size());
    }

    /** What each shift rests on; of none where nothing is recalled. */
    private Map<ShiftId, String> bases(BooleanSupplier on) {
        Map<ShiftId, String> bases = new LinkedHashMap<>();
        if (recall.isPresent()) {
            Basis basis = Basis.of(folder);
            for (ShiftId shift : folder.shifts()) {
                if (on.getAsBoolean()) {
                    basis.next(shift).ifPresent(hash -> bases.put(shift, hash));
                }
            }
        }
        return bases;
    }

    /** Only of shifts that were not written to while they were read: their bytes are looked at again. */
    private void keep(Map<ShiftId, String> bases, Map<ShiftId, InShort> lines, BooleanSupplier on) {
        Map<ShiftId, String> after = bases(on);
        Map<String, String> texts = new LinkedHashMap<>();
        lines.forEach((shift, line) -> {
            String basis = bases.get(shift);
            if (basis != null && basis.equals(after.get(shift))) {
                texts.put(basis, InOneLine.text(line));
            }
        });
        recall.ifPresent(kept -> kept.write(texts));
    }
}
