package screedbook.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.ListIterator;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Depth;
import screedbook.entry.Entry;
import screedbook.entry.Restart;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.spec.Situation;
import screedbook.spec.SpecSheet;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** What stands beside the blanks of a form while it is keyed. */
public final class Guides {
    /** By kind and blank: {@code ticket.paver}. */
    private static final Map<String, Function<Keying, Guide>> BY_BLANK = new HashMap<>();

    static {
        BY_BLANK.put("weather.air", Guides::air);
        BY_BLANK.put("surface.surface", Guides::surface);
        BY_BLANK.put("ticket.paver", Guides::paverHeat);
        BY_BLANK.put("ticket.plant", Guides::plantHeat);
        BY_BLANK.put("ticket.net", Guides::net);
        BY_BLANK.put("ticket.gross", Guides::gross);
        BY_BLANK.put("ticket.tare", Guides::tare);
        BY_BLANK.put("ticket.mix", Guides::mix);
        BY_BLANK.put("ticket.truck", Guides::truck);
        BY_BLANK.put("core.height", Guides::coreHeight);
        BY_BLANK.put("core.density", Guides::coreDensity);
        BY_BLANK.put("depth.thickness", Guides::depth);
        BY_BLANK.put("tack.material", Guides::material);
        BY_BLANK.put("tack.width", Guides::width);
        for (String rate : List.of("before", "after", "used", "depth_before", "depth_after", "area")) {
            BY_BLANK.put("tack." + rate, Guides::rate);
        }
        for (String dilution : List.of("emulsion_parts", "water_parts", "diluted")) {
            BY_BLANK.put("tack." + dilution, Guides::dilution);
        }
        BY_BLANK.put("restart.of", k -> SiteGuides.stood(k.day(), (Restart) k.entry(), k.at()));
        for (String blank : SiteGuides.blanks()) {
            BY_BLANK.put(blank, k -> SiteGuides.of(k.job(), k.sheet(), k.entry(), k.at(), blank));
        }
        BY_BLANK.put("depth.thickness", k -> YieldGuides.depth(k.job(), k.sheet(), (Depth) k.entry(), k.at()));
        for (String yield : List.of("to_sta", "area", "last_ticket", "tons")) {
            BY_BLANK.put(
                    "yield." + yield, k -> YieldGuides.yield(k.job(), k.sheet(), k.day(), (Yield) k.entry(), k.at()));
        }
    }

    private Guides() {}

    /**
     * What stands beside one blank. Looks at the form, the job and the sheet, and in the day only at the newest entries
     * back to the last load or surface reading, so that it costs the same late in a long shift; but for a yield check,
     * which adds up its loads.
     *
     * @param partial the form as far as it is keyed; absent values are null
     * @param at when it happens, as far as known; decides day or night
     * @param blank the key of the blank as a line has it ({@code paver_degF}); the unit may be left out but for the two
     *     plants of a ticket
     */
    public static Guide of(Ground ground, Day day, Entry partial, OffsetDateTime at, String blank) {
        String name = name(blank);
        Function<Keying, Guide> guide = BY_BLANK.get(partial.kind().word() + "." + name);
        Optional<Job> job = ground.job();
        if (guide == null || job.isEmpty() || blank.equals("plant")) {
            return Guide.NOTHING;
        }
        return guide.apply(new Keying(job.get(), ground.sheet(), day, partial, at));
    }

    private static String name(String blank) {
        int dash = blank.lastIndexOf('_');
        if (dash < 0) {
            return blank;
        }
        for (int at = blank.indexOf('_'); at > 0; at = blank.indexOf('_', at + 1)) {
            if (Unit.ofSuffix(blank.substring(at + 1)).isPresent()) {
                return blank.substring(0, at);
            }
        }
        return blank;
    }

    /** A form being keyed, with what it is judged by. */
    private record Keying(Job job, Optional<SpecSheet> sheet, Day day, Entry entry, OffsetDateTime at) {
        Ticket ticket() {
            return (Ticket) entry;
        }

        Tack tack() {
            return (Tack) entry;
        }

        /** The limits of the sheet; where the sheet cannot be found nothing takes its place. */
        Guide limited(Function<SpecSheet, Bounds> limits, Amount value, List<Guide.Offer> offers, String more) {
            if (sheet.isEmpty()) {
                return new Guide("limit sheet not found", "", Verdict.NONE, "", offers);
            }
            Bounds bounds = limits.apply(sheet.get());
            Verdict verdict = bounds.of(value);
            if (!offers.isEmpty() && verdict != Verdict.OUTSIDE) {
                verdict = Verdict.LOOK_AGAIN;
            }
            return new Guide(bounds.text(job.system()) + more, bounds.clause(), verdict, bounds.working(), offers);
        }
    }

    private static Guide air(Keying k) {
        Situation situation = course(k);
        return k.limited(s -> Bounds.of(s, Quantity.AIR, situation), ((Weather) k.entry()).air(), List.of(), "");
    }

    private static Guide surface(Keying k) {
        Surface surface = (Surface) k.entry();
        Situation situation = Cases.of(k.job(), surface, k.at());
        return k.limited(s -> Bounds.of(s, Quantity.SURFACE, situation), surface.surface(), List.of(), "");
    }

    /** The case of the course that is being paved: as the newest load or surface reading says. */
    private static Situation course(Keying k) {
        ListIterator<Standing<?>> back =
                k.day().all().listIterator(k.day().all().size());
        while (back.hasPrevious()) {
            Standing<?> each = back.previous();
            if (!each.struck() && each.entry() instanceof Ticket ticket) {
                return Cases.of(k.job(), ticket, k.at());
            }
            if (!each.struck() && each.entry() instanceof Surface surface) {
                return Cases.of(k.job(), surface, k.at());
            }
        }
        return Cases.of(k.job(), null, Cases.lift(k.job(), null, null), k.at(), null);
    }

    private static Guide paverHeat(Keying k) {
        Ticket ticket = k.ticket();
        Situation situation = Cases.of(k.job(), ticket, k.at());
        Amount heat = ticket.heat().paver();
        return k.limited(
                s -> Bounds.paverHeat(k.job(), s, situation, ticket.paper().mix()),
                heat,
                Slips.mix("paver", heat),
                target(k, Quantity.PAVER_DIFFERENCE, situation, Mix::targetPaver));
    }

    private static Guide plantHeat(Keying k) {
        Ticket ticket = k.ticket();
        Situation situation = Cases.of(k.job(), ticket, k.at());
        Amount heat = ticket.heat().plant();
        return k.limited(
                s -> Bounds.plantHeat(k.job(), s, situation, ticket.paper().mix()),
                heat,
                Slips.mix("plant", heat),
                target(k, Quantity.PLANT_DIFFERENCE, situation, Mix::targetPlant));
    }

    /** {@code , target 300 ± 25}; nothing where the sheet has no tolerance or the mix no target. */
    private static String target(Keying k, Quantity around, Situation situation, Function<Mix, Amount> of) {
        Optional<Amount> target = k.job().mix(k.ticket().paper().mix()).map(of);
        Optional<String> tolerance = k.sheet()
                .flatMap(s -> Bounds.tolerance(s, around, situation, k.job().system()));
        return target.isEmpty() || tolerance.isEmpty()
                ? ""
                : ", target " + AmountText.plain(target.get()) + " " + tolerance.get();
    }

    private static Guide net(Keying k) {
        Ticket.Weights w = k.ticket().weights();
        List<Guide.Offer> offers = Slips.net(w.net()).stream().toList();
        Optional<Amount> weighed = Weighing.net(w);
        if (weighed.isEmpty()) {
            boolean odd = w.net() != null && Slips.unusual(Quantity.NET, w.net());
            return new Guide("", "", odd ? Verdict.LOOK_AGAIN : Verdict.NONE, "", offers);
        }
        boolean odd = Weighing.apart(w)
                .filter(d -> Slips.unusual(Quantity.NET_DIFFERENCE, d))
                .isPresent();
        Verdict verdict = w.net() == null ? Verdict.NONE : odd ? Verdict.LOOK_AGAIN : Verdict.INSIDE;
        String working = "Gross " + AmountText.text(w.gross()) + " less tare " + AmountText.text(w.tare()) + " is "
                + weighed.get().text() + ".";
        return new Guide("gross less tare " + weighed.get().text(), "as printed", verdict, working, offers);
    }

    private static Guide gross(Keying k) {
        Ticket.Weights w = k.ticket().weights();
        List<Guide.Offer> offers =
                new ArrayList<>(Slips.scale("gross", w.gross()).stream().toList());
        Slips.swapped(w).ifPresent(offers::add);
        Optional<Job.Truck> truck = k.job().truck(k.ticket().paper().truck());
        Optional<Bound> legal = Weighing.legalGross(truck);
        if (legal.isPresent()) {
            Bounds bounds = new Bounds(List.of(legal.get()), List.of());
            Verdict verdict = offers.isEmpty() ? bounds.of(w.gross()) : Verdict.LOOK_AGAIN;
            return new Guide(bounds.text() + " legal", bounds.clause(), verdict, bounds.working(), offers);
        }
        boolean odd = !offers.isEmpty()
                || w.gross() != null && Slips.hasLegalGross(w.gross()) && Slips.unusual(Quantity.GROSS, w.gross());
        return new Guide("", "", odd ? Verdict.LOOK_AGAIN : Verdict.NONE, "", offers);
    }

    private static Guide tare(Keying k) {
        Ticket.Weights w = k.ticket().weights();
        List<Guide.Offer> offers =
                new ArrayList<>(Slips.scale("tare", w.tare()).stream().toList());
        Slips.swapped(w).ifPresent(offers::add);
        Optional<Amount> usual = k.job().truck(k.ticket().paper().truck()).map(Job.Truck::tare);
        Optional<Amount> implied = Weighing.impliedTare(w);
        String limit = usual.map(t -> "usual tare " + AmountText.plain(t)).orElse("");
        String weights =
                implied.map(t -> "weights come to " + AmountText.plain(t)).orElse("");
        Amount seen = w.tare() == null ? implied.orElse(null) : w.tare();
        boolean moved = seen != null
                && usual.isPresent()
                && Slips.unusual(Quantity.TARE_DIFFERENCE, AmountText.size(seen.minus(usual.get())));
        Verdict verdict = moved || !offers.isEmpty() ? Verdict.LOOK_AGAIN : Verdict.NONE;
        String both = limit + (limit.isEmpty() || weights.isEmpty() ? "" : ", ") + weights;
        return new Guide(both, usual.isPresent() ? "job" : "", verdict, "", offers);
    }

    private static Guide mix(Keying k) {
        Ticket ticket = k.ticket();
        String mix = ticket.paper().mix();
        Optional<Job.Lift> lift =
                Cases.lift(k.job(), ticket.spot().lift(), ticket.spot().pull());
        String planned = lift.map(Job.Lift::mix).orElse("");
        boolean other = mix != null && (k.job().mix(mix).isEmpty() || lift.isPresent() && !mix.equals(planned));
        String limit = lift.map(l -> "lift " + l.number() + " is " + planned).orElse("");
        return new Guide(limit, limit.isEmpty() ? "" : "job", other ? Verdict.LOOK_AGAIN : Verdict.NONE, "", List.of());
    }

    private static Guide truck(Keying k) {
        String number = k.ticket().paper().truck();
        boolean listed = number == null
                || k.job().trucks().isEmpty()
                || k.job().truck(number).isPresent();
        return listed ? Guide.NOTHING : new Guide("not in the job's list", "job", Verdict.LOOK_AGAIN, "", List.of());
    }

    private static Guide coreHeight(Keying k) {
        Core core = (Core) k.entry();
        Situation mat =
                mat(k, core.spot().mix(), core.spot().lift(), core.spot().pull());
        return k.limited(
                s -> Bounds.of(s, Quantity.CORE_HEIGHT, mat), core.measured().height(), List.of(), "");
    }

    private static Guide coreDensity(Keying k) {
        Core core = (Core) k.entry();
        Situation mat =
                mat(k, core.spot().mix(), core.spot().lift(), core.spot().pull());
        return k.limited(
                s -> Bounds.of(s, Quantity.DENSITY, mat), core.measured().density(), List.of(), "");
    }

    /** Only the height of an untrimmed core has a limit of its own. */
    private static Guide depth(Keying k) {
        Depth depth = (Depth) k.entry();
        if (depth.state() != Depth.State.CORE_UNTRIMMED) {
            return Guide.NOTHING;
        }
        Situation mat = mat(k, null, depth.lift(), depth.pull());
        return k.limited(s -> Bounds.of(s, Quantity.CORE_HEIGHT, mat), depth.thickness(), List.of(), "");
    }

    private static Situation mat(Keying k, String mix, Integer lift, String pull) {
        return Cases.of(k.job(), mix, Cases.lift(k.job(), lift, pull), k.at(), null);
    }

    private static Guide material(Keying k) {
        Situation situation = Cases.of(k.job(), k.tack(), k.at());
        Amount heat = k.tack().gauge().material();
        return k.limited(s -> Bounds.of(s, Quantity.TACK_MATERIAL, situation), heat, List.of(), "");
    }

    private static Guide width(Keying k) {
        Amount width = k.tack().target().width();
        List<Guide.Offer> offers = Slips.width("width", width).stream().toList();
        boolean odd = width != null && Slips.unusual(Quantity.WIDTH, width);
        String pull = k.job()
                .pull(k.tack().target().pull(), k.tack().target().lift())
                .map(p -> "pull " + p.name() + " is " + AmountText.plain(p.width()))
                .orElse("");
        return new Guide(pull, pull.isEmpty() ? "" : "job", odd ? Verdict.LOOK_AGAIN : Verdict.NONE, "", offers);
    }

    private static Guide rate(Keying k) {
        return Shooting.guide(k.job(), k.sheet(), k.tack(), k.at());
    }

    private static Guide dilution(Keying k) {
        Tack tack = k.tack();
        Situation situation = Cases.of(k.job(), tack, k.at());
        List<Asked> asked =
                k.sheet().map(s -> s.asked(Demand.TACK_UNDILUTED, situation)).orElse(List.of());
        if (asked.isEmpty() || Shooting.dilutionAllowed(k.job(), tack)) {
            return Guide.NOTHING;
        }
        Asked first = asked.get(0);
        Verdict verdict = !Shooting.diluted(tack) ? Verdict.NONE : first.sure() ? Verdict.OUTSIDE : Verdict.LOOK_AGAIN;
        return new Guide("undiluted", first.citation(), verdict, first.says(), List.of());
    }
}
