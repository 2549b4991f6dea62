package screedbook.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.entry.YesNo;
import screedbook.job.Checks;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Rules about instruments that were held against something known. */
final class InstrumentRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "instrument-off",
                    Sort.OUTSIDE,
                    "A thermometer shows what it should, within what the job allows where it says so.",
                    InstrumentRules::off),
            new Rule(
                    "instrument-not-fit",
                    Sort.LOOK_AGAIN,
                    "Nothing is read with an instrument whose last check said that it is not fit.",
                    InstrumentRules::notFit));

    private InstrumentRules() {}

    /** What a thermometer should show; ice and water stand at freezing. Empty where that is not noted. */
    static Optional<Amount> known(InstrumentCheck check) {
        if (check.known() != null) {
            return Optional.of(check.known());
        }
        boolean ice = check.against() == InstrumentCheck.Against.ICE_BATH && check.shows() != null;
        return ice
                ? Optional.of(
                        check.shows().unit() == Unit.DEG_C ? Amount.of("0", Unit.DEG_C) : Amount.of("32", Unit.DEG_F))
                : Optional.empty();
    }

    /** What it shows less what it should show, as a difference. */
    static Optional<Amount> off(InstrumentCheck check) {
        return known(check).flatMap(k -> Amount.apart(check.shows(), k));
    }

    private static List<Mark> off(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<InstrumentCheck> c : look.day().standing(InstrumentCheck.class)) {
            Optional<Checks> checks = look.job(c).map(Job::checks);
            Amount most = checks.map(Checks::thermometerOff).orElse(null);
            Optional<Amount> off = off(c.entry());
            if (most != null && off.isPresent() && AmountText.size(off.get()).compareTo(most) > 0) {
                Amount known = known(c.entry()).orElseThrow();
                marks.add(new Mark(
                        c.ref(),
                        "instrument " + name(c.entry()) + " shows "
                                + AmountText.text(c.entry().shows()) + " at " + AmountText.text(known),
                        "off by at most " + AmountText.text(most),
                        PlanRules.source(checks.get()),
                        AmountText.plain(AmountText.moved(known, negative(most))) + " to "
                                + AmountText.text(AmountText.moved(known, most))));
            }
        }
        return marks;
    }

    private static Amount negative(Amount amount) {
        return new Amount(amount.value().negate(), amount.unit());
    }

    /** Whether a check in this shift said that an instrument is fit before it was read. */
    static boolean fitBefore(Look look, String id, Standing<?> reading) {
        return look.day().standing(InstrumentCheck.class).stream()
                .anyMatch(c -> id.equals(c.entry().instrument())
                        && c.entry().fit() == YesNo.YES
                        && !c.order().isAfter(reading.order()));
    }

    private static String name(InstrumentCheck check) {
        return check.instrument() == null ? "not named" : check.instrument();
    }

    /** One mark for each check after which the instrument was read, with the readings. */
    private static List<Mark> notFit(Look look) {
        Map<Ref, Standing<InstrumentCheck>> all = new HashMap<>();
        look.day().standing(InstrumentCheck.class).forEach(c -> all.put(c.ref(), c));
        if (all.values().stream().noneMatch(c -> c.entry().fit() == YesNo.NO)) {
            return List.of();
        }
        Map<String, Standing<InstrumentCheck>> checks = new LinkedHashMap<>();
        Map<Standing<InstrumentCheck>, List<Standing<?>>> used = new LinkedHashMap<>();
        for (Standing<?> each : look.day().all()) {
            if (each.entry() instanceof InstrumentCheck check && !each.struck() && check.instrument() != null) {
                checks.put(check.instrument(), all.get(each.ref()));
            } else if (!each.struck()) {
                instrument(each)
                        .map(checks::get)
                        .filter(c -> c.entry().fit() == YesNo.NO)
                        .ifPresent(c ->
                                used.computeIfAbsent(c, x -> new ArrayList<>()).add(each));
            }
        }
        List<Mark> marks = new ArrayList<>();
        used.forEach((check, readings) -> marks.add(new Mark(
                Sort.LOOK_AGAIN,
                Stream.concat(Stream.of(check.ref()), readings.stream().map(Standing::ref))
                        .toList(),
                "instrument " + name(check.entry()) + " not fit at its check, then read with: "
                        + Told.kind(readings.get(0).line().kind()) + " at "
                        + Look.clock(readings.get(0).order())
                        + (readings.size() > 1 ? " and " + (readings.size() - 1) + " more" : ""),
                "an instrument that is read is fit for use",
                "entry",
                "a check that says fit, or another instrument",
                "")));
        return marks;
    }

    private static Optional<String> instrument(Standing<?> entry) {
        Kind kind = entry.line().kind();
        return kind.fields().stream()
                .filter(f -> f.name().equals("instrument") && kind != Kind.INSTRUMENT && kind != Kind.GAUGE)
                .findFirst()
                .map(f -> (String) f.get((Record) entry.entry()));
    }
}
