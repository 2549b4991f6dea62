package screedbook.check;

/** The cases of the rules about temperatures of loads and their age. */
final class HeatCases {
    private HeatCases() {}

    static void add() {
        RuleCases.rule(
                "heat-at-paver",
                "",
                Sort.OUTSIDE,
                "at the paver 269 °F",
                s -> s.load("21:00", "1001", "paver_degF=269"),
                s -> s.load("21:00", "1001", "paver_degF=270"));
        RuleCases.rule(
                "heat-at-paver",
                "47, 52",
                Sort.OUTSIDE,
                "at the paver 240 °F, rejected",
                s -> s.load("21:00", "1001", "paver_degF=240 fate=rejected reason=cold decided_by=RK told_to=LM"),
                s -> s.load("21:00", "1001", "paver_degF= fate=rejected reason=cold decided_by=RK told_to=LM"));
        RuleCases.rule(
                "heat-at-paver",
                "42",
                Sort.OUTSIDE,
                "at the paver 259 °F",
                s -> s.load("21:00", "1001", "mix=19-64 lift=1 pull= paver_degF=259"),
                s -> s.load("21:00", "1001", "mix=19-64 lift=1 pull= paver_degF=260"));
        RuleCases.rule(
                "heat-at-plant",
                "",
                Sort.OUTSIDE,
                "at the plant 326 °F",
                s -> s.load("21:00", "1001", "plant_degF=326"),
                s -> s.load("21:00", "1001", "plant_degF=325"));
        RuleCases.rule(
                "heat-at-plant",
                "",
                Sort.OUTSIDE,
                "at the plant 274 °F",
                s -> s.load("21:00", "1001", "plant_degF=274"),
                s -> s.load("21:00", "1001", "plant_degF=275"));
        RuleCases.rule(
                "heat-due",
                "55",
                Sort.MISSING,
                "ticket 1001, load 1 of 12.5-70A: temperature not noted at the paver",
                s -> s.load("21:00", "1001", "paver_degF="),
                s -> s.load("21:00", "1001", ""));
        RuleCases.rule(
                "heat-due",
                "55, 42",
                Sort.MISSING,
                "ticket 1010, load 10 of 12.5-70A",
                s -> loads(s, 10, 5),
                s -> loads(s, 9, 5));
        RuleCases.rule(
                "heat-unusual",
                "56",
                Sort.LOOK_AGAIN,
                "at the paver 150 °F",
                s -> s.load("21:00", "1001", "paver_degF=150"),
                s -> s.load("21:00", "1001", "paver_degF=200"));
        RuleCases.rule(
                "heat-unusual",
                "56",
                Sort.LOOK_AGAIN,
                "at the paver 3000 °F",
                s -> s.load("21:00", "1001", "paver_degF=3000"),
                s -> s.load("21:00", "1001", "paver_degF=400"));
        RuleCases.rule(
                "heat-same-again",
                "57",
                Sort.LOOK_AGAIN,
                "10 temperatures at the paver in a row are 290 °F",
                s -> loads(s, 10, 10),
                s -> loads(s, 9, 9).load("22:30", "1010", "paver_degF=291"));
        RuleCases.rule(
                "load-age",
                "39",
                Sort.OUTSIDE,
                "loaded 19:59, discharged 22:00: 121 min",
                s -> s.load("22:00", "1001", "loaded=19:59"),
                s -> s.load("22:00", "1001", "loaded=20:00"));
    }

    /** Loads five minutes apart, of which the first so many have a temperature. */
    private static Shift loads(Shift shift, int count, int warm) {
        for (int i = 1; i <= count; i++) {
            String clock = "21:%02d".formatted(5 * i);
            shift.load(clock, Integer.toString(1000 + i), i <= warm ? "" : "paver_degF=");
        }
        return shift;
    }
}
