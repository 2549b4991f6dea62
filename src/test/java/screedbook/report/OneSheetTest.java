package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;

/** The supervisor's page is one sheet for an ordinary shift; more only when there is more. All invented. */
class OneSheetTest {
    private static final int SHEET = OnPaper.LINES;

    private static String sta(int feet) {
        return feet / 100 + "+" + String.format("%02d", feet % 100);
    }

    private static String clock(int minute) {
        return String.format("%02d:%02d", 7 + minute / 60, minute % 60);
    }

    /** Sixty loads of 22 T on 150 ft each, which is the planned rate; every check made, one stop, nothing open. */
    private static Shift ordinary(int notes) {
        Shift shift = Shift.day().key(Kind.OPENING, null, "format", "1", "zone", "America/Boise");
        for (int i = 0; i < 3; i++) {
            String at = clock(i * 180);
            shift.key(
                    Kind.WEATHER,
                    at,
                    "air_degF",
                    "6" + i,
                    "humidity_pct",
                    "40",
                    "wind_mph",
                    "5",
                    "sky",
                    "clear",
                    "precipitation",
                    "none",
                    "road",
                    "dry");
        }
        for (int i = 0; i < 5; i++) {
            shift.key(Kind.SURFACE, clock(2 + i * 100), "surface_degF", "7" + i, "place_sta", sta(1000 + i * 1800));
        }
        for (int i = 0; i < 3; i++) {
            shift.key(
                    Kind.TACK,
                    clock(5 + i * 120),
                    "product",
                    "CSS-1h",
                    "surface",
                    "milled",
                    "from_sta",
                    sta(1000 + i * 3000),
                    "to_sta",
                    sta(4000 + i * 3000),
                    "width_ft",
                    "12",
                    "used_gal",
                    "240",
                    "at60",
                    "yes",
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "sample",
                    "T" + i);
        }
        for (int i = 0; i < 60; i++) {
            shift.ticket(
                    clock(10 + i * 7),
                    "" + (101 + i),
                    "22.00",
                    "mix",
                    "12.5-70A",
                    "truck",
                    "T" + i % 9,
                    "pull",
                    "A",
                    "lift",
                    "2",
                    "from_sta",
                    sta(1000 + i * 150),
                    "to_sta",
                    sta(1150 + i * 150),
                    "paver_degF",
                    "28" + i % 10);
            if (i % 9 == 8) {
                shift.key(
                        Kind.YIELD,
                        clock(11 + i * 7),
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        sta(1000 + (i - 8) * 150),
                        "to_sta",
                        sta(1150 + i * 150),
                        "first_ticket",
                        "" + (101 + i - 8),
                        "last_ticket",
                        "" + (101 + i));
            }
        }
        for (int i = 0; i < 3; i++) {
            shift.key(
                    Kind.DEPTH,
                    clock(100 + i),
                    "thickness_in",
                    "2.0" + i,
                    "state",
                    "compacted",
                    "place_sta",
                    sta(1500 + i),
                    "pull",
                    "A",
                    "lift",
                    "2");
        }
        shift.key(Kind.STOP, "10:00", "cause", "no-trucks", "place_sta", "31+00", "waiting", "0", "ended", "10:12");
        for (int i = 0; i < notes; i++) {
            shift.key(Kind.NOTE, clock(i), "tags", "visitor", "text", "somebody looked on, number " + i);
        }
        return shift.key(
                Kind.CLOSING,
                "14:40",
                "their_name",
                "J. Alder",
                "their_loads",
                "60",
                "their_ston",
                "1320.00",
                "agreed",
                "yes",
                "day_charged",
                "yes",
                "text",
                "Tomorrow pull B from 10+00");
    }

    private static String text(int notes) {
        return DayPage.text(Sample.paper(ordinary(notes), Jobs.us()));
    }

    private static List<String> page(int notes) {
        return text(notes).lines().toList();
    }

    @Test
    void anOrdinaryShiftIsOneSheetInTheOrderOfASupervisorsQuestions() {
        List<String> page = page(2);
        assertThat(page.size()).as(String.join("\n", page)).isLessThanOrEqualTo(SHEET);
        List<String> order = List.of(
                "NEEDS A DECISION FROM YOU: nothing",
                "PLACED OUTSIDE LIMITS: nothing found",
                "RECONCILIATION: 60 loads, 1320.00 T, here and with J. Alder; agreed: yes",
                "LOADS AND TONS, T",
                "SPREAD RATE, averages over each pull",
                "YIELD, A lift 2: 6 checks, 100.0 % of planned, together 220.0 lb/yd²;",
                "THICKNESS AS PROBED: A lift 2 compacted 3, 2.00 to 2.02 in, mean 2.01, planned",
                "TACK",
                "MIX TEMPERATURES, °F",
                "WEATHER AND SURFACE: ",
                "CHECKS DUE AND DONE: as asked: ",
                "STOPS OF THE PAVER, 1, 12 min",
                "SAID AND SEEN",
                "CORRECTIONS, LATE LINES, LINES NOT COUNTED: none",
                "AT THE CLOSE: day charged: yes; Tomorrow pull B from 10+00",
                "seal paver ",
                "kept by RK ___",
                "read by ___");
        assertThat(order)
                .extracting(head -> first(page, head))
                .doesNotContain(-1)
                .isSorted();
    }

    /** 146.67 T less the rejected 6.67 T are 140 T: 210 lb/yd2 on 1000 ft of 12 ft, 95.5 % of 220 (own arithmetic). */
    @Test
    void aYieldCheckThatLeavesALoadOutStandsByItself() {
        Shift shift = Shift.day().key(Kind.OPENING, null, "format", "1", "zone", "America/Boise");
        for (int i = 1; i <= 7; i++) {
            shift.ticket("08:0" + i, "10" + i, "20.00", "mix", "12.5-70A", "pull", "A", "lift", "2");
        }
        shift.ticket("08:08", "108", "6.67", "mix", "12.5-70A", "pull", "A", "lift", "2", "fate", "rejected")
                .key(
                        Kind.YIELD,
                        "08:30",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "10+00",
                        "to_sta",
                        "20+00",
                        "first_ticket",
                        "101",
                        "last_ticket",
                        "108",
                        "action",
                        "screed left");
        List<String> page = DayPage.text(Sample.paper(shift, Jobs.us())).lines().toList();
        assertThat(page)
                .contains("YIELD, A lift 2: 1 check, 95.5 % of planned, together 210.0 lb/yd²")
                .contains("  A lift 2 10+00 to 20+00: 210.0 lb/yd², 95.5 %, 7 loads; without paver/9 ticket");
    }

    private static int first(List<String> page, String head) {
        for (int i = 0; i < page.size(); i++) {
            if (page.get(i).startsWith(head)) {
                return i;
            }
        }
        return -1;
    }

    /** Thirty notes find no room: they follow, and the first sheet says so and is whole without them. */
    @Test
    void whatFindsNoRoomFollowsAndTheFirstSheetIsWhole() {
        List<List<String>> sheets = OnPaper.numbered(text(30), "test-job", "2026-06-03-day", "3f0c 9a7b e21d 4458");
        assertThat(sheets).hasSize(2);
        assertThat(sheets.get(0))
                .contains("SAID AND SEEN: 30 entries [2]")
                .anyMatch(l -> l.contains("[2] is told in full on sheet 2"))
                .anyMatch(l -> l.startsWith("seal paver "))
                .anyMatch(l -> l.startsWith("AT THE CLOSE: "))
                .noneMatch(l -> l.contains("somebody looked on"));
        assertThat(sheets.get(1))
                .contains("SAID AND SEEN")
                .filteredOn(l -> l.contains("somebody looked on"))
                .hasSize(30);
    }

    /** Nothing that somebody keyed is lost between the sheets, however many notes there are. */
    @Test
    void noNoteIsLostAndNoSheetIsLonger() {
        for (int notes = 0; notes <= 90; notes += 6) {
            List<String> page = page(notes);
            assertThat(page).filteredOn(l -> l.contains("somebody looked on")).hasSize(notes);
            OnPaper.numbered(text(notes), "test-job", "2026-06-03-day", "seal 3f0c 9a7b e21d 4458");
        }
    }

    /** What the job pays for and what a reader may look up are drawn only where they take no sheet of their own. */
    @Test
    void picturesAndRemindersTakeNoSheetOfTheirOwn() {
        List<String> page = page(0);
        assertThat(page.size()).isLessThanOrEqualTo(SHEET);
        assertThat(page(30)).anyMatch(l -> l.startsWith("TEMPERATURES ALONG THE SHIFT"));
    }

    private static Finding overdue(int line, String seen, String limit) {
        return new Finding(
                "check-overdue",
                Sort.MISSING,
                List.of(new Ref("paver", line)),
                seen,
                limit,
                "clause 7",
                "",
                "",
                List.of());
    }

    /** Where there is no room for each, those of one kind are told together, but not with a check of another kind. */
    @Test
    void checksOfDifferentKindsThatAreOverdueAreNotTakenTogether() {
        DayPaper paper = Sample.paper(ordinary(2), Jobs.us());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            findings.add(overdue(10 + i, "no plant temperature in 5 loads", "once in 5 loads"));
        }
        findings.add(overdue(22, "no thermal profile in 520 T", "once in each sublot"));
        String page = DayPage.text(new DayPaper(
                paper.day(),
                paper.totals(),
                findings,
                paper.agreed(),
                paper.sheet(),
                paper.seals(),
                paper.damages(),
                1));
        assertThat(page)
                .contains("9 findings on loads of 12.5-70A: the first: no plant temperature")
                .contains("no thermal profile in 520 T; once in each sublot");
    }
}
