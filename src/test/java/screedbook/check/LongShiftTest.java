package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.AbstractList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import screedbook.entry.Day;
import screedbook.entry.Standing;
import screedbook.tally.Totals;

/** A shift of thousands of entries is looked at in no time, and a guide costs the same at its end as at its start. */
class LongShiftTest {
    /** One entry a load but for a weather, a surface reading and a shot every forty, each a minute after the other. */
    private static Shift shift(int entries) {
        Shift shift = Shift.night();
        for (int i = 0; i < entries; i++) {
            shift.minute(i, entry(i));
        }
        return shift;
    }

    private static String entry(int i) {
        int at = 1200 + i * 10;
        String from = "%d+%02d".formatted(at / 100, at % 100);
        String to = "%d+%02d".formatted((at + 10) / 100, (at + 10) % 100);
        return switch (i % 40) {
            case 0 -> "weather air_degF=60 humidity_pct=50 precipitation=none road=dry";
            case 1 -> "surface surface_degF=" + (30 + i % 40) + " place_sta=" + from + " pull=B lift=2";
            case 2 ->
                "tack product=CSS-1h surface=milled from_sta=" + from + " to_sta="
                        + "%d+%02d".formatted((at + 400) / 100, at % 100)
                        + " pull=B lift=2 reading=tank before_gal=500 after_gal=430 material_degF=140";
            default ->
                "ticket plant=Quarry truck=T" + (100 + i % 30) + " mix=12.5-70A net_ston=22." + (10 + i % 80)
                        + " gross_lb=" + (71900 + 20 * (i % 70)) + " pull=B lift=2 paver_degF=" + (262 + i % 40)
                        + " from_sta=" + from + " to_sta=" + to + " number=" + (100000 + i);
        };
    }

    /** The aim is 50 ms warm; these tests run with the simple compiler only, which takes about twice as long. */
    private static final long MOST = 150_000_000L;

    @Test
    void fiveThousandEntriesAreLookedAtBeforeAPersonNotices() {
        Shift shift = shift(5000);
        Day day = shift.day();
        Totals totals = shift.totals();
        Ground ground = shift.ground();

        long best = Long.MAX_VALUE;
        List<Finding> findings = List.of();
        for (int round = 0; round < 12; round++) {
            long start = cpu();
            findings = Findings.of(day, totals, ground);
            best = Math.min(best, cpu() - start);
        }
        System.out.printf("findings of 5,000 entries: %d in %.1f ms%n", findings.size(), best / 1e6);

        assertThat(findings).hasSizeGreaterThan(500);
        assertThat(best).as("nanoseconds, best of twelve rounds").isLessThan(MOST);
    }

    /** Time that this thread had the processor, so that a busy machine does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    @Test
    void aGuideTouchesAsManyEntriesLateInAShiftAsEarly() {
        assertThat(touched(5000)).isEqualTo(touched(200)).isLessThan(10);
    }

    private static int touched(int entries) {
        Shift shift = shift(entries);
        Day day = shift.day();
        AtomicInteger touched = new AtomicInteger();
        List<Standing<?>> counting = new AbstractList<>() {
            @Override
            public Standing<?> get(int index) {
                touched.incrementAndGet();
                return day.all().get(index);
            }

            @Override
            public int size() {
                return day.all().size();
            }
        };
        Day watched = new Day(day.shift(), day.written(), counting, day.adrift());
        for (String typed : List.of("weather air_degF=5", "ticket paver_degF=27", "tack after_gal=4")) {
            String blank = typed.split("[ =]")[1];
            Guides.of(shift.ground(), watched, Shift.entry(typed), shift.time("21:00"), blank);
        }
        return touched.get();
    }
}
