package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.check.Finding;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
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
}
