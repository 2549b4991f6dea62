package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.entry.Field;
import screedbook.job.Job;

/** The job prepared and revised by keys, on a paper disk. */
class SheetTest {
    /** Walks to a part of the sheet by its label and opens it. */
    static DeskRig part(DeskRig rig, String label) {
        List<Field> parts = Sheet.parts();
        rig.keys("<home>");
        for (int i = 0; i < parts.size(); i++) {
            rig.keys("<down>");
            if (parts.get(i).label().equals(label)) {
                return rig.keys("<enter>");
            }
        }
        throw new IllegalStateException("no part is called " + label);
    }

    /** Types into a blank of the form on top, taking away what stood there. */
    static DeskRig fill(DeskRig rig, String blank, String text) {
        for (int i = 0; i < 40; i++) {
            Form form = ItemKeys.form(rig.model().top());
            if (form.active().name().equals(blank)) {
                return rig.keys(text);
            }
            rig.keys("<tab>");
        }
        throw new IllegalStateException("no blank " + blank + "\n" + rig.screen());
    }

    static DeskRig sheet() {
        return new DeskRig().keys("1j");
    }

    /** The second mix's target raised, and the sheet written. */
    static DeskRig warmer() {
        return fill(part(sheet(), "mixes").keys("<down><enter>"), "target_plant_degF", "300")
                .keys("<C-s><esc>");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> item(Map<String, Object> values, String list, int index) {
        return ((List<Map<String, Object>>) values.get(list)).get(index);
    }

    @Test
    void oneNumberIsChangedAndNothingElseAndNothingIsWrittenBeforeItIsAsked() {
        DeskRig rig = new DeskRig();
        Map<String, Object> before = rig.paper.values();
        rig.keys("1j");
        fill(part(rig, "mixes").keys("<down><enter>"), "target_plant_degF", "300")
                .keys("<C-s><esc>");
        assertThat(rig.effects).noneMatch(e -> e instanceof Effect.WriteJobSheet);
        assertThat(rig.screen()).contains("typed here, not written: mixes");

        rig.keys("wthe plant asked on 2 June<enter>");

        assertThat(item(rig.paper.values(), "mixes", 1)).containsEntry("target_plant_degF", new BigDecimal("300"));
        assertThat(item(before, "mixes", 1)).containsEntry("target_plant_degF", new BigDecimal("295"));
        Sheet same = Sheet.of(rig.paper.read()).with(List.of("mixes", 1, "target_plant_degF"), new BigDecimal("295"));
        assertThat(same.values()).isEqualTo(before);
        assertThat(rig.paper.revisions()).hasSize(2);
        assertThat(rig.paper.revisions().get(1).who()).isEqualTo("RK");
        assertThat(rig.paper.revisions().get(1).why()).isEqualTo("the plant asked on 2 June");
        assertThat(rig.screen()).contains("revision 2 on disk").contains("revision 2 of 2026-06-03 20:00 by RK");
    }

    @Test
    void aTruckIsPutInAndAnotherTakenOut() {
        DeskRig rig = part(sheet(), "trucks").keys("x");
        rig.keys("nT140<enter>26400<enter>72000<enter>2<enter><esc>");
        rig.keys("wtrucks changed<enter>");

        List<?> trucks = (List<?>) rig.paper.values().get("trucks");
        assertThat(trucks).hasSize(2);
        assertThat(trucks.get(1))
                .isEqualTo(DeskRig.map("number", "T140", "tare_lb", 26400, "legal_gross_lb", 72000, "insulated", "no"));
        assertThat(trucks.toString()).doesNotContain("T104");
    }

    @Test
    void aStrappingTableIsKeyedInsideItsDistributor() {
        DeskRig rig = part(sheet(), "distributors").keys("n");
        rig.keys("D9<enter>1<enter><enter>");
        assertThat(rig.screen()).contains("distributors  D9, strapping table");
        rig.keys("n0<enter>0<enter>n12<enter>299.5<enter>");
        rig.keys("<esc>");
        assertThat(rig.screen()).contains("2: 0, 12");
        rig.keys("<esc><esc>wD9 came<enter>");

        assertThat(item(rig.paper.values(), "distributors", 1).get("strapping"))
                .isEqualTo(List.of(
                        DeskRig.map("depth_in", 0, "volume_gal", 0), DeskRig.map("depth_in", 12, "volume_gal", 299.5)));
    }

    @Test
    void aNumberThatIsNoneHoldsTheCursorAndSaysWhy() {
        DeskRig rig = fill(part(sheet(), "mixes").keys("<enter>"), "target_plant_degF", "3oo")
                .keys("<enter>");
        assertThat(rig.screen()).contains("\"3oo\" is no number");
        assertThat(ItemKeys.form(rig.model().top()).active().name()).isEqualTo("target_plant_degF");
        assertThat(rig.keys("<C-s>").model().top()).isInstanceOf(Screen.Item.class);
    }

    @Test
    void aWordIsChosenByItsDigitAndANameByItsBeginning() {
        DeskRig rig = part(sheet(), "lifts").keys("n3<enter>1<enter>1.5<enter>19<enter>");
        rig.keys("<C-s><esc>wa third lift<enter>");
        assertThat(item(rig.paper.values(), "lifts", 2))
                .isEqualTo(DeskRig.map("number", 3, "layer", "riding-surface", "thickness_in", 1.5, "mix", "19-64"));
    }

    @Test
    void whatIsHalfTypedStaysThroughEscAndAShiftAndIsNamedOnTheFirstScreen() {
        DeskRig rig = part(sheet(), "trucks").keys("nT1");
        rig.keys("<esc><esc><esc>");
        assertThat(rig.screen()).contains("job sheet half typed, not written: trucks[new]; j goes on with it");
        rig.keys("n<esc>j");
        assertThat(rig.screen()).contains("typed here, not written: trucks[new]");
        rig.keys("w");
        assertThat(rig.screen()).contains("half typed: trucks[new]");
        part(rig, "trucks").keys("<end><enter>40<C-s>");
        assertThat(rig.screen()).contains("T140");
    }

    @Test
    void aHalfTypedItemKeepsItsListFromBeingCutUnderIt() {
        DeskRig rig = part(sheet(), "trucks").keys("nT1<esc><home>x");
        assertThat(rig.screen())
                .contains("trucks[new] is half typed: finish or drop it first")
                .contains("T104");
        rig.keys("<end><enter><C-d><home>x");
        assertThat(rig.screen()).contains("T104 is taken out of the sheet").doesNotContain("half typed");
    }

    @Test
    void everythingThatIsMissingIsNamedAtOnce() {
        DeskRig rig = new DeskRig();
        rig.paper.empty();
        rig.keys("1j");
        part(rig, "lifts").keys("n1<C-s><esc>");
        part(rig, "trucks").keys("n<tab>26000<C-s><esc>");
        rig.keys("w");
        assertThat(rig.screen())
                .contains("to settle before the sheet can be written: 6")
                .contains("the job has no name")
                .contains("the job has no units; right would be: units as one of us, metric")
                .contains("lifts[1] has no layer")
                .contains("lifts[1] has no thickness")
                .contains("lifts[1] has no mix")
                .contains("trucks[26000] has no number");
    }

    @Test
    void aNewJobIsMadeFromNothing() {
        DeskRig rig = new DeskRig();
        rig.paper.empty();
        rig.keys("1j<enter>");
        fill(fill(rig, "name", "New road"), "units", "1").keys("<C-s>");
        rig.keys("wfirst draft<enter>");
        assertThat(rig.paper.values())
                .isEqualTo(DeskRig.map(
                        "id",
                        "new-road",
                        "zone",
                        "America/Denver",
                        "sheet",
                        "practice",
                        "name",
                        "New road",
                        "units",
                        "us"));
        assertThat(rig.screen()).contains("revision 1 on disk");
    }

    @Test
    void aJobThatSomebodyElseWroteIsNotWrittenOver() {
        DeskRig rig = warmer();
        rig.paper.elsewhere = true;
        rig.keys("wwarmer<enter>");
        assertThat(rig.screen())
                .contains("NOT on disk: the files were changed by somebody else; r reads it again")
                .contains("typed here, not written: mixes");
        rig.paper.elsewhere = false;
        rig.keys("r");
        assertThat(rig.screen()).contains("r again gives up what was typed here: mixes");
        rig.keys("r");
        assertThat(rig.screen()).doesNotContain("not written").contains("read again");
        assertThat(rig.paper.revisions()).hasSize(1);
    }

    @Test
    void aRevisionSaysWhyAndWho() {
        DeskRig rig = warmer().keys("w<enter>");
        assertThat(rig.screen()).contains("a revision says why");
        assertThat(rig.paper.revisions()).hasSize(1);
    }

    @Test
    void phonesStandApartFromTheJob() {
        DeskRig rig =
                part(sheet(), "phones and addresses").keys("nRK<enter>Robin Kell<enter>555-0107<enter><C-s><esc>");
        rig.keys("wphone of RK<enter>");
        assertThat(rig.paper.contacts())
                .containsExactly(Map.of("initials", "RK", "name", "Robin Kell", "phone", "555-0107"));
        assertThat(rig.paper.values().toString()).doesNotContain("555-0107");
        assertThat(rig.paper.values()).doesNotContainKey("phones");
    }

    @Test
    void contactsNeedInitialsAndEachOnce() {
        DeskRig rig = part(sheet(), "phones and addresses");
        rig.keys("nRK<C-s>nRK<C-s>n<tab>Robin<C-s><esc>t");
        assertThat(rig.screen()).contains("phones has RK twice").contains("phones[Robin] has no initials");
    }

    @Test
    void whatChangedIsToldByNameWithWhoWhenAndWhy() {
        DeskRig rig = warmer().keys("wthe plant asked<enter>d");
        assertThat(rig.screen())
                .contains("to    revision 2 of 2026-06-03 20:00 by RK: the plant asked")
                .contains("from  revision 1 of 2026-05-11 15:20 by RK: as agreed on 7 May")
                .contains("mixes[19-64].target_plant_degF  295 -> 300");
        rig.keys("<left>");
        assertThat(rig.screen()).contains("both say the same");
        rig.keys("+");
        assertThat(rig.screen()).contains("mixes[19-64].target_plant_degF  300 -> 295");
    }

    @Test
    void whatIsTypedIsHeldAgainstTheNewestRevisionBeforeItIsWritten() {
        assertThat(warmer().keys("d").screen())
                .contains("to    as typed here, not written")
                .contains("mixes[19-64].target_plant_degF  295 -> 300");
    }

    @Test
    void aMetricJobIsKeyedInItsOwnUnits() {
        Job metric = DeskRig.job(Map.of("units", "us"));
        DeskRig rig = new DeskRig(metric, DeskRig.practice());
        rig.paper.empty();
        rig.keys("1j<enter>");
        fill(fill(rig, "name", "Metric road"), "units", "metric").keys("<C-s>");
        part(rig, "trucks").keys("nT1<enter>11800<C-s><esc>");
        part(rig, "stationing").keys("<tab><tab>1250<C-s>");
        rig.keys("wdraft<enter>");
        assertThat(item(rig.paper.values(), "trucks", 0)).containsEntry("tare_kg", new BigDecimal("11800"));
        assertThat(rig.paper.values().get("stationing")).isEqualTo(Map.of("begins_sta", "1+250"));
    }

    @Test
    void aHaulThatLosesTooMuchIsMarkedWithItsWorkingAndGoneWhenItIsMended() {
        DeskRig rig = sheet();
        part(rig, "haul").keys("nQu<enter>12<enter><enter>40<enter>12<enter><enter>guess<enter><esc>");
        assertThat(rig.screen()).contains("of the plan: 1 outside");
        rig.keys("f<enter>");
        assertThat(rig.screen())
                .contains("outside: 12.5-70A on lift 2 from Quarry Road")
                .contains("working");
        rig.keys("<esc><esc>c");
        assertThat(rig.screen()).contains("12.5-70A on lift 2 from Quarry Road, 40 min: no target");
        rig.keys("<esc>");
        fill(part(rig, "haul").keys("<enter>"), "loss_dF", "5").keys("<C-s><esc>");
        assertThat(rig.screen()).doesNotContain("outside");
    }

    @Test
    void thePageIsOfWhatIsWrittenOnly() {
        DeskRig rig = sheet().keys("p");
        assertThat(rig.effects).hasAtLeastOneElementOfType(Effect.PrintPlan.class);
        DeskRig typed = warmer().keys("p");
        assertThat(typed.screen()).contains("the page tells of what is written: w first");
        assertThat(typed.effects).noneMatch(e -> e instanceof Effect.PrintPlan);
    }

    @Test
    void whatIsTypedIsKeptWithEveryItemAndTakenUpAgainAfterACrash() {
        DeskRig before = warmer();
        Effect.KeepJobSheet kept = (Effect.KeepJobSheet) before.effects.stream()
                .filter(e -> e instanceof Effect.KeepJobSheet)
                .reduce((first, later) -> later)
                .orElseThrow();
        assertThat(item(kept.values(), "mixes", 1)).containsEntry("target_plant_degF", new BigDecimal("300"));

        DeskRig after = new DeskRig();
        after.paper.typed(kept.values());
        assertThat(after.keys("1j").screen())
                .contains("typed here, not written: mixes")
                .contains("as it was typed and not written before the program ended");
        after.keys("rr");
        assertThat(after.effects).hasAtLeastOneElementOfType(Effect.DropJobSheet.class);
        assertThat(after.screen()).doesNotContain("not written");
    }

    private static DeskRig afterACrash(DeskRig before) {
        Effect last = before.effects.stream()
                .filter(e -> e instanceof Effect.KeepJobSheet || e instanceof Effect.DropJobSheet)
                .reduce((first, later) -> later)
                .orElseThrow();
        DeskRig after = new DeskRig();
        if (last instanceof Effect.KeepJobSheet kept) {
            after.paper.typed(kept.values());
        }
        return after.keys("1j");
    }

    @Test
    void aBlankThatIsHalfTypedOutlivesACrash() {
        DeskRig before = part(sheet(), "mixes").keys("<down><enter>");
        fill(before, "target_plant_degF", "31");

        DeskRig after = afterACrash(before);

        assertThat(after.screen()).contains("half typed: mixes[19-64]");
        part(after, "mixes").keys("<down><enter>");
        assertThat(ItemKeys.form(after.model().top()).text("target_plant_degF")).isEqualTo("31");
        after.keys("0<C-s><esc>");
        assertThat(after.screen()).contains("typed here, not written: mixes");
        assertThat(after.model().sheet().half()).isEmpty();
    }

    @Test
    void aNewItemThatIsHalfTypedOutlivesACrash() {
        DeskRig before = part(sheet(), "trucks").keys("nT9");

        DeskRig after = part(afterACrash(before), "trucks");
        assertThat(after.keys("<end><enter>").screen()).contains("T9");
        assertThat(ItemKeys.form(after.model().top()).text("number")).isEqualTo("T9");
    }

    @Test
    void whatWasTypedAndTakenAwayAgainIsNotHalfTyped() {
        DeskRig before = part(sheet(), "trucks").keys("nT9<backspace><backspace><esc>");
        assertThat(before.screen()).doesNotContain("half typed");

        assertThat(afterACrash(before).screen()).doesNotContain("half typed");
    }

    @Test
    void aHalfTypedPartThatLeadsNowhereIsLeftOut() {
        DeskRig after = new DeskRig();
        Map<String, Object> values = new LinkedHashMap<>(after.paper.values());
        values.put("half typed", Map.of("nowhere[2].at", Map.of("x", "1"), "trucks[0]", Map.of("gone", "2")));
        after.paper.typed(values);

        assertThat(after.keys("1j").screen()).contains("the job sheet").doesNotContain("half typed");
    }

    static List<Field> parts() {
        return Sheet.parts();
    }

    /** Whatever record of the job is added later has a form, and every blank in it can be typed. */
    @ParameterizedTest
    @MethodSource("parts")
    void everyPartHasAFormThatShowsEveryBlank(Field part) {
        DeskRig rig = part(sheet(), part.label());
        if (Sheet.list(part)) {
            rig.keys("n");
        }
        Form form = ItemKeys.form(rig.model().top());
        for (int i = 0; i < form.inputs().size(); i++) {
            String label = ItemKeys.form(rig.model().top()).active().field().label();
            assertThat(rig.screen()).contains(label);
            assertThat(rig.canvas(80, 24).cursorY()).as(label).isPositive();
            rig.keys("<tab>");
        }
    }
}
