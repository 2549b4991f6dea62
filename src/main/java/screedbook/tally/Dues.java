package screedbook.tally;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Day;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.NoWork;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.entry.Weather;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.job.Lots;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** The checks that the job asks for: when the next is due, and how many were done of those that were. */
final class Dues {
    private final Day day;
    private final Job job;
    private final List<Load> loads;
    private final OffsetDateTime now;
    private final List<Due> dues = new ArrayList<>();

    private Dues(Day day, Job job, List<Load> loads, OffsetDateTime now) {
        this.day = day;
        this.job = job;
        this.loads = loads;
        this.now = now;
    }

    static List<Due> of(
            Day day, Job job, List<Load> loads, List<Shot> shots, Samples samples, ToDate before, OffsetDateTime now) {
        Dues made = new Dues(day, job, loads, now);
        if (day.standing(NoWork.class).isEmpty()) {
            made.heat();
            made.since(
                    "surface",
                    "surface temperature",
                    day.standing(Surface.class),
                    job.checks().surfaceEvery());
            made.since(
                    "weather",
                    "weather",
                    day.standing(Weather.class),
                    job.checks().weatherEvery());
            made.spread();
            made.tackSample(shots, before);
            made.sample(samples);
            made.dues.addAll(Wants.of(day, job, loads, samples, before, now));
        }
        return List.copyOf(made.dues);
    }

    private String source() {
        String source = job.checks().source();
        return source == null
                ? "the job's checks; common practice where it is silent, no source"
                : "the job's checks: " + source;
    }

    /** A check that is due or not, with nothing that is counted until then. */
    private void add(String id, String what, String when, boolean due, int done, int asked, Working working) {
        add(id, what, when, due, done, asked, working, null);
    }

    private void add(
            String id, String what, String when, boolean due, int done, int asked, Working working, BigDecimal left) {
        String shown = day.closed() ? "shift closed" : when;
        BigDecimal share = due ? BigDecimal.ZERO : left;
        dues.add(new Due(id, what, shown, due && !day.closed(), done, asked, working, share, List.of()));
    }

    private static BigDecimal share(BigDecimal left, BigDecimal of) {
        return left.divide(of.max(BigDecimal.ONE), MathContext.DECIMAL32);
    }

    private void heat() {
        if (job.checks().firstLoads() < 1 && job.checks().thenOneIn() < 1) {
            return;
        }
        Map<String, List<Rhythm.Turn>> mixes = new LinkedHashMap<>();
        List<Standing<Ticket>> placed = Rhythm.placed(loads);
        for (Rhythm.Turn turn : Rhythm.turns(placed, job)) {
            String mix = turn.ticket().entry().paper().mix();
            mixes.computeIfAbsent(mix == null ? "" : mix, m -> new ArrayList<>())
                    .add(turn);
        }
        if (mixes.isEmpty()) {
            mixes.put("", List.of());
        }
        mixes.forEach((mix, turns) -> heat(mix, turns, mixes.size() > 1, Rhythm.loadsUntil(placed, job, mix)));
    }

    private void heat(String mix, List<Rhythm.Turn> turns, boolean several, int until) {
        List<String> put = new ArrayList<>();
        List<Ref> entries = new ArrayList<>();
        int done = 0;
        int asked = 0;
        for (Rhythm.Turn turn : turns) {
            if (turn.counts()) {
                asked++;
                done += turn.done() ? 1 : 0;
                entries.add(turn.ticket().ref());
                put.add(turn.ticket().ref() + " load " + turn.place() + (turn.done() ? " done" : " not there"));
            }
        }
        String where = job.checks().heatWhere().word();
        Working working = new Working(
                "first " + job.checks().firstLoads() + " placed loads of a mix, then one in "
                        + job.checks().thenOneIn() + ", at the "
                        + (where.equals("both") ? "plant and the paver" : where),
                List.copyOf(put),
                List.copyOf(entries),
                source());
        String when = until == Rhythm.NEVER ? "no more asked" : until == 0 ? "NOW" : "in " + loads(until);
        String id = mix.isEmpty() ? "temperature" : "temperature." + mix;
        BigDecimal left = until == Rhythm.NEVER
                ? null
                : share(
                        BigDecimal.valueOf(until),
                        BigDecimal.valueOf(job.checks().thenOneIn()));
        add(id, several ? "temperature " + mix : "temperature", when, until == 0, done, asked, working, left);
    }

    private static String loads(int count) {
        return count + (count == 1 ? " load" : " loads");
    }

    /** A reading that is good for so many minutes, wanted from the first load to the last. */
    private <E extends Entry> void since(String id, String what, List<Standing<E>> readings, Amount every) {
        long minutes = every.value().longValue();
        if (minutes <= 0) {
            return;
        }
        OffsetDateTime last =
                readings.isEmpty() ? null : readings.get(readings.size() - 1).order();
        long left = last == null ? 0 : minutes - Duration.between(last, now).toMinutes();
        List<String> put = new ArrayList<>();
        readings.forEach(r -> put.add(r.ref() + " " + screedbook.entry.Moment.text(r.order())));
        put.add("now " + screedbook.entry.Moment.text(now));
        Working working = new Working(
                "good for " + minutes + " min from the last reading",
                List.copyOf(put),
                readings.stream().map(Standing::ref).toList(),
                source());
        String when = left <= 0 ? "NOW" : "in " + left + " min";
        BigDecimal share = share(BigDecimal.valueOf(left), BigDecimal.valueOf(minutes));
        add(id, what, when, left <= 0, readings.size(), asked(minutes), working, share);
    }

    private int asked(long minutes) {
        List<OffsetDateTime> times =
                loads.stream().filter(Load::laid).map(l -> l.ticket().order()).toList();
        if (times.isEmpty()) {
            return 0;
        }
        long span = Duration.between(times.get(0), times.get(times.size() - 1)).toMinutes();
        return (int) Math.max(1, 1 + span / minutes);
    }

    /** Tons since the last yield check, or note that says the spread rate was looked at. */
    private void spread() {
        Amount every = job.checks().yieldEvery();
        if (every == null || every.value().signum() <= 0 || every.unit() != Measure.LOAD.unit(job.system())) {
            return;
        }
        List<Standing<?>> checks = new ArrayList<>(day.standing(Yield.class));
        day.standing(Note.class).stream()
                .filter(n -> tagged(n.entry(), "spread rate") || tagged(n.entry(), "yield"))
                .forEach(checks::add);
        checks.sort(Comparator.comparing(c -> c.order().toInstant()));
        OffsetDateTime last =
                checks.isEmpty() ? null : checks.get(checks.size() - 1).order();
        Amount zero = new Amount(BigDecimal.ZERO, every.unit());
        Amount since = loads.stream()
                .filter(l -> last == null || l.ticket().order().toInstant().isAfter(last.toInstant()))
                .map(Load::placed)
                .reduce(zero, Amount::plus);
        Amount all = loads.stream().map(Load::placed).reduce(zero, Amount::plus);
        Amount rest = every.minus(since);
        boolean due = rest.value().signum() <= 0;
        Working working = new Working(
                "once in " + every.text() + " placed, counted from the last yield check or note tagged spread rate",
                List.of("placed since " + since.text(), "placed in this shift " + all.text()),
                checks.stream().<Ref>map(Standing::ref).toList(),
                source());
        int asked = all.value().divideToIntegralValue(every.value()).intValue();
        add(
                "spread-rate",
                "spread rate",
                due ? "NOW" : "in " + rest.shown(0).text(),
                due,
                checks.size(),
                asked,
                working,
                share(rest.value(), every.value()));
    }

    private static boolean tagged(Note note, String tag) {
        return note.tags() != null
                && note.tags().stream()
                        .anyMatch(t -> t.strip().toLowerCase(Locale.ROOT).equals(tag));
    }

    private void tackSample(List<Shot> shots, ToDate before) {
        int wanted = job.checks().tackSamples();
        if (wanted <= 0) {
            return;
        }
        int taken = before.tackSamples() + tackSamples(day);
        boolean due = taken < wanted && !shots.isEmpty();
        String when = taken >= wanted ? "done" : due ? "NOW" : "with the first shot";
        List<Ref> entries = shots.stream().map(s -> s.tack().ref()).toList();
        Working working = new Working(
                "at least " + wanted + " in the job",
                List.of(
                        "in the shifts before " + before.tackSamples(),
                        "in this shift " + (taken - before.tackSamples())),
                entries,
                source());
        add(
                "tack-sample",
                "tack sample",
                when,
                due,
                taken - before.tackSamples(),
                due || taken >= wanted ? Math.max(0, wanted - before.tackSamples()) : 0,
                working);
    }

    /** Shots of a day of which a sample or a seal is noted. */
    static int tackSamples(Day day) {
        return (int) day.standing(Tack.class).stream()
                .filter(t ->
                        t.entry().after().sample() != null || t.entry().after().sealNumber() != null)
                .count();
    }

    private void sample(Samples samples) {
        if (!day.standing(Draw.class).isEmpty()) {
            drawn(samples.places());
            return;
        }
        Optional.ofNullable(job.lots())
                .filter(l -> l.sublot() != null || l.lot() != null)
                .ifPresent(
                        lots -> sample("not yet", List.of(), List.of(), 0, "no random place is drawn for this shift"));
    }

    private void drawn(List<Samples.Place> places) {
        List<Samples.Place> open =
                places.stream().filter(p -> p.taken().isEmpty()).toList();
        String when =
                open.isEmpty() ? "not yet" : "NOW: " + where(open.get(0).draw().entry());
        List<String> put = places.stream()
                .map(p -> p.draw().ref() + " " + Told.line(p.draw().entry()))
                .toList();
        List<Ref> entries = places.stream().map(p -> p.draw().ref()).toList();
        sample(when, put, entries, places.size() - open.size(), "random places, told when a load comes to them");
    }

    private String where(Draw draw) {
        Draw.Reached r = draw.reached();
        String place = r.fromLeft() == null
                ? load(r.of())
                : (r.place() == null ? load(r.of()) : r.place()) + ", "
                        + r.fromLeft().text() + " from left";
        return "lot " + draw.lot() + " sublot " + r.sublot() + ", " + place;
    }

    /** As it stands on the paper that the driver hands over. */
    private String load(Ref of) {
        return day.find(of)
                .filter(s -> s.entry() instanceof Ticket)
                .map(s -> ((Ticket) s.entry()).paper().number())
                .map(number -> "ticket " + number)
                .orElse("load " + of);
    }

    private void sample(String when, List<String> put, List<Ref> entries, int done, String formula) {
        Lots lots = job.lots();
        List<String> all = new ArrayList<>();
        if (lots != null) {
            all.add("lot " + (lots.lot() == null ? "not set" : lots.lot().text()) + ", sublot "
                    + (lots.sublot() == null ? "not set" : lots.sublot().text()));
        }
        all.addAll(put);
        Working working = new Working(formula, List.copyOf(all), entries, "the job's lots");
        add("sample", "sample", when, when.startsWith("NOW"), done, put.size(), working);
    }
}
