package screedbook.check;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import screedbook.spec.SpecSheet;

/** The cases of the rules about gauges, densities and cores, of lots of 100 T in sublots of 40 T. */
final class DensityCases {
    /** A sheet of the test's own: each test at least 92, a lot's mean at least 93.0. */
    private static final SpecSheet OWN = SpecSheet.read(
                    "own",
                    ("id,does,quantity,low,high,unit,rounding,document,edition,clause,known,working\n"
                                    + "one,limit,density,92,,pct,absolute,own,of the test,1,read,Each test.\n"
                                    + "mean,limit,density-mean,93.0,,pct,absolute,own,of the test,2,read,The mean.\n")
                            .getBytes(StandardCharsets.UTF_8))
            .sheet()
            .orElseThrow();

    private static final String CHECKED =
            "instrument instrument=G-1 against=standard-count density_count=2950 fit=yes secured=two~locks";

    private static final String READ =
            "gauge first_reading_lb_ft3=145.0 mode=backscatter place_sta=12+50 pull=B lift=2 instrument=G-1"
                    + " correlation_lb_ft3=1.2 gmm=2.480 secured=two~locks";

    private DensityCases() {}

    static void add() {
        gauges();
        densities();
        lots();
        cores();
    }

    private static Map<String, Object> sheet(String name) {
        Map<String, Object> changes = new HashMap<>(SampleCases.LOTS);
        changes.put("sheet", name);
        return changes;
    }

    private static void gauges() {
        RuleCases.shifts(
                "gauge-standard-count",
                "86",
                Sort.MISSING,
                "gauge G-1: 2 readings before a standard count of this shift",
                Shift.night(SampleCases.LOTS)
                        .at("21:00", READ)
                        .at("21:05", READ)
                        .at("21:10", CHECKED),
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED)
                        .at("21:00", READ)
                        .at("21:05", READ));
        RuleCases.shifts(
                "gauge-not-fit",
                "86",
                Sort.LOOK_AGAIN,
                "gauge G-1: 1 reading after a check that found it not fit for use",
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED.replace("fit=yes", "fit=no"))
                        .at("21:00", READ),
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED.replace("fit=yes", "fit=no"))
                        .at("20:55", CHECKED)
                        .at("21:00", READ));
        String bare = READ.replace(" correlation_lb_ft3=1.2", "");
        RuleCases.shifts(
                "gauge-not-correlated",
                "",
                Sort.MISSING,
                "gauge G-1 on 12.5-70A: 1 reading, no correlation to this mix noted",
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED)
                        .at(
                                "20:55",
                                "instrument instrument=G-1 against=cores correlated_mix=19-64 correlation_lb_ft3=2.1")
                        .at("21:00", bare),
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED)
                        .at(
                                "20:55",
                                "instrument instrument=G-1 against=cores correlated_mix=12.5-70A"
                                        + " correlation_lb_ft3=2.1")
                        .at("21:00", bare));
        String open = READ.replace(" secured=two~locks", "");
        RuleCases.shifts(
                "gauge-not-secured",
                "",
                Sort.MISSING,
                "gauge G-1: how it is kept is not written",
                Shift.night(SampleCases.LOTS)
                        .at("20:50", CHECKED.replace(" secured=two~locks", ""))
                        .at("21:00", open),
                Shift.night(SampleCases.LOTS).at("20:50", CHECKED).at("21:00", open));
    }

    private static String core(String number, String gmb) {
        return "core core=" + number + " place_sta=12+50 pull=B lift=2 lot=1 sublot=1 gmb=" + gmb + " gmm=2.500";
    }

    private static void densities() {
        RuleCases.shifts(
                "density-unusual",
                "",
                Sort.LOOK_AGAIN,
                "core C-1 at 12+50, density 87.96 %",
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.199")),
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.200")));
        RuleCases.shifts(
                "density",
                "",
                Sort.OUTSIDE,
                "core C-1 at 12+50, density 91.96 %",
                Shift.night(SampleCases.LOTS).judgedBy(OWN).at("21:00", core("C-1", "2.299")),
                Shift.night(SampleCases.LOTS).judgedBy(OWN).at("21:00", core("C-1", "2.300")));
        RuleCases.shifts(
                "density-mean",
                "",
                Sort.LOOK_AGAIN,
                "lot 1 of 12.5-70A, mean of 2 cores 92.98 % so far",
                Shift.night(SampleCases.LOTS)
                        .judgedBy(OWN)
                        .load("20:10", "1001", "")
                        .at("21:00", core("C-1", "2.310"))
                        .at("21:10", core("C-2", "2.339")),
                Shift.night(SampleCases.LOTS)
                        .judgedBy(OWN)
                        .load("20:10", "1001", "")
                        .at("21:00", core("C-1", "2.310"))
                        .at("21:10", core("C-2", "2.340")));
        Map<String, Object> strip = sheet("control-strip-virginia");
        String read = READ + " target_lb_ft3=154.0 lot=1 sublot=1";
        RuleCases.shifts(
                "of-control-strip",
                "",
                Sort.OUTSIDE,
                "of the control strip 94.9 %",
                Shift.night(strip).at("20:50", CHECKED).at("21:00", read),
                Shift.night(strip).at("20:50", CHECKED).at("21:00", read.replace("145.0", "145.1")));
        RuleCases.shifts(
                "mean-of-control-strip",
                "",
                Sort.OUTSIDE,
                "lot 1 sublot 1, mean of 2 readings of the control strip 97.99 %",
                Shift.night(strip)
                        .at("20:50", CHECKED)
                        .at("21:00", read.replace("145.0", "149.7"))
                        .at("21:05", read.replace("145.0", "149.7")),
                Shift.night(strip)
                        .at("20:50", CHECKED)
                        .at("21:00", read.replace("145.0", "149.7"))
                        .at("21:05", read.replace("145.0", "149.8")));
        Map<String, Object> wsdot = sheet("wsdot-5-04");
        String cold = "profile from_sta=12+00 to_sta=13+00 pull=B lift=2 hottest_degF=280 coldest_degF=240"
                + " density_wanted=yes";
        RuleCases.shifts(
                "density-cold-spot",
                "",
                Sort.OUTSIDE,
                "core C-1 at 12+50, density at a cold spot 89.96 %",
                Shift.night(wsdot).at("21:00", cold).at("22:00", core("C-1", "2.249")),
                Shift.night(wsdot).at("21:00", cold).at("22:00", core("C-1", "2.250")));
        RuleCases.shifts(
                "water-absorbed",
                "",
                Sort.OUTSIDE,
                "C-1, water taken up 2.1 %",
                Shift.night(wsdot)
                        .at("21:00", core("C-1", "2.310"))
                        .at("22:00", "result sample=C-1 what=water-absorbed found=2.1"),
                Shift.night(wsdot)
                        .at("21:00", core("C-1", "2.310"))
                        .at("22:00", "result sample=C-1 what=water-absorbed found=2.0"));
    }

    /** Two loads fill the first sublot of 40 T. */
    private static Shift filled(Map<String, Object> job) {
        return Shift.night(job).load("20:10", "1001", "").load("20:20", "1002", "");
    }

    private static Shift cores(Shift shift, int count, String gmb) {
        for (int i = 1; i <= count; i++) {
            shift.at("22:0" + i, core("C-" + i, gmb));
        }
        return shift;
    }

    private static void lots() {
        RuleCases.shifts(
                "density-tests",
                "",
                Sort.LOOK_AGAIN,
                "lot 1 sublot 1: 4 tests of density",
                cores(filled(sheet("wsdot-5-04")), 4, "2.330"),
                cores(filled(sheet("wsdot-5-04")), 5, "2.330"));
        Map<String, Object> oklahoma = sheet("oklahoma-411-9qa-1999");
        Map<String, Object> small = new HashMap<>(oklahoma);
        small.put("lots", Map.of("lot_ston", new BigDecimal("40"), "ends", "exact-ton", "overnight", "carry"));
        // 90.8, 92.0, 92.4: mean 91.733, s 0.8327, QL 0.2802; of three tests 50 + 100 asin(Q sqrt(3) / 2) / pi is 57.80
        RuleCases.shifts(
                "density-within",
                "",
                Sort.OUTSIDE,
                "lot 1 of 12.5-70A, within limits 57.80 %",
                filled(small)
                        .at("22:01", core("C-1", "2.270"))
                        .at("22:02", core("C-2", "2.300"))
                        .at("22:03", core("C-3", "2.310")),
                filled(small)
                        .at("22:01", core("C-1", "2.340"))
                        .at("22:02", core("C-2", "2.350"))
                        .at("22:03", core("C-3", "2.360")));
    }

    private static void cores() {
        RuleCases.shifts(
                "core-height",
                "",
                Sort.OUTSIDE,
                "core C-1, height untrimmed 1.24 in",
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.310") + " height_in=1.24"),
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.310") + " height_in=1.25"));
        RuleCases.shifts(
                "core-height",
                "",
                Sort.OUTSIDE,
                "core C-1, height untrimmed 1.24 in",
                Shift.night(SampleCases.LOTS)
                        .at(
                                "21:00",
                                "depth thickness_in=1.24 state=core-untrimmed place_sta=12+50 pull=B lift=2 core=C-1"),
                Shift.night(SampleCases.LOTS)
                        .at("21:00", "depth thickness_in=1.24 state=compacted place_sta=12+50 pull=B lift=2 core=C-1"));
        RuleCases.shifts(
                "core-off-mark",
                "84",
                Sort.MISSING,
                "core C-1 cut at 12+50, marked at 12+55, why: not noted",
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.310") + " marked_at_sta=12+55"),
                Shift.night(SampleCases.LOTS).at("21:00", core("C-1", "2.310") + " marked_at_sta=12+55 why=manhole"));
        Map<String, Object> newer = new HashMap<>(SampleCases.LOTS);
        newer.put(
                "lots",
                Map.of("lot_ston", new BigDecimal("100"), "sublot_ston", new BigDecimal("40"), "retest", "newer"));
        RuleCases.shifts(
                "retest-rule",
                "87",
                Sort.LOOK_AGAIN,
                "core C-2 at 12+50, density 93.2 %, a test of the same place again; the first is counted",
                Shift.night(SampleCases.LOTS)
                        .at("21:00", core("C-1", "2.270"))
                        .at("21:10", core("C-2", "2.330") + " again=paver/4"),
                Shift.night(newer)
                        .at("21:00", core("C-1", "2.270"))
                        .at("21:10", core("C-2", "2.330") + " again=paver/4"));
    }
}
