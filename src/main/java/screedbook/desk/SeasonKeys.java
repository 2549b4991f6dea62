package screedbook.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import screedbook.check.InShort;
import screedbook.entry.ShiftId;
import screedbook.picture.CalendarPicture;

/** What the keys do on the season's screen. */
final class SeasonKeys {
    private SeasonKeys() {}

    /** The shifts stand there at once; what each comes to follows, and the desk goes on taking keys. */
    static Step open(Model model) {
        List<ShiftId> all =
                new ArrayList<>(model.shifts().stream().map(Msg.Row::shift).toList());
        Collections.reverse(all);
        return Step.of(
                model.push(drawn(shifts(all, Map.of()), Walk.FIRST.within(all.size()))), new Effect.ReadSeason());
    }

    /** The season as far as it was read; nothing when its screen was left meanwhile. The shift walked to stays it. */
    static Model read(Model model, Msg.SeasonRead told) {
        List<InShort> shifts = shifts(told.all(), told.read());
        Screen.Season read = drawn(shifts, Walk.FIRST);
        return model.screens(model.screens().stream()
                .map(s -> s instanceof Screen.Season season ? read.with(walk(season, shifts)) : s)
                .toList());
    }

    /** What is the same for every drawing is worked out once. */
    private static Screen.Season drawn(List<InShort> shifts, Walk walk) {
        return new Screen.Season(shifts, CalendarPicture.lines(shifts), SeasonView.sums(shifts), walk);
    }

    private static List<InShort> shifts(List<ShiftId> all, Map<ShiftId, InShort> read) {
        return all.stream().map(id -> read.getOrDefault(id, InShort.unread(id))).toList();
    }

    /** New shifts come before the others in the list. */
    private static Walk walk(Screen.Season before, List<InShort> shifts) {
        if (before.walk().at() <= 0) {
            return Walk.FIRST.within(shifts.size());
        }
        ShiftId at = SeasonView.shift(before, before.walk().at()).shift();
        for (int i = 0; i < shifts.size(); i++) {
            if (shifts.get(i).shift().equals(at)) {
                return new Walk(shifts.size() - 1 - i);
            }
        }
        return before.walk().within(shifts.size());
    }

    static Step day(Model model, Key key) {
        Screen.Season season = (Screen.Season) model.top();
        if (season.shifts().isEmpty() || season.walk().at() < 0) {
            return Step.of(model.say("no shift yet"));
        }
        ShiftId shift = SeasonView.shift(season, season.walk().at()).shift();
        return Step.of(model.writing(true).say("reading " + Frame.named(shift)), new Effect.LookAt(shift));
    }
}
