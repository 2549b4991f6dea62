package screedbook.command;

/** Why a command ends without a page, as a sentence for the person who typed it. */
final class Stopped extends Exception {
    private static final long serialVersionUID = 1;
    private final int exit;

    private Stopped(int exit, String sentence) {
        super(sentence, null, false, false);
        this.exit = exit;
    }

    /** What was typed cannot be meant. */
    static Stopped usage(String sentence) {
        return new Stopped(Exit.USAGE, sentence);
    }

    /** What is needed is not there, or cannot be read or written. */
    static Stopped disk(String sentence) {
        return new Stopped(Exit.DISK, sentence);
    }

    int exit() {
        return exit;
    }
}
