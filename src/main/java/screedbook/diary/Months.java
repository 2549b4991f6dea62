package screedbook.diary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The folders of an archived job that take the place of {@code diary}: {@code year=2026/month=05}. */
final class Months {
    private static final Pattern YEAR = Pattern.compile("year=\\d{4}");
    private static final Pattern MONTH = Pattern.compile("month=\\d{2}");

    private Months() {}

    /** In the order of time; none where the folder is no archive or cannot be read. */
    static List<Path> in(Path job) {
        List<Path> months = new ArrayList<>();
        for (Path year : named(job, YEAR)) {
            months.addAll(named(year, MONTH));
        }
        return months;
    }

    private static List<Path> named(Path folder, Pattern form) {
        try {
            return Folder.names(folder).stream()
                    .filter(name -> form.matcher(name).matches())
                    .map(folder::resolve)
                    .filter(Files::isDirectory)
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
