package screedbook;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Words that accuse somebody or judge the work; no finding, label, help or word of a list has one. */
public final class Accusing {
    /**
     * Beginnings of words, and words that must stand as they are. A roller's passes are counted and figures lie where
     * they lie, so these two may stand.
     */
    private static final Pattern WORDS = Pattern.compile(
            "\\b(?:(?:fraud|cheat|violat|fail|illegal|fals|fake|fault|guilt|wrong|error|suspic|tamper|manipulat|penal"
                    + "|blame|negligen|careless|theft|steal|stole|deceiv|misconduct|offen[cds])\\w*"
                    + "|bad|badly|copied|lied|a lie|lies? about|pass|passed|passes (?:the|its|an?)|must not|reject by)\\b",
            Pattern.CASE_INSENSITIVE);

    private Accusing() {}

    /** The words of a text that accuse, as they stand in it. */
    public static List<String> in(String text) {
        return WORDS.matcher(text).results().map(MatchResult::group).toList();
    }
}
