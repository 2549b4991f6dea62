package screedbook.report;

import screedbook.spec.Loaded;
import screedbook.spec.SpecSheet;

/** The reader of limit sheets, fed with any bytes: a sheet, or troubles with their lines. */
public final class AnySheet {
    private AnySheet() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Loaded loaded = SpecSheet.read("any", bytes);
        loaded.troubles().forEach(trouble -> trouble.text());
        if (loaded.sheet().isEmpty() && loaded.troubles().isEmpty()) {
            throw new AssertionError("neither a sheet nor a trouble");
        }
        loaded.sheet().ifPresent(SheetPage::one);
    }
}
