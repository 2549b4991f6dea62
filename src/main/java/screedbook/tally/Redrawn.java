package screedbook.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import screedbook.calc.RandomNumber;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Standing;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/**
 * A lot whose seed was told: every number that the record says was drawn for it, drawn again from that seed.
 *
 * @param closed the line that tells the seed
 * @param places how many places of the lot are told
 * @param differs what the record tells otherwise than the seed gives it; empty where all of it is as the seed gives it
 */
public record Redrawn(Standing<Draw> closed, int places, List<String> differs) {
    /** The lots whose seed a shift tells. */
    public static List<Redrawn> of(Day day, ToDate before) {
        List<Draw> all = Stream.concat(
                        before.draws().stream(),
                        day.standing(Draw.class).stream().map(Standing::entry))
                .toList();
        return day.standing(Draw.class).stream()
                .filter(s -> s.entry().step() == Draw.Step.CLOSED && s.entry().seed() != null)
                .filter(s -> s.entry().mix() != null && s.entry().lot() != null)
                .map(s -> of(s, all))
                .toList();
    }

    private static Redrawn of(Standing<Draw> closed, List<Draw> all) {
        Draw told = closed.entry();
        List<Draw> lot = all.stream()
                .filter(d -> told.mix().equals(d.mix()) && told.lot().equals(d.lot()))
                .toList();
        List<String> differs = new ArrayList<>();
        lot.stream()
                .filter(d -> d.step() == Draw.Step.BEGUN)
                .map(d -> d.begun())
                .forEach(b -> hash(b, told.seed(), differs));
        List<Draw> places =
                lot.stream().filter(d -> d.step() == Draw.Step.REACHED).toList();
        Draw.Begun begun = lot.stream()
                .filter(d -> d.step() == Draw.Step.BEGUN)
                .map(Draw::begun)
                .findFirst()
                .orElse(null);
        boolean ours = begun == null || begun.method() == null || begun.method().equals(RandomNumber.METHOD);
        if (ours) {
            places.forEach(p -> place(p, told.seed(), begun, differs));
        }
        return new Redrawn(closed, places.size(), List.copyOf(differs));
    }

    private static void hash(Draw.Begun begun, String seed, List<String> differs) {
        String hash = RandomNumber.sha256(seed);
        if (begun.seedSha256() != null && !begun.seedSha256().equals(hash)) {
            differs.add("the seed's SHA-256 is " + hash.substring(0, 12) + "…, told when the lot began was "
                    + begun.seedSha256());
        }
    }

    private static void place(Draw told, String seed, Draw.Begun begun, List<String> differs) {
        Draw.Reached reached = told.reached();
        if (reached.sublot() == null || reached.nth() == null || reached.tried() == null) {
            return;
        }
        String name = "sublot " + reached.sublot() + " draw " + reached.nth();
        int tons = 0;
        int offsets = 0;
        BigDecimal into = null;
        for (Draw.Tried tried : reached.tried()) {
            if (tried.what() == null) {
                continue;
            }
            int number = tried.what() == Draw.What.TON ? ++tons : ++offsets;
            BigDecimal fraction = RandomNumber.fraction(
                    seed,
                    told.mix(),
                    told.lot(),
                    reached.sublot(),
                    reached.nth(),
                    tried.what().word(),
                    number);
            boolean same = Objects.equals(tried.number(), number)
                    && tried.fraction() != null
                    && tried.fraction().compareTo(fraction) == 0;
            if (!same) {
                differs.add(name + ", " + tried.what().word() + " number " + number + " is " + fraction + ", told "
                        + tried.fraction());
            }
            into = tried.what() == Draw.What.TON ? fraction : into;
        }
        ton(reached, into, size(begun, reached.sublot()), name, differs);
    }

    /** The last ton number is the one that was used. */
    private static void ton(Draw.Reached reached, BigDecimal fraction, Amount size, String name, List<String> differs) {
        if (fraction == null
                || size == null
                || reached.into() == null
                || reached.into().unit() != size.unit()) {
            return;
        }
        BigDecimal into = fraction.multiply(size.value()).setScale(Measure.LOAD.decimals(), RoundingMode.DOWN);
        if (into.compareTo(reached.into().value()) != 0) {
            differs.add(name + " lies " + into + " into the sublot, told "
                    + reached.into().text());
        }
    }

    /** The tons of a sublot as the lot was cut when it began; null where that is not told. */
    private static Amount size(Draw.Begun begun, int sublot) {
        if (begun == null || begun.lotSize() == null && begun.sublotSize() == null) {
            return null;
        }
        Amount whole = begun.lotSize() == null ? begun.sublotSize() : begun.lotSize();
        Amount part = begun.sublotSize() == null ? begun.lotSize() : begun.sublotSize();
        if (whole.unit() != part.unit()) {
            return null;
        }
        BigDecimal left = whole.value().subtract(part.value().multiply(BigDecimal.valueOf(sublot - 1L)));
        return new Amount(left.min(part.value()), part.unit());
    }
}
