package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Refill;
import screedbook.entry.Standing;
import screedbook.entry.Tack;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What was sprayed, read off tanks, meters and gauge sticks: a tank falls, a meter rises, a refill lifts the tank. */
final class Tank {
    private final Job job;
    private final Unit unit;
    private final Map<String, List<Standing<Refill>>> refills = new HashMap<>();
    private final Map<String, BigDecimal> levels = new HashMap<>();
    private final Set<Ref> used = new HashSet<>();

    Tank(Day day, Job job, Unit unit) {
        this.job = job;
        this.unit = unit;
        for (Standing<Refill> each : day.standing(Refill.class)) {
            if (each.entry().distributor() != null
                    && inUnit(each.entry().before())
                    && inUnit(each.entry().after())) {
                refills.computeIfAbsent(each.entry().distributor(), d -> new ArrayList<>())
                        .add(each);
            }
        }
    }

    /** A volume with the refills that went into it and a line that says how. */
    record Drawn(Reckoned volume, List<Ref> refills, String put) {}

    /** What a shot took; shots are asked in the order in which they happened. */
    Drawn drawn(Standing<Tack> shot) {
        Tack.Gauge gauge = shot.entry().gauge();
        if (gauge.used() != null) {
            Reckoned volume = inUnit(gauge.used()) ? Reckoned.of(gauge.used()) : foreign(gauge.used());
            String how = gauge.basis() == null ? "" : ", known by " + gauge.basis();
            return new Drawn(volume, List.of(), "used as noted " + gauge.used().text() + how);
        }
        Reckoned before = level(shot.entry(), gauge.before(), gauge.depthBefore(), "before");
        Reckoned after = level(shot.entry(), gauge.after(), gauge.depthAfter(), "after");
        if (!before.known() || !after.known()) {
            return new Drawn(before.known() ? after : before, List.of(), "");
        }
        return between(shot, before.amount(), after.amount());
    }

    private Drawn between(Standing<Tack> shot, Amount before, Amount after) {
        if (reading(shot.entry()) == Tack.Reading.METER) {
            return measured(after.minus(before), List.of(), "meter " + after.text() + " - " + before.text());
        }
        String distributor = shot.entry().product().distributor();
        List<Standing<Refill>> within = within(shot, before, after);
        Amount volume = before.minus(after);
        StringBuilder put = new StringBuilder("tank " + before.text() + " - " + after.text());
        for (Standing<Refill> each : within) {
            Amount taken = each.entry().after().minus(each.entry().before());
            volume = volume.plus(taken);
            put.append(" + refill ").append(taken.text());
        }
        levels.put(distributor, after.value());
        return measured(volume, within.stream().map(Standing::ref).toList(), put.toString());
    }

    private static Drawn measured(Amount volume, List<Ref> refills, String put) {
        if (volume.value().signum() < 0) {
            return new Drawn(Reckoned.not("the readings come to less than nothing: " + put), refills, put);
        }
        return new Drawn(Reckoned.of(volume), refills, put + " = " + volume.text());
    }

    /** A reading of the gauge; a depth goes through the distributor's strapping table. */
    private Reckoned level(Tack tack, Amount volume, Amount depth, String which) {
        if (volume != null) {
            return inUnit(volume) ? Reckoned.of(volume) : foreign(volume);
        }
        if (depth == null) {
            return Reckoned.not("reading " + which + " not noted");
        }
        Optional<Job.Distributor> distributor =
                Optional.ofNullable(tack.product().distributor()).flatMap(job::distributor);
        List<Job.Strap> table = distributor.map(Job.Distributor::strapping).orElse(List.of());
        return table == null || table.isEmpty()
                ? Reckoned.not("no strapping table for the distributor")
                : strapped(table, depth);
    }

    /** Straight lines between the rows of the table. */
    private static Reckoned strapped(List<Job.Strap> rows, Amount depth) {
        for (int i = 0; i + 1 < rows.size(); i++) {
            Job.Strap low = rows.get(i);
            Job.Strap high = rows.get(i + 1);
            if (depth.compareTo(low.depth()) >= 0 && depth.compareTo(high.depth()) <= 0) {
                return Reckoned.of(on(low, high, depth));
            }
        }
        return Reckoned.not("depth " + depth.text() + " is not in the strapping table");
    }

    private static Amount on(Job.Strap low, Job.Strap high, Amount depth) {
        BigDecimal rise = high.volume().minus(low.volume()).value();
        BigDecimal run = high.depth().minus(low.depth()).value();
        BigDecimal step =
                depth.to(low.depth().unit()).value().subtract(low.depth().value());
        BigDecimal more = run.signum() == 0
                ? BigDecimal.ZERO
                : rise.multiply(step).divide(run, MathContext.DECIMAL64).stripTrailingZeros();
        return new Amount(low.volume().value().add(more), low.volume().unit());
    }

    private Tack.Reading reading(Tack tack) {
        if (tack.gauge().reading() != null) {
            return tack.gauge().reading();
        }
        return Optional.ofNullable(tack.product().distributor())
                .flatMap(job::distributor)
                .map(Job.Distributor::reading)
                .orElse(Tack.Reading.TANK);
    }

    /**
     * Refills between the two readings of a shot. A refill lies before the shot when the shot begins where the refill
     * ended, unless the tank had been drawn down between the last reading and the refill.
     */
    private List<Standing<Refill>> within(Standing<Tack> shot, Amount before, Amount after) {
        List<Standing<Refill>> found = new ArrayList<>();
        String distributor = shot.entry().product().distributor();
        BigDecimal level = levels.get(distributor);
        for (Standing<Refill> each : refills.getOrDefault(distributor, List.of())) {
            boolean earlier = !each.order().toInstant().isAfter(shot.order().toInstant());
            if (used.contains(each.ref()) || !(earlier || before.compareTo(after) < 0)) {
                continue;
            }
            if (fits(each.entry(), before, after, level)) {
                found.add(each);
            }
            if (earlier || found.contains(each)) {
                used.add(each.ref());
            }
        }
        return found;
    }

    private static boolean fits(Refill refill, Amount before, Amount after, BigDecimal level) {
        boolean room = before.compareTo(refill.before()) >= 0 && after.compareTo(refill.after()) <= 0;
        boolean drawn = level != null
                && refill.before().value().compareTo(level) < 0
                && before.value().compareTo(level) == 0;
        return room && (drawn || before.compareTo(refill.after()) != 0);
    }

    private boolean inUnit(Amount volume) {
        return volume != null && volume.unit() == unit;
    }

    private Reckoned foreign(Amount volume) {
        return Reckoned.not("volume in " + volume.unit().symbol() + ", this job counts " + unit.symbol());
    }
}
