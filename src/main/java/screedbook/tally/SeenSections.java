package screedbook.tally;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Mat;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Surface;
import screedbook.entry.Ticket;
import screedbook.entry.Weather;
import screedbook.entry.Word;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The sections that hold what was read off instruments: mix, surface and weather. */
final class SeenSections {
    private final Unit degree;
    private final List<Left> left = new ArrayList<>();

    SeenSections(Job job) {
        this.degree = Measure.TEMPERATURE.unit(job.system());
    }

    /** Readings in the other system's unit, which are in no range. */
    List<Left> left() {
        return List.copyOf(left);
    }

    /** One reading and where it stands. */
    private record Reading(Ref of, Amount amount) {}

    Section heat(List<Load> loads) {
        Map<String, List<Reading>> groups = new LinkedHashMap<>();
        for (Load load : loads) {
            Ticket.Heat heat = load.ticket().entry().heat();
            String mix = load.mix() + (load.laid() ? "" : " not placed");
            reading(groups, "plant-temperature." + mix, load.ticket().ref(), heat.plant());
            reading(groups, "paver-temperature." + mix, load.ticket().ref(), heat.paver());
        }
        Figures figures = new Figures();
        groups.forEach((id, list) -> {
            int dot = id.indexOf('.');
            String where = id.startsWith("plant") ? " at the plant" : " at the paver";
            range(figures, id.substring(0, dot), id.substring(dot), id.substring(dot + 1) + where, list);
        });
        return figures.section("heat", "Mix temperatures");
    }

    private void reading(Map<String, List<Reading>> groups, String id, Ref of, Amount seen) {
        if (seen == null) {
            return;
        }
        if (seen.unit() != degree) {
            left.add(new Left(of, "temperature in " + seen.unit().symbol() + ", this job reads " + degree.symbol()));
            return;
        }
        groups.computeIfAbsent(id, i -> new ArrayList<>()).add(new Reading(of, seen));
    }

    private static void range(Figures figures, String id, String tail, String label, List<Reading> readings) {
        List<Amount> amounts = readings.stream().map(Reading::amount).toList();
        List<Ref> entries = readings.stream().map(Reading::of).toList();
        List<String> put =
                readings.stream().map(r -> r.of() + " " + r.amount().text()).toList();
        String source = "the readings as keyed";
        Working least = new Working("least of the readings", put, entries, source);
        Working mean = new Working("sum of the readings / their number", put, entries, source);
        Working most = new Working("greatest of the readings", put, entries, source);
        figures.count(id + "-readings" + tail, label + " readings", readings.size(), mean);
        figures.amount(
                id + "-least" + tail,
                label + " least",
                amounts.stream().min(Comparator.naturalOrder()),
                scale(amounts),
                least);
        figures.mean(id + "-mean" + tail, label + " mean", amounts, 1, mean);
        figures.amount(
                id + "-most" + tail,
                label + " most",
                amounts.stream().max(Comparator.naturalOrder()),
                scale(amounts),
                most);
    }

    private static int scale(List<Amount> amounts) {
        return Math.max(
                0, amounts.stream().mapToInt(a -> a.value().scale()).max().orElse(0));
    }

    /** Of the mat, by the moment at which it was read. */
    Section mat(Day day) {
        Map<String, List<Reading>> groups = new LinkedHashMap<>();
        for (Standing<Mat> each : day.standing(Mat.class)) {
            Mat.Taken taken = each.entry().taken();
            String when = taken == null ? "moment not noted" : taken.word().replace('-', ' ');
            reading(groups, when, each.ref(), each.entry().mat());
        }
        Figures figures = new Figures();
        groups.forEach((when, list) -> range(figures, "mat-temperature", "." + when, "mat " + when, list));
        return figures.section("mat", "Mat temperatures");
    }

    Section weather(Day day) {
        Figures figures = new Figures();
        List<Standing<Weather>> seen = day.standing(Weather.class);
        range(figures, seen, "air", "air", Weather::air);
        range(figures, seen, "humidity", "humidity", Weather::humidity);
        range(figures, seen, "wind", "wind", Weather::wind);
        FeltFigures.add(seen, figures);
        words(figures, seen, "sky", "sky", Weather::sky);
        words(figures, seen, "precipitation", "precipitation", Weather::precipitation);
        words(figures, seen, "road", "road", Weather::road);
        words(figures, seen, "engineer-call", "engineer's call", Weather::engineerCall);
        List<Standing<Surface>> surfaces = day.standing(Surface.class);
        range(figures, surfaces, "surface", "surface about to be paved", Surface::surface);
        return figures.section("weather", "Weather and surface");
    }

    private <E extends Entry> void range(
            Figures figures, List<Standing<E>> seen, String id, String label, Function<E, Amount> part) {
        Map<String, List<Reading>> found = new LinkedHashMap<>();
        for (Standing<E> each : seen) {
            Amount amount = part.apply(each.entry());
            if (amount != null && amount.unit().dimension() == Unit.Dimension.TEMPERATURE) {
                reading(found, id, each.ref(), amount);
            } else if (amount != null) {
                found.computeIfAbsent(id, i -> new ArrayList<>()).add(new Reading(each.ref(), amount));
            }
        }
        found.values().forEach(list -> range(figures, id, "", label, list));
    }

    private static <E extends Entry> void words(
            Figures figures, List<Standing<E>> seen, String id, String label, Function<E, ? extends Word> part) {
        Set<String> words = new LinkedHashSet<>();
        List<Ref> entries = new ArrayList<>();
        List<String> put = new ArrayList<>();
        for (Standing<E> each : seen) {
            Word word = part.apply(each.entry());
            if (word != null) {
                words.add(word.word().replace('-', ' '));
                entries.add(each.ref());
                put.add(each.ref() + " " + word.word().replace('-', ' '));
            }
        }
        if (!words.isEmpty()) {
            figures.text(
                    id,
                    label,
                    String.join(", ", words),
                    new Working("each word once, as first seen", put, entries, "the readings as keyed"));
        }
    }
}
