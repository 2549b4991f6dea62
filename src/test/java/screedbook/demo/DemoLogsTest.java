package screedbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.diary.JobFolder;
import screedbook.diary.Verify;
import screedbook.entry.Kind;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Figure;
import screedbook.unit.Unit;

/** Every shift that was ever put into the demo reads today as on the day on which it was added. */
class DemoLogsTest {
    private static final Path LOGS = Path.of("demo-logs");

    /** A shift of a demo job. */
    record Shift(Path job, ShiftId id) {
        ShiftFile file() {
            return Shelf.at(job).shift(id);
        }

        @Override
        public String toString() {
            return job.getFileName() + " " + id;
        }
    }

    static List<Path> jobs() throws IOException {
        try (Stream<Path> all = Files.list(LOGS)) {
            return all.filter(Files::isDirectory).sorted().toList();
        }
    }

    static List<Shift> shifts() throws IOException {
        List<Shift> shifts = new ArrayList<>();
        for (Path job : jobs()) {
            JobFolder.at(job).shifts().forEach(id -> shifts.add(new Shift(job, id)));
        }
        return shifts;
    }

    static List<Shift> working() throws IOException {
        return shifts().stream()
                .filter(s -> !s.file().day().standing(Ticket.class).isEmpty())
                .toList();
    }

    private static List<Remembered.Row> remembered() throws IOException {
        String text = DemoShifts.resource("/demo/expected.csv");
        try (CSVParser rows = CSVParser.parse(text, CSVFormat.RFC4180)) {
            return rows.getRecords().stream()
                    .map(r -> new Remembered.Row(r.get(0), r.get(1), r.get(2), r.get(3), r.get(4)))
                    .toList();
        }
    }

    private static List<Remembered.Row> remembered(Shift shift, String... what) throws IOException {
        return remembered().stream()
                .filter(r -> r.job().equals(shift.job().getFileName().toString()))
                .filter(r -> r.shift().equals(shift.id().toString()))
                .filter(r -> List.of(what).contains(r.what()))
                .toList();
    }

    private static List<Remembered.Row> today(Shift shift, String... what) throws IOException {
        return Remembered.rows(shift.job(), shift.id()).stream()
                .filter(r -> List.of(what).contains(r.what()))
                .toList();
    }

    @Test
    void theDemoHoldsTheShiftsThatAreRememberedAndNoOther() throws IOException {
        TreeSet<String> there = new TreeSet<>();
        shifts().forEach(s -> there.add(s.toString()));
        TreeSet<String> known = new TreeSet<>();
        remembered().forEach(r -> known.add(r.job() + " " + r.shift()));

        assertThat(there).isEqualTo(known).hasSizeGreaterThanOrEqualTo(4);
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void noByteOfADemoShiftHasChanged(Shift shift) throws IOException {
        assertThat(today(shift, "file", "seal")).isEqualTo(remembered(shift, "file", "seal"));
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void aDemoShiftComesToWhatItCameTo(Shift shift) throws IOException {
        assertThat(today(shift, "figure")).containsAll(remembered(shift, "figure"));
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void aDemoShiftHasTheFindingsThatItHad(Shift shift) throws IOException {
        assertThat(today(shift, "finding")).containsExactlyElementsOf(remembered(shift, "finding"));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void nothingIsFoundWhenADemoJobIsVerified(Path job) {
        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void everyLineOfADemoShiftIsCounted(Shift shift) {
        assertThat(shift.file().day().uncounted()).isEmpty();
    }

    @Test
    void theDemoHasEveryKindOfEntry() throws IOException {
        TreeSet<Kind> kinds = new TreeSet<>();
        for (Shift shift : shifts()) {
            shift.file().day().all().forEach(each -> kinds.add(each.line().kind()));
        }

        assertThat(kinds).containsExactlyElementsOf(EnumSet.allOf(Kind.class));
    }

    @ParameterizedTest
    @MethodSource("shifts")
    void jqAddsUpToTheSameFiguresFromThePlainLines(Shift shift) throws Exception {
        Map<String, BigDecimal> ours = new HashMap<>();
        shift.file()
                .totals()
                .sections()
                .forEach(section -> section.figures().stream()
                        .filter(f -> f.value() != null)
                        .forEach(f -> ours.put(f.id(), sixDecimals(f))));
        Map<String, BigDecimal> theirs = jq(shift);

        theirs.forEach((id, value) -> assertThat(ours.get(id)).as(id).isEqualByComparingTo(value));
        int mixes = (int)
                ours.keySet().stream().filter(id -> id.startsWith("loads.mix.")).count();
        assertThat(theirs).hasSizeGreaterThanOrEqualTo(10 * mixes);
    }

    private static BigDecimal sixDecimals(Figure figure) {
        return figure.value().setScale(6, RoundingMode.HALF_UP);
    }

    private static Map<String, BigDecimal> jq(Shift shift) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("jq", "-rs", "-f", "src/test/resources/demo/totals.jq"));
        for (Path file : Remembered.files(shift.job(), shift.id())) {
            if (file.toString().endsWith(".jsonl")) {
                command.add(file.toString());
            }
        }
        Process jq = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String text = new String(jq.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(jq.waitFor()).as("exit code of jq").isZero();
        Map<String, BigDecimal> figures = new HashMap<>();
        text.lines().map(line -> line.split("\t")).forEach(cell -> figures.put(cell[0], new BigDecimal(cell[1])));
        return figures;
    }

    @ParameterizedTest
    @MethodSource("working")
    void aWorkingShiftHasAsManyLoadsAsShiftsHave(Shift shift) {
        assertThat(shift.file().day().standing(Ticket.class).size()).isBetween(60, 150);
    }

    /** Limits of what a practitioner takes for possible: common practice, no source. */
    @ParameterizedTest
    @MethodSource("working")
    void trucksOfTheDemoGoRoundAsTrucksDo(Shift shift) throws IOException {
        Map<String, Ticket> before = new HashMap<>();
        Job job = JobFolder.at(shift.job()).job().job().orElseThrow();
        for (Standing<Ticket> each : shift.file().day().standing(Ticket.class)) {
            Ticket ticket = each.entry();
            String truck = ticket.paper().truck();
            OffsetDateTime loaded = ticket.times().loaded();
            Ticket last = before.put(truck, ticket);
            if (last != null && last.times().discharged() != null) {
                assertThat(Duration.between(last.times().discharged(), loaded).toMinutes())
                        .as("%s back at the plant for %s", truck, ticket.paper().number())
                        .isBetween(14L, 70L);
            }
            if (ticket.weights().tare() != null) {
                BigDecimal usual = job.truck(truck).orElseThrow().tare().value();
                assertThat(ticket.weights().tare().value().subtract(usual).abs())
                        .as("tare of %s", truck)
                        .isLessThanOrEqualTo(new BigDecimal("200"));
                BigDecimal net = ticket.weights()
                        .gross()
                        .minus(ticket.weights().tare())
                        .to(Unit.SHORT_TON)
                        .value();
                assertThat(ticket.weights().net().value()).isEqualByComparingTo(net);
            }
            assertThat(ticket.weights().net().value()).isBetween(new BigDecimal("18"), new BigDecimal("24"));
        }
    }

    @ParameterizedTest
    @MethodSource("working")
    void pullsOfTheDemoAreLaidNearTheirTarget(Shift shift) {
        assertThat(shift.file().totals().runs())
                .isNotEmpty()
                .allSatisfy(run -> assertThat(run.percent().orElseThrow().value())
                        .isBetween(new BigDecimal("97"), new BigDecimal("103")));
    }

    /** What wrote the demo can still write such a job, under any temporary folder. */
    @Test
    void theShiftsCanBeWrittenAgainSomewhereElse(@TempDir Path temporary) throws IOException {
        Path job = temporary.resolve("harrow-bend");
        DemoShifts.write(job);

        assertThat(Verify.of(JobFolder.at(job)).damages()).isEmpty();
        assertThat(JobFolder.at(job).shifts()).hasSize(4);
        Path nights = temporary.resolve("tanager-flats");
        TanagerFlats.write(nights);
        assertThat(Verify.of(JobFolder.at(nights)).damages()).isEmpty();
        assertThat(JobFolder.at(nights).shifts()).hasSize(2);
        Path metric = temporary.resolve("brackwater-quay");
        BrackwaterQuay.write(metric);
        assertThat(Verify.of(JobFolder.at(metric)).damages()).isEmpty();
        assertThat(JobFolder.at(metric).shifts()).hasSize(1);
        assertThat(Arrays.stream(job.toFile().list())).contains("README.txt", "job.json", "job.jsonl", "diary", "days");
    }
}
