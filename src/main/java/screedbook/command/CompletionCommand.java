package screedbook.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code screedbook completion}: what bash or zsh needs to complete the words of this program. */
@Command(
        name = "completion",
        description = "print what bash or zsh needs to complete these words: source <(screedbook completion)")
final class CompletionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() {
        Pages.print(spec, AutoComplete.bash("screedbook", spec.root().commandLine()));
        return Exit.FINE;
    }
}
