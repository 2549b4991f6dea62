package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.diary.JobSheet;
import screedbook.diary.Verify;
import screedbook.entry.Day;
import screedbook.entry.Opening;
import screedbook.entry.Plan;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A job made from nothing by keys in a real terminal: a plan that cannot be kept, mended, written, and a shift under it. */
class JobSheetJourney {
    private static final Path JAR = Path.of(System.getProperty("screedbook.jar"));

    @TempDir
    Path home;

    private Path folder;
    private Pane pane;

    @BeforeEach
    void sitDown() throws Exception {
        folder = Files.createDirectories(home.resolve("mill-road"));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        pane = new Pane(
                home,
                "TZ=America/Denver '" + java + "' -XX:TieredStopAtLevel=1 -jar '" + JAR.toAbsolutePath() + "' '"
                        + folder + "' --book paver; echo ended with $?; exec cat");
        pane.waitFor("j opens the job sheet, where a job is made and mended");
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        pane.close();
    }

    /** Walks the sheet down to a part and opens it. */
    private void open(String part, String until) throws Exception {
        pane.strike("Home");
        pane.waitFor(">the job");
        for (int i = 0; i < 40 && !pane.text().contains(">" + part); i++) {
            String before = chosen(pane.text());
            pane.strike("Down");
            pane.waitFor("the next row", screen -> !chosen(screen).equals(before));
        }
        pane.strike("Enter");
        pane.waitFor(until);
    }

    private static String chosen(String screen) {
        return screen.lines().filter(l -> l.startsWith(">")).findFirst().orElse("");
    }

    /** Answers one blank after the other; an empty answer leaves what stands there. */
    private void answer(String... answers) throws Exception {
        for (String each : answers) {
            if (!each.isEmpty()) {
                pane.type(each);
            }
            pane.strike("Enter");
        }
    }

    /** Puts items into a list, each with its answers, and goes back to the sheet. */
    private void list(String part, List<List<String>> items) throws Exception {
        open(part, "n puts one in");
        for (List<String> item : items) {
            pane.type("n");
            pane.waitFor("Ctrl-S keep");
            answer(item.toArray(String[]::new));
            pane.strike("C-s");
            String shown = item.get(0);
            pane.waitFor(shown, s -> s.contains("x take out") && chosen(s).contains(shown));
        }
        back();
    }

    private void back() throws Exception {
        pane.strike("Escape");
        pane.waitFor("the sheet", screen -> screen.contains("t to settle"));
    }

    private void write(String why, String until) throws Exception {
        pane.type("w");
        pane.waitFor("why the sheet is written");
        if (pane.cursorRow().contains("who writes it")) {
            answer("RK");
        }
        pane.type(why);
        pane.strike("Enter");
        pane.waitFor(until);
    }

    @Test
    void aJobIsMadeFromNothingMendedWrittenAndPavedUnder() throws Exception {
        pane.type("j");
        pane.waitFor("the job has no name");
        pane.type("t");
        pane.waitFor("the job has no units; right would be: units as one of us, metric");
        pane.strike("Escape");
        pane.waitFor(">the job");

        pane.strike("Enter");
        pane.waitFor("lower case letters, digits and dashes");
        answer("", "Mill Road widening", "", "", "", "", "us");
        pane.strike("C-s");
        pane.waitFor("missing; f tells");
        agree();
        plan();
        write("as agreed before paving", "revision 1 on disk");
        agreedOnDisk();
        print();
        pave();
        revise();
    }

    /** Who and what: people, plant, truck, tack. */
    private void agree() throws Exception {
        list("people", List.of(List.of("RK", "Robin Kell", "inspector")));
        list("plants", List.of(List.of("Sand Draw", "1", "1")));
        list("trucks", List.of(List.of("T104", "26120", "72000", "2")));
        list("phones and addresses", List.of(List.of("RK", "Robin Kell", "555-0107")));
    }

    /** Four lanes, two lifts of two mixes, and a haul that loses more than the limits leave. */
    private void plan() throws Exception {
        list(
                "final lane lines",
                List.of(
                        List.of("left edge", "-24"),
                        List.of("left", "-12"),
                        List.of("centre", "0"),
                        List.of("right", "12"),
                        List.of("right edge", "24")));
        list(
                "mixes",
                List.of(
                        List.of("19-64", "", "", "19", "64-22", "2", "1", "290"),
                        List.of("12.5-70", "", "", "12.5", "70-22", "2", "1", "300")));
        list("lifts", List.of(List.of("1", "2", "3", "19"), List.of("2", "1", "2", "12.5")));
        list("haul", List.of(List.of("Sand Draw", "", "summer", "45", "20", "2", "counted on another job")));
        pane.type("f");
        String found = pane.waitFor("findings of the plan");
        assertThat(found).contains("OUT").contains("12.5-70");
        pane.waitFor(">OUT");
        pane.strike("Enter");
        assertThat(pane.waitFor("rule      plan-")).contains("inside    ").contains("insulated");
        pane.strike("Escape");
        pane.waitFor(">OUT");
        back();
        open("haul", "x take out");
        pane.strike("Enter");
        pane.waitFor("loss of heat");
        answer("", "", "", "", "4", "1", "insulated bodies, measured");
        pane.strike("C-s");
        pane.waitFor("4");
        back();
        pane.waitFor("no finding is outside", screen -> !screen.contains("outside"));
    }

    private void agreedOnDisk() throws IOException {
        JobFolder at = JobFolder.at(folder);
        Job job = at.job().job().orElseThrow();
        assertThat(job.id()).isEqualTo("mill-road");
        assertThat(job.zone().getId()).isEqualTo("America/Denver");
        assertThat(job.laneLines()).hasSize(5);
        assertThat(job.lift(2).orElseThrow().mix()).isEqualTo("12.5-70");
        assertThat(job.lift(1).orElseThrow().thickness()).isEqualTo(Amount.of("3", Unit.INCH));
        assertThat(job.planning().haul().get(0).source()).isEqualTo("insulated bodies, measured");
        JobSheet sheet = at.jobSheet();
        assertThat(sheet.revisions()).hasSize(1);
        assertThat(sheet.revisions().get(0).who()).isEqualTo("RK");
        assertThat(sheet.revisions().get(0).why()).isEqualTo("as agreed before paving");
        assertThat(sheet.contacts())
                .containsExactly(Map.of("initials", "RK", "name", "Robin Kell", "phone", "555-0107"));
        assertThat(Files.readString(folder.resolve("job.jsonl"))).doesNotContain("555-0107");
        assertThat(folder.resolve("README.txt")).exists();
    }

    /** The sheet that the meeting agrees on. */
    private void print() throws Exception {
        pane.type("p");
        pane.waitFor("page saved as plan/");
        try (Stream<Path> pages = Files.list(folder.resolve("plan"))) {
            List<Path> all = pages.toList();
            assertThat(all).hasSize(1);
            assertThat(all.get(0).getFileName().toString()).matches("\\d{4}-\\d{2}-\\d{2}\\.txt");
            assertThat(Files.readString(all.get(0)))
                    .contains("Mill Road widening")
                    .contains("job revision 1")
                    .contains("12.5-70")
                    .contains("555-0107");
        }
    }

    private void pave() throws Exception {
        pane.strike("Escape");
        pane.waitFor("the shifts of the job");
        pane.type("d");
        pane.waitFor("0-9 ticket");
        pane.strike("Escape");
        pane.waitFor("open since");
    }

    /** Another revision while a shift is open: the shift goes on under it from there on, with a line that says so. */
    private void revise() throws Exception {
        pane.type("j");
        pane.waitFor("revision 1 of");
        open("trucks", "T104");
        pane.type("n");
        pane.waitFor("trucks  new");
        answer("T107", "25860");
        pane.strike("C-s");
        pane.waitFor(">T107");
        back();
        write("a second truck", "revision 2 on disk");
        pane.type("d");
        pane.waitFor("trucks[T107]  new: number T107, tare_lb 25860");
        back();
        pane.strike("Escape");
        pane.waitFor("the shifts of the job");
        pane.strike("Enter");
        pane.waitFor("another job revision or limit sheet is in force from here on");

        JobFolder at = JobFolder.at(folder);
        ShiftId shift = at.shifts().get(0);
        Day day = at.shift(shift).day();
        Standing<Opening> opening = day.standing(Opening.class).get(0);
        assertThat(opening.entry().jobSha256()).isEqualTo(at.revisions().get(0).sha256());
        assertThat(day.standing(Plan.class).get(0).entry().jobSha256())
                .isEqualTo(at.revisions().get(1).sha256());
        assertThat(Verify.of(at).damages()).isEmpty();
    }
}
