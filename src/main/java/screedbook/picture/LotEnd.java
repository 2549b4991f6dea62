package screedbook.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.tally.Filling;
import screedbook.tally.Lot;
import screedbook.tally.Roadwork;
import screedbook.tally.Share;
import screedbook.tally.ToDate;

/**
 * Where a sublot ends on the road.
 *
 * @param at distance along the road, station equations counted
 */
public record LotEnd(String pull, Integer lift, BigDecimal at) {
    /** Where sublots ended in a shift, as far as both ends of the load are known in which one ended. */
    public static List<LotEnd> of(Day day, Job job, ToDate before) {
        Road road = Road.of(job);
        Map<Ref, BigDecimal> tons = new HashMap<>();
        List<LotEnd> ends = new ArrayList<>();
        for (Lot lot : Filling.of(day, job, before).lots()) {
            for (Lot.Sublot sublot : lot.sublots()) {
                List<Lot.Piece> pieces = sublot.pieces().stream()
                        .filter(p -> p.load().shift().equals(day.shift()))
                        .toList();
                pieces.forEach(p -> tons.merge(p.load().ticket(), p.tons().value(), BigDecimal::add));
                if (sublot.over() && !pieces.isEmpty()) {
                    Lot.Piece last = pieces.get(pieces.size() - 1);
                    end(last, tons.get(last.load().ticket()), road).ifPresent(ends::add);
                }
            }
        }
        return List.copyOf(ends);
    }

    /** As far into the load's length as into its tons. */
    private static Optional<LotEnd> end(Lot.Piece last, BigDecimal tons, Road road) {
        BigDecimal whole = last.load().placed().value();
        Optional<Share> share = last.load().shares().stream()
                .filter(s -> s.from() != null && s.to() != null)
                .findFirst();
        return whole.signum() == 0
                ? Optional.empty()
                : share.map(s -> {
                    BigDecimal from = road.along(s.from());
                    BigDecimal length = road.along(s.to()).subtract(from);
                    BigDecimal into = length.multiply(tons).divide(whole, MathContext.DECIMAL128);
                    return new LotEnd(s.pull(), s.lift(), from.add(into));
                });
    }

    boolean of(Roadwork.Lane lane) {
        return Objects.equals(lane.pull(), pull) && Objects.equals(lane.lift(), lift);
    }
}
