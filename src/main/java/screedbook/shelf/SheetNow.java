package screedbook.shelf;

import java.util.List;
import java.util.Optional;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.spec.Loaded;
import screedbook.spec.SpecSheet;

/**
 * The limit sheet that a job names, as it is now: its own file in {@code spec/} before the shipped one of the name.
 *
 * @param own whether it is the job's own file
 * @param loaded the sheet, or everything in its file that stands in the way
 */
public record SheetNow(String name, boolean own, byte[] bytes, Loaded loaded) {
    /** Empty when neither the job nor the program has a sheet of the name. */
    public static Optional<SheetNow> of(JobFolder folder, String name) {
        return LimitSheets.in(folder)
                .sheet(name)
                .map(bytes -> of(name, true, bytes))
                .or(() -> SpecSheet.shippedNames().contains(name)
                        ? SpecSheet.shippedBytes(name).map(bytes -> of(name, false, bytes))
                        : Optional.empty());
    }

    private static SheetNow of(String name, boolean own, byte[] bytes) {
        return new SheetNow(name, own, bytes, SpecSheet.read(name, bytes));
    }

    public Optional<SpecSheet> sheet() {
        return loaded.sheet();
    }

    /** Everything that stands in the way: {@code spec/town.csv:14: low is "4O"; right would be a decimal such as 40}. */
    public List<String> troubles() {
        return loaded.troubles().stream().map(each -> "spec/" + each.text()).toList();
    }
}
