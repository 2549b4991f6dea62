package screedbook.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A manual page in the macros of man(7), read off the commands. */
final class ManualPage {
    private final StringBuilder page = new StringBuilder();

    private ManualPage() {}

    /** The page of the whole program. */
    static String of(CommandSpec program) {
        ManualPage manual = new ManualPage();
        manual.head(program);
        manual.section("COMMANDS");
        program.subcommands().values().stream()
                .map(line -> line.getCommandSpec())
                .forEach(manual::command);
        manual.exits(program);
        manual.files();
        return manual.page.toString();
    }

    private void head(CommandSpec program) {
        macro("TH", "SCREEDBOOK", "1", "", program.version()[0], "");
        section("NAME");
        text("screedbook - the daily log of a paving job");
        section("SYNOPSIS");
        for (String way : program.usageMessage().customSynopsis()) {
            macro("B", way);
            page.append(".br\n");
        }
        section("DESCRIPTION");
        page.append(".nf\n");
        for (String line : program.usageMessage().description()) {
            if (!line.endsWith(":") || line.startsWith("Without")) {
                text(line);
            }
        }
        page.append(".fi\n");
        section("OPTIONS");
        options(program);
    }

    private void command(CommandSpec command) {
        macro("SS", command.name() + places(command));
        for (String line : command.usageMessage().description()) {
            text(line);
        }
        for (PositionalParamSpec place : command.positionalParameters()) {
            item(place.paramLabel(), place.description());
        }
        options(command);
    }

    private static String places(CommandSpec command) {
        StringBuilder places = new StringBuilder();
        for (PositionalParamSpec place : command.positionalParameters()) {
            boolean may = place.arity().min() == 0;
            places.append(may ? " [" : " ").append(place.paramLabel()).append(may ? "]" : "");
        }
        return places.toString();
    }

    private void options(CommandSpec command) {
        for (OptionSpec option : command.options()) {
            String names = String.join(", ", option.names());
            item(option.arity().max() == 0 ? names : names + " " + option.paramLabel(), option.description());
        }
    }

    private void exits(CommandSpec program) {
        section("EXIT STATUS");
        for (Map.Entry<String, String> exit :
                program.usageMessage().exitCodeList().entrySet()) {
            item(exit.getKey().strip(), exit.getValue());
        }
    }

    private void files() {
        section("FILES");
        item(
                "$XDG_CONFIG_HOME/screedbook/screedbook.conf",
                "What is always wanted on this laptop: job, book, who, look, each on a line with = and its value."
                        + " Without XDG_CONFIG_HOME it lies under ~/.config.");
        item("$XDG_CACHE_HOME/screedbook/classes.jsa", "Makes the desk start quicker; it may be removed.");
        section("ENVIRONMENT");
        item("NO_COLOR", "Set to anything: no colour.");
        item("JAVA_HOME", "The Java that the launcher takes.");
    }

    private void section(String name) {
        macro("SH", name.toUpperCase(Locale.ROOT));
    }

    private void item(String head, String... lines) {
        page.append(".TP\n");
        macro("B", head);
        for (String line : lines) {
            text(String.format(line));
        }
    }

    private void macro(String name, String... words) {
        page.append('.').append(name);
        for (String word : List.of(words)) {
            page.append(" \"").append(escaped(word).replace("\"", "\\(dq")).append('"');
        }
        page.append('\n');
    }

    private void text(String line) {
        String escaped = escaped(line);
        page.append(escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" : "")
                .append(escaped)
                .append('\n');
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-");
    }
}
