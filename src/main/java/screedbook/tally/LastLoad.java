package screedbook.tally;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import screedbook.calc.Sun;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Planning;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * The latest time at which a load may leave a plant so that the mat is rolled and cool before something ends the work.
 *
 * @param what ends it: {@code lanes open}, {@code cold}, {@code dark on 2026-06-03}
 * @param way from where: a plant's name
 * @param leaves time of loading
 * @param discharged time of the discharge that goes with it
 */
public record LastLoad(String what, String way, LocalTime leaves, LocalTime discharged, Working working) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final Amount NO_TIME = Amount.of("0", Unit.MINUTE);

    /** Of a plan: dark on the first and the last day of each planned period. */
    static List<LastLoad> planned(Job job) {
        return of(
                job,
                job.planning().work().stream()
                        .flatMap(period -> Stream.of(period.from(), period.to()))
                        .distinct()
                        .toList());
    }

    /** Of a shift that began on a date. */
    public static List<LastLoad> on(Job job, LocalDate date) {
        return of(job, List.of(date));
    }

    private static List<LastLoad> of(Job job, List<LocalDate> dates) {
        Planning.Cutoff cutoff = job.planning().cutoff();
        List<LastLoad> loads = new ArrayList<>();
        if (cutoff != null) {
            Map<String, Amount> ways = ways(job);
            ends(job, cutoff, dates)
                    .forEach((what, end) ->
                            ways.forEach((way, haul) -> loads.add(of(job, cutoff, what, end, way, haul))));
        }
        return List.copyOf(loads);
    }

    /** What ends the work and the way, as a permanent word has them. */
    public String name() {
        return what + "." + way;
    }

    private static Map<String, LocalTime> ends(Job job, Planning.Cutoff cutoff, List<LocalDate> dates) {
        Map<String, LocalTime> ends = new LinkedHashMap<>();
        if (cutoff.lanesOpen() != null) {
            ends.put("lanes open", cutoff.lanesOpen());
        }
        if (cutoff.cold() != null) {
            ends.put("cold", cutoff.cold());
        }
        Job.Place place = job.place();
        boolean known = place != null && place.latitude() != null && place.longitude() != null;
        if (cutoff.dark() == YesNo.YES && known) {
            double north = place.latitude().doubleValue();
            double east = place.longitude().doubleValue();
            dates.forEach(date -> Sun.set(date, north, east)
                    .ifPresent(set -> ends.put("dark on " + date, minute(set.atZone(job.zone())))));
        }
        return ends;
    }

    /** To the minute before. */
    private static LocalTime minute(ZonedDateTime time) {
        return time.toLocalTime().withSecond(0).withNano(0);
    }

    /** The longest haul from each plant; that of a truck's round where none is settled. */
    private static Map<String, Amount> ways(Job job) {
        Map<String, Amount> ways = new LinkedHashMap<>();
        job.planning().haul().stream()
                .filter(h -> h.minutes() != null)
                .forEach(h -> ways.merge(h.plant(), h.minutes(), (a, b) -> a.compareTo(b) >= 0 ? a : b));
        Planning.Cycle cycle = cycle(job);
        if (ways.isEmpty() && cycle != null && cycle.haul() != null) {
            ways.put("the plant", cycle.haul());
        }
        return ways;
    }

    private static Planning.Cycle cycle(Job job) {
        Planning.Production made = job.planning().production();
        return made == null ? null : made.cycle();
    }

    private static LastLoad of(Job job, Planning.Cutoff cutoff, String what, LocalTime end, String way, Amount haul) {
        Planning.Cycle cycle = cycle(job);
        Map<String, Amount> after = new LinkedHashMap<>();
        after.put("cooling", cutoff.cooling());
        after.put("rolling", cutoff.rolling());
        after.put("dump", cycle == null ? null : cycle.dump());
        Map<String, Amount> less = new LinkedHashMap<>(after);
        less.put("delay at the paver", cycle == null ? null : cycle.delay());
        less.put("haul", haul);
        less.values().removeIf(Objects::isNull);
        after.values().removeIf(Objects::isNull);
        List<String> put = new ArrayList<>(List.of(what + " " + end.format(CLOCK)));
        less.forEach((part, amount) -> put.add("less " + part + " " + amount.text()));
        return new LastLoad(
                what,
                way,
                end.minusMinutes(minutes(less)),
                end.minusMinutes(minutes(after)),
                new Working(
                        "time by which the mat is done - " + String.join(" - ", less.keySet()) + "; clock not changed"
                                + " between",
                        List.copyOf(put),
                        List.of(),
                        cutoff.source() == null ? "job, cutoff; common practice, no source" : cutoff.source()));
    }

    private static long minutes(Map<String, Amount> parts) {
        return parts.values().stream()
                .reduce(NO_TIME, Amount::plus)
                .value()
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
    }
}
