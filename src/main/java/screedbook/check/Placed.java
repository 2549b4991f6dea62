package screedbook.check;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.tally.Load;
import screedbook.tally.Share;

/** What was tacked and what was laid, as stretches of the road. */
final class Placed {
    private final Map<Station, BigDecimal> along = new HashMap<>();
    private final List<Laid> laid = new ArrayList<>();
    private final Map<String, List<Laid>> byPull = new HashMap<>();
    private final Map<Where, List<Shot>> byWhere = new LinkedHashMap<>();
    private final List<Covered> covered = new ArrayList<>();

    /** A stretch along the reference line, the lower end first. */
    record Stretch(BigDecimal low, BigDecimal high) {
        boolean meets(Stretch other) {
            return low.compareTo(other.high) < 0 && high.compareTo(other.low) > 0;
        }

        BigDecimal length() {
            return high.subtract(low);
        }
    }

    /** A load's share on its pull; the share's own ends may be one. */
    record Laid(Standing<Ticket> load, Share share, Stretch on, Instant at) {}

    /** Pull and lift. */
    record Where(String pull, Integer lift) {}

    /** A shot over a surface. */
    record Shot(Standing<Tack> tack, Stretch on) {}

    /** A shot and the first load that went over it at its time or later. */
    record Covered(Standing<Tack> shot, Standing<Ticket> load) {}

    Placed(Look look) {
        Optional<Job> job = look.job();
        if (job.isPresent()) {
            Road road = Road.of(job.get());
            look.laid().forEach(load -> lay(load, road));
            look.tacks().forEach(tack -> spray(tack, road));
        }
    }

    /** One end alone is a place without length. The end of a load is the start of the next: each is worked out once. */
    private Optional<Stretch> stretch(Road road, Station from, Station to) {
        if (from == null && to == null) {
            return Optional.empty();
        }
        BigDecimal a = along.computeIfAbsent(from == null ? to : from, road::along);
        BigDecimal b = along.computeIfAbsent(to == null ? from : to, road::along);
        return Optional.of(new Stretch(a.min(b), a.max(b)));
    }

    private void lay(Load load, Road road) {
        for (Share share : load.shares()) {
            stretch(road, share.from(), share.to()).ifPresent(on -> {
                Laid one =
                        new Laid(load.ticket(), share, on, load.ticket().order().toInstant());
                laid.add(one);
                byPull.computeIfAbsent(String.valueOf(share.pull()), p -> new ArrayList<>())
                        .add(one);
            });
        }
    }

    private void spray(Standing<Tack> tack, Road road) {
        Tack.Target target = tack.entry().target();
        Optional<Stretch> on = stretch(road, target.from(), target.to());
        if (target.face() != null || on.isEmpty()) {
            return;
        }
        byWhere.computeIfAbsent(new Where(target.pull(), target.lift()), w -> new ArrayList<>())
                .add(new Shot(tack, on.get()));
        first(tack.order(), target, on.get()).ifPresent(l -> covered.add(new Covered(tack, l.load())));
    }

    /** Loads of a pull stand in the order in which they were laid, so that the search begins at the shot's time. */
    private Optional<Laid> first(OffsetDateTime after, Tack.Target target, Stretch on) {
        List<Laid> loads = byPull.getOrDefault(String.valueOf(target.pull()), List.of());
        Instant from = after.toInstant();
        int low = 0;
        int high = loads.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (loads.get(middle).at().isBefore(from)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        for (Laid each : loads.subList(low, loads.size())) {
            if (each.on().meets(on) && same(target.lift(), each.share().lift())) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** A lift that is not named may be any. */
    private static boolean same(Integer lift, Integer other) {
        return lift == null || other == null || lift.equals(other);
    }

    List<Laid> laid() {
        return Collections.unmodifiableList(laid);
    }

    List<Covered> covered() {
        return Collections.unmodifiableList(covered);
    }

    /** The shots of a pull; one that names no lift is of any. */
    List<Shot> shots(String pull, Integer lift) {
        List<Shot> found = new ArrayList<>();
        byWhere.forEach((where, shots) -> {
            if (same(where.lift(), lift) && pull != null && pull.equals(where.pull())) {
                found.addAll(shots);
            }
        });
        return found;
    }
}
