package screedbook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import screedbook.unit.Amount;

/** The parts of the line that tells of parts of loads, ticket numbers, areas, the mat, its yield, the joints, stops, trucks, crew, instruments and safety. */
final class SiteTold {
    private SiteTold() {}

    /** Empty for every other kind. */
    static List<String> parts(Entry entry) {
        List<String> parts = new ArrayList<>();
        if (entry instanceof Part p) {
            add(parts, p.of() == null ? null : "of " + p.of(), text(p.share()), on(p.pull(), p.lift()));
            add(parts, Told.run(p.from(), p.to()), p.place());
        } else if (entry instanceof Number n) {
            add(parts, n.number(), word(n.what()), n.plant(), n.saidBy() == null ? null : "said by " + n.saidBy());
        } else if (entry instanceof Area a) {
            add(
                    parts,
                    word(a.shape()),
                    Told.run(a.from(), a.to()),
                    widths(a),
                    a.area() == null ? null : text(a.area()));
            add(parts, word(a.counts()), on(a.pull(), a.lift()));
        } else if (entry instanceof Mat m) {
            add(parts, joined(text(m.mat()), word(m.taken())), text(m.place()), on(m.pull(), m.lift()), m.roller());
        } else if (entry instanceof Depth d) {
            String core = d.core() == null ? null : "core " + d.core();
            add(parts, joined(text(d.thickness()), word(d.state())), text(d.place()), on(d.pull(), d.lift()), core);
            add(parts, d.action());
        } else if (entry instanceof Yield y) {
            boolean tickets = y.firstTicket() != null || y.lastTicket() != null;
            String from = y.firstTicket() == null ? "?" : y.firstTicket();
            String to = y.lastTicket() == null ? "?" : y.lastTicket();
            add(parts, Told.run(y.from(), y.to()), on(y.pull(), y.lift()), y.area() == null ? null : text(y.area()));
            add(parts, tickets ? "tickets " + from + " to " + to : text(y.tons()), y.action());
        } else if (entry instanceof Profile p) {
            add(parts, Told.run(p.from(), p.to()), span(p.hottest(), p.coldest()), on(p.pull(), p.lift()));
            add(parts, p.sublot() == null ? null : "sublot " + p.sublot(), word(p.method()), p.cause());
        } else if (entry instanceof Rolling r) {
            String passes = r.passes() == null ? null : r.passes() + (r.passes() == 1 ? " pass" : " passes");
            add(parts, r.roller(), joined(word(r.task()), word(r.drums())), passes, span(r.matBegins(), r.matEnds()));
            add(parts, on(r.pull(), r.lift()), Told.run(r.from(), r.to()));
        } else if (entry instanceof Joint j) {
            joint(j, parts);
        } else if (entry instanceof Straightedge s) {
            String edge = s.edgeLength() == null ? null : "under " + text(s.edgeLength());
            String slope = s.crossSlope() == null ? null : "cross slope " + text(s.crossSlope());
            add(parts, joined(text(s.gap()), edge, word(s.laid())), slope, text(s.place()), on(s.pull(), s.lift()));
        } else if (entry instanceof Stop s) {
            String waiting = s.waiting() == null ? null : s.waiting() + (s.waiting() == 1 ? " truck" : " trucks");
            add(parts, word(s.cause()), s.text(), text(s.place()), waiting == null ? null : waiting + " waiting");
            add(parts, s.ended() == null ? null : "ended " + Moment.clock(s.ended()), s.action());
        } else if (entry instanceof Restart r) {
            add(parts, r.of() == null ? null : "after " + r.of(), text(r.place()));
            add(parts, r.joint() == YesNo.YES ? "joint made" : null, r.action());
        } else if (entry instanceof Truck t) {
            add(
                    parts,
                    joined(t.truck(), word(t.step())),
                    t.location(),
                    t.tare() == null ? null : "tare " + text(t.tare()),
                    t.gross() == null ? null : "gross " + text(t.gross()),
                    t.ticket() == null ? null : "ticket " + t.ticket());
        } else if (entry instanceof Crew c) {
            String count = c.howMany() == null ? null : c.howMany().toString();
            String hours = c.hours() == null ? null : c.hours().toPlainString() + " h each";
            add(parts, joined(count, c.named()), c.id(), hours, c.firm());
        } else if (entry instanceof InstrumentCheck i) {
            check(i, parts);
        } else if (entry instanceof Safety s) {
            add(parts, word(s.about()), s.text(), s.toldTo() == null ? null : "told " + s.toldTo(), s.action());
        }
        return parts;
    }

    /** {@code 12 to 0 ft wide}; one of them where the other was not measured. */
    private static String widths(Area a) {
        if (a.widthFrom() == null || a.widthTo() == null) {
            Amount width = a.widthFrom() == null ? a.widthTo() : a.widthFrom();
            return width == null ? null : text(width) + " wide";
        }
        return a.widthFrom().value().toPlainString() + " to " + text(a.widthTo()) + " wide";
    }

    private static void joint(Joint j, List<String> parts) {
        boolean along = j.run() == null || j.run() == Joint.Run.LONGITUDINAL;
        String where = along ? Told.run(j.from(), j.to()) : text(j.from());
        add(parts, word(j.run()), where, on(j.pull(), j.lift()));
        add(parts, j.heat() == null ? null : "other side " + j.heat().word());
        add(parts, j.tacked() == null ? null : j.tacked() == YesNo.YES ? "tacked" : "not tacked");
        add(parts, j.below() == null ? null : text(j.below()) + " off joint below");
    }

    private static void check(InstrumentCheck i, List<String> parts) {
        add(parts, i.instrument(), word(i.against()), i.shows() == null ? null : "shows " + text(i.shows()));
        add(parts, i.known() == null ? null : "should show " + text(i.known()));
        add(parts, i.densityCount() == null ? null : "count " + i.densityCount());
        add(parts, i.correlation() == null ? null : "correlation " + text(i.correlation()));
        add(parts, i.fit() == null ? null : i.fit() == YesNo.YES ? "fit" : "not fit");
    }

    /** {@code 298 and 261 °F}; one of them where the other was not noted. */
    private static String span(Amount first, Amount second) {
        if (first == null || second == null) {
            return first == null ? text(second) : text(first);
        }
        boolean alike = first.unit() == second.unit();
        return (alike ? first.value().toPlainString() : text(first)) + " and " + text(second);
    }

    private static String on(String pull, Integer lift) {
        return pull == null ? null : "pull " + pull + (lift == null ? "" : " lift " + lift);
    }

    private static String joined(String... words) {
        return String.join(
                " ", java.util.Arrays.stream(words).filter(Objects::nonNull).toList());
    }

    private static String text(Object value) {
        return value == null ? null : Told.value(value);
    }

    private static String word(Word word) {
        return word == null ? null : word.word().replace('-', ' ');
    }

    private static void add(List<String> parts, String... more) {
        for (String each : more) {
            if (each != null && !each.isEmpty()) {
                parts.add(each);
            }
        }
    }
}
