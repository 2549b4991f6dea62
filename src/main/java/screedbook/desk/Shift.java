package screedbook.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.check.Acceptance;
import screedbook.check.AtThisPace;
import screedbook.check.Finding;
import screedbook.check.Findings;
import screedbook.check.Ground;
import screedbook.check.LeftToRoll;
import screedbook.check.ProfileClasses;
import screedbook.check.Sort;
import screedbook.check.TicketNumbers;
import screedbook.entry.Closing;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.tally.Rhythm;
import screedbook.tally.Section;
import screedbook.tally.Stoppage;
import screedbook.tally.Totals;

/**
 * The shift on the desk as one value: the day, its totals, its findings. Made anew only when a line was written or a
 * minute went by; drawing never works anything out again.
 *
 * @param marks the findings that stand beside an entry, by the entry's number
 * @param last the newest entry of each kind that counts
 * @param loadsUntilHeat how many loads of a mix come before the one that wants a temperature
 */
public record Shift(
        Msg.Page page,
        Job job,
        Totals totals,
        List<Finding> findings,
        Map<Ref, List<Finding>> marks,
        Map<Kind, Standing<?>> last,
        Map<String, Integer> loadsUntilHeat,
        Pictured pictured,
        AtThisPace ahead,
        LeftToRoll.Seen rolled,
        Seen seen,
        boolean writable) {
    /**
     * What the shift's screen tells of all entries and findings, counted once.
     *
     * @param open findings without an answer, by sort; sorts without any are left out
     * @param uncounted lines that could not be counted
     * @param closed whether this laptop's book is closed
     * @param over whether every book of the shift is closed
     * @param books what is to be said of books of other laptops that are closed where this one is not, or not where it is
     * @param stopped the stop of the paver that lasts, if one does
     * @param numbers of the tickets of this shift and of those before it
     */
    record Seen(
            Map<Ref, Standing<?>> entries,
            Map<Sort, Integer> open,
            int uncounted,
            boolean closed,
            boolean over,
            List<String> books,
            Optional<Stoppage> stopped,
            TicketNumbers numbers) {
        private static Seen of(Msg.Page page, List<Finding> findings) {
            Map<Ref, Standing<?>> entries = new HashMap<>();
            boolean closed = false;
            for (Standing<?> each : page.day().all()) {
                entries.put(each.ref(), each);
                closed |= each.entry() instanceof Closing && each.line().book().equals(page.book());
            }
            Map<Sort, Integer> open = new EnumMap<>(Sort.class);
            findings.stream().filter(f -> !f.answered()).forEach(f -> open.merge(f.sort(), 1, Integer::sum));
            return new Seen(
                    entries,
                    open,
                    page.day().uncounted().size(),
                    closed,
                    page.day().closed(),
                    books(page.day(), closed),
                    Stoppage.lasting(Stoppage.of(page.day())),
                    TicketNumbers.of(page.day(), page.before()));
        }

        private static List<String> books(Day day, boolean closed) {
            List<String> others = closed ? day.openBooks() : day.closedBooks();
            return others.stream()
                    .map(book -> (closed ? "not closed: " : "closed: ") + book)
                    .toList();
        }
    }

    static Shift of(Msg.Page page, Job fallback, boolean writable, OffsetDateTime now) {
        Job job = page.ground().job().orElse(fallback);
        Totals totals = ProfileClasses.added(
                Acceptance.added(Totals.of(page.day(), job, page.before(), now), page.ground()), page.day());
        AtThisPace ahead = AtThisPace.of(page.day(), job, page.ground().sheet(), totals, now);
        List<Finding> findings = new ArrayList<>(Findings.of(page.day(), Optional.of(totals), page.ground(), now));
        findings.sort(Comparator.comparing(Finding::answered).thenComparing(Finding::sort));
        return new Shift(
                page,
                job,
                totals,
                findings,
                marks(findings),
                last(page.day()),
                heat(page.day(), job),
                Pictured.of(page, totals, findings, job, ahead),
                ahead,
                LeftToRoll.Seen.of(page.day(), job),
                Seen.of(page, findings),
                writable);
    }

    private static Map<Kind, Standing<?>> last(Day day) {
        Map<Kind, Standing<?>> last = new EnumMap<>(Kind.class);
        for (Standing<?> each : day.all()) {
            boolean other = each.entry() instanceof Ticket t && t.fate().fate() == Ticket.End.OTHER_JOB;
            if (!each.struck() && !other) {
                last.put(each.line().kind(), each);
            }
        }
        return last;
    }

    private static Map<String, Integer> heat(Day day, Job job) {
        Set<String> mixes = new HashSet<>();
        job.mixes().forEach(m -> mixes.add(m.name()));
        day.standing(Ticket.class).forEach(t -> mixes.add(t.entry().paper().mix()));
        mixes.remove(null);
        Map<String, Integer> until = new HashMap<>();
        mixes.forEach(m -> until.put(m, Rhythm.loadsUntil(day, job, m)));
        return until;
    }

    /** Whether the next load of a mix wants a temperature; a mix that has not come yet does. */
    boolean heatDue(String mix) {
        return loadsUntilHeat.getOrDefault(mix, 0) == 0;
    }

    private static Map<Ref, List<Finding>> marks(List<Finding> findings) {
        Map<Ref, List<Finding>> marks = new HashMap<>();
        for (Finding finding : findings) {
            if (!finding.of().isEmpty()) {
                marks.computeIfAbsent(finding.of().get(0), r -> new ArrayList<>())
                        .add(finding);
            }
        }
        return marks;
    }

    /** What the shift comes to, and what comes of it if it goes on so. */
    List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        for (Section each : totals.sections()) {
            sections.add(each);
            if (each.id().equals("weather")) {
                sections.addAll(ahead.sections());
            }
        }
        return List.copyOf(sections);
    }

    Shift at(OffsetDateTime now) {
        return of(page, job, writable, now);
    }

    public ShiftId id() {
        return page.shift();
    }

    public Day day() {
        return page.day();
    }

    public Ground ground() {
        return page.ground();
    }

    List<Finding> marks(Ref ref) {
        return marks.getOrDefault(ref, List.of());
    }

    /** Findings that nobody has answered yet. */
    public List<Finding> open() {
        return findings.stream().filter(f -> !f.answered()).toList();
    }

    /** The stop of the paver that lasts, if one does. */
    Optional<Stoppage> stopped() {
        return seen.stopped();
    }

    /** Whether this laptop's book is closed. */
    boolean closed() {
        return seen.closed();
    }

    /** Whether every book of the shift is closed. */
    boolean over() {
        return seen.over();
    }

    /** An entry as it stands, by its number. */
    Optional<Standing<?>> find(Ref ref) {
        return Optional.ofNullable(seen.entries().get(ref));
    }

    Optional<Job> agreed() {
        return ground().job();
    }
}
