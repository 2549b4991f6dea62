package screedbook.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import screedbook.entry.Gauge;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Standing;
import screedbook.entry.YesNo;
import screedbook.tally.Density;
import screedbook.tally.Samples;

/** Rules about density gauges: standard count, correlation, how one is kept. */
final class GaugeRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "gauge-standard-count",
                    Sort.MISSING,
                    "A nuclear gauge is read after its standard count of the day.",
                    GaugeRules::count),
            new Rule(
                    "gauge-not-fit",
                    Sort.LOOK_AGAIN,
                    "A gauge is read after a check that found it fit for use.",
                    GaugeRules::fit),
            new Rule(
                    "gauge-not-correlated",
                    Sort.MISSING,
                    "A gauge is correlated to the mix that it reads.",
                    GaugeRules::correlated),
            new Rule(
                    "gauge-not-secured",
                    Sort.MISSING,
                    "It is written how a nuclear gauge is kept when nobody watches it.",
                    GaugeRules::secured));

    private GaugeRules() {}

    private static boolean nuclear(Standing<Gauge> reading) {
        return reading.entry().reading().mode() != Gauge.Mode.ELECTROMAGNETIC;
    }

    private static String gauge(Standing<Gauge> reading) {
        String instrument = reading.entry().keeping().instrument();
        return instrument == null ? "gauge not noted" : "gauge " + instrument;
    }

    private static Map<String, List<Standing<Gauge>>> by(
            List<Standing<Gauge>> readings, Function<Standing<Gauge>, String> what) {
        Map<String, List<Standing<Gauge>>> groups = new LinkedHashMap<>();
        readings.forEach(r ->
                groups.computeIfAbsent(what.apply(r), g -> new ArrayList<>()).add(r));
        return groups;
    }

    private static String readings(int count) {
        return count + (count == 1 ? " reading" : " readings");
    }

    private static List<Standing<Gauge>> nuclear(Look look) {
        return look.day().standing(Gauge.class).stream()
                .filter(GaugeRules::nuclear)
                .toList();
    }

    /** The checks of a reading's gauge in this shift, up to the reading. */
    private static List<InstrumentCheck> checks(Look look, Standing<Gauge> reading) {
        return look.day().standing(InstrumentCheck.class).stream()
                .filter(c -> Objects.equals(
                        c.entry().instrument(), reading.entry().keeping().instrument()))
                .filter(c -> !c.order().toInstant().isAfter(reading.order().toInstant()))
                .map(Standing::entry)
                .toList();
    }

    private static boolean counted(InstrumentCheck check) {
        return check.against() == InstrumentCheck.Against.STANDARD_COUNT || check.densityCount() != null;
    }

    private static List<Mark> count(Look look) {
        List<Standing<Gauge>> without = nuclear(look).stream()
                .filter(r -> checks(look, r).stream().noneMatch(GaugeRules::counted))
                .toList();
        List<Mark> marks = new ArrayList<>();
        by(without, GaugeRules::gauge)
                .forEach((gauge, list) -> marks.add(new Mark(
                        Look.refs(list),
                        gauge + ": " + readings(list.size()) + " before a standard count of this shift",
                        "a standard count first, each day",
                        "WAQTC TM 8 (2012)",
                        "an instrument check with the count, before the readings")));
        return marks;
    }

    private static List<Mark> fit(Look look) {
        List<Standing<Gauge>> after = new ArrayList<>();
        for (Standing<Gauge> each : look.day().standing(Gauge.class)) {
            YesNo last = null;
            for (InstrumentCheck check : checks(look, each)) {
                last = check.fit() == null ? last : check.fit();
            }
            if (last == YesNo.NO) {
                after.add(each);
            }
        }
        List<Mark> marks = new ArrayList<>();
        by(after, GaugeRules::gauge)
                .forEach((gauge, list) -> marks.add(new Mark(
                        Look.refs(list),
                        gauge + ": " + readings(list.size()) + " after a check that found it not fit for use",
                        "fit for use by the instrument's own rules",
                        "WAQTC TM 8 (2012)",
                        "a later check that found it fit")));
        return marks;
    }

    private static List<Mark> correlated(Look look) {
        List<Mark> marks = new ArrayList<>();
        Samples samples = look.samples().orElse(null);
        if (samples == null) {
            return marks;
        }
        Map<Standing<Gauge>, String> mixes = new LinkedHashMap<>();
        for (Standing<Gauge> each : look.day().standing(Gauge.class)) {
            String mix = samples.densities().all().stream()
                    .filter(d -> d.by() == Density.By.GAUGE && d.of().line() == each.line())
                    .map(d -> d.mix() == null ? "" : d.mix())
                    .findFirst()
                    .orElse("");
            boolean added = each.entry().reading().target() != null
                    || samples.densities()
                            .correlation(each.entry(), mix.isEmpty() ? null : mix)
                            .isPresent();
            if (!added) {
                mixes.put(each, mix);
            }
        }
        by(List.copyOf(mixes.keySet()), r -> gauge(r) + (mixes.get(r).isEmpty() ? "" : " on " + mixes.get(r)))
                .forEach((what, list) -> marks.add(new Mark(
                        Look.refs(list),
                        what + ": " + readings(list.size()) + ", no correlation to this mix noted",
                        "correlated to the mix and the project",
                        "Tennessee nuclear gauge course (2017)",
                        "the correlation with the reading, or an instrument check by cores")));
        return marks;
    }

    private static List<Mark> secured(Look look) {
        List<Standing<Gauge>> without = nuclear(look).stream()
                .filter(r -> r.entry().keeping().secured() == null)
                .filter(r -> look.day().standing(InstrumentCheck.class).stream()
                        .noneMatch(c -> c.entry().secured() != null
                                && Objects.equals(
                                        c.entry().instrument(),
                                        r.entry().keeping().instrument())))
                .toList();
        List<Mark> marks = new ArrayList<>();
        by(without, GaugeRules::gauge)
                .forEach((gauge, list) -> marks.add(new Mark(
                        Look.refs(list),
                        gauge + ": how it is kept is not written",
                        "two independent controls when nobody watches it",
                        "NRC, 70 FR 2001 (12 January 2005)",
                        "how it was secured, with the reading or its check")));
        return marks;
    }
}
