package screedbook.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Area;
import screedbook.entry.Closing;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.entry.Weather;
import screedbook.entry.YesNo;
import screedbook.job.Mix;
import screedbook.job.Road;
import screedbook.tally.FeltAir;
import screedbook.tally.Load;
import screedbook.tally.OddArea;
import screedbook.tally.Outlook;
import screedbook.tally.Run;
import screedbook.tally.Shot;
import screedbook.tally.Tons;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** What the figures come to, told in few words beside the cursor, in the heading and at the side. */
final class Echo {
    private Echo() {}

    /** {@code 11 loads 242.61 T}. */
    static String loads(Shift shift) {
        Tons all = shift.totals().shift();
        return counted(all.loads()) + " " + all.pay().text();
    }

    private static String counted(int loads) {
        return loads + (loads == 1 ? " load" : " loads");
    }

    /** What the shift would come to with the ticket that is being keyed; of another kind the entry that it speaks of. */
    static String of(Model model, Reading reading) {
        if (reading.plain().get("of") instanceof String of) {
            return model.shift()
                    .day()
                    .find(Ref.of(of))
                    .map(s -> Told.line(s.entry()))
                    .orElse(of + " is not in this shift");
        }
        if (reading.entry() instanceof Weather weather) {
            return FeltAir.of(weather).text();
        }
        if (reading.entry() instanceof Area area) {
            return OddArea.told(area, model.shift().job());
        }
        Optional<String> sampled = SampleForms.echo(model, reading.entry());
        if (sampled.isPresent()) {
            return sampled.get();
        }
        if (reading.form().kind() != Kind.TICKET || reading.form().amends() != null) {
            return "";
        }
        Unit unit = Measure.LOAD.unit(model.shift().job().system());
        Ticket ticket = (Ticket) reading.entry();
        Amount net = ticket.weights().net();
        List<String> words = new ArrayList<>();
        if (net != null && net.unit() == unit) {
            Tons all = model.shift().totals().shift();
            words.add(net.text());
            Amount more = Load.laid(ticket) ? net : new Amount(BigDecimal.ZERO, unit);
            words.add(counted(all.loads() + 1) + " " + all.pay().plus(more).text());
        }
        run(model, ticket, words);
        return String.join("  ", words);
    }

    private static void run(Model model, Ticket ticket, List<String> words) {
        Ticket.Spot spot = ticket.spot();
        if (spot.pull() != null) {
            words.add("pull " + spot.pull() + (spot.lift() == null ? "" : " lift " + spot.lift()));
        }
        if (spot.from() != null || spot.to() != null) {
            words.add("from " + (spot.from() == null ? "?" : spot.from())
                    + (spot.to() == null ? "" : " to " + spot.to()));
        }
        if (spot.from() != null && spot.to() != null) {
            Road road = Road.of(model.shift().job());
            words.add(road.length(spot.from(), spot.to()).text());
            again(model, spot, road).ifPresent(words::add);
        }
    }

    /** {@code 150 ft of it paved already}: one lane keyed for another is seen before it is written. */
    private static Optional<String> again(Model model, Ticket.Spot spot, Road road) {
        BigDecimal a = road.along(spot.from());
        BigDecimal b = road.along(spot.to());
        return model.shift()
                .totals()
                .road()
                .lane(spot.pull(), spot.lift())
                .map(lane -> lane.ground().within(a.min(b), a.max(b)).length())
                .filter(length -> spot.pull() != null && length.signum() > 0)
                .map(length -> new Amount(
                                        length,
                                        Measure.WIDTH.unit(model.shift().job().system()))
                                .text() + " of it paved already");
    }

    /** Pull, lift and mix of the last ticket, for the heading. */
    static List<String> now(Model model) {
        Standing<?> last = model.shift().last().get(Kind.TICKET);
        if (last == null || !(last.entry() instanceof Ticket ticket)) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        Ticket.Spot spot = ticket.spot();
        if (spot.pull() != null) {
            words.add("pull " + spot.pull() + (spot.lift() == null ? "" : " lift " + spot.lift()));
        }
        if (ticket.paper().mix() != null) {
            words.add(model.shift()
                    .job()
                    .mix(ticket.paper().mix())
                    .map(Echo::mix)
                    .orElse(ticket.paper().mix()));
        }
        return words;
    }

    /** {@code 12.5 mm PG 70-22 + aid}. */
    private static String mix(Mix mix) {
        String size = mix.nmas() == null ? mix.name() : mix.nmas().text();
        String binder = mix.highGrade().map(g -> " PG " + g).orElse("");
        String polymer = mix.polymer() == YesNo.YES ? " polymer" : "";
        String aid = mix.aid() == null || mix.aid() == Mix.Aid.NEITHER ? "" : " + aid";
        return size + binder + polymer + aid;
    }

    /** The lines at the top of the side. */
    static List<String> side(Shift shift) {
        List<String> lines = new ArrayList<>();
        Tons all = shift.totals().shift();
        lines.add(loads(shift));
        all.perHour()
                .ifPresent(h -> lines.add(h.setScale(0, RoundingMode.HALF_UP).toPlainString() + " "
                        + all.pay().unit().symbol() + "/h"));
        List<Run> runs = shift.totals().runs();
        if (!runs.isEmpty()) {
            Run run = runs.get(runs.size() - 1);
            run.rate()
                    .ifPresent(r -> lines.add("spread " + r.shown(0).value().toPlainString()
                            + run.target()
                                    .map(t -> " of " + t.shown(0).value().toPlainString())
                                    .orElse("")));
            lastFive(shift, run).ifPresent(lines::add);
        }
        List<Shot> shots = shift.totals().shots();
        if (!shots.isEmpty()) {
            Shot shot = shots.get(shots.size() - 1);
            shot.residual()
                    .seen()
                    .ifPresent(r -> lines.add("residual " + r.shown(3).value().toPlainString()));
        }
        return lines;
    }

    /** {@code last 5 loads 224}, once there were more. */
    private static Optional<String> lastFive(Shift shift, Run run) {
        List<Outlook> ahead = shift.totals().yields().ahead();
        Outlook last = ahead.isEmpty() ? null : ahead.get(ahead.size() - 1);
        boolean more = last != null && last.run().equals(run) && run.entries().size() > last.loads();
        return !more
                ? Optional.empty()
                : last.last()
                        .map(r -> "last " + last.loads() + " loads "
                                + r.shown(0).value().toPlainString());
    }

    /** How a pull comes out: its last loads, and what it takes to the end of what is planned. */
    static List<String> ahead(Outlook o) {
        List<String> lines = new ArrayList<>();
        o.last()
                .ifPresent(r -> lines.add(
                        "last " + counted(o.loads()) + " " + r.shown(1).text()
                                + o.lastPercent()
                                        .map(p -> ", " + p.shown(1).text() + " of target")
                                        .orElse("")));
        o.left()
                .ifPresent(t -> lines.add("to its end " + o.ahead().text() + " more, "
                        + t.shown(0).text()
                        + " at this rate"
                        + o.planned()
                                .map(p -> ", " + p.shown(0).text() + " as planned")
                                .orElse("")));
        return lines;
    }

    /** The closing entry with what was counted; every figure of it can be worked out again from the lines above it. */
    static Closing counted(Model model, Closing keyed) {
        Shift shift = model.shift();
        Map<Kind, Integer> kinds = new LinkedHashMap<>();
        shift.day().all().stream()
                .filter(s -> s.line().book().equals(shift.page().book()))
                .forEach(s -> kinds.merge(s.line().kind(), 1, Integer::sum));
        List<Closing.Count> counts = new ArrayList<>();
        kinds.forEach((kind, n) -> counts.add(new Closing.Count(kind.word(), n)));
        List<Closing.Tons> tons = new ArrayList<>();
        for (Tons each : shift.totals().tons()) {
            if (each.by() == Tons.By.MIX) {
                tons.add(new Closing.Tons(each.of(), each.loads(), each.received(), each.pay()));
            }
        }
        return new Closing(
                keyed.theirs(),
                keyed.controllingItem(),
                keyed.dayCharged(),
                keyed.lotsEnd(),
                keyed.text(),
                counts,
                tons,
                marks(shift));
    }

    private static List<Closing.Count> marks(Shift shift) {
        List<Closing.Count> counts = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            List<Finding> of =
                    shift.findings().stream().filter(f -> f.sort() == sort).toList();
            if (!of.isEmpty()) {
                int open = (int) of.stream().filter(f -> !f.answered()).count();
                counts.add(new Closing.Count(sort.text(), of.size()));
                if (open > 0) {
                    counts.add(new Closing.Count(sort.text() + ", not answered", open));
                }
            }
        }
        return counts;
    }

    /** Mix temperatures at the paver along the shift, under a line that names them. */
    static List<String> strip(Shift shift, int width, int height) {
        List<String> lines = new ArrayList<>();
        lines.add("at the paver");
        lines.addAll(shift.pictured().paver(width, height - 1));
        return lines;
    }

    /** The strips of temperatures over the tons against the clock. */
    static List<String> pictures(Shift shift, int width, int height) {
        int upper = Math.max(4, height * 3 / 5);
        List<String> lines = new ArrayList<>(shift.pictured().heat(width, upper));
        if (lines.stream().allMatch(String::isBlank)) {
            lines.set(0, "no temperature of mix or mat is read");
        }
        lines.add("");
        lines.add("tons against the clock"
                + (shift.pictured().foretells() ? "  : at this pace  = as planned  ! last load down" : ""));
        lines.addAll(shift.pictured().tons(width, Math.max(3, height - upper - 2)));
        return lines;
    }
}
