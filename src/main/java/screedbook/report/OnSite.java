package screedbook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.Moment;
import screedbook.entry.Safety;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.tally.Figure;
import screedbook.tally.Section;
import screedbook.tally.Stoppage;

/** The parts of the page that tell of mat, joints, stops, people and instruments; nothing where there is none. */
final class OnSite {
    private final DayPaper paper;
    private final Leaf leaf;

    OnSite(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    /** Figures of a section by their permanent words. */
    private Map<String, Figure> figures(String section) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        paper.totals().sections().stream()
                .filter(s -> s.id().equals(section))
                .map(Section::figures)
                .flatMap(List::stream)
                .forEach(f -> figures.put(f.id(), f));
        return figures;
    }

    private static String text(Map<String, Figure> figures, String id) {
        return Optional.ofNullable(figures.get(id)).map(Figure::text).orElse("-");
    }

    /** Ends of the words that begin with a head: {@code along} of {@code straightedge-most.along}. */
    private static List<String> tails(Map<String, Figure> figures, String head) {
        return figures.keySet().stream()
                .filter(id -> id.startsWith(head + "."))
                .map(id -> id.substring(head.length() + 1))
                .toList();
    }

    /** The heat of the mat, thermal profiles, rollers, joints, straightedge. */
    void mat() {
        List<String> lines = new ArrayList<>();
        temperatures(lines);
        profiles(lines);
        figures("rolling").values().forEach(f -> lines.add(f.label() + ": " + f.text()));
        joints(lines);
        straightedge(lines);
        say("MAT AND JOINTS", lines);
    }

    private void say(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            leaf.heading(heading);
            lines.forEach(line -> leaf.say(1, line));
        }
    }

    private void temperatures(List<String> lines) {
        Map<String, Figure> mat = figures("mat");
        for (String when : tails(mat, "mat-temperature-readings")) {
            String count = text(mat, "mat-temperature-readings." + when);
            String least = text(mat, "mat-temperature-least." + when);
            lines.add("mat " + when + ": "
                    + (count.equals("1")
                            ? least
                            : count + " readings, " + least + " to "
                                    + text(mat, "mat-temperature-most." + when) + ", mean "
                                    + text(mat, "mat-temperature-mean." + when)));
        }
    }

    private void profiles(List<String> lines) {
        Map<String, Figure> of = figures("profiles");
        if (!of.isEmpty()) {
            Map<String, Figure> classes = figures("profile-classes");
            String least = text(of, "profile-difference-least");
            String most = text(of, "profile-difference-most");
            lines.add("thermal profiles: " + text(of, "profile-difference-readings") + ", hottest less coldest "
                    + (least.equals(most) ? least : least + " to " + most)
                    + (classes.isEmpty()
                            ? ""
                            : "; moderate " + text(classes, "profiles-moderate") + ", severe "
                                    + text(classes, "profiles-severe")));
        }
    }

    private void joints(List<String> lines) {
        Map<String, Figure> joints = figures("joints");
        for (String side : tails(joints, "joint-length")) {
            String tacked = joints.containsKey("joint-tacked." + side) ? text(joints, "joint-tacked." + side) : "none";
            lines.add(
                    "joint along, " + side + ": " + text(joints, "joint-length." + side) + ", face tacked: " + tacked);
        }
        if (joints.containsKey("joints-across")) {
            lines.add("joints across: " + text(joints, "joints-across"));
        }
    }

    private void straightedge(List<String> lines) {
        Map<String, Figure> edges = figures("straightedge");
        for (String laid : tails(edges, "straightedge-readings")) {
            lines.add("straightedge " + laid + ": readings " + text(edges, "straightedge-readings." + laid)
                    + ", widest gap " + text(edges, "straightedge-most." + laid));
        }
    }

    /** Each stop, under what they come to. */
    void stops() {
        List<Stoppage> all = Stoppage.of(paper.day());
        if (all.isEmpty()) {
            return;
        }
        Map<String, Figure> figures = figures("stops");
        leaf.heading("STOPS OF THE PAVER, " + text(figures, "stops") + ", " + text(figures, "stop-minutes"));
        all.forEach(s -> leaf.say(1, told(s)));
    }

    private static String told(Stoppage s) {
        Stop stop = s.stop().entry();
        String until = s.lasts() ? ", no restart noted" : " to " + Moment.clock(s.ended());
        String minutes =
                s.lasts() ? "" : s.minutes(null).map(m -> "  " + m + " min").orElse("");
        String cause =
                stop.cause() == null ? "cause not noted" : stop.cause().word().replace('-', ' ');
        return Moment.clock(s.stop().time()) + until + minutes + "  "
                + Entries.phrases(
                        "", cause,
                        "", stop.text(),
                        "at", stop.place() == null ? null : stop.place().text(),
                        "trucks waiting:",
                                stop.waiting() == null ? null : stop.waiting().toString(),
                        "tickets", stop.tickets(),
                        "", stop.action(),
                        "", s.restart().map(r -> r.entry().action()).orElse(null));
    }

    /** People, machines, instruments and what was seen of safety. */
    void people() {
        List<String> lines = new ArrayList<>();
        crew("people", lines);
        crew("machines", lines);
        figures("instruments").values().forEach(f -> lines.add(f.label() + ": " + f.text()));
        for (Standing<Safety> each : paper.day().standing(Safety.class)) {
            Safety s = each.entry();
            lines.add((each.time() == null ? "" : Moment.clock(each.time()) + " ") + "safety"
                    + (s.about() == null ? "" : ", " + s.about().word()) + ": "
                    + Entries.phrases("", s.text(), "at", s.location(), "told to", s.toldTo(), "done:", s.action()));
        }
        say("PEOPLE, MACHINES, INSTRUMENTS, SAFETY", lines);
    }

    private void crew(String what, List<String> lines) {
        Map<String, Figure> crew = figures("crew");
        List<String> named = new ArrayList<>();
        for (String name : tails(crew, "crew-" + what)) {
            named.add(text(crew, "crew-" + what + "." + name) + " " + name + " "
                    + text(crew, "crew-hours-" + what + "." + name));
        }
        if (!named.isEmpty()) {
            lines.add(what + ": " + String.join("; ", named));
        }
    }
}
