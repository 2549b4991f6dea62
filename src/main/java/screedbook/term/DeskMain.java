package screedbook.term;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import screedbook.desk.Effect;
import screedbook.desk.Model;
import screedbook.desk.Msg;
import screedbook.desk.Setting;
import screedbook.desk.Step;
import screedbook.desk.Update;
import screedbook.desk.View;
import screedbook.diary.Preferences;
import screedbook.diary.Recall;
import screedbook.entry.Shown;

/** The desk started from the command line. */
public final class DeskMain {
    private DeskMain() {}

    /**
     * Sits down at the desk of a job.
     *
     * @param words {@code [JOB] [--book NAME] [--who INITIALS] [--look night|sun|mono] [--window] [--demo]}
     * @param program name and version, for opening lines
     * @return 0 when it ended as usual, 2 when the words are wrong, 3 when folder or terminal cannot be used
     */
    public static int run(List<String> words, String program) {
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        Words read;
        try {
            Preferences preferences = Preferences.read(System.getenv());
            preferences.troubles().forEach(each -> err.println("screedbook: " + Shown.text(each)));
            read = Words.read(words, preferences);
        } catch (IllegalArgumentException wrong) {
            err.println("screedbook: " + Shown.text(wrong.getMessage()));
            return 2;
        }
        try {
            return run(read, program, err);
        } catch (IOException trouble) {
            err.println("screedbook: " + Shown.text(String.valueOf(trouble.getMessage())));
            return 3;
        }
    }

    private static int run(Words words, String program, PrintStream err) throws IOException {
        Path folder = words.demo() ? Demo.copy() : words.folder();
        if (!Files.isDirectory(folder)) {
            err.println("screedbook: there is no folder " + Shown.text(folder.toString())
                    + "; screedbook new DIR makes one for a job, screedbook --demo shows one, screedbook --help tells"
                    + " the commands");
            return 3;
        }
        Clock clock = new MachineClock();
        Hands hands = new Hands(folder, words.book(), program, clock, new Browsing(() -> recall(folder)));
        Optional<Effect.Open> open =
                words.demo() ? Optional.of(Demo.begin(folder, words.book(), program, clock)) : Optional.empty();
        hands.readAhead();
        sit(words, folder, hands, open, clock);
        return 0;
    }

    private static Optional<Recall> recall(Path folder) {
        return Recall.place(System.getenv())
                .flatMap(place -> Recall.build(DeskMain.class).map(build -> Recall.of(place, folder, build)));
    }

    private static void sit(Words words, Path folder, Hands hands, Optional<Effect.Open> open, Clock clock)
            throws IOException {
        boolean mono = !Sitting.colour(System.getenv());
        String name = folder.toAbsolutePath().normalize().getFileName().toString();
        String who = open.map(Effect.Open::who).orElse(words.who());
        Setting setting = new Setting(Optional.empty(), name, words.book(), who, words.look(), mono);
        List<Effect> first = open.<List<Effect>>map(o -> List.of(new Effect.ListShifts(), o))
                .orElse(List.of(new Effect.ListShifts()));
        Program<Model, Msg, Effect> desk = new Program<>(
                new Program.Step<>(Model.start(setting), first),
                (model, message) -> {
                    Step step = Update.of(model, message);
                    return new Program.Step<>(step.model(), step.effects());
                },
                View::of,
                model -> model.setting().look(),
                Model::over,
                Msg.Struck::new,
                Msg.Minute::new,
                Msg.Size::new);
        if (words.window() || !Sitting.hasTerminal() && Window.possible()) {
            Sitting.holdInWindow("Screedbook " + Shown.text(name), desk, hands::carryOut, hands::goodbye, clock);
        } else {
            Sitting.hold(desk, hands::carryOut, hands::goodbye, clock);
        }
    }
}
