package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.calc.PercentWithin;
import screedbook.entry.Core;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.Ref;
import screedbook.entry.Result;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The densities of cores and gauge readings over all shifts up to this one. */
public final class Densities {
    static final String SOURCE = "common practice, no source";

    private final Job job;
    private final SoFar soFar;
    private final Belonging belonging;
    private final CoreDensities cores;
    private final GaugeDensities gauges;
    private final Unit unit;
    private final List<Density> all;

    /**
     * What the tests of one lot come to that were found in one way.
     *
     * @param tests that count, each with a percent
     * @param kept all of them, also those that do not count or have no percent
     */
    public record OfLot(
            String mix, int lot, Density.By by, List<Density> tests, List<Density> kept, PercentWithin.Sample sample) {
        /** {@code 12.5-70A.2.core}: mix, lot and how they were found, as words of figures have it. */
        public String word() {
            return mix + "." + lot + "." + by.name().toLowerCase(java.util.Locale.ROOT);
        }

        /** {@code cores} or {@code gauge readings}. */
        public String of() {
            return by == Density.By.CORE ? "cores" : "gauge readings";
        }

        public List<BigDecimal> values() {
            return tests.stream().map(d -> d.percent().amount().value()).toList();
        }
    }

    Densities(Job job, SoFar soFar, Belonging belonging, Filling filling, Map<String, List<Standing<Result>>> results) {
        this.job = job;
        this.soFar = soFar;
        this.belonging = belonging;
        this.unit = Measure.UNIT_WEIGHT.unit(job.system());
        Gmms gmms = new Gmms(
                job, soFar, results.values().stream().flatMap(List::stream).toList());
        this.cores = new CoreDensities(soFar, belonging, gmms, results);
        this.gauges = new GaugeDensities(soFar, belonging, gmms, unit);
        Set<String> lots = lots(filling);
        Map<String, List<Density>> roots = new LinkedHashMap<>();
        soFar.all(Core.class).stream()
                .filter(c -> asked(c, lots))
                .forEach(c -> cores.of(c)
                        .forEach(d -> roots.computeIfAbsent(root(c), r -> new ArrayList<>())
                                .add(d)));
        soFar.all(Gauge.class).stream()
                .filter(g -> asked(g, lots))
                .forEach(g ->
                        roots.computeIfAbsent(root(g), r -> new ArrayList<>()).add(gauges.of(g)));
        List<Density> counted = roots.values().stream()
                .flatMap(tests -> counting(tests).stream())
                .toList();
        this.all = counted.stream()
                .map(d -> counted.stream().anyMatch(o -> rolledOn(d, o)) ? d.counting(d.again(), false) : d)
                .toList();
    }

    /** Whether a reading was taken before the mat was rolled on and read again at the same place. */
    private static boolean rolledOn(Density before, Density after) {
        if (!(before.of().entry() instanceof Gauge b) || !(after.of().entry() instanceof Gauge a)) {
            return false;
        }
        return b.reading().passes() != null
                && a.reading().passes() != null
                && a.reading().passes() > b.reading().passes()
                && b.spot().place() != null
                && b.spot().place().equals(a.spot().place())
                && Objects.equals(b.spot().pull(), a.spot().pull())
                && Objects.equals(b.spot().lift(), a.spot().lift())
                && before.of().line().shift().equals(after.of().line().shift());
    }

    /** The lots of which this shift tells: it placed some of them, or tested, cut or found something of them. */
    private Set<String> lots(Filling filling) {
        Set<String> lots = new HashSet<>();
        filling.lots(soFar.day().shift()).forEach(l -> lots.add(l.name()));
        Stream.concat(soFar.all(Core.class).stream(), soFar.all(Gauge.class).stream())
                .filter(this::now)
                .flatMap(s -> belonging.of(s).stream())
                .forEach(w -> lots.add(Lot.name(w.mix(), w.lot())));
        return lots;
    }

    private boolean asked(Standing<?> each, Set<String> lots) {
        return now(each)
                || belonging
                        .of(each)
                        .filter(w -> lots.contains(Lot.name(w.mix(), w.lot())))
                        .isPresent();
    }

    /** Whether it is of this shift, or this shift tells something of it. */
    private boolean now(Standing<?> each) {
        return soFar.here(each)
                || each.entry() instanceof Core c
                        && cores.told(c, Result.class::isInstance).anyMatch(soFar::here);
    }

    /** Every density of this shift and of the lots of which it tells, those that do not count among them. */
    public List<Density> all() {
        return all;
    }

    /** By lot and by how they were found. */
    public List<OfLot> lots() {
        Map<List<Object>, List<Density>> groups = new LinkedHashMap<>();
        for (Density each : all) {
            each.where()
                    .ifPresent(w -> groups.computeIfAbsent(List.of(w.mix(), w.lot(), each.by()), k -> new ArrayList<>())
                            .add(each));
        }
        List<OfLot> lots = new ArrayList<>();
        groups.forEach((key, kept) -> {
            List<Density> tests =
                    kept.stream().filter(d -> d.counts() && d.percent().known()).toList();
            if (!tests.isEmpty()) {
                Filling.Where w = kept.get(0).where().orElseThrow();
                PercentWithin.Sample sample = PercentWithin.Sample.of(
                        tests.stream().map(d -> d.percent().amount().value()).toList());
                lots.add(new OfLot(w.mix(), w.lot(), kept.get(0).by(), tests, List.copyOf(kept), sample));
            }
        });
        return List.copyOf(lots);
    }

    /** A test and those that repeat it. */
    private String root(Standing<?> each) {
        Standing<?> root = each;
        for (int i = 0; i < 20; i++) {
            Ref again = again(root);
            Standing<?> older = again == null
                    ? null
                    : soFar.find(root.line().shift(), again).orElse(null);
            if (older == null || older.entry().getClass() != each.entry().getClass()) {
                break;
            }
            root = older;
        }
        return root.line().shift() + " " + root.ref();
    }

    private static Ref again(Standing<?> each) {
        if (each.entry() instanceof Core c) {
            return c.cut().again();
        }
        return each.entry() instanceof Gauge g ? g.spot().again() : null;
    }

    /** Which of a test and its repeats counts is for the contract to say; where the job does not say it, the first does. */
    private List<Density> counting(List<Density> tests) {
        List<Density> inPlay = tests.stream().filter(Density::counts).toList();
        if (inPlay.size() < 2) {
            return tests;
        }
        Lots.Retest rule = job.lots() == null ? null : job.lots().retest();
        int counted = rule == Lots.Retest.NEWER ? inPlay.size() - 1 : 0;
        return tests.stream()
                .map(d -> d.counts() ? d.counting(true, rule == Lots.Retest.BOTH || d == inPlay.get(counted)) : d)
                .toList();
    }

    /** Whether the density of a core is known, from it or from a laboratory. */
    boolean told(Core core) {
        return cores.told(core);
    }

    /** What a core or a reading that is being keyed comes to in this shift, in percent of the theoretical maximum. */
    public Reckoned keyed(Entry entry) {
        ShiftId shift = soFar.day().shift();
        if (entry instanceof Gauge g) {
            return gauges.read(g, shift).percent();
        }
        return entry instanceof Core c ? cores.keyed(c, shift) : Reckoned.not("nothing is keyed of it");
    }

    /** What is added to a gauge's readings and where it is from. */
    public record Correlation(Amount amount, String from) {}

    /** The correlation of a reading: as keyed with it, else the newest one of its gauge to its mix. */
    public Optional<Correlation> correlation(Gauge gauge, String mix) {
        return gauges.correlation(gauge, mix);
    }

    /**
     * Readings of this shift at one place after several numbers of passes.
     *
     * @param percent by passes; of several readings after as many passes the newest
     */
    public record Growth(String place, Map<Integer, BigDecimal> percent, List<Ref> entries) {}

    /** By pull, lift and station; only where there are two numbers of passes. */
    public List<Growth> growth() {
        Map<String, Growth> found = new LinkedHashMap<>();
        for (Density each : all) {
            if (each.of().entry() instanceof Gauge g
                    && soFar.here(each.of())
                    && each.percent().known()
                    && g.reading().passes() != null
                    && each.place() != null) {
                String pull = g.spot().pull() == null ? "" : "pull " + g.spot().pull() + " ";
                Growth growth = found.computeIfAbsent(
                        pull + each.place(), p -> new Growth(p, new TreeMap<>(), new ArrayList<>()));
                growth.percent()
                        .put(g.reading().passes(), each.percent().amount().value());
                growth.entries().add(each.of().ref());
            }
        }
        return found.values().stream().filter(g -> g.percent().size() > 1).toList();
    }

    /**
     * Gauge readings of this shift beside the cores cut at the same places.
     *
     * @param core less gauge, of each place
     */
    public record Pairs(String instrument, String mix, List<BigDecimal> core, List<String> put, List<Ref> entries) {}

    /** By gauge and mix; a reading names the core that was cut where it stood. */
    public List<Pairs> pairs() {
        Map<List<String>, Pairs> found = new LinkedHashMap<>();
        for (Standing<Gauge> each : soFar.day().standing(Gauge.class)) {
            String number = each.entry().spot().core();
            Reckoned mean = gauges.mean(each.entry(), new ArrayList<>());
            Optional<BigDecimal> gmb = number == null ? Optional.empty() : cores.gmb(number);
            if (gmb.isPresent() && mean.known()) {
                String mix = belonging.mix(
                        each.entry().spot().mix(), each.entry().spot().lift());
                String instrument = each.entry().keeping().instrument();
                Pairs pairs = found.computeIfAbsent(
                        List.of(instrument == null ? "" : instrument, mix == null ? "" : mix),
                        k -> new Pairs(k.get(0), k.get(1), new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
                Amount core = MatDensity.unitWeight(gmb.get(), unit);
                Amount less = core.minus(mean.amount());
                pairs.core().add(less.value());
                pairs.entries().add(each.ref());
                pairs.put()
                        .add("core " + number + " " + core.shown(1).text() + " less gauge "
                                + mean.amount().shown(1).text() + " is "
                                + less.shown(2).text());
            }
        }
        return List.copyOf(found.values());
    }
}
