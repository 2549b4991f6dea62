package screedbook;

/** The door of the program: looks at the first word by hand, so that the desk never waits for the command library. */
public final class Main {

    private Main() {}

    public static void main(String[] words) {
        System.err.println("usage: screedbook [JOB] | screedbook --demo | screedbook --help");
        System.exit(2);
    }
}
