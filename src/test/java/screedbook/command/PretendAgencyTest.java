package screedbook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.diary.Jobs;
import screedbook.diary.MadeArchive;
import screedbook.season.DuckDb;

/** A made-up agency with twenty jobs, asked as somebody would who has the program for the first time. */
class PretendAgencyTest {
    private static final Pattern TICKET = Pattern.compile("\"kind\":\"ticket\".*?\"number\":\"(\\d+)\"");

    @TempDir
    Path folder;

    private Path archived() throws IOException {
        Path made = folder.resolve("made");
        Path archive = folder.resolve("archive");
        MadeArchive.make(made, 20, 100, 40);
        for (Path job : Jobs.in(made)) {
            Said copied = Said.by("archive", job, "--to", archive);
            assertThat(copied.exit()).as(copied.err()).isZero();
        }
        return archive;
    }

    @Test
    void itsArchiveIsVerifiedAskedForSomeDaysAndAgreesWithTheQuery() throws Exception {
        Path archive = archived();
        Said verified = Said.by("verify", archive);
        assertThat(verified.exit()).isZero();
        assertThat(verified.out()).endsWith("of 20 jobs 20 are as they were written\n");

        String days = Said.by("season", archive, "--from", "2016-04-01", "--to", "2016-04-05")
                .out();
        String query = Said.by("sql", "--engine", "duckdb", "--files", archive + "/job=*/year=*/month=*/*.jsonl")
                .out();
        BigDecimal asked = new BigDecimal(DuckDb.rows("SELECT sum(placed) FROM (" + query.replaceAll(";\\s*$", "")
                        + ") WHERE day BETWEEN '2016-04-01' AND '2016-04-05'")
                .get(0));

        assertThat(days.lines().filter(line -> line.startsWith(" all in T ")))
                .singleElement()
                .asString()
                .contains(" " + asked.setScale(2) + " T ");
    }

    @Test
    void aTicketIsFoundInTheJobAndShiftThatHaveIt() throws IOException {
        Path archive = archived();
        Path diary;
        try (Stream<Path> files = Files.walk(archive.resolve("job=made-07"))) {
            diary = files.filter(file -> file.toString().endsWith(".jsonl")
                            && file.toString().contains("month="))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
        Matcher ticket = TICKET.matcher(Files.readString(diary));
        assertThat(ticket.find()).isTrue();

        List<String> found = Said.by("find", archive, "--ticket", ticket.group(1))
                .out()
                .lines()
                .toList();

        String shift = diary.getFileName().toString().replaceFirst("\\..*", "");
        assertThat(found)
                .filteredOn(line -> line.contains("job=made-07"))
                .singleElement()
                .asString()
                .contains("  " + shift + "  paver/", "  ticket " + ticket.group(1) + "  ");
    }
}
