package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import screedbook.entry.Day;
import screedbook.entry.Moment;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The section that holds what the plants say beside what is kept here. */
final class PlantSection {
    private static final String TOLD = "the plant's total as told, and the tickets as printed";
    private static final String LIST = "the plant's own list, a second source, and the tickets as printed";

    private final Figures figures = new Figures();

    private PlantSection() {}

    static Section of(Day day, Job job, List<Load> loads) {
        PlantSection section = new PlantSection();
        Unit unit = Measure.LOAD.unit(job.system());
        PlantCount.all(day, loads, unit).forEach(section::count);
        ListMatch.all(day, job).forEach(section::list);
        return section.figures.section("plant", "Held against the plant");
    }

    private void count(PlantCount count) {
        String of = "." + count.name();
        String until = " until " + Moment.clock(count.told().order());
        List<Ref> entries = new ArrayList<>(List.of(count.told().ref()));
        List<String> put = new ArrayList<>();
        for (Load load : count.mine()) {
            entries.add(load.ticket().ref());
            put.add(load.put() + " " + load.received().text());
        }
        Integer loads = count.told().entry().loads();
        Amount tons = count.told().entry().tons();
        if (loads != null) {
            figures.count(
                    "plant-loads" + of, count.name() + " loads, the plant" + until, loads, working("as told", entries));
            figures.count(
                    "plant-loads-here" + of,
                    count.name() + " loads, here" + until,
                    count.mine().size(),
                    Figures.working("loads counted one by one", put, entries, TOLD));
            figures.count(
                    "plant-loads-difference" + of,
                    count.name() + " loads, difference",
                    count.loadsApart(),
                    working("the plant's less those here", entries));
        }
        if (tons != null) {
            figures.amount(
                    "plant-tons" + of, count.name() + " tons, the plant" + until, tons, 2, working("as told", entries));
            figures.amount(
                    "plant-tons-here" + of,
                    count.name() + " tons, here" + until,
                    count.tons(),
                    2,
                    Figures.working("sum of net as printed", put, entries, TOLD));
            if (count.tonsApart() != null) {
                figures.amount(
                        "plant-tons-difference" + of,
                        count.name() + " tons, difference",
                        count.tonsApart(),
                        2,
                        working("the plant's less those here", entries));
            }
        }
    }

    private static Working working(String formula, List<Ref> entries) {
        return Figures.working(formula, List.of(), entries, TOLD);
    }

    private void list(ListMatch match) {
        String plant = Objects.requireNonNullElse(match.rows().plant(), "plant not noted");
        List<Ref> entries = new ArrayList<>(List.of(match.list().ref()));
        List<String> put = new ArrayList<>(List.of("list " + match.rows().file()));
        for (ListPair pair : match.pairs()) {
            if (!pair.apart().isEmpty()) {
                entries.add(pair.ticket().ref());
                put.add("different: line " + pair.row().line() + ", "
                        + pair.load().put() + ": "
                        + String.join(
                                "; ",
                                pair.apart().stream().map(ListPair.Apart::said).toList()));
            }
        }
        match.notHere().forEach(row -> put.add("missing here: " + row(row)));
        match.notThere().forEach(load -> {
            entries.add(load.ticket().ref());
            put.add("missing there: " + load.put() + " " + load.received().text());
        });
        match.outside().forEach(row -> put.add("of other hours: " + row(row)));
        match.again().forEach(row -> put.add("twice in the list: " + row(row)));
        match.rows().troubles().forEach(said -> put.add("not read: " + said));
        Working working = Figures.working(
                "by number; where that is not the same, by truck, net and hour of loading", put, entries, LIST);
        figures.text("plant-list." + plant, plant + "'s list", match.text(), working);
        figures.count("plant-list-matched." + plant, plant + "'s list, matched", match.matched(), working);
        figures.count(
                "plant-list-not-here." + plant,
                plant + "'s list, missing here",
                match.notHere().size(),
                working);
        figures.count(
                "plant-list-not-there." + plant,
                plant + "'s list, missing there",
                match.notThere().size(),
                working);
        figures.count("plant-list-different." + plant, plant + "'s list, different", match.different(), working);
    }

    /** {@code line 17, ticket 48217, truck T104, 21.96 T, loaded 21:02}. */
    private static String row(PlantRows.Row row) {
        return "line " + row.line() + ", ticket " + row.number() + (row.truck() == null ? "" : ", truck " + row.truck())
                + (row.net() == null ? "" : ", " + row.net().text())
                + (row.hour() == null ? "" : ", loaded " + row.hour());
    }
}
