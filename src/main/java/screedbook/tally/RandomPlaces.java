package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import screedbook.calc.RandomNumber;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/**
 * The lines about random places that a record still lacks: a lot that began, a place that was reached, the seed of a lot
 * that is full. A place is told with the load that holds it and not before, so that nobody can pave to it.
 */
public final class RandomPlaces {
    private final Job job;
    private final ToDate before;
    private final Function<String, Optional<String>> seeds;
    private final Supplier<String> fresh;
    private final Unit unit;
    private final List<Draw> known;
    private final List<Draw> owed = new ArrayList<>();
    private final Map<String, String> drawn = new HashMap<>();
    private final Map<String, Lotting> lottings = new HashMap<>();
    private final Map<Where, List<RandomPlace.Piece>> pieces = new HashMap<>();

    private record Where(String mix, int lot, int sublot) {}

    private RandomPlaces(
            Day day, Job job, ToDate before, Function<String, Optional<String>> seeds, Supplier<String> fresh) {
        this.job = job;
        this.before = before;
        this.seeds = seeds;
        this.fresh = fresh;
        this.unit = Measure.LOAD.unit(job.system());
        this.known = Stream.concat(before.draws().stream(), ToDate.draws(day).stream())
                .toList();
    }

    /** Whether this program draws the places of a job: it says what is drawn, and nobody else gives the numbers. */
    public static boolean drawn(Job job) {
        return job.lots() != null
                && job.lots().randomBy() != null
                && job.lots().seed() != Lots.Seed.GIVEN
                && Lotting.of(job).isPresent();
    }

    /**
     * What is to be written now, in order; nothing for a job that draws none, and for a shift that is closed.
     *
     * @param seeds the seed of a SHA-256, where this laptop keeps it
     * @param fresh draws a seed and keeps it; called once for each lot that begins
     */
    public static List<Draw> owed(
            Day day, Job job, ToDate before, Function<String, Optional<String>> seeds, Supplier<String> fresh) {
        if (!drawn(job) || day.closed()) {
            return List.of();
        }
        RandomPlaces places = new RandomPlaces(day, job, before, seeds, fresh);
        Loads.of(day, places.unit).loads().stream().filter(Load::laid).forEach(places::load);
        return List.copyOf(places.owed);
    }

    /**
     * What is to be written when a shift is closed: the seeds of lots that are over though they never filled, because the job
     * closes at night what is not full, or because the lots end with this shift.
     *
     * @param end whether no load of the job comes after this shift
     */
    public static List<Draw> closing(
            Day day, Job job, ToDate before, Function<String, Optional<String>> seeds, boolean end) {
        if (!drawn(job)) {
            return List.of();
        }
        RandomPlaces places = new RandomPlaces(day, job, before, seeds, () -> "");
        Filling filling = Filling.of(day, job, before);
        places.known.stream()
                .filter(d -> d.step() == Draw.Step.BEGUN && d.mix() != null && d.lot() != null)
                .filter(d -> end || filling.over(d.mix(), d.lot()))
                .forEach(d -> places.close(d.mix(), d.lot()));
        return List.copyOf(places.owed);
    }

    private void load(Load load) {
        String mix = load.ticket().entry().paper().mix();
        if (mix == null) {
            return;
        }
        BigDecimal inLoad = BigDecimal.ZERO;
        for (Lotting.Cut cut :
                lottings.computeIfAbsent(mix, this::earlier).add(load.placed().value())) {
            RandomPlace.Piece piece = new RandomPlace.Piece(load, cut, inLoad);
            inLoad = inLoad.add(cut.to()).subtract(cut.from());
            reach(mix, piece);
        }
    }

    private Lotting earlier(String mix) {
        return Filling.next(job, before, mix).orElseThrow();
    }

    private void reach(String mix, RandomPlace.Piece piece) {
        Lotting.Cut cut = piece.cut();
        begin(mix, cut.lot());
        Where where = new Where(mix, cut.lot(), cut.sublot());
        List<RandomPlace.Piece> all = pieces.computeIfAbsent(where, w -> new ArrayList<>());
        all.add(piece);
        int draws = job.lots().draws() == null ? 1 : job.lots().draws();
        for (int nth = 1; nth <= draws; nth++) {
            place(where, nth, all);
        }
        if (cut.fillsLot()) {
            close(mix, cut.lot());
        }
    }

    private void begin(String mix, int lot) {
        every().filter(d -> d.step() == Draw.Step.BEGUN && mix.equals(d.mix()) && d.lot() != null && d.lot() < lot)
                .map(Draw::lot)
                .toList()
                .forEach(older -> close(mix, older));
        if (find(Draw.Step.BEGUN, mix, lot).isPresent()) {
            return;
        }
        String seed = fresh.get();
        String sha256 = RandomNumber.sha256(seed);
        drawn.put(sha256, seed);
        Lots lots = job.lots();
        owed.add(Draw.begun(
                mix, lot, new Draw.Begun(RandomNumber.METHOD, sha256, lots.lot(), lots.sublot(), lots.draws())));
    }

    private void place(Where where, int nth, List<RandomPlace.Piece> all) {
        boolean told = every().anyMatch(d -> is(d, Draw.Step.REACHED, where.mix(), where.lot())
                && Integer.valueOf(where.sublot()).equals(d.reached().sublot())
                && Integer.valueOf(nth).equals(d.reached().nth()));
        Optional<String> seed = told ? Optional.empty() : seed(where.mix(), where.lot());
        seed.flatMap(s -> new RandomPlace(job, s, where.mix(), where.lot(), where.sublot(), nth).among(all))
                .ifPresent(reached -> owed.add(Draw.reached(where.mix(), where.lot(), reached)));
    }

    private void close(String mix, int lot) {
        if (find(Draw.Step.CLOSED, mix, lot).isEmpty()) {
            seed(mix, lot).ifPresent(seed -> owed.add(Draw.closed(mix, lot, seed)));
        }
    }

    private Optional<String> seed(String mix, int lot) {
        return find(Draw.Step.BEGUN, mix, lot)
                .map(d -> d.begun().seedSha256())
                .flatMap(sha256 -> Optional.ofNullable(drawn.get(sha256)).or(() -> seeds.apply(sha256)));
    }

    private Stream<Draw> every() {
        return Stream.concat(known.stream(), owed.stream());
    }

    private Optional<Draw> find(Draw.Step step, String mix, int lot) {
        return every().filter(d -> is(d, step, mix, lot)).findFirst();
    }

    private static boolean is(Draw draw, Draw.Step step, String mix, int lot) {
        return draw.step() == step
                && mix.equals(draw.mix())
                && Integer.valueOf(lot).equals(draw.lot());
    }
}
