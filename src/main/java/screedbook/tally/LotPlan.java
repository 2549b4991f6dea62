package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import screedbook.calc.RandomNumber;
import screedbook.calc.Sublot;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;

/** The planned tons of each mix, and the lots and sublots that they make. No random place is in it. */
final class LotPlan {
    private final Job job;
    private final Figures figures = new Figures();

    private LotPlan(Job job) {
        this.job = job;
    }

    static Section of(Job job) {
        LotPlan plan = new LotPlan(job);
        Map<String, List<Length>> mixes = new TreeMap<>();
        Length.all(job)
                .forEach(l -> mixes.computeIfAbsent(l.lift().mix(), m -> new ArrayList<>())
                        .add(l));
        mixes.forEach(plan::mix);
        if (RandomPlaces.drawn(job) && !mixes.isEmpty()) {
            plan.method();
        }
        return plan.figures.section("plan-lots", "Tons, lots and samples");
    }

    private void mix(String mix, List<Length> lengths) {
        Amount sum = null;
        List<String> put = new ArrayList<>();
        for (Length length : lengths) {
            Amount tons = length.tons(job).orElse(null);
            if (tons != null) {
                sum = sum == null ? tons : sum.plus(tons);
                put.add(length.put() + ", " + length.lift().thickness().text() + ": "
                        + tons.shown(1).text());
            }
        }
        if (sum == null) {
            return;
        }
        String source = job.mix(mix).map(m -> UnitWeight.of(m).source()).orElse("");
        figures.amount(
                "plan-tons." + mix,
                mix + ", tons",
                sum,
                0,
                Figures.working("area x thickness x unit weight", put, List.of(), source));
        lots(mix, sum);
    }

    private void lots(String mix, Amount sum) {
        Lotting lotting = Lotting.of(job).orElse(null);
        if (lotting == null || sum.value().signum() <= 0) {
            return;
        }
        List<Lotting.Cut> cuts = lotting.add(sum.value().setScale(2, RoundingMode.HALF_UP));
        List<String> put = cuts.stream()
                .map(c -> "lot " + c.lot() + " sublot " + c.sublot() + ": "
                        + new Amount(c.to(), sum.unit()).shown(0).text()
                        + (c.to().compareTo(c.size()) < 0
                                ? " of "
                                        + new Amount(c.size(), sum.unit())
                                                .shown(0)
                                                .text()
                                : ""))
                .toList();
        Lotting.Cut last = cuts.get(cuts.size() - 1);
        figures.text(
                "plan-lots." + mix,
                mix + ", lots and sublots",
                last.lot()
                        + (last.lot() == 1 ? " lot, " : " lots, ")
                        + cuts.size()
                        + (cuts.size() == 1 ? " sublot" : " sublots"),
                Figures.working(
                        "planned tons cut by the job's lot and sublot, as if in one run", put, List.of(), "job, lots"));
        figures.count(
                "plan-samples." + mix,
                mix + ", random samples",
                cuts.size() * draws(),
                Figures.working(
                        "sublots x draws in each", List.of(cuts.size() + " x " + draws()), List.of(), "job, lots"));
        trucks(mix, new Amount(cuts.get(0).size(), sum.unit()));
    }

    private int draws() {
        return job.lots().draws() == null ? 1 : job.lots().draws();
    }

    private void trucks(String mix, Amount sublot) {
        Amount load = job.planning().production() == null
                ? null
                : job.planning().production().truckLoad();
        if (load != null && load.value().signum() > 0) {
            BigDecimal trucks = Sublot.trucks(sublot, load);
            figures.text(
                    "plan-sublot-trucks." + mix,
                    mix + ", trucks in a sublot",
                    trucks.setScale(1, RoundingMode.HALF_UP)
                            .stripTrailingZeros()
                            .toPlainString(),
                    Figures.working(
                            "tons of the sublot / truck load",
                            List.of(sublot.text() + " / " + load.text()),
                            List.of(),
                            "ERLPM training, Random Sampling, chapter 6"));
        }
    }

    private void method() {
        String where = job.lots().randomBy() == Lots.RandomBy.PLACES
                ? "the ton's station in its load, and an offset = number x width of the pull, edges kept free"
                : "the load that holds the ton";
        figures.text(
                "plan-random",
                "random places",
                "drawn when a lot begins, shown when a load comes to them",
                Figures.working(
                        "ton = number x tons of the sublot; " + where,
                        List.of(
                                "number: " + RandomNumber.METHOD + ", SHA-256 of"
                                        + " SEED/MIX/LOT/SUBLOT/DRAW/WHAT/NUMBER, first 8 hex digits x 10000 / 2^32, cut,"
                                        + " / 10000",
                                "the record tells the seed's SHA-256 first, the seed when the lot is over",
                                "a number that may not be used is drawn again, both are told"),
                        List.of(),
                        "this program's own method; SHA-256 is FIPS 180-4"));
    }
}
