package screedbook.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.diary.JobFolder;
import screedbook.entry.ShiftId;
import screedbook.job.Agreed;

/**
 * The shifts of the invented job under {@code demo-logs/harrow-bend}, written through the same door as the desk's, with
 * a fixed clock and fixed chances. Each was written once, by
 *
 * <pre>mvn -q -DskipTests package
 * java -cp target/screedbook.jar:target/test-classes screedbook.demo.DemoShifts FOLDER</pre>
 *
 * with FOLDER a folder named harrow-bend that was not there, and is never written again: shifts are added to the demo,
 * never changed. What it prints are the lines of {@code demo/expected.csv} for them.
 */
public final class DemoShifts {
    static final String JOB = "harrow-bend";
    static final ZoneId ZONE = ZoneId.of("America/Denver");
    static final String PROGRAM = "screedbook 0.1.0";

    /** Marks what was not agreed yet when the job began. */
    private static final String LATER = "// added for the second plant";

    private DemoShifts() {}

    public static void main(String[] words) throws IOException {
        Path path = Path.of(words[0]);
        write(path);
        for (ShiftId shift : JobFolder.at(path).shifts()) {
            System.out.print(Remembered.csv(Remembered.rows(path, shift)));
        }
    }

    static void write(Path path) throws IOException {
        JobFolder.make(path);
        Path people = path.resolve("people.json");
        Files.writeString(people, Files.readString(people).replace("\"AB\"", "\"RK\""));
        JobFolder folder = JobFolder.at(path);
        Agreed first = agreed(folder, false, "2026-05-11T15:20", "RK", "as agreed at the pre-paving meeting of 7 May");
        Scene.Numbers numbers = new Scene.Numbers();
        new OrdinaryDay(new Scene(folder, "2026-05-12-day", 12, first, numbers)).write();
        new RainDay(new Scene(folder, "2026-05-13-day", 13, first, numbers)).write();
        double joint = new Night(new Scene(folder, "2026-05-14-night", 14, first, numbers)).write();
        String why = "two more insulated trucks for the longer haul from Sand Draw";
        Agreed second = agreed(folder, true, "2026-05-18T10:14", "RK", why);
        new DayOfTrouble(new Scene(folder, "2026-05-18-day", 18, first, numbers), second, joint).write();
        unlocked(path);
        unlocked(path.resolve("diary"));
    }

    /** The lock files say nothing once nobody writes. */
    static void unlocked(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".lock")).toList()) {
                Files.delete(file);
            }
        }
    }

    /** The job file as it stands before or after the trucks of the second plant came, accepted. */
    static Agreed agreed(JobFolder folder, boolean later, String clock, String who, String why) throws IOException {
        String text = resource("/demo/harrow-bend.json");
        String job = later
                ? text
                : text.lines().filter(line -> !line.contains(LATER)).collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(folder.path().resolve("job.json"), job);
        return folder.accept(who, local(clock), why);
    }

    static OffsetDateTime local(String clock) {
        return LocalDateTime.parse(clock).atZone(ZONE).toOffsetDateTime();
    }

    static String resource(String name) throws IOException {
        try (var in = DemoShifts.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
