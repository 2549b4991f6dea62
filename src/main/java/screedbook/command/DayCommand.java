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
import screedbook.report.DayCsv;
import screedbook.report.DayJson;
import screedbook.report.DayPage;
import screedbook.report.DayPaper;

/** {@code screedbook day}: the page of a shift. */
@Command(name = "day", description = "print the page of a shift")
final class DayCommand implements Callable<Integer> {
    static final Map<String, Function<DayPaper, String>> FORMS = new LinkedHashMap<>();

    static {
        FORMS.put("text", DayPage::text);
        FORMS.put("csv", DayCsv::text);
        FORMS.put("json", DayJson::text);
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
            description = "text (80 columns; the usual), csv (the figures) or json")
    private String format;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped {
        Pages.shift(spec, job, shift, copy, all.clock(), Pages.form(format, FORMS));
        return Exit.FINE;
    }
}
