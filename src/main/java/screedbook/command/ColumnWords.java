package screedbook.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import screedbook.entry.ListColumns;
import screedbook.entry.Word;

/** How a plant's list is read, as it is typed: the heading of each column, the unit and the order of dates. */
final class ColumnWords {
    @Option(names = "--number", paramLabel = "COLUMN", description = "heading of the column with the ticket number")
    private String number;

    @Option(names = "--truck", paramLabel = "COLUMN", description = "... with the truck")
    private String truck;

    @Option(names = "--net", paramLabel = "COLUMN", description = "... with the net weight")
    private String net;

    @Option(names = "--loaded", paramLabel = "COLUMN", description = "... with the hour, or date and hour, of loading")
    private String loaded;

    @Option(names = "--date", paramLabel = "COLUMN", description = "... with the date, where it has one of its own")
    private String date;

    @Option(names = "--mix", paramLabel = "COLUMN", description = "... with the mix")
    private String mix;

    @Option(
            names = "--weights",
            paramLabel = "UNIT",
            description = "what it weighs in: tons (of 2,000 lb), lb, tonnes or kg")
    private String weights;

    @Option(names = "--dates", paramLabel = "ORDER", description = "how it writes dates: ymd, mdy or dmy")
    private String dates;

    /**
     * What was typed, and for the rest what the job says.
     *
     * @throws Stopped when a word is none of those that may stand there
     */
    ListColumns over(ListColumns job) throws Stopped {
        return new ListColumns(
                or(number, job.numberColumn()),
                or(truck, job.truckColumn()),
                or(net, job.netColumn()),
                or(loaded, job.loadedColumn()),
                or(date, job.dateColumn()),
                or(mix, job.mixColumn()),
                word("--weights", weights, ListColumns.Weights.values(), job.weights()),
                word("--dates", dates, ListColumns.Dates.values(), job.dates()));
    }

    private static String or(String typed, String job) {
        return typed == null ? job : typed;
    }

    private static <W extends Word> W word(String option, String typed, W[] words, W job) throws Stopped {
        if (typed == null) {
            return job;
        }
        List<String> all = new ArrayList<>();
        for (W each : words) {
            if (each.word().equals(typed)) {
                return each;
            }
            all.add(each.word());
        }
        throw Stopped.usage(option + " " + typed + " is not known; right would be one of " + String.join(", ", all));
    }

    /** The options that would say these columns, to be typed as they stand. */
    static String options(ListColumns columns) {
        Map<String, String> options = new LinkedHashMap<>();
        options.put("--number", columns.numberColumn());
        options.put("--truck", columns.truckColumn());
        options.put("--net", columns.netColumn());
        options.put(
                "--weights",
                columns.weights() == null ? null : columns.weights().word());
        options.put("--loaded", columns.loadedColumn());
        options.put("--date", columns.dateColumn());
        options.put("--dates", columns.dates() == null ? null : columns.dates().word());
        options.put("--mix", columns.mixColumn());
        List<String> said = new ArrayList<>();
        options.forEach((option, value) -> {
            if (value != null) {
                said.add(option + " "
                        + (value.matches("[A-Za-z0-9_.-]+") ? value : "'" + value.replace("'", "'\\''") + "'"));
            }
        });
        return String.join(" ", said);
    }
}
