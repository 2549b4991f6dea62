package screedbook.check;

import java.util.List;
import java.util.Map;

/** The cases of the rules about tack. */
final class TackCases {
    private static final String SHOT =
            "tack product=CSS-1h surface=milled from_sta=12+00 to_sta=18+00 width_ft=12 pull=B"
                    + " lift=2 reading=tank material_degF=140 before_gal=500 ";
    private static final Map<String, Object> WSDOT = Map.of("sheet", "wsdot-5-04");

    private TackCases() {}

    static void add() {
        RuleCases.rule(
                "tack-rate",
                "",
                Sort.OUTSIDE,
                "CSS-1h on milled 12+00 to 18+00: residual 0.065",
                s -> s.at("20:00", SHOT + "after_gal=411"),
                s -> s.at("20:00", SHOT + "after_gal=420"));
        RuleCases.rule(
                "tack-rate",
                "75",
                Sort.OUTSIDE,
                "residual 0.033",
                s -> s.at("20:00", SHOT + "after_gal=410 emulsion_parts=1 water_parts=1"),
                s -> s.at("20:00", SHOT + "after_gal=370 emulsion_parts=1 water_parts=1"));
        RuleCases.rule(
                "tack-rate",
                "74",
                Sort.OUTSIDE,
                "residual 0.068",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=410"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=420"));
        RuleCases.rule(
                "tack-rate-unusual",
                "73",
                Sort.LOOK_AGAIN,
                "applied 0.600",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=20"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=260"));
        RuleCases.rule(
                "tack-volume-not-known",
                "79",
                Sort.MISSING,
                "no rate, reading after not noted",
                s -> s.at("20:00", SHOT),
                s -> s.at("20:00", SHOT + "after_gal=430"));
        RuleCases.rule(
                "tack-after-above-before",
                "72",
                Sort.DOES_NOT_ADD_UP,
                "before 500 gal, after 900 gal",
                s -> s.at("20:00", SHOT + "distributor=D1 after_gal=900"),
                s -> s.at("20:00", SHOT + "distributor=D1 after_gal=900")
                        .at("20:10", "refill distributor=D1 before_gal=450 after_gal=950"));
        RuleCases.rule(
                "tack-temperature-not-noted",
                "76",
                Sort.MISSING,
                "temperature of the material not noted",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "") + "after_gal=430"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=430"));
        RuleCases.rule(
                "tack-temperature",
                "",
                Sort.LOOK_AGAIN,
                "tack material 14 °F",
                s -> s.at("21:00", SHOT.replace("material_degF=140", "material_degF=14") + "after_gal=450"),
                s -> s.at("21:00", SHOT.replace("material_degF=140", "material_degF=60") + "after_gal=450"));
        RuleCases.rule(
                "tack-temperature",
                "",
                Sort.LOOK_AGAIN,
                "tack material 401 °F",
                s -> s.at("20:00", SHOT.replace("140", "401") + "after_gal=430"),
                s -> s.at("20:00", SHOT.replace("140", "400") + "after_gal=430"));
        RuleCases.rule(
                "tack-diluted",
                "75",
                Sort.OUTSIDE,
                "diluted, emulsion to water 1:1",
                s -> s.at("20:00", SHOT + "after_gal=430 emulsion_parts=1 water_parts=1"),
                s -> s.at(
                        "20:00", SHOT.replace("CSS-1h", "Dilutable") + "after_gal=430 emulsion_parts=1 water_parts=1"));
        RuleCases.shifts(
                "tack-diluted",
                "75",
                Sort.OUTSIDE,
                "emulsion to water 2:3: water, of the emulsion, 150",
                Shift.night(WSDOT).at("20:00", SHOT + "after_gal=430 emulsion_parts=2 water_parts=3"),
                Shift.night(WSDOT).at("20:00", SHOT + "after_gal=430 emulsion_parts=2 water_parts=2"));
        RuleCases.rule(
                "tack-ratio-not-known",
                "75",
                Sort.MISSING,
                "diluted, ratio not noted; no residual rate",
                s -> s.at("20:00", SHOT + "after_gal=430 diluted=ratio-unknown"),
                s -> s.at("20:00", SHOT + "after_gal=430 diluted=yes emulsion_parts=1 water_parts=1"));
        RuleCases.rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "tack 12+00 to 18+00 broken: not noted, paved over 21:38",
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430 broken=21:38")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"));
        RuleCases.rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "broken: 21:39, paved over 21:38",
                s -> s.at("21:12", SHOT + "after_gal=430 broken=21:39")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=18+00 to_sta=19+53"));
        RuleCases.rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "paved over 21:45",
                s -> s.at("21:12", SHOT + "after_gal=430")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53 lift=1")
                        .load("21:45", "1002", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+03 to_sta=13+53 lift=1"));
        RuleCases.rule(
                "tack-rained-on",
                "78",
                Sort.LOOK_AGAIN,
                "light rain at 21:20, paved over 21:38",
                s -> rained(s).load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> rained(s)
                        .at("21:30", SHOT + "after_gal=430 again=paver/4")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"));
        RuleCases.rule(
                "tack-face",
                "",
                Sort.MISSING,
                "pull B lift 2: no contact face noted as tacked in this shift",
                s -> s.load("21:38", "1001", ""),
                s -> s.at("21:00", "tack face=longitudinal-joint from_sta=12+00 to_sta=18+00 pull=B lift=2")
                        .load("21:38", "1001", ""));
        RuleCases.rule(
                "tack-under-mat",
                "77",
                Sort.DOES_NOT_ADD_UP,
                "32 ft of 632 ft paved without tack noted for it",
                s -> s.at("21:00", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+00 to_sta=18+32"),
                s -> s.at("21:00", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+00 to_sta=18+31"));
        RuleCases.rule(
                "tack-sample",
                "",
                Sort.MISSING,
                "tack samples noted on this project: 0",
                s -> s.at("21:00", SHOT + "after_gal=430"),
                s -> s.at("21:00", SHOT + "after_gal=430 sample=S1"));
        RuleCases.shifts(
                "tack-residue",
                "",
                Sort.MISSING,
                "CSS-1h: residue not in the job",
                Shift.night(product("name=CSS-1h")).at("21:00", SHOT + "after_gal=430"),
                Shift.night(product("name=CSS-1h residue_pct=60")).at("21:00", SHOT + "after_gal=430"));
        RuleCases.rule(
                "tack-hand-work",
                "79",
                Sort.MISSING,
                "used 12 gal, known by: not noted",
                s -> s.at("21:00", "tack product=CSS-1h surface=milled area_yd2=100 used_gal=12 material_degF=140"),
                s -> s.at(
                        "21:00",
                        "tack product=CSS-1h surface=milled area_yd2=100 used_gal=12 material_degF=140"
                                + " basis=two~buckets"));
    }

    private static Map<String, Object> product(String told) {
        return Map.of("products", List.of(Shift.map(told)));
    }

    private static Shift rained(Shift shift) {
        return shift.at("21:12", SHOT + "after_gal=430 broken=21:15")
                .at("21:20", "weather air_degF=60 precipitation=light-rain road=damp")
                .at("21:28", "weather air_degF=60 precipitation=none road=dry");
    }
}
