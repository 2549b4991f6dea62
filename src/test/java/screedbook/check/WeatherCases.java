package screedbook.check;

import java.util.HashMap;
import java.util.Map;

/** The cases of the rules about weather and the surface that is paved on. */
final class WeatherCases {
    private static final Map<String, Object> OHIO = Map.of("sheet", "ohio-401-2010");

    private WeatherCases() {}

    static void add() {
        RuleCases.rule(
                "surface-temperature",
                "",
                Sort.OUTSIDE,
                "surface 34 °F",
                s -> s.at("21:35", "surface surface_degF=34 pull=B lift=2"),
                s -> s.at("21:35", "surface surface_degF=35 pull=B lift=2"));
        RuleCases.shifts(
                "surface-temperature",
                "",
                Sort.LOOK_AGAIN,
                "surface 34 °F",
                Shift.night(without("night")).at("21:35", "surface surface_degF=34 pull=B lift=2"),
                Shift.night(without("night")).at("21:35", "surface surface_degF=35 pull=B lift=2"));
        RuleCases.shifts(
                "surface-temperature",
                "96",
                Sort.OUTSIDE,
                "surface 34 °F",
                Shift.night().at("21:35", "surface surface_degF=34 pull=B lift=2"),
                Shift.night(Map.of("thermal", "handheld-camera")).at("21:35", "surface surface_degF=20 pull=B lift=2"));
        RuleCases.shifts(
                "air-temperature",
                "",
                Sort.OUTSIDE,
                "air 49 °F, ticket 1001 placed 21:40",
                Shift.night(OHIO).at("21:30", "weather air_degF=49 road=dry").load("21:40", "1001", ""),
                Shift.night(OHIO).at("21:30", "weather air_degF=50 road=dry").load("21:40", "1001", ""));
        RuleCases.rule(
                "surface-not-read",
                "",
                Sort.MISSING,
                "ticket 1001 placed 21:46 and 1 load after it, last surface reading 19:45",
                s -> s.load("21:46", "1001", "").load("21:50", "1002", ""),
                s -> s.load("21:45", "1001", "")
                        .at("21:46", "surface surface_degF=70 pull=B lift=2")
                        .load("21:50", "1002", ""));
        RuleCases.shifts(
                "surface-not-read",
                "",
                Sort.MISSING,
                "no surface reading until then",
                Shift.bare(Map.of()).load("21:00", "1001", ""),
                Shift.night().load("21:00", "1001", ""));
        RuleCases.shifts(
                "weather-at-start",
                "",
                Sort.MISSING,
                "ticket 1001 placed 21:00, no weather noted until then",
                Shift.bare(Map.of()).load("21:00", "1001", ""),
                Shift.night().load("21:00", "1001", ""));
        RuleCases.shifts(
                "weather-at-start",
                "16",
                Sort.MISSING,
                "no work, and no weather noted",
                Shift.bare(Map.of()).at("19:35", "no-work why=rain"),
                Shift.bare(Map.of())
                        .at("19:35", "no-work why=rain")
                        .at("19:36", "weather air_degF=50 precipitation=rain"));
        RuleCases.rule(
                "weather-again",
                "",
                Sort.MISSING,
                "ticket 1001 placed 23:41, last weather 19:40",
                s -> s.load("23:41", "1001", ""),
                s -> s.load("23:40", "1001", ""));
        // Weather is written down at each change: University of Delaware, T2 Center, on inspectors' diaries (2020).
        RuleCases.rule(
                "weather-after-stop",
                "",
                Sort.MISSING,
                "ticket 1002 placed 21:50 after the stop for rain at 21:20, last weather 19:40",
                s -> s.at("21:20", "stop cause=rain ended=21:45").load("21:50", "1002", ""),
                s -> s.at("21:20", "stop cause=rain ended=21:45")
                        .at("21:44", "weather air_degF=55 road=dry")
                        .load("21:50", "1002", ""));
        RuleCases.rule(
                "weather-after-stop",
                "",
                Sort.MISSING,
                "ticket 1001 placed 21:50 after the stop for cold at 21:20, last weather 19:40",
                s -> s.at("21:20", "stop cause=cold ended=21:45")
                        .load("21:50", "1001", "")
                        .load("21:55", "1002", ""),
                s -> s.at("21:20", "stop cause=no-trucks ended=21:45")
                        .load("21:50", "1001", "")
                        .load("21:55", "1002", ""));
        RuleCases.rule(
                "placed-not-suitable",
                "",
                Sort.OUTSIDE,
                "ticket 1001 placed 21:40 and 1 load after it, the engineer's call is not suitable since 21:30",
                s -> s.at("21:30", "weather air_degF=60 road=dry engineer_call=not-suitable called_by=NN")
                        .load("21:40", "1001", "")
                        .load("21:45", "1002", ""),
                s -> s.at("21:30", "weather air_degF=60 road=dry engineer_call=not-suitable called_by=NN")
                        .at("21:35", "weather air_degF=60 road=dry engineer_call=suitable called_by=NN")
                        .load("21:40", "1001", ""));
        RuleCases.rule(
                "placed-not-dry",
                "",
                Sort.LOOK_AGAIN,
                "ticket 1001 placed 21:40, the road is damp since 21:30",
                s -> s.at("21:30", "weather air_degF=60 road=damp").load("21:40", "1001", ""),
                s -> s.at("21:30", "weather air_degF=60 road=dry").load("21:40", "1001", ""));
        RuleCases.rule(
                "air-unusual",
                "",
                Sort.LOOK_AGAIN,
                "air 121 °F",
                s -> s.at("21:30", "weather air_degF=121"),
                s -> s.at("21:30", "weather air_degF=120"));
        RuleCases.rule(
                "surface-unusual",
                "",
                Sort.LOOK_AGAIN,
                "surface 161 °F",
                s -> s.at("21:30", "surface surface_degF=161 pull=B lift=2"),
                s -> s.at("21:30", "surface surface_degF=160 pull=B lift=2"));
    }

    private static Map<String, Object> without(String key) {
        Map<String, Object> changes = new HashMap<>();
        changes.put(key, null);
        return changes;
    }
}
