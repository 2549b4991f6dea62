package screedbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import screedbook.diary.AnyJob;
import screedbook.diary.AnyLine;
import screedbook.diary.AnyPlantList;
import screedbook.entry.AnyTyped;
import screedbook.report.AnySheet;
import screedbook.term.AnyKeys;

/** The readers of what comes from outside, by the folder of the inputs that each was fed with and is fed with again. */
final class Fed {
    static final Path SEEDS = Path.of("src/test/resources/seeds");

    /** Any bytes go in; nothing but an error of the program comes out. */
    interface Reader {
        void read(byte[] bytes) throws Exception;
    }

    /** A reader with the class that has it, for a fuzzer. */
    record Mouth(Class<?> type, Reader reader) {}

    static final Map<String, Mouth> ALL = new LinkedHashMap<>();

    static {
        ALL.put("line", new Mouth(AnyLine.class, AnyLine::fuzzerTestOneInput));
        ALL.put("job", new Mouth(AnyJob.class, AnyJob::fuzzerTestOneInput));
        ALL.put("sheet", new Mouth(AnySheet.class, AnySheet::fuzzerTestOneInput));
        ALL.put("plant", new Mouth(AnyPlantList.class, AnyPlantList::fuzzerTestOneInput));
        ALL.put("keys", new Mouth(AnyKeys.class, AnyKeys::fuzzerTestOneInput));
        ALL.put("typed", new Mouth(AnyTyped.class, AnyTyped::fuzzerTestOneInput));
    }

    private Fed() {}

    static List<Path> seeds(String name) throws IOException {
        try (Stream<Path> files = Files.list(SEEDS.resolve(name))) {
            return files.sorted().toList();
        }
    }
}
