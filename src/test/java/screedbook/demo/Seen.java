package screedbook.demo;

import java.util.List;
import screedbook.entry.Answer;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.Surface;
import screedbook.entry.Weather;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** Short ways to say what was seen. */
final class Seen {
    private Seen() {}

    static Weather weather(
            int air,
            int humidity,
            int wind,
            Weather.Compass from,
            Weather.Sky sky,
            Weather.Precipitation falls,
            Weather.Road road) {
        return weather(air, humidity, wind, from, sky, falls, road, Weather.Call.NONE_RECORDED, null);
    }

    static Weather weather(
            int air,
            int humidity,
            int wind,
            Weather.Compass from,
            Weather.Sky sky,
            Weather.Precipitation falls,
            Weather.Road road,
            Weather.Call call,
            String by) {
        return new Weather(
                degrees(air),
                Amount.of(String.valueOf(humidity), Unit.PERCENT),
                Amount.of(String.valueOf(wind), Unit.MILE_PER_HOUR),
                from,
                sky,
                falls,
                null,
                road,
                call,
                by,
                null);
    }

    static Surface surface(int heat, double at, String pull, int lift, Surface.Light light, String instrument) {
        return new Surface(degrees(heat), Mat.station(at), pull, lift, light, instrument, Surface.Base.ASPHALT);
    }

    static Note note(String text, String... tags) {
        return new Note(List.of(tags), text, null, null, null, null, null);
    }

    static Note said(String tag, String whom, String text, String answer) {
        return new Note(List.of(tag), text, whom, answer, null, null, null);
    }

    static Note opened(int mat, double at, String pull, String text) {
        return new Note(List.of("lane opened"), text, null, null, degrees(mat), Mat.station(at), pull);
    }

    static Answer answer(Ref of, String rule, String text, String decidedBy, String toldTo) {
        return new Answer(of, rule, text, decidedBy, toldTo);
    }

    static Amount degrees(int heat) {
        return Amount.of(String.valueOf(heat), Unit.DEG_F);
    }
}
