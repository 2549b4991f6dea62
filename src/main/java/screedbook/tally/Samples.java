package screedbook.tally;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import screedbook.entry.Core;
import screedbook.entry.Custody;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Gauge;
import screedbook.entry.Note;
import screedbook.entry.Result;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.YesNo;
import screedbook.job.Job;

/** Everything that was sampled over all shifts up to this one, with what it stands for. */
public final class Samples {
    private final SoFar soFar;
    private final Filling filling;
    private final Belonging belonging;
    private final Densities densities;
    private final Map<String, Taken> taken = new LinkedHashMap<>();
    private final List<Standing<Core>> cores;
    private final Map<String, List<Standing<Result>>> results;
    private final List<Standing<Sample>> again = new ArrayList<>();

    private Samples(Day day, Job job, ToDate before) {
        this.soFar = new SoFar(day, before);
        this.filling = Filling.of(day, job, before);
        this.belonging = new Belonging(job, soFar, filling);
        Map<String, List<Standing<Custody>>> hands = by(soFar.all(Custody.class), Custody::sample);
        this.results = by(soFar.all(Result.class), Result::sample);
        this.cores = soFar.all(Core.class);
        for (Standing<Sample> each : soFar.all(Sample.class)) {
            String number = each.entry().what().sample();
            if (number != null && taken.containsKey(number)) {
                again.add(each);
            } else if (number != null) {
                taken.put(number, taken(each, number, hands.getOrDefault(number, List.of())));
            }
        }
        this.densities = new Densities(job, soFar, belonging, filling, results);
    }

    /** The samples, cores and readings of all shifts up to a day. */
    public static Samples of(Day day, Job job, ToDate before) {
        return new Samples(day, job, before);
    }

    private static <E extends Entry> Map<String, List<Standing<E>>> by(
            List<Standing<E>> entries, Function<E, String> number) {
        Map<String, List<Standing<E>>> found = new HashMap<>();
        for (Standing<E> each : entries) {
            found.computeIfAbsent(number.apply(each.entry()), n -> new ArrayList<>())
                    .add(each);
        }
        return found;
    }

    private Taken taken(Standing<Sample> sample, String number, List<Standing<Custody>> hands) {
        List<Standing<Result>> told = results.getOrDefault(number, List.of());
        return new Taken(
                number,
                sample,
                List.copyOf(hands),
                List.copyOf(told),
                told.stream().noneMatch(r -> r.entry().closes() != YesNo.NO),
                belonging.of(sample));
    }

    /** How the lots filled. */
    Belonging belonging() {
        return belonging;
    }

    public Filling filling() {
        return filling;
    }

    /** Every sample, in the order in which they were taken. */
    public List<Taken> all() {
        return List.copyOf(taken.values());
    }

    /** The samples that no result has closed. */
    public List<Taken> open() {
        return taken.values().stream().filter(Taken::open).toList();
    }

    public Optional<Taken> of(String number) {
        return Optional.ofNullable(taken.get(number));
    }

    /** Samples under a number that was used before. */
    public List<Standing<Sample>> again() {
        return List.copyOf(again);
    }

    /** Cores of which no density is known yet. */
    public List<Standing<Core>> openCores() {
        return cores.stream().filter(c -> !densities.told(c.entry())).toList();
    }

    /** Whether a number is that of a sample or a core. */
    public boolean known(String number) {
        return taken.containsKey(number)
                || cores.stream().anyMatch(c -> number.equals(c.entry().cut().core()));
    }

    public Densities densities() {
        return densities;
    }

    /** The sublot that an entry belongs to, where that can be told. */
    public Optional<Filling.Where> where(Standing<?> each) {
        return belonging.of(each);
    }

    /** The same of an entry of this shift that is being keyed. */
    public Optional<Filling.Where> where(Entry keyed) {
        return belonging.of(keyed, soFar.day().shift());
    }

    /** How much was taken of a sublot at random places, over all shifts: samples, cores and readings that say so. */
    int atRandom(Filling.Where where) {
        long sampled = taken.values().stream()
                .filter(t -> t.where().filter(where::equals).isPresent())
                .map(t -> t.sample().entry())
                .filter(s -> s.what().atRandom() == YesNo.YES || s.origin().draw() != null)
                .count();
        long tested = Stream.<Standing<?>>concat(cores.stream(), soFar.all(Gauge.class).stream())
                .filter(s -> s.entry() instanceof Core c
                        ? c.spot().atRandom() == YesNo.YES
                        : ((Gauge) s.entry()).spot().atRandom() == YesNo.YES)
                .filter(s -> belonging.of(s).filter(where::equals).isPresent())
                .count();
        return (int) (sampled + tested);
    }

    /** Whether anything of lots, samples or densities is in the record. */
    public boolean nothing() {
        return taken.isEmpty()
                && soFar.all(Draw.class).isEmpty()
                && soFar.all(Core.class).isEmpty()
                && soFar.all(Gauge.class).isEmpty()
                && soFar.all(Result.class).isEmpty();
    }

    /** A random place that was reached in this shift, with what was taken there. */
    public record Place(Standing<Draw> draw, List<Standing<?>> taken) {
        public Filling.Where where() {
            Draw d = draw.entry();
            return new Filling.Where(d.mix(), d.lot(), d.reached().sublot());
        }

        /** Which of the sublot's draws it is. */
        public String name() {
            Integer nth = draw.entry().reached().nth();
            return where().text() + (nth == null || nth == 1 ? "" : " draw " + nth);
        }
    }

    /**
     * The random places of this shift. What names a place was taken there; what names none belongs to the oldest place of its
     * sublot that has nothing; a note tagged sample, later than a place, to the oldest one that still has nothing.
     */
    public List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Standing<Draw> each : soFar.day().standing(Draw.class)) {
            Draw d = each.entry();
            if (d.step() == Draw.Step.REACHED && d.lot() != null && d.reached().sublot() != null && d.mix() != null) {
                places.add(new Place(each, new ArrayList<>()));
            }
        }
        List<Standing<?>> free = new ArrayList<>();
        for (Standing<?> each : sampled()) {
            Optional<Place> named = places.stream()
                    .filter(p -> each.entry() instanceof Sample s
                            && p.draw().ref().equals(s.origin().draw()))
                    .findFirst();
            named.ifPresentOrElse(p -> p.taken().add(each), () -> free.add(each));
        }
        for (Standing<?> each : free) {
            where(each)
                    .flatMap(w -> places.stream()
                            .filter(p -> p.taken().isEmpty() && p.where().equals(w))
                            .findFirst())
                    .ifPresent(p -> p.taken().add(each));
        }
        notes(places);
        return List.copyOf(places);
    }

    private void notes(List<Place> places) {
        for (Standing<Note> note : soFar.day().standing(Note.class)) {
            List<String> tags = note.entry().tags();
            boolean sample =
                    tags != null && tags.stream().anyMatch(t -> t.strip().equalsIgnoreCase("sample"));
            if (sample) {
                places.stream()
                        .filter(p -> p.taken().isEmpty())
                        .filter(p -> !note.order()
                                .toInstant()
                                .isBefore(p.draw().order().toInstant()))
                        .findFirst()
                        .ifPresent(p -> p.taken().add(note));
            }
        }
    }

    /** What was taken in this shift at a random place: a sample, else a core or a reading that says so. */
    private List<Standing<?>> sampled() {
        List<Standing<?>> all = new ArrayList<>(soFar.day().standing(Sample.class));
        soFar.day().standing(Core.class).stream()
                .filter(c -> c.entry().spot().atRandom() == YesNo.YES)
                .forEach(all::add);
        soFar.day().standing(Gauge.class).stream()
                .filter(g -> g.entry().spot().atRandom() == YesNo.YES)
                .forEach(all::add);
        return all;
    }

    /** Whether an entry is of this shift. */
    boolean here(Standing<?> each) {
        return soFar.here(each);
    }

    /** The lots of which something was sampled, cut or found in this shift. */
    Map<String, Filling.Where> touched() {
        Map<String, Filling.Where> lots = new HashMap<>();
        Stream.concat(
                        all().stream()
                                .filter(t ->
                                        here(t.sample()) || t.results().stream().anyMatch(this::here))
                                .flatMap(t -> t.where().stream()),
                        densities.all().stream()
                                .filter(d -> here(d.of()) || here(d.from()))
                                .flatMap(d -> d.where().stream()))
                .forEach(w -> lots.put(Lot.name(w.mix(), w.lot()), w));
        return lots;
    }

    /** Two are the same when they hold the same samples, with all that was told of each. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Samples s && taken.equals(s.taken) && again.equals(s.again);
    }

    @Override
    public int hashCode() {
        return 31 * taken.hashCode() + again.hashCode();
    }
}
