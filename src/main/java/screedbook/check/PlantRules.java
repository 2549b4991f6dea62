package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.tally.ListMatch;
import screedbook.tally.ListPair;
import screedbook.tally.Load;
import screedbook.tally.PlantCount;
import screedbook.unit.Amount;

/** Rules that hold what a plant says beside the record: its total and its own list. */
final class PlantRules {
    private static final String LIST = "plant's list, a second source";
    private static final int SHOWN = 5;

    static final List<Rule> ALL = List.of(
            new Rule(
                    "plant-total",
                    Sort.DOES_NOT_ADD_UP,
                    "The plant's loads and tons of a mix are those kept here.",
                    PlantRules::totals),
            new Rule(
                    "list-not-there",
                    Sort.MISSING,
                    "The copy of a plant's list is there as it came.",
                    PlantRules::notThere),
            new Rule("list-not-read", Sort.LOOK_AGAIN, "Every row of a plant's list is read.", PlantRules::notRead),
            new Rule(
                    "list-clock",
                    Sort.LOOK_AGAIN,
                    "A plant's list and its tickets go by one clock.",
                    PlantRules::clock),
            new Rule("list-number-again", Sort.LOOK_AGAIN, "A plant's list has each number once.", PlantRules::again),
            new Rule(
                    "list-of-other-hours",
                    Sort.LOOK_AGAIN,
                    "A plant's list is of the hours of this shift.",
                    PlantRules::otherHours),
            new Rule(
                    "list-load-not-here",
                    Sort.MISSING,
                    "Each load of a plant's list has its ticket here.",
                    PlantRules::loadNotHere),
            new Rule(
                    "list-load-not-there",
                    Sort.MISSING,
                    "Each load that came stands in the plant's list.",
                    PlantRules::loadNotThere),
            new Rule(
                    "list-number",
                    Sort.LOOK_AGAIN,
                    "A load has the number here that it has in the plant's list.",
                    PlantRules::number),
            new Rule(
                    "list-differs",
                    Sort.DOES_NOT_ADD_UP,
                    "A ticket says what the plant's list says of it.",
                    PlantRules::differs));

    private PlantRules() {}

    static String plant(String plant) {
        return plant == null ? "the plant" : plant;
    }

    private static List<Mark> totals(Look look) {
        List<Mark> marks = new ArrayList<>();
        List<PlantCount> counts = look.plantCounts();
        for (PlantCount count : counts) {
            if (!count.same()) {
                PlantCauses causes = PlantCauses.of(look, count, counts);
                List<Ref> of = new ArrayList<>(List.of(count.told().ref()));
                causes.of().stream().filter(r -> !of.contains(r)).forEach(of::add);
                marks.add(new Mark(
                        null,
                        of,
                        count.name() + " until " + Look.clock(count.told().order()) + ": the plant "
                                + told(
                                        count.told().entry().loads(),
                                        count.told().entry().tons()) + ", here "
                                + told(count.mine().size(), count.tons()),
                        "the plant's total and the tickets here come to the same",
                        "common practice",
                        told(count.mine().size(), count.tons()),
                        causes.text()));
            }
        }
        return marks;
    }

    private static String told(Integer loads, Amount tons) {
        String l = loads == null ? "" : Look.loads(loads);
        return tons == null ? l : (l.isEmpty() ? "" : l + " ") + tons.text();
    }

    private static List<Mark> notThere(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<PlantList> each : ListMatch.newest(look.day())) {
            PlantRows rows = look.day().lists().get(each.ref());
            if (rows != null && !rows.gone().isEmpty()) {
                marks.add(new Mark(
                        each.ref(),
                        "list " + rows.file() + " of " + plant(rows.plant()) + ": " + rows.gone(),
                        "the copy under plant/ is as it came",
                        "record, format 1",
                        "a file with the hash that the line names"));
            }
        }
        return marks;
    }

    private static List<Mark> notRead(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            List<String> said = match.rows().troubles();
            if (!said.isEmpty()) {
                marks.add(new Mark(
                                match.list().ref(),
                                said.size() + (said.size() == 1 ? " place" : " places") + " of "
                                        + match.rows().file() + " not read: " + first(said),
                                "every row below the heading is a load",
                                LIST,
                                "a row with number, truck and net under their columns")
                        .because(String.join("; ", said)));
            }
        }
        return marks;
    }

    private static String first(List<String> said) {
        return String.join("; ", said.subList(0, Math.min(SHOWN, said.size())))
                + (said.size() > SHOWN ? " and " + (said.size() - SHOWN) + " more" : "");
    }

    private static List<Mark> clock(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            if (match.clock() != 0) {
                marks.add(new Mark(
                        match.list().ref(),
                        "the hours of " + plant(match.rows().plant()) + "'s list lie " + Math.abs(match.clock())
                                + " min " + (match.clock() > 0 ? "behind" : "before") + " those of most tickets",
                        "list and tickets go by one clock",
                        LIST,
                        "the same hours; each is held against its ticket less these minutes"));
            }
        }
        return marks;
    }

    private static List<Mark> again(Look look) {
        return grouped(look, ListMatch::again, "numbers that %s's list has once more: %d; ", "each number stands once");
    }

    private static List<Mark> otherHours(Look look) {
        return grouped(
                look,
                ListMatch::outside,
                "loaded before this shift began or after it was closed, in %s's list: %d; ",
                "the list is of the hours of this shift");
    }

    private static List<Mark> grouped(
            Look look, Function<ListMatch, List<PlantRows.Row>> rows, String said, String limit) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            List<PlantRows.Row> of = rows.apply(match);
            if (!of.isEmpty()) {
                List<String> each = of.stream().map(PlantRules::row).toList();
                marks.add(new Mark(
                                match.list().ref(),
                                String.format(said, plant(match.rows().plant()), of.size()) + first(each),
                                limit,
                                LIST,
                                "no such row")
                        .because(String.join("; ", each)));
            }
        }
        return marks;
    }

    /** Rows that follow each other are told together, at the ticket that the list has before or behind them. */
    private static List<Mark> loadNotHere(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            ListLoads.runs(match).forEach(run -> marks.add(notHere(look, match, run)));
        }
        return marks;
    }

    private static Mark notHere(Look look, ListMatch match, ListLoads.Run told) {
        List<PlantRows.Row> run = told.rows();
        List<String> rows = run.stream()
                .map(row -> row(row)
                        + ListMatch.said(look.day(), match, row)
                                .filter(n -> n.what() != null)
                                .map(n -> ", said here to be " + n.what().word().replace('-', ' '))
                                .orElse(""))
                .toList();
        String count = run.size() == 1 ? "a load" : run.size() + " loads";
        return new Mark(
                        told.of(),
                        count + " of " + plant(match.rows().plant()) + "'s list " + (run.size() == 1 ? "is" : "are")
                                + " not here: " + first(rows),
                        "each load of the plant's list has its ticket here",
                        LIST,
                        run.size() == 1 ? "ticket " + run.get(0).number() : run.size() + " tickets")
                .because(String.join("; ", rows));
    }

    static String row(PlantRows.Row row) {
        return "line " + row.line() + ", ticket " + row.number()
                + (row.truck() == null ? "" : ", truck " + row.truck())
                + (row.net() == null ? "" : ", " + AmountText.text(row.net()))
                + (row.hour() == null ? "" : ", loaded " + row.hour());
    }

    private static List<Mark> loadNotThere(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            for (Load load : match.notThere()) {
                Amount net = load.ticket().entry().weights().net();
                String truck = load.ticket().entry().paper().truck();
                marks.add(new Mark(
                        List.of(load.ticket().ref(), match.list().ref()),
                        Look.name(load.ticket())
                                + (truck == null ? "" : ", truck " + truck)
                                + (net == null ? "" : ", " + net.text()) + " is not in "
                                + plant(match.rows().plant()) + "'s list",
                        "each load that came stands in the plant's list",
                        LIST,
                        "a row with its number"));
            }
        }
        return marks;
    }

    private static List<Mark> number(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            for (ListPair pair : match.pairs()) {
                if (!pair.byNumber()) {
                    marks.add(new Mark(
                            List.of(pair.ticket().ref(), match.list().ref()),
                            pair.apart().get(0).said() + ": " + row(pair.row()),
                            "a load has one number here and in the plant's list",
                            LIST,
                            "number " + pair.row().number()));
                }
            }
        }
        return marks;
    }

    private static List<Mark> differs(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (ListMatch match : look.lists()) {
            for (ListPair pair : match.pairs()) {
                List<String> said = pair.apart().stream()
                        .filter(a -> a.what() != ListPair.What.NUMBER)
                        .map(ListPair.Apart::said)
                        .toList();
                if (!said.isEmpty()) {
                    marks.add(new Mark(
                                    List.of(pair.ticket().ref(), match.list().ref()),
                                    Look.name(pair.ticket()) + ": " + String.join("; ", said),
                                    "ticket and list say the same",
                                    LIST,
                                    "what the paper says, in both")
                            .because("List " + match.rows().file() + " line "
                                    + pair.row().line() + "." + PlantCauses.turned(pair)));
                }
            }
        }
        return marks;
    }
}
