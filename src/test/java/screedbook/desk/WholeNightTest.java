package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import screedbook.check.Finding;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;

/**
 * A night of 120 loads with profiles, joints, two cores and a stop of the paver; the plant's list comes in the morning
 * with three differences put into it, and all three are found. What the loads come to is invented; the last ones and
 * everything else are keyed.
 */
class WholeNightTest {
    private static final int LOADS = 120;
    private static final int KEYED = 4;
    private static final int TRUCKS = 12;
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-06-03T20:05:00-06:00");

    /** 21.97 here, 21.79 in the list. */
    private static final int TURNED = 33;

    private static final int NOT_THERE = 77;

    private final DeskRig rig = new DeskRig(DeskRig.job(Map.of("trucks", trucks())), DeskRig.practice()).keys("1n");

    private static List<Map<String, Object>> trucks() {
        return IntStream.range(0, TRUCKS + 1)
                .mapToObj(i -> DeskRig.map("number", "T" + (101 + i)))
                .toList();
    }

    private static int number(int load) {
        return 48201 + load + (load >= 49 ? 1 : 0);
    }

    private static String truck(int load) {
        return "T" + (101 + load % TRUCKS);
    }

    private static BigDecimal net(int load) {
        return new BigDecimal(2096 + load * 37 % 160).movePointLeft(2);
    }

    /** Four minutes apart; loaded 25 minutes before it is discharged. */
    private static OffsetDateTime discharged(int load) {
        return FIRST.plusMinutes(4L * load);
    }

    private static Unwritten load(int load) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("plant", "Quarry Road");
        values.put("number", "" + number(load));
        values.put("truck", truck(load));
        values.put("mix", "12.5-70A");
        values.put("net_ston", net(load));
        values.put("paver_degF", new BigDecimal(284 + load % 7));
        values.put("loaded", Moment.text(discharged(load).minusMinutes(25)));
        values.put("discharged", Moment.text(discharged(load)));
        values.put("pull", "B");
        values.put("lift", BigDecimal.valueOf(2));
        Entry entry = (Entry) Fields.build(Kind.TICKET.type(), values).value();
        return new Unwritten(discharged(load), "RK", Source.LIVE, entry, Aside.NONE);
    }

    /** The plant's row of a load, in pounds. */
    private static String row(int number, String truck, BigDecimal net, OffsetDateTime loaded) {
        return "6/" + loaded.getDayOfMonth() + "/2026," + Moment.clock(loaded) + "," + number + "," + truck.substring(1)
                + "," + net.multiply(BigDecimal.valueOf(2000)).setScale(0) + "\n";
    }

    private void keyTheNight() {
        Scenes.keyed(rig, "w", Map.of("air_degF", "61", "humidity_pct", "55", "wind_mph", "4", "road", "dry"));
        Scenes.keyed(rig, "s", Map.of("surface_degF", "64", "place_sta", "1500", "pull", "B", "lift", "2"));
        List<Unwritten> loads = new ArrayList<>();
        for (int load = 0; load < LOADS - KEYED; load++) {
            loads.add(load(load));
        }
        rig.later((int) Duration.between(rig.now(), discharged(LOADS - KEYED)).toMinutes());
        rig.with(loads);
        for (int load = LOADS - KEYED; load < LOADS; load++) {
            Scenes.keyed(
                    rig,
                    "t",
                    Map.of(
                            "truck", truck(load),
                            "net_ston", net(load).toPlainString(),
                            "paver_degF", "286",
                            "loaded", Moment.clock(discharged(load).minusMinutes(25))));
            rig.later(4);
        }
        for (String from : List.of("1500", "3000", "4500")) {
            Scenes.keyed(
                    rig,
                    "mf",
                    Map.of(
                            "from_sta",
                            from,
                            "to_sta",
                            from.substring(0, 2) + "90",
                            "hottest_degF",
                            "291",
                            "coldest_degF",
                            "272"));
        }
        for (String from : List.of("1200", "5200")) {
            Scenes.keyed(rig, "mj", Map.of("run", "2", "from_sta", from, "tacked", "yes"));
        }
        for (String core : List.of("C-1", "C-2")) {
            Scenes.keyed(rig, "mc", Map.of("core", core, "place_sta", "2210", "height_in", "2.1"));
        }
        Scenes.keyed(rig, "b", Map.of("cause", "1", "waiting", "3"));
        rig.later(14);
        Scenes.keyed(rig, "b", Map.of());
    }

    /** A load that is not here, one of ours that is not there, and one whose net has two digits changed round. */
    private String list() {
        StringBuilder list = new StringBuilder("Date,Time,Ticket,Truck,Net lb\n");
        for (int load = 0; load < LOADS; load++) {
            BigDecimal net = load == TURNED ? new BigDecimal("21.79") : net(load);
            if (load == 49) {
                list.append(row(
                        48250, "T113", new BigDecimal("21.40"), discharged(49).minusMinutes(27)));
            }
            if (load != NOT_THERE) {
                list.append(row(number(load), truck(load), net, discharged(load).minusMinutes(25)));
            }
        }
        return list.toString();
    }

    @Test
    void threeDifferencesPutIntoThePlantsListAreAllFound() {
        keyTheNight();
        for (Kind kind : List.of(Kind.PROFILE, Kind.JOINT, Kind.CORE, Kind.STOP, Kind.RESTART)) {
            assertThat(rig.model().shift().last()).as("keyed").containsKey(kind);
        }
        assertThat(rig.model().shift().totals().shift().loads()).isEqualTo(LOADS);
        assertThat(net(TURNED)).isEqualByComparingTo("21.97");
        BigDecimal before = rig.model().shift().totals().shift().received().value();

        rig.paperLists.put("night.csv", list());
        rig.keys("mLnight.csv<enter>ooooooo2<C-s>");

        assertThat(rig.screen()).contains("118 matched, 1 missing here, 1 missing there, 1 different");
        assertThat(rig.model().shift().totals().shift().received().value())
                .as("a second source changes no entry")
                .isEqualByComparingTo(before);
        assertThat(found()).containsExactlyInAnyOrder("list-load-not-here", "list-load-not-there", "list-differs");
        assertThat(opened("list-load-not-there")).contains("ticket " + number(NOT_THERE));
        assertThat(opened("list-differs")).contains("ticket " + number(TURNED)).contains("net 21.97 T here, 43580 lb");
        assertThat(worked("list-differs")).contains("Two digits of the net changed places in one of them.");
        assertThat(worked("list-load-not-here")).contains("ticket 48250, truck 113, 42,800 lb, loaded 22:54");

        walkTo("list-load-not-here");
        rig.keys("t<C-s>");
        assertThat(rig.screen()).as("what is written is told").contains("on disk");
        assertThat(found()).containsExactlyInAnyOrder("list-load-not-there", "list-differs");
    }

    private List<String> found() {
        return rig.model().shift().findings().stream()
                .map(Finding::rule)
                .filter(rule -> rule.startsWith("list-"))
                .toList();
    }

    private void walkTo(String rule) {
        int at = rig.model().shift().findings().stream()
                .map(Finding::rule)
                .toList()
                .indexOf(rule);
        rig.keys("f<home>").keys("<down>".repeat(at));
    }

    /** The entry to which a finding leads, as it is drawn. */
    private String opened(String rule) {
        walkTo(rule);
        String screen = rig.keys("o").screen();
        rig.keys("<esc><esc>");
        return screen.replaceAll("\\s+", " ");
    }

    private String worked(String rule) {
        walkTo(rule);
        String screen = rig.keys("<enter>").screen();
        rig.keys("<esc><esc>");
        return screen.replaceAll("\\s+", " ");
    }
}
