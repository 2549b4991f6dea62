package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import screedbook.calc.MatDensity;
import screedbook.entry.Core;
import screedbook.entry.Ref;
import screedbook.entry.Result;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The densities of cores: keyed with them, or told by a laboratory. */
final class CoreDensities {
    private final SoFar soFar;
    private final Belonging belonging;
    private final Gmms gmms;
    private final Map<String, List<Standing<Result>>> results;

    CoreDensities(SoFar soFar, Belonging belonging, Gmms gmms, Map<String, List<Standing<Result>>> results) {
        this.soFar = soFar;
        this.belonging = belonging;
        this.gmms = gmms;
        this.results = results;
    }

    private record Worked(Reckoned percent, Working working) {}

    Stream<Standing<Result>> told(Core core, Predicate<Result> which) {
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

    /** What was measured where it was cut is kept and does not count, once a laboratory has told of the core. */
    List<Density> of(Standing<Core> core) {
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

    private Worked gravity(Standing<Core> core, Standing<?> from, BigDecimal gmb, Optional<Gmms.Gmm> gmm) {
        List<String> put = new ArrayList<>();
        put.add("Gmb " + gmb.toPlainString() + ", " + soFar.name(from));
        gmm.ifPresent(g -> put.add(g.put()));
        Reckoned percent =
                gmm.map(g -> Reckoned.of(MatDensity.percent(gmb, g.value()))).orElse(Reckoned.not("no Gmm is noted"));
        percent.seen()
                .ifPresent(p -> put.add("voids " + MatDensity.voids(p).shown(2).text()));
        return new Worked(percent, Figures.working("100 x Gmb / Gmm", put, refs(core, from), Densities.SOURCE));
    }

    private Worked told(Standing<Core> core, Standing<?> from, Amount percent) {
        return new Worked(
                Reckoned.of(percent),
                Figures.working(
                        "as told, in percent of Gmm", List.of(soFar.name(from)), refs(core, from), Densities.SOURCE));
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

    private List<Ref> refs(Standing<?>... entries) {
        return Stream.of(entries)
                .filter(soFar::here)
                .map(Standing::ref)
                .distinct()
                .toList();
    }

    /** What a core that is being keyed comes to, in percent of the theoretical maximum. */
    Reckoned keyed(Core c, ShiftId shift) {
        if (c.measured().gmb() == null) {
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

    /** The bulk specific gravity of a core of this number, told by a laboratory or else keyed with it. */
    Optional<BigDecimal> gmb(String core) {
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
