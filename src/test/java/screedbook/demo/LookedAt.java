package screedbook.demo;

import java.time.OffsetDateTime;
import java.util.function.ToIntFunction;
import screedbook.entry.Aside;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Kind;
import screedbook.entry.Ref;

/** A night at Tanager Flats: who writes, where the paver is, and what is looked at the same way in every night. */
final class LookedAt {
    private final Scene scene;
    private final Pen pen;
    private final double start;
    private Paving paving;

    LookedAt(Scene scene, Pen pen, double start) {
        this.scene = scene;
        this.pen = pen;
        this.start = start;
    }

    void laid(Paving paving) {
        this.paving = paving;
    }

    void put(String clock, Kind kind, String... pairs) {
        pen.put(kind.word() + " " + clock, pen.at(clock), pen.lag(), Keyed.of(kind, pairs), Aside.NONE);
    }

    /** Where the paver is at a clock time, and some feet behind. */
    String at(String clock, double behind) {
        double feet = start;
        for (Loaded load : paving.loads()) {
            if (load.to != null && load.trip.discharged().isBefore(pen.at(clock))) {
                feet = load.to.distance().doubleValue();
            }
        }
        return Mat.station(Math.max(start, Math.round(feet - behind))).text();
    }

    void spread(String clock, int first, int last) {
        Loaded from = paving.loads().get(first);
        Loaded to = paving.loads().get(last);
        put(
                clock,
                Kind.YIELD,
                "from_sta",
                from.from.text(),
                "to_sta",
                to.to.text(),
                "width_ft",
                "12.0",
                "pull",
                "A",
                "lift",
                "1",
                "paver",
                "P1",
                "first_ticket",
                from.number,
                "last_ticket",
                to.number);
    }

    void mat(String clock, String heat, String taken, double behind) {
        put(
                clock,
                Kind.MAT,
                "mat_degF",
                heat,
                "taken",
                taken,
                "read_in",
                "surface",
                "place_sta",
                at(clock, behind),
                "pull",
                "A",
                "lift",
                "1",
                "instrument",
                "IR-5");
    }

    /** A profile of the 150 ft behind the paver. */
    void profile(String clock, int hottest, int coldest, String sublot, String witness, String cause, String action) {
        put(
                clock,
                Kind.PROFILE,
                "from_sta",
                at(clock, 170),
                "to_sta",
                at(clock, 20),
                "pull",
                "A",
                "lift",
                "1",
                "lot",
                "1",
                "sublot",
                sublot,
                "hottest_degF",
                String.valueOf(hottest),
                "coldest_degF",
                String.valueOf(coldest),
                "method",
                "camera",
                "stopped",
                cause != null && cause.startsWith("paver stopped") ? "yes" : "no",
                "transfer",
                "no",
                "cause",
                cause,
                "action",
                action,
                "density_wanted",
                cause != null && cause.startsWith("paver stopped") ? "yes" : null,
                "witness",
                witness,
                "image",
                "TC-" + clock.replace(":", ""),
                "instrument",
                "TC-1");
    }

    void gauge(String clock, String first, String second, String left, String sublot, String by, String certificate) {
        put(
                clock,
                Kind.GAUGE,
                "first_reading_lb_ft3",
                first,
                "second_reading_lb_ft3",
                second,
                "mode",
                "backscatter",
                "correlation_lb_ft3",
                "2.1",
                "place_sta",
                at(clock, 900),
                "from_left_ft",
                left,
                "pull",
                "A",
                "lift",
                "1",
                "mix",
                "12.5-70A",
                "lot",
                "1",
                "sublot",
                sublot,
                "instrument",
                "NG-1",
                "operated_by",
                by,
                "certificate",
                certificate,
                "secured",
                "locked case, chained to the locked truck bed");
    }

    /** The sample that a random place asks for is taken behind the paver, a few minutes after its load. */
    void sampled(Draw draw, Ref told, String by, int minutes, ToIntFunction<Integer> seal) {
        Draw.Reached at = draw.reached();
        String number = "TF-" + draw.lot() + "-" + at.sublot();
        OffsetDateTime when = pen.last().plusMinutes(minutes);
        Entry sample = Keyed.of(
                Kind.SAMPLE,
                "sample",
                number,
                "material",
                "mix",
                "purpose",
                "acceptance",
                "at_random",
                "yes",
                "taken_by",
                by,
                "witness",
                "PO",
                "ticket",
                scene.number(at.of()),
                "place_sta",
                at.place() == null ? null : at.place().text(),
                "pull",
                at.pull(),
                "lift",
                String.valueOf(at.lift()),
                "mix",
                "12.5-70A",
                "lot",
                String.valueOf(draw.lot()),
                "sublot",
                String.valueOf(at.sublot()),
                "draw",
                told.toString(),
                "seal_number",
                String.valueOf(seal.applyAsInt(at.sublot())),
                "container",
                "box, 40 lb");
        pen.put("sample " + number, when, when.plusSeconds(40), sample, Aside.NONE);
    }
}
