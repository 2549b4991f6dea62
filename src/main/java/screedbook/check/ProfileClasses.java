package screedbook.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import screedbook.entry.Day;
import screedbook.entry.Profile;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.spec.Quantity;
import screedbook.tally.Figure;
import screedbook.tally.Section;
import screedbook.tally.Totals;
import screedbook.tally.Working;

/** How many thermal profiles of a day are moderate and severe, by the usual ends of the classes. */
public final class ProfileClasses {
    private ProfileClasses() {}

    /** The totals with these counts; the same where there is no profile with both temperatures. */
    public static Totals added(Totals totals, Day day) {
        List<Figure> figures = new ArrayList<>();
        List<Standing<Profile>> read = day.standing(Profile.class).stream()
                .filter(p -> p.entry().apart().isPresent())
                .toList();
        if (!read.isEmpty()) {
            for (MatRules.Word word : MatRules.Word.values()) {
                figures.add(figure(word, read));
            }
        }
        return totals.with(new Section("profile-classes", "Thermal profiles by class", figures));
    }

    private static Figure figure(MatRules.Word word, List<Standing<Profile>> read) {
        List<Standing<Profile>> of = read.stream()
                .filter(p -> MatRules.Word.of(p.entry().apart().orElseThrow()) == word)
                .toList();
        Working working = new Working(
                "count of hottest less coldest: moderate above "
                        + AmountText.text(Marks.usual(Quantity.PROFILE_MODERATE)
                                .all()
                                .get(0)
                                .high())
                        + ", severe above "
                        + AmountText.text(Marks.usual(Quantity.PROFILE_SEVERE)
                                .all()
                                .get(0)
                                .high()),
                of.stream().map(p -> p.ref() + " " + Told.line(p.entry())).toList(),
                of.stream().map(Standing::ref).toList(),
                "common practice, no source");
        String text = Integer.toString(of.size());
        return new Figure(
                "profiles-" + word.name().toLowerCase(java.util.Locale.ROOT),
                "thermal profiles, " + word.text(),
                text,
                new BigDecimal(of.size()),
                "",
                working);
    }
}
