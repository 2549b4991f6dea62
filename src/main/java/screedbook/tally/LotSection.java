package screedbook.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.job.Lots;

/**
 * The section of lots. It stands where the job says how random places are found, or something was sampled; only those
 * lots are told that this shift added to.
 */
final class LotSection {
    private static final String LOTS = "the job's lots; placed tons as in the tickets";

    private final Day day;
    private final Job job;
    private final Samples samples;

    LotSection(Day day, Job job, Samples samples) {
        this.day = day;
        this.job = job;
        this.samples = samples;
    }

    private List<Ref> refs(List<Lot.Piece> pieces) {
        return pieces.stream()
                .filter(p -> p.load().shift().equals(day.shift()))
                .map(p -> p.load().ticket())
                .distinct()
                .toList();
    }

    Section section() {
        Figures figures = new Figures();
        boolean told = job.lots() != null && (job.lots().randomBy() != null || !samples.nothing());
        if (told) {
            Map<String, Filling.Where> touched = samples.touched();
            Map<String, Lot> lots = new TreeMap<>();
            samples.filling().lots(day.shift()).forEach(l -> lots.put(l.name(), l));
            touched.values().stream()
                    .flatMap(w -> samples.filling().lot(w.mix(), w.lot()).stream())
                    .forEach(l -> lots.put(l.name(), l));
            lots.values().stream()
                    .sorted(Comparator.comparing(Lot::mix).thenComparing(Lot::number))
                    .forEach(l -> lot(figures, l));
        }
        return figures.section("lots", "Lots");
    }

    private void lot(Figures figures, Lot lot) {
        String id = "." + lot.mix() + "." + lot.number();
        String state = lot.full() ? ", full" : lot.over() ? ", closed out" : "";
        figures.add(
                "lot-tons" + id,
                lot.name(),
                lot.tons().text() + " of " + lot.size().text() + state + "; " + Lot.loads(lot.pieces()),
                lot.tons().value(),
                lot.tons().unit().suffix(),
                new Working(
                        "sum of the sublots",
                        lot.sublots().stream()
                                .map(s ->
                                        "sublot " + s.number() + ": " + s.tons().text())
                                .toList(),
                        refs(lot.pieces()),
                        LOTS));
        for (Lot.Sublot sublot : lot.sublots()) {
            boolean full = sublot.tons().compareTo(sublot.size()) >= 0;
            String open = full ? "" : sublot.over() ? ", no more comes" : ", open";
            String cut = job.lots().ends() == Lots.End.NEAREST_TICKET
                    ? "whole loads; the one in which the sublot ends lies where the greater part of it does"
                    : "loads, and of the one in which the sublot ends what lies before its last ton";
            figures.add(
                    "sublot-tons" + id + "." + sublot.number(),
                    lot.name() + ", sublot " + sublot.number(),
                    sublot.tons().text() + " of " + sublot.size().text() + open + "; " + sublot.loads()
                            + taken(lot, sublot),
                    sublot.tons().value(),
                    sublot.tons().unit().suffix(),
                    new Working(cut, new Lines<>(sublot.pieces(), Lot.Piece::put), refs(sublot.pieces()), LOTS));
        }
    }

    /** {@code ; samples S-12, 2 cores, 3 readings}. */
    private String taken(Lot lot, Lot.Sublot sublot) {
        Filling.Where where = new Filling.Where(lot.mix(), lot.number(), sublot.number());
        List<String> said = new ArrayList<>();
        List<String> numbers = samples.all().stream()
                .filter(t -> t.where().filter(where::equals).isPresent())
                .map(Taken::number)
                .toList();
        if (!numbers.isEmpty()) {
            said.add((numbers.size() == 1 ? "sample " : "samples ") + String.join(", ", numbers));
        }
        count(said, where, Density.By.CORE, "core");
        count(said, where, Density.By.GAUGE, "reading");
        if (job.lots().randomBy() != null) {
            int due = job.lots().draws() == null ? 1 : job.lots().draws();
            said.add(samples.atRandom(where) + " at random, " + due + " asked for");
        }
        return said.isEmpty() ? "" : "; " + String.join(", ", said);
    }

    private void count(List<String> said, Filling.Where where, Density.By by, String name) {
        Stream<Standing<?>> tested = samples.densities().all().stream()
                .filter(d -> d.by() == by && d.where().filter(where::equals).isPresent())
                .map(Density::of);
        Stream<Standing<?>> open = by == Density.By.GAUGE
                ? Stream.of()
                : samples.openCores().stream()
                        .filter(c -> samples.where(c).filter(where::equals).isPresent())
                        .map(c -> c);
        long count = Stream.concat(tested, open).distinct().count();
        if (count > 0) {
            said.add(count + " " + name + (count == 1 ? "" : "s"));
        }
    }
}
