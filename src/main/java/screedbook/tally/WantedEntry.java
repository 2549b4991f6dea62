package screedbook.tally;

import java.util.List;
import java.util.Locale;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.entry.Word;
import screedbook.job.Wanted;
import screedbook.unit.Measure;

/**
 * The entry by which a check is answered: of its kind, with a blank that is filled or a word that stands in it.
 *
 * @param asked the row of the job's list
 */
record WantedEntry(Wanted asked) {
    /** Whether an entry has the blank or the word that the check is answered with. */
    boolean answers(Standing<? extends Entry> standing) {
        return asked.with() == null || has((Record) standing.entry(), asked.with());
    }

    /** A ticket's plant is a name and a temperature: where one of the blanks is measured, the reading is what is wanted. */
    private static boolean has(Record entry, String with) {
        String wanted = word(with);
        List<Field> named = named(entry.getClass(), with);
        boolean measured = named.stream().anyMatch(f -> f.measure().isPresent());
        return named.stream().filter(f -> !measured || f.measure().isPresent()).anyMatch(f -> f.get(entry) != null)
                || !measured
                        && Fields.of(entry.getClass()).stream()
                                .filter(field -> field.get(entry) != null)
                                .anyMatch(field -> stands(field.get(entry), wanted));
    }

    private static List<Field> named(Class<? extends Record> type, String with) {
        return Fields.of(type).stream()
                .filter(f -> word(f.name()).equals(word(with)))
                .toList();
    }

    /** What is wanted in a few words: {@code plant temperature}, {@code density random}. */
    String what() {
        if (asked.with() == null) {
            return Told.kind(asked.kind());
        }
        boolean heat = asked.kind() == Kind.TICKET
                && asked.kind().fields().stream()
                        .filter(f -> word(f.name()).equals(word(asked.with())))
                        .anyMatch(f ->
                                f.measure().filter(Measure.TEMPERATURE::equals).isPresent());
        String with = asked.with().replace('_', ' ').replace('-', ' ');
        return heat ? with + " temperature" : Told.kind(asked.kind()) + " " + with;
    }

    private static boolean stands(Object value, String wanted) {
        return value instanceof List<?> list
                ? list.stream().anyMatch(each -> stands(each, wanted))
                : word(value instanceof Word w ? w.word() : value.toString()).equals(wanted);
    }

    private static String word(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    }
}
