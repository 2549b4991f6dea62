package screedbook.command;

import picocli.CommandLine.Option;

/** Whether a copy for the contractor is asked for. */
final class CopyWord {
    @Option(
            names = "--without-remarks",
            description = "a copy for the contractor: remarks, notes, answers, reviews and who said what are left out")
    private boolean asked;

    boolean asked() {
        return asked;
    }
}
