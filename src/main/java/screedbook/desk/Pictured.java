package screedbook.desk;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import screedbook.check.AtThisPace;
import screedbook.check.Finding;
import screedbook.check.HeatLines;
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
import screedbook.spec.SpecSheet;
import screedbook.tally.Pace;
import screedbook.tally.Totals;
import screedbook.unit.Measure;

/** The pictures of a shift; each is drawn once for a size, so that a key costs the same after many loads. */
final class Pictured {
    private final List<HeatStrip> heat;
    private final List<Dot> tons;
    private final Optional<TonsStrip.Target> target;
    private final Supplier<RoadStrip> work;
    private RoadStrip road;
    private final Map<String, List<String>> drawn = new ConcurrentHashMap<>();

    /**
     * The pictures of these dots; limits are those of the last load.
     *
     * @param heat at the plant, at the paver, of the mat
     * @param road asked for when the road is first looked at
     */
    Pictured(List<HeatStrip> heat, List<Dot> tons, Optional<TonsStrip.Target> target, Supplier<RoadStrip> road) {
        this.heat = heat;
        this.tons = tons;
        this.target = target;
        this.work = road;
    }

    static Pictured of(Msg.Page page, Totals totals, List<Finding> findings, Job job, AtThisPace ahead) {
        List<Standing<Ticket>> tickets = page.day().standing(Ticket.class);
        Optional<SpecSheet> sheet = page.ground().sheet().filter(s -> !tickets.isEmpty());
        Standing<Ticket> last = tickets.isEmpty() ? null : tickets.get(tickets.size() - 1);
        List<Dot> tons = Dot.placed(totals.loads());
        List<HeatStrip> heat = List.of(
                strip(
                        "at the plant",
                        Dot.atThePlant(totals.loads(), outside(findings, "heat-at-plant")),
                        sheet.map(s -> HeatLines.plant(job, s, last)).orElse(HeatLines.NONE)),
                strip(
                        "at the paver",
                        Dot.atThePaver(totals.loads(), outside(findings, "heat-at-paver")),
                        sheet.map(s -> HeatLines.paver(job, s, last)).orElse(HeatLines.NONE)),
                strip(
                        "mat: " + Dot.MAT_SIGNS,
                        Dot.ofTheMat(
                                page.day(),
                                Measure.TEMPERATURE.unit(job.system()),
                                outside(findings, "mat-behind-screed")),
                        HeatLines.mat(job)));
        return new Pictured(
                heat,
                tons,
                target(tons, ahead),
                () -> RoadStrip.of(totals.road(), job, LotEnd.of(page.day(), job, totals.before())));
    }

    private static HeatStrip strip(String name, List<Dot> dots, HeatLines lines) {
        return new HeatStrip(name, dots, lines.low(), lines.high());
    }

    private static Set<Ref> outside(List<Finding> findings, String rule) {
        Set<Ref> outside = new HashSet<>();
        for (Finding finding : findings) {
            if (finding.sort() == Sort.OUTSIDE && finding.rule().equals(rule)) {
                outside.addAll(finding.of());
            }
        }
        return outside;
    }

    /** The shift's own plan, else that of the pull. */
    private static Optional<TonsStrip.Target> target(List<Dot> tons, AtThisPace ahead) {
        if (tons.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal placed = tons.get(tons.size() - 1).value();
        return Stream.of(ahead.pace().shift(), ahead.pace().pull())
                .flatMap(Optional::stream)
                .filter(f -> f.at() != null)
                .findFirst()
                .map((Pace.Finish f) -> new TonsStrip.Target(placed.add(f.left().value()), f.at(), ahead.down()));
    }

    /** The road by pull and station. */
    RoadStrip road() {
        if (road == null) {
            road = work.get();
        }
        return road;
    }

    /** Mix temperatures at the paver along the shift. */
    List<String> paver(int width, int height) {
        return once(
                "paver",
                width,
                height,
                () -> HeatStrip.of(heat.get(1).dots(), heat.get(1).low(), width, height));
    }

    /** Temperatures at the plant, at the paver and of the mat under each other. */
    List<String> heat(int width, int height) {
        return once("heat", width, height, () -> HeatStrip.of(heat, width, height));
    }

    /** Tons against the clock. */
    List<String> tons(int width, int height) {
        return once("tons", width, height, () -> TonsStrip.of(tons, target, width, height));
    }

    /** Whether anything of the tons is foretold. */
    boolean foretells() {
        return target.isPresent();
    }

    private List<String> once(String what, int width, int height, Supplier<List<String>> draw) {
        return drawn.computeIfAbsent(what + " " + width + " x " + height, key -> draw.get());
    }
}
