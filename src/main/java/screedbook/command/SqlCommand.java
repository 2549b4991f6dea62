package screedbook.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.season.Query;

/** {@code screedbook sql}: the queries for other engines. */
@Command(
        name = "sql",
        description = "print the query that gives loads, tons and temperatures in DuckDB or Spark, over the same files")
final class SqlCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--engine", paramLabel = "ENGINE", required = true, description = "duckdb or spark")
    private String engine;

    @Option(
            names = "--files",
            paramLabel = "FILES",
            defaultValue = Query.ARCHIVE,
            description = "the diaries; without it, those of an archive, seen from its folder")
    private String files;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        if (!Query.ENGINES.contains(engine)) {
            throw Stopped.usage(
                    "--engine " + engine + " is not known; right would be one of " + String.join(", ", Query.ENGINES));
        }
        Pages.print(spec, Query.text(engine, files));
        return Exit.FINE;
    }
}
