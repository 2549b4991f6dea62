package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.calc.RandomNumber;
import screedbook.check.Finding;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.diary.LotSeeds;
import screedbook.diary.Verify;
import screedbook.entry.Aside;
import screedbook.entry.Closing;
import screedbook.entry.Draft;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.ListColumns;
import screedbook.entry.Note;
import screedbook.entry.PlantList;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Strike;
import screedbook.entry.Ticket;
import screedbook.entry.Unwritten;
import screedbook.entry.YesNo;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/** What the desk's hands write by themselves. */
class HandsTest {
    private static final ShiftId SHIFT = ShiftId.of("2026-06-03-day");

    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void makeTheJob() throws IOException {
        folder = temporary.resolve("job");
        JobFolder.make(folder);
    }

    private Msg.Opened opened(String clock) {
        OffsetDateTime now = OffsetDateTime.parse(clock);
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        hands.carryOut(new Effect.Open(SHIFT, "AB", true), told::add);
        hands.goodbye();
        return (Msg.Opened) told.get(0);
    }

    /** What the desk is told when it wants these done, one after the other. */
    private List<Msg> told(String clock, Effect... wanted) {
        return toldIn("paver", clock, wanted);
    }

    private List<Msg> toldIn(String book, String clock, Effect... wanted) {
        OffsetDateTime now = OffsetDateTime.parse(clock);
        Hands hands = new Hands(folder, book, "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        for (Effect each : wanted) {
            hands.carryOut(each, told::add);
        }
        hands.goodbye();
        return told;
    }

    /** What the desk is told of the folder when it was read while the terminal was being opened. */
    private List<Msg> toldOfTheFolder() {
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.systemUTC());
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        hands.readAhead();
        hands.carryOut(new Effect.ListShifts(), told::add);
        hands.carryOut(new Effect.ListShifts(), told::add);
        hands.goodbye();
        return told;
    }

    @Test
    void theFirstLookIsToldOnceAndBeforeWhatTheWholeReadingSays() throws IOException {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("a")));

        List<Msg> told = toldOfTheFolder();

        assertThat(told).hasSize(3);
        Msg.Looked look = (Msg.Looked) told.get(0);
        Msg.Folder whole = (Msg.Folder) told.get(1);
        assertThat(look.shifts()).hasSize(1).isEqualTo(whole.shifts());
        assertThat(look.job().name()).isEqualTo(whole.job().orElseThrow().name());
        assertThat(told.get(2)).isEqualTo(whole);
    }

    @Test
    void aTroubleBehindTheFirstLookIsToldByTheWholeReading() throws IOException {
        Path file = folder.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace("\"mixes\"", "\"mixtures\""));

        List<Msg> told = toldOfTheFolder();

        assertThat(told.get(0)).isInstanceOf(Msg.Looked.class);
        assertThat(((Msg.Folder) told.get(1)).job()).isEmpty();
        assertThat(((Msg.Folder) told.get(1)).troubles()).anyMatch(each -> each.contains("there is no mixtures"));
    }

    @Test
    void aFolderWithoutAJobHasNoFirstLook() throws IOException {
        Files.delete(folder.resolve("job.json"));

        assertThat(toldOfTheFolder()).hasSize(2).allMatch(each -> each instanceof Msg.Folder);
    }

    private static Effect write(Entry entry) {
        return new Effect.Write(List.of(new Unwritten(null, "AB", Source.LIVE, entry, Aside.NONE)));
    }

    private static Note note(String text) {
        return new Note(null, text, null, null, null, null, null);
    }

    private static Closing closing() {
        return new Closing(
                new Closing.Theirs(null, null, null, Closing.Agreed.NOT_PRESENT, null),
                null,
                null,
                null,
                null,
                null,
                null);
    }

    private List<String> files(String of) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(of))) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aClosedShiftIsOpenedAndLeftWithoutATraceUntilALineIsWrittenBehindTheClose() throws IOException {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("a")), write(closing()));
        List<String> before = files("diary");
        assertThat(before).contains("2026-06-03-day.paver.jsonl").doesNotContain("2026-06-03-day.paver.r2.jsonl");
        assertThat(files("days")).containsExactly("2026-06-03-day.csv", "2026-06-03-day.txt");

        told("2026-06-03T08:00:00-06:00", new Effect.Open(SHIFT, "AB", false));
        assertThat(files("diary")).isEqualTo(before);

        List<Msg> late = told("2026-06-03T09:00:00-06:00", new Effect.Open(SHIFT, "AB", false), write(note("late")));
        assertThat(late.get(1)).isInstanceOf(Msg.Wrote.class);
        assertThat(files("diary")).contains("2026-06-03-day.paver.r2.jsonl");
        assertThat(files("days")).contains("2026-06-03-day.r2.txt");
        assertThat(Verify.of(JobFolder.at(folder)).sound()).isTrue();
    }

    @Test
    @DisplayName("98: a shift of a newer format is looked at and not written")
    void aShiftOfANewerFormatIsLookedAtAndNotWritten() throws IOException {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true));
        Path diary = folder.resolve("diary").resolve("2026-06-03-day.paver.jsonl");
        String text = Files.readString(diary).replace("\"format\":1", "\"format\":2");
        Files.writeString(diary, text);

        List<Msg> told = told("2026-06-03T08:00:00-06:00", new Effect.Open(SHIFT, "AB", false), write(note("a")));

        assertThat(((Msg.Opened) told.get(0)).writable()).isFalse();
        assertThat(((Msg.Opened) told.get(0)).said()).contains("newer program (format 2)");
        assertThat(told.get(1)).isInstanceOf(Msg.Refused.class);
        assertThat(Files.readString(diary)).isEqualTo(text);
    }

    @Test
    void aShiftWhoseOpeningCannotBeWrittenIsNotWritten() throws IOException {
        Files.writeString(folder.resolve("job.json"), "{\"id\": 3}");

        List<Msg> told = told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("a")));

        assertThat(((Msg.Opened) told.get(0)).writable()).isFalse();
        assertThat(((Msg.Opened) told.get(0)).said()).contains("job.json cannot be read");
        assertThat(told.get(1)).isInstanceOf(Msg.Refused.class);
    }

    private List<Standing<screedbook.entry.Clock>> clocks() {
        return Shelf.at(folder).shift(SHIFT).day().standing(screedbook.entry.Clock.class);
    }

    @Test
    @DisplayName("7: a clock that stands before the last line is written down, and older lines stay")
    void aClockThatStandsBeforeTheLastLineIsWrittenDown() {
        opened("2026-06-03T07:00:00-06:00");
        opened("2026-06-03T09:00:00-06:00");
        assertThat(clocks()).isEmpty();

        opened("1970-01-01T00:00:10-07:00");

        assertThat(clocks()).singleElement().satisfies(c -> {
            assertThat(c.entry().was().toInstant())
                    .isEqualTo(OffsetDateTime.parse("2026-06-03T07:00:00-06:00").toInstant());
            assertThat(c.entry().now().getYear()).isEqualTo(1970);
        });
        ShiftFile file = Shelf.at(folder).shift(SHIFT);
        assertThat(file.findings()).extracting(Finding::rule).contains("clock-changed");
        assertThat(file.read().damages()).isEmpty();
        assertThat(file.day().all().get(0).line().keyed().toInstant())
                .isEqualTo(OffsetDateTime.parse("2026-06-03T07:00:00-06:00").toInstant());
    }

    @Test
    void whatBecameALineIsNotOfferedAsHalfTypedAfterTheProgramWasCutShort() {
        Draft draft = new Draft(Kind.NOTE, Source.LIVE, null, Map.of("text", "lane closed"), "text");
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), new Effect.Keep(draft));
        List<Msg> kept = told("2026-06-03T07:05:00-06:00", new Effect.Open(SHIFT, "AB", false));
        assertThat(((Msg.Opened) kept.get(0)).drafts()).hasSize(1);

        told(
                "2026-06-03T07:10:00-06:00",
                new Effect.Open(SHIFT, "AB", false),
                new Effect.Keep(draft),
                write(note("lane closed")));
        List<Msg> written = told("2026-06-03T07:15:00-06:00", new Effect.Open(SHIFT, "AB", false));
        assertThat(((Msg.Opened) written.get(0)).drafts()).isEmpty();
    }

    /** A load of 100.5 T fills a lot of 100 T: its seed is told after its hash, and the next lot begins. */
    @Test
    void aLoadBringsTheLinesOfItsRandomPlaces() throws IOException {
        Path file = folder.resolve("job.json");
        String text = Files.readString(file);
        assertThat(text).contains("\"lots\": {");
        Files.writeString(
                file,
                text.replaceAll(
                        "\"lots\": \\{[^}]*}",
                        "\"lots\": {\"lot_ston\": 100, \"sublot_ston\": 50, \"random_by\": \"tons\", \"draws\": 2}"));
        OffsetDateTime now = OffsetDateTime.parse("2026-06-03T07:00:00-06:00");
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        hands.carryOut(new Effect.Open(SHIFT, "AB", true), told::add);
        hands.carryOut(new Effect.Write(List.of(load(now))), told::add);
        hands.goodbye();

        assertThat(told.get(1)).isInstanceOf(Msg.Wrote.class);
        assertThat(((Msg.Wrote) told.get(1)).said()).contains("random place: lot 1 sublot 2");
        List<Draw> draws = Shelf.at(folder).shift(SHIFT).day().standing(Draw.class).stream()
                .map(Standing::entry)
                .toList();
        assertThat(draws)
                .extracting(d -> d.step() + " " + d.lot())
                .containsExactly("BEGUN 1", "REACHED 1", "REACHED 1", "REACHED 1", "REACHED 1", "CLOSED 1", "BEGUN 2");
        assertThat(RandomNumber.sha256(draws.get(5).seed()))
                .isEqualTo(draws.get(0).begun().seedSha256());
        String next = draws.get(6).begun().seedSha256();
        String kept = LotSeeds.in(JobFolder.at(folder)).seed(next).orElseThrow();
        assertThat(kept).matches("[0-9a-f]{32}");
        assertThat(RandomNumber.sha256(kept)).isEqualTo(next);
        assertThat(Files.readString(diary())).doesNotContain(kept);
        assertThat(Shelf.at(folder).shift(SHIFT).read().damages()).isEmpty();
    }

    /** A supervisor's laptop keeps another book; months later it opens a shift that was closed in the paver's. */
    @Test
    void whoOnlyLooksAtAShiftThatAnotherBookClosedWritesNothing() throws IOException {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("a")), write(closing()));
        Path own = folder.resolve("diary/2026-06-03-day.office.jsonl");

        List<Msg> looked = toldIn("office", "2026-11-25T09:00:00-07:00", new Effect.Open(SHIFT, "CD", true));
        assertThat(own).doesNotExist();
        assertThat(((Msg.Opened) looked.get(0)).writable()).isTrue();

        List<Msg> wrote =
                toldIn("office", "2026-11-25T09:00:00-07:00", new Effect.Open(SHIFT, "CD", true), write(note("late")));
        assertThat(wrote.get(1)).isInstanceOf(Msg.Wrote.class);
        assertThat(Files.readAllLines(own))
                .hasSize(2)
                .satisfies(lines -> assertThat(lines.get(0)).contains("\"kind\":\"opening\""))
                .satisfies(lines -> assertThat(lines.get(1)).contains("\"text\":\"late\""));
        assertThat(Verify.of(JobFolder.at(folder)).sound()).isTrue();
    }

    /** A lot of 150 T gets 100.5 T; the closing says that the lots end, so the seed is told before it. */
    @Test
    void theSeedOfALotThatNeverFillsIsToldWhenTheClosingSaysThatTheLotsEnd() throws IOException {
        Path file = folder.resolve("job.json");
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceAll(
                                "\"lots\": \\{[^}]*}",
                                "\"lots\": {\"lot_ston\": 150, \"sublot_ston\": 150, \"random_by\": \"tons\"}"));
        OffsetDateTime now = OffsetDateTime.parse("2026-06-03T07:00:00-06:00");
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        Closing closing = closing();
        Closing last = new Closing(closing.theirs(), null, null, YesNo.YES, null, null, null, null);
        hands.carryOut(new Effect.Open(SHIFT, "AB", true), told::add);
        hands.carryOut(new Effect.Write(List.of(load(now))), told::add);
        hands.carryOut(new Effect.Write(List.of(new Unwritten(now, "AB", Source.LIVE, last, Aside.NONE))), told::add);
        hands.goodbye();

        List<Standing<?>> all = Shelf.at(folder).shift(SHIFT).day().all();
        assertThat(all.get(all.size() - 1).entry()).isInstanceOf(Closing.class);
        assertThat(all.get(all.size() - 2).entry()).isInstanceOf(Draw.class);
        Draw seed = (Draw) all.get(all.size() - 2).entry();
        assertThat(seed.step()).isEqualTo(Draw.Step.CLOSED);
        Draw begun =
                Shelf.at(folder).shift(SHIFT).day().standing(Draw.class).get(0).entry();
        assertThat(RandomNumber.sha256(seed.seed())).isEqualTo(begun.begun().seedSha256());
        assertThat(Shelf.at(folder).shift(SHIFT).totals().figure("redrawn.12.5-70A.1"))
                .hasValueSatisfying(f -> assertThat(f.text()).endsWith("as the seed gives them"));
    }

    private Path diary() {
        return folder.resolve("diary").resolve(SHIFT + ".paver.jsonl");
    }

    private static Unwritten load(OffsetDateTime now) {
        Map<String, Object> values = Map.of("number", "1", "mix", "12.5-70A", "net_ston", new BigDecimal("100.5"));
        Ticket ticket = Fields.build(Ticket.class, values).value();
        return new Unwritten(now, "AB", Source.LIVE, ticket, Aside.NONE);
    }

    @Test
    void whatIsLookedForIsFoundByWhatItIsAbout() throws InterruptedException {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("rain")), write(note("sun")));

        assertThat(found("person ab sun"))
                .singleElement()
                .satisfies(match -> assertThat(match.text()).contains("sun"));
        assertThat(found("truck T104")).isEmpty();
    }

    @Test
    void whatIsFoundAndWasTakenBackSaysSo() throws InterruptedException {
        Strike strike = new Strike(new Ref("paver", 2), "keyed twice");
        told("2026-06-03T07:00:00-06:00", new Effect.Open(SHIFT, "AB", true), write(note("rain")), write(strike));

        assertThat(found("rain"))
                .singleElement()
                .satisfies(match -> assertThat(match.text()).startsWith("struck  note"));
    }

    /** All that a search finds; it is told bit by bit. */
    private List<Msg.Match> found(String words) throws InterruptedException {
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.systemUTC());
        BlockingQueue<Msg> told = new LinkedBlockingQueue<>();
        hands.carryOut(new Effect.Find(words), told::add);
        try {
            Msg.Found found;
            do {
                found = (Msg.Found) told.poll(60, TimeUnit.SECONDS);
            } while (found.left() > 0);
            return found.matches();
        } finally {
            hands.goodbye();
        }
    }

    private static final String LIST = "Number,Truck,Net,Loaded\n48217,T104,20.10,06:40\n48218,T104,20.30,06:50\n";

    @Test
    @DisplayName("row 53: a plant's list at the desk is copied, noted and laid beside the shift")
    void aPlantsListIsBroughtInAndHowItIsReadIsAskedOnce() throws IOException {
        Path stick = Files.writeString(temporary.resolve("from the plant.csv"), LIST);
        ListColumns columns =
                new ListColumns("Number", "Truck", "Net", "Loaded", null, null, ListColumns.Weights.TONS, null);
        String typed = "'" + stick + "'";

        List<Msg> told = told(
                "2026-06-03T08:00:00-06:00",
                new Effect.Open(SHIFT, "AB", true),
                new Effect.BringList("Quarry Road", typed, null),
                new Effect.BringList("Quarry Road", typed, columns),
                new Effect.BringList("Quarry Road", typed, null),
                new Effect.BringList("Quarry Road", stick + ".gone", null));

        assertThat(((Msg.ListAsked) told.get(1)).heading()).containsExactly("Number", "Truck", "Net", "Loaded");
        assertThat(((Msg.ListAsked) told.get(1)).guess().weights()).isEqualTo(ListColumns.Weights.TONS);
        Msg.Wrote wrote = (Msg.Wrote) told.get(2);
        PlantList entry = (PlantList) wrote.lines().get(0).entry();
        assertThat(folder.resolve("plant").resolve(entry.listFile())).hasContent(LIST);
        assertThat(wrote.page().day().lists().values().iterator().next().rows())
                .extracting(PlantRows.Row::number)
                .containsExactly("48217", "48218");
        assertThat(wrote.said())
                .isEqualTo("the job keeps its columns: revision 2; the file before is kept as" + " job.json.before-2");
        assertThat(told.get(3)).as("the job says it now").isInstanceOf(Msg.Wrote.class);
        assertThat(((Msg.Refused) told.get(4)).said())
                .contains("from the plant.csv.gone")
                .contains("it is not there");
        assertThat(Verify.of(JobFolder.at(folder)).damages()).isEmpty();
        ShiftFile read = Shelf.at(folder).shift(SHIFT);
        assertThat(read.findings()).extracting(Finding::rule).contains("list-load-not-here");
    }
}
