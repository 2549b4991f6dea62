package screedbook.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import screedbook.desk.Effect;
import screedbook.desk.Msg;
import screedbook.diary.JobFolder;
import screedbook.entry.Aside;
import screedbook.entry.Crew;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Strike;
import screedbook.entry.Unwritten;

/** Who was at work in the last shift that tells of it, read from the disk. */
class CrewBeforeTest {
    private static final ShiftId TODAY = ShiftId.of("2026-06-05-day");

    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void makeTheJob() throws IOException {
        folder = temporary.resolve("job");
        JobFolder.make(folder);
    }

    private List<Msg> told(String clock, Effect... wanted) {
        OffsetDateTime now = OffsetDateTime.parse(clock);
        Hands hands = new Hands(folder, "paver", "screedbook", Clock.fixed(now.toInstant(), now.getOffset()));
        List<Msg> told = Collections.synchronizedList(new ArrayList<>());
        for (Effect each : wanted) {
            hands.carryOut(each, told::add);
        }
        hands.goodbye();
        return told;
    }

    private static Crew crew(String named, int count) {
        return new Crew("Stoneway Paving", Crew.What.PEOPLE, named, count, new BigDecimal("10"), null, null);
    }

    private static Effect write(Crew... crews) {
        List<Unwritten> entries = new ArrayList<>();
        for (Crew crew : crews) {
            entries.add(new Unwritten(null, "AB", Source.LIVE, crew, Aside.NONE));
        }
        return new Effect.Write(entries);
    }

    private Msg.CrewBefore before() {
        List<Msg> told = told("2026-06-05T07:00:00-06:00", new Effect.ReadCrewBefore(TODAY));
        return (Msg.CrewBefore) told.get(0);
    }

    @Test
    void aJobWithoutAnyCrewTellsOfNone() {
        told("2026-06-03T07:00:00-06:00", new Effect.Open(ShiftId.of("2026-06-03-day"), "AB", true));

        assertThat(before().of()).isNull();
        assertThat(before().crews()).isEmpty();
    }

    @Test
    void theLastShiftThatHasACrewIsTheOneEvenWhereANewerOneHasNone() {
        told(
                "2026-06-02T07:00:00-06:00",
                new Effect.Open(ShiftId.of("2026-06-02-day"), "AB", true),
                write(crew("foreman", 1)));
        told(
                "2026-06-03T07:00:00-06:00",
                new Effect.Open(ShiftId.of("2026-06-03-day"), "AB", true),
                write(crew("rakers", 3), crew("lute men", 2)));
        told("2026-06-04T07:00:00-06:00", new Effect.Open(ShiftId.of("2026-06-04-day"), "AB", true));

        assertThat(before().of()).isEqualTo(ShiftId.of("2026-06-03-day"));
        assertThat(before().crews()).containsExactly(crew("rakers", 3), crew("lute men", 2));
    }

    @Test
    void aLineThatWasStruckIsNotTakenOverAndThisShiftIsNotTheOneBefore() {
        told(
                "2026-06-03T07:00:00-06:00",
                new Effect.Open(ShiftId.of("2026-06-03-day"), "AB", true),
                write(crew("rakers", 3), crew("lute men", 2)),
                new Effect.Write(List.of(new Unwritten(
                        null, "AB", Source.LIVE, new Strike(new Ref("paver", 2), "keyed twice"), Aside.NONE))));
        told("2026-06-05T07:00:00-06:00", new Effect.Open(TODAY, "AB", true), write(crew("flagger", 2)));

        assertThat(before().of()).isEqualTo(ShiftId.of("2026-06-03-day"));
        assertThat(before().crews()).containsExactly(crew("lute men", 2));
    }
}
