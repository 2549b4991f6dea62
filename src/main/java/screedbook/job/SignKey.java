package screedbook.job;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The public half of a key that signs seals (Ed25519, RFC 8032), as a job names it beside a person: the one line of a
 * PEM file, base64 of the form of RFC 8410.
 */
public final class SignKey {
    private static final int BYTES = 44;

    private SignKey() {}

    /** The key of a text; empty when the text is none. */
    public static Optional<PublicKey> of(String text) {
        try {
            byte[] bytes = Base64.getDecoder().decode(text.strip());
            return bytes.length == BYTES
                    ? Optional.of(KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(bytes)))
                    : Optional.empty();
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The text of a key: 60 characters. */
    public static String text(PublicKey key) {
        return Base64.getEncoder().encodeToString(key.getEncoded());
    }

    /** What people hold two keys against each other by: the first eight digits of the SHA-256 of its bytes. */
    public static String shortForm(PublicKey key) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(key.getEncoded());
            return HexFormat.of().formatHex(hash).substring(0, 8);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
