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
     * @param blank the key of the blank, as a line has it, that would be typed anew: {@code net_ston}
     * @param typed what would be typed there
     * @param also a second blank that would be typed anew with it, as when two values changed places; else null
     */
    public record Offer(String asks, String blank, String typed, Offer also) {
        public Offer(String asks, String blank, String typed) {
            this(asks, blank, typed, null);
        }
    }
}
