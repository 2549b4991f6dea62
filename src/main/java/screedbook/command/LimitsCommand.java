package screedbook.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import screedbook.check.InCase;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.report.LimitsJson;
import screedbook.report.LimitsPage;
import screedbook.shelf.Shelf;
import screedbook.spec.SpecSheet;

/** {@code screedbook limits}: what limits a mix on a lift at an hour, with its clauses. */
@Command(name = "limits", description = "print the limits in force for the mixes and lifts of a job, with clauses")
final class LimitsCommand implements Callable<Integer> {
    private static final DateTimeFormatter AT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm").withResolverStyle(ResolverStyle.STRICT);
    static final Map<String, Function<Said, String>> FORMS = new LinkedHashMap<>();

    static {
        FORMS.put("text", said -> LimitsPage.text(said.job(), said.sheet(), said.cases()));
        FORMS.put("json", said -> LimitsJson.text(said.job(), said.sheet(), said.cases()));
    }

    /** What is to be printed. */
    record Said(Job job, SpecSheet sheet, List<InCase> cases) {}

    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Option(names = "--mix", paramLabel = "MIX", description = "only this mix; without it, every one of the job")
    private String mix;

    @Option(names = "--lift", paramLabel = "NUMBER", description = "only this lift; without it, every one of the job")
    private Integer lift;

    @Option(
            names = "--at",
            paramLabel = "\"DATE HOUR\"",
            description = "such as \"2026-06-03 21:30\", by the job's zone; without it, day and night")
    private String at;

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
        Function<Said, String> form = Pages.form(format, FORMS);
        LocalDateTime hour = hour();
        Shelf shelf = job.shelf();
        Job agreed = PlannedJob.read(spec, shelf);
        SpecSheet sheet = PlannedJob.sheet(spec, shelf, agreed.sheet());
        known(agreed);
        Pages.print(spec, form.apply(new Said(agreed, sheet, InCase.of(agreed, sheet, mix, lift, hour))));
        return Exit.FINE;
    }

    private LocalDateTime hour() throws Stopped {
        try {
            return at == null ? null : LocalDateTime.parse(at.strip().replace('T', ' '), AT);
        } catch (DateTimeParseException e) {
            throw Stopped.usage("--at " + at + " is no date and hour; right would be \"2026-06-03 21:30\"");
        }
    }

    private void known(Job agreed) throws Stopped {
        if (mix != null && agreed.mix(mix).isEmpty()) {
            throw Stopped.usage("--mix " + mix + " is not in the job; it has "
                    + String.join(", ", agreed.mixes().stream().map(Mix::name).toList()));
        }
        if (lift != null && agreed.lift(lift).isEmpty()) {
            throw Stopped.usage("--lift " + lift + " is not in the job; it has "
                    + String.join(
                            ", ",
                            agreed.lifts().stream()
                                    .map(each -> each.number().toString())
                                    .toList()));
        }
    }
}
