package screedbook.demo;

import screedbook.entry.Kind;
import screedbook.entry.Moment;

/** Gauge readings, cores and their custody on the first night at Tanager Flats. */
final class TanagerCores {
    private final Pen pen;
    private final LookedAt looks;

    TanagerCores(Pen pen, LookedAt looks) {
        this.pen = pen;
        this.looks = looks;
    }

    void density() {
        looks.put(
                "20:19",
                Kind.INSTRUMENT,
                "instrument",
                "NG-1",
                "against",
                "cores",
                "correlated_mix",
                "12.5-70A",
                "correlation_lb_ft3",
                "2.1",
                "spread_lb_ft3",
                "0.5",
                "fit",
                "yes",
                "secured",
                "locked case, chained to the locked truck bed");
        looks.gauge("22:42", "142.1", "141.7", "4.0", "1", "MV", "DG-118");
        looks.gauge("22:48", "141.2", "141.9", "9.5", "1", "MV", "DG-118");
        looks.gauge("00:56", "136.4", "136.9", "6.0", "2", "MV", "DG-118");
        looks.gauge("01:02", "141.6", "142.0", "3.5", "2", "MV", "DG-118");
        looks.gauge("03:56", "142.4", "142.2", "8.0", "3", "MV", "DG-118");
        looks.gauge("04:02", "140.9", "141.4", "5.0", "3", "MV", "DG-118");
        core("03:20", "C-1", 1500, "5.0", "2.08", "1", null, null, null);
        core("03:34", "C-2", 4000, "7.5", "1.94", "2", "58+00", "9.0", "manhole frame at the mark");
        core("03:48", "C-3", 7000, "4.0", "2.11", "3", null, null, null);
    }

    private void core(
            String clock,
            String number,
            double on,
            String left,
            String height,
            String sublot,
            String markedAt,
            String markedLeft,
            String why) {
        looks.put(
                clock,
                Kind.CORE,
                "core",
                number,
                "diameter_in",
                "6.00",
                "taken_by",
                "PO",
                "witness",
                "MV",
                "filled",
                "yes",
                "place_sta",
                Mat.station(TanagerNight.START + on).text(),
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
                "at_random",
                "yes",
                "marked_at_sta",
                markedAt,
                "marked_left_ft",
                markedLeft,
                "why",
                why,
                "height_in",
                height,
                "sample",
                "TF-" + number);
        looks.put(
                Moment.clock(pen.at(clock).plusMinutes(6)),
                Kind.SAMPLE,
                "sample",
                "TF-" + number,
                "material",
                "core",
                "purpose",
                "acceptance",
                "at_random",
                "yes",
                "taken_by",
                "PO",
                "witness",
                "MV",
                "place_sta",
                Mat.station(TanagerNight.START + on).text(),
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
                "seal_number",
                "664" + (30 + Integer.parseInt(sublot)),
                "container",
                "core tube");
    }

    /** The sample goes to the laboratory's driver; one seal is read otherwise than it was written. */
    void hand(String clock, String sample, String seal) {
        looks.put(
                clock,
                Kind.CUSTODY,
                "sample",
                sample,
                "given_by",
                sample.contains("C") ? "PO" : "MV",
                "taken_by",
                "GR",
                "seal_number",
                seal,
                "whole",
                "yes",
                "condition",
                "dry, labelled",
                "location",
                "trailer at 18+00");
    }
}
