package screedbook.tally;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import screedbook.entry.PlantRows;
import screedbook.entry.Ticket;
import screedbook.job.Job;
import screedbook.job.Mix;

/**
 * The plant's words for the job's mixes: a mix's own name or design number; another word stands for the mix that most
 * of its loads have here.
 */
final class ListMixes {
    private final Job job;
    private final Map<String, String> means = new HashMap<>();

    private ListMixes(Job job) {
        this.job = job;
    }

    /** @param counted rows with the tickets of the same numbers */
    static ListMixes of(Job job, List<Map.Entry<PlantRows.Row, Ticket>> counted) {
        ListMixes mixes = new ListMixes(job);
        Map<String, Map<String, Integer>> seen = new HashMap<>();
        for (Map.Entry<PlantRows.Row, Ticket> each : counted) {
            String word = each.getKey().mix();
            String mix = each.getValue().paper().mix();
            if (word != null && mix != null) {
                seen.computeIfAbsent(bare(word), w -> new HashMap<>()).merge(mix, 1, Integer::sum);
            }
        }
        seen.forEach((word, loads) -> mixes.means.put(word, mixes.named(word).orElseGet(() -> most(loads))));
        return mixes;
    }

    private Optional<String> named(String word) {
        return job.mixes().stream()
                .filter(m -> bare(m.name()).equals(word)
                        || m.design() != null && bare(m.design()).equals(word))
                .map(Mix::name)
                .findFirst();
    }

    /** The mix of more than half of the loads; null where none has so many. */
    private static String most(Map<String, Integer> loads) {
        int all = loads.values().stream().mapToInt(Integer::intValue).sum();
        return loads.entrySet().stream()
                .filter(e -> 2 * e.getValue() > all)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }

    /** Which mix a row speaks of; null where that is not known. */
    String meant(PlantRows.Row row) {
        return row.mix() == null ? null : means.get(bare(row.mix()));
    }

    /** Which mix a row speaks of, also one whose word stands in no row that was counted. */
    Optional<String> known(PlantRows.Row row) {
        return row.mix() == null
                ? Optional.empty()
                : Optional.ofNullable(meant(row)).or(() -> named(bare(row.mix())));
    }

    /** What row and ticket say of the mix, where they do not say the same. */
    Optional<String> other(PlantRows.Row row, Ticket ticket) {
        String meant = meant(row);
        String mine = ticket.paper().mix();
        if (meant == null || mine == null || meant.equals(mine)) {
            return Optional.empty();
        }
        String word = row.mix().equals(meant) ? meant : row.mix() + ", which is " + meant + ",";
        return Optional.of("mix " + mine + " here, " + word + " in the list");
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
