package screedbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import screedbook.entry.Damage;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.spec.SpecSheet;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;
import screedbook.tally.Unplanned;
import screedbook.tally.Working;

class DayPageTest {
    /** The weights are worked out by hand beside {@code TotalsTest}, here with ticket 106 amended from 18.00 to 18.20 and no waste of a ticket. */
    @Test
    void thePageOfASmallShift() {
        assertThat(DayPage.text(Sample.paper())).isEqualTo("""
                Juniper Flat overlay                                              2026-06-03-day
                contract C-104; owner County of Juniper; contractor Bracken Paving
                job test-job; kept by RK; books paver
                job revision 2; limit sheet practice d26f2c13                    page revision 2
                == [2] is told in full on sheet 2, and so on =================== sheet 1 of 2 ==
                NEEDS A DECISION FROM YOU
                 figures not agreed by J. Alder: 0.50 of the last ticket
                 1 line not read, in no total; see CORRECTIONS
                 1 missing 08:30 ticket 106 (paver/10): no temperature at the paver; first 5
                   loads of a mix (the job's checks)

                PLACED OUTSIDE LIMITS: DECIDED BY, TOLD TO [2]
                 2 OUT 08:10 ticket 102 (paver/6): at the paver 264 °F; at least 270 °F
                   (practice, PG 70); decided by R. Kell; told to foreman

                OUTSIDE LIMITS AND NOT PLACED: 1 finding, number 3 [2]

                RECONCILIATION
                                   loads  received T
                 as kept here          5      101.70
                 theirs, J. Alder      5      102.20
                 difference            0       -0.50
                 agreed: no; 0.50 of the last ticket

                LOADS AND TONS, T
                 mix       loads  received  placed  for pay  first   last  T/h
                 12.5-70A      5    101.70   76.20    75.70  08:00  08:30  116
                 08:20 ticket 103 part placed, net 21.00 T, not placed 5.00 T; known by
                   weigh-back
                 08:22 ticket 104 rejected, net 20.50 T; boiled over; decided by R. Kell; told
                   to foreman
                 08:24 ticket 105 void at plant, net 19.00 T
                 09:00 waste of the shift 0.50 T; cleanup
                 for pay as kept here, T  previous  this shift  to date
                 401-1                        0.00       75.70    75.70
                 the pay office decides; previous: 0 closed shifts

                SPREAD RATE, averages over each pull; the thickness is worked out from them
                 pull                     laid T   ft  yd²  lb/yd²     of     %    in
                 A lift 2 12+00 to 17+00   72.20  500  667   216.6  220.0  98.5  1.97
                 B lift 2 12+00 to 12+40    4.00   40   53   150.0  220.0  68.2  1.36

                TACK: CSS-1h on milled 40.0 gal, residual 0.034 gal/yd² [2]
                MIX AT THE PAVER: 12.5-70A 264 to 290 °F, mean 279.3 °F in 3 readings [2]
                WEATHER AND SURFACE: air 58 °F in 1 reading; humidity 61 % in 1 reading; wind 6
                  mph in 1 reading; surface about to be paved 71 °F in 1 reading; sky clear;
                  precipitation none; road dry
                CHECKS DUE AND DONE: NOT ALL DONE: temperature 3 of 4, tack sample 0 of 1; as
                  asked: surface temperature 1, weather 1
                SAID AND SEEN: 2 entries [2]
                CORRECTIONS: 1 struck; 1 amended; 1 after the close; 2 keyed from notes; 1 not
                  read [2]
                AT THE CLOSE: controlling item 401-1; day charged: yes
                --------------------------------------------------------------------------------
                This is not a safety plan. Limits come from the sheet chosen for the job; the
                  contract documents, the engineer, local codes and licensed practice govern.
                seal paver 3f0c 9a7b e21d 4458 19 lines

                kept by RK _________________________________________________ date ______________
                read by ____________________________________________________ date ______________
                \ftest-job 2026-06-03-day  page revision 2  seal 3f0c 9a7b e21d 4458
                ================================================================ sheet 2 of 2 ==
                PLACED OUTSIDE LIMITS: DECIDED BY, TOLD TO
                 2 OUT 08:10 ticket 102 (paver/6): at the paver 264 °F; at least 270 °F
                   (practice, PG 70)
                     08:13 RK: spread at once, rollers close; decided by R. Kell; told to
                       foreman

                OUTSIDE LIMITS AND NOT PLACED
                 3 OUT 08:22 ticket 104 (paver/8): at the paver 231 °F; at least 270 °F
                   (practice, PG 70)
                     on the ticket: boiled over; decided by R. Kell; told to foreman

                TACK
                 on                shots   gal  at 60 °F  yd²  gal/yd² applied  residual
                 CSS-1h on milled      1  40.0      39.2  667            0.059     0.034

                MIX TEMPERATURES, °F
                 mix                               readings  least   mean  most
                 12.5-70A at the paver                    3    264  279.3   290
                 12.5-70A not placed at the paver         1    231  231.0   231

                TEMPERATURES ALONG THE SHIFT
                 at the paver, each placed load; the line is the least, # is outside
                  290|.                                                                        .
                     |
                     |
                  270|--------------------------------------------------------------------------
                  264|                                    #
                      08:00             08:05             08:10             08:15

                SAID AND SEEN
                 09:05 instruction: leave the casting at 14+20 free; from R. Kell; answer: done
                 14:20 mat at the north end 138 when opened; mat 138 °F

                CORRECTIONS, LATE LINES, LINES NOT COUNTED
                 RK 2026-06-03 09:08 struck paver/15 (other job's load): ticket 107 T121 21.00 T
                 RK 2026-06-03 09:09 amended paver/10 net_ston: was 18.00, now 18.20 (read off
                   the paper again)
                 after the close: RK 2026-06-03 15:02 paver/20 note mat at the north end 138
                   when opened
                 2 entries keyed from notes, not as it happened
                 not read: paver line 18: the line ends in the middle of a word

                ROAD BY PULL AND STATION
                 A lift 2 > =====
                 B lift 2 > -
                            -----
                          12+00
                 = paved on tack   - paved, no tack noted   a column is 100 ft

                Tickets only from a stopped truck, seen by its driver; people on foot stay clear
                  of what backs up (NIOSH in-house fatality reports 2002-06, 2005-10, 2007-02).
                Hot mix and hot tack burn: running water at once for 20 minutes or more, nothing
                  pulled off the skin, medical care (Cornell Local Roads Program, burns).

                practice: common practice in asphalt paving; no document stands behind it.
                The contract and its own documents govern; use this sheet where the contract
                  names no figures.
                Temperatures are in degrees F, thicknesses in inches, as they are commonly said.
                """);
    }

    /** 43.50 t x 1000 / (100 x 3.5) = 124.3; target 50 x 2.4 = 120; 124.3 / 2.4 = 52 mm. */
    @Test
    void aMetricShiftIsToldInMetricUnits() {
        assertThat(DayPage.text(Sample.paper(Sample.metric(), Jobs.metric())))
                .contains("""
                         pull                     laid t      m   m²  kg/m²     of      %  mm
                         A lift 1 1+000 to 1+100   43.50  100.0  350  124.3  120.0  103.6  52
                        """, "MIX TEMPERATURES, °C", "L/m² applied")
                .doesNotContain(" T\n", "°F at", "yd²");
    }

    @Test
    void aShiftWithoutAnEntryHasAPageToo() {
        assertThat(DayPage.text(Sample.paper(Sample.empty(), Jobs.us())))
                .contains(
                        "; kept by nobody; books none",
                        "the shift is not closed",
                        " no load\n",
                        "no seal: no book of this shift is closed");
    }

    @Test
    void aDayWithoutWorkSaysWhyAtTheTop() {
        String page = DayPage.text(Sample.paper(Sample.noWork(), Jobs.us()));
        assertThat(page.lines().toList()).contains("no work: rain; said by R. Kell");
        assertThat(page).doesNotContain("CHECKS DUE AND DONE");
    }

    @Test
    void whoTookOverIsNamedAndWhoOnlyReviewedDidNotKeepTheShift() {
        Shift shift = Shift.day()
                .key(Kind.OPENING, null, "format", "1", "zone", "America/Boise")
                .key(Kind.HAND_OVER, "11:00", "next_who", "JF", "text", "pull B to 15+00")
                .by("JF")
                .key(Kind.NOTE, "11:30", "text", "rain over the ridge")
                .by("SV")
                .key(Kind.REVIEW, null, "says", "seen");
        String page = DayPage.text(Sample.paper(shift, Jobs.us()));
        assertThat(page)
                .contains("\njob test-job; kept by RK, JF; books paver\n")
                .contains(" 11:00 handed over to JF; pull B to 15+00\n")
                .contains("review SV ");
    }

    @Test
    void filesThatAreNotAsTheyWereWrittenAreSaidFirst() {
        DayPaper paper = Sample.paper();
        DayPaper damaged = new DayPaper(
                paper.day(),
                paper.totals(),
                paper.findings(),
                paper.agreed(),
                paper.sheet(),
                paper.seals(),
                List.of(
                        new Damage("a.jsonl", 7, "it is not as it was when line 8 was written"),
                        new Damage("b.jsonl", 0, "its seal is of another line")),
                2);
        assertThat(DayPage.text(damaged)).contains("""

                FILES NOT AS THEY WERE WRITTEN
                 a.jsonl:7: it is not as it was when line 8 was written
                 b.jsonl: its seal is of another line

                NEEDS A DECISION FROM YOU
                """);
    }

    @Test
    void aContactFaceThatWasTackedWithoutAGaugeIsCountedAndNothingIsMissedOfIt() {
        Shift shift = Shift.day()
                .key(Kind.OPENING, null, "format", "1", "zone", "America/Boise")
                .key(Kind.TACK, "07:30", "product", "CSS-1h", "face", "longitudinal-joint", "pull", "A");
        DayPaper paper = Sample.paper(shift, Jobs.us());
        assertThat(DayPage.text(paper).replaceAll("\\s+", " "))
                .contains(" TACK shots of contact faces: CSS-1h on longitudinal joint 1 WEATHER")
                .doesNotContain("CSS-1h on longitudinal joint as measured");
        assertThat(paper.totals().figure("tack-shots.CSS-1h on longitudinal joint"))
                .isPresent();
    }

    @Test
    void ofAContactFaceWithItsVolumeTheVolumeIsToldAndNoWidthIsMissed() {
        Shift shift = Shift.day()
                .key(Kind.OPENING, null, "format", "1", "zone", "America/Boise")
                .key(
                        Kind.TACK,
                        "07:30",
                        "product",
                        "CSS-1h",
                        "face",
                        "longitudinal-joint",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "17+00",
                        "used_gal",
                        "5",
                        "at60",
                        "yes");
        assertThat(DayPage.text(Sample.paper(shift, Jobs.us())).replaceAll("\\s+", " "))
                .contains(" TACK shots of contact faces: CSS-1h on longitudinal joint 1, 5.0 gal WEATHER")
                .doesNotContain("width not noted");
    }

    @Test
    void aShiftWhosePlanIsNotThereIsAddedUpAndJudgedByNothing() {
        DayPaper paper = Sample.paper();
        Totals totals = Totals.of(
                paper.day(),
                Unplanned.job(paper.day()),
                ToDate.NONE,
                Shift.day().at("15:00"));
        String page = DayPage.text(new DayPaper(
                paper.day(), totals, List.of(), Optional.empty(), Optional.empty(), paper.seals(), List.of(), 1));
        assertThat(page)
                .contains(
                        "job revision not found; limit sheet not found",
                        " plan not found: the job revision that was in force")
                .contains(" 12.5-70A      5    101.70   76.20    75.70  08:00  08:30  116\n")
                .doesNotContain("the line is the least");
    }

    @Test
    void theSamePaperIsTheSameText() {
        assertThat(DayPage.text(Sample.paper())).isEqualTo(DayPage.text(Sample.paper()));
    }

    @Test
    void noLineIsWiderThanThePaperWhateverNamesAreKeyed() {
        Random random = new Random(80);
        for (int round = 0; round < 300; round++) {
            Shift shift = Shift.day().key(Kind.OPENING, null, "format", "1");
            for (int i = 0; i < 12; i++) {
                shift.remark(name(random))
                        .ticket(
                                "08:" + (10 + i),
                                name(random),
                                random.nextInt(40) + ".00",
                                "mix",
                                name(random),
                                "truck",
                                name(random),
                                "pull",
                                name(random),
                                "lift",
                                "2",
                                "reason",
                                name(random),
                                "decided_by",
                                name(random),
                                "fate",
                                i % 2 == 0 ? "placed" : "rejected",
                                "paver_degF",
                                "27" + i % 10);
                shift.key(Kind.NOTE, "09:00", "tags", name(random), "text", name(random), "from_whom", name(random));
                shift.key(Kind.TACK, "07:30", "product", name(random), "used_gal", "40", "area_yd2", "1000");
                shift.strike(1 + random.nextInt(shift.lines().size()), name(random));
            }
            shift.unreadable(name(random));
            DayPaper paper = Sample.paper(shift, Jobs.us());
            String page = DayPage.text(paper);
            OnPaper.numbered(page, "2026-06-03-day");
            assertThat(page.replace("\n\f", "\n").codePoints()).allMatch(c -> c == '\n' || !Character.isISOControl(c));
            assertThat(FindingsPage.text(paper).lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
        }
    }

    private static String name(Random random) {
        List<String> bits = new ArrayList<>(List.of(
                "Ñandú",
                " ",
                "=1+1",
                "\t",
                "\u202e",
                "mix",
                "12.5",
                "-",
                "\n",
                "\u001b[2J",
                "long".repeat(random.nextInt(1, 40)),
                "\ud83d\ude9c",
                "界"));
        StringBuilder name = new StringBuilder("x");
        for (int i = random.nextInt(6); i > 0; i--) {
            name.append(bits.get(random.nextInt(bits.size())));
        }
        return name.toString();
    }

    @Test
    void aWorkingIsEnoughToDoItAgain() {
        Working working = Sample.paper()
                .totals()
                .figure("spread-rate.A lift 2")
                .orElseThrow()
                .working();

        assertThat(working.formula()).isEqualTo("lb/yd² = tons x 2000 / (length x width / 9)");
        assertThat(working.put())
                .containsExactly(
                        "12+00 to 17+00 is 500 ft",
                        "length 500 ft",
                        "width of the pull as planned 12 ft",
                        "area 666.7 yd²",
                        "laid there 72.20 T",
                        "rate 216.6 lb/yd²",
                        "unit weight 110 lb/yd²/in: spread rate for a unit of thickness, from the job",
                        "target 220.0 lb/yd² for 2.00 in planned");
        assertThat(working.entries())
                .extracting(Ref::toString)
                .containsExactly("paver/5", "paver/6", "paver/7", "paver/10");
    }

    @Test
    void aPageThatIsLongerThanOneSheetIsNumberedAndALooseSheetTellsWhereItBelongs() {
        assertThat(OnPaper.numbered(
                        DayPage.text(Sample.paper()),
                        "test-job 2026-06-03-day  page revision 2  seal 3f0c 9a7b e21d 4458"))
                .hasSize(2);
    }

    /** A job whose name is longer than a line gives way; date and seal stay whole. */
    @Test
    void theSealOnALooseSheetIsNeverCut() {
        Shift shift = new Shift("2026-06-03-extra-2", "paver").key(Kind.OPENING, null, "format", "1");
        for (int i = 0; i < 70; i++) {
            shift.key(Kind.NOTE, "09:00", "text", "a casting that stands high, number " + i);
        }
        DayPaper paper = Sample.paper(shift.key(Kind.CLOSING, "15:00"), Jobs.us());
        assertThat(OnPaper.numbered(
                        DayPage.text(paper), " 2026-06-03-extra-2  page revision 2  seal 3f0c 9a7b e21d 4458"))
                .hasSizeGreaterThan(1);
    }

    @Test
    void theLimitsOfTheShippedPracticeSheetDrawTheLine() {
        assertThat(SpecSheet.shipped("practice")).isPresent();
        assertThat(DayPage.text(Sample.paper())).contains("  270|---");
    }
}
