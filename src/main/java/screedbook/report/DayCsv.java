package screedbook.report;

import java.util.List;
import java.util.stream.Collectors;
import screedbook.entry.Ref;
import screedbook.tally.Figure;
import screedbook.tally.Section;

/** The figures of a shift's page as comma-separated values, one figure a line with its working. */
public final class DayCsv {
    private DayCsv() {}

    /** One shift. */
    public static String text(DayPaper paper) {
        return text(List.of(paper));
    }

    /** Several shifts under one head, for a job's totals. */
    public static String text(List<DayPaper> papers) {
        Cells cells = new Cells();
        List.of("shift", "section", "figure", "label", "shown", "value", "unit", "formula", "entries", "source")
                .forEach(cells::text);
        cells.end();
        for (DayPaper paper : papers) {
            for (Section section : paper.totals().sections()) {
                section.figures().forEach(f -> row(cells, paper, section, f));
            }
        }
        return cells.lines();
    }

    private static void row(Cells cells, DayPaper paper, Section section, Figure figure) {
        cells.text(paper.day().shift().toString())
                .text(section.id())
                .text(figure.id())
                .text(figure.label())
                .text(figure.text())
                .number(figure.value())
                .text(figure.unit())
                .text(figure.working().formula())
                .text(figure.working().entries().stream().map(Ref::toString).collect(Collectors.joining(" ")))
                .text(figure.working().source())
                .end();
    }
}
