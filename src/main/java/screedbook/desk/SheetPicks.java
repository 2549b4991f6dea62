package screedbook.desk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import screedbook.entry.Field;

/** What may be picked in a blank of the job sheet: fixed words, names that the sheet itself holds, limit sheets. */
final class SheetPicks {
    private SheetPicks() {}

    /** The words; empty where anything may stand. */
    static List<String> of(Sheet sheet, Field field) {
        if (!field.words().isEmpty()) {
            return field.words();
        }
        if (field.name().equals("sheet")) {
            return List.copyOf(sheet.read().sheets().keySet());
        }
        return switch (field.pick()) {
            case MIX -> names(sheet, "mixes", "name");
            case LIFT -> names(sheet, "lifts", "number");
            case PULL -> names(sheet, "pulls", "name");
            case PLANT -> names(sheet, "plants", "name");
            case TRUCK -> names(sheet, "trucks", "number");
            case PRODUCT -> names(sheet, "products", "name");
            case DISTRIBUTOR -> names(sheet, "distributors", "name");
            case INSTRUMENT -> names(sheet, "instruments", "id");
            case PERSON -> names(sheet, "people", "initials");
            default -> List.of();
        };
    }

    private static List<String> names(Sheet sheet, String list, String key) {
        return sheet.list(List.of(list)).stream()
                .map(each -> each instanceof Map<?, ?> map ? map.get(key) : null)
                .filter(Objects::nonNull)
                .map(Sheet::typed)
                .distinct()
                .toList();
    }

    /** The word that a text picks: the whole word, the only one that begins with it, or its number; else the text. */
    static String match(Sheet sheet, Field field, String text) {
        List<String> all = of(sheet, field);
        String t = text.toLowerCase(Locale.ROOT);
        if (all.stream().anyMatch(text::equals)) {
            return text;
        }
        List<String> like = all.stream()
                .filter(word -> word.toLowerCase(Locale.ROOT).startsWith(t))
                .toList();
        if (like.size() == 1) {
            return like.get(0);
        }
        boolean number = t.matches("[1-9][0-9]?") && Integer.parseInt(t) <= all.size();
        return number ? all.get(Integer.parseInt(t) - 1) : text;
    }
}
