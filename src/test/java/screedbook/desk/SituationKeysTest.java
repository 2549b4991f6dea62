package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Amend;
import screedbook.entry.Line;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.tally.Run;
import screedbook.tally.Shot;

/** Awkward situations keyed at the desk; the numbers are those of {@code situations.csv}. */
class SituationKeysTest {
    private static final String[] LOAD = {"truck", "118", "net_ston", "22.31", "mix", "12.5-70A", "lift", "2"};
    private static final String[] PLACED = {"pull", "B", "from_sta", "1203", "to_sta", "1353"};
    private static final String[] SHOT = {
        "from_sta", "1000", "to_sta", "2000", "surface", "milled", "width_ft", "12", "pull", "B", "lift", "2"
    };

    /** Types each blank where the keys of the form lead, and writes the entry. */
    private static DeskRig keyed(DeskRig rig, String key, String[]... blanks) {
        rig.later(6).keys(key);
        for (String[] pairs : blanks) {
            for (int i = 0; i < pairs.length; i += 2) {
                Scenes.typedIn(rig, pairs[i], pairs[i + 1]);
            }
        }
        int lines = rig.lines().size();
        rig.keys("<C-s>");
        assertThat(rig.lines()).as(rig.screen()).hasSize(lines + 1);
        return rig;
    }

    private static DeskRig load(String... blanks) {
        return keyed(DeskRig.open(), "t", LOAD, blanks);
    }

    private static DeskRig shot(String... blanks) {
        return keyed(DeskRig.open(), "k", SHOT, blanks);
    }

    private static String[] blanks(String... pairs) {
        return pairs;
    }

    /** Gives the newest entry other values. */
    private static DeskRig amend(DeskRig rig, String... blanks) {
        return keyed(rig.keys("<down>"), "a", blanks, blanks(Forms.WHY, "misread"));
    }

    private static List<Finding> findings(DeskRig rig, String rule) {
        return rig.model().shift().findings().stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }

    private static String pay(DeskRig rig) {
        return rig.model().shift().totals().shift().pay().text();
    }

    private static Ticket ticket(DeskRig rig) {
        return (Ticket) rig.last().entry();
    }

    private static Shot onlyShot(DeskRig rig) {
        return rig.model().shift().totals().shots().get(0);
    }

    @Test
    @DisplayName("15: an hour typed with its half of the day is shown back in full")
    void anHourTypedWithItsHalfOfTheDayIsShownBackInFull() {
        DeskRig rig = DeskRig.open().later(120).keys("n");
        Scenes.typedIn(rig, "time", "9:32p");
        Scenes.typedIn(rig, "text", "cones moved").keys("<C-s>");
        assertThat(rig.last().time()).hasToString("2026-06-03T21:32-06:00");
        assertThat(rig.screen()).contains("21:32 note");
    }

    @Test
    @DisplayName(
            "24, 25: a number that is kept already says so while it is keyed, and with an amendment of its own does not")
    void aNumberThatIsKeptAlreadySaysSoWhileItIsKeyed() {
        DeskRig rig = load("number", "48217", "pull", "B").later(6).keys("t");
        assertThat(Scenes.typedIn(rig, "number", "48217").screen())
                .contains("look again  kept already, 20:06 T118 22.31 T  one number, on");
        Scenes.typedIn(rig, "reissue_of", "48217");
        assertThat(Scenes.goTo(rig, "number").screen()).doesNotContain("kept already");

        rig.keys("<C-d>").keys("<down>a");
        assertThat(Scenes.goTo(rig, "number").screen()).contains("48217").doesNotContain("kept already");
    }

    @Test
    @DisplayName("26: of a plant's own series a gap is said while the number is keyed")
    void ofAPlantsOwnSeriesAGapIsSaidWhileTheNumberIsKeyed() {
        DeskRig rig = load("number", "48217", "pull", "B").later(6).keys("t");
        assertThat(Scenes.typedIn(rig, "number", "48220").screen()).contains("look again  after 48217, 2 not here");
        assertThat(rig.keys("<backspace><backspace>18").screen())
                .contains("ticket 48218")
                .doesNotContain("not here");
    }

    @Test
    @DisplayName("27: after loads that came out of order the next number is one that is not kept and not explained")
    void afterLoadsOutOfOrderTheNextNumberIsOneThatIsNotKept() {
        DeskRig rig = load("number", "48219", "pull", "B");
        keyed(rig, "t", LOAD, blanks("number", "48218", "pull", "B"));
        assertThat(rig.keys("t").screen()).contains("silo ____  ticket 48220 ");

        keyed(rig.keys("<C-d>"), "mn", blanks("number", "48220", "what", "void at plant"));
        assertThat(rig.keys("t").screen()).contains("silo ____  ticket 48221 ");
    }

    @Test
    @DisplayName("28: a lost ticket is a load without a number until the plant's copy comes")
    void aLostTicketIsALoadWithoutANumberUntilThePlantsCopyComes() {
        DeskRig rig = load("kept", "lost", "pull", "B");
        assertThat(ticket(rig).paper().number()).isNull();
        assertThat(pay(rig)).isEqualTo("22.31 T");
        assertThat(findings(rig, "number-not-noted")).hasSize(1);

        amend(rig, "kept", "paper", "number", "48217");
        assertThat(findings(rig, "number-not-noted")).isEmpty();
        assertThat(pay(rig)).isEqualTo("22.31 T");
    }

    @Test
    @DisplayName("29: an unread digit is written as a question mark and asked about until it is read")
    void anUnreadDigitIsWrittenAsAQuestionMarkAndAskedAbout() {
        DeskRig rig = load("number", "482?7", "pull", "B");
        assertThat(ticket(rig).paper().number()).isEqualTo("482?7");
        assertThat(findings(rig, "number-not-read")).hasSize(1);

        amend(rig, "number", "48217");
        assertThat(findings(rig, "number-not-read")).isEmpty();
        assertThat(rig.screen()).contains("was 482?7");
    }

    @Test
    @DisplayName("30: a ticket written by hand is asked for who weighed it")
    void aTicketWrittenByHandIsAskedForWhoWeighedIt() {
        DeskRig rig = load("kept", "handwritten", "number", "48217", "pull", "B");
        assertThat(findings(rig, "handwritten")).hasSize(1);

        amend(rig, "weighed_by", "P. Reyes");
        assertThat(findings(rig, "handwritten")).isEmpty();
    }

    /** 11 batches of 4,000 lb are 44,000 lb, at 2,000 lb to the ton 22.00 T. */
    @Test
    @DisplayName("31: of a batch plant the batches are held against the net")
    void ofABatchPlantTheBatchesAreHeldAgainstTheNet() {
        DeskRig rig = load("number", "48217", "batches", "11", "batch_lb", "4000", "pull", "B");
        assertThat(findings(rig, "net-against-batches")).hasSize(1);

        amend(rig, "net_ston", "22.00");
        assertThat(findings(rig, "net-against-batches")).isEmpty();
        assertThat(ticket(load("number", "1", "batches", "11", "batch_lb", "4000"))
                        .weights()
                        .gross())
                .isNull();
    }

    @Test
    @DisplayName("41: another job's load is kept, counts nothing, and the next ticket does not go on from it")
    void anotherJobsLoadIsKeptAndCountsNothing() {
        DeskRig rig = load("number", "48217", "fate", "other-job");
        assertThat(rig.lines()).hasSize(2);
        assertThat(pay(rig)).isEqualTo("0 T");
        rig.keys("t");
        assertThat(((Screen.Keying) rig.model().top()).form().text("number")).isEmpty();
    }

    @Test
    @DisplayName("43: two pavers at once each have their own pull, rate and loads, and one sum")
    void twoPaversAtOnceEachHaveTheirOwnPullAndOneSum() {
        DeskRig rig = load("number", "48217", "paver", "P1", "pull", "A", "from_sta", "1000", "to_sta", "1150");
        String[] beside = blanks("paver", "P2", "pull", "B", "from_sta", "900", "to_sta", "1050");
        keyed(rig, "t", blanks("truck", "104", "net_ston", "21.96"), beside);

        List<Run> runs = rig.model().shift().totals().runs();
        assertThat(runs).extracting(Run::pull).containsExactly("A", "B");
        assertThat(runs).extracting(r -> r.laid().text()).containsExactly("22.31 T", "21.96 T");
        assertThat(runs).extracting(r -> r.length().value().intValue()).containsExactly(150, 150);
        assertThat(ticket(rig).spot().paver()).isEqualTo("P2");
        assertThat(pay(rig)).isEqualTo("44.27 T");
    }

    @Test
    @DisplayName("45: of a load shared with another contract this job counts its own part, and says how it is known")
    void ofALoadSharedWithAnotherContractThisJobCountsItsOwnPart() {
        String[] shared = {"fate", "part-placed", "returned_ston", "10.00", "basis", "the other contract's record"};
        DeskRig rig = keyed(DeskRig.open(), "t", LOAD, PLACED, blanks("number", "48217"), shared);
        assertThat(pay(rig)).isEqualTo("12.31 T");
        assertThat(findings(rig, "part-not-known")).isEmpty();
        assertThat(findings(rig, "parts-against-net")).isEmpty();

        amend(rig, "returned_ston", "23.00");
        assertThat(findings(rig, "parts-against-net")).hasSize(1);
    }

    @Test
    @DisplayName("46: of a load placed in part it is asked how the rest is known")
    void ofALoadPlacedInPartItIsAskedHowTheRestIsKnown() {
        String[] part = {"number", "48217", "fate", "part-placed", "returned_ston", "6.40"};
        DeskRig rig = keyed(DeskRig.open(), "t", LOAD, PLACED, part);
        assertThat(pay(rig)).isEqualTo("15.91 T");
        assertThat(findings(rig, "part-not-known")).hasSize(1);

        amend(rig, "basis", "weigh-back");
        assertThat(findings(rig, "part-not-known")).isEmpty();
    }

    @Test
    @DisplayName("48: a load that was rejected and used later has both in the record")
    void aLoadThatWasRejectedAndUsedLaterHasBothInTheRecord() {
        String[] rejected = {"number", "48217", "fate", "rejected", "reason", "boiled over", "decided_by", "RK"};
        DeskRig rig = keyed(DeskRig.open(), "t", LOAD, PLACED, rejected);
        assertThat(pay(rig)).isEqualTo("0 T");

        amend(rig, "fate", "placed");
        assertThat(((Amend) rig.last().entry()).set()).containsEntry("fate", "placed");
        assertThat(pay(rig)).isEqualTo("22.31 T");
        assertThat(rig.screen()).contains("fate placed, was rejected");
        assertThat(((Ticket) ((Line) rig.lines().get(1)).entry()).fate().fate())
                .as("the line itself")
                .isEqualTo(Ticket.End.REJECTED);
    }

    @Test
    @DisplayName("50: a ticket that the plant made void after its load was used is asked about")
    void aTicketMadeVoidAfterItsLoadWasUsedIsAskedAbout() {
        DeskRig rig = keyed(DeskRig.open(), "t", LOAD, PLACED, blanks("number", "48217"));
        assertThat(findings(rig, "void-with-place")).isEmpty();

        amend(rig, "fate", "void-at-plant");
        assertThat(pay(rig)).isEqualTo("0 T");
        assertThat(findings(rig, "void-with-place")).hasSize(1);
    }

    @Test
    @DisplayName("51: a patch has a place in words and no station")
    void aPatchHasAPlaceInWordsAndNoStation() {
        DeskRig rig = load("number", "48217", "place", "driveway of the mill");
        assertThat(findings(rig, "place-not-noted")).isEmpty();
        assertThat(pay(rig)).isEqualTo("22.31 T");
        assertThat(findings(load("number", "48217"), "place-not-noted")).hasSize(1);
    }

    @Test
    @DisplayName("47, 52: a first load too cold to place is outside, and is neither laid nor paid")
    void aFirstLoadTooColdToPlaceIsOutsideAndNotPaid() {
        DeskRig rig = load(
                "number",
                "48217",
                "pull",
                "B",
                "paver_degF",
                "231",
                "fate",
                "rejected",
                "reason",
                "cold",
                "decided_by",
                "RK",
                "told_to",
                "foreman");
        assertThat(findings(rig, "heat-at-paver")).extracting(Finding::sort).containsExactly(Sort.OUTSIDE);
        assertThat(findings(rig, "fate-reason")).isEmpty();
        assertThat(pay(rig)).isEqualTo("0 T");
        assertThat(rig.model().shift().totals().shift().received().text()).isEqualTo("22.31 T");
    }

    @Test
    @DisplayName("58: a station typed without its plus is shown back with it")
    void aStationTypedWithoutItsPlusIsShownBackWithIt() {
        DeskRig rig = DeskRig.open().keys("t");
        Scenes.typedIn(rig, "from_sta", "123456");
        assertThat(rig.screen()).contains("from 1234+56");
    }

    /** A mile is 5280 ft (NIST Handbook 44 Appendix C): from 12.35 to 12.40 are 264 ft. */
    @Test
    @DisplayName("64: a load between two mileposts is as long as the road, and a lane's strip tells them")
    void aLoadBetweenTwoMilepostsIsAsLongAsTheRoad() {
        Job posts = DeskRig.job(
                Map.of("stationing", DeskRig.map("base", "mileposts", "begins_sta", "12.0", "ends_sta", "14.5")));
        DeskRig rig = new DeskRig(posts, DeskRig.practice()).keys("1n").later(6).keys("t");
        Scenes.typedIn(rig, "truck", "118");
        Scenes.typedIn(rig, "net_ston", "22.31");
        Scenes.typedIn(rig, "pull", "B");
        Scenes.typedIn(rig, "from_sta", "mp 12.35");
        Scenes.typedIn(rig, "to_sta", "1240");
        assertThat(rig.screen()).contains("Ctrl-O takes: 12.40?");

        rig.keys("<C-o>");
        assertThat(rig.screen()).contains("from 12.35 to 12.40  264 ft");
        rig.keys("<C-s>");
        assertThat(rig.screen()).contains("12.35 to 12.40");
        assertThat(rig.model().shift().totals().runs().get(0).length().value()).isEqualByComparingTo("264");
        assertThat(findings(rig, "station-beyond-job")).isEmpty();
        assertThat(Scenes.typedIn(rig.keys("t"), "from_sta", "14.6")
                        .keys("<C-s>")
                        .screen())
                .contains("stations from 12.0 to 14.5");
    }

    /** Without a refill 500 to 900 is no use; with one from 420 to 980 it is (500 - 420) + (980 - 900) = 160 gal. */
    @Test
    @DisplayName("72: a tank that rose is asked about until the refill between is keyed")
    void aTankThatRoseIsAskedAboutUntilTheRefillBetweenIsKeyed() {
        DeskRig rig = shot("before_gal", "500", "after_gal", "900", "material_degF", "140");
        assertThat(findings(rig, "tack-after-above-before")).hasSize(1);

        keyed(rig, "mr", blanks("before_gal", "420", "after_gal", "980"));
        assertThat(findings(rig, "tack-after-above-before")).isEmpty();
        assertThat(onlyShot(rig).volume().amount().value()).isEqualByComparingTo("160");
    }

    /** 1,000 ft by 12 ft are 12,000 ft² or 1,333.3 yd²; 800 gal on them are 0.600 gal/yd². */
    @Test
    @DisplayName("73: a rate far off is asked about with the volume and the area that it is made of")
    void aRateFarOffIsAskedAboutWithItsVolumeAndArea() {
        DeskRig rig = shot("before_gal", "1450", "after_gal", "650", "at60", "yes");
        assertThat(findings(rig, "tack-rate-unusual")).singleElement().satisfies(f -> {
            assertThat(f.seen()).contains("applied 0.600 gal/yd²");
            assertThat(f.working()).contains("1000 ft x 12 ft").contains("1333.3 yd²");
        });
    }

    @Test
    @DisplayName("74: a volume told at 60 degrees is not corrected again")
    void aVolumeToldAtSixtyDegreesIsNotCorrectedAgain() {
        DeskRig rig = shot("before_gal", "500", "after_gal", "420", "material_degF", "140", "at60", "yes");
        assertThat(onlyShot(rig).at60().amount().value()).isEqualByComparingTo("80");
    }

    /** One part emulsion and one part water leave half: 80 gal on 1,333.3 yd² are 0.060, of 57 % residue 0.0171. */
    @Test
    @DisplayName("75: of diluted tack the residual rate goes through residue and dilution")
    void ofDilutedTackTheResidualGoesThroughResidueAndDilution() {
        DeskRig rig = shot(
                "before_gal",
                "500",
                "after_gal",
                "420",
                "at60",
                "yes",
                "diluted",
                "yes",
                "emulsion_parts",
                "1",
                "water_parts",
                "1");
        assertThat(onlyShot(rig).residual().amount().shown(4).value()).isEqualByComparingTo("0.0171");
        assertThat(findings(rig, "tack-diluted")).hasSize(1);
    }

    @Test
    @DisplayName("76: without its temperature a shot's rate is of the volume as measured, and says so")
    void withoutItsTemperatureARateIsOfTheVolumeAsMeasured() {
        DeskRig rig = shot("before_gal", "500", "after_gal", "420");
        assertThat(onlyShot(rig).corrected()).isFalse();
        assertThat(onlyShot(rig).applied().amount().shown(3).value()).isEqualByComparingTo("0.060");
        assertThat(findings(rig, "tack-temperature-not-noted")).hasSize(1);
        rig.keys("y<end>");
        assertThat(rig.screen()).contains("volume not corrected");
    }

    /** Tack from 10+00 to 20+00, a load to 21+00: 100 ft of its 200 ft have none. */
    @Test
    @DisplayName("77: a load beyond the tack is asked about with the length that has none")
    void aLoadBeyondTheTackIsAskedAbout() {
        DeskRig rig = shot("before_gal", "500", "after_gal", "420", "material_degF", "140");
        keyed(rig, "t", LOAD, blanks("number", "48217", "pull", "B", "from_sta", "1900", "to_sta", "2100"));
        assertThat(findings(rig, "tack-under-mat"))
                .singleElement()
                .satisfies(f -> assertThat(f.seen()).contains("100 ft of 200 ft"));
    }

    @Test
    @DisplayName("78: a shot repeated after rain names the one that it repeats")
    void aShotRepeatedAfterRainNamesTheOneThatItRepeats() {
        DeskRig rig = shot("before_gal", "500", "after_gal", "420", "material_degF", "140");
        String ref = rig.last().ref().toString();
        keyed(rig, "w", blanks("precipitation", "light-rain", "road", "wet"));
        keyed(rig, "k", SHOT, blanks("before_gal", "420", "after_gal", "340", "material_degF", "140", "again", ref));
        assertThat(((Tack) rig.last().entry()).after().again()).isEqualTo(Ref.of(ref));
        keyed(rig, "t", LOAD, PLACED, blanks("number", "48217"));
        assertThat(findings(rig, "tack-rained-on")).isEmpty();
    }

    @Test
    @DisplayName("79: of hand work the volume is asked how it is known")
    void ofHandWorkTheVolumeIsAskedHowItIsKnown() {
        DeskRig rig = keyed(
                DeskRig.open(),
                "k",
                blanks("from_sta", "1000", "to_sta", "1010", "face", "casting", "used_gal", "2", "at60", "yes"));
        assertThat(findings(rig, "tack-hand-work")).hasSize(1);

        amend(rig, "basis", "one bucket");
        assertThat(findings(rig, "tack-hand-work")).isEmpty();
    }

    @Test
    @DisplayName("89: what the disk refuses stays typed, and is written when there is room again")
    void whatTheDiskRefusesStaysTyped() {
        DeskRig rig = DeskRig.open().keys("nwater on the road");
        rig.refuses = true;
        rig.keys("<C-s>");
        assertThat(rig.lines()).hasSize(1);
        assertThat(rig.screen()).contains("NOT on disk").contains("water on the road");
        rig.refuses = false;
        rig.keys("<C-s>");
        assertThat(((Note) rig.last().entry()).text()).isEqualTo("water on the road");
    }

    @Test
    @DisplayName("100: on 80 x 24 without colour a load is keyed with letters, digits, Enter and arrows alone")
    void withoutColourALoadIsKeyedOnAnEightyByTwentyFourScreen() {
        DeskRig rig = Scenes.due();
        while (rig.model().setting().look() != Look.MONO) {
            rig.keys("v");
        }
        int lines = rig.lines().size();
        Scenes.keyed(rig, "1", Map.of("truck", "18", "net_ston", "22.31", "paver_degF", "264"));
        assertThat(rig.lines()).hasSize(lines + 1);
        assertThat(rig.screen()).contains("OUT");
    }
}
