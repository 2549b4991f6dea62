package screedbook.report;

import java.math.BigDecimal;
import java.util.List;
import screedbook.entry.Damage;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** A season as comma-separated values, one figure a line; what could not be read stands among them. */
public final class SeasonCsv {
    /** The heads of the columns. */
    public static final List<String> HEADS = List.of(
            "part",
            "of",
            "job",
            "from_date",
            "to_date",
            "shifts",
            "section",
            "figure",
            "label",
            "shown",
            "value",
            "unit");

    private SeasonCsv() {}

    public static String head() {
        Cells cells = new Cells();
        HEADS.forEach(cells::text);
        return cells.end().lines();
    }

    /** The lines of one part. */
    public static String rows(SeasonPart part) {
        Cells cells = new Cells();
        for (Section section : part.sections()) {
            for (Figure figure : section.figures()) {
                begin(cells, part.by(), part.of(), part.job())
                        .date(part.from())
                        .date(part.to())
                        .number(part.shifts())
                        .text(section.id())
                        .text(figure.id())
                        .text(figure.label())
                        .text(figure.text())
                        .number(figure.value())
                        .text(figure.unit())
                        .end();
            }
        }
        return cells.lines();
    }

    /** What is not as it was written and what is in no total. */
    public static String record(SeasonJob job) {
        Cells cells = new Cells();
        for (Damage damage : job.damages()) {
            told(
                    cells,
                    job.id(),
                    "damage",
                    damage.file() + (damage.row() == 0 ? "" : ":" + damage.row()),
                    damage.said());
        }
        job.notRead().forEach(each -> told(cells, job.id(), "not-read", each, each));
        return cells.lines();
    }

    private static void told(Cells cells, String job, String figure, String of, String said) {
        begin(cells, "record", of, job)
                .date(null)
                .date(null)
                .number((BigDecimal) null)
                .text("record")
                .text(figure)
                .text(said)
                .text(said)
                .number((BigDecimal) null)
                .text("")
                .end();
    }

    private static Cells begin(Cells cells, String by, String of, String job) {
        return cells.text(by).text(of).text(job);
    }
}
