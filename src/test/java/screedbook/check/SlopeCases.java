package screedbook.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import screedbook.spec.SpecSheet;

/**
 * The cases of the rules about cross slopes. How they are counted is read (Florida DOT 330-12.3, training slides: one
 * measurement each 100 ft, its deviation without sign, the mean of ten in a row); the table with the figures was not
 * read, so those here are invented and no shipped sheet has any.
 */
final class SlopeCases {
    private static final String LEVEL = "straightedge pull=B lift=2 place_sta=15+00 cross_slope_pct=";

    private SlopeCases() {}

    static void add() {
        RuleCases.shifts(
                "cross-slope",
                "",
                Sort.OUTSIDE,
                "B lift 2 15+00: cross slope 2.6 %, planned 2.0 %, off 0.6 %",
                town().at("21:00", LEVEL + "2.6"),
                town().at("21:00", LEVEL + "1.5"));
        // Five at 2.3 and five at 2.2 are off by 0.25 on average; nine of them are no ten.
        RuleCases.shifts(
                "cross-slope-mean",
                "",
                Sort.OUTSIDE,
                "B lift 2: mean of ten cross slopes in a row, off the planned 2.0 % 0.25 %",
                read(10, "2.3", "2.2"),
                read(9, "2.3", "2.2"));
        // Signs count in each deviation and not in the mean: 0.2 above and 0.2 below are 0.20, not 0.
        RuleCases.shifts(
                "cross-slope-mean",
                "",
                Sort.OUTSIDE,
                "off the planned 2.0 % 0.30 %",
                read(10, "2.3", "1.7"),
                read(10, "2.2", "1.8"));
    }

    private static Shift read(int count, String one, String other) {
        Shift shift = town();
        for (int i = 0; i < count; i++) {
            shift.at("21:" + (10 + i), LEVEL.replace("15+00", (15 + i) + "+00") + (i % 2 == 0 ? one : other));
        }
        return shift;
    }

    /** Pull B falls by 2 %; at most 0.5 off one by one, and 0.2 on average. Invented. */
    private static Shift town() {
        String rows = "id,does,quantity,low,high,unit,rounding,document,edition,clause,known,working\n"
                + "one,limit,cross-slope,,0.5,pct,absolute,contract HC-2026-07,2026,special provision 5,read,"
                + "A cross slope is at most 0.5 off the plan.\n"
                + "ten,limit,cross-slope-mean,,0.2,pct,absolute,contract HC-2026-07,2026,special provision 5,read,"
                + "Ten in a row are at most 0.2 off on average.\n";
        return Shift.night(
                        Map.of("pulls", List.of(Shift.map("name=B lift=2 left_ft=0 right_ft=12 cross_slope_pct=2.0"))))
                .judgedBy(SpecSheet.read("town", rows.getBytes(StandardCharsets.UTF_8))
                        .sheet()
                        .orElseThrow());
    }
}
