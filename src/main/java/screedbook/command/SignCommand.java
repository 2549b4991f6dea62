package screedbook.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import screedbook.diary.SealKey;
import screedbook.diary.ShiftRead;
import screedbook.entry.ShiftId;
import screedbook.shelf.Shelf;

/** {@code screedbook sign}: the seals of a closed shift signed with a key. */
@Command(name = "sign", description = "sign the seals of a closed shift; verify tells who signed")
final class SignCommand implements Callable<Integer> {
    @ParentCommand
    private Commands all;

    @Spec
    private CommandSpec spec;

    @Mixin
    private JobWord job;

    @Mixin
    private ShiftWord shift;

    @Option(names = "--key", paramLabel = "FILE", required = true, description = "made with: screedbook key FILE")
    private Path file;

    @Option(
            names = "--who",
            paramLabel = "INITIALS",
            description = "who signs; without it, the one for whom the job names the key")
    private String typed;

    @Option(names = "--help", usageHelp = true, description = "show this and stop")
    private boolean help;

    @Override
    public Integer call() throws Stopped, IOException {
        Shelf shelf = job.shelf();
        ShiftId id = shift.of(shelf);
        SealKey key = SealKey.read(file);
        String who = who(key.owners(shelf.folder()));
        ShiftRead read = shelf.folder().shift(id);
        if (!read.damages().isEmpty()) {
            Pages.warn(spec, read.damages());
            throw Stopped.disk("what is not as it was written is not signed");
        }
        Map<String, Boolean> signed = key.sign(shelf.folder(), id, who, OffsetDateTime.now(all.clock()));
        if (signed.isEmpty()) {
            throw Stopped.disk("no book of " + id + " is closed; there is no seal to sign");
        }
        StringBuilder page = new StringBuilder();
        signed.forEach((name, now) -> page.append(now ? "signed: diary/" : "was signed before: diary/")
                .append(name)
                .append('\n'));
        Pages.print(spec, page.toString());
        return Exit.FINE;
    }

    private String who(Set<String> owners) throws Stopped {
        if (typed != null) {
            if (!typed.matches("\\p{L}[\\p{L}\\p{N}.-]{0,15}")) {
                throw Stopped.usage("--who " + typed + " are no initials; right would be RK");
            }
            return typed;
        }
        if (owners.size() != 1) {
            throw Stopped.usage("the job names this key for "
                    + (owners.isEmpty() ? "nobody" : String.join(", ", owners))
                    + "; right would be --who INITIALS, or the key beside one person in the job sheet");
        }
        return owners.iterator().next();
    }
}
