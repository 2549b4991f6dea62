package screedbook.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import screedbook.diary.JobFolder;
import screedbook.entry.ShiftId;
import screedbook.job.Agreed;

/**
 * The invented job under {@code demo-logs/tanager-flats}: two nights in which every kind of entry is keyed. Written once
 * as {@link DemoShifts} says, and never again.
 */
public final class TanagerFlats {
    private TanagerFlats() {}

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
        Files.writeString(people, Files.readString(people).replace("\"AB\"", "\"MV\""));
        Files.writeString(path.resolve("job.json"), DemoShifts.resource("/demo/tanager-flats.json"));
        Files.writeString(path.resolve("spec/tanager-sp5.csv"), DemoShifts.resource("/demo/tanager-sp5.csv"));
        JobFolder folder = JobFolder.at(path);
        Agreed agreed = folder.accept(
                "MV",
                LocalDateTime.parse("2026-07-10T16:05")
                        .atZone(ZoneId.of("America/Denver"))
                        .toOffsetDateTime(),
                "as agreed at the pre-paving meeting of 8 July");
        Scene.Numbers numbers = new Scene.Numbers();
        double joint = new TanagerNight(new Scene(folder, "2026-07-14-night", 714, agreed, numbers)).write();
        new SecondNight(new Scene(folder, "2026-07-15-night", 715, agreed, numbers), joint).write();
        DemoShifts.unlocked(path);
        DemoShifts.unlocked(path.resolve("diary"));
    }
}
