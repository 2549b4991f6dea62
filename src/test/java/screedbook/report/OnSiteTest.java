package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import screedbook.entry.Kind;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;

/** The parts of the page that tell of mat, joints, stops, people and instruments; the figures are worked in the test of their sections. */
class OnSiteTest {
    private static String page(Shift shift) {
        return DayPage.text(Sample.paper(shift, Jobs.us()));
    }

    @Test
    void aShiftWithoutAnyOfThemHasNoPartOfThem() {
        assertThat(page(Shift.day().ticket("08:00", "1", "22.00", "mix", "12.5-70A")))
                .doesNotContain("MAT AND JOINTS", "STOPS OF THE PAVER", "PEOPLE, MACHINES");
    }

    @Test
    void thePageTellsOfMatJointsStopsAndPeople() {
        String page = page(Shift.day()
                .key(Kind.MAT, "08:00", "mat_degF", "291", "taken", "behind-screed")
                .key(Kind.MAT, "08:05", "mat_degF", "279", "taken", "behind-screed")
                .key(Kind.MAT, "08:30", "mat_degF", "181", "taken", "rolling-ends")
                .key(Kind.PROFILE, "08:40", "hottest_degF", "298", "coldest_degF", "261")
                .key(
                        Kind.JOINT,
                        "08:50",
                        "run",
                        "longitudinal",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "18+00",
                        "heat",
                        "cold",
                        "tacked",
                        "yes")
                .key(Kind.STRAIGHTEDGE, "08:55", "laid", "along", "gap_in", "0.125", "edge_length_ft", "10")
                .key(Kind.STOP, "09:00", "cause", "no-trucks", "waiting", "0", "place_sta", "18+00")
                .key(Kind.RESTART, "09:14", "of", "paver/7", "action", "joint built")
                .key(Kind.CREW, "09:20", "what", "people", "named", "rakers", "how_many", "3", "hours", "10")
                .key(Kind.CREW, "09:20", "what", "people", "named", "foreman", "how_many", "1", "hours", "10")
                .key(
                        Kind.INSTRUMENT,
                        "09:30",
                        "instrument",
                        "T1",
                        "against",
                        "ice-bath",
                        "shows_degF",
                        "32",
                        "fit",
                        "yes")
                .key(
                        Kind.SAFETY,
                        "09:40",
                        "text",
                        "spotter behind a truck",
                        "about",
                        "reversing",
                        "told_to",
                        "foreman",
                        "action",
                        "moved away"));

        assertThat(page).contains("""
                MAT AND JOINTS
                 mat behind screed: 2 readings, 279 °F to 291 °F, mean 285.0 °F
                 mat rolling ends: 181 °F
                 thermal profiles: 1, hottest less coldest 37 °F
                 joint along, other side cold: 600 ft, face tacked: 600 ft
                 straightedge along: readings 1, widest gap 0.125 in
                """).contains("""
                STOPS OF THE PAVER, 1, 14 min
                 09:00 to 09:14 14 min no trucks; at 18+00; trucks waiting: 0; joint built
                """).contains("""
                PEOPLE, MACHINES, INSTRUMENTS, SAFETY
                 people: 3 rakers 30 h; 1 foreman 10 h
                 instrument T1, checked 09:30: ice bath shows 32 °F fit
                 09:40 safety, reversing: spotter behind a truck; told to foreman; done: moved
                   away
                """);
    }
}
