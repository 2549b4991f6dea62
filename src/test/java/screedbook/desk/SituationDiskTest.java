package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.Opened;
import screedbook.diary.Verdict;
import screedbook.diary.Verify;
import screedbook.entry.Kind;
import screedbook.entry.Note;
import screedbook.entry.ShiftId;
import screedbook.entry.Shown;
import screedbook.entry.Ticket;
import screedbook.entry.Unwritten;
import screedbook.report.DayPage;
import screedbook.report.DayPaper;
import screedbook.report.KindCsv;
import screedbook.shelf.KeptShift;
import screedbook.shelf.Papers;
import screedbook.shelf.Shelf;
import screedbook.unit.UnitSystem;

/** Awkward situations from the keys to the disk and back on paper; the numbers are those of {@code situations.csv}. */
class SituationDiskTest {
    private static final ShiftId NIGHT = DeskRig.NIGHT;
    private static final String NAME = "Žofie Núñez-Ørsted";

    @TempDir
    Path temporary;

    private JobFolder opened() throws IOException {
        JobFolder folder = KeptShift.job(temporary.resolve("job"));
        KeptShift.opened(folder, NIGHT.toString(), "paver").close();
        return folder;
    }

    private static void append(JobFolder folder, List<Unwritten> entries, OffsetDateTime keyed) {
        Opened opened = folder.open(NIGHT, "paver", "my-job", "RK", keyed);
        try (Book book = ((Opened.Ready) opened).book()) {
            assertThat(book.append(entries, keyed).join().refused()).isEmpty();
        }
    }

    /** What the desk handed to the disk last. */
    private static List<Unwritten> written(DeskRig rig) {
        for (int i = rig.effects.size() - 1; i >= 0; i--) {
            if (rig.effects.get(i) instanceof Effect.Write write) {
                return write.entries();
            }
        }
        throw new AssertionError("nothing was written");
    }

    /** 5,000 characters that begin as a spreadsheet's formula, with accents, a face, a tab and one that turns writing round. */
    private static String remark() {
        String part = "=1+1 Zoë said: naïve café, žluťoučký 😀\tпозже \u202e ";
        StringBuilder text = new StringBuilder();
        while (text.codePointCount(0, text.length()) < 5000) {
            text.append(part).append("the joint was rolled again and then left as it was, all of it cold. ");
        }
        return text.substring(0, text.offsetByCodePoints(0, 4999)) + ".";
    }

    @Test
    @DisplayName("94: a name with accents and a remark of 5,000 characters come from the form to line, page and table")
    void aLongRemarkComesFromTheFormToLinePageAndTable() throws IOException {
        DeskRig rig = DeskRig.open().keys("n");
        Scenes.goTo(rig, "text").key(Key.paste(remark()));
        Scenes.typedIn(rig, "from_whom", NAME).keys("<C-s>");
        String text = remark().replace('\t', ' ');
        assertThat(((Note) rig.last().entry()).text()).isEqualTo(text);

        JobFolder folder = opened();
        append(folder, written(rig), rig.now());

        DayPaper paper = Papers.of(Shelf.of(folder).shift(NIGHT));
        Note note = paper.day().standing(Note.class).get(0).entry();
        assertThat(note.text()).isEqualTo(text);
        assertThat(note.fromWhom()).isEqualTo(NAME);
        assertThat(folder.shift(NIGHT).damages()).isEmpty();

        String page = DayPage.text(paper);
        String body = page.replaceAll("\\n\\f.*\\n=.* sheet \\d+ of \\d+ ==\\n(SAID AND SEEN, continued\\n)?", "\n");
        assertThat(body.replaceAll("\\s+", "")).contains(Shown.text(text).replaceAll("\\s+", ""), "Núñez-Ørsted");
        assertThat(page).doesNotContain("\u202e", "\t");

        String csv = KindCsv.text(Kind.NOTE, List.of(paper.day()), UnitSystem.US);
        CSVRecord row;
        try (CSVParser parser = CSVParser.parse(
                csv,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            row = parser.getRecords().get(0);
        }
        assertThat(row.get("from_whom")).isEqualTo(NAME);
        assertThat(row.get("text")).isEqualTo("'" + Shown.text(text));
    }

    @Test
    @DisplayName("99: a shift of 5,000 tickets is read whole, adds up and verifies")
    void aShiftOfFiveThousandTicketsIsReadWholeAddsUpAndVerifies() throws IOException {
        DeskRig rig = DeskRig.open().keys("t");
        for (String[] each : new String[][] {
            {"truck", "118"},
            {"net_ston", "20.05"},
            {"number", "1000"},
            {"mix", "12.5-70A"},
            {"pull", "B"},
            {"lift", "2"}
        }) {
            Scenes.typedIn(rig, each[0], each[1]);
        }
        Unwritten load = written(rig.keys("<C-s>")).get(0);
        List<Unwritten> loads = new ArrayList<>();
        for (int i = 0; i < 5000; i++) {
            loads.add(load);
        }
        JobFolder folder = opened();
        append(folder, loads, rig.now());

        DayPaper paper = Papers.of(Shelf.of(folder).shift(NIGHT));
        assertThat(paper.day().standing(Ticket.class)).hasSize(5000);
        assertThat(paper.totals().loads()).hasSize(5000);
        Verdict verdict = Verify.of(folder);
        assertThat(verdict.sound()).isTrue();
        assertThat(verdict.files())
                .filteredOn(f -> f.file().startsWith(NIGHT.toString()))
                .singleElement()
                .satisfies(f -> assertThat(f.lines()).isEqualTo(5001));
    }
}
