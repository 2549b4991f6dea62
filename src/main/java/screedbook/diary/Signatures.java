package screedbook.diary;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import screedbook.entry.Closing;
import screedbook.entry.Damage;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.job.Agreed;
import screedbook.job.SignKey;

/** The signatures beside a job's diaries, each held against the closing line and the keys that the job names. */
final class Signatures {
    private final Map<String, Set<String>> owners;
    /** The hash of every closing line, by shift and book. */
    private final Map<String, Set<String>> closings = new HashMap<>();

    private final Map<String, List<Verdict.Signed>> signed = new HashMap<>();
    private final List<Damage> damages = new ArrayList<>();

    Signatures(JobFolder folder) {
        owners = owners(folder);
    }

    /** Initials by the keys that stand beside them, in every revision of the job and in the file as it is. */
    static Map<String, Set<String>> owners(JobFolder folder) {
        Map<String, Set<String>> owners = new HashMap<>();
        Stream.concat(folder.revisions().stream().map(Agreed::job), folder.job().job().stream())
                .flatMap(job -> job.people().stream())
                .filter(person -> person.publicKey() != null)
                .forEach(person -> owners.computeIfAbsent(person.publicKey().strip(), key -> new TreeSet<>())
                        .add(person.initials()));
        return owners;
    }

    /** Whether seals of this job are meant to be signed. */
    boolean expected() {
        return !owners.isEmpty() || !signed.isEmpty();
    }

    void closings(ShiftId shift, BookRead book) {
        Set<String> hashes = closings.computeIfAbsent(shift + "." + book.book(), name -> new TreeSet<>());
        book.lines().stream()
                .filter(each -> each instanceof Line line && line.entry() instanceof Closing)
                .forEach(each -> hashes.add(Chain.hash(((Line) each).raw().getBytes(StandardCharsets.UTF_8))));
    }

    /** Looks at every signature in a folder. */
    void look(Path diary) {
        List<String> names;
        try {
            names = Folder.names(diary);
        } catch (IOException e) {
            return;
        }
        for (String name : names) {
            if (name.endsWith(".sig")) {
                try {
                    Signature.read(diary.resolve(name))
                            .ifPresentOrElse(
                                    signature -> held(name, signature),
                                    () -> damaged(name, "it is no signature of a seal"));
                } catch (IOException e) {
                    damaged(name, "it cannot be read: " + Folder.reason(e));
                }
            }
        }
    }

    private void held(String name, Signature signature) {
        String book = signature.value("shift") + "." + signature.value("book");
        if (!signature.fits()) {
            damaged(name, "its signature is not that of what it says");
        } else if (!name.startsWith(book + ".")) {
            damaged(name, "it is of " + book);
        } else if (!closings.getOrDefault(book, Set.of()).contains(signature.value("seal"))) {
            damaged(name, "no closing line of " + book + " has the seal that was signed");
        } else {
            PublicKey key = signature.key().orElseThrow();
            Set<String> named = owners.getOrDefault(SignKey.text(key), Set.of());
            signed.computeIfAbsent(signature.value("seal"), seal -> new ArrayList<>())
                    .add(new Verdict.Signed(
                            signature.value("who"),
                            signature.value("time"),
                            SignKey.shortForm(key),
                            named.contains(signature.value("who"))));
        }
    }

    private void damaged(String name, String said) {
        damages.add(new Damage("diary/" + name, 0, said));
    }

    List<Damage> damages() {
        return damages;
    }

    List<Verdict.Signed> of(String seal) {
        return signed.getOrDefault(seal, List.of());
    }
}
