package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import screedbook.calc.TackRate;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The sections that measure the road: what was covered, the spread rate, and the tack. */
final class RoadSections {
    static final String UNITS =
            "weight over area; 2000 lb in a ton, 9 ft² in a square yard (NIST Handbook 44, Appendix C)";
    private static final String AVERAGE = "rate / unit weight: an average over the area, judged against no lift limit";

    private final Job job;

    RoadSections(Job job) {
        this.job = job;
    }

    Section spread(List<Run> runs) {
        Figures figures = new Figures();
        for (Run run : runs) {
            add(figures, run);
        }
        return figures.section("spread", "Spread rate");
    }

    private void add(Figures figures, Run run) {
        String tail = "." + run.name();
        String of = run.name() + " ";
        boolean metric = job.units() == Job.Units.METRIC;
        Working covered = working(run, "length of what the loads covered, overlaps once, station equations counted");
        if (!run.pieces().isEmpty()) {
            String where = run.pieces().stream().map(Run.Piece::text).collect(Collectors.joining(", "));
            figures.text("stations" + tail, of + "stations", where, covered);
            figures.amount("length" + tail, of + "length", run.length(), metric ? 1 : 0, covered);
        }
        figures.amount(
                "area" + tail,
                of + "area",
                run.area(),
                metric ? 1 : 0,
                working(
                        run,
                        run.parts().isEmpty()
                                ? "length x width of the pull as planned"
                                : "length x width of the pull as planned, its parts by their own widths or areas"));
        if (!run.parts().isEmpty()) {
            figures.amount("average-width" + tail, of + "average width", width(run), 2, working(run, "area / length"));
        }
        figures.amount("spread-rate" + tail, of + "spread rate", run.rate(), 1, working(run, rateFormula(metric)));
        figures.amount(
                "spread-target" + tail,
                of + "target",
                run.target(),
                1,
                working(run, "planned thickness x unit weight"));
        figures.amount(
                "spread-percent" + tail, of + "of target", run.percent(), 1, working(run, "rate / target x 100"));
        figures.amount(
                "equivalent-thickness" + tail,
                of + "equivalent thickness",
                run.thickness(),
                metric ? 0 : 2,
                working(run, AVERAGE));
        if (run.elsewhere().value().signum() != 0) {
            figures.amount(
                    "laid-elsewhere" + tail,
                    of + "not in the rate, place not known",
                    run.elsewhere(),
                    2,
                    working(run, "weight of the loads without stations at both ends"));
        }
    }

    private Optional<Amount> width(Run run) {
        return run.area()
                .filter(a -> run.length().value().signum() > 0)
                .map(a -> new Amount(
                        a.to(job.units() == Job.Units.METRIC ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT)
                                .value()
                                .divide(run.length().value(), MathContext.DECIMAL128),
                        run.length().unit()));
    }

    static String rateFormula(boolean metric) {
        return metric ? "kg/m² = t x 1000 / (length x width)" : "lb/yd² = tons x 2000 / (length x width / 9)";
    }

    private static Working working(Run run, String formula) {
        return new Working(formula, run.put(), run.entries(), UNITS);
    }

    Section tack(List<Shot> shots) {
        Map<String, List<Shot>> surfaces = new LinkedHashMap<>();
        shots.forEach(
                s -> surfaces.computeIfAbsent(s.name(), n -> new ArrayList<>()).add(s));
        Figures figures = new Figures();
        surfaces.forEach((name, list) -> add(figures, name, list));
        return figures.section("tack", "Tack");
    }

    private void add(Figures figures, String name, List<Shot> shots) {
        String tail = "." + name;
        String of = name + " ";
        Sprayed sum = new Sprayed(shots);
        String base = job.units() == Job.Units.METRIC ? "at 15 °C" : "at 60 °F";
        figures.count("tack-shots" + tail, of + "shots", shots.size(), sum.working("shots counted one by one"));
        if (!sum.faceWithout(Shot::volume)) {
            sum.figure(
                    figures,
                    "tack-volume" + tail,
                    of + "as measured",
                    Shot::volume,
                    1,
                    "sum of the volumes as measured");
            sum.figure(
                    figures, "tack-volume-at-base" + tail, of + base, Shot::at60, 1, "volume x factor, shot by shot");
        }
        if (!sum.faceWithout(Shot::area)) {
            sum.figure(figures, "tack-area" + tail, of + "area sprayed", Shot::area, 0, "length x width, shot by shot");
            sum.rate(
                    figures, "tack-applied" + tail, of + "applied" + sum.uncorrected(), Shot::applied, "volume / area");
            sum.rate(
                    figures,
                    "tack-residual" + tail,
                    of + "residual",
                    Shot::residual,
                    "applied x residue x emulsion's share, weighed by area");
        }
    }

    /** The shots of one product on one surface. */
    private static final class Sprayed {
        private final List<Shot> shots;
        private final List<Ref> entries = new ArrayList<>();
        private final List<String> put = new ArrayList<>();

        Sprayed(List<Shot> shots) {
            this.shots = shots;
            for (Shot shot : shots) {
                entries.addAll(shot.entries());
                shot.put().forEach(p -> put.add(shot.tack().ref() + " " + p));
            }
        }

        /**
         * Whether these are contact faces and none has a part. A face is as a rule tacked without a gauge and has no
         * width; that it was tacked, and with how much, is all there is to say.
         */
        boolean faceWithout(Function<Shot, Reckoned> part) {
            return shots.stream()
                    .allMatch(s -> s.tack().entry().target().face() != null
                            && !part.apply(s).known());
        }

        Working working(String formula) {
            return new Working(
                    formula,
                    List.copyOf(put),
                    List.copyOf(entries),
                    "the shots; tables and formulas as named in each step");
        }

        /** A sum over the shots that have the amount; the label says of how many when it is not of all. */
        void figure(
                Figures figures, String id, String label, Function<Shot, Reckoned> part, int decimals, String formula) {
            List<Shot> known = shots.stream().filter(s -> part.apply(s).known()).toList();
            Reckoned sum = known.isEmpty() ? part.apply(shots.get(0)) : Reckoned.of(sum(known, part));
            figures.reckoned(id, label + share(known), sum, decimals, working(formula));
        }

        private static Amount sum(List<Shot> shots, Function<Shot, Reckoned> part) {
            return shots.stream()
                    .map(s -> part.apply(s).amount())
                    .reduce(Amount::plus)
                    .orElseThrow();
        }

        private String share(List<Shot> known) {
            boolean some = !known.isEmpty() && known.size() < shots.size();
            return some ? ", " + known.size() + " of " + shots.size() + " shots" : "";
        }

        /** A rate over the shots that have it, each weighed by its area. */
        void rate(Figures figures, String id, String label, Function<Shot, Reckoned> rate, String formula) {
            List<Shot> known = shots.stream()
                    .filter(s -> rate.apply(s).known() && s.area().known())
                    .toList();
            Reckoned all = known.isEmpty() ? rate.apply(shots.get(0)) : weighed(known, rate);
            figures.reckoned(id, label + share(known), all, 3, working(formula));
        }

        private static Reckoned weighed(List<Shot> shots, Function<Shot, Reckoned> rate) {
            Amount area = sum(shots, Shot::area);
            Unit unit = rate.apply(shots.get(0)).amount().unit();
            BigDecimal volume = BigDecimal.ZERO;
            for (Shot each : shots) {
                BigDecimal wide = each.area().amount().value();
                volume = volume.add(rate.apply(each).amount().value().multiply(wide));
            }
            Unit wet = unit == Unit.LITRE_PER_SQUARE_METRE ? Unit.LITRE : Unit.GALLON;
            return TackRate.applied(new Amount(volume, wet), area)
                    .map(Reckoned::of)
                    .orElse(Reckoned.not("no area"));
        }

        String uncorrected() {
            return shots.stream().anyMatch(s -> s.applied().known() && !s.corrected()) ? ", volume not corrected" : "";
        }
    }
}
