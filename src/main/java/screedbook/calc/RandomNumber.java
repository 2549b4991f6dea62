package screedbook.calc;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Random numbers that anybody can draw again from their seed with a SHA-256 program and four kinds of arithmetic; no
 * table is needed.
 *
 * <p>The text {@code seed/mix/lot/sublot/place/what/number} is hashed (UTF-8, no line end). The first eight hexadecimal
 * digits are a whole number; times 10000, over 4294967296, cut to a whole number, over 10000 it is a fraction of four
 * decimals from 0.0000 to 0.9999. In a shell:
 *
 * <pre>h=$(printf %s 'SEED/12.5-70A/1/2/1/ton/1' | sha256sum); echo $((0x${h:0:8} * 10000 / 4294967296))</pre>
 *
 * The method is this program's own; SHA-256 is FIPS 180-4.
 */
public final class RandomNumber {
    /** The method as it is named in the record; another method would get another name. */
    public static final String METHOD = "sha256-fraction-4";

    private static final BigDecimal TEN_THOUSAND = BigDecimal.valueOf(10_000);

    private RandomNumber() {}

    /**
     * The fraction for one text.
     *
     * @param what {@code ton} or {@code offset}
     * @param number from 1; 2 is the one drawn when 1 could not be used
     */
    public static BigDecimal fraction(
            String seed, String mix, int lot, int sublot, int place, String what, int number) {
        return fraction(String.join("/", seed, mix, "" + lot, "" + sublot, "" + place, what, "" + number));
    }

    /** The fraction that a text makes, with four decimals. */
    static BigDecimal fraction(String text) {
        long first = Long.parseLong(sha256(text).substring(0, 8), 16);
        return BigDecimal.valueOf(first * 10_000 >> 32).divide(TEN_THOUSAND).setScale(4);
    }

    /** SHA-256 of a text's UTF-8 bytes, in hexadecimal digits; a seed is told by it before it may be known. */
    public static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
