package screedbook.command;

/** How a command ends, for scripts. */
final class Exit {
    static final int FINE = 0;
    /** verify found something that is not as it was written. */
    static final int WRONG = 1;

    static final int USAGE = 2;
    static final int DISK = 3;
    /** A mistake of the program itself; the only case in which Java's own words are shown. */
    static final int PROGRAM = 4;

    private Exit() {}
}
