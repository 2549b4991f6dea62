package screedbook.demo;

import static screedbook.demo.Seen.note;
import static screedbook.demo.Seen.weather;

import java.io.IOException;
import screedbook.entry.NoWork;
import screedbook.entry.Weather.Call;
import screedbook.entry.Weather.Compass;
import screedbook.entry.Weather.Precipitation;
import screedbook.entry.Weather.Road;
import screedbook.entry.Weather.Sky;
import screedbook.entry.YesNo;

/** Wednesday 13 May: rain, nothing placed. */
final class RainDay {
    private final Scene scene;
    private final Pen pen;

    RainDay(Scene scene) {
        this.scene = scene;
        this.pen = scene.pen("paver", "RK");
    }

    void write() throws IOException {
        scene.opens(pen, "06:31");
        pen.put(
                "06:33",
                weather(43, 92, 11, Compass.NW, Sky.OVERCAST, Precipitation.RAIN, Road.WET, Call.NOT_SUITABLE, "AS"));
        pen.put("06:38", new NoWork(NoWork.Why.RAIN, "Lee Marrin", "crew sent home at 06:30, plant told at 06:25"));
        pen.put("06:44", note("Water stands in the milled surface from 58+00 to 59+40; low spot marked", "surface"));
        pen.put(
                "11:10",
                weather(
                        46,
                        90,
                        13,
                        Compass.NW,
                        Sky.OVERCAST,
                        Precipitation.LIGHT_RAIN,
                        Road.WET,
                        Call.NOT_SUITABLE,
                        "AS"));
        scene.closes(
                pen, "11:20", Scene::agreed, null, "Next shift Thursday night, so that the road can dry", YesNo.NO);
        pen.write();
        scene.page();
    }
}
