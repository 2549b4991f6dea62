package screedbook.desk;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import screedbook.check.Cases;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.picture.Dot;
import screedbook.picture.HeatStrip;
import screedbook.picture.LotEnd;
import screedbook.picture.RoadStrip;
import screedbook.picture.TonsStrip;
import screedbook.spec.Quantity;
import screedbook.tally.Totals;

/** The pictures of a shift; each is drawn once for a size, so that a key costs the same after many loads. */
final class Pictured {
    private final List<Dot> heat;
    private final Optional<BigDecimal> limit;
    private final List<Dot> tons;
    private final Supplier<RoadStrip> work;
    private RoadStrip road;
    private final Map<String, List<String>> drawn = new ConcurrentHashMap<>();

    /**
     * The pictures of these dots.
     *
     * @param limit the least at the paver for the last load; empty where none is set
     * @param road asked for when the road is first looked at
     */
    Pictured(List<Dot> heat, Optional<BigDecimal> limit, List<Dot> tons, Supplier<RoadStrip> road) {
        this.heat = heat;
        this.limit = limit;
        this.tons = tons;
        this.work = road;
    }

    static Pictured of(Msg.Page page, Totals totals, List<Finding> findings, Job job) {
        Set<Ref> outside = new HashSet<>();
        for (Finding finding : findings) {
            if (finding.sort() == Sort.OUTSIDE && finding.rule().contains("paver")) {
                outside.addAll(finding.of());
            }
        }
        return new Pictured(
                Dot.atThePaver(totals.loads(), outside),
                limit(page, job),
                Dot.placed(totals.loads()),
                () -> RoadStrip.of(totals.road(), job, LotEnd.of(page.day(), job, totals.before())));
    }

    /** The line of the picture is the limit of the last load that was placed. */
    private static Optional<BigDecimal> limit(Msg.Page page, Job job) {
        List<Standing<Ticket>> tickets = page.day().standing(Ticket.class);
        if (tickets.isEmpty() || page.ground().sheet().isEmpty()) {
            return Optional.empty();
        }
        Standing<Ticket> last = tickets.get(tickets.size() - 1);
        return page
                .ground()
                .sheet()
                .get()
                .ruling(Quantity.PAVER_MIX, Cases.of(job, last.entry(), last.order()))
                .inForce()
                .stream()
                .filter(l -> l.low() != null)
                .map(l -> l.low().value())
                .findFirst();
    }

    /** The road by pull and station. */
    RoadStrip road() {
        if (road == null) {
            road = work.get();
        }
        return road;
    }

    /** Mix temperatures at the paver along the shift. */
    List<String> heat(int width, int height) {
        return once("heat", width, height, () -> HeatStrip.of(heat, limit, width, height));
    }

    /** Tons against the clock. */
    List<String> tons(int width, int height) {
        return once("tons", width, height, () -> TonsStrip.of(tons, width, height));
    }

    private List<String> once(String what, int width, int height, Supplier<List<String>> draw) {
        return drawn.computeIfAbsent(what + " " + width + " x " + height, key -> draw.get());
    }
}
