package screedbook.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.HexFormat;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import screedbook.entry.Shown;

/** The commands other than the desk, as they are typed. */
@Command(
        name = "screedbook",
        customSynopsis = {
            "screedbook [JOB] [--book NAME] [--who INITIALS] [--look night|sun|mono] [--window]",
            "screedbook --demo",
            "screedbook COMMAND ..."
        },
        description = {
            "",
            "The daily log of a paving job. JOB is the folder of a job; without it, this folder.",
            "Without a command the desk is opened:",
            "",
            "  --book NAME      the book that is kept on this laptop",
            "  --who INITIALS   who is at the keyboard",
            "  --look LOOK      night, sun or mono (no colour); NO_COLOR is heeded",
            "  --window         in a window of its own; so it is too where there is no terminal",
            "  --demo           a made-up shift to try, on a copy",
            "",
            "Options:"
        },
        synopsisHeading = "",
        commandListHeading = "%nCommands (screedbook COMMAND --help tells more):%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:fine",
            "1:verify: something is not as it was written; carry: something there differs",
            "2:what was typed cannot be meant",
            "3:something cannot be read or written",
            "4:a mistake of the program itself"
        },
        footer = {
            "",
            "A folder that is named like a command is opened as ./NAME.",
            "What you always want may stand in ~/.config/screedbook/screedbook.conf:",
            "job, book, who and look, each on a line with = and its value.",
            "Limits come from the sheet chosen for the job; the contract documents, the",
            "engineer, local codes and licensed practice govern. This is not a safety plan."
        },
        versionProvider = Commands.Version.class,
        subcommands = {
            NewJob.class,
            PlanCommand.class,
            DayCommand.class,
            FindingsCommand.class,
            PlantListCommand.class,
            VerifyCommand.class,
            CarryCommand.class,
            KeyCommand.class,
            SignCommand.class,
            CsvCommand.class,
            LimitsCommand.class,
            SheetsCommand.class,
            SeasonCommand.class,
            FindCommand.class,
            ArchiveCommand.class,
            SqlCommand.class,
            SchemasCommand.class,
            CompletionCommand.class,
            ManCommand.class
        })
public final class Commands {
    private final Clock clock;
    private final PrintWriter watched;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this and stop")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "show the program's version and stop")
    private boolean version;

    private Commands(Clock clock, PrintWriter watched) {
        this.clock = clock;
        this.watched = watched;
    }

    Clock clock() {
        return clock;
    }

    /** Whether somebody looks on at a terminal while long work is done. */
    boolean watched() {
        return watched != null;
    }

    /** How far work on so many shifts has come, for whoever looks on. */
    Progress progress(int shifts) {
        return new Progress(watched, shifts, clock);
    }

    /** Does what the words say and ends the program. Everything is written in UTF-8, whatever the locale. */
    public static void main(String[] words) {
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        OutputStream err = new FileOutputStream(FileDescriptor.err);
        System.exit(run(words, out, err, Clock.systemDefaultZone(), Progress.seen()));
    }

    /**
     * Does what the words say.
     *
     * @param clock for shifts that are still open
     * @return the exit code
     */
    static int run(String[] words, OutputStream out, OutputStream err, Clock clock) {
        return run(words, out, err, clock, false);
    }

    static int run(String[] words, OutputStream out, OutputStream err, Clock clock, boolean watched) {
        Outlet outlet = new Outlet(out);
        // Progress goes back to the head of its line, which no text of a record may do.
        PrintWriter bare = watched ? new PrintWriter(new OutputStreamWriter(err, StandardCharsets.UTF_8)) : null;
        CommandLine line = line(alone(new Commands(clock, bare), words), writer(outlet), writer(err));
        int exit = line.execute(words);
        line.getOut().flush();
        if (outlet.trouble() != null) {
            say(line, "the page could not be written: " + Reason.of(outlet.trouble()));
            exit = Exit.DISK;
        }
        line.getErr().flush();
        return exit;
    }

    /** A command that is asked of archives begins without all others being read: that takes longer than its work. */
    private static CommandLine alone(Commands commands, String[] words) {
        Object one = words.length == 0
                ? null
                : switch (words[0]) {
                    case "season" -> new SeasonCommand();
                    case "find" -> new FindCommand();
                    case "verify" -> new VerifyCommand();
                    default -> null;
                };
        if (one == null) {
            return new CommandLine(commands);
        }
        return new CommandLine(CommandSpec.wrapWithoutInspection(commands).name("screedbook"))
                .addSubcommand(words[0], one);
    }

    private static CommandLine line(CommandLine line, PrintWriter out, PrintWriter err) {
        return line.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpAutoWidth(false)
                .setUsageHelpWidth(80)
                .setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((trouble, words) -> meant(trouble))
                .setExecutionExceptionHandler((trouble, of, words) -> stopped(trouble, of));
    }

    private static PrintWriter writer(OutputStream out) {
        return new PrintWriter(new PlainWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8)), false);
    }

    private static int meant(ParameterException trouble) {
        CommandLine line = trouble.getCommandLine();
        say(line, trouble.getMessage());
        line.getErr().print("see: " + line.getCommandSpec().qualifiedName() + " --help\n");
        return Exit.USAGE;
    }

    private static int stopped(Exception trouble, CommandLine line) throws Exception {
        if (trouble instanceof Stopped stopped) {
            say(line, stopped.getMessage());
            return stopped.exit();
        }
        if (trouble instanceof IOException disk) {
            say(line, Reason.of(disk));
            return Exit.DISK;
        }
        say(line, "this is a mistake of the program; please report what follows");
        trouble.printStackTrace(line.getErr());
        return Exit.PROGRAM;
    }

    private static void say(CommandLine line, String sentence) {
        line.getErr().print(line.getCommandSpec().qualifiedName() + ": " + Shown.text(sentence) + "\n");
    }

    /** The version of the packed program. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String packed = Commands.class.getPackage().getImplementationVersion();
            return new String[] {packed == null ? "screedbook, not packed" : "screedbook " + packed + build()};
        }

        /** The beginning of the SHA-256 of the packed file: two programs of one version can still differ. */
        private static String build() {
            try (InputStream file = Files.newInputStream(Path.of(Commands.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI()))) {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(file.readAllBytes());
                return ", build " + HexFormat.of().formatHex(hash).substring(0, 12);
            } catch (IOException | URISyntaxException | GeneralSecurityException unknown) {
                return "";
            }
        }
    }
}
