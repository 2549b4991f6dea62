package screedbook.diary;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.OffsetDateTime;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.job.SignKey;

/**
 * A key that signs seals, in two PEM files (RFC 8410): the secret one belongs on a stick in somebody's pocket, the public
 * one in the job sheet.
 */
public final class SealKey {
    private final PrivateKey secret;
    private final PublicKey open;

    private SealKey(PrivateKey secret, PublicKey open) {
        this.secret = secret;
        this.open = open;
    }

    /**
     * Makes a key.
     *
     * @param file for the secret half, for its owner alone; the public half gets the same name with {@code .pub} behind
     * @throws IOException when one of the files is there already or cannot be written
     */
    public static SealKey make(Path file) throws IOException {
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
            FileAttribute<?>[] own = posix
                    ? new FileAttribute<?>[] {
                        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                    }
                    : new FileAttribute<?>[0];
            write(file, "PRIVATE KEY", pair.getPrivate().getEncoded(), own);
            write(pub(file), "PUBLIC KEY", pair.getPublic().getEncoded(), new FileAttribute<?>[0]);
            return new SealKey(pair.getPrivate(), pair.getPublic());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java has Ed25519 from 15 on", e);
        }
    }

    private static void write(Path file, String what, byte[] bytes, FileAttribute<?>... attributes) throws IOException {
        String text = "-----BEGIN " + what + "-----\n" + Base64.getEncoder().encodeToString(bytes) + "\n-----END "
                + what + "-----\n";
        Files.createFile(file, attributes);
        Files.writeString(file, text, StandardOpenOption.WRITE);
    }

    private static Path pub(Path file) {
        return file.resolveSibling(file.getFileName() + ".pub");
    }

    /** Reads both halves of a key. */
    public static SealKey read(Path file) throws IOException {
        try {
            PrivateKey secret = KeyFactory.getInstance("Ed25519")
                    .generatePrivate(new PKCS8EncodedKeySpec(Base64.getDecoder().decode(pem(file))));
            PublicKey open =
                    SignKey.of(pem(pub(file))).orElseThrow(() -> new IOException(pub(file) + " holds no public key"));
            return new SealKey(secret, open);
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new IOException(file + " holds no key made for this", e);
        }
    }

    private static String pem(Path file) throws IOException {
        return new String(Folder.read(file), StandardCharsets.UTF_8)
                .replaceAll("-----[A-Z ]+-----", "")
                .replaceAll("\\s", "");
    }

    /** The public half, as the job sheet has it. */
    public String text() {
        return SignKey.text(open);
    }

    public String shortForm() {
        return SignKey.shortForm(open);
    }

    /**
     * Signs the newest seal of every closed book of a shift; one that this key signed already stays as it is.
     *
     * @param who initials of the one who signs
     * @return the files with the signatures, by whether they were made just now
     * @throws IOException when the disk refuses, or the two halves are not of one key
     */
    public Map<String, Boolean> sign(JobFolder folder, ShiftId shift, String who, OffsetDateTime now)
            throws IOException {
        Map<String, Boolean> signed = new LinkedHashMap<>();
        for (BookRead book : folder.shift(shift).books()) {
            if (book.seal().isPresent()) {
                FileName name = closing(book);
                String file = name.beside(shortForm() + ".sig");
                Path at = folder.files(shift).entrySet().stream()
                        .filter(each -> each.getKey().name().stem().equals(name.stem()))
                        .map(Map.Entry::getValue)
                        .reduce((first, later) -> later)
                        .orElseThrow()
                        .resolveSibling(file);
                boolean there = Files.exists(at);
                if (!there) {
                    Folder.replace(at, signature(book, shift, who, now), FileChannel::open);
                    Folder.closed(at);
                }
                signed.put(file, !there);
            }
        }
        return signed;
    }

    private byte[] signature(BookRead book, ShiftId shift, String who, OffsetDateTime now) throws IOException {
        String job = book.lines().stream()
                .filter(Line.class::isInstance)
                .map(line -> ((Line) line).job())
                .findFirst()
                .orElse("");
        try {
            Signature made = Signature.sign(job, shift, book.seal().orElseThrow(), who, now, secret, open);
            if (!made.fits()) {
                throw new IOException("the public key is not that of the secret one");
            }
            return made.text().getBytes(StandardCharsets.UTF_8);
        } catch (GeneralSecurityException e) {
            throw new IOException("it cannot be signed with this key: " + e.getMessage(), e);
        }
    }

    /** The newest closed file of a book. */
    private static FileName closing(BookRead book) {
        return book.files().stream()
                .filter(FileRead::closed)
                .map(file -> FileName.diary(file.file()).orElseThrow())
                .reduce((first, later) -> later)
                .orElseThrow()
                .name();
    }

    /** Those whom a job names with this key, in any revision or as it is now. */
    public Set<String> owners(JobFolder folder) {
        return Signatures.owners(folder).getOrDefault(text(), Set.of());
    }
}
