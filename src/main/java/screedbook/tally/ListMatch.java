package screedbook.tally;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.entry.Closing;
import screedbook.entry.Day;
import screedbook.entry.Number;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.unit.Measure;

/**
 * A plant's own list laid beside the tickets of a shift: by number, and where that is not read or not the same, by
 * truck, weight and hour.
 *
 * @param pairs rows with their tickets, in the order of the list
 * @param notHere rows of the shift of which there is no ticket here
 * @param notThere tickets that came and of which the list has no row
 * @param outside rows that were loaded before the shift was opened or after it was closed
 * @param again rows whose number the list has once more
 * @param clock minutes by which the list's hours lie behind (or, below 0, before) those here on more than half of the
 *     loads; 0 where there is no such difference, and then each hour is held against its ticket's
 * @param mixes the job's names for the mixes of the rows that are not here
 */
public record ListMatch(
        Standing<PlantList> list,
        PlantRows rows,
        List<ListPair> pairs,
        List<PlantRows.Row> notHere,
        List<Load> notThere,
        List<PlantRows.Row> outside,
        List<PlantRows.Row> again,
        long clock,
        Map<PlantRows.Row, String> mixes) {

    /** The newest list of each plant that can be compared, in the order in which they were brought. */
    public static List<ListMatch> all(Day day, Job job) {
        if (day.lists().isEmpty()) {
            return List.of();
        }
        List<Load> loads = Loads.of(day, Measure.LOAD.unit(job.system())).loads();
        List<ListMatch> matches = new ArrayList<>();
        for (Standing<PlantList> each : newest(day)) {
            PlantRows rows = day.lists().get(each.ref());
            if (rows != null && rows.gone().isEmpty()) {
                matches.add(new Laying(day, job, each, rows, loads).match());
            }
        }
        return List.copyOf(matches);
    }

    /** The newest list line of each plant that counts. */
    public static List<Standing<PlantList>> newest(Day day) {
        Map<String, Standing<PlantList>> newest = new LinkedHashMap<>();
        for (Standing<PlantList> each : day.every(PlantList.class)) {
            if (!each.struck()) {
                newest.put(String.valueOf(each.entry().plant()), each);
            }
        }
        return List.copyOf(newest.values());
    }

    /** The job's name for the mix of a row that is not here; null where it is not known. */
    public String meant(PlantRows.Row row) {
        return mixes.get(row);
    }

    /** Pairs that agree in all that both say. */
    public int matched() {
        return (int) pairs.stream().filter(p -> p.apart().isEmpty()).count();
    }

    /** Pairs that do not. */
    public int different() {
        return pairs.size() - matched();
    }

    /** {@code 118 matched, 1 missing here, 1 missing there, 1 different}. */
    public String text() {
        return matched() + " matched, " + notHere.size() + " missing here, " + notThere.size() + " missing there, "
                + different() + " different"
                + (outside.isEmpty() ? "" : ", " + outside.size() + " of other hours")
                + (again.isEmpty() ? "" : ", " + again.size() + " twice in the list");
    }

    /** What was said here of a number that did not come. */
    public static Optional<Number> said(Day day, ListMatch match, PlantRows.Row row) {
        return day.standing(Number.class).stream()
                .map(Standing::entry)
                .filter(n ->
                        n.number() != null && ListPair.bareNumber(n.number()).equals(ListPair.bareNumber(row.number())))
                .filter(n -> n.plant() == null
                        || match.rows().plant() == null
                        || n.plant().equals(match.rows().plant()))
                .reduce((first, second) -> second);
    }

    /** One list being laid beside the tickets. */
    private static final class Laying {
        private final Day day;
        private final Job job;
        private final Standing<PlantList> list;
        private final PlantRows rows;
        private final List<Load> loads;
        private final Map<PlantRows.Row, Load> byNumber = new LinkedHashMap<>();
        private final Map<PlantRows.Row, Load> offered = new LinkedHashMap<>();
        private final Set<PlantRows.Row> again = new LinkedHashSet<>();
        private final Set<Load> free = new LinkedHashSet<>();
        private long clock;

        Laying(Day day, Job job, Standing<PlantList> list, PlantRows rows, List<Load> loads) {
            this.day = day;
            this.job = job;
            this.list = list;
            this.rows = rows;
            this.loads = loads.stream().filter(this::ofPlant).toList();
        }

        /** A load of which no plant was noted may be of this one. */
        private boolean ofPlant(Load load) {
            String plant = load.ticket().entry().paper().plant();
            return plant == null || rows.plant() == null || plant.equalsIgnoreCase(rows.plant());
        }

        ListMatch match() {
            free.addAll(loads);
            pairByNumber();
            clock = clock();
            offer();
            ListMixes mixes = ListMixes.of(
                    job,
                    byNumber.entrySet().stream()
                            .map(e ->
                                    Map.entry(e.getKey(), e.getValue().ticket().entry()))
                            .toList());
            List<ListPair> pairs = new ArrayList<>();
            List<PlantRows.Row> notHere = new ArrayList<>();
            List<PlantRows.Row> outside = new ArrayList<>();
            for (PlantRows.Row row : rows.rows()) {
                if (byNumber.containsKey(row)) {
                    pairs.add(ListPair.of(row, byNumber.get(row), mixes, clock, true));
                } else if (offered.containsKey(row)) {
                    pairs.add(ListPair.of(row, offered.get(row), mixes, clock, false));
                } else if (!again.contains(row)) {
                    (inShift(row) ? notHere : outside).add(row);
                }
            }
            return new ListMatch(
                    list,
                    rows,
                    List.copyOf(pairs),
                    List.copyOf(notHere),
                    free.stream().filter(Load::came).toList(),
                    List.copyOf(outside),
                    List.copyOf(again),
                    clock,
                    meant(mixes, notHere));
        }

        private static Map<PlantRows.Row, String> meant(ListMixes mixes, List<PlantRows.Row> rows) {
            Map<PlantRows.Row, String> meant = new LinkedHashMap<>();
            rows.forEach(row -> mixes.known(row).ifPresent(mix -> meant.put(row, mix)));
            return meant;
        }

        private long clock() {
            List<Long> minutes = byNumber.entrySet().stream()
                    .map(e -> ListPair.minutes(e.getKey(), e.getValue().ticket().entry()))
                    .flatMap(Optional::stream)
                    .sorted()
                    .toList();
            long middle = minutes.isEmpty() ? 0 : minutes.get(minutes.size() / 2);
            long near = minutes.stream().filter(m -> Math.abs(m - middle) <= 1).count();
            return Math.abs(middle) > 1 && minutes.size() > 2 && 2 * near > minutes.size() ? middle : 0;
        }

        private void pairByNumber() {
            Map<String, List<PlantRows.Row>> numbered = rows.rows().stream()
                    .collect(Collectors.groupingBy(
                            r -> ListPair.bareNumber(r.number()), LinkedHashMap::new, Collectors.toList()));
            Map<String, Load> mine = new LinkedHashMap<>();
            for (Load load : loads) {
                String number = load.ticket().entry().paper().number();
                if (number != null) {
                    mine.merge(ListPair.bareNumber(number), load, (a, b) -> a.came() ? a : b);
                }
            }
            numbered.forEach((number, same) -> {
                Load load = mine.get(number);
                PlantRows.Row best = load == null ? same.get(0) : best(same, load);
                same.stream().filter(r -> r != best).forEach(again::add);
                if (load != null) {
                    byNumber.put(best, load);
                    free.remove(load);
                }
            });
        }

        private static PlantRows.Row best(List<PlantRows.Row> same, Load load) {
            return same.stream()
                    .filter(r -> weighs(r, load.ticket().entry()))
                    .findFirst()
                    .orElse(same.get(0));
        }

        private static boolean weighs(PlantRows.Row row, Ticket ticket) {
            return row.net() != null
                    && ticket.weights().net() != null
                    && ListPair.sameNet(row.net(), ticket.weights().net());
        }

        /** Where one row alone fits a ticket, and the ticket alone fits the row. */
        private void offer() {
            List<PlantRows.Row> left = rows.rows().stream()
                    .filter(r -> !byNumber.containsKey(r) && !again.contains(r))
                    .toList();
            for (PlantRows.Row row : left) {
                List<Load> fit = free.stream().filter(l -> fits(row, l)).toList();
                if (fit.size() == 1
                        && left.stream().filter(r -> fits(r, fit.get(0))).count() == 1) {
                    offered.put(row, fit.get(0));
                }
            }
            free.removeAll(offered.values());
        }

        private boolean fits(PlantRows.Row row, Load load) {
            Ticket ticket = load.ticket().entry();
            String number = ticket.paper().number();
            boolean hour = ListPair.minutes(row, ticket)
                    .map(m -> Math.abs(m - clock) <= 1)
                    .orElse(true);
            if (!load.came() || !hour) {
                return false;
            }
            return number != null && number.contains("?")
                    ? ListPair.mayBe(number, row.number()) && (truck(row, ticket, true) || weighs(row, ticket))
                    : weighs(row, ticket) && truck(row, ticket, false);
        }

        private static boolean truck(PlantRows.Row row, Ticket ticket, boolean unsaid) {
            String mine = ticket.paper().truck();
            return row.truck() == null || mine == null ? unsaid : ListPair.sameTruck(row.truck(), mine);
        }

        /** Loaded while the shift was open, or before it for the first load of it; also where the list does not say. */
        private boolean inShift(PlantRows.Row row) {
            if (row.date() == null || row.hour() == null) {
                return true;
            }
            LocalDateTime loaded = row.date().atTime(row.hour());
            Optional<LocalDateTime> begun = day.opening()
                    .map(o -> local(o.order()))
                    .map(open -> loads.stream()
                            .map(l -> l.ticket().entry().times().loaded())
                            .filter(Objects::nonNull)
                            .map(this::local)
                            .filter(t -> t.isBefore(open))
                            .min(LocalDateTime::compareTo)
                            .orElse(open));
            Optional<LocalDateTime> closed = !day.closed()
                    ? Optional.empty()
                    : day.every(Closing.class).stream()
                            .map(c -> local(c.line().keyed()))
                            .findFirst();
            return begun.map(b -> !loaded.isBefore(b.withSecond(0).withNano(0))).orElse(true)
                    && closed.map(c -> !loaded.isAfter(c)).orElse(true);
        }

        private LocalDateTime local(OffsetDateTime time) {
            return time.atZoneSameInstant(job.zone()).toLocalDateTime();
        }
    }
}
