package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Draw;
import screedbook.entry.Ref;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.tally.Redrawn;
import screedbook.tally.Samples;
import screedbook.tally.Totals;

/** Rules about random places and what was taken there. */
final class SampleRules {
    private static final String LOTS = "the job's lots";

    static final List<Rule> ALL = List.of(
            new Rule(
                    "place-without-sample",
                    Sort.MISSING,
                    "Of every random place that the paving has come to something is taken.",
                    SampleRules::missed),
            new Rule(
                    "sample-instead",
                    Sort.MISSING,
                    "A sample that is taken elsewhere than at its random place says why, and who allowed it.",
                    SampleRules::instead),
            new Rule(
                    "sample-number-again",
                    Sort.DOES_NOT_ADD_UP,
                    "The number of a sample is used once.",
                    SampleRules::again),
            new Rule(
                    "seed-differs",
                    Sort.DOES_NOT_ADD_UP,
                    "The random places of a lot are those that its seed gives.",
                    SampleRules::seed));

    private SampleRules() {}

    /** A place is missed once the paving is in another sublot, or the shift is closed. */
    private static List<Mark> missed(Look look) {
        List<Mark> marks = new ArrayList<>();
        Optional<Samples> samples = look.samples();
        for (Samples.Place place : samples.map(Samples::places).orElse(List.of())) {
            boolean left = look.day().closed()
                    || samples.get()
                            .filling()
                            .newest(place.where().mix())
                            .filter(w -> !w.equals(place.where()))
                            .isPresent();
            if (place.taken().isEmpty() && left) {
                marks.add(new Mark(
                        place.draw().ref(),
                        "random place of " + place.name()
                                + at(look, place.draw().entry()) + ": nothing taken",
                        "one for each random place",
                        LOTS,
                        "a sample, a core or a reading that names it"));
            }
        }
        return marks;
    }

    private static String at(Look look, Draw draw) {
        Draw.Reached r = draw.reached();
        String load = look.tickets().stream()
                .filter(t -> t.ref().equals(r.of()))
                .findFirst()
                .map(Look::name)
                .orElse("load " + r.of());
        return (r.of() == null ? "" : ", " + load)
                + (r.place() == null ? "" : ", " + r.place())
                + (r.fromLeft() == null ? "" : ", " + r.fromLeft().text() + " from left");
    }

    private static List<Mark> instead(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Samples.Place place : look.samples().map(Samples::places).orElse(List.of())) {
            for (Standing<?> each : place.taken()) {
                if (each.entry() instanceof Sample s) {
                    moved(look, place.draw(), each, s).ifPresent(marks::add);
                }
            }
        }
        for (Standing<Sample> each : look.day().standing(Sample.class)) {
            Sample.Origin o = each.entry().origin();
            boolean told = marks.stream().anyMatch(m -> m.of().contains(each.ref()));
            if (!told && o.insteadOf() != null && o.allowedBy() == null) {
                marks.add(
                        mark(each, name(each) + " instead of " + o.insteadOf() + ", allowed by: not noted", List.of()));
            }
        }
        return marks;
    }

    /** Taken of another load than the one in which the place lies. */
    private static Optional<Mark> moved(Look look, Standing<Draw> draw, Standing<?> sample, Sample s) {
        Ref load = draw.entry().reached().of();
        String ticket = load == null
                ? null
                : look.day()
                        .find(load)
                        .filter(t -> t.entry() instanceof Ticket)
                        .map(t -> ((Ticket) t.entry()).paper().number())
                        .orElse(null);
        String taken = s.origin().ticket();
        boolean other = ticket != null && taken != null && !Objects.equals(ticket, taken);
        if (!other || s.origin().allowedBy() != null && s.origin().insteadOf() != null) {
            return Optional.empty();
        }
        String seen = name(sample) + " of ticket " + taken + ", its random place lies in ticket " + ticket
                + (s.origin().insteadOf() == null ? ", why: not noted" : "")
                + (s.origin().allowedBy() == null ? ", allowed by: not noted" : "");
        return Optional.of(mark(sample, seen, List.of(draw.ref())));
    }

    private static Mark mark(Standing<?> sample, String seen, List<Ref> more) {
        List<Ref> of = new ArrayList<>(List.of(sample.ref()));
        of.addAll(more);
        return new Mark(
                of,
                seen,
                "a sample is taken at its random place",
                "23 CFR 637.205(e): samples are random",
                "what it stands for instead, and who allowed it");
    }

    static String name(Standing<?> sample) {
        return sample.entry() instanceof Sample s && s.what().sample() != null
                ? "sample " + s.what().sample()
                : "sample at " + sample.ref();
    }

    private static List<Mark> again(Look look) {
        return look.samples().map(Samples::again).orElse(List.of()).stream()
                .filter(s -> here(look, s))
                .map(s -> new Mark(
                        s.ref(),
                        name(s) + ": the number stands at "
                                + look.samples()
                                        .get()
                                        .of(s.entry().what().sample())
                                        .map(t -> t.sample().line().shift() + " "
                                                + t.sample().ref())
                                        .orElse("another sample"),
                        "each number once",
                        "NETTCP guide for test report forms",
                        "another number"))
                .toList();
    }

    static boolean here(Look look, Standing<?> each) {
        return each.line().shift().equals(look.day().shift());
    }

    private static List<Mark> seed(Look look) {
        List<Mark> marks = new ArrayList<>();
        Optional<Totals> totals = look.totals();
        for (Redrawn each : totals.map(t -> Redrawn.of(look.day(), t.before())).orElse(List.of())) {
            for (String differs : each.differs()) {
                marks.add(new Mark(
                        each.closed().ref(),
                        "lot " + each.closed().entry().lot() + " of "
                                + each.closed().entry().mix() + ": " + differs,
                        "the numbers that the seed gives",
                        "README.txt of the job, random places",
                        "places as the seed gives them"));
            }
        }
        return marks;
    }
}
