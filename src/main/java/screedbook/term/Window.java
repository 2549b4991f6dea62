package screedbook.term;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.Terminal;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFontConfiguration;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFrame;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorAutoCloseTrigger;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorColorConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorDeviceConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorPalette;
import java.awt.Color;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.swing.WindowConstants;
import screedbook.desk.Key;

/** A window that is a terminal, for a desk without one: as large as the screen lets 100 columns and 30 rows be. */
final class Window implements AutoCloseable {
    private static final TerminalSize CELLS = new TerminalSize(100, 30);
    private static final int LARGEST = 40;
    private static final int SMALLEST = 8;

    private final SwingTerminalFrame frame;
    private final Keys keys = new Keys();

    private Window(SwingTerminalFrame frame) {
        this.frame = frame;
    }

    /** Whether this Java can show a window here at all. */
    static boolean possible() {
        try {
            return !GraphicsEnvironment.isHeadless();
        } catch (LinkageError withoutWindows) {
            return false;
        }
    }

    /**
     * Opens the window.
     *
     * @throws IOException when this Java has no windows, or there is no screen to show one on
     */
    static Window open(String title) throws IOException {
        try {
            return new Window(frame(title));
        } catch (LinkageError | RuntimeException none) {
            throw new IOException(
                    "no window can be shown: this Java has none, or there is no screen; right would be a terminal",
                    none);
        }
    }

    private static SwingTerminalFrame frame(String title) {
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        SwingTerminalFrame frame = new SwingTerminalFrame(
                title,
                CELLS,
                TerminalEmulatorDeviceConfiguration.getDefault(),
                SwingTerminalFontConfiguration.newInstance(fitting(room)),
                TerminalEmulatorColorConfiguration.newInstance(palette()),
                TerminalEmulatorAutoCloseTrigger.CloseOnExitPrivateMode);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.pack();
        frame.setLocation(room.x, room.y);
        frame.setVisible(true);
        // Keys go to the terminal in the frame, not to the frame.
        frame.getContentPane().getComponent(0).requestFocusInWindow();
        return frame;
    }

    /**
     * The sixteen colours as the looks mean them. Bold is shown as bright there: bright black and bright blue stay as dark
     * as plain ones, since they stand on white.
     */
    private static TerminalEmulatorPalette palette() {
        Color black = Color.BLACK;
        Color blue = new Color(0, 0, 170);
        Color grey = new Color(170, 170, 170);
        return new TerminalEmulatorPalette(
                grey,
                Color.WHITE,
                black,
                black,
                black,
                new Color(170, 0, 0),
                new Color(255, 85, 85),
                new Color(0, 170, 0),
                new Color(85, 255, 85),
                new Color(170, 85, 0),
                new Color(255, 255, 85),
                blue,
                blue,
                new Color(170, 0, 170),
                new Color(255, 85, 255),
                new Color(0, 170, 170),
                new Color(85, 255, 255),
                grey,
                Color.WHITE);
    }

    /** The largest size of the font at which the cells fit the screen, with some room for the window's frame. */
    private static Font fitting(Rectangle room) {
        Insets edge = new Insets(40, 10, 10, 10);
        int wide = room.width - edge.left - edge.right;
        int high = room.height - edge.top - edge.bottom;
        Font font = new Font(Font.MONOSPACED, Font.PLAIN, SMALLEST);
        for (int points = SMALLEST + 1; points <= LARGEST; points++) {
            Font larger = font.deriveFont((float) points);
            FontMetrics cell = metrics(larger);
            if (cell.charWidth('W') * CELLS.getColumns() > wide || cell.getHeight() * CELLS.getRows() > high) {
                return font;
            }
            font = larger;
        }
        return font;
    }

    private static FontMetrics metrics(Font font) {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                .createGraphics()
                .getFontMetrics(font);
    }

    Terminal terminal() {
        return frame;
    }

    /** Waits for a key and gives it with all that arrived behind it; an empty list says that the window was closed. */
    List<Key> nextKeys() throws IOException {
        List<Key> found = new ArrayList<>();
        while (found.isEmpty()) {
            if (!keys.take(plain(frame.readInput()), found)) {
                return List.of();
            }
            for (KeyStroke more = frame.pollInput(); more != null; more = frame.pollInput()) {
                if (!keys.take(plain(more), found)) {
                    return found;
                }
            }
        }
        return found;
    }

    /** Control and a letter arrive as the letter, but for Z, which arrives as the control character that it makes. */
    private static KeyStroke plain(KeyStroke stroke) {
        Character c = stroke.getCharacter();
        boolean bare = c != null && c < ' ' && stroke.isCtrlDown() && c >= 1 && c <= 26;
        return bare && c != '\t' && c != '\n' && c != '\b'
                ? new KeyStroke((char) ('a' + c - 1), true, stroke.isAltDown())
                : stroke;
    }

    /** A window that was closed may have ended the thread of windows already, so nobody waits for that one. */
    @Override
    public void close() {
        EventQueue.invokeLater(frame::dispose);
    }
}
