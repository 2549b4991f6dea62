package screedbook.term;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import screedbook.desk.Canvas;
import screedbook.desk.Look;
import screedbook.desk.Style;

/** Brings drawings to a terminal: only the cells that differ are written, all in one go. Used by one thread. */
final class Painter {
    private final Terminal terminal;
    private final TerminalScreen screen;

    /** Takes the terminal's screen over. */
    Painter(Terminal terminal) throws IOException {
        this.terminal = terminal;
        screen = new TerminalScreen(terminal);
        screen.startScreen();
    }

    /** The columns and rows there are now, asked of the terminal. */
    TerminalSize measure() throws IOException {
        terminal.getTerminalSize();
        screen.doResizeIfNecessary();
        return screen.getTerminalSize();
    }

    /** Shows the drawing from the upper left on; what is larger than the terminal is left off, what is smaller leaves blanks. */
    void paint(Canvas canvas, Look look) throws IOException {
        TerminalSize size = screen.getTerminalSize();
        for (int y = 0; y < size.getRows(); y++) {
            for (int x = 0; x < size.getColumns(); x++) {
                screen.setCharacter(x, y, cell(canvas, look, x, y));
            }
        }
        boolean shown =
                canvas.cursorX() >= 0 && canvas.cursorX() < size.getColumns() && canvas.cursorY() < size.getRows();
        screen.setCursorPosition(shown ? new TerminalPosition(canvas.cursorX(), canvas.cursorY()) : null);
        screen.refresh();
    }

    /** Makes the next drawing write every cell: somebody else wrote on the terminal meanwhile. */
    void forget() {
        screen.clear();
    }

    private static TextCharacter cell(Canvas canvas, Look look, int x, int y) {
        if (x >= canvas.width() || y >= canvas.height()) {
            return Palette.blank(look, Style.PLAIN);
        }
        TextCharacter blank = Palette.blank(look, canvas.style(x, y));
        char c = canvas.at(x, y);
        return c == ' ' ? blank : blank.withCharacter(c);
    }
}
