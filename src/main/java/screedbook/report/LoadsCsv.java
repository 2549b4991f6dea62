package screedbook.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import screedbook.entry.Readings;
import screedbook.tally.MixSum;

/** Loads, weights and mix temperatures by job, day and mix as comma-separated values. */
public final class LoadsCsv {
    /** The heads of the columns; the shipped queries give the same. */
    public static final List<String> HEADS = List.of(
            "job",
            "day",
            "mix",
            "units",
            "loads",
            "received",
            "placed",
            "paver_readings",
            "paver_least",
            "paver_mean",
            "paver_most",
            "plant_readings",
            "plant_least",
            "plant_mean",
            "plant_most");

    private LoadsCsv() {}

    public static String head() {
        Cells cells = new Cells();
        HEADS.forEach(cells::text);
        return cells.end().lines();
    }

    /** One mix of one day. */
    public static String row(String job, LocalDate day, MixSum sum) {
        Cells cells = new Cells()
                .text(job)
                .date(day)
                .text(sum.mix())
                .text(sum.system().name().toLowerCase(Locale.ROOT))
                .number(sum.loads())
                .number(sum.received())
                .number(sum.placed());
        heat(cells, sum.paver());
        heat(cells, sum.plant());
        return cells.end().lines();
    }

    private static void heat(Cells cells, Readings heat) {
        BigDecimal mean = heat.mean();
        cells.number(heat.count()).number(heat.least()).number(mean).number(heat.most());
    }
}
