package screedbook.season;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import screedbook.diary.Ahead;
import screedbook.diary.JobFolder;
import screedbook.diary.LoadsRead;
import screedbook.entry.Damage;
import screedbook.entry.Day;
import screedbook.entry.Opening;
import screedbook.entry.Plan;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.tally.MixSum;
import screedbook.tally.Unplanned;
import screedbook.unit.UnitSystem;

/** Loads, weights and mix temperatures of many shifts, by job, day and mix: what can be told without judging. */
public final class LoadsOf implements AutoCloseable {
    private final BiFunction<JobFolder, ShiftId, LoadsRead> reading;
    private final Ahead ahead = new Ahead();

    /** One day of a job with its mixes, by name. */
    public record DayOf(String job, LocalDate day, List<MixSum> mixes) {}

    /** What could not be counted, and what is not as it was written. */
    public record Trouble(List<Damage> damages, List<String> notRead) {}

    private record One(ShiftId shift, String job, List<MixSum> mixes, List<Damage> damages, List<String> notRead) {}

    public LoadsOf() {
        this(JobFolder::loads);
    }

    LoadsOf(BiFunction<JobFolder, ShiftId, LoadsRead> reading) {
        this.reading = reading;
    }

    /**
     * Reads a job.
     *
     * @param read is told of every shift that was read
     * @param told is given each day as soon as its last shift was read, oldest first
     */
    public Trouble job(Path folder, LocalDate from, LocalDate until, Consumer<ShiftId> read, Consumer<DayOf> told) {
        JobFolder listed = JobFolder.at(folder).listed();
        Map<String, Optional<UnitSystem>> systems = new ConcurrentHashMap<>();
        String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        Days days = new Days(told);
        List<ShiftId> asked = listed.shifts().stream()
                .filter(shift -> !shift.date().isBefore(from) && !shift.date().isAfter(until))
                .toList();
        ahead.each(asked, shift -> one(listed, systems, shift, name), (shift, one) -> days.add(one, read));
        days.end();
        return new Trouble(List.copyOf(days.damages), List.copyOf(days.notRead));
    }

    private One one(JobFolder job, Map<String, Optional<UnitSystem>> systems, ShiftId shift, String folder) {
        LoadsRead loads = reading.apply(job, shift);
        Optional<UnitSystem> known =
                agreed(loads.read().day()).flatMap(hash -> systems.computeIfAbsent(hash, job::system));
        LoadsRead read = known.isPresent() ? loads : new LoadsRead(job.shift(shift), List.of());
        Day day = read.read().day();
        UnitSystem system = known.orElseGet(() -> Unplanned.job(day).system());
        List<MixSum> mixes = new ArrayList<>(MixSum.of(day, system));
        read.whole().forEach(whole -> mixes.add(MixSum.of(whole, system)));
        String id = day.all().isEmpty() ? folder : day.all().get(0).line().job();
        List<String> notRead =
                day.uncounted().stream().map(each -> Season.told(shift, each)).toList();
        return new One(shift, id, mixes, read.read().damages(), notRead);
    }

    /** The hash of the job revision in force at the end of the day, as its opening and plan lines say. */
    private static Optional<String> agreed(Day day) {
        Map<String, String> books = new HashMap<>();
        String last = null;
        for (Standing<?> each : day.all()) {
            String book = each.line().book();
            if (each.entry() instanceof Opening opening) {
                last = opening.jobSha256();
                books.put(book, last);
            } else if (each.entry() instanceof Plan plan && !each.struck()) {
                last = plan.jobSha256() == null ? books.get(book) : plan.jobSha256();
                books.put(book, last);
            }
        }
        return Optional.ofNullable(last);
    }

    @Override
    public void close() {
        ahead.close();
    }

    /** Shifts of one date being taken together. */
    private static final class Days {
        private final Consumer<DayOf> told;
        private final List<Damage> damages = new ArrayList<>();
        private final List<String> notRead = new ArrayList<>();
        private final Map<String, MixSum> mixes = new TreeMap<>();
        private String job;
        private LocalDate day;

        Days(Consumer<DayOf> told) {
            this.told = told;
        }

        void add(One one, Consumer<ShiftId> read) {
            if (day != null && (!day.equals(one.shift().date()) || !job.equals(one.job()))) {
                end();
            }
            day = one.shift().date();
            job = one.job();
            one.mixes().forEach(each -> mixes.merge(each.system() + " " + each.mix(), each, MixSum::plus));
            damages.addAll(one.damages());
            notRead.addAll(one.notRead());
            read.accept(one.shift());
        }

        void end() {
            if (!mixes.isEmpty()) {
                told.accept(new DayOf(job, day, List.copyOf(mixes.values())));
                mixes.clear();
            }
        }
    }
}
