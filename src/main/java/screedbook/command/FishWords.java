package screedbook.command;

import java.nio.file.Path;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The words of the program as the shell fish is told them: one {@code complete} for each, read off the commands. */
final class FishWords {
    private final StringBuilder script = new StringBuilder();

    private FishWords() {}

    static String of(CommandSpec program) {
        FishWords words = new FishWords();
        String first = "__fish_use_subcommand";
        program.options().forEach(option -> words.option(first, option));
        program.subcommands().forEach((name, line) -> {
            CommandSpec command = line.getCommandSpec();
            words.say(
                    first,
                    "-a " + quoted(name) + described(command.usageMessage().description()));
            String seen = quoted("__fish_seen_subcommand_from " + name);
            command.options().forEach(option -> words.option(seen, option));
            command.positionalParameters().forEach(place -> words.place(seen, place));
        });
        return words.script.toString();
    }

    private void option(String when, OptionSpec option) {
        StringBuilder names = new StringBuilder();
        for (String name : option.names()) {
            names.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
        }
        say(when, names.substring(1) + value(option) + described(option.description()));
    }

    private static String value(ArgSpec arg) {
        if (arg.arity().max() == 0) {
            return "";
        }
        String values = values(arg);
        if (values.isEmpty()) {
            return Path.class.equals(arg.type()) ? " -r -F" : " -x";
        }
        return " -x -a " + quoted(values);
    }

    private void place(String when, PositionalParamSpec place) {
        String values = values(place);
        if (!values.isEmpty()) {
            say(when, "-a " + quoted(values));
        }
    }

    private static String values(ArgSpec arg) {
        return arg.completionCandidates() == null ? "" : String.join(" ", arg.completionCandidates());
    }

    private static String described(String[] description) {
        return description.length == 0 ? "" : " -d " + quoted(String.join(" ", description));
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    private void say(String when, String what) {
        script.append("complete -c screedbook -n ")
                .append(when)
                .append(' ')
                .append(what)
                .append('\n');
    }
}
