package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.calc.RollerCover;
import screedbook.entry.Day;
import screedbook.entry.Profile;
import screedbook.entry.Rolling;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.entry.Word;
import screedbook.job.Job;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The sections of thermal profiles and of rollers; each empty where nothing was keyed. */
final class MatSections {
    private final Day day;
    private final Job job;

    MatSections(Day day, Job job) {
        this.day = day;
        this.job = job;
    }

    /** How many thermal profiles, and the least, mean and greatest difference in them. */
    Section profiles() {
        Figures figures = new Figures();
        List<Standing<Profile>> read = day.standing(Profile.class).stream()
                .filter(p -> p.entry().apart().isPresent())
                .toList();
        if (!read.isEmpty()) {
            List<Amount> apart =
                    read.stream().map(p -> p.entry().apart().orElseThrow()).toList();
            Working working = Figures.working(
                    "hottest less coldest of each",
                    read.stream().map(p -> p.ref() + " " + Told.line(p.entry())).toList(),
                    read.stream().map(Standing::ref).toList(),
                    "the profiles as keyed");
            figures.count("profile-difference-readings", "thermal profiles", read.size(), working);
            figures.amount(
                    "profile-difference-least",
                    "their difference, least",
                    apart.stream().min(Amount::compareTo),
                    0,
                    working);
            figures.mean("profile-difference-mean", "their difference, mean", apart, 1, working);
            figures.amount(
                    "profile-difference-most",
                    "their difference, greatest",
                    apart.stream().max(Amount::compareTo),
                    0,
                    working);
        }
        return figures.section("profiles", "Thermal profiles");
    }

    /** What each roller did last, in each of its places. */
    Section rolling() {
        Figures figures = new Figures();
        Map<String, List<Standing<Rolling>>> rollers = new LinkedHashMap<>();
        for (Standing<Rolling> each : day.standing(Rolling.class)) {
            String name =
                    (each.entry().roller() == null ? "not named" : each.entry().roller())
                            + (each.entry().task() == null
                                    ? ""
                                    : " " + word(each.entry().task()));
            rollers.computeIfAbsent(name, n -> new ArrayList<>()).add(each);
        }
        rollers.forEach((name, all) -> roller(figures, name, all));
        return figures.section("rolling", "Rollers");
    }

    private static String word(Word word) {
        return word.word().replace('-', ' ');
    }

    private void roller(Figures figures, String name, List<Standing<Rolling>> all) {
        Standing<Rolling> last = all.get(all.size() - 1);
        Rolling r = last.entry();
        List<String> words = new ArrayList<>();
        if (r.drums() != null) {
            words.add(word(r.drums()));
        }
        if (r.passes() != null) {
            words.add(r.passes() + (r.passes() == 1 ? " pass" : " passes"));
        }
        if (r.matBegins() != null || r.matEnds() != null) {
            words.add("mat " + text(r.matBegins()) + " to " + text(r.matEnds()));
        }
        List<String> put = new ArrayList<>();
        all.forEach(s -> put.add(s.ref() + " " + Told.line(s.entry())));
        List<String> more = new ArrayList<>();
        impacts(r).ifPresent(i -> more.add(i.toPlainString() + " impacts a foot"));
        across(r).ifPresent(more::add);
        words.addAll(more);
        figures.text(
                "roller." + name,
                "roller " + name,
                words.isEmpty() ? "nothing more noted" : String.join(", ", words),
                Figures.working(
                        "its last entry; impacts a foot = vibrations a minute / feet a minute; runs across ="
                                + " (width, or width + 6 in over the edge) / (drum - 6 in), rounded up",
                        put,
                        all.stream().map(Standing::ref).toList(),
                        "supplier's compaction tables (Graniterock); the drum over the edge is common practice, no source"));
    }

    private static String text(Amount amount) {
        return amount == null ? "?" : amount.text();
    }

    private static Optional<BigDecimal> impacts(Rolling r) {
        boolean known =
                r.vibrations() != null && r.speed() != null && r.speed().value().signum() > 0;
        return known ? Optional.of(RollerCover.impactsAFoot(r.vibrations(), r.speed())) : Optional.empty();
    }

    /** {@code 3 runs across, 4 with the drum over the edge}. */
    private Optional<String> across(Rolling r) {
        Amount six = Amount.of("6", Unit.INCH);
        Optional<Amount> width = job.pull(r.pull(), r.lift())
                .map(Job.Pull::width)
                .filter(w -> w.value().signum() > 0);
        if (r.drumWidth() == null
                || width.isEmpty()
                || r.drumWidth().compareTo(six.to(r.drumWidth().unit())) <= 0) {
            return Optional.empty();
        }
        int inside = RollerCover.runsAcross(width.get(), r.drumWidth(), false);
        int over = RollerCover.runsAcross(width.get(), r.drumWidth(), true);
        return Optional.of(
                inside + " runs across" + (over == inside ? "" : ", " + over + " with the drum over the edge"));
    }
}
