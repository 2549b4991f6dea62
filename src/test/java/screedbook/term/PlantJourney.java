package screedbook.term;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.JobFolder;
import screedbook.entry.Kind;
import screedbook.shelf.KeptShift;

/**
 * A shift of 120 loads, with profiles, joints, two cores and a stop, to which the plant's list comes on a stick: the last
 * loads and the list are keyed at the packed program in a real terminal, and the three differences put into the list are
 * found there and on the page. Needs tmux. Everything is invented.
 */
class PlantJourney {
    private static final Path LAUNCHER =
            Path.of(System.getProperty("screedbook.jar")).resolveSibling("screedbook");
    private static final int LOADS = 120;
    private static final int KEYED = 2;
    /** 21.97 here, 21.79 in the list. */
    private static final int TURNED = 33;

    private static final int NOT_THERE = 77;

    private record Said(int exit, String out) {}

    @TempDir
    Path home;

    private Path job;
    private Pane pane;

    private static int number(int load) {
        return 48201 + load + (load >= 49 ? 1 : 0);
    }

    private static BigDecimal net(int load) {
        return new BigDecimal(2096 + load * 37 % 160).movePointLeft(2);
    }

    @BeforeEach
    void keepAllButTheLastLoads() throws Exception {
        job = home.resolve("job");
        assertThat(said("new", job.toString()).exit()).isZero();
        Path file = job.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace("\"series\": \"shared\"", "\"series\": \"own\""));
        try (KeptShift kept = KeptShift.opened(JobFolder.at(job), "2026-06-03-day", "main")) {
            for (int load = 0; load < LOADS - KEYED; load++) {
                kept.ticket(null, "" + number(load), net(load).toPlainString());
            }
            kept.key(Kind.PROFILE, null, profile("15+00", "16+50")).key(Kind.PROFILE, null, profile("30+00", "31+50"));
            kept.key(Kind.JOINT, null, Map.of("run", "transverse", "from_sta", "12+00", "tacked", "yes"));
            kept.key(Kind.JOINT, null, Map.of("run", "transverse", "from_sta", "52+00", "tacked", "yes"));
            kept.key(Kind.CORE, null, Map.of("core", "C-1", "place_sta", "22+10"));
            kept.key(Kind.CORE, null, Map.of("core", "C-2", "place_sta", "34+10"));
            kept.key(Kind.STOP, null, Map.of("cause", "no-trucks", "waiting", BigDecimal.ZERO));
        }
    }

    private static Map<String, Object> profile(String from, String to) {
        return Map.of(
                "from_sta",
                from,
                "to_sta",
                to,
                "hottest_degF",
                new BigDecimal("291"),
                "coldest_degF",
                new BigDecimal("272"));
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        if (pane != null) {
            pane.close();
        }
    }

    /** A load that is not here, one of ours that is not there, and one whose net has two digits changed round. */
    private Path list() throws IOException {
        StringBuilder list = new StringBuilder("Date;Time;Ticket;Truck;Net lb\r\n");
        for (int load = 0; load < LOADS; load++) {
            if (load == 49) {
                list.append(row(48250, new BigDecimal("21.40")));
            }
            if (load != NOT_THERE) {
                list.append(row(number(load), load == TURNED ? new BigDecimal("21.79") : net(load)));
            }
        }
        return Files.writeString(home.resolve("from the plant.csv"), list);
    }

    private static String row(int number, BigDecimal net) {
        return "6/3/2026;" + (7 + number % 8) + ":10;" + number + ";104;"
                + net.multiply(BigDecimal.valueOf(2000)).setScale(0) + "\r\n";
    }

    @Test
    void threeDifferencesInThePlantsListAreFoundAtTheDeskAndOnThePage() throws Exception {
        sitDown();
        for (int load = LOADS - KEYED; load < LOADS; load++) {
            key(load);
        }
        pane.waitFor(LOADS + " loads");

        pane.type("mL");
        pane.waitFor("it changes no entry");
        pane.type(list() + "\r");
        pane.waitFor("which column is which?");
        pane.type("ooooooo2\r");
        pane.waitFor("118 matched, 1 missing here, 1 missing there, 1 different");

        find("list-differs", "48234", "net 21.97 T here, 43580 lb (21.79 T) in the list");
        find("list-load-not-there", "" + number(NOT_THERE), "is not in Quarry Road's list");
        find("list-load-not-here", "48249", "ticket 48250, truck 104");
        pane.strike("Escape");
        pane.waitFor("who writes");
        pane.type("q");
        pane.waitFor("ended with 0");

        Said verified = said("verify", job.toString());
        assertThat(verified.exit()).as(verified.out()).isZero();
        assertThat(verified.out()).contains("a plant's own list; main/");
        assertThat(said("day", job.toString()).out())
                .contains("Quarry Road's list: 118 matched, 1 missing here, 1 missing there, 1 different");
        try (Stream<Path> kept = Files.list(job.resolve("plant"))) {
            assertThat(kept).hasSize(1).allSatisfy(copy -> assertThat(copy).hasSameBinaryContentAs(list()));
        }
        assertThat(Files.readString(job.resolve("job.json"))).contains("\"number_column\": \"Ticket\"");
    }

    private void sitDown() throws Exception {
        String environment = "export JAVA_HOME='" + System.getProperty("java.home") + "' XDG_CACHE_HOME='"
                + home.resolve("cache") + "'; ";
        pane = new Pane(home, environment + "'" + LAUNCHER + "' '" + job + "'; echo ended with $?; exec cat");
        pane.waitFor("who writes");
        pane.type("1\r");
        pane.waitFor((LOADS - KEYED) + " loads");
        pane.type("l");
        pane.waitFor("keying from notes");
    }

    /** A load from its paper: each blank that is due is answered as the cursor comes to it. */
    private void key(int load) throws Exception {
        pane.type("t");
        pane.waitFor(
                "the form of ticket " + number(load),
                s -> s.contains("ticket " + number(load)) && s.contains("Ctrl-S write"));
        for (int i = 0; i < 12 && pane.text().contains("Ctrl-S write"); i++) {
            String row = pane.cursorRow();
            String typed = row.startsWith(" truck")
                    ? "104"
                    : row.startsWith(" net") ? net(load).toPlainString() : "";
            pane.type(typed + "\r");
            pane.waitFor(
                    "the next blank",
                    s -> !s.contains("Ctrl-S write") || !cursorRow().equals(row));
        }
        pane.waitFor("on disk");
    }

    private String cursorRow() {
        try {
            return pane.cursorRow();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Looks for the findings of a rule; the entry that the first one leads to tells the difference. */
    private void find(String rule, String ticket, String said) throws Exception {
        pane.type("/finding " + rule + "\r");
        pane.waitFor(
                rule + " with its ticket", screen -> screen.contains("looking for words") && screen.contains(ticket));
        pane.type("\r");
        String seen = said.replaceAll("\\s+", "");
        pane.waitFor(said, screen -> screen.replaceAll("\\s+", "").contains(seen));
        pane.strike("Escape", "Escape");
        pane.waitFor("back on the shift", screen -> screen.contains(LOADS + " loads"));
    }

    private Said said(String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(LAUNCHER.toString()));
        command.addAll(List.of(words));
        Path out = Files.createTempFile(home, "out", "");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(command.toString()).isTrue();
        return new Said(process.exitValue(), Files.readString(out, UTF_8));
    }
}
