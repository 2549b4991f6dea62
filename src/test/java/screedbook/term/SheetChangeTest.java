package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Finding;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.LimitSheets;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.spec.SpecSheet;

/**
 * A limit sheet that changes while a job runs, on the disk: the job's own copy governs by its name, from the time on at
 * which it is found, and what was judged before stays as it was. The practice sheet wants at least 270 at the paver for
 * PG 70 (common practice, no source); the job's copy is edited to 260.
 */
class SheetChangeTest {
    private static final ShiftId SHIFT = ShiftId.of("2026-06-03-day");
    private static final ShiftId NEXT = ShiftId.of("2026-06-04-day");

    @TempDir
    Path folder;

    private JobFolder job;
    private Hands hands;
    private final BlockingQueue<Msg> told = new LinkedBlockingQueue<>();

    @BeforeEach
    void makeTheJob() throws IOException {
        JobFolder.make(folder);
        job = JobFolder.at(folder);
    }

    @Test
    void theCopyInTheJobGovernsFromItsTimeOnAndOldVerdictsKeepTheOldSheet() throws Exception {
        open(SHIFT, "2026-06-03T14:00:00Z");
        load("101", "268", "08:00");
        leave();
        assertThat(belowAtThePaver(SHIFT)).containsExactly("paver/2 at least 270 °F");

        copyAndEdit("paver-mix-70,limit,paver-mix,270", "paver-mix-70,limit,paver-mix,260");
        Msg.Opened again = open(SHIFT, "2026-06-03T15:00:00Z");
        assertThat(again.said()).contains("another job revision or limit sheet is in force from here on");
        load("102", "268", "09:00");
        load("103", "259", "09:10");
        leave();

        List<String> then = belowAtThePaver(SHIFT);
        assertThat(then).containsExactly("paver/2 at least 270 °F", "paver/5 at least 260 °F");

        copyAndEdit("paver-mix-70,limit,paver-mix,260", "paver-mix-70,limit,paver-mix,300");
        assertThat(belowAtThePaver(SHIFT)).as("after the copy was edited again").isEqualTo(then);
        Files.delete(copy());
        assertThat(belowAtThePaver(SHIFT)).as("after the copy is gone").isEqualTo(then);

        open(NEXT, "2026-06-04T14:00:00Z");
        load("201", "268", "08:00");
        leave();
        assertThat(belowAtThePaver(NEXT)).as("the shipped sheet again").containsExactly("paver/2 at least 270 °F");
    }

    @Test
    void aCopyWithLinesThatStandInTheWayIsSaidWithFileAndLineAndTheOldSheetStays() throws Exception {
        open(SHIFT, "2026-06-03T14:00:00Z");
        load("101", "268", "08:00");
        leave();
        copyAndEdit("paver-mix-70,limit,paver-mix,270", "paver-mix-70,limit,paver-mix,26O");

        Msg.Opened again = open(SHIFT, "2026-06-03T15:00:00Z");
        load("102", "268", "09:00");
        Msg.Folder list = (Msg.Folder) asked(new Effect.ListShifts());
        leave();

        String line = "spec/practice.csv:6: low is \"26O\"; right would be a decimal such as 2.5";
        assertThat(again.said()).contains(line).doesNotContain("from here on");
        assertThat(list.troubles()).contains(line);
        assertThat(belowAtThePaver(SHIFT))
                .as("both loads by the sheet that the shift was opened with")
                .containsExactly("paver/2 at least 270 °F", "paver/3 at least 270 °F");
        assertThat(Shelf.at(folder).shift(SHIFT).ground().sheet().map(SpecSheet::sha256))
                .contains(SpecSheet.shipped("practice").orElseThrow().sha256());
    }

    private Msg.Opened open(ShiftId shift, String now) throws InterruptedException {
        Clock clock = Clock.fixed(Instant.parse(now), ZoneOffset.UTC);
        hands = new Hands(folder, "paver", "screedbook test", clock);
        Msg.Opened opened = (Msg.Opened) asked(new Effect.Open(shift, "RK", true));
        assertThat(opened.writable()).isTrue();
        return opened;
    }

    private void load(String number, String paver, String clock) throws InterruptedException {
        Map<String, Object> plain = new LinkedHashMap<>();
        plain.put("plant", "Quarry Road");
        plain.put("number", number);
        plain.put("truck", "T104");
        plain.put("mix", "12.5-70A");
        plain.put("net_ston", new BigDecimal("20.00"));
        plain.put("paver_degF", new BigDecimal(paver));
        plain.put("pull", "A");
        plain.put("lift", new BigDecimal("2"));
        Entry ticket = (Entry) Fields.build(Kind.TICKET.type(), plain).value();
        OffsetDateTime at =
                OffsetDateTime.parse((number.startsWith("2") ? "2026-06-04T" : "2026-06-03T") + clock + ":00-06:00");
        Msg said = asked(new Effect.Write(List.of(new Unwritten(at, "RK", Source.LIVE, ticket, Aside.NONE))));
        assertThat(said).isInstanceOf(Msg.Wrote.class);
    }

    private void leave() {
        hands.goodbye();
    }

    private Msg asked(Effect effect) throws InterruptedException {
        hands.carryOut(effect, told::add);
        Msg msg = told.poll(30, TimeUnit.SECONDS);
        assertThat(msg).as("an answer to " + effect).isNotNull();
        return msg;
    }

    private Path copy() {
        return folder.resolve("spec").resolve("practice.csv");
    }

    private void copyAndEdit(String from, String to) throws IOException {
        LimitSheets.in(job).copy("practice", SpecSheet.shippedBytes("practice").orElseThrow());
        String text = Files.readString(copy());
        assertThat(text).contains(from);
        Files.writeString(copy(), text.replace(from, to));
    }

    private List<String> belowAtThePaver(ShiftId shift) {
        ShiftFile file = Shelf.at(folder).shift(shift);
        return file.findings().stream()
                .filter(finding -> finding.rule().equals("heat-at-paver"))
                .map(SheetChangeTest::text)
                .toList();
    }

    private static String text(Finding finding) {
        return finding.of().get(0) + " " + finding.limit();
    }
}
