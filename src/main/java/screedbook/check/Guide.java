package screedbook.check;

import java.util.List;

/**
 * What stands beside a blank while it is typed: the limit before the number, the verdict with every digit, and the
 * likely slip.
 *
 * @param limit {@code at least 270}, {@code no limit set}, {@code usual tare 27,400}; empty where nothing is to be said
 * @param clause where it comes from, short: {@code practice, PG 70}
 * @param working the full sentence for the working screen
 * @param offers what the person may have meant; never taken silently
 */
public record Guide(String limit, String clause, Verdict verdict, String working, List<Offer> offers) {
    public static final Guide NOTHING = new Guide("", "", Verdict.NONE, "", List.of());

    /**
     * A likely slip.
     *
     * @param asks {@code pounds? 23.16 T}
     * @param blank the key of the blank (name without unit) that would be typed anew
     * @param typed what would be typed there
     */
    public record Offer(String asks, String blank, String typed) {}
}
