package screedbook.diary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Draft;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Word;

/** Half-typed entries in a file beside the diary; they are no part of the record and outlive a crash of the program. */
final class Drafts {
    private Drafts() {}

    static void write(Path file, List<Draft> drafts) throws IOException {
        if (drafts.isEmpty()) {
            Files.deleteIfExists(file);
            return;
        }
        Folder.place(
                file,
                Json.write(Map.of("drafts", drafts.stream().map(Drafts::values).toList())));
    }

    private static Map<String, Object> values(Draft draft) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("kind", draft.kind().word());
        values.put("source", draft.source().word());
        if (draft.of() != null) {
            values.put("of", draft.of().toString());
        }
        values.put("at", draft.at());
        values.put("typed", draft.typed());
        if (draft.after() >= 0) {
            values.put("after", draft.after());
        }
        return values;
    }

    /** The drafts in a file; those that cannot be read are left out. */
    static List<Draft> read(Path file) {
        List<Draft> drafts = new ArrayList<>();
        try {
            if (Files.isRegularFile(file)
                    && Json.file(Folder.read(file), new LinkedHashMap<>()).get("drafts") instanceof List<?> all) {
                all.forEach(each -> draft(each).ifPresent(drafts::add));
            }
        } catch (IOException | Json.NotJson e) {
            return List.copyOf(drafts);
        }
        return List.copyOf(drafts);
    }

    private static Optional<Draft> draft(Object values) {
        if (!(values instanceof Map<?, ?> map) || !(map.get("typed") instanceof Map<?, ?> typed)) {
            return Optional.empty();
        }
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, text) -> texts.put(name.toString(), text == null ? "" : text.toString()));
        Optional<Kind> kind = Kind.ofWord("" + map.get("kind"));
        Optional<Source> source = word(Source.values(), "" + map.get("source"));
        String at = map.get("at") == null ? null : map.get("at").toString();
        int after = map.get("after") instanceof Number lines ? lines.intValue() : -1;
        return kind.isPresent() && source.isPresent()
                ? Optional.of(new Draft(kind.get(), source.get(), ref(map.get("of")), texts, at, after))
                : Optional.empty();
    }

    private static Ref ref(Object text) {
        try {
            return text == null ? null : Ref.of(text.toString());
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    private static <E extends Word> Optional<E> word(E[] words, String text) {
        for (E word : words) {
            if (word.word().equals(text)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }
}
