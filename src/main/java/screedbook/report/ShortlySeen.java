package screedbook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import screedbook.entry.Amend;
import screedbook.entry.Closing;
import screedbook.entry.Entry;
import screedbook.entry.Moment;
import screedbook.entry.Review;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Strike;
import screedbook.tally.Figure;
import screedbook.tally.Samples;
import screedbook.tally.Section;
import screedbook.tally.Stoppage;
import screedbook.tally.Taken;

/** What was seen, tested and corrected, each part of the page in a paragraph, for a first sheet that has no room for lists. */
final class ShortlySeen {
    private final DayPaper paper;
    private final Leaf leaf;

    ShortlySeen(DayPaper paper, Leaf leaf) {
        this.paper = paper;
        this.leaf = leaf;
    }

    private void say(String heading, List<String> said) {
        List<String> all = said.stream().filter(s -> !s.isEmpty()).toList();
        if (!all.isEmpty()) {
            leaf.say(0, heading + ": " + String.join("; ", all));
        }
    }

    private List<Figure> figures(String section) {
        return paper.totals().sections().stream()
                .filter(s -> s.id().equals(section))
                .map(Section::figures)
                .flatMap(List::stream)
                .toList();
    }

    private Optional<String> text(String id) {
        return paper.totals().figure(id).map(Figure::text);
    }

    void mat() {
        List<String> said = new ArrayList<>();
        figures("mat").stream()
                .filter(f -> f.id().startsWith("mat-temperature-least."))
                .map(f -> f.id().substring("mat-temperature-least.".length()))
                .forEach(when ->
                        said.add(when + " " + range("mat-temperature-least." + when, "mat-temperature-most." + when)));
        text("profile-difference-readings")
                .ifPresent(n -> said.add("thermal profiles " + n + ", hottest less coldest "
                        + range("profile-difference-least", "profile-difference-most")));
        figures("straightedge").stream()
                .filter(f -> f.id().startsWith("straightedge-most.") && f.value() != null)
                .max(Comparator.comparing(Figure::value))
                .ifPresent(f -> said.add("straightedge, widest gap " + f.text()));
        say("MAT AND JOINTS", said);
    }

    private String range(String least, String most) {
        String high = text(most).orElse("-");
        return paper.totals()
                .figure(least)
                .filter(f -> f.value() != null && !f.text().equals(high))
                .map(f -> f.value().toPlainString() + " to " + high)
                .orElse(high);
    }

    /** Each lot with what it holds, its sublots counted. */
    void lots() {
        Map<String, Integer> sublots = new LinkedHashMap<>();
        Map<String, String> tons = new LinkedHashMap<>();
        for (Figure each : figures("lots")) {
            if (each.id().startsWith("sublot")) {
                sublots.merge(each.label().substring(0, each.label().lastIndexOf(", ")), 1, Integer::sum);
            } else {
                tons.put(each.label(), each.text().split(";", 2)[0]);
            }
        }
        say(
                "LOTS",
                tons.entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue()
                                + (sublots.containsKey(e.getKey())
                                        ? ", " + Leaf.many(sublots.get(e.getKey()), "sublot")
                                        : ""))
                        .toList());
    }

    /** What lots come to, or where they come to nothing yet how many tests there were. */
    void density() {
        List<Figure> all = new ArrayList<>(figures("density"));
        all.addAll(figures("quality"));
        List<String> said = new ArrayList<>();
        long cores =
                all.stream().filter(f -> f.id().startsWith("core-density.")).count();
        long readings =
                all.stream().filter(f -> f.id().startsWith("gauge-density.")).count();
        said.add(cores == 0 ? "" : Leaf.many((int) cores, "core"));
        said.add(readings == 0 ? "" : Leaf.many((int) readings, "gauge reading"));
        all.stream()
                .filter(f -> f.label().endsWith(", mean") || f.label().contains("within limits"))
                .forEach(f -> said.add(f.label() + " " + f.text().split(",| within", 2)[0]));
        say("DENSITY", said);
    }

    void stops() {
        List<Stoppage> all = Stoppage.of(paper.day());
        if (all.isEmpty()) {
            return;
        }
        List<String> said = new ArrayList<>();
        said.add(all.size() + text("stop-minutes").map(m -> ", " + m).orElse(""));
        all.stream()
                .filter(s -> s.minutes(null).isPresent())
                .max(Comparator.comparing(s -> s.minutes(null).orElseThrow()))
                .ifPresent(s -> said.add((all.size() > 1 ? "the longest " : "") + stop(s)));
        long last = all.stream().filter(Stoppage::lasts).count();
        said.add(last == 0 ? "" : "no restart noted of " + last);
        say("STOPS OF THE PAVER", said);
    }

    private static String stop(Stoppage s) {
        String cause = s.stop().entry().cause() == null
                ? "cause not noted"
                : s.stop().entry().cause().word().replace('-', ' ');
        return Moment.clock(s.stop().time())
                + s.minutes(null).map(m -> " " + m + " min").orElse("") + " " + cause;
    }

    /** Samples without a result by who has them, cores without a density, random places at which nothing was taken. */
    void samples() {
        Samples samples = paper.totals().samples();
        Map<String, List<String>> holders = new LinkedHashMap<>();
        for (Taken each : samples.open()) {
            holders.computeIfAbsent(each.holder(), h -> new ArrayList<>()).add(each.number());
        }
        List<String> said = new ArrayList<>();
        holders.forEach((holder, numbers) -> said.add(String.join(", ", numbers) + " with " + holder));
        String cores = samples.openCores().stream()
                .map(c -> c.entry().cut().core() == null
                        ? c.ref().toString()
                        : c.entry().cut().core())
                .collect(Collectors.joining(", "));
        said.add(cores.isEmpty() ? "" : "no density told of core " + cores);
        samples.places().stream()
                .filter(p -> p.taken().isEmpty())
                .forEach(p -> said.add("nothing taken at random place " + p.name()));
        if (figures("samples").isEmpty()) {
            return;
        }
        say("SAMPLES OWED", said.stream().allMatch(String::isEmpty) ? List.of("none") : said);
    }

    void corrections() {
        List<String> said = new ArrayList<>();
        said.add(count(paper.day().every(Strike.class), "struck"));
        said.add(count(paper.day().every(Amend.class), "amended"));
        long late = paper.day().late().stream()
                .filter(s -> !(s.entry() instanceof Closing) && !(s.entry() instanceof Review))
                .count();
        said.add(told(late, "after the close"));
        said.add(told(
                paper.day().all().stream()
                        .filter(s -> s.line().source() == Source.NOTES)
                        .count(),
                "keyed from notes"));
        said.add(told(paper.totals().left().size(), "not counted"));
        said.add(told(paper.day().uncounted().size(), "not read"));
        said.add(told(paper.day().adrift().size(), "to no entry"));
        say("CORRECTIONS", said);
    }

    private static <E extends Entry> String count(List<Standing<E>> entries, String what) {
        return told(entries.size(), what);
    }

    private static String told(long many, String what) {
        return many == 0 ? "" : many + " " + what;
    }
}
