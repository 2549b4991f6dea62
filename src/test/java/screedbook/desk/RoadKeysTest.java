package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;

/** The road by pull and station is gone along and across with keys. */
class RoadKeysTest {
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-06-03T20:00:00-06:00");

    private static Unwritten load(int minute, String pull, int from, int to) {
        Map<String, Object> plain = new HashMap<>(Map.of(
                "number",
                String.valueOf(2000 + minute),
                "net_ston",
                new BigDecimal("22.10"),
                "pull",
                pull,
                "lift",
                BigDecimal.valueOf(2)));
        plain.put("from_sta", from / 100 + "+00");
        plain.put("to_sta", to / 100 + "+00");
        Entry ticket = (Entry) Fields.build(Kind.TICKET.type(), plain).value();
        return new Unwritten(EVENING.plusMinutes(minute), "RK", Source.LIVE, ticket, Aside.NONE);
    }

    private static Unwritten entry(int minute, Kind kind, Object... pairs) {
        Map<String, Object> plain = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            plain.put((String) pairs[i], value instanceof Number ? new BigDecimal(value.toString()) : value);
        }
        Entry entry = (Entry) Fields.build(kind.type(), plain).value();
        return new Unwritten(EVENING.plusMinutes(minute), "RK", Source.LIVE, entry, Aside.NONE);
    }

    private static Unwritten place(int minute, Kind kind, String pull, String station, String key, Object value) {
        return entry(minute, kind, "pull", pull, "lift", 2, "place_sta", station, key, value);
    }

    /** Two pulls, tack that ends before the mat does, ground paved twice, and places of every sort. */
    static DeskRig marked() {
        List<Unwritten> all = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            all.add(load(i, i < 30 ? "A" : "B", 1200 + 200 * (i % 30), 1400 + 200 * (i % 30)));
        }
        all.add(load(41, "B", 3000, 3500));
        all.add(entry(
                1, Kind.TACK, "surface", "milled", "pull", "A", "lift", 2, "from_sta", "12+00", "to_sta", "68+00"));
        all.add(entry(
                2, Kind.TACK, "surface", "milled", "pull", "B", "lift", 2, "from_sta", "12+00", "to_sta", "52+00"));
        all.add(place(5, Kind.DEPTH, "A", "14+20", "thickness_in", 2.1));
        all.add(place(6, Kind.MAT, "A", "14+50", "mat_degF", 281));
        all.add(place(7, Kind.GAUGE, "A", "31+10", "first_reading_lb_ft3", 139.2));
        all.add(place(8, Kind.CORE, "A", "31+10", "core", "C1"));
        all.add(place(9, Kind.SAMPLE, "A", "44+00", "sample", "S1"));
        all.add(place(10, Kind.STRAIGHTEDGE, "A", "52+00", "gap_in", 0.1));
        all.add(entry(11, Kind.PROFILE, "pull", "A", "lift", 2, "from_sta", "20+00", "to_sta", "21+50"));
        all.add(entry(12, Kind.JOINT, "run", "transverse", "pull", "B", "lift", 2, "from_sta", "12+00"));
        all.add(place(13, Kind.STOP, "B", "24+00", "cause", "no-trucks"));
        return DeskRig.open().with(all).keys("pr");
    }

    /** Pull B from 12+00 to 132+00, with the paver at its end. */
    private static DeskRig far() {
        List<Unwritten> loads = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            loads.add(load(i, "B", 1200 + 200 * i, 1400 + 200 * i));
        }
        return DeskRig.open().with(loads).keys("pr");
    }

    @Test
    void theRoadOpensWhereThePaverIs() {
        assertThat(far().screen()).contains("to 132+00 of 12+00 to 132+00").contains("B lift 2 > -----");
    }

    @Test
    void rightAndLeftGoAlongTheRoadAndHomeAndEndToItsEnds() {
        DeskRig rig = far().keys("<home>");
        assertThat(rig.screen()).contains("12+00 to 79+00 of 12+00 to 132+00");
        assertThat(rig.keys("<right>").screen()).contains("45+00 to 112+00 of 12+00 to 132+00");
        assertThat(rig.keys("<right>").screen()).contains("65+00 to 132+00 of 12+00 to 132+00");
        assertThat(rig.keys("<right>").screen()).contains("65+00 to 132+00 of 12+00 to 132+00");
        assertThat(rig.keys("<left>").screen()).contains("32+00 to 99+00 of 12+00 to 132+00");
        assertThat(rig.keys("<end>").screen()).contains("65+00 to 132+00 of 12+00 to 132+00");
        assertThat(rig.keys("<esc>").screen()).contains("tons against the clock");
    }

    @Test
    void downAndUpGoToOtherPullsWhereThereAreMoreThanRows() {
        List<Unwritten> loads = new ArrayList<>();
        for (int i = 0; i < 26; i++) {
            loads.add(load(i, "P" + (char) ('A' + i), 1200, 1400));
        }
        DeskRig rig = DeskRig.open().with(loads).keys("pr");

        assertThat(rig.screen())
                .contains("PA lift 2")
                .doesNotContain("PZ lift 2")
                .contains("12+00");
        assertThat(rig.keys("<down>").screen()).doesNotContain("PA lift 2").contains("PB lift 2");
        assertThat(rig.keys("<page_down><page_down><page_down>").screen())
                .contains("PZ lift 2")
                .contains("12+00");
        assertThat(rig.keys("<up>").screen()).doesNotContain("PZ lift 2").contains("PY lift 2");
    }

    /** Half of 12 and 24 ft over 150 ft, 300 yd2, with 12 ft over the 150 ft before it, 200 yd2. */
    @Test
    @DisplayName("row 67: a taper keyed at the desk counts in the area of its pull")
    void aTaperIsKeyedAndCountsInTheAreaOfItsPull() {
        DeskRig rig = Scenes.load(DeskRig.open(), "118", "22.31", "286", "1200", "1500");
        rig.later(6).keys("ma");
        for (String[] blank : new String[][] {
            {"shape", "taper"},
            {"from_sta", "1350"},
            {"to_sta", "1500"},
            {"width_from_ft", "12"},
            {"width_to_ft", "24"},
            {"pull", "B"},
            {"lift", "2"}
        }) {
            Scenes.typedIn(rig, blank[0], blank[1]);
        }
        assertThat(rig.screen()).contains("in place: (12 ft + 24 ft) / 2 x 150 ft = 300.0 yd²");
        rig.keys("<C-s>");

        assertThat(rig.last().kind()).isEqualTo(Kind.AREA);
        assertThat(rig.model()
                        .shift()
                        .totals()
                        .runs()
                        .get(0)
                        .area()
                        .orElseThrow()
                        .shown(1)
                        .text())
                .isEqualTo("500.0 yd²");
    }

    @Test
    @DisplayName("row 63: a load on ground that is paved already says so before it is written")
    void aLoadOnGroundThatIsPavedSaysSoWhileItIsKeyed() {
        DeskRig rig = Scenes.load(DeskRig.open(), "118", "22.31", "286", "1200", "1350");
        rig.later(6).keys("t");
        Scenes.typedIn(rig, "from_sta", "1300");
        Scenes.typedIn(rig, "to_sta", "1450");

        assertThat(rig.screen()).contains("150 ft  50 ft of it paved already");
        assertThat(Scenes.typedIn(rig, "pull", "A").screen()).doesNotContain("paved already");
    }
}
