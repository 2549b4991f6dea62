package screedbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.entry.Aside;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.picture.Dot;
import screedbook.picture.HeatStrip;
import screedbook.tally.Roadwork;
import screedbook.tally.Totals;
import screedbook.tally.Yields;
import screedbook.unit.Unit;

/**
 * A key and the screen after it cost the same early and late in a shift. The bound of 2 ms is the program's own promise,
 * with no outside source; what is counted is every look into a list of the day, its totals and its findings.
 */
class GrowthTest {
    private static final int FEW = 200;
    private static final int MANY = 5000;
    private static final long MOST = 2_000_000;
    private static final String ENTRY = "<down><down><enter><down><esc>";
    private static final String TICKET = "t118<enter>22.31<tab><tab>x<backspace><C-o><C-l><C-l>2001<tab>48230<esc>";
    private static final String WALK = "<down>".repeat(30) + "<page_down><page_down><up><home>";

    private static final DeskRig FEW_ENTRIES = shift(FEW);
    private static final DeskRig MANY_ENTRIES = shift(MANY);

    /** A list that counts how often one of its elements is looked at. */
    private static final class Counted<T> extends AbstractList<T> implements RandomAccess {
        private final List<T> of;
        private final long[] looks;

        Counted(List<T> of, long[] looks) {
            this.of = of;
            this.looks = looks;
        }

        @Override
        public T get(int index) {
            looks[0]++;
            return of.get(index);
        }

        @Override
        public int size() {
            return of.size();
        }
    }

    private static Unwritten entry(DeskRig rig, Kind kind, Map<String, Object> plain) {
        Entry entry = (Entry) Fields.build(kind.type(), plain).value();
        return new Unwritten(rig.now(), "RK", Source.LIVE, entry, Aside.NONE);
    }

    /** A shift of so many entries: loads, every fifteenth too cold, with surface readings and notes between them. */
    private static DeskRig shift(int entries) {
        DeskRig rig = DeskRig.open();
        List<Unwritten> all = new ArrayList<>();
        for (int i = 0; i < entries; i++) {
            if (i % 20 == 7) {
                all.add(entry(rig, Kind.SURFACE, Map.of("surface_degF", new BigDecimal(60), "place", "15+00")));
            } else if (i % 20 == 13) {
                all.add(entry(rig, Kind.NOTE, Map.of("text", "cones walked")));
            } else {
                all.add(entry(rig, Kind.TICKET, ticket(i)));
            }
        }
        rig.later(6);
        return rig.with(all);
    }

    private static Map<String, Object> ticket(int i) {
        Map<String, Object> plain = new LinkedHashMap<>();
        plain.put("plant", "Quarry Road");
        plain.put("number", "" + (40000 + i));
        plain.put("truck", i % 2 == 0 ? "T104" : "T118");
        plain.put("mix", "12.5-70A");
        plain.put("net_ston", new BigDecimal("22.31"));
        plain.put("discharged", "2026-06-03T20:00:00-06:00");
        plain.put("paver_degF", new BigDecimal(i % 15 == 0 ? 262 : 284));
        plain.put("from_sta", "12+03");
        plain.put("to_sta", "13+53");
        plain.put("pull", "B");
        plain.put("lift", new BigDecimal(2));
        return plain;
    }

    private static Model counted(Model model, long[] looks) {
        Shift s = model.shift();
        Msg.Page p = s.page();
        Day day = new Day(
                p.shift(),
                new Counted<>(p.day().written(), looks),
                new Counted<>(p.day().all(), looks),
                new Counted<>(p.day().adrift(), looks));
        Msg.Page page = new Msg.Page(p.shift(), p.book(), day, p.ground(), p.before(), p.seals(), p.damages());
        Totals t = s.totals();
        Totals totals = new Totals(
                new Counted<>(t.sections(), looks),
                new Counted<>(t.dues(), looks),
                new Counted<>(t.loads(), looks),
                new Counted<>(t.shots(), looks),
                new Counted<>(t.tons(), looks),
                new Counted<>(t.runs(), looks),
                new Counted<>(t.turns(), looks),
                new Roadwork(new Counted<>(t.road().lanes(), looks)),
                new Yields(
                        new Counted<>(t.yields().checks(), looks),
                        new Counted<>(t.yields().ahead(), looks),
                        new Counted<>(t.yields().depths(), looks)),
                new Counted<>(t.left(), looks),
                t.before(),
                t.samples());
        Pictured pictured = new Pictured(
                List.of(
                        strip(new Counted<>(Dot.atThePlant(t.loads(), Set.of()), looks)),
                        strip(new Counted<>(Dot.atThePaver(t.loads(), Set.of()), looks)),
                        strip(new Counted<>(Dot.ofTheMat(p.day(), Unit.DEG_F, Set.of()), looks))),
                new Counted<>(Dot.placed(t.loads()), looks),
                Optional.empty(),
                s.pictured()::road);
        return model.with(new Shift(
                page,
                s.job(),
                totals,
                new Counted<>(s.findings(), looks),
                s.marks(),
                s.last(),
                s.loadsUntilHeat(),
                pictured,
                s.ahead(),
                s.rolled(),
                s.seen(),
                s.writable()));
    }

    private static HeatStrip strip(List<Dot> dots) {
        return new HeatStrip("", dots, Optional.of(new BigDecimal(270)), Optional.empty());
    }

    /** Keys struck one by one, each followed by its screen; nothing is written. */
    private static List<Long> nanos(Model from, String typed) {
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        List<Long> each = new ArrayList<>();
        Model model = from;
        for (Key key : DeskRig.struck(typed)) {
            long before = thread.getCurrentThreadCpuTime();
            model = Update.of(model, new Msg.Struck(key)).model();
            View.of(model, 80, 24);
            each.add(thread.getCurrentThreadCpuTime() - before);
        }
        return each;
    }

    /** After the first screen, which draws the pictures of its size. */
    private static long looks(DeskRig rig, String typed) {
        long[] looks = new long[1];
        Model model = counted(rig.model(), looks);
        View.of(model, 80, 24);
        assertThat(looks[0]).as("the lists are the ones that are looked at").isPositive();
        looks[0] = 0;
        nanos(model, typed);
        return looks[0];
    }

    static List<String> typed() {
        return List.of(TICKET, WALK, "w45<enter><esc>", "k2600<esc>", "s44<esc>", "m<esc>", ENTRY);
    }

    @ParameterizedTest
    @MethodSource("typed")
    void aKeyLooksAtNoMoreEntriesLateInALongShift(String keys) {
        assertThat(looks(MANY_ENTRIES, keys)).isLessThanOrEqualTo(looks(FEW_ENTRIES, keys));
    }

    private static long median(DeskRig rig, String keys) {
        List<Long> all = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            List<Long> once = nanos(rig.model(), keys);
            if (i >= 6) {
                all.addAll(once);
            }
        }
        long[] sorted = all.stream().mapToLong(l -> l).sorted().toArray();
        System.out.printf(
                "%-20.20s at %d entries: median %.2f ms, 95 of 100 below %.2f ms%n",
                keys, rig.lines().size(), sorted[sorted.length / 2] / 1e6, sorted[sorted.length * 95 / 100] / 1e6);
        return sorted[sorted.length / 2];
    }

    @Test
    void aKeyWithItsScreenTakesTwoMillisecondsAtMost() {
        for (DeskRig rig : List.of(FEW_ENTRIES, MANY_ENTRIES)) {
            for (String keys : List.of(TICKET, WALK, "f" + WALK, "y" + WALK, "p<esc>", "/")) {
                assertThat(median(rig, keys))
                        .as(keys + " at " + rig.lines().size())
                        .isLessThanOrEqualTo(MOST);
            }
        }
    }
}
