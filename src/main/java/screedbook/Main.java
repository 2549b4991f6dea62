package screedbook;

import java.util.List;
import java.util.Set;
import screedbook.command.Commands;
import screedbook.term.DeskMain;

/** The door of the program: looks at the first word by hand, so that the desk never waits for the command library. */
public final class Main {
    /** As the launcher has them. A job's folder of such a name is opened as {@code ./day}. */
    static final Set<String> COMMANDS = Set.of(
            "new",
            "plan",
            "day",
            "findings",
            "verify",
            "carry",
            "key",
            "sign",
            "plant-list",
            "csv",
            "limits",
            "sheets",
            "season",
            "find",
            "archive",
            "sql",
            "schemas",
            "completion",
            "man",
            "-h",
            "--help",
            "-V",
            "--version");

    private Main() {}

    public static void main(String[] words) {
        if (words.length > 0 && COMMANDS.contains(words[0])) {
            Commands.main(words);
        } else {
            System.exit(DeskMain.run(List.of(words), program()));
        }
    }

    /** Name and version, as they stand in opening lines. */
    private static String program() {
        String version = Main.class.getPackage().getImplementationVersion();
        return "screedbook" + (version == null ? "" : " " + version);
    }
}
