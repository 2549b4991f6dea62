package screedbook.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Closing;
import screedbook.entry.Foreign;
import screedbook.entry.HandOver;
import screedbook.entry.Instrument;
import screedbook.entry.Line;
import screedbook.entry.Mat;
import screedbook.entry.Opening;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.Review;
import screedbook.entry.SetAside;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Straightedge;
import screedbook.entry.Surface;
import screedbook.entry.Tack;
import screedbook.entry.Ticket;
import screedbook.entry.Unreadable;
import screedbook.entry.Weather;
import screedbook.entry.Written;
import screedbook.job.Job;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Rules about the record itself: what stands late, what cannot be read, who wrote. */
final class RecordRules {
    static final List<Rule> ALL = List.of(
            new Rule("no-opening", Sort.MISSING, "A book begins with its opening.", RecordRules::noOpening),
            new Rule("no-close", Sort.MISSING, "A shift that is over is closed.", RecordRules::noClose),
            new Rule(
                    "days-without-shift",
                    Sort.LOOK_AGAIN,
                    "Every day of a job has a shift, if only to say that nothing was placed.",
                    RecordRules::daysWithout),
            new Rule(
                    "late-line",
                    Sort.LOOK_AGAIN,
                    "Nothing is written after the close but the review.",
                    RecordRules::late),
            new Rule("line-not-read", Sort.LOOK_AGAIN, "Every line can be read.", RecordRules::notRead),
            new Rule("set-aside", Sort.LOOK_AGAIN, "A file ends with a whole line.", RecordRules::aside),
            new Rule(
                    "adrift",
                    Sort.LOOK_AGAIN,
                    "A correction or an answer names an entry that is here.",
                    RecordRules::adrift),
            new Rule(
                    "amendment-not-read",
                    Sort.LOOK_AGAIN,
                    "Every value of an amendment can be read.",
                    RecordRules::slips),
            new Rule("other-units", Sort.LOOK_AGAIN, "Figures are in the job's units.", RecordRules::otherUnits),
            new Rule("writer-changed", Sort.MISSING, "Another writer begins with a hand-over.", RecordRules::writer),
            new Rule(
                    "reviewed-by-writer",
                    Sort.LOOK_AGAIN,
                    "A shift is reviewed by somebody who did not write it.",
                    RecordRules::review),
            new Rule(
                    "instrument-due",
                    Sort.OUTSIDE,
                    "An instrument is used before its next check is due.",
                    RecordRules::instrument));

    private RecordRules() {}

    private static List<Mark> noOpening(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Standing<?>> first = new HashMap<>();
        Set<String> opened = new LinkedHashSet<>();
        for (Standing<?> each : look.day().all()) {
            first.putIfAbsent(each.line().book(), each);
            if (each.entry() instanceof Opening) {
                opened.add(each.line().book());
            }
        }
        first.forEach((book, line) -> {
            if (!opened.contains(book)) {
                marks.add(new Mark(
                        line.ref(),
                        "book " + book + " has no opening",
                        "a book begins with its opening",
                        "record, format 1",
                        "an opening as line 1"));
            }
        });
        return marks;
    }

    private static List<Mark> noClose(Look look) {
        List<Standing<?>> all = look.day().all();
        if (look.now() == null || all.isEmpty() || look.day().closed()) {
            return List.of();
        }
        OffsetDateTime last = all.get(all.size() - 1).line().keyed();
        String where =
                look.day().closedInPart().orElse("not closed") + ", last line " + Look.clock(last) + ", since then";
        Amount since = Look.minutes(last, look.now());
        return Marks.judged(Marks.usual(Quantity.SILENCE), look.shift(), where, since, "").stream()
                .map(m -> new Mark(m.of(), m.seen(), "a shift that is over is closed", m.clause(), "a closing line")
                        .because(m.working()))
                .toList();
    }

    /** A report for each day, work or none, is common practice; it is asked about and never held against anybody. */
    private static List<Mark> daysWithout(Look look) {
        LocalDate here = look.day().shift().date();
        Optional<LocalDate> last = look.totals().stream()
                .flatMap(t -> t.before().shifts().stream())
                .map(ShiftId::date)
                .max(Comparator.naturalOrder());
        if (last.isEmpty() || !last.get().plusDays(1).isBefore(here)) {
            return List.of();
        }
        LocalDate from = last.get().plusDays(1);
        LocalDate to = here.minusDays(1);
        return List.of(new Mark(
                look.shift(),
                "no shift on " + from + (from.equals(to) ? "" : " to " + to),
                "a day on which nothing was placed has a shift that says so",
                "common practice, no source",
                "a shift of each day"));
    }

    private static List<Mark> late(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, OffsetDateTime> closed = new HashMap<>();
        for (Standing<?> each : look.day().all()) {
            Line line = each.line();
            OffsetDateTime close = closed.get(line.book());
            if (close != null && !(each.entry() instanceof Review)) {
                marks.add(new Mark(
                        line.ref(),
                        screedbook.entry.Told.kind(line.kind()) + " keyed " + Look.clock(line.keyed())
                                + ", the book was closed " + Look.clock(close),
                        "what comes after the close is late",
                        "record, format 1",
                        "keyed before the close"));
            }
            if (each.entry() instanceof Closing) {
                closed.put(line.book(), line.keyed());
            }
        }
        return marks;
    }

    private static List<Mark> notRead(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Written each : look.day().uncounted()) {
            String what = each instanceof Unreadable u
                    ? "cannot be read: " + screedbook.entry.Shown.text(u.reason())
                    : "is of a kind that this program does not know";
            boolean foreign = each instanceof Foreign;
            marks.add(new Mark(
                    look.shift(),
                    "line " + each.row() + " of book " + each.book() + " " + what,
                    "every line counts",
                    "record, format 1",
                    foreign ? "a program that knows the kind" : "a line of format 1"));
        }
        return marks;
    }

    private static List<Mark> aside(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<SetAside> s : look.day().standing(SetAside.class)) {
            String bytes = s.entry().byteCount() == null
                    ? "bytes"
                    : s.entry().byteCount().toPlainString() + " bytes";
            String file = s.entry().file() == null
                    ? ""
                    : " in " + screedbook.entry.Shown.text(s.entry().file());
            marks.add(new Mark(
                    s.ref(),
                    bytes + " behind the last whole line were set aside" + file,
                    "a file ends with a whole line",
                    "record, format 1",
                    "what stands there looked at and keyed again where it counts"));
        }
        return marks;
    }

    private static List<Mark> adrift(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Line line : look.day().adrift()) {
            marks.add(new Mark(
                    line.ref(),
                    screedbook.entry.Told.line(line.entry()) + ": no such entry",
                    "a correction names an entry of this shift",
                    "record, format 1",
                    "the book and number of an entry"));
        }
        return marks;
    }

    private static List<Mark> slips(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            for (var slip : each.slips()) {
                marks.add(new Mark(
                        each.ref(),
                        "amended " + slip.path() + " is " + screedbook.entry.Shown.text(slip.seen()),
                        "every value can be read; the value before stands",
                        "record, format 1",
                        slip.right()));
            }
        }
        return marks;
    }

    private static List<Mark> otherUnits(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            Optional<Job> job = look.job(each);
            if (!each.struck() && job.isPresent()) {
                for (Measured m : measured(each)) {
                    if (m.amount() != null
                            && m.amount().unit() != m.measure().unit(job.get().system())) {
                        marks.add(new Mark(
                                each.ref(),
                                m.what() + " " + m.amount().text(),
                                "figures are in the job's units, and never summed across units",
                                "job, units",
                                m.what() + " in "
                                        + m.measure().unit(job.get().system()).symbol()));
                    }
                }
            }
        }
        return marks;
    }

    /** A figure of an entry with what it measures. */
    private record Measured(String what, Amount amount, Measure measure) {}

    private static List<Measured> measured(Standing<?> each) {
        if (each.entry() instanceof Ticket t) {
            return List.of(
                    new Measured("net", t.weights().net(), Measure.LOAD),
                    new Measured("gross", t.weights().gross(), Measure.SCALE),
                    new Measured("tare", t.weights().tare(), Measure.SCALE),
                    new Measured("at the plant", t.heat().plant(), Measure.TEMPERATURE),
                    new Measured("at the paver", t.heat().paver(), Measure.TEMPERATURE));
        }
        if (each.entry() instanceof Surface s) {
            return List.of(new Measured("surface", s.surface(), Measure.TEMPERATURE));
        }
        if (each.entry() instanceof Weather w) {
            return List.of(
                    new Measured("air", w.air(), Measure.TEMPERATURE), new Measured("wind", w.wind(), Measure.SPEED));
        }
        if (each.entry() instanceof Tack t) {
            return List.of(
                    new Measured("before", t.gauge().before(), Measure.VOLUME),
                    new Measured("after", t.gauge().after(), Measure.VOLUME),
                    new Measured("used", t.gauge().used(), Measure.VOLUME),
                    new Measured("width", t.target().width(), Measure.WIDTH),
                    new Measured("temperature", t.gauge().material(), Measure.TEMPERATURE));
        }
        return List.of();
    }

    private static List<Mark> writer(Look look) {
        List<Mark> marks = new ArrayList<>();
        Map<String, Standing<?>> last = new HashMap<>();
        for (Standing<?> each : look.day().all()) {
            Standing<?> before = last.put(each.line().book(), each);
            boolean other = before != null
                    && each.line().who() != null
                    && before.line().who() != null
                    && !each.line().who().equals(before.line().who());
            if (other && !handedOver(before, each) && !(each.entry() instanceof Review)) {
                marks.add(new Mark(
                        each.ref(),
                        "written by " + each.line().who() + ", the line before by "
                                + before.line().who(),
                        "another writer begins with a hand-over",
                        "common practice",
                        "a hand-over to " + each.line().who() + " before this line"));
            }
        }
        return marks;
    }

    private static boolean handedOver(Standing<?> before, Standing<?> now) {
        boolean over = before.entry() instanceof HandOver h
                && (h.nextWho() == null || h.nextWho().equals(now.line().who()));
        return over || now.entry() instanceof HandOver || before.entry() instanceof Closing;
    }

    private static List<Mark> review(Look look) {
        Set<String> writers = new LinkedHashSet<>();
        List<Mark> marks = new ArrayList<>();
        for (Standing<?> each : look.day().all()) {
            if (!(each.entry() instanceof Review)) {
                writers.add(each.line().who());
            } else if (writers.contains(each.line().who())) {
                marks.add(new Mark(
                        each.ref(),
                        "reviewed by " + each.line().who() + ", who wrote lines of this shift",
                        "a second person reviews",
                        "common practice",
                        "a review by somebody who wrote none of it"));
            }
        }
        return marks;
    }

    private static List<Mark> instrument(Look look) {
        Map<String, Instrument> known = new HashMap<>();
        for (Standing<Opening> o : look.day().every(Opening.class)) {
            List<Instrument> all = o.entry().instruments();
            (all == null ? List.<Instrument>of() : all).forEach(i -> known.put(i.id(), i));
        }
        look.job().ifPresent(j -> j.instruments().forEach(i -> known.putIfAbsent(i.id(), i)));
        Set<String> said = new LinkedHashSet<>();
        List<Mark> marks = new ArrayList<>();
        look.tickets().forEach(t -> used(look, t, t.entry().heat().instrument(), known, said, marks));
        look.surfaces().forEach(s -> used(look, s, s.entry().instrument(), known, said, marks));
        look.day().standing(Mat.class).forEach(m -> used(look, m, m.entry().instrument(), known, said, marks));
        look.day().standing(Profile.class).forEach(p -> used(look, p, p.entry().instrument(), known, said, marks));
        look.day()
                .standing(Straightedge.class)
                .forEach(s -> used(look, s, s.entry().instrument(), known, said, marks));
        return marks;
    }

    private static void used(
            Look look,
            Standing<?> entry,
            String id,
            Map<String, Instrument> known,
            Set<String> said,
            List<Mark> marks) {
        Instrument instrument = known.get(id);
        Optional<Job> job = look.job(entry);
        if (instrument == null || instrument.due() == null || job.isEmpty() || said.contains(id)) {
            return;
        }
        LocalDate date = entry.order().atZoneSameInstant(job.get().zone()).toLocalDate();
        if (date.isAfter(instrument.due()) && !InstrumentRules.fitBefore(look, id, entry)) {
            said.add(id);
            Ref of = entry.ref();
            marks.add(new Mark(
                    of,
                    "instrument " + id + " used on " + date + ", its check was due " + instrument.due(),
                    "an instrument is used before its next check is due",
                    "job, instruments",
                    "a check of the instrument by " + date));
        }
    }
}
