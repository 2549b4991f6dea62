package screedbook.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import screedbook.entry.Blank;
import screedbook.entry.Field;
import screedbook.entry.Kind;
import screedbook.job.Job;
import screedbook.job.Mix;

/** The lists from which blanks are picked: the job's mixes and trucks, and the usual reasons. */
final class Picks {
    private static final List<String> STRIKE =
            List.of("keyed twice", "other job's load", "wrong entry", "did not happen", "keyed in the wrong shift");
    private static final List<String> AMEND =
            List.of("misread", "mistyped", "told later", "ticket seen again", "measured again");
    private static final List<String> LOAD = List.of(
            "too cold", "too hot", "segregated", "wrong mix", "contaminated", "left over", "rain", "machine down");

    private Picks() {}

    /** What may be picked in a blank; empty where anything may stand. */
    static List<String> of(Model model, Kind kind, Field field) {
        if (field.type().isEnum()) {
            return field.words();
        }
        if (field.name().equals(Forms.WHY)) {
            return AMEND;
        }
        return field.name().equals("reason") ? reasons(kind) : of(model, field);
    }

    private static List<String> reasons(Kind kind) {
        return switch (kind) {
            case STRIKE -> STRIKE;
            case TICKET, WASTE -> LOAD;
            default -> List.of();
        };
    }

    static List<String> of(Model model, Field field) {
        Job job = model.shift().job();
        return switch (field.pick()) {
            case PLANT -> job.plants().stream().map(Job.Plant::name).toList();
            case TRUCK -> job.trucks().stream().map(Job.Truck::number).toList();
            case MIX -> job.mixes().stream().map(Mix::name).toList();
            case PULL -> job.pulls().stream().map(Job.Pull::name).distinct().toList();
            case LIFT -> job.lifts().stream().map(l -> l.number().toString()).toList();
            case PRODUCT -> job.products().stream().map(Job.Product::name).toList();
            case DISTRIBUTOR ->
                job.distributors().stream().map(Job.Distributor::name).toList();
            case INSTRUMENT -> job.instruments().stream().map(i -> i.id()).toList();
            case PAVER -> job.pavers();
            case PERSON -> job.people().stream().map(p -> p.initials()).toList();
            case SAMPLE -> SampleForms.open(model);
            case NONE, RULE -> List.of();
        };
    }

    /** What a text picks: the whole word, the only one that begins or (for trucks) ends with it, or its number. */
    static Optional<String> match(Model model, Kind kind, Field field, String text) {
        List<String> all = of(model, kind, field);
        String t = text.toLowerCase(Locale.ROOT);
        Optional<String> whole =
                all.stream().filter(a -> a.toLowerCase(Locale.ROOT).equals(t)).findFirst();
        if (whole.isPresent()) {
            return whole;
        }
        boolean truck = field.pick() == Blank.Pick.TRUCK;
        List<String> like = all.stream()
                .filter(a -> truck
                        ? a.toLowerCase(Locale.ROOT).endsWith(t)
                        : a.toLowerCase(Locale.ROOT).startsWith(t))
                .toList();
        if (like.size() == 1) {
            return Optional.of(like.get(0));
        }
        if (!truck && t.matches("[1-9]") && Integer.parseInt(t) <= all.size()) {
            return Optional.of(all.get(Integer.parseInt(t) - 1));
        }
        return Optional.empty();
    }

    /** Words of a fixed list in one line for the foot of a form: {@code 1 dry  2 damp  3 wet}. */
    static String line(List<String> words) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < words.size() && i < 20; i++) {
            out.append(i == 0 ? "" : "  ").append(i + 1).append(' ').append(words.get(i));
        }
        return out.toString();
    }
}
