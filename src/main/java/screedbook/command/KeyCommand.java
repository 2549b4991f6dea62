package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import screedbook.diary.SealKey;

/** {@code screedbook key FILE}: a key that signs seals. */
@Command(name = "key", description = "make a key that signs the seals of shifts, to be kept off the laptop")
final class KeyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description =
                    "for the secret half, on a stick that goes home in a pocket; the public half gets the same name and .pub")
    private Path file;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        for (Path at = file.toAbsolutePath().normalize().getParent(); at != null; at = at.getParent()) {
            if (JobWord.isJob(at)) {
                throw Stopped.usage("a key does not belong in the folder of a job, where the seals are: " + at);
            }
        }
        SealKey key = SealKey.make(file);
        Pages.print(
                spec,
                "made " + file + ", which nobody else should have, and " + file + ".pub\n"
                        + "its short form, for paper: " + key.shortForm() + "\n"
                        + "In the job sheet it stands beside the person who signs:\n"
                        + "  \"public_key\": \"" + key.text() + "\"\n");
        return Exit.FINE;
    }
}
