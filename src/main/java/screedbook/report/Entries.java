package screedbook.report;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import screedbook.check.Finding;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Opening;
import screedbook.entry.Person;
import screedbook.entry.Ref;
import screedbook.entry.Review;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Told;
import screedbook.job.Job;
import screedbook.tally.Load;

/** The entries of a day by their numbers, and what they and their writers are called on paper. */
final class Entries {
    private final Map<Ref, Standing<?>> all = new HashMap<>();
    private final Map<String, String> people = new HashMap<>();
    private final Day day;

    Entries(DayPaper paper) {
        this.day = paper.day();
        day.all().forEach(s -> all.put(s.ref(), s));
        paper.job().map(Job::people).orElse(List.of()).forEach(this::known);
        day.every(Opening.class).stream()
                .map(s -> s.entry().roster())
                .filter(Objects::nonNull)
                .flatMap(List::stream)
                .forEach(this::known);
    }

    private void known(Person person) {
        if (person.initials() != null && person.name() != null) {
            people.put(person.initials(), person.name());
        }
    }

    Optional<Standing<?>> find(Ref ref) {
        return Optional.ofNullable(all.get(ref));
    }

    /** {@code 21:38 ticket 48217 (paver/17)}; where nothing stands, the number alone. */
    String name(Ref ref) {
        return find(ref).map(s -> named(s) + " (" + ref + ")").orElse(ref.toString());
    }

    /** Those of a kind that stand. */
    Stream<Standing<?>> ofKind(Kind kind) {
        return day.all().stream().filter(s -> !s.struck() && s.line().kind() == kind);
    }

    /** Whether it is anything but a load that was not placed. */
    static boolean laid(Standing<?> standing) {
        return !(standing.entry() instanceof Ticket t) || Load.laid(t);
    }

    /** Whether a finding speaks of something that stayed on the road. */
    boolean stayed(Finding finding) {
        return finding.of().isEmpty()
                || find(finding.of().get(0)).map(Entries::laid).orElse(true);
    }

    /** {@code 21:38 ticket 48217 (paver/17)}; without the number where what is said then has it. */
    String place(Ref ref, String said) {
        Optional<Standing<?>> entry = find(ref);
        String clock = entry.filter(s -> s.time() != null)
                .map(s -> Moment.clock(s.time()) + " ")
                .orElse("");
        String ticket = entry.filter(s -> s.entry() instanceof Ticket)
                .map(s -> ((Ticket) s.entry()).paper().number())
                .filter(number -> !said.contains(number))
                .map(number -> "ticket " + number + " ")
                .orElse("");
        return clock + ticket + "(" + ref + ")";
    }

    private static String named(Standing<?> standing) {
        String what = Told.kind(standing.entry().kind());
        String number = standing.entry() instanceof Ticket t && t.paper().number() != null
                ? " " + t.paper().number()
                : "";
        return (standing.time() == null ? "" : Moment.clock(standing.time()) + " ") + what + number;
    }

    /** Everybody who kept the shift, once, with the name where it is known; who only reviewed it did not keep it. */
    String writers() {
        return String.join(", ", signers());
    }

    /** The same, one after the other. */
    List<String> signers() {
        Set<String> who = new LinkedHashSet<>();
        day.all().stream()
                .filter(s -> !(s.entry() instanceof Review))
                .forEach(s -> who.add(s.line().who()));
        return who.stream().filter(Objects::nonNull).map(this::person).toList();
    }

    private String person(String initials) {
        return people.containsKey(initials) ? people.get(initials) + " (" + initials + ")" : initials;
    }

    /** The books of the shift, as they were first seen. */
    String books() {
        return day.written().stream().map(w -> w.book()).distinct().collect(Collectors.joining(", "));
    }

    /** Texts that are there, with their labels: {@code decided by P. Reyes; told to K. Moss}. */
    static String phrases(String... pairs) {
        return Stream.iterate(0, i -> i + 2)
                .limit(pairs.length / 2)
                .filter(i -> pairs[i + 1] != null && !pairs[i + 1].isBlank())
                .map(i -> (pairs[i] + " " + pairs[i + 1]).strip())
                .collect(Collectors.joining("; "));
    }
}
