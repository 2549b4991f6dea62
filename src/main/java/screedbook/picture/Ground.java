package screedbook.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.tally.Cover;
import screedbook.tally.Roadwork.Lane;

/** The signs of what was tacked and paved. What asks for a look comes before what is usual. */
final class Ground {
    private static final Map<Character, String> SIGNS = new LinkedHashMap<>();

    static {
        SIGNS.put('=', "= paved on tack");
        SIGNS.put('-', "- paved, no tack noted");
        SIGNS.put('.', ". tacked");
        SIGNS.put('#', "# paved twice");
        SIGNS.put('~', "~ paved by an earlier shift");
    }

    private Ground() {}

    /**
     * The sign of a piece of a lane.
     *
     * @param least how much of the piece has to be so for its sign
     */
    static char at(Lane lane, BigDecimal from, BigDecimal to, BigDecimal least) {
        Cover paved = lane.paved().within(from, to);
        Cover before = lane.before().within(from, to);
        if (reaches(paved.times(2), least) || reaches(paved.and(before), least)) {
            return '#';
        }
        Cover tacked = lane.tacked().within(from, to);
        if (reaches(paved.minus(tacked), least)) {
            return '-';
        }
        if (reaches(paved, least)) {
            return '=';
        }
        if (reaches(tacked, least)) {
            return '.';
        }
        return reaches(before, least) ? '~' : ' ';
    }

    private static boolean reaches(Cover cover, BigDecimal least) {
        return !cover.empty() && cover.length().compareTo(least) >= 0;
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
