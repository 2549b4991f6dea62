package screedbook.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.report.DayPaper;
import screedbook.report.FindingsJson;
import screedbook.report.FindingsPage;

/** {@code screedbook findings}: what a reader of a shift should see. */
@Command(name = "findings", description = "list the findings of a shift with their answers")
final class FindingsCommand implements Callable<Integer> {
    static final Map<String, Function<DayPaper, String>> FORMS = new LinkedHashMap<>();

    static {
        FORMS.put("text", FindingsPage::text);
        FORMS.put("json", FindingsJson::text);
    }

    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Mixin
    private ShiftWord shift;

    @Mixin
    private CopyWord copy;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "text (80 columns; the usual) or json")
    private String format;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        Pages.shift(spec, job, shift, copy, all.clock(), Pages.form(format, FORMS));
        return Exit.FINE;
    }
}
