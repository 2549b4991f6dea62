package screedbook.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.diary.JobFolder;
import screedbook.entry.Day;
import screedbook.entry.ShiftId;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.tally.ToDate;

/**
 * What earlier shifts come to. A shift is read once and only its figures are kept, until its files get another size or
 * time.
 */
final class Before {
    private final JobFolder folder;
    private final Agreements agreements;
    private final Map<ShiftId, Kept> kept = new HashMap<>();
    private ToDate running = ToDate.NONE;
    private Instant runningUntil = Instant.MIN;

    /** A shift's figures and what its files were when they were read; its newest line tells whether all of it counts. */
    private record Kept(List<Stamp> stamps, Instant newest, ToDate whole) {}

    /** A file as the disk tells of it without its being read. */
    private record Stamp(String name, long size, Instant changed) {}

    Before(JobFolder folder, Agreements agreements) {
        this.folder = folder;
        this.agreements = agreements;
    }

    /** The shifts before one, by what was keyed in them before a moment. */
    ToDate of(ShiftId shift, OffsetDateTime until) {
        ToDate sum = ToDate.NONE;
        for (Map.Entry<ShiftId, List<Path>> each : folder.paths().entrySet()) {
            if (each.getKey().compareTo(shift) < 0) {
                sum = sum.plus(one(each.getKey(), each.getValue(), until));
            }
        }
        return sum;
    }

    /** Every shift that has a diary, all of it. */
    ToDate all() {
        ToDate sum = ToDate.NONE;
        for (Map.Entry<ShiftId, List<Path>> each : folder.paths().entrySet()) {
            sum = sum.plus(one(each.getKey(), each.getValue(), OffsetDateTime.MAX));
        }
        return sum;
    }

    /** Takes up a shift that was just read, when all shifts are read in turn. */
    void add(ShiftId shift, Day day) {
        ToDate whole = figures(day);
        List<Path> paths = folder.paths(shift);
        Instant last = newest(day);
        kept.put(shift, new Kept(paths.stream().map(Before::stamp).toList(), last, whole));
        running = running.plus(whole);
        runningUntil = last.isAfter(runningUntil) ? last : runningUntil;
    }

    /** What was added up to now; shift by shift where something was keyed in one of them after the moment. */
    ToDate running(ShiftId shift, OffsetDateTime until) {
        return runningUntil.isBefore(until.toInstant()) ? running : of(shift, until);
    }

    private ToDate one(ShiftId shift, List<Path> paths, OffsetDateTime until) {
        List<Stamp> stamps = paths.stream().map(Before::stamp).toList();
        Kept known = kept.get(shift);
        if (known == null || !known.stamps().equals(stamps)) {
            Day day = folder.shift(shift).day();
            known = new Kept(stamps, newest(day), figures(day));
            kept.put(shift, known);
        }
        return known.newest().isBefore(until.toInstant())
                ? known.whole()
                : figures(ToDate.asOf(folder.shift(shift).day(), until));
    }

    private ToDate figures(Day day) {
        if (day.written().isEmpty()) {
            return ToDate.NONE;
        }
        Optional<Job> job = agreements.ground(day).job();
        return job.map(agreed -> ToDate.of(day, agreed)).orElseGet(() -> uncounted(day));
    }

    /** Without its job nobody can say what a shift's loads count for. */
    private static ToDate uncounted(Day day) {
        int entries = day.standing(Ticket.class).size()
                + day.standing(Tack.class).size()
                + day.uncounted().size();
        return new ToDate(Map.of(), Map.of(), 0, List.of(), entries);
    }

    private static Instant newest(Day day) {
        return day.all().stream()
                .map(each -> each.line().keyed().toInstant())
                .max(Instant::compareTo)
                .orElse(Instant.MIN);
    }

    /** A file that is gone or cannot be looked at is of no size, at no time. */
    private static Stamp stamp(Path path) {
        try {
            BasicFileAttributes found = Files.readAttributes(path, BasicFileAttributes.class);
            return new Stamp(
                    path.toString(), found.size(), found.lastModifiedTime().toInstant());
        } catch (IOException e) {
            return new Stamp(path.toString(), -1, Instant.MIN);
        }
    }
}
