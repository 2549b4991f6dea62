package screedbook.term;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import screedbook.desk.Look;
import screedbook.diary.JobFolder;
import screedbook.diary.Jobs;
import screedbook.diary.Preferences;

/**
 * The words of the command line that the desk understands.
 *
 * @param who initials of the writer; empty when they are to be chosen at the desk
 */
record Words(Path folder, String book, String who, Look look, boolean demo, boolean window) {
    /**
     * Preferences stand where nothing is typed. A preferred job is opened only where this folder holds none.
     *
     * @throws IllegalArgumentException with a sentence when a word is wrong
     */
    static Words read(List<String> words, Preferences preferences) {
        Path here = Path.of(".");
        Path folder =
                Jobs.isJob(here) ? here : preferences.value("job").map(Path::of).orElse(here);
        String book = preferences.value("book").map(Words::book).orElse("main");
        String who = preferences.value("who").orElse("");
        Look look = preferences.value("look").map(Words::look).orElse(Look.NIGHT);
        boolean demo = false;
        boolean window = false;
        boolean named = false;
        Deque<String> rest = new ArrayDeque<>(words);
        while (!rest.isEmpty()) {
            String word = rest.pop();
            switch (word) {
                case "--demo" -> demo = true;
                case "--window" -> window = true;
                case "--book" -> book = book(next(rest, word));
                case "--who" -> who = next(rest, word);
                case "--look" -> look = look(next(rest, word));
                default -> {
                    if (word.startsWith("-") || named) {
                        throw new IllegalArgumentException(
                                "\"" + word + "\" is not understood; screedbook --help tells");
                    }
                    folder = Path.of(word);
                    named = true;
                }
            }
        }
        return new Words(folder, book, who, look, demo, window);
    }

    private static String next(Deque<String> rest, String word) {
        if (rest.isEmpty()) {
            throw new IllegalArgumentException(word + " wants a word behind it");
        }
        return rest.pop();
    }

    private static String book(String typed) {
        return JobFolder.bookName(typed)
                .orElseThrow(() ->
                        new IllegalArgumentException("\"" + typed + "\" cannot name a book; right would be paver"));
    }

    private static Look look(String typed) {
        for (Look look : Look.values()) {
            if (look.name().toLowerCase(Locale.ROOT).equals(typed)) {
                return look;
            }
        }
        throw new IllegalArgumentException("\"" + typed + "\" is no look; right would be night, sun or mono");
    }
}
