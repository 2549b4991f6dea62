package screedbook.tally;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Area;
import screedbook.entry.Day;
import screedbook.job.Job;
import screedbook.unit.Measure;

/**
 * What a shift adds up to, made in one go when a line was written. Struck entries never count; figures in the other
 * system's units are never summed.
 *
 * @param sections every figure with its working, for screen, page and files; empty sections are left out
 * @param tons loads and weights by all that they have in common
 * @param runs what was laid, pull by pull
 * @param turns the placed loads in the rhythm of their mix
 * @param road where all this was
 * @param yields how much of it went where, and how thick it was found
 * @param left entries or figures that are in no total, and why
 * @param before the shifts before this one
 * @param samples lots, samples and densities over all shifts up to this one
 */
public record Totals(
        List<Section> sections,
        List<Due> dues,
        List<Load> loads,
        List<Shot> shots,
        List<Tons> tons,
        List<Run> runs,
        List<Rhythm.Turn> turns,
        Roadwork road,
        Yields yields,
        List<Left> left,
        ToDate before,
        Samples samples) {
    /**
     * The totals of a day.
     *
     * @param before of the shifts before, as they stood when this one closes
     * @param now until when checks may be due; the time of the close for a closed shift
     */
    public static Totals of(Day day, Job job, ToDate before, OffsetDateTime now) {
        Loads loads = Loads.of(day, Measure.LOAD.unit(job.system()));
        List<Shot> shots = Shots.of(day, job);
        List<Tons> tons = Groups.of(loads, job);
        List<Run> runs = Runs.of(loads.loads(), day.standing(Area.class), job);
        SeenSections seen = new SeenSections(job);
        Section heat = seen.heat(loads.loads());
        Section weather = seen.weather(day);
        Section mat = seen.mat(day);
        MatSections rolled = new MatSections(day, job);
        SiteSections site = new SiteSections(day, job, now);
        List<Left> left = new ArrayList<>(loads.left());
        left.addAll(seen.left());
        left.addAll(PullArea.left(day, job, runs));
        List<Section> sections = new ArrayList<>(new TonsSections(job).of(tons));
        sections.add(new TonsSections(job).pay(tons, before));
        sections.add(Pace.of(day, job, tons.get(0), runs).section());
        sections.add(PlantSection.of(day, job, loads.loads()));
        sections.add(new RoadSections(job).spread(runs));
        Yields yields = Yields.of(day, job, loads.loads(), runs, before);
        sections.add(new YieldSections(job).yield(yields, loads.loads()));
        sections.add(new YieldSections(job).depth(yields.depths()));
        sections.add(new RoadSections(job).tack(shots));
        sections.add(heat);
        sections.add(mat);
        sections.add(rolled.profiles());
        sections.add(rolled.rolling());
        sections.add(site.joints());
        sections.add(site.straightedge());
        sections.add(HaulSection.of(job, loads.loads(), before));
        sections.add(weather);
        Samples samples = Samples.of(day, job, before);
        sections.add(new LotSection(day, job, samples).section());
        sections.add(new DensitySection(job, samples).section());
        sections.add(new SampleSection(day, before, samples).section());
        List<Due> dues = Dues.of(day, job, loads.loads(), shots, samples, before, now);
        sections.add(site.stops());
        sections.add(site.crew());
        sections.add(site.instruments());
        sections.add(checks(dues));
        sections.add(RecordSection.of(day, left));
        sections.removeIf(s -> s.figures().isEmpty());
        List<Rhythm.Turn> turns = Rhythm.turns(Rhythm.placed(loads.loads()), job);
        Roadwork road = Roadwork.of(day, job, runs, before);
        return new Totals(
                List.copyOf(sections),
                dues,
                loads.loads(),
                shots,
                tons,
                runs,
                turns,
                road,
                yields,
                List.copyOf(left),
                before,
                samples);
    }

    private static Section checks(List<Due> dues) {
        Figures figures = new Figures();
        for (Due due : dues) {
            if (due.asked() > 0 || due.done() > 0) {
                String text = due.done() + " done, " + due.asked() + " asked";
                figures.text("check." + due.id(), due.what(), text, due.working());
            }
        }
        return figures.section("checks", "Checks");
    }

    /** The same with a section more, behind that of the densities; an empty one is left out. */
    public Totals with(Section more) {
        if (more.figures().isEmpty()) {
            return this;
        }
        List<Section> all = new ArrayList<>(sections);
        int at = 0;
        for (int i = 0; i < all.size(); i++) {
            at = all.get(i).id().equals("density") ? i + 1 : at;
        }
        all.add(at == 0 ? all.size() : at, more);
        return new Totals(List.copyOf(all), dues, loads, shots, tons, runs, turns, road, yields, left, before, samples);
    }

    /** A figure by its permanent word. */
    public Optional<Figure> figure(String id) {
        return sections.stream()
                .flatMap(s -> s.figures().stream())
                .filter(f -> f.id().equals(id))
                .findFirst();
    }

    /** Loads and weights of one group: {@code tons(By.MIX, "12.5-70A")}. */
    public Optional<Tons> tons(Tons.By by, String of) {
        return tons.stream().filter(t -> t.by() == by && t.of().equals(of)).findFirst();
    }

    /** Loads and weights of the whole shift. */
    public Tons shift() {
        return tons(Tons.By.SHIFT, "").orElseThrow();
    }
}
