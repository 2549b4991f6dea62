package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.tally.Cover;
import screedbook.tally.Roadwork.Lane;
import screedbook.tally.Stretch;

/** The signs of what was tacked and paved. What asks for a look comes before what is usual. */
final class GroundSigns {
    private static final Map<Character, String> SIGNS = new LinkedHashMap<>();

    static {
        SIGNS.put('=', "= paved on tack");
        SIGNS.put('-', "- paved, no tack noted");
        SIGNS.put('.', ". tacked");
        SIGNS.put('#', "# paved twice");
        SIGNS.put('~', "~ paved by an earlier shift");
    }

    /** The signs as they take each other's place, the first before the others. */
    private static final String ORDER = "#-=.~";

    private GroundSigns() {}

    /**
     * The line of a lane.
     *
     * @param first the column of the road, counted from its zero, with which the line begins
     * @param step length of a column
     * @param least how much of a column has to be so for its sign
     */
    static char[] line(Lane lane, long first, int columns, int step, BigDecimal least) {
        List<Cover> covers = List.of(
                lane.paved().times(2).plus(lane.paved().and(lane.before())),
                lane.bare(),
                lane.paved(),
                lane.tacked(),
                lane.before());
        char[] line = new char[columns];
        Arrays.fill(line, ' ');
        for (int sign = covers.size() - 1; sign >= 0; sign--) {
            BigDecimal[] lengths = lengths(covers.get(sign), first, columns, step);
            for (int i = 0; i < columns; i++) {
                if (lengths[i].compareTo(least) >= 0) {
                    line[i] = ORDER.charAt(sign);
                }
            }
        }
        return line;
    }

    /** How much of each column is covered. */
    private static BigDecimal[] lengths(Cover cover, long first, int columns, int step) {
        BigDecimal[] lengths = new BigDecimal[columns];
        Arrays.fill(lengths, BigDecimal.ZERO);
        BigDecimal wide = BigDecimal.valueOf(step);
        for (Stretch each : cover.joined()) {
            long from = each.low().divide(wide, 0, RoundingMode.FLOOR).longValueExact() - first;
            for (int i = (int) Math.max(0, from); i < columns; i++) {
                BigDecimal low = wide.multiply(BigDecimal.valueOf(first + i));
                if (low.compareTo(each.high()) >= 0) {
                    break;
                }
                BigDecimal part =
                        each.high().min(low.add(wide)).subtract(each.low().max(low));
                lengths[i] = lengths[i].add(part);
            }
        }
        return lengths;
    }

    /** What the signs of a line mean, each once. */
    static List<String> told(char[] line) {
        List<String> told = new ArrayList<>();
        String signs = new String(line);
        SIGNS.forEach((sign, means) -> {
            if (signs.indexOf(sign) >= 0) {
                told.add(means);
            }
        });
        return told;
    }
}
