package screedbook.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code screedbook completion}: what a shell needs to complete the words of this program. */
@Command(
        name = "completion",
        description = "print what bash, zsh or fish needs to complete these words; --help tells how")
final class CompletionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "SHELL",
            arity = "0..1",
            defaultValue = "bash",
            description = {
                "bash or zsh (the usual): source <(screedbook completion)",
                "fish: screedbook completion fish | source"
            })
    private String shell;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        if (!ShellWords.SHELLS.contains(shell)) {
            throw Stopped.usage("there are no words for " + shell + "; right would be one of "
                    + String.join(", ", ShellWords.SHELLS));
        }
        CommandSpec program = ShellWords.in(spec.root());
        Pages.print(
                spec,
                shell.equals("fish") ? FishWords.of(program) : AutoComplete.bash("screedbook", program.commandLine()));
        return Exit.FINE;
    }
}
