package screedbook.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import screedbook.entry.Core;
import screedbook.entry.Day;
import screedbook.entry.Ref;
import screedbook.entry.Sample;
import screedbook.entry.Standing;
import screedbook.entry.Told;

/** The section of samples: the open ones first, then what this shift tells of, random places, and lots drawn again. */
final class SampleSection {
    private final Day day;
    private final ToDate before;
    private final Samples samples;

    SampleSection(Day day, ToDate before, Samples samples) {
        this.day = day;
        this.before = before;
        this.samples = samples;
    }

    Section section() {
        Figures figures = new Figures();
        samples.open().forEach(t -> sample(figures, t));
        samples.openCores().forEach(c -> core(figures, c));
        samples.all().stream()
                .filter(t -> !t.open())
                .filter(t -> samples.here(t.sample())
                        || Stream.concat(t.results().stream(), t.hands().stream())
                                .anyMatch(samples::here))
                .forEach(t -> sample(figures, t));
        samples.places().forEach(p -> place(figures, p));
        Redrawn.of(day, before).forEach(r -> redrawn(figures, r));
        return figures.section("samples", "Samples");
    }

    private void sample(Figures figures, Taken t) {
        List<String> put = new ArrayList<>();
        put.add("taken " + t.sample().line().shift() + " " + t.sample().ref()
                + seal(t.sample().entry().keeping().sealNumber()));
        t.hands()
                .forEach(h -> put.add(
                        h.line().shift() + " " + h.ref() + " " + dash(h.entry().givenBy()) + " to "
                                + dash(h.entry().takenBy()) + seal(h.entry().sealNumber())));
        t.results()
                .forEach(r -> put.add(r.line().shift() + " " + r.ref() + " "
                        + dash(
                                r.entry().what() == null
                                        ? null
                                        : r.entry().what().word()) + " "
                        + dash(
                                r.entry().found() == null
                                        ? null
                                        : r.entry().found().toPlainString())));
        List<Ref> entries = Stream.concat(
                        Stream.of((Standing<?>) t.sample()), Stream.concat(t.hands().stream(), t.results().stream()))
                .filter(samples::here)
                .map(Standing::ref)
                .toList();
        String state = t.open() ? "open, with " + t.holder() : "closed, " + results(t);
        figures.text(
                "sample." + t.number(),
                "sample " + t.number(),
                state + standsFor(t.where()),
                new Working(
                        "stands for what was placed of its sublot; open until a result closes it",
                        List.copyOf(put),
                        entries,
                        "the record"));
    }

    private static String seal(String number) {
        return number == null ? ", no seal noted" : ", seal " + number;
    }

    private static String dash(String text) {
        return text == null ? "-" : text;
    }

    private static String results(Taken t) {
        return t.results().stream()
                .map(Standing::entry)
                .map(r -> dash(r.what() == null ? null : r.what().word()) + " "
                        + dash(r.found() == null ? null : r.found().toPlainString())
                        + (r.inUnit() == null ? "" : " " + r.inUnit()))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }

    private String standsFor(Optional<Filling.Where> where) {
        if (where.isEmpty()) {
            return "; its sublot cannot be told";
        }
        Filling.Where w = where.get();
        Optional<Lot.Sublot> sublot = samples.filling().sublot(w.mix(), w.lot(), w.sublot());
        return "; " + w.text()
                + sublot.map(s -> " stands for " + s.tons().text() + (s.over() ? "" : " so far") + ", " + s.loads())
                        .orElse("");
    }

    private void core(Figures figures, Standing<Core> core) {
        Core c = core.entry();
        String number = c.cut().core() == null ? core.ref().toString() : c.cut().core();
        String place = c.spot().place() == null ? "" : ", " + c.spot().place().text();
        figures.text(
                "core." + number,
                "core " + number,
                "open, no density told" + place + standsFor(samples.where(core)),
                new Working(
                        "open until its density is told",
                        List.of("cut " + core.line().shift() + " " + core.ref()),
                        samples.here(core) ? List.of(core.ref()) : List.of(),
                        "the record"));
    }

    private void place(Figures figures, Samples.Place p) {
        Integer nth = p.draw().entry().reached().nth();
        List<Ref> entries = new ArrayList<>(List.of(p.draw().ref()));
        p.taken().forEach(t -> entries.add(t.ref()));
        String taken = p.taken().isEmpty()
                ? "nothing taken"
                : String.join(
                        ", ", p.taken().stream().map(t -> "taken: " + called(t)).toList());
        figures.text(
                "random-place." + p.where().mix() + "." + p.where().lot() + "."
                        + p.where().sublot() + "." + (nth == null ? 1 : nth),
                "random place, " + p.name(),
                taken,
                new Working(
                        "what names the place, or is of its sublot",
                        List.of(Told.line(p.draw().entry())),
                        entries,
                        "the record"));
    }

    /** As it is marked: {@code core C-1}; what bears no mark of its own by its kind and line. */
    private static String called(Standing<?> taken) {
        if (taken.entry() instanceof Core c && c.cut().core() != null) {
            return "core " + c.cut().core();
        }
        if (taken.entry() instanceof Sample s && s.what().sample() != null) {
            return "sample " + s.what().sample();
        }
        return Told.kind(taken.entry().kind()) + " " + taken.ref();
    }

    private void redrawn(Figures figures, Redrawn r) {
        figures.text(
                "redrawn." + r.closed().entry().mix() + "." + r.closed().entry().lot(),
                "lot " + r.closed().entry().lot() + " of " + r.closed().entry().mix() + ", drawn again",
                r.differs().isEmpty()
                        ? r.places() + (r.places() == 1 ? " place" : " places") + " as the seed gives them"
                        : r.differs().size() + " told otherwise than the seed gives",
                new Working(
                        "every number of the lot's places drawn again from the seed that is told",
                        r.differs(),
                        List.of(r.closed().ref()),
                        "this program's own method; SHA-256 is FIPS 180-4"));
    }
}
