package screedbook.diary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TornTailTest {
    private static final byte[] SIX = Lines.file(6);

    @TempDir
    Path folder;

    @Test
    void aFileCutAtAnyByteKeepsEveryWholeLineAndItsTailIsKeptAside() throws IOException {
        for (int cut = 0; cut <= SIX.length; cut++) {
            Path here = folder.resolve("cut-" + cut);
            write(here, Arrays.copyOf(SIX, cut));
            int whole = lineEnds(SIX, cut);
            int tailAt = lastLineEnd(SIX, cut);

            Access.Opened opened = Lines.opened(here, FileChannel::open);
            try (LineFile file = opened.file()) {
                assertThat(file.lines()).as("cut at %d", cut).isEqualTo(whole);
                assertThat(opened.left()).isEmpty();
                assertThat(opened.torn().isPresent()).isEqualTo(cut > tailAt);
                if (cut > tailAt) {
                    Access.Torn aside = opened.torn().get();
                    byte[] kept = Files.readAllBytes(here.resolve(aside.sidecar()));
                    assertThat(kept).isEqualTo(Arrays.copyOfRange(SIX, tailAt, cut));
                    assertThat(aside)
                            .isEqualTo(new Access.Torn(
                                    Lines.NIGHT.text(),
                                    Lines.NIGHT.text() + ".torn-" + tailAt,
                                    tailAt,
                                    cut - tailAt,
                                    Chain.hash(kept)));
                }
                assertThat(Files.readAllBytes(file.path())).isEqualTo(Arrays.copyOf(SIX, tailAt));
                Lines.appended(file);
            }
            byte[] after = Files.readAllBytes(here.resolve(Lines.NIGHT.text()));
            Chain.Walk walk = Chain.walk(after, Chain.NOTHING_BEFORE);
            assertThat(walk.asWritten()).isTrue();
            assertThat(walk.lines()).hasSize(whole + 1);
        }
    }

    /** A power cut leaves sectors of zeros or of something else behind, with line ends in them; nothing is lost. */
    @Test
    void noByteIsLostWhateverAPowerCutLeavesBehindTheLastLine() throws IOException {
        Random random = new Random(20260603);
        for (int round = 0; round < 150; round++) {
            byte[] rest = new byte[1 + random.nextInt(700)];
            if (round % 3 > 0) {
                random.nextBytes(rest);
            }
            if (round % 3 == 2) {
                rest[random.nextInt(rest.length)] = '\n';
                rest[rest.length - 1] = '\n';
            }
            ByteArrayOutputStream found = new ByteArrayOutputStream();
            found.writeBytes(SIX);
            found.writeBytes(rest);
            Path here = folder.resolve("round-" + round);
            write(here, found.toByteArray());

            Access.Opened opened = Lines.opened(here, FileChannel::open);
            opened.file().close();
            byte[] diary = Files.readAllBytes(here.resolve(Lines.NIGHT.text()));
            ByteArrayOutputStream kept = new ByteArrayOutputStream();
            kept.writeBytes(diary);
            if (opened.torn().isPresent()) {
                kept.writeBytes(
                        Files.readAllBytes(here.resolve(opened.torn().get().sidecar())));
            }
            assertThat(kept.toByteArray()).as("round %d", round).isEqualTo(found.toByteArray());
            assertThat(diary).startsWith(SIX);
            assertThat(opened.torn().isPresent() || opened.left().isPresent()).isTrue();
        }
    }

    @Test
    void theTailIsForcedAsideWithItsNameBeforeItIsCutOff() throws IOException {
        write(folder, Arrays.copyOf(SIX, SIX.length - 5));
        BadDisk disk = new BadDisk();
        int tailAt = lastLineEnd(SIX, SIX.length - 5);
        String name = Lines.NIGHT.text();
        Lines.open(folder, disk).close();
        assertThat(disk.asked)
                .containsExactly(
                        "open " + name,
                        "open " + name + ".torn-" + tailAt,
                        "write " + name + ".torn-" + tailAt,
                        "force " + name + ".torn-" + tailAt,
                        "close " + name + ".torn-" + tailAt,
                        "open " + folder.getFileName(),
                        "force " + folder.getFileName(),
                        "close " + folder.getFileName(),
                        "truncate " + name,
                        "force " + name,
                        "open " + folder.getFileName(),
                        "force " + folder.getFileName(),
                        "close " + folder.getFileName(),
                        "close " + name);
    }

    @Test
    void aTailThatCannotBeCutIsLeftAndANewSegmentGoesOn() throws IOException {
        byte[] torn = Arrays.copyOf(SIX, SIX.length - 5);
        write(folder, torn);
        BadDisk disk = new BadDisk();
        disk.truncateFails = true;
        Access.Opened opened = Lines.opened(folder, disk);
        try (LineFile file = opened.file()) {
            assertThat(opened.left().get().cause()).isEqualTo(Cause.NOT_CUT);
            assertThat(file.name().text()).isEqualTo("2026-06-03-night.paver-b.jsonl");
            assertThat(file.head()).isEqualTo(Chain.walk(Lines.file(5), null).head());
            Lines.appended(file);
        }
        assertThat(Files.readAllBytes(folder.resolve(Lines.NIGHT.text()))).isEqualTo(torn);

        disk.truncateFails = false;
        Access.Opened again = Lines.opened(folder, disk);
        again.file().close();
        assertThat(again.file().name().segment()).isEqualTo('b');
        assertThat(again.left()).isEmpty();
        assertThat(Files.readAllBytes(folder.resolve(Lines.NIGHT.text()))).isEqualTo(torn);
    }

    @Test
    void anOpeningThatWasCutShortKeepsNothingTwiceAndLosesNothing() throws IOException {
        int cut = SIX.length - 5;
        int tailAt = lastLineEnd(SIX, cut);
        write(folder, Arrays.copyOf(SIX, cut));
        Path sidecar = folder.resolve(Lines.NIGHT.text() + ".torn-" + tailAt);
        Files.write(sidecar, Arrays.copyOfRange(SIX, tailAt, cut));
        Access.Opened same = Lines.opened(folder, FileChannel::open);
        same.file().close();
        assertThat(same.torn().get().sidecar()).isEqualTo(sidecar.getFileName().toString());

        write(folder, Arrays.copyOf(SIX, cut - 1));
        Access.Opened other = Lines.opened(folder, FileChannel::open);
        other.file().close();
        assertThat(other.torn().get().sidecar()).isEqualTo(sidecar.getFileName() + "-2");
        assertThat(Files.readAllBytes(sidecar)).isEqualTo(Arrays.copyOfRange(SIX, tailAt, cut));
    }

    @Test
    void damageInTheMiddleIsNeverTouchedAndANewSegmentGoesOn() throws IOException {
        byte[] changed = SIX.clone();
        changed[200] ^= 1;
        byte[] withTail = Arrays.copyOf(changed, changed.length - 5);
        write(folder, withTail);
        Access.Opened opened = Lines.opened(folder, FileChannel::open);
        try (LineFile file = opened.file()) {
            assertThat(opened.left().get().cause()).isEqualTo(Cause.DAMAGED);
            assertThat(opened.torn()).isEmpty();
            Lines.appended(file);
        }
        assertThat(Files.readAllBytes(folder.resolve(Lines.NIGHT.text()))).isEqualTo(withTail);
        assertThat(names())
                .containsExactly(
                        "2026-06-03-night.paver-b.jsonl",
                        "2026-06-03-night.paver.jsonl",
                        "2026-06-03-night.paver.lock");
    }

    @Test
    void changedLineEndsAreNeverTouched() throws IOException {
        byte[] windows =
                new String(SIX, StandardCharsets.UTF_8).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
        write(folder, windows);
        Access.Opened opened = Lines.opened(folder, FileChannel::open);
        opened.file().close();
        assertThat(opened.file().name().segment()).isEqualTo('b');
        assertThat(opened.file().head()).isEqualTo(Chain.walk(SIX, null).head());
        assertThat(Files.readAllBytes(folder.resolve(Lines.NIGHT.text()))).isEqualTo(windows);
    }

    @Test
    void anEmptySegmentGoesOnFromTheSegmentBefore() throws IOException {
        write(folder, SIX);
        Files.createFile(folder.resolve("2026-06-03-night.paver-b.jsonl"));
        try (LineFile file = Lines.open(folder)) {
            assertThat(file.name().segment()).isEqualTo('b');
            assertThat(file.head()).isEqualTo(Chain.walk(SIX, null).head());
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().collect(Collectors.toList());
        }
    }

    private static void write(Path folder, byte[] bytes) throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve(Lines.NIGHT.text()), bytes);
    }

    private static int lineEnds(byte[] bytes, int before) {
        int count = 0;
        for (int at = 0; at < before; at++) {
            count += bytes[at] == '\n' ? 1 : 0;
        }
        return count;
    }

    private static int lastLineEnd(byte[] bytes, int before) {
        int end = 0;
        for (int at = 0; at < before; at++) {
            end = bytes[at] == '\n' ? at + 1 : end;
        }
        return end;
    }
}
