package screedbook.command;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import screedbook.diary.Schemas;

/** {@code screedbook schemas}: the JSON Schemas of lines and results. */
@Command(name = "schemas", description = "list the JSON Schemas of lines and of what is printed as JSON, or print one")
final class SchemasCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "a kind of entry, or a result: ticket, day, season")
    private String name;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        if (name == null) {
            Pages.print(spec, String.join("\n", Schemas.names()) + "\n");
            return Exit.FINE;
        }
        byte[] schema = Schemas.shipped(name)
                .orElseThrow(() -> Stopped.usage("there is no schema " + name + "; right would be one of "
                        + String.join(", ", Schemas.names())));
        Pages.print(spec, new String(schema, StandardCharsets.UTF_8));
        return Exit.FINE;
    }
}
