package screedbook.demo;

import screedbook.entry.Aside;
import screedbook.entry.Kind;

/** What is keyed at the beginning and the end of each night at Tanager Flats. */
final class NightCrew {
    private static final String[] TRUCKS = {"K11", "K12", "K14", "K17", "K19", "K20", "K23", "K26"};
    private static final String[][] CREW = {
        {"Ostler & Wray", "people", "foreman", "1", "9.5"},
        {"Ostler & Wray", "people", "screed and paver operators", "3", "9.5"},
        {"Ostler & Wray", "people", "roller operators", "3", "9.5"},
        {"Ostler & Wray", "people", "rakers and laborers", "4", "9.5"},
        {"Ostler & Wray", "machines", "paver", "1", "8.0"},
        {"Ostler & Wray", "machines", "roller", "3", "8.0"},
        {"Ostler & Wray", "machines", "distributor", "1", "5.0"},
        {"Salt Road Signs", "people", "flaggers", "4", "10.0"}
    };

    private final Scene scene;
    private final Pen pen;

    NightCrew(Scene scene, Pen pen) {
        this.scene = scene;
        this.pen = pen;
    }

    /** Trucks as they report, people and machines, instruments. */
    void begins(int count) {
        for (int i = 0; i < TRUCKS.length; i++) {
            String tare =
                    scene.job().truck(TRUCKS[i]).orElseThrow().tare().value().toPlainString();
            pen.put(
                    "20:" + (20 + 2 * i),
                    Keyed.of(Kind.TRUCK, "truck", TRUCKS[i], "step", "on-job", "tare_lb", tare, "cover", "yes"));
        }
        for (int i = 0; i < CREW.length; i++) {
            String[] c = CREW[i];
            pen.put(
                    "20:" + (40 + i),
                    Keyed.of(Kind.CREW, "firm", c[0], "what", c[1], "named", c[2], "how_many", c[3], "hours", c[4]));
        }
        pen.put(
                "20:14",
                Keyed.of(
                        Kind.INSTRUMENT,
                        "instrument",
                        "P-2",
                        "against",
                        "ice-bath",
                        "shows_degF",
                        "32",
                        "known_degF",
                        "32",
                        "fit",
                        "yes"));
        pen.put(
                "20:17",
                Keyed.of(
                        Kind.INSTRUMENT,
                        "instrument",
                        "NG-1",
                        "against",
                        "standard-count",
                        "density_count",
                        String.valueOf(count),
                        "moisture_count",
                        "655",
                        "fit",
                        "yes",
                        "secured",
                        "locked case, chained to the locked truck bed"));
    }

    void ends(String clock, String trucks) {
        int i = 0;
        for (String truck : trucks.split(" ")) {
            pen.put(
                    null,
                    pen.at(clock).plusMinutes(i++),
                    pen.lag(),
                    Keyed.of(Kind.TRUCK, "truck", truck, "step", "off-job"),
                    Aside.NONE);
        }
    }
}
