package screedbook.command;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import screedbook.entry.Damage;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.report.DayPaper;
import screedbook.shelf.Papers;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/** Pages on their way out. */
final class Pages {
    private Pages() {}

    /**
     * The form that was asked for.
     *
     * @param typed the word after {@code --format}
     * @param forms by their words, in the order in which they are told
     * @throws Stopped when there is no such form
     */
    static <P> Function<P, String> form(String typed, Map<String, Function<P, String>> forms) throws Stopped {
        known(typed, forms.keySet());
        return forms.get(typed);
    }

    /**
     * Looks at the word after {@code --format}.
     *
     * @throws Stopped when it is none of those that are known
     */
    static void known(String typed, Collection<String> forms) throws Stopped {
        if (!forms.contains(typed)) {
            throw Stopped.usage(
                    "--format " + typed + " is not known; right would be one of " + String.join(", ", forms));
        }
    }

    /** Prints a shift in a form; damages of its files go to the error output. */
    static void shift(
            CommandSpec spec, JobWord job, ShiftWord shift, CopyWord copy, Clock clock, Function<DayPaper, String> form)
            throws Stopped {
        Shelf shelf = job.shelf();
        ShiftId id = shift.of(shelf);
        OffsetDateTime now = OffsetDateTime.now(clock);
        ShiftFile file = copy.asked() ? shelf.withoutRemarks(id, now) : shelf.shift(id, now);
        print(spec, form.apply(copy.asked() ? Papers.copy(file) : Papers.of(file)));
        warn(spec, file.read().damages());
    }

    static void print(CommandSpec spec, String page) {
        spec.commandLine().getOut().print(page);
    }

    /** What is not as it was written stands on the error output: the page is made of what could be read. */
    static void warn(CommandSpec spec, List<Damage> damages) {
        for (Damage damage : damages) {
            say(spec, text(damage));
        }
    }

    static void say(CommandSpec spec, String sentence) {
        spec.commandLine().getErr().print(spec.qualifiedName() + ": " + Shown.text(sentence) + "\n");
    }

    /** File, line and what was seen. */
    static String text(Damage damage) {
        String line = damage.row() == 0 ? "" : ":" + damage.row();
        return Shown.text(damage.file()) + line + ": " + Shown.text(damage.said());
    }
}
