package screedbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.MadeArchive;
import screedbook.entry.Station;
import screedbook.shelf.Shelf;

/** What is found in the demo, held against its lines as text. */
class SearchTest {
    private static final Path DEMO = Path.of("demo-logs", "harrow-bend");

    @TempDir
    Path folder;

    private static List<Hit> found(Sought sought) {
        return found(DEMO, sought, new ArrayList<>());
    }

    private static List<Hit> found(Path job, Sought sought, List<String> passed) {
        List<Hit> hits = new ArrayList<>();
        Search.job(Shelf.at(job), sought, shift -> {}, hits::add, passed::add);
        return hits;
    }

    private static List<String> lines() throws IOException {
        List<String> lines = new ArrayList<>();
        try (Stream<Path> files = Files.list(DEMO.resolve("diary"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".jsonl")).toList()) {
                lines.addAll(Files.readAllLines(file));
            }
        }
        return lines;
    }

    @Test
    void aTruckIsFoundInEveryLineThatNamesIt() throws IOException {
        long there =
                lines().stream().filter(l -> l.contains("\"truck\":\"T104\"")).count();

        assertThat(there).isPositive();
        assertThat(found(Sought.ANYTHING.withTruck("t104"))).hasSize((int) there);
    }

    @Test
    void aTicketIsFoundByItsNumberWithDigitsThatNobodyCouldRead() throws IOException {
        String number = "48217";
        long there = lines().stream()
                .filter(l -> l.contains("\"number\":\"" + number + "\""))
                .count();

        assertThat(there).isPositive();
        assertThat(found(Sought.ANYTHING.withTicket(number))).hasSize((int) there);
        assertThat(found(Sought.ANYTHING.withTicket("4821?")).size()).isGreaterThan((int) there);
        assertThat(found(Sought.ANYTHING.withTicket("4821"))).isEmpty();
    }

    @Test
    void aStretchFindsWhateverCoversSomeOfIt() {
        List<Hit> hits = found(Sought.of("station 20+00 to 21+00 from 2026-05-12 to 2026-05-12"));

        assertThat(hits).isNotEmpty().allMatch(h -> h.shift().toString().equals("2026-05-12-day"));
        assertThat(hits)
                .extracting(Hit::told)
                .anyMatch(t -> t.startsWith("ticket"))
                .anyMatch(t -> t.startsWith("tack"));
        assertThat(found(Sought.of("station 900+00"))).isEmpty();
    }

    /** Stations of 1000 m have three digits behind the plus: 1+200 lies 1200 m along, and 12+00 lies 1200 ft. */
    @Test
    void aStationInFeetFindsNothingInAJobOfKilometres() {
        Path metric = Path.of("demo-logs", "brackwater-quay");

        assertThat(found(metric, Sought.of("station 1+200 to 1+400"), new ArrayList<>()))
                .extracting(Hit::told)
                .anyMatch(t -> t.startsWith("ticket"));
        assertThat(found(metric, Sought.of("station 12+00 to 14+00"), new ArrayList<>()))
                .isEmpty();
    }

    @Test
    void wordsAreFoundWhateverTheirAccentsAndNeverInAHash() throws IOException {
        Path made = folder.resolve("made");
        MadeArchive.make(made, 1, 1, 120);
        Path job = made.resolve("made-01");
        long there = Files.readAllLines(job.resolve("diary/2016-04-01-day.paver.jsonl")).stream()
                .filter(l -> l.contains("b\u00e9ton"))
                .count();

        assertThat(there).isPositive();
        for (String typed : List.of("b\u00e9ton", "be\u0301ton", "BETON", "repris beton")) {
            assertThat(found(job, Sought.ANYTHING.withText(typed), new ArrayList<>()))
                    .as(typed)
                    .hasSize((int) there);
        }
        assertThat(found(job, Sought.ANYTHING.withText("prev"), new ArrayList<>()))
                .isEmpty();
    }

    @Test
    void aLineThatCouldNotBeLookedThroughIsNamed() throws IOException {
        Path made = folder.resolve("made");
        MadeArchive.make(made, 1, 1, 60);
        Path diary = made.resolve("made-01/diary/2016-04-01-day.paver.jsonl");
        List<String> lines = new ArrayList<>(Files.readAllLines(diary));
        lines.set(9, "{\"number\":\"48001");
        diary.toFile().setWritable(true);
        Files.write(diary, lines);

        for (Sought sought : List.of(Sought.ANYTHING.withTicket("48001"), Sought.ANYTHING.withFinding("outside"))) {
            List<String> passed = new ArrayList<>();
            found(made.resolve("made-01"), sought, passed);
            assertThat(passed).singleElement().asString().startsWith("2016-04-01-day paver line 10: ");
        }
    }

    @Test
    void aPersonIsFoundByInitialsOrByNameAsWriterOrAsWhoDecided() throws IOException {
        long reviews =
                lines().stream().filter(l -> l.contains("\"who\":\"AS\"")).count();

        assertThat(found(Sought.ANYTHING.withPerson("Stone")).size()).isGreaterThanOrEqualTo((int) reviews);
        assertThat(found(Sought.ANYTHING.withPerson("as")))
                .extracting(Hit::told)
                .anyMatch(t -> t.startsWith("review"));
    }

    @Test
    void aFindingLeadsToTheEntryThatCarriesIt() {
        List<Hit> hits = found(Sought.ANYTHING
                .withFinding("tack-rate")
                .withDates(LocalDate.parse("2026-05-12"), LocalDate.parse("2026-05-12")));

        assertThat(hits).singleElement().satisfies(hit -> {
            assertThat(hit.ref()).hasToString("paver/47");
            assertThat(hit.told()).contains("outside: ");
        });
    }

    @Test
    void wordsAtTheDeskAreReadAsWhatTheyName() {
        Sought all = Sought.of("truck T104 station 12+00 to 14+00 rain");

        assertThat(all.truck()).isEqualTo("T104");
        assertThat(all.first()).isEqualTo(Station.of("12+00"));
        assertThat(all.last().distance()).isEqualByComparingTo(new BigDecimal("1400"));
        assertThat(all.words()).containsExactly("rain");
        assertThat(Sought.of("station nowhere").words()).containsExactly("station", "nowhere");
        assertThat(Sought.of("ticket").words()).containsExactly("ticket");
        assertThat(Sought.of("to fro").words()).containsExactly("to", "fro");
    }
}
