package screedbook.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place along the reference line as it is written on plans: {@code 12+50.5}, where an equation makes it double with
 * {@code bk} or {@code ah} behind it. The digits behind the plus tell the base: two for 100 ft or 100 m, three for
 * 1000 m. Figures with a point and no plus are miles of mileposts: {@code 12.35}.
 */
public record Station(String text) {
    private static final Pattern FORM = Pattern.compile("(-?)(\\d{1,6})\\+(\\d{2,3})(\\.\\d{1,3})?( bk| ah)?");
    private static final Pattern POST = Pattern.compile("(-?\\d{1,4}\\.\\d{1,4})( bk| ah)?");
    private static final BigDecimal MILE = BigDecimal.valueOf(StationBase.MILEPOSTS.length());

    public Station {
        if (!FORM.matcher(text).matches() && !POST.matcher(text).matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is no station; right would be 12+50.5");
        }
    }

    /** @throws IllegalArgumentException when the text is not a station in full, such as 12+50.5 */
    public static Station of(String text) {
        return new Station(text);
    }

    /** The station at a distance along the line, in feet or metres, to a thousandth; of mileposts to 0.0001 of a mile. */
    public static Station at(BigDecimal distance, StationBase base) {
        if (base == StationBase.MILEPOSTS) {
            BigDecimal miles = distance.divide(MILE, 4, RoundingMode.HALF_UP).stripTrailingZeros();
            return new Station(miles.setScale(Math.max(1, miles.scale())).toPlainString());
        }
        BigDecimal whole = distance.scale() > 3 ? distance.abs().setScale(3, RoundingMode.HALF_UP) : distance.abs();
        BigDecimal[] parts = whole.divideAndRemainder(BigDecimal.valueOf(base.length()));
        String rest = parts[1].toPlainString();
        int point = rest.indexOf('.');
        String front = point < 0 ? rest : rest.substring(0, point);
        String tail = point < 0 ? "" : rest.substring(point);
        String padded = "0".repeat(base.digits() - front.length()) + front + tail;
        return new Station((distance.signum() < 0 ? "-" : "") + parts[0].toBigInteger() + "+" + padded);
    }

    private Matcher parts() {
        Matcher matcher = FORM.matcher(text);
        matcher.matches();
        return matcher;
    }

    /** The miles where it is a place by mileposts. */
    private Optional<Matcher> post() {
        Matcher matcher = POST.matcher(text);
        return matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }

    /** The distance that the figures say, in feet or metres, equations not looked at. */
    public BigDecimal distance() {
        Optional<Matcher> post = post();
        if (post.isPresent()) {
            BigDecimal feet = new BigDecimal(post.get().group(1)).multiply(MILE).stripTrailingZeros();
            return feet.setScale(Math.max(0, feet.scale()));
        }
        Matcher m = parts();
        String digits = m.group(1) + m.group(2) + m.group(3) + (m.group(4) == null ? "" : m.group(4));
        return new BigDecimal(digits);
    }

    /** How many digits stand behind the plus: 2, or 3 where a full station is 1000 m; none of a milepost. */
    public int digits() {
        return post().isPresent() ? 0 : parts().group(3).length();
    }

    /** {@code bk} or {@code ah}, where the figures stand for two places. */
    public Optional<String> side() {
        Optional<Matcher> post = post();
        return Optional.ofNullable(post.isPresent() ? post.get().group(2) : parts().group(5))
                .map(String::strip);
    }

    @Override
    public String toString() {
        return text;
    }
}
