package screedbook.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code screedbook man}: the manual page, made from the commands themselves. */
@Command(name = "man", description = "print the manual page: screedbook man | man -l -")
final class ManCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() {
        Pages.print(spec, ManualPage.of(spec.root()));
        return Exit.FINE;
    }
}
