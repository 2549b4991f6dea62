package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import screedbook.Accusing;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.tally.Figure;

/**
 * What a plant says laid beside the record, with what may stand behind a difference. That two digits that change places
 * move a sum by a multiple of nine is arithmetic: 10a + b - (10b + a) = 9(a - b), and 99(a - c) for the digits of a
 * hundred. Expected texts are this program's own.
 */
class PlantRulesTest {
    private static final String TOTAL = "plant-total plant=Quarry mix=12.5-70A ";

    /** 21.96 + 22.10 + 20.50 = 64.56. */
    private static Shift three(String differs) {
        return Shift.night()
                .load("21:00", "1001", "net_ston=21.96 loaded=20:40")
                .load("21:10", "1002", "truck=T118 net_ston=22.10 loaded=20:50 " + differs)
                .load("21:20", "1003", "truck=T119 net_ston=20.50 loaded=21:00");
    }

    private static String causes(Shift shift) {
        List<Finding> found = shift.findings("plant-total");
        assertThat(found).hasSize(1);
        return found.get(0).working();
    }

    private static Figure figure(Shift shift, String id) {
        return shift.totals().figure(id).orElseThrow();
    }

    @Test
    void thePlantsTotalStandsBesideOurs() {
        Shift shift = three("").at("22:00", TOTAL + "loads=4 tons_ston=86.66");
        assertThat(figure(shift, "plant-loads.Quarry 12.5-70A").text()).isEqualTo("4");
        assertThat(figure(shift, "plant-loads-here.Quarry 12.5-70A").text()).isEqualTo("3");
        assertThat(figure(shift, "plant-loads-difference.Quarry 12.5-70A").text())
                .isEqualTo("1");
        assertThat(figure(shift, "plant-tons.Quarry 12.5-70A").text()).isEqualTo("86.66 T");
        assertThat(figure(shift, "plant-tons-here.Quarry 12.5-70A").text()).isEqualTo("64.56 T");
        assertThat(figure(shift, "plant-tons-difference.Quarry 12.5-70A").value())
                .isEqualByComparingTo("22.10");
    }

    @Test
    void aTotalCountsWhatWasLoadedUntilItWasTold() {
        Shift shift = three("").at("20:50", TOTAL + "loads=2 tons_ston=44.06");
        assertThat(shift.findings("plant-total")).isEmpty();
        Shift numbered = three("").at("23:00", TOTAL + "loads=2 tons_ston=42.60 first_ticket=1002 last_ticket=1003");
        assertThat(numbered.findings("plant-total")).isEmpty();
    }

    @Test
    void theNewestTotalOfAPlantAndMixCounts() {
        Shift shift =
                three("").at("22:00", TOTAL + "loads=9 tons_ston=9").at("23:00", TOTAL + "loads=3 tons_ston=64.56");
        assertThat(shift.findings("plant-total")).isEmpty();
    }

    @Test
    void ticketsWhoseTwoDigitsWouldExplainItAreNamed() {
        Shift shift = three("").at("23:00", TOTAL + "loads=3 tons_ston=64.29");
        assertThat(shift.findings("plant-total").get(0).of()).containsExactly(new Ref("paver", 7), new Ref("paver", 4));
        assertThat(causes(shift))
                .isEqualTo("Any of these may be behind it. 0.27 T is divisible by nine in its last digits, as when two"
                        + " digits change places: ticket 1001 21.96 for 21.69.");
    }

    @Test
    void aMultipleOfNineThatNoTicketExplainsIsSaidToBeOne() {
        assertThat(causes(three("").at("23:00", TOTAL + "loads=3 tons_ston=64.38")))
                .contains("0.18 T is divisible by nine in its last digits")
                .contains("no one ticket here would explain it so.");
        assertThat(causes(three("").at("23:00", TOTAL + "loads=3 tons_ston=65.46")))
                .contains("the plant's own figure 65.46 for 64.56")
                .doesNotContain("no one ticket");
        assertThat(causes(three("").at("23:00", TOTAL + "loads=3 tons_ston=64.28")))
                .isEqualTo("No ticket here explains it by itself.");
    }

    @ParameterizedTest
    @CsvSource({"21.96,21.69,true", "21.96,12.96,true", "21.96,29.16,true", "21.96,21.97,false", "20,2.00,true"})
    void twoDigitsThatChangePlaces(BigDecimal one, BigDecimal other, boolean turned) {
        assertThat(PlantCauses.swapped(one).stream().anyMatch(s -> s.compareTo(other) == 0))
                .isEqualTo(turned);
        BigDecimal steps = one.subtract(other).movePointRight(2);
        assertThat(steps.remainder(BigDecimal.valueOf(9)).signum() == 0).isEqualTo(turned);
    }

    @Test
    void aNumberOfTheSeriesThatIsNotHereIsNamed() {
        Shift shift = Shift.night()
                .load("21:00", "1001", "net_ston=21.96")
                .load("21:20", "1004", "net_ston=20.50")
                .at("23:00", TOTAL + "loads=4 tons_ston=86.66");
        assertThat(causes(shift))
                .contains("Not here of the plant's own series: 1002 to 1003; the plant has 2 loads more.");
        Shift told = Shift.night()
                .load("21:00", "1001", "net_ston=21.96")
                .at("23:00", TOTAL + "loads=2 tons_ston=42.46 first_ticket=1001 last_ticket=1002");
        assertThat(causes(told)).contains("Not here of the plant's own series: 1002; the plant has 1 load more.");
        Shift explained = Shift.night()
                .load("21:00", "1001", "net_ston=21.96")
                .load("21:20", "1004", "net_ston=20.50")
                .at("21:30", "number plant=Quarry number=01002 what=void-at-plant")
                .at("21:31", "number plant=Quarry number=01003 what=still-coming")
                .at("23:00", TOTAL + "loads=3 tons_ston=64.46");
        assertThat(causes(explained)).contains("Not here of the plant's own series: 1003; the plant has 1 load more.");
    }

    @Test
    void wasteAndWhatWasRejectedOrSentBackAreTriedAloneAndTogether() {
        Shift shift = three("fate=rejected reason=cold decided_by=RK told_to=LM")
                .at("21:30", "waste weight_ston=1.20 mix=12.5-70A reason=spill of=paver/4")
                .at("23:00", TOTAL + "loads=3 tons_ston=41.26");
        assertThat(causes(shift)).contains("As much as the two differ by: rejected 22.10 T and waste 1.20 T.");
        Shift alone = three("fate=part-placed returned_ston=3.5 basis=weigh-back")
                .at("23:00", TOTAL + "loads=3 tons_ston=61.06");
        assertThat(causes(alone)).contains("As much as the two differ by: not placed 3.5 T.");
    }

    @Test
    void aLoadThatStandsUnderAnotherMixOrFateIsNamed() {
        Shift shift = three("mix=19-64 lift=1 pull=")
                .at("23:00", TOTAL + "loads=3 tons_ston=64.56")
                .at("23:01", "plant-total plant=Quarry mix=19-64 loads=0 tons_ston=0");
        Finding finding = shift.findings("plant-total").get(0);
        assertThat(finding.of()).containsExactly(new Ref("paver", 7), new Ref("paver", 5));
        assertThat(finding.working())
                .contains("As much as the two differ by, 22.10 T: ticket 1002 stands here as 19-64.")
                .contains("Quarry 19-64 differs by as much the other way: a load may stand under the other mix.");
        assertThat(shift.findings("plant-total").get(1).working())
                .contains("As much as the two differ by, 22.10 T: ticket 1002.");
        Shift gone = three("fate=void-at-plant pull=").at("23:00", TOTAL + "loads=3 tons_ston=64.56");
        assertThat(causes(gone)).contains("ticket 1002 stands here as void at plant.");
    }

    @Test
    @DisplayName("row 66: 64.56 short tons are 58.57 tonnes (1 t = 1.1023 short tons, NIST Handbook 44 Appendix C)")
    void tonnesToldForTonsAreNamed() {
        assertThat(causes(three("").at("23:00", TOTAL + "loads=3 tons_ston=58.57")))
                .contains("The two differ as a tonne and a ton of 2,000 lb do.");
        assertThat(causes(three("").at("23:00", TOTAL + "loads=3 tons_ston=58.20")))
                .doesNotContain("tonne");
    }

    @Test
    void noSentenceAboutThePlantAccuses() {
        String all = causes(three("fate=rejected").at("23:00", TOTAL + "loads=4 tons_ston=42.46"));
        assertThat(all).contains("may be behind it");
        assertThat(Accusing.in(all)).isEmpty();
    }

    @Test
    void aListIsSummedUpInOneLineWithEachDifferenceInItsWorking() {
        Shift shift = three("").list("1001 T104 21.69", "1002 T118 22.10", "1004 T104 22.00");
        Figure figure = figure(shift, "plant-list.Quarry");
        assertThat(figure.text()).isEqualTo("1 matched, 1 missing here, 1 missing there, 1 different");
        assertThat(figure.working().put())
                .containsExactly(
                        "list quarry.csv",
                        "different: line 2, paver/4 ticket 1001: net 21.96 T here, 21.69 T in the list",
                        "missing here: line 4, ticket 1004, truck T104, 22.00 T",
                        "missing there: paver/6 ticket 1003 20.50 T");
        assertThat(shift.findings("list-differs").get(0).working())
                .isEqualTo("List quarry.csv line 2. Two digits of the net changed places in one of them.");
        assertThat(shift.findings("list-load-not-here").get(0).of())
                .as("at the ticket that the list has before it")
                .containsExactly(new Ref("paver", 5), new Ref("paver", 7));
    }

    @Test
    void rowsThatFollowEachOtherAreMissedTogether() {
        Shift shift = three("")
                .list("900 T1 1", "901 T1 2", "1001 T104 21.96", "1002 T118 22.10", "1003 T119 20.50", "1004 T1 3");
        assertThat(shift.findings("list-load-not-here"))
                .extracting(Finding::seen)
                .containsExactly(
                        "2 loads of Quarry's list are not here: line 2, ticket 900, truck T1, 1 T; line 3, ticket 901,"
                                + " truck T1, 2 T",
                        "a load of Quarry's list is not here: line 7, ticket 1004, truck T1, 3 T");
    }

    @Test
    void whatWasSaidHereOfANumberStandsWithItsRow() {
        Shift shift = three("")
                .at("22:00", "number plant=Quarry number=01004 what=void-at-plant")
                .list("1001 T104 21.96", "1002 T118 22.10", "1003 T119 20.50", "1004 T1 3");
        assertThat(shift.findings("list-load-not-here").get(0).seen()).endsWith("3 T, said here to be void at plant");
    }

    @Test
    void aNumberKeyedOtherwiseIsOfferedByTruckNetAndHourAndCountsOnce() {
        Shift shift = three("").list("1001 T104 21.96 - 20:40", "1020 T118 22.10 - 20:50", "1003 T119 20.50 - 21:00");
        assertThat(figure(shift, "plant-list.Quarry").text())
                .isEqualTo("2 matched, 0 missing here, 0 missing there, 1 different");
        assertThat(shift.findings("list-number"))
                .extracting(Finding::seen)
                .containsExactly(
                        "number 1002 here, 1020 in the list: line 3, ticket 1020, truck T118, 22.10 T, loaded 20:50");
        assertThat(shift.findings("list-differs")).isEmpty();
    }

    @Test
    void whereTwoRowsFitNeitherIsOffered() {
        Shift shift = Shift.night().load("21:00", "10?1", "").list("1001 T104 22.31", "1011 T104 22.31");
        assertThat(shift.findings("list-number")).isEmpty();
        assertThat(figure(shift, "plant-list.Quarry").text())
                .isEqualTo("0 matched, 2 missing here, 1 missing there, 0 different");
    }

    @Test
    void anotherTruckHourAndMixAreTold() {
        Shift shift = three("")
                .list(
                        "1001 T104 21.96 2026-06-03 20:40 SURF",
                        "1002 T119 22.10 2026-06-03 20:53 SURF",
                        "1003 T119 20.50 2026-06-03 21:01 19-64");
        assertThat(shift.findings("list-differs"))
                .extracting(Finding::seen)
                .containsExactly(
                        "ticket 1002: truck T118 here, T119 in the list; loaded 20:50 here, 20:53 in the list",
                        "ticket 1003: mix 12.5-70A here, 19-64 in the list");
    }

    @Test
    @DisplayName("SURF is the mix that most of its loads have here")
    void thePlantsOwnWordForAMixIsLearnt() {
        Shift shift = three("mix=19-64 lift=1 pull=")
                .load("21:30", "1004", "net_ston=21.00")
                .list(
                        "1001 T104 21.96 - - SURF",
                        "1002 T118 22.10 - - SURF",
                        "1003 T119 20.50 - - SURF",
                        "1004 T104 21 - - BASE");
        assertThat(shift.findings("list-differs"))
                .extracting(Finding::seen)
                .containsExactly("ticket 1002: mix 19-64 here, SURF, which is 12.5-70A, in the list");
    }

    @Test
    void anHourIsHeldAgainstItsTicketLessTheDifferenceOfTheClocks() {
        Shift shift = three("").list("1001 T104 21.96 - 21:40", "1002 T118 22.10 - 21:50", "1003 T119 20.50 - 21:00");
        assertThat(shift.findings("list-clock")).hasSize(1);
        assertThat(shift.findings("list-differs"))
                .extracting(Finding::seen)
                .containsExactly("ticket 1003: loaded 21:00 here, 21:00 in the list, whose clock differs by 60 min");
    }

    @Test
    void theNewestListOfAPlantIsTheOneThatIsLaidBesideTheRecord() {
        Shift shift = three("").list("900 T1 1").list("1001 T104 21.96", "1002 T118 22.10", "1003 T119 20.50");
        assertThat(figure(shift, "plant-list.Quarry").text())
                .isEqualTo("3 matched, 0 missing here, 0 missing there, 0 different");
    }

    @Test
    void poundsInTheListAreHeldAgainstTonsOnTheTicket() {
        PlantRows.Row same = new PlantRows.Row(
                2, "1001", null, screedbook.unit.Amount.of("43920", screedbook.unit.Unit.POUND), null, null, null);
        PlantRows.Row other = new PlantRows.Row(
                3, "1002", null, screedbook.unit.Amount.of("44300", screedbook.unit.Unit.POUND), null, null, null);
        Shift shift = three("")
                .list(new screedbook.entry.PlantRows("Quarry", "quarry.csv", "", List.of(same, other), List.of()));
        assertThat(shift.findings("list-differs"))
                .extracting(Finding::seen)
                .containsExactly("ticket 1002: net 22.10 T here, 44300 lb (22.15 T) in the list");
    }

    @Test
    void aDayWithoutPlantEntriesSaysNothingOfThePlant() {
        assertThat(three("").totals().sections()).noneMatch(s -> s.id().equals("plant"));
        assertThat(three("").findings())
                .noneMatch(f -> f.rule().startsWith("list-") || f.rule().startsWith("plant-"));
    }
}
