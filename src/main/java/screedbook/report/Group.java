package screedbook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import screedbook.check.Finding;
import screedbook.entry.Answer;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Told;

/**
 * Findings of one rule, on one mix or pull and on the same side of a limit, that follow each other by their numbers.
 *
 * @param on the mix or the pull; empty where there is none
 * @param among how many entries were judged by the rule; 0 where that cannot be told
 */
record Group(List<Numbered.Item> items, String on, int among, Entries entries) {
    boolean alone() {
        return items.size() == 1;
    }

    /** {@code 4}, {@code 4-9}. */
    String numbers() {
        int first = items.get(0).number();
        int last = items.get(items.size() - 1).number();
        return first == last ? "" + first : first + "-" + last;
    }

    /** In one paragraph: how many of how many, the worst with its limit and clause, from when to when, which entries. */
    String text() {
        if (alone()) {
            Finding f = items.get(0).finding();
            String at = f.of().isEmpty() ? "" : entries.place(f.of().get(0), f.seen()) + ": ";
            return numbers() + " " + f.sort().mark() + "  " + at + OneFinding.seen(f);
        }
        Numbered.Item worst = worst();
        return numbers() + " " + worst.finding().sort().mark() + "  " + what() + ": " + told(worst)
                + OneFinding.seen(worst.finding()) + times() + "; " + shortened(refs());
    }

    private String clock() {
        return refs().stream()
                .flatMap(r -> entries.find(r).stream())
                .filter(s -> s.time() != null)
                .map(s -> Moment.clock(s.time()) + " ")
                .findFirst()
                .orElse("");
    }

    private static String told(Numbered.Item worst) {
        return worst.finding().beyond() == null ? "the first: " : "worst (" + worst.number() + ") ";
    }

    /** The same without entries and clause; of one finding with its time of day. */
    String shortText() {
        return shortText(alone() ? clock() : "");
    }

    /** The same with who decided and who was told. */
    String shortAndDecided() {
        return shortText("") + Entries.phrases(";", decided());
    }

    private String shortText(String clock) {
        Numbered.Item worst = worst();
        Finding f = worst.finding();
        return numbers() + " " + f.sort().mark() + "  " + (alone() ? clock : what() + ": " + told(worst)) + f.seen()
                + (f.limit().isEmpty() ? "" : "; " + f.limit());
    }

    /** Whether one limit of one clause is told of all of them. */
    boolean alike() {
        Finding first = items.get(0).finding();
        return items.stream()
                .map(Numbered.Item::finding)
                .allMatch(f -> f.limit().equals(first.limit()) && f.clause().equals(first.clause()));
    }

    /** What is told of all of them, over the single ones. */
    String limit() {
        Finding f = items.get(0).finding();
        return numbers() + " " + f.sort().mark() + "  " + what() + ": " + f.limit() + OneFinding.clause(f);
    }

    /** {@code 2 of 14 loads of 19-64}, {@code thermal profile, 2 of 3, A lift 1}. */
    private String what() {
        Set<Ref> refs = refs();
        boolean known = among >= refs.size() && !refs.isEmpty();
        String count = known ? refs.size() + " of " + among : items.size() + " findings";
        Optional<Standing<?>> first = refs.stream().findFirst().flatMap(entries::find);
        if (first.filter(s -> s.entry() instanceof Ticket).isPresent()) {
            return count + (known ? " loads" : " on loads") + (on.isEmpty() ? "" : " of " + on);
        }
        return first.map(s -> Told.kind(s.entry().kind()) + ", ").orElse("") + count + (on.isEmpty() ? "" : ", " + on);
    }

    private Numbered.Item worst() {
        return items.stream()
                .filter(i -> i.finding().beyond() != null)
                .max(Comparator.comparing(i -> i.finding().beyond().abs()))
                .orElse(items.get(0));
    }

    /** The entries that carry the findings, each once. */
    private Set<Ref> refs() {
        return items.stream()
                .flatMap(i -> i.finding().of().stream().limit(1))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private String times() {
        List<String> clocks = refs().stream()
                .map(entries::find)
                .flatMap(s -> s.stream())
                .map(Standing::time)
                .filter(Objects::nonNull)
                .sorted()
                .map(Moment::clock)
                .toList();
        if (clocks.isEmpty()) {
            return "";
        }
        String first = clocks.get(0);
        String last = clocks.get(clocks.size() - 1);
        return "; " + (first.equals(last) ? first : first + " to " + last);
    }

    /** Entries by their books, those that follow each other taken together: {@code paver/17, 19, 22-27; tack/3}. */
    static String shortened(Set<Ref> refs) {
        Map<String, TreeSet<Integer>> books = new LinkedHashMap<>();
        refs.forEach(r -> books.computeIfAbsent(r.book(), b -> new TreeSet<>()).add(r.n()));
        List<String> told = new ArrayList<>();
        books.forEach((book, numbers) -> told.add(book + "/" + runs(List.copyOf(numbers))));
        return String.join("; ", told);
    }

    private static String runs(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < numbers.size(); ) {
            int end = i;
            while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
                end++;
            }
            if (end - i > 1) {
                runs.add(numbers.get(i) + "-" + numbers.get(end));
                i = end + 1;
            } else {
                runs.add("" + numbers.get(i++));
            }
        }
        return String.join(", ", runs);
    }

    /** Who decided and who was told, each once: {@code decided by RK, AS; told to Lee Marrin}. */
    String decided() {
        Set<String> decided = new LinkedHashSet<>();
        Set<String> told = new LinkedHashSet<>();
        for (Numbered.Item item : items) {
            for (Standing<Answer> each : item.finding().answers()) {
                decided.add(each.entry().decidedBy());
                told.add(each.entry().toldTo());
            }
            item.finding().of().stream()
                    .limit(1)
                    .flatMap(r -> entries.find(r).stream())
                    .filter(s -> s.entry() instanceof Ticket)
                    .map(s -> ((Ticket) s.entry()).fate())
                    .forEach(fate -> {
                        decided.add(fate.decidedBy());
                        told.add(fate.toldTo());
                    });
        }
        return Entries.phrases("decided by", joined(decided), "told to", joined(told));
    }

    private static String joined(Set<String> names) {
        return names.stream().filter(Objects::nonNull).collect(Collectors.joining(", "));
    }
}
