package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.calc.PercentWithin;
import screedbook.entry.Core;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
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
    private static final String SOURCE = "common practice, no source";

    private final Job job;
    private final SoFar soFar;
    private final Belonging belonging;
    private final Map<String, List<Standing<Result>>> results;
    private final Gmms gmms;
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
        this.results = results;
        this.gmms = new Gmms(
                job, soFar, results.values().stream().flatMap(List::stream).toList());
        this.unit = Measure.UNIT_WEIGHT.unit(job.system());
        Set<String> lots = lots(filling);
        Map<String, List<Density>> roots = new LinkedHashMap<>();
        soFar.all(Core.class).stream()
                .filter(c -> asked(c, lots))
                .forEach(c -> cores(c).forEach(d ->
                        roots.computeIfAbsent(root(c), r -> new ArrayList<>()).add(d)));
        soFar.all(Gauge.class).stream()
                .filter(g -> asked(g, lots))
                .forEach(g ->
                        roots.computeIfAbsent(root(g), r -> new ArrayList<>()).add(reading(g)));
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
                        && told(c, Result.class::isInstance).anyMatch(soFar::here);
    }

    private Stream<Standing<Result>> told(Core core, Predicate<Result> which) {
        return names(core).stream()
                .flatMap(n -> results.getOrDefault(n, List.of()).stream())
                .filter(r -> which.test(r.entry()));
    }

    /** Whether the density of a core is known, from it or from a laboratory. */
    boolean told(Core core) {
        return core.measured().gmb() != null
                || core.measured().density() != null
                || told(
                                core,
                                r -> r.found() != null
                                        && (r.what() == Result.What.GMB || r.what() == Result.What.DENSITY))
                        .findAny()
                        .isPresent();
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

    /** What was measured where it was cut is kept and does not count, once a laboratory has told of the core. */
    private List<Density> cores(Standing<Core> core) {
        Core c = core.entry();
        List<String> names = names(c);
        Optional<Filling.Where> where = belonging.of(core);
        String mix = belonging.mix(c.spot().mix(), c.spot().lift());
        Integer lot = where.map(Filling.Where::lot).orElse(null);
        Optional<Gmms.Gmm> gmm =
                gmms.of(c.measured().gmm(), names, mix, lot, core.line().shift().date());
        List<Density> found = new ArrayList<>();
        if (c.measured().gmb() != null) {
            found.add(core(
                    core, core, mix, where, gravity(core, core, c.measured().gmb(), gmm)));
        } else if (c.measured().density() != null) {
            found.add(core(core, core, mix, where, told(core, core, c.measured().density())));
        }
        for (Standing<Result> each : told(c, r -> r.found() != null).toList()) {
            Result r = each.entry();
            if (r.what() == Result.What.GMB) {
                found.add(core(core, each, mix, where, gravity(core, each, r.found(), gmm)));
            } else if (r.what() == Result.What.DENSITY) {
                found.add(core(core, each, mix, where, told(core, each, new Amount(r.found(), Unit.PERCENT))));
            }
        }
        if (found.size() > 1 && found.get(0).from() == core) {
            found.set(0, found.get(0).counting(false, false));
        }
        return found;
    }

    private record Worked(Reckoned percent, Working working) {}

    private Worked gravity(Standing<Core> core, Standing<?> from, BigDecimal gmb, Optional<Gmms.Gmm> gmm) {
        List<String> put = new ArrayList<>();
        put.add("Gmb " + gmb.toPlainString() + ", " + soFar.name(from));
        gmm.ifPresent(g -> put.add(g.put()));
        Reckoned percent =
                gmm.map(g -> Reckoned.of(MatDensity.percent(gmb, g.value()))).orElse(Reckoned.not("no Gmm is noted"));
        percent.seen()
                .ifPresent(p -> put.add("voids " + MatDensity.voids(p).shown(2).text()));
        return new Worked(percent, Figures.working("100 x Gmb / Gmm", put, refs(core, from), SOURCE));
    }

    private Worked told(Standing<Core> core, Standing<?> from, Amount percent) {
        return new Worked(
                Reckoned.of(percent),
                Figures.working("as told, in percent of Gmm", List.of(soFar.name(from)), refs(core, from), SOURCE));
    }

    private List<Ref> refs(Standing<?>... entries) {
        return Stream.of(entries)
                .filter(soFar::here)
                .map(Standing::ref)
                .distinct()
                .toList();
    }

    private static Density core(
            Standing<Core> core, Standing<?> from, String mix, Optional<Filling.Where> where, Worked worked) {
        String number = core.entry().cut().core();
        return new Density(
                core,
                from,
                Density.By.CORE,
                "core " + (number == null ? core.ref() : number),
                mix,
                core.entry().spot().place(),
                where,
                worked.percent(),
                Optional.empty(),
                false,
                true,
                worked.working());
    }

    /** What a reading comes to. */
    private record Read(Reckoned percent, Optional<Amount> ofTarget, List<String> put) {}

    private Read read(Gauge g, ShiftId shift) {
        String mix = belonging.mix(g.spot().mix(), g.spot().lift());
        List<String> put = new ArrayList<>();
        Optional<Correlation> added = correlation(g, mix);
        Reckoned density = mean(g, put).then(m -> {
            put.add(added.map(a -> "correlation " + a.amount().text() + ", " + a.from())
                    .orElse("no correlation to this mix is noted"));
            return Reckoned.of(added.map(a -> m.plus(a.amount())).orElse(m));
        });
        Integer lot = belonging.of(g, shift).map(Filling.Where::lot).orElse(null);
        Optional<Gmms.Gmm> gmm = gmms.of(g.reading().gmm(), List.of(), mix, lot, shift.date());
        gmm.ifPresent(m -> put.add(
                m.put() + ", " + MatDensity.unitWeight(m.value(), unit).shown(1).text()));
        Reckoned percent = density.then(d -> gmm.map(
                        m -> Reckoned.of(MatDensity.percentOf(d, MatDensity.unitWeight(m.value(), unit))))
                .orElse(Reckoned.not("no Gmm is noted")));
        Amount target = g.reading().target();
        Optional<Amount> ofTarget =
                target == null || target.unit() != unit || target.value().signum() <= 0
                        ? Optional.empty()
                        : density.seen().map(d -> MatDensity.percentOf(d, target));
        ofTarget.ifPresent(
                p -> put.add("target " + target.text() + ", " + p.shown(1).text() + " of it"));
        return new Read(percent, ofTarget, put);
    }

    /** What a core or a reading that is being keyed comes to in this shift, in percent of the theoretical maximum. */
    public Reckoned keyed(Entry entry) {
        ShiftId shift = soFar.day().shift();
        if (entry instanceof Gauge g) {
            return read(g, shift).percent();
        }
        if (!(entry instanceof Core c) || c.measured().gmb() == null) {
            return Reckoned.not("nothing is keyed of it");
        }
        String mix = belonging.mix(c.spot().mix(), c.spot().lift());
        Integer lot = belonging.of(c, shift).map(Filling.Where::lot).orElse(null);
        return gmms.of(c.measured().gmm(), names(c), mix, lot, shift.date())
                .map(g -> Reckoned.of(MatDensity.percent(c.measured().gmb(), g.value())))
                .orElse(Reckoned.not("no Gmm is noted"));
    }

    private static List<String> names(Core c) {
        return Stream.of(c.cut().core(), c.keeping().sample())
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    private Density reading(Standing<Gauge> gauge) {
        Gauge g = gauge.entry();
        Read read = read(g, gauge.line().shift());
        return new Density(
                gauge,
                gauge,
                Density.By.GAUGE,
                "gauge " + soFar.name(gauge),
                belonging.mix(g.spot().mix(), g.spot().lift()),
                g.spot().place(),
                belonging.of(gauge),
                read.percent(),
                read.ofTarget(),
                false,
                true,
                Figures.working(
                        "(mean of the readings + correlation) / unit weight of the Gmm x 100",
                        read.put(),
                        refs(gauge),
                        SOURCE));
    }

    private Reckoned mean(Gauge g, List<String> put) {
        List<Amount> readings = Stream.of(
                        g.reading().firstReading(),
                        g.reading().secondReading(),
                        g.reading().thirdReading(),
                        g.reading().fourthReading())
                .filter(Objects::nonNull)
                .toList();
        if (readings.isEmpty()) {
            return Reckoned.not("no reading is noted");
        }
        if (readings.stream().anyMatch(r -> r.unit() != unit)) {
            return Reckoned.not("a reading is in the other system's unit");
        }
        BigDecimal sum = readings.stream().map(Amount::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        Amount mean = new Amount(sum.divide(BigDecimal.valueOf(readings.size()), MathContext.DECIMAL64), unit);
        put.add("mean of "
                + String.join(", ", readings.stream().map(Amount::text).toList()) + ": "
                + mean.shown(2).text());
        return Reckoned.of(mean);
    }

    /** What is added to a gauge's readings and where it is from. */
    public record Correlation(Amount amount, String from) {}

    /** The correlation of a reading: as keyed with it, else the newest one of its gauge to its mix. */
    public Optional<Correlation> correlation(Gauge gauge, String mix) {
        Amount keyed = gauge.reading().correlation();
        if (keyed != null && keyed.unit() == unit) {
            return Optional.of(new Correlation(keyed, "keyed with it"));
        }
        String instrument = gauge.keeping().instrument();
        Standing<InstrumentCheck> last = null;
        for (Standing<InstrumentCheck> each : soFar.all(InstrumentCheck.class)) {
            InstrumentCheck check = each.entry();
            boolean of = check.correlation() != null
                    && check.correlation().unit() == unit
                    && Objects.equals(instrument, check.instrument())
                    && (check.correlatedMix() == null || check.correlatedMix().equals(mix));
            last = of ? each : last;
        }
        return Optional.ofNullable(last).map(c -> new Correlation(c.entry().correlation(), soFar.name(c)));
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
            Reckoned mean = mean(each.entry(), new ArrayList<>());
            Optional<BigDecimal> gmb = number == null ? Optional.empty() : gmb(number);
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

    private Optional<BigDecimal> gmb(String core) {
        Optional<BigDecimal> told = results.getOrDefault(core, List.of()).stream()
                .map(Standing::entry)
                .filter(r -> r.what() == Result.What.GMB && r.found() != null)
                .map(Result::found)
                .findFirst();
        return told.or(() -> soFar.all(Core.class).stream()
                .map(Standing::entry)
                .filter(c -> core.equals(c.cut().core()) && c.measured().gmb() != null)
                .map(c -> c.measured().gmb())
                .findFirst());
    }
}
