package screedbook.season;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import screedbook.check.Finding;
import screedbook.entry.Day;
import screedbook.entry.Fields;
import screedbook.entry.Opening;
import screedbook.entry.Person;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Told;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;

/** A look through shifts for entries; any kind of entry is found by what its blanks hold. */
public final class Search {
    private static final Set<String> NUMBERS = Set.of("number", "numbers", "reissue_of", "ticket");
    private static final Set<String> TRUCKS = Set.of("truck");
    private static final Set<String> PEOPLE = Set.of("who", "next_who", "told_to", "signed", "name", "with");

    private final Sought sought;
    private final Day day;
    private final Optional<Road> road;
    private final Map<Ref, List<Finding>> findings;
    private final Set<String> initials;

    private Search(Sought sought, Day day, Optional<Road> road, List<Finding> findings) {
        this.sought = sought;
        this.day = day;
        this.road = road;
        this.findings = new HashMap<>();
        for (Finding each : findings) {
            each.of().stream()
                    .findFirst()
                    .ifPresent(ref -> this.findings
                            .computeIfAbsent(ref, r -> new ArrayList<>())
                            .add(each));
        }
        this.initials = initials();
    }

    /**
     * Looks through a job, oldest shift first; only shifts that may hold it are judged.
     *
     * @param read is told of every shift that was read
     * @param passed is told of every line that could not be looked through
     */
    public static void job(
            Shelf shelf, Sought sought, Consumer<ShiftId> read, Consumer<Hit> found, Consumer<String> passed) {
        for (ShiftId id : shelf.shifts()) {
            if (!id.date().isBefore(sought.from()) && !id.date().isAfter(sought.until())) {
                read.accept(id);
                shift(shelf, id, sought, passed).forEach(found);
            }
        }
    }

    /** The entries of a shift in reading order. */
    public static List<Hit> shift(Shelf shelf, ShiftId id, Sought sought) {
        return shift(shelf, id, sought, line -> {});
    }

    private static List<Hit> shift(Shelf shelf, ShiftId id, Sought sought, Consumer<String> passed) {
        if (id.date().isBefore(sought.from()) || id.date().isAfter(sought.until())) {
            return List.of();
        }
        if (sought.finding() != null) {
            ShiftFile file = shelf.shift(id);
            file.day().uncounted().forEach(line -> passed.accept(Season.told(id, line)));
            Optional<Road> road = file.ground().job().map(Road::of);
            return new Search(sought, file.day(), road, file.findings()).hits();
        }
        Day day = shelf.folder().shift(id).day();
        day.uncounted().forEach(line -> passed.accept(Season.told(id, line)));
        Optional<Job> job =
                sought.first() == null ? Optional.empty() : shelf.ground(day).job();
        return new Search(sought, day, job.map(Road::of), List.of()).hits();
    }

    private List<Hit> hits() {
        List<Hit> hits = new ArrayList<>();
        for (Standing<?> each : day.all()) {
            Map<String, Object> plain = new HashMap<>(Fields.plain(each.aside()));
            plain.putAll(Fields.plain((Record) each.entry()));
            if (holds(each, plain)) {
                hits.add(hit(each));
            }
        }
        return hits;
    }

    private Hit hit(Standing<?> each) {
        StringBuilder told = new StringBuilder(Told.line(each.entry()));
        if (sought.finding() != null) {
            wanted(each.ref())
                    .forEach(f -> told.append("  ")
                            .append(f.sort().text())
                            .append(": ")
                            .append(f.seen())
                            .append(", ")
                            .append(f.limit()));
        }
        return new Hit(each.line().job(), day.shift(), each.ref(), each.line().row(), each.struck(), told.toString());
    }

    private boolean holds(Standing<?> each, Map<String, Object> plain) {
        return (sought.ticket() == null || any(plain, NUMBERS, this::isTicket))
                && (sought.truck() == null || any(plain, TRUCKS, sought.truck()::equalsIgnoreCase))
                && (sought.first() == null || crosses(plain))
                && (sought.person() == null || isAbout(each, plain))
                && (sought.finding() == null || !wanted(each.ref()).isEmpty())
                && (sought.words().isEmpty() || says(each, plain));
    }

    private interface Fits {
        boolean fits(String value);
    }

    private static boolean any(Map<String, Object> plain, Set<String> keys, Fits fits) {
        for (String key : keys) {
            if (plain.get(key) instanceof String text && fits.fits(text)) {
                return true;
            }
        }
        return false;
    }

    /** A digit that nobody could read stands as {@code ?} and may be any. */
    private boolean isTicket(String number) {
        String asked = sought.ticket();
        if (number.length() != asked.length()) {
            return false;
        }
        for (int i = 0; i < asked.length(); i++) {
            boolean open = number.charAt(i) == '?' || asked.charAt(i) == '?';
            if (!open && Character.toLowerCase(number.charAt(i)) != Character.toLowerCase(asked.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** Whether any station of the entry lies in the stretch, or the entry covers some of it. */
    private boolean crosses(Map<String, Object> plain) {
        BigDecimal least = null;
        BigDecimal most = null;
        for (Map.Entry<String, Object> each : plain.entrySet()) {
            if (each.getKey().endsWith("_sta") && each.getValue() instanceof String text && counted(text)) {
                BigDecimal at = along(Station.of(text));
                least = least == null ? at : least.min(at);
                most = most == null ? at : most.max(at);
            }
        }
        BigDecimal one = along(sought.first());
        BigDecimal other = along(sought.last());
        return least != null && most.compareTo(one.min(other)) >= 0 && least.compareTo(one.max(other)) <= 0;
    }

    /** 12+00 is in feet where 1+200 is in metres: figures of another base are another place. */
    private boolean counted(String station) {
        return Station.of(station).digits() == sought.first().digits();
    }

    private BigDecimal along(Station station) {
        return road.map(r -> r.along(station)).orElseGet(station::distance);
    }

    /** The initials of everybody in the roster whose name holds the word, and the word itself. */
    private Set<String> initials() {
        Set<String> all = new HashSet<>();
        if (sought.person() != null) {
            String asked = Sought.folded(sought.person());
            all.add(asked);
            for (Standing<Opening> each : day.every(Opening.class)) {
                List<Person> roster =
                        each.entry().roster() == null ? List.of() : each.entry().roster();
                roster.stream()
                        .filter(p -> p.name() != null
                                && List.of(Sought.folded(p.name()).split("\\s+"))
                                        .contains(asked))
                        .forEach(p -> all.add(Sought.folded(p.initials())));
            }
        }
        return all;
    }

    private boolean isAbout(Standing<?> each, Map<String, Object> plain) {
        if (each.line().who() != null
                && initials.contains(Sought.folded(each.line().who()))) {
            return true;
        }
        for (Map.Entry<String, Object> value : plain.entrySet()) {
            boolean named = value.getKey().endsWith("_by") || PEOPLE.contains(value.getKey());
            if (named && value.getValue() instanceof String text) {
                for (String word : Sought.folded(text).split("[^\\p{L}\\p{N}']+")) {
                    if (initials.contains(word)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private List<Finding> wanted(Ref ref) {
        String asked = sought.finding().toLowerCase(Locale.ROOT);
        return findings.getOrDefault(ref, List.of()).stream()
                .filter(f -> f.rule().startsWith(asked)
                        || f.sort().text().replace(' ', '-').startsWith(asked.replace(' ', '-')))
                .toList();
    }

    /** In what the entry says, told and blank by blank; its line's hashes hold any digits. */
    private boolean says(Standing<?> each, Map<String, Object> plain) {
        String told = Told.line(each.entry()) + " " + each.line().kind().word() + " "
                + each.line().who();
        String newer = each.line().unknown().isEmpty() ? "" : each.line().raw();
        String text = Sought.folded(told + " " + plain.values() + " " + newer);
        return sought.words().stream().map(Sought::folded).allMatch(text::contains);
    }
}
