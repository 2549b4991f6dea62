package screedbook.command;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import screedbook.check.Rule;
import screedbook.check.Rules;
import screedbook.check.Sort;
import screedbook.diary.Schemas;
import screedbook.season.Query;
import screedbook.season.Season;
import screedbook.spec.SpecSheet;

/** What a shell completes beyond the names of commands and options: their values, and the words of the desk. */
final class ShellWords {
    static final List<String> SHELLS = List.of("bash", "zsh", "fish");

    /** The values of an option, or of a command's only word, where they can be listed. */
    private static final Map<String, Collection<String>> VALUES = Map.ofEntries(
            Map.entry("day --format", DayCommand.FORMS.keySet()),
            Map.entry("findings --format", FindingsCommand.FORMS.keySet()),
            Map.entry("limits --format", LimitsCommand.FORMS.keySet()),
            Map.entry("verify --format", VerifyCommand.FORMS.keySet()),
            Map.entry("season --format", SeasonCommand.FORMATS),
            Map.entry("season --by", Season.PARTS),
            Map.entry("find --format", FindCommand.FORMATS),
            Map.entry("find --finding", findings()),
            Map.entry("sql --engine", Query.ENGINES),
            Map.entry("sheets", SpecSheet.shippedNames()),
            Map.entry("schemas", Schemas.names()),
            Map.entry("completion", SHELLS));

    private ShellWords() {}

    private static List<String> findings() {
        return Stream.concat(
                        Stream.of(Sort.values()).map(sort -> sort.text().replace(' ', '-')),
                        Rules.all().stream().map(Rule::id))
                .toList();
    }

    /** Puts them into the model of the program that is about to be told to a shell. */
    static CommandSpec in(CommandSpec program) {
        program.subcommands().values().forEach(line -> values(line.getCommandSpec()));
        program.addOption(text("--book", "the book that is kept on this laptop", List.of()));
        program.addOption(text("--who", "who is at the keyboard", List.of()));
        program.addOption(text("--look", "colours of the screen", List.of("night", "sun", "mono")));
        program.addOption(OptionSpec.builder("--window")
                .description("in a window of its own")
                .build());
        program.addOption(OptionSpec.builder("--demo")
                .description("a made-up shift to try, on a copy")
                .build());
        return program;
    }

    private static OptionSpec text(String name, String description, List<String> values) {
        OptionSpec.Builder option =
                OptionSpec.builder(name).type(String.class).arity("1").description(description);
        return (values.isEmpty() ? option : option.completionCandidates(values)).build();
    }

    private static void values(CommandSpec command) {
        for (OptionSpec option : List.copyOf(command.options())) {
            Collection<String> values = VALUES.get(command.name() + " " + option.longestName());
            if (values != null) {
                command.remove(option);
                command.addOption(
                        OptionSpec.builder(option).completionCandidates(values).build());
            }
        }
        for (PositionalParamSpec place : List.copyOf(command.positionalParameters())) {
            Collection<String> values = VALUES.get(command.name());
            if (values != null) {
                command.remove(place);
                command.addPositional(PositionalParamSpec.builder(place)
                        .completionCandidates(values)
                        .build());
            }
        }
    }
}
