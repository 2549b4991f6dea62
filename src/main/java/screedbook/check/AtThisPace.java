package screedbook.check;

import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.entry.Day;
import screedbook.entry.Moment;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.Figure;
import screedbook.tally.LastLoad;
import screedbook.tally.Pace;
import screedbook.tally.Section;
import screedbook.tally.Totals;

/**
 * What comes of it if a shift goes on as it went: when surface and air meet their limits, when the planned work is done,
 * and whether that is after the last load has to be down.
 *
 * @param late the first of the planned ends that the work would outlast; empty where it outlasts none
 * @param down when the last load has to be discharged at the earliest; empty where nothing is foretold or ends the work
 */
public record AtThisPace(List<Nearing> nearing, Pace pace, Optional<LastLoad> late, Optional<OffsetDateTime> down) {
    /** Of a shift that is closed, or of one without its job, nothing is foretold. */
    public static AtThisPace of(Day day, Job job, Optional<SpecSheet> sheet, Totals totals, OffsetDateTime now) {
        Pace pace = Pace.of(day, job, totals);
        return new AtThisPace(
                sheet.map(s -> Nearing.of(day, job, s, now)).orElse(List.of()),
                pace,
                late(job, pace, totals),
                pace.last().stream()
                        .map(l -> next(job, totals.shift().first(), l.discharged()))
                        .min(Comparator.naturalOrder())
                        .map(ZonedDateTime::toOffsetDateTime));
    }

    private static Optional<LastLoad> late(Job job, Pace pace, Totals totals) {
        Optional<OffsetDateTime> done = Stream.of(pace.shift(), pace.pull())
                .flatMap(Optional::stream)
                .map(Pace.Finish::at)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
        return done.flatMap(end -> pace.last().stream()
                .filter(l -> end.toInstant()
                        .isAfter(next(job, totals.shift().first(), l.discharged())
                                .toInstant()))
                .min(Comparator.comparing(l -> next(job, totals.shift().first(), l.discharged()))));
    }

    /** The first such time of day after the shift's first load. */
    private static ZonedDateTime next(Job job, OffsetDateTime first, LocalTime hour) {
        ZonedDateTime begun = first.atZoneSameInstant(job.zone());
        ZonedDateTime same = begun.with(hour);
        return same.isAfter(begun)
                ? same
                : begun.toLocalDate().plusDays(1).atTime(hour).atZone(job.zone());
    }

    /** Work that is foretold, in lines of at most 19 characters: {@code shift done 02:40}. */
    public List<String> work() {
        List<String> lines = new ArrayList<>();
        pace.shift().filter(f -> f.at() != null).ifPresent(f -> lines.add("shift done " + Moment.clock(f.at())));
        pace.pull().filter(f -> f.at() != null).ifPresent(f -> lines.add("pull done " + Moment.clock(f.at())));
        return List.copyOf(lines);
    }

    /** The last load where the work would outlast it: {@code but last load 04:35}. */
    public Optional<String> lateLine() {
        return late.map(l -> "but last load " + l.leaves());
    }

    /** Limits that are neared, in lines of at most 18 characters: {@code surface 35° 23:40}. */
    public List<String> limits() {
        return nearing.stream()
                .map(n -> n.what() + " " + AmountText.plain(n.limit()) + "° " + Moment.clock(n.at()))
                .toList();
    }

    /** The limits that are neared, with their working. */
    public List<Section> sections() {
        if (nearing.isEmpty()) {
            return List.of();
        }
        List<Figure> figures = nearing.stream()
                .map(n -> new Figure(
                        "nearing." + n.what(),
                        n.what() + " down to " + n.limit().text(),
                        "about " + Moment.clock(n.at()) + " at this pace",
                        null,
                        "",
                        n.working()))
                .toList();
        return List.of(new Section("nearing", "Weather at this pace", figures));
    }
}
