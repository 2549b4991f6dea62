package screedbook.command;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import screedbook.diary.JobFolder;
import screedbook.entry.Kind;
import screedbook.entry.Seal;
import screedbook.shelf.KeptShift;

/** Shifts of the example job that comes with the program, for the commands to tell of. */
final class ExampleShifts {
    private ExampleShifts() {}

    /** Two closed shifts of the example job, with two tickets and with one. */
    static List<Seal> two(Path job) throws IOException {
        Seal first = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "20.10")
                .ticket("07:10", "48218", "21.05")
                .closed();
        Seal second = KeptShift.opened(JobFolder.at(job), "2026-06-04-night", "paver")
                .ticket("21:00", "48301", "20.55")
                .closed();
        return List.of(first, second);
    }

    /** One open shift with a load that came cold: 240 °F where the practice sheet has at least 270 for PG 70. */
    static void cold(Path job) throws IOException {
        try (KeptShift kept = KeptShift.opened(KeptShift.job(job), "2026-06-03-day", "paver")) {
            kept.key(
                    Kind.TICKET,
                    "07:00",
                    Map.of(
                            "plant", "Quarry Road",
                            "number", "48217",
                            "truck", "T104",
                            "mix", "12.5-70A",
                            "net_ston", new BigDecimal("20.10"),
                            "paver_degF", new BigDecimal("240"),
                            "pull", "A",
                            "lift", BigDecimal.valueOf(2)));
        }
    }
}
