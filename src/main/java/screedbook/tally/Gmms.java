package screedbook.tally;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import screedbook.entry.Result;
import screedbook.entry.Standing;
import screedbook.job.Job;

/** The theoretical maximum against which a density is held: its own, else the lot's, else the day's, else the mix's. */
final class Gmms {
    private final Job job;
    private final SoFar soFar;
    private final List<Standing<Result>> told;

    /** A figure and where it is from. */
    record Gmm(BigDecimal value, String from) {
        String put() {
            return "Gmm " + value.toPlainString() + ", " + from;
        }
    }

    Gmms(Job job, SoFar soFar, List<Standing<Result>> results) {
        this.job = job;
        this.soFar = soFar;
        this.told = results.stream()
                .filter(r -> r.entry().what() == Result.What.GMM
                        && positive(r.entry().found()))
                .toList();
    }

    private static boolean positive(BigDecimal value) {
        return value != null && value.signum() > 0;
    }

    /**
     * @param own as keyed with the test; null without one
     * @param names under which a result may tell one of its own
     * @param on the date of the test's shift
     */
    Optional<Gmm> of(BigDecimal own, List<String> names, String mix, Integer lot, LocalDate on) {
        if (positive(own)) {
            return Optional.of(new Gmm(own, "keyed with it"));
        }
        return newest(r -> r.sample() != null && names.contains(r.sample()), "its own")
                .or(() -> lot == null
                        ? Optional.empty()
                        : newest(r -> r.sample() == null && same(mix, r.mix()) && lot.equals(r.lot()), "of the lot"))
                .or(() -> ofDay(mix, on))
                .or(() -> job.mix(mix)
                        .filter(m -> positive(m.gmm()))
                        .map(m -> new Gmm(
                                m.gmm(), "of the mix" + (m.gmmDate() == null ? "" : ", design of " + m.gmmDate()))));
    }

    private Optional<Gmm> ofDay(String mix, LocalDate on) {
        Standing<Result> last = null;
        for (Standing<Result> each : told) {
            Result r = each.entry();
            boolean of = r.sample() == null && r.lot() == null && same(mix, r.mix());
            boolean newer = last == null || !tested(each).isBefore(tested(last));
            last = of && newer && !tested(each).isAfter(on) ? each : last;
        }
        return Optional.ofNullable(last).map(r -> new Gmm(r.entry().found(), "of " + tested(r) + ", " + soFar.name(r)));
    }

    private static LocalDate tested(Standing<Result> result) {
        LocalDate tested = result.entry().tested();
        return tested == null ? result.line().shift().date() : tested;
    }

    private static boolean same(String mix, String told) {
        return told == null || told.equals(mix);
    }

    private Optional<Gmm> newest(Predicate<Result> which, String whose) {
        Standing<Result> last = null;
        for (Standing<Result> each : told) {
            last = which.test(each.entry()) ? each : last;
        }
        return Optional.ofNullable(last).map(r -> new Gmm(r.entry().found(), whose + ", " + soFar.name(r)));
    }
}
