package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static screedbook.diary.RawLine.Link.BLANK;
import static screedbook.diary.RawLine.Link.BROKEN;
import static screedbook.diary.RawLine.Link.LINKED;
import static screedbook.diary.RawLine.Link.TOO_LONG;
import static screedbook.diary.RawLine.Link.UNLINKED;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChainTest {
    private static final String HASH = "0123456789abcdef".repeat(4);

    /** NIST FIPS 180-4 example "abc", from memory of the published example values; `sha256sum` gives the same. */
    @Test
    void theHashIsSha256() {
        assertThat(Chain.hash("abc".getBytes(UTF_8)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void theLineBeforeIsNamedByTheLastMemberAlone() {
        assertThat(Chain.prev(("{\"n\":1,\"prev\":\"" + HASH + "\"}").getBytes(UTF_8)))
                .contains(HASH);
        for (String other : List.of(
                "{\"n\":1,\"prev\":\"" + HASH + "\",\"x\":1}",
                "{\"n\":1,\"prev\":\"" + HASH.toUpperCase(java.util.Locale.ROOT) + "\"}",
                "{\"n\":1,\"prev\":\"" + HASH.substring(1) + "\"}",
                "{\"n\":1,\"prev\": \"" + HASH + "\"}",
                "{\"n\":1,\"prev\":\"" + HASH + "\"} ",
                "\"prev\":\"" + HASH + "\"}",
                "")) {
            assertThat(Chain.prev(other.getBytes(UTF_8))).as(other).isEmpty();
        }
    }

    @Test
    void everyLineOfAnUntouchedFileIsLinked() {
        byte[] file = Lines.file(8);
        Chain.Walk walk = Chain.walk(file, Chain.NOTHING_BEFORE);
        assertThat(Lines.links(walk)).hasSize(8).containsOnly(LINKED);
        assertThat(walk.asWritten()).isTrue();
        assertThat(walk.damaged()).isFalse();
        assertThat(walk.tail()).isEmpty();
        assertThat(walk.lines().get(7).number()).isEqualTo(8);
        for (RawLine line : walk.lines()) {
            int at = (int) line.offset();
            assertThat(Arrays.copyOfRange(file, at, at + line.bytes().length)).isEqualTo(line.bytes());
            assertThat(file[at + line.bytes().length]).isEqualTo((byte) '\n');
        }
    }

    @Test
    void theFirstLineIsHeldAgainstTheBooksFileBefore() {
        assertThat(Lines.links(Chain.walk(Lines.file(2), HASH))).containsExactly(BROKEN, LINKED);
        assertThat(Lines.links(Chain.walk(Lines.file(2), null))).containsExactly(LINKED, LINKED);
    }

    /** Every bit of the first 19 lines, one after the other: the line behind the changed one says so. */
    @Test
    void aChangedByteShowsAtTheLineBehindIt() {
        byte[] file = Lines.file(20);
        Chain.Walk before = Chain.walk(file, Chain.NOTHING_BEFORE);
        for (RawLine line : before.lines().subList(0, 19)) {
            for (int at = 0; at < line.bytes().length; at++) {
                byte[] changed = file.clone();
                changed[(int) line.offset() + at] ^= 1;
                Chain.Walk walk = Chain.walk(changed, Chain.NOTHING_BEFORE);
                assertThat(walk.asWritten()).isFalse();
                assertThat(walk.torn()).isFalse();
                assertThat(walk.lines().stream().anyMatch(found -> found.link() != LINKED))
                        .isTrue();
            }
        }
    }

    @Test
    void aLineTakenOutPutInOrSwappedBreaksTheChainThere() {
        List<byte[]> lines = new ArrayList<>();
        Chain.walk(Lines.file(6), null).lines().forEach(line -> lines.add(line.bytes()));

        List<byte[]> without = new ArrayList<>(lines);
        without.remove(2);
        assertThat(Lines.links(Chain.walk(join(without, "\n"), null)))
                .containsExactly(LINKED, LINKED, BROKEN, LINKED, LINKED);

        List<byte[]> with = new ArrayList<>(lines);
        with.add(2, Lines.line(99, HASH));
        assertThat(Lines.links(Chain.walk(join(with, "\n"), null)))
                .containsExactly(LINKED, LINKED, BROKEN, BROKEN, LINKED, LINKED, LINKED);

        List<byte[]> swapped = new ArrayList<>(lines);
        Collections.swap(swapped, 2, 3);
        assertThat(Lines.links(Chain.walk(join(swapped, "\n"), null)))
                .containsExactly(LINKED, LINKED, BROKEN, BROKEN, BROKEN, LINKED);
    }

    @Test
    void lineEndsMadeByAnEditorAreToldApartFromChangedContent() {
        List<byte[]> lines = new ArrayList<>();
        Chain.walk(Lines.file(6), null).lines().forEach(line -> lines.add(line.bytes()));
        Chain.Walk windows = Chain.walk(join(lines, "\r\n"), Chain.NOTHING_BEFORE);
        assertThat(windows.carriageReturns()).isEqualTo(6);
        assertThat(windows.linked()).isTrue();
        assertThat(windows.asWritten()).isFalse();
        assertThat(windows.damaged()).isTrue();

        lines.set(3, Lines.line(44, HASH));
        Chain.Walk changed = Chain.walk(join(lines, "\r\n"), Chain.NOTHING_BEFORE);
        assertThat(changed.carriageReturns()).isEqualTo(6);
        assertThat(Lines.links(changed)).containsExactly(LINKED, LINKED, LINKED, BROKEN, BROKEN, LINKED);
    }

    @Test
    void aByteOrderMarkIsToldApartFromChangedContent() {
        byte[] mark = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(mark);
        file.writeBytes(Lines.file(3));
        Chain.Walk walk = Chain.walk(file.toByteArray(), Chain.NOTHING_BEFORE);
        assertThat(walk.bom()).isTrue();
        assertThat(walk.linked()).isTrue();
        assertThat(walk.asWritten()).isFalse();
        assertThat(walk.lines().get(0).offset()).isEqualTo(3);
    }

    @Test
    void aBlankLineSpoilsNoOther() {
        List<byte[]> lines = new ArrayList<>();
        Chain.walk(Lines.file(3), null).lines().forEach(line -> lines.add(line.bytes()));
        lines.add(1, new byte[0]);
        Chain.Walk walk = Chain.walk(join(lines, "\n"), null);
        assertThat(Lines.links(walk)).containsExactly(LINKED, BLANK, LINKED, LINKED);
        assertThat(walk.damaged()).isTrue();
    }

    @Test
    void aLineThatNamesNothingBeforeIsKeptAndSpoilsNoOther() {
        byte[] alone = "{\"n\":4,\"text\":\"by hand\"}".getBytes(UTF_8);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(Lines.file(3));
        file.writeBytes(alone);
        file.write('\n');
        assertThat(Lines.links(Chain.walk(file.toByteArray(), null))).containsExactly(LINKED, LINKED, LINKED, UNLINKED);
        assertThat(Chain.walk(file.toByteArray(), null).torn()).isFalse();
        file.writeBytes(Lines.line(5, Chain.hash(alone)));
        file.write('\n');
        assertThat(Lines.links(Chain.walk(file.toByteArray(), null)))
                .containsExactly(LINKED, LINKED, LINKED, UNLINKED, LINKED);
    }

    @Test
    void aLineOfMoreThan64KibIsKnownAsTooLong() {
        byte[] longest = longLine(Chain.LONGEST);
        byte[] tooLong = longLine(Chain.LONGEST + 1);
        byte[] last = Lines.line(3, Chain.hash(tooLong));
        assertThat(Lines.links(Chain.walk(join(List.of(longest), "\n"), null))).containsExactly(LINKED);
        assertThat(Lines.links(Chain.walk(join(List.of(tooLong, last), "\n"), null)))
                .containsExactly(TOO_LONG, LINKED);
    }

    @Test
    void aTailWithALineEndInItIsStillOneTornTail() {
        byte[] good = Lines.file(3);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(good);
        file.writeBytes("{\"n\":4\n\0\0\0\0\n,\"prev\":\"".getBytes(UTF_8));
        Chain.Walk walk = Chain.walk(file.toByteArray(), null);
        assertThat(walk.lines()).hasSize(3);
        assertThat(walk.tailAt()).isEqualTo(good.length);
        assertThat(walk.torn()).isTrue();
    }

    @Test
    void aFileThatNeverBeganLikeADiaryIsNotTakenForATornLine() {
        byte[] other = new String(Lines.file(2), UTF_8).getBytes(StandardCharsets.UTF_16);
        assertThat(Chain.walk(other, null).torn()).isFalse();
        assertThat(Chain.walk(other, null).damaged()).isTrue();
    }

    @Test
    void moreThanOneLinesWorthIsNotTakenForATornLine() {
        byte[] good = Lines.file(3);
        byte[] torn = Arrays.copyOf(good, good.length + Chain.LONGEST + 1);
        byte[] more = Arrays.copyOf(good, good.length + Chain.LONGEST + 2);
        assertThat(Chain.walk(torn, null).torn()).isTrue();
        assertThat(Chain.walk(more, null).torn()).isFalse();
        assertThat(Chain.walk(more, null).damaged()).isTrue();
    }

    private static byte[] longLine(int length) {
        String end = "\",\"prev\":\"" + Chain.NOTHING_BEFORE + "\"}";
        String start = "{\"text\":\"";
        return (start + "x".repeat(length - start.length() - end.length()) + end).getBytes(UTF_8);
    }

    private static byte[] join(List<byte[]> lines, String end) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            bytes.writeBytes(line);
            bytes.writeBytes(end.getBytes(UTF_8));
        }
        return bytes.toByteArray();
    }
}
