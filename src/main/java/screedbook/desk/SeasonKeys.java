package screedbook.desk;

import java.util.List;
import screedbook.check.InShort;

/** What the keys do on the season's screen. */
final class SeasonKeys {
    private SeasonKeys() {}

    /** Every shift is read and judged; the desk goes on taking keys. */
    static Step open(Model model) {
        return Step.of(model.push(new Screen.Season(null, Walk.FIRST)), new Effect.ReadSeason());
    }

    /** The season as it was read; nothing when its screen was left meanwhile. */
    static Model read(Model model, List<InShort> shifts) {
        return model.screens(model.screens().stream()
                .map(s -> s instanceof Screen.Season season
                        ? new Screen.Season(shifts, season.walk().within(shifts.size()))
                        : s)
                .toList());
    }

    static Step day(Model model, Key key) {
        Screen.Season season = (Screen.Season) model.top();
        if (season.shifts() == null
                || season.shifts().isEmpty()
                || season.walk().at() < 0) {
            return Step.of(model.say("no shift is read yet"));
        }
        return Step.of(
                model.writing(true),
                new Effect.LookAt(SeasonView.shift(season, season.walk().at()).shift()));
    }
}
