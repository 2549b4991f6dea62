package screedbook.diary;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The chain of a diary: each line ends with the SHA-256 of the exact bytes of the line before it, without its LF. */
final class Chain {
    /** The longest line, in bytes without its LF. */
    static final int LONGEST = 64 * 1024;

    /** What the first line of a book's first file names as the line before. */
    static final String NOTHING_BEFORE = "0".repeat(64);

    private static final String KEY = ",\"prev\":\"";
    private static final String END = "\"}";
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final byte[] BOM = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private Chain() {}

    /** The SHA-256 (FIPS 180-4) of the bytes, in 64 lower-case hexadecimal digits. */
    static String hash(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** A digest of SHA-256 (FIPS 180-4) with nothing in it yet. */
    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The hash a line names as its last member; empty when it does not end that way. */
    static Optional<String> prev(byte[] line) {
        int tail = KEY.length() + 64 + END.length();
        if (line.length <= tail) {
            return Optional.empty();
        }
        String end = new String(line, line.length - tail, tail, StandardCharsets.ISO_8859_1);
        String hash = end.substring(KEY.length(), KEY.length() + 64);
        boolean formed =
                end.startsWith(KEY) && end.endsWith(END) && HASH.matcher(hash).matches();
        return formed ? Optional.of(hash) : Optional.empty();
    }

    /**
     * Walks a whole file.
     *
     * @param before the hash that the first line has to name, or null when any will do
     */
    static Walk walk(byte[] file, String before) {
        return new Steps(file, before).walk();
    }

    /** Whether the bytes could be a line that was written whole: an object of plain UTF-8 text, not too long. */
    static boolean looksWhole(byte[] line) {
        if (line.length < 2 || line.length > LONGEST || line[0] != '{' || line[line.length - 1] != '}') {
            return false;
        }
        for (byte b : line) {
            if (b >= 0 && b < 0x20) {
                return false;
            }
        }
        return isUtf8(line);
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    /**
     * What a walk found.
     *
     * @param lines every line up to and with the last one that looks whole
     * @param tail the bytes behind that line: a line torn in the writing, or nothing
     * @param tailAt where the tail begins in the file
     * @param bom whether a byte order mark stands before the first line; the lines are given without it
     * @param carriageReturns how many line ends were turned into CR LF; the lines are given without the CR
     * @param head the hash of the last line that holds anything, else what was to be before the first
     */
    record Walk(List<RawLine> lines, byte[] tail, long tailAt, boolean bom, int carriageReturns, String head) {
        /** Whether every line names the one before it, whatever was done to the line ends. */
        boolean linked() {
            return lines.stream().allMatch(line -> line.link() == RawLine.Link.LINKED);
        }

        /** Whether the lines stand byte for byte as this program writes them; the tail is not asked. */
        boolean asWritten() {
            return !bom && carriageReturns == 0 && linked();
        }

        /**
         * Whether the tail can be what is left of one append that did not end. More than one line's worth, or a file
         * that never began like a diary, is damage of another sort.
         */
        boolean torn() {
            return asWritten()
                    && tail.length > 0
                    && tail.length <= LONGEST + 1
                    && (tailAt > 0 || tail[0] == '{' || tail[0] == 0);
        }

        /** Whether somebody or something other than an append that did not end was at this file. */
        boolean damaged() {
            return !asWritten() || tail.length > 0 && !torn();
        }
    }

    /** A walk on its way. */
    private static final class Steps {
        private final byte[] file;
        private final boolean bom;
        private final List<RawLine> lines = new ArrayList<>();
        private String head;
        private int at;
        private int returns;

        private int wholeLines;
        private int wholeReturns;
        private int wholeEnd;
        private String wholeHead;

        Steps(byte[] file, String before) {
            this.file = file;
            this.head = before;
            this.wholeHead = before;
            this.bom = file.length >= 3 && Arrays.equals(file, 0, 3, BOM, 0, 3);
        }

        Walk walk() {
            int start = bom ? 3 : 0;
            for (at = start; at < file.length; at++) {
                if (file[at] == '\n') {
                    step(start);
                    start = at + 1;
                }
            }
            byte[] tail = Arrays.copyOfRange(file, wholeEnd, file.length);
            List<RawLine> whole = List.copyOf(lines.subList(0, wholeLines));
            return new Walk(whole, tail, wholeEnd, bom, wholeReturns, wholeHead);
        }

        private void step(int start) {
            boolean carriageReturn = at > start && file[at - 1] == '\r';
            byte[] bytes = Arrays.copyOfRange(file, start, carriageReturn ? at - 1 : at);
            returns += carriageReturn ? 1 : 0;
            lines.add(new RawLine(lines.size() + 1, start, bytes, link(bytes)));
            if (bytes.length > 0) {
                head = hash(bytes);
            }
            if (looksWhole(bytes)) {
                wholeLines = lines.size();
                wholeReturns = returns;
                wholeEnd = at + 1;
                wholeHead = head;
            }
        }

        private RawLine.Link link(byte[] bytes) {
            if (bytes.length == 0) {
                return RawLine.Link.BLANK;
            }
            if (bytes.length > LONGEST) {
                return RawLine.Link.TOO_LONG;
            }
            Optional<String> prev = prev(bytes);
            if (prev.isEmpty()) {
                return RawLine.Link.UNLINKED;
            }
            return head == null || prev.get().equals(head) ? RawLine.Link.LINKED : RawLine.Link.BROKEN;
        }
    }
}
