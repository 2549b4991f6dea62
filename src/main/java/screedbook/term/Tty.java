package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import screedbook.desk.Key;

/** The terminal the program was started in: every key reaches the desk, every drawing leaves in one write, and it is given back as found. */
class Tty extends UnixTerminal {
    private static final String DEVICE = "/dev/tty";
    private static final List<String> KEYS_ARE_KEYS =
            List.of("-icanon", "-echo", "-ixon", "-isig", "-iexten", "min", "1", "time", "0");
    /** Tells the settings and the size there are, and only then takes the terminal. */
    private static final String TAKE = "found=$(/bin/stty -g) && size=$(/bin/stty size) && /bin/stty "
            + String.join(" ", KEYS_ARE_KEYS) + " && echo \"$found $size\"";
    /** Cursor keys and keypad as usual, pastes marked, screen empty. */
    private static final String MODES = "\033[?1l\033>\033[?2004h\033[2J";

    private final Outlet out;
    private final Keys keys = new Keys();
    private volatile TerminalSize measured;
    private boolean taken;

    /** The terminal that governs this process. Throws {@link IOException} where there is none. */
    static Tty open() throws IOException {
        try {
            return new Tty(new FileInputStream(DEVICE), new FileOutputStream(DEVICE));
        } catch (FileNotFoundException none) {
            throw new IOException(
                    "there is no terminal to sit down at: " + none.getMessage()
                            + "; right would be a terminal, or a screen for a window, and screedbook --help tells the"
                            + " commands that need neither",
                    none);
        }
    }

    /** Whether some terminal governs this process. */
    static boolean there() {
        try (FileInputStream device = new FileInputStream(DEVICE)) {
            return device.getFD().valid();
        } catch (IOException none) {
            return false;
        }
    }

    Tty(InputStream in, OutputStream out) throws IOException {
        this(new Patience(in), new Outlet(out));
    }

    private Tty(Patience in, Outlet out) throws IOException {
        super(in, out, UTF_8, CtrlCBehaviour.TRAP);
        this.out = out;
    }

    /**
     * Waits for a key and gives it with all that arrived behind it; a paste is one key. An empty list says that no key will ever come
     * again.
     */
    List<Key> nextKeys() throws IOException {
        List<Key> found = new ArrayList<>();
        boolean open = true;
        while (open && found.isEmpty()) {
            open = keys.take(readInput(), found);
            for (KeyStroke more = pollInput(); open && more != null; more = pollInput()) {
                open = keys.take(more, found);
            }
            keys.rest(found);
        }
        return found;
    }

    /** Forgets the size, so that it is measured anew when next asked for. */
    void sizeMayHaveChanged() {
        measured = null;
    }

    @Override
    protected TerminalSize findTerminalSize() throws IOException {
        TerminalSize size = measured;
        if (size == null) {
            size = size(runSTTYCommand("size"));
            measured = size;
        }
        return size;
    }

    /** Reads "rows columns"; a terminal that does not know its size (0 0, or no answer) counts as 80 columns and 24 rows. */
    private static TerminalSize size(String answer) {
        String[] parts = answer.trim().split(" ");
        if (parts.length == 2 && parts[0].matches("[1-9]\\d{0,3}") && parts[1].matches("[1-9]\\d{0,3}")) {
            return new TerminalSize(Integer.parseInt(parts[1]), Integer.parseInt(parts[0]));
        }
        return new TerminalSize(80, 24);
    }

    /** Hands the screen and the settings back to the shell for a while. */
    void leave() throws IOException {
        raw("\033[?2004l\033[0m\033[?25h\033[?1049l");
        flush();
        restoreTerminalSettings();
    }

    /** Takes the screen and the settings again; all must be painted anew. */
    void comeBack() throws IOException {
        keysAreKeys();
        raw("\033[?1049h" + MODES);
        flush();
        sizeMayHaveChanged();
    }

    @Override
    public synchronized void enterPrivateMode() throws IOException {
        super.enterPrivateMode();
        raw(MODES);
        flush();
    }

    @Override
    public synchronized void exitPrivateMode() throws IOException {
        raw("\033[?2004l");
        super.exitPrivateMode();
        out.shut();
    }

    @Override
    public void close() throws IOException {
        try {
            super.close();
        } catch (IllegalStateException shuttingDown) {
            // The Java machine is going down: its own hook gives the terminal back as well, and cannot be taken off any
            // more.
            out.shut();
        }
    }

    /**
     * Asked once, while the terminal is being made, for the settings to be given back: one call tells them and the size, and
     * takes the terminal. Where it cannot, it is asked and taken step by step.
     */
    @Override
    protected String runSTTYCommand(String... words) throws IOException {
        if (taken || !List.of(words).equals(List.of("-g"))) {
            return super.runSTTYCommand(words);
        }
        String[] told = exec("/bin/sh", "-c", TAKE).trim().split(" ");
        if (told.length != 3) {
            return super.runSTTYCommand(words);
        }
        // Neither field has a value of its own that would be put here after this.
        taken = true;
        measured = size(told[1] + " " + told[2]);
        return told[0];
    }

    /** One call sets everything: every key is a key (no signals, no flow control, no waiting for a line); Return still arrives as a line feed. */
    @Override
    protected void canonicalMode(boolean on) throws IOException {
        if (!on && !taken) {
            keysAreKeys();
        }
    }

    private void keysAreKeys() throws IOException {
        runSTTYCommand(KEYS_ARE_KEYS.toArray(new String[0]));
    }

    @Override
    protected void keyEchoEnabled(boolean on) {
        // Set together with the rest, and given back with the rest.
    }

    @Override
    protected void keyStrokeSignalsEnabled(boolean on) {
        // Set together with the rest, and given back with the rest.
    }

    @Override
    protected void registerTerminalResizeListener(Runnable onResize) {
        // A resize is told to the loop, which measures on the desk's own thread.
    }

    @Override
    public void putString(String text) throws IOException {
        raw(text);
    }

    /** Called while the terminal is being made: uses no field. */
    @Override
    protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
        return Keys::patterns;
    }

    private void raw(String text) throws IOException {
        writeToTerminal(text.getBytes(UTF_8));
    }
}
