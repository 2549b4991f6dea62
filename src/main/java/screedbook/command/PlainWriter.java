package screedbook.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import screedbook.entry.Shown;

/**
 * The only way out for everything that a command prints: whatever it was made of, nothing that can drive a terminal or
 * has no shape of its own leaves here but line ends.
 */
final class PlainWriter extends FilterWriter {
    PlainWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int c) throws IOException {
        write(Character.toString(c));
    }

    @Override
    public void write(char[] text, int from, int count) throws IOException {
        write(new String(text, from, count));
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        String piece = text.substring(from, from + count);
        int start = 0;
        for (int end = piece.indexOf('\n'); end >= 0; end = piece.indexOf('\n', start)) {
            boolean carriage = end > start && piece.charAt(end - 1) == '\r';
            out.write(Shown.text(piece.substring(start, carriage ? end - 1 : end)));
            out.write(carriage ? "\r\n" : "\n");
            start = end + 1;
        }
        out.write(Shown.text(piece.substring(start)));
    }
}
