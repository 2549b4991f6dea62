package screedbook.season;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import screedbook.check.InShort;
import screedbook.entry.Damage;
import screedbook.entry.Foreign;
import screedbook.entry.Line;
import screedbook.entry.ShiftId;
import screedbook.entry.Unreadable;
import screedbook.entry.Written;
import screedbook.job.Job;
import screedbook.report.SeasonJob;
import screedbook.report.SeasonPart;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.Figure;
import screedbook.tally.PlannedWork;
import screedbook.tally.Section;

/** One job's shifts between two dates, read in turn and taken together. */
public final class Season {
    /** What parts there are, in the order in which they are told. */
    public static final List<String> PARTS = List.of("shift", "day", "week", "month", "job", "mix", "pull", "lift");

    private static final Map<String, String> GROUPS =
            Map.of("mix", "loads.mix.", "pull", "loads.pull.", "lift", "loads.lift.");

    private final Path folder;
    private final Consumer<SeasonPart> told;
    private final Map<Span.By, Span> open = new EnumMap<>(Span.By.class);
    private final List<InShort> shifts = new ArrayList<>();
    private final List<Damage> damages = new ArrayList<>();
    private final List<String> notRead = new ArrayList<>();
    private Job job;
    private String id;

    private Season(Path folder, Consumer<SeasonPart> told) {
        this.folder = folder;
        this.told = told;
        this.id = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
    }

    /**
     * Reads a job.
     *
     * @param from the first date that counts
     * @param until the last date that counts
     * @param read is told of every shift that was read
     * @param told is given each part as soon as its last shift was read; a job's own parts at the end
     * @return the job's page without the parts
     */
    public static SeasonJob read(
            Path folder, LocalDate from, LocalDate until, Consumer<ShiftId> read, Consumer<SeasonPart> told) {
        Season season = new Season(folder, told);
        Shelf.at(folder).each(from, until, read, season::shift);
        return season.end();
    }

    private void shift(ShiftFile file) {
        ShiftId shift = file.read().shift();
        file.ground().job().ifPresent(known -> job = known);
        file.day().written().stream()
                .flatMap(w ->
                        w instanceof Line line ? Optional.of(line.job()).stream() : Optional.<String>empty().stream())
                .findFirst()
                .ifPresent(named -> id = named);
        List<Section> sections = Extras.of(file);
        for (Span.By by : Span.By.values()) {
            Span span = open.get(by);
            if (span != null && !span.takes(shift)) {
                told.accept(span.part(id, List.of()));
                span = null;
            }
            if (span == null) {
                span = new Span(by, by.of(shift));
                open.put(by, span);
            }
            span.add(shift, sections);
        }
        shifts.add(InShort.of(
                file.day(),
                file.totals(),
                file.findings(),
                file.read().damages().size()));
        damages.addAll(file.read().damages());
        file.day().uncounted().forEach(written -> notRead.add(told(shift, written)));
    }

    /** Where a line stands that is in no total, and why. */
    static String told(ShiftId shift, Written written) {
        String why = written instanceof Foreign foreign
                ? "of a kind that this program does not know: " + foreign.kind()
                : ((Unreadable) written).reason();
        return shift + " " + written.book() + " line " + written.row() + ": " + why;
    }

    private SeasonJob end() {
        for (Span.By by : Span.By.values()) {
            if (open.containsKey(by) && by != Span.By.JOB) {
                told.accept(open.get(by).part(id, List.of()));
            }
        }
        if (open.containsKey(Span.By.JOB)) {
            SeasonPart whole = open.get(Span.By.JOB).part(id, plan());
            told.accept(whole);
            GROUPS.keySet().stream()
                    .sorted(Comparator.comparing(PARTS::indexOf))
                    .forEach(by -> groups(by, whole));
        }
        String name = job == null ? id : job.name();
        return new SeasonJob(
                id,
                name,
                folder.toString(),
                List.of(),
                List.copyOf(shifts),
                List.copyOf(damages),
                List.copyOf(notRead));
    }

    private List<Section> plan() {
        return job == null ? List.of() : PlannedWork.of(job, product -> Optional.empty());
    }

    /** The job's figures whose id ends with a mix, a pull or a lift. */
    private void groups(String by, SeasonPart whole) {
        Set<String> names = new LinkedHashSet<>();
        String head = GROUPS.get(by);
        whole.sections()
                .forEach(s -> s.figures().forEach(f -> {
                    if (f.id().startsWith(head)) {
                        names.add(f.id().substring(head.length()));
                    }
                }));
        for (String name : names) {
            List<Section> sections = new ArrayList<>();
            for (Section section : whole.sections()) {
                List<Figure> its = section.figures().stream()
                        .filter(f -> f.id().endsWith("." + name))
                        .toList();
                if (!its.isEmpty()) {
                    sections.add(new Section(section.id(), section.heading(), its));
                }
            }
            if (by.equals("lift")) {
                LiftRates.of(whole.sections(), name).ifPresent(sections::add);
            }
            told.accept(new SeasonPart(by, name, id, whole.from(), whole.to(), whole.shifts(), List.copyOf(sections)));
        }
    }
}
