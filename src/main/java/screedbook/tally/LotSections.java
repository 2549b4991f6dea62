package screedbook.tally;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.calc.PercentWithin;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The sections that tell of lots, densities and samples. They stand where the job says how random places are found, or
 * something was sampled; of lots, only those that this shift added to are told.
 */
final class LotSections {
    private static final String LOTS = "the job's lots; placed tons as in the tickets";
    private static final String TESTS = "WSDOT 1-06.2(2)D5, amendment of 2018-2019: s with n - 1";

    private final Day day;
    private final Job job;
    private final ToDate before;
    private final Samples samples;

    LotSections(Day day, Job job, ToDate before, Samples samples) {
        this.day = day;
        this.job = job;
        this.before = before;
        this.samples = samples;
    }

    private boolean here(Standing<?> each) {
        return each.line().shift().equals(day.shift());
    }

    private List<Ref> refs(List<Lot.Piece> pieces) {
        return pieces.stream()
                .filter(p -> p.load().shift().equals(day.shift()))
                .map(p -> p.load().ticket())
                .distinct()
                .toList();
    }

    Section lots() {
        Figures figures = new Figures();
        boolean told = job.lots() != null && (job.lots().randomBy() != null || !samples.nothing());
        if (told) {
            Map<String, Filling.Where> touched = touched();
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

    /** The lots of which something was sampled, cut or found in this shift. */
    private Map<String, Filling.Where> touched() {
        Map<String, Filling.Where> lots = new HashMap<>();
        Stream.concat(
                        samples.all().stream()
                                .filter(t ->
                                        here(t.sample()) || t.results().stream().anyMatch(this::here))
                                .flatMap(t -> t.where().stream()),
                        samples.densities().all().stream()
                                .filter(d -> here(d.of()) || here(d.from()))
                                .flatMap(d -> d.where().stream()))
                .forEach(w -> lots.put(Lot.name(w.mix(), w.lot()), w));
        return lots;
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
            String cut = job.lots().ends() == Job.LotEnd.NEAREST_TICKET
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
            said.add(samples.atRandom(where) + " of " + due + " taken at random");
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

    Section density() {
        Figures figures = new Figures();
        Set<String> used = new LinkedHashSet<>();
        for (Density each : samples.densities().all()) {
            if (here(each.of()) || here(each.from())) {
                one(figures, each, used);
            }
        }
        Map<String, Filling.Where> touched = touched();
        samples.densities().lots().stream()
                .filter(l -> touched.containsKey(Lot.name(l.mix(), l.lot())))
                .forEach(l -> mean(figures, l));
        samples.densities().pairs().forEach(p -> pairs(figures, p));
        samples.densities().growth().forEach(g -> growth(figures, g));
        return figures.section("density", "Density");
    }

    private void one(Figures figures, Density d, Set<String> used) {
        String word = d.by() == Density.By.CORE
                ? "core-density." + d.name().replaceFirst("^core ", "")
                : "gauge-density." + d.of().ref();
        String id = word;
        for (int i = 2; !used.add(id); i++) {
            id = word + "." + i;
        }
        String label = Stream.of(
                        d.name(),
                        d.where()
                                .map(Filling.Where::text)
                                .map(t -> t.replace(" sublot 0", ""))
                                .orElse(""),
                        d.place() == null ? "" : d.place().text())
                .filter(s -> !s.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElseThrow();
        String not = d.counts() ? d.again() ? ", counts of the test and its repeat" : "" : ", kept, does not count";
        String target = d.ofTarget()
                .map(t -> ", " + t.shown(1).text() + " of the target")
                .orElse("");
        Working working = d.working();
        if (d.percent().known()) {
            Amount percent = d.percent().amount();
            figures.add(
                    id,
                    label,
                    percent.shown(1).text() + target + not,
                    percent.shown(4).value().stripTrailingZeros(),
                    percent.unit().suffix(),
                    working);
        } else {
            figures.text(id, label, d.percent().text(1) + target + not, working);
        }
    }

    private void mean(Figures figures, Densities.OfLot lot) {
        String id = "." + lot.word();
        String label = "lot " + lot.lot() + " of " + lot.mix() + ", " + lot.of();
        List<String> put = new ArrayList<>();
        for (Density each : lot.kept()) {
            String why = !each.percent().known()
                    ? each.percent().text(1)
                    : each.percent().amount().shown(2).text() + (each.counts() ? "" : ", does not count");
            put.add(each.name() + ": " + why);
        }
        if (lot.kept().stream().anyMatch(Density::again)) {
            put.add(retest());
        }
        List<Ref> entries = lot.kept().stream()
                .map(Density::of)
                .filter(this::here)
                .map(Standing::ref)
                .distinct()
                .toList();
        PercentWithin.Sample s = lot.sample();
        Amount mean = new Amount(s.mean(), Unit.PERCENT);
        figures.add(
                "density-mean" + id,
                label + ", mean",
                mean.shown(2).text() + ", voids "
                        + MatDensity.voids(mean).shown(2).text() + ", " + s.n() + (s.n() == 1 ? " test" : " tests"),
                mean.shown(4).value().stripTrailingZeros(),
                "pct",
                new Working(
                        "mean of the percentages, each with its own Gmm",
                        List.copyOf(put),
                        entries,
                        "NJDOT B-3 (2007)"));
        if (s.n() > 1) {
            figures.add(
                    "density-s" + id,
                    label + ", standard deviation",
                    s.s().setScale(2, RoundingMode.HALF_UP).toPlainString(),
                    s.s().setScale(4, RoundingMode.HALF_UP).stripTrailingZeros(),
                    "",
                    new Working("s = sqrt((n Sum x² - (Sum x)²) / (n (n - 1)))", List.copyOf(put), entries, TESTS));
        }
    }

    private String retest() {
        Job.Retest rule = job.lots() == null ? null : job.lots().retest();
        return rule == null
                ? "the job does not say which of a test and its repeat counts; the first is taken here"
                : "of a test and its repeat counts by the job: " + rule.word();
    }

    private void pairs(Figures figures, Densities.Pairs pairs) {
        PercentWithin.Sample s = MatDensity.correlation(pairs.core());
        Unit unit = Measure.UNIT_WEIGHT.unit(job.system());
        Amount mean = new Amount(s.mean(), unit);
        figures.add(
                "gauge-correlation." + pairs.instrument() + "." + pairs.mix(),
                "gauge " + pairs.instrument() + " to " + pairs.mix() + ", core less gauge",
                mean.shown(2).text() + ", s "
                        + s.s().setScale(2, RoundingMode.HALF_UP).toPlainString() + ", " + s.n()
                        + (s.n() == 1 ? " place" : " places"),
                mean.shown(4).value().stripTrailingZeros(),
                unit.suffix(),
                new Working(
                        "mean of core less gauge, places where both were taken; Gmb x unit weight of water",
                        List.copyOf(pairs.put()),
                        List.copyOf(pairs.entries()),
                        "ten places for each project, lift, mix and gauge: Alberta ATT-48/95, 3.1"));
    }

    private static void growth(Figures figures, Densities.Growth growth) {
        int best = MatDensity.bestPasses(growth.percent());
        List<String> put = new ArrayList<>();
        growth.percent()
                .forEach((passes, percent) -> put.add(passes
                        + (passes == 1 ? " pass: " : " passes: ")
                        + new Amount(percent, Unit.PERCENT).shown(1).text()));
        figures.add(
                "density-passes." + growth.place().replace(' ', '-'),
                growth.place() + ", density by passes",
                "highest after " + best + (best == 1 ? " pass, " : " passes, ")
                        + new Amount(growth.percent().get(best), Unit.PERCENT)
                                .shown(1)
                                .text() + "; "
                        + String.join(", ", put),
                new java.math.BigDecimal(best),
                "",
                new Working(
                        "the number of passes with the highest density",
                        List.copyOf(put),
                        List.copyOf(growth.entries()),
                        "common practice, no source"));
    }

    Section samples() {
        Figures figures = new Figures();
        samples.open().forEach(t -> sample(figures, t));
        samples.openCores().forEach(c -> core(figures, c));
        samples.all().stream()
                .filter(t -> !t.open())
                .filter(t -> here(t.sample())
                        || Stream.concat(t.results().stream(), t.hands().stream())
                                .anyMatch(this::here))
                .forEach(t -> sample(figures, t));
        samples.places().forEach(p -> place(figures, p));
        Redrawn.of(day, before).forEach(r -> redrawn(figures, r));
        return figures.section("samples", "Samples");
    }

    private void sample(Figures figures, Taken t) {
        List<String> put = new ArrayList<>();
        put.add("taken " + t.sample().line().shift() + " " + t.sample().ref()
                + seal(t.sample().entry().keeping().sealNumber()));
        t.hands()
                .forEach(h -> put.add(
                        h.line().shift() + " " + h.ref() + " " + dash(h.entry().givenBy()) + " to "
                                + dash(h.entry().takenBy()) + seal(h.entry().sealNumber())));
        t.results()
                .forEach(r -> put.add(r.line().shift() + " " + r.ref() + " "
                        + dash(
                                r.entry().what() == null
                                        ? null
                                        : r.entry().what().word()) + " "
                        + dash(
                                r.entry().found() == null
                                        ? null
                                        : r.entry().found().toPlainString())));
        List<Ref> entries = Stream.concat(
                        Stream.of((Standing<?>) t.sample()), Stream.concat(t.hands().stream(), t.results().stream()))
                .filter(this::here)
                .map(Standing::ref)
                .toList();
        String state = t.open() ? "open, with " + t.holder() : "closed, " + results(t);
        figures.text(
                "sample." + t.number(),
                "sample " + t.number(),
                state + standsFor(t.where()),
                new Working(
                        "stands for what was placed of its sublot; open until a result closes it",
                        List.copyOf(put),
                        entries,
                        "the record"));
    }

    private static String seal(String number) {
        return number == null ? ", no seal noted" : ", seal " + number;
    }

    private static String dash(String text) {
        return text == null ? "-" : text;
    }

    private static String results(Taken t) {
        return t.results().stream()
                .map(Standing::entry)
                .map(r -> dash(r.what() == null ? null : r.what().word()) + " "
                        + dash(r.found() == null ? null : r.found().toPlainString())
                        + (r.inUnit() == null ? "" : " " + r.inUnit()))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }

    private String standsFor(Optional<Filling.Where> where) {
        if (where.isEmpty()) {
            return "; its sublot cannot be told";
        }
        Filling.Where w = where.get();
        Optional<Lot.Sublot> sublot = samples.filling().sublot(w.mix(), w.lot(), w.sublot());
        return "; " + w.text()
                + sublot.map(s -> " stands for " + s.tons().text() + (s.over() ? "" : " so far") + ", " + s.loads())
                        .orElse("");
    }

    private void core(Figures figures, Standing<Core> core) {
        Core c = core.entry();
        String number = c.cut().core() == null ? core.ref().toString() : c.cut().core();
        String place = c.spot().place() == null ? "" : ", " + c.spot().place().text();
        figures.text(
                "core." + number,
                "core " + number,
                "open, no density told" + place + standsFor(samples.where(core)),
                new Working(
                        "open until its density is told",
                        List.of("cut " + core.line().shift() + " " + core.ref()),
                        here(core) ? List.of(core.ref()) : List.of(),
                        "the record"));
    }

    private void place(Figures figures, Samples.Place p) {
        Integer nth = p.draw().entry().reached().nth();
        List<Ref> entries = new ArrayList<>(List.of(p.draw().ref()));
        p.taken().forEach(t -> entries.add(t.ref()));
        String taken = p.taken().isEmpty()
                ? "nothing taken"
                : String.join(
                        ", ", p.taken().stream().map(t -> "taken: " + called(t)).toList());
        figures.text(
                "random-place." + p.where().mix() + "." + p.where().lot() + "."
                        + p.where().sublot() + "." + (nth == null ? 1 : nth),
                "random place, " + p.name(),
                taken,
                new Working(
                        "what names the place, or is of its sublot",
                        List.of(screedbook.entry.Told.line(p.draw().entry())),
                        entries,
                        "the record"));
    }

    /** As it is marked: {@code core C-1}; what bears no mark of its own by its kind and line. */
    private static String called(Standing<?> taken) {
        if (taken.entry() instanceof Core c && c.cut().core() != null) {
            return "core " + c.cut().core();
        }
        if (taken.entry() instanceof screedbook.entry.Sample s && s.what().sample() != null) {
            return "sample " + s.what().sample();
        }
        return screedbook.entry.Told.kind(taken.entry().kind()) + " " + taken.ref();
    }

    private void redrawn(Figures figures, Redrawn r) {
        figures.text(
                "redrawn." + r.closed().entry().mix() + "." + r.closed().entry().lot(),
                "lot " + r.closed().entry().lot() + " of " + r.closed().entry().mix() + ", drawn again",
                r.differs().isEmpty()
                        ? r.places() + (r.places() == 1 ? " place" : " places") + " as the seed gives them"
                        : r.differs().size() + " told otherwise than the seed gives",
                new Working(
                        "every number of the lot's places drawn again from the seed that is told",
                        r.differs(),
                        List.of(r.closed().ref()),
                        "this program's own method; SHA-256 is FIPS 180-4"));
    }
}
