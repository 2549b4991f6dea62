package screedbook.diary;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SignatureException;
import java.time.OffsetDateTime;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Moment;
import screedbook.entry.Seal;
import screedbook.entry.ShiftId;
import screedbook.job.SignKey;

/**
 * A seal that somebody signed, as the file beside it has it: lines of plain text, a word and its value, of which the last
 * is the signature (Ed25519, RFC 8032, base64) of the bytes of all lines before it.
 *
 * @param text all lines, each with its LF
 * @param values by their words
 */
record Signature(String text, Map<String, String> values) {
    private static final String FORM = "screedbook seal 1";
    private static final List<String> WORDS =
            List.of("job", "shift", "book", "lines", "seal", "who", "time", "key", "signature");

    /** Signs a seal. */
    static Signature sign(
            String job, ShiftId shift, Seal seal, String who, OffsetDateTime time, PrivateKey key, PublicKey open)
            throws GeneralSecurityException {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("job", job);
        values.put("shift", shift.toString());
        values.put("book", seal.book());
        values.put("lines", "" + seal.lines());
        values.put("seal", seal.sha256());
        values.put("who", who);
        values.put("time", Moment.text(time));
        values.put("key", SignKey.text(open));
        StringBuilder text = new StringBuilder(FORM).append('\n');
        values.forEach(
                (word, value) -> text.append(word).append(' ').append(value).append('\n'));
        java.security.Signature signer = java.security.Signature.getInstance("Ed25519");
        signer.initSign(key);
        signer.update(text.toString().getBytes(StandardCharsets.UTF_8));
        String signed = Base64.getEncoder().encodeToString(signer.sign());
        values.put("signature", signed);
        return new Signature(text + "signature " + signed + "\n", values);
    }

    /** A file of this form; empty when it is none. */
    static Optional<Signature> read(Path file) throws IOException {
        String text = new String(Folder.read(file), StandardCharsets.UTF_8);
        String[] lines = text.split("\n", -1);
        Map<String, String> values = new LinkedHashMap<>();
        boolean formed = lines.length == WORDS.size() + 2 && lines[0].equals(FORM) && lines[WORDS.size() + 1].isEmpty();
        for (int i = 0; formed && i < WORDS.size(); i++) {
            String word = WORDS.get(i) + " ";
            formed = lines[i + 1].startsWith(word);
            values.put(WORDS.get(i), formed ? lines[i + 1].substring(word.length()) : "");
        }
        return formed ? Optional.of(new Signature(text, values)) : Optional.empty();
    }

    String value(String word) {
        return values.get(word);
    }

    Optional<PublicKey> key() {
        return SignKey.of(value("key"));
    }

    /** Whether the signature is that of the lines before it by the key that they name. */
    boolean fits() {
        Optional<PublicKey> key = key();
        if (key.isEmpty()) {
            return false;
        }
        try {
            java.security.Signature signer = java.security.Signature.getInstance("Ed25519");
            signer.initVerify(key.get());
            String message = text.substring(0, text.lastIndexOf("signature "));
            signer.update(message.getBytes(StandardCharsets.UTF_8));
            return signer.verify(Base64.getDecoder().decode(value("signature")));
        } catch (SignatureException | IllegalArgumentException e) {
            return false;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java has Ed25519 from 15 on", e);
        }
    }
}
