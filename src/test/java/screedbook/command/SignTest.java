package screedbook.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.PublicKey;
import java.security.Signature;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.entry.Seal;
import screedbook.job.SignKey;
import screedbook.report.Schema;
import screedbook.shelf.KeptShift;

/** Seals signed with a key that is not on the laptop, and what verify says of them. */
class SignTest {
    @TempDir
    Path folder;

    private Path job;
    private Path key;
    private String pub;

    @BeforeEach
    void aJobThatNamesAKey() throws IOException {
        job = folder.resolve("bend");
        key = folder.resolve("stick/rk");
        Files.createDirectories(key.getParent());
        pub = made(key);
        KeptShift.job(job);
        names("AB", pub);
    }

    private static String made(Path key) throws IOException {
        Said made = Said.by("key", key);
        assertThat(made.exit()).as(made.err()).isZero();
        return Files.readAllLines(key.resolveSibling(key.getFileName() + ".pub"))
                .get(1);
    }

    private void names(String who, String key) throws IOException {
        String text = Files.readString(job.resolve("job.json"));
        String person = "\"initials\": \"" + who + "\",";
        assertThat(text).contains(person);
        Files.writeString(job.resolve("job.json"), text.replace(person, person + " \"public_key\": \"" + key + "\","));
    }

    private Seal closed() throws IOException {
        return KeptShift.opened(JobFolder.at(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "20.10")
                .closed();
    }

    private Path sig() throws IOException {
        try (var files = Files.list(job.resolve("diary"))) {
            return files.filter(file -> file.toString().endsWith(".sig"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private String shortForm() {
        return SignKey.shortForm(SignKey.of(pub).orElseThrow());
    }

    private void rewrite(Path file, String text) throws IOException {
        Files.delete(file);
        Files.writeString(file, text);
    }

    /** RFC 8032, section 7.1, test 1: key, empty message and signature from memory; a mistake in them would not fit. */
    @Test
    void aPublishedSignatureFitsTheKeyThatIsReadTheSameWay() throws Exception {
        byte[] raw = HexFormat.of().parseHex("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
        byte[] signed = HexFormat.of()
                .parseHex("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e3970"
                        + "1cf9b46bd25bf5f0595bbe24655141438e7a100b");
        byte[] head = HexFormat.of().parseHex("302a300506032b6570032100");
        byte[] whole = new byte[44];
        System.arraycopy(head, 0, whole, 0, 12);
        System.arraycopy(raw, 0, whole, 12, 32);
        PublicKey key = SignKey.of(Base64.getEncoder().encodeToString(whole)).orElseThrow();
        Signature signer = Signature.getInstance("Ed25519");
        signer.initVerify(key);
        assertThat(signer.verify(signed)).isTrue();
        signer.initVerify(key);
        signer.update((byte) 0);
        assertThat(signer.verify(signed)).isFalse();
        assertThat(SignKey.text(key)).isEqualTo(Base64.getEncoder().encodeToString(whole));
    }

    @Test
    void aKeyIsForItsOwnerAloneAndNotBesideTheSeals() throws IOException {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
                .isEqualTo("rw-------");
        Said again = Said.by("key", key);
        assertThat(again.exit()).isEqualTo(3);
        assertThat(again.err()).contains("is there already");
        Said inside = Said.by("key", job.resolve("diary/rk"));
        assertThat(inside.exit()).isEqualTo(2);
        assertThat(inside.err()).contains("a key does not belong in the folder of a job");
        assertThat(Said.by("key", folder.resolve("nowhere/rk")).exit()).isEqualTo(3);
    }

    @Test
    void verifySaysWhoSignedAndWhatIsNotSigned() throws IOException {
        Seal seal = closed();
        assertThat(Said.by("verify", job).out())
                .contains("  seal of 2026-06-03-day paver  " + seal.shortForm() + "\n    not signed\n");

        Said signed = Said.by("sign", job, "--key", key);
        Said said = Said.by("verify", job);
        String json = Said.by("verify", job, "--format", "json").out();

        assertThat(signed).isEqualTo(new Said(0, "signed: diary/2026-06-03-day.paver." + shortForm() + ".sig\n", ""));
        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("    signed by AB at 2026-06-05T12:00:00+00:00 with the key " + shortForm() + "\n")
                .doesNotContain("not signed", "does not name");
        assertThat(Schema.shipped("verify.json").wrongs(json)).isEmpty();
        Map<?, ?> one = (Map<?, ?>) ((List<?>) ((Map<?, ?>) Schema.parse(json)).get("jobs")).get(0);
        Map<?, ?> first = (Map<?, ?>) ((List<?>) one.get("seals")).get(0);
        assertThat(first.get("signatures"))
                .isEqualTo(List.of(
                        Map.of("who", "AB", "time", "2026-06-05T12:00:00+00:00", "key", shortForm(), "named", true)));
        assertThat(Said.by("sign", job, "--key", key).out()).startsWith("was signed before: ");
    }

    @Test
    void aSecondPersonSignsBesideTheFirstAndOneWhomTheJobDoesNotNameIsSaid() throws IOException {
        closed();
        Path other = folder.resolve("stick/jd");
        made(other);
        assertThat(Said.by("sign", job, "--key", key).exit()).isZero();
        assertThat(Said.by("sign", job, "--key", other))
                .satisfies(no -> assertThat(no.exit()).isEqualTo(2))
                .satisfies(no -> assertThat(no.err()).contains("the job names this key for nobody"));
        assertThat(Said.by("sign", job, "--key", other, "--who", "JD").exit()).isZero();

        Said said = Said.by("verify", job);

        assertThat(said.exit()).isZero();
        assertThat(said.out())
                .contains("    signed by AB at ")
                .containsPattern(
                        "    signed by JD at .* with the key [0-9a-f]{8}, which the job does not name for JD\n");
        assertThat(Said.by("sign", job, "--key", other, "--who", "J\u001bD").exit())
                .isEqualTo(2);
    }

    /** Everything in the diary computed anew, so that every hash fits: only what was signed tells. */
    @Test
    void aRecordThatSomebodyComputedAnewIsFoundByItsSignature() throws IOException {
        closed();
        Said.by("sign", job, "--key", key);
        String signature = Files.readString(sig());
        try (var files = Files.list(job.resolve("diary"))) {
            for (Path each : files.toList()) {
                Files.delete(each);
            }
        }
        KeptShift.opened(JobFolder.at(job), "2026-06-03-day", "paver")
                .ticket("07:00", "48217", "29.10")
                .closed();
        assertThat(Said.by("verify", job).exit())
                .as("hashes alone do not find it")
                .isZero();
        Files.writeString(job.resolve("diary/2026-06-03-day.paver." + shortForm() + ".sig"), signature);

        Said said = Said.by("verify", job);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out())
                .contains("no closing line of 2026-06-03-day.paver has the seal that was signed")
                .contains("    not signed\n");
    }

    @Test
    void anyLineOfASignatureThatIsChangedIsSaid() throws IOException {
        closed();
        Said.by("sign", job, "--key", key);
        Path sig = sig();
        List<String> lines = Files.readAllLines(sig);
        Path other = folder.resolve("stick/jd");
        String otherKey = made(other);
        for (int i = 0; i < lines.size(); i++) {
            List<String> changed = new ArrayList<>(lines);
            String line = lines.get(i);
            changed.set(
                    i,
                    line.startsWith("key ")
                            ? "key " + otherKey
                            : line.substring(0, line.length() - 3)
                                    + "xQ=".substring(line.endsWith("=") ? 0 : 1, 3)
                                    + (line.endsWith("=") ? "" : "x"));
            rewrite(sig, String.join("\n", changed) + "\n");
            Said said = Said.by("verify", job);
            assertThat(said.exit()).as(changed.get(i)).isEqualTo(1);
            assertThat(said.out()).as(changed.get(i)).contains("diary/" + sig.getFileName() + ": it");
        }
        rewrite(sig, "");
        assertThat(Said.by("verify", job).out()).contains("it is no signature of a seal");
        rewrite(sig, String.join("\n", lines) + "\n");
        assertThat(Said.by("verify", job).exit()).isZero();
        Files.move(sig, sig.resolveSibling("2026-06-04-day.paver.12345678.sig"));
        assertThat(Said.by("verify", job).out()).contains("it is of 2026-06-03-day.paver");
    }

    @Test
    void whatIsOpenOrNotAsItWasWrittenIsNotSigned() throws IOException {
        KeptShift kept =
                KeptShift.opened(JobFolder.at(job), "2026-06-03-day", "paver").ticket("07:00", "48217", "20.10");
        assertThat(Said.by("sign", job, "--key", key).err())
                .isEqualTo("screedbook sign: no book of 2026-06-03-day is closed; there is no seal to sign\n");
        kept.closed();
        Path diary = job.resolve("diary/2026-06-03-day.paver.jsonl");
        rewrite(diary, Files.readString(diary).replace("20.10", "29.10"));
        Said said = Said.by("sign", job, "--key", key);
        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.err()).contains("what is not as it was written is not signed");
        assertThat(Said.by("sign", job, "--key", job.resolve("job.json")).err()).contains("holds no key made for this");
    }

    @Test
    void aSignatureIsCarriedAndOneOfAnEarlierCloseStands() throws IOException {
        closed();
        Said.by("sign", job, "--key", key);
        KeptShift.again(JobFolder.at(job), "2026-06-03-day", "paver", "18:00")
                .ticket("08:00", "48299", "21.00")
                .closed();
        assertThat(Said.by("verify", job).exit()).isZero();
        assertThat(Said.by("verify", job).out()).contains("    not signed\n");
        assertThat(Said.by("sign", job, "--key", key).out()).contains("2026-06-03-day.paver.r2." + shortForm());
        assertThat(Said.by("carry", job, folder.resolve("copy")).exit()).isZero();
        assertThat(Said.by("verify", folder.resolve("copy")).out()).contains("    signed by AB");
        assertThat(Said.by("archive", job, "--to", folder.resolve("archive")).exit())
                .isZero();
        Said archived = Said.by("verify", folder.resolve("archive"));
        assertThat(archived.exit()).as(archived.out()).isZero();
        assertThat(archived.out()).contains("    signed by AB");
    }

    @Test
    void aKeyThatIsNoneIsToldInTheJobSheet() throws IOException {
        Files.writeString(
                job.resolve("job.json"),
                Files.readString(job.resolve("job.json")).replace(pub, "MCowBQYDK2Vw"));
        assertThat(JobFolder.at(job).job().troubles())
                .extracting(trouble -> trouble.text())
                .anyMatch(text -> text.contains("public_key is MCowBQYDK2Vw")
                        && text.contains("right would be: the 60 characters of a .pub file"));
    }

    /** The README's way to look at a signature without this program. */
    @Test
    void anotherProgramFindsTheSameSignatureRight() throws Exception {
        boolean there = Files.isExecutable(Path.of("/usr/bin/openssl"));
        if (!there) {
            System.out.println("NOT TESTED: a signature looked at by another program: there is no openssl");
        }
        assumeTrue(there, "needs openssl");
        closed();
        Said.by("sign", job, "--key", key);
        assertThat(openssl(sig())).contains("Signature Verified Successfully");
        rewrite(sig(), Files.readString(sig()).replace("lines 3", "lines 4"));
        assertThat(openssl(sig())).doesNotContain("Signature Verified Successfully");
    }

    private String openssl(Path sig) throws Exception {
        String script = Files.readString(Path.of("README.md"))
                .lines()
                .filter(line -> line.contains("openssl pkeyutl"))
                .findFirst()
                .orElseThrow()
                .replace("X.sig", sig.toString())
                .replace("rk.pub", key + ".pub");
        Process process = new ProcessBuilder("sh", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        process.waitFor();
        return said;
    }
}
