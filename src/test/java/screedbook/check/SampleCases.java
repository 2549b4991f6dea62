package screedbook.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import screedbook.calc.RandomNumber;
import screedbook.entry.Draw;
import screedbook.entry.Ref;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The cases of the rules about random places, samples and custody, of lots of 100 T in sublots of 40 T. */
final class SampleCases {
    private static final String MIX = "12.5-70A";
    static final Map<String, Object> LOTS = Map.of(
            "lots",
            Map.of(
                    "lot_ston",
                    new BigDecimal("100"),
                    "sublot_ston",
                    new BigDecimal("40"),
                    "ends",
                    "exact-ton",
                    "overnight",
                    "carry"));
    private static final String CLOSE = "closing agreed=yes day_charged=yes";

    private SampleCases() {}

    static void add() {
        places();
        samples();
        custody();
    }

    /** Two loads, with a random place in the first. */
    private static Shift drawn() {
        return Shift.night(LOTS)
                .load("21:00", "1001", "from_sta=12+00 to_sta=14+00")
                .with(Draw.reached(
                        MIX,
                        1,
                        new Draw.Reached(
                                1,
                                1,
                                Amount.of("10.00", Unit.SHORT_TON),
                                new Ref("paver", 4),
                                "B",
                                2,
                                null,
                                null,
                                null,
                                null,
                                List.of())));
    }

    private static void places() {
        RuleCases.shifts(
                "place-without-sample",
                "83",
                Sort.MISSING,
                "random place of lot 1 sublot 1, ticket 1001: nothing taken",
                drawn().load("21:10", "1002", "from_sta=14+00 to_sta=16+00"),
                drawn().at("21:05", "sample sample=S-1 material=mix ticket=1001 lot=1 sublot=1")
                        .load("21:10", "1002", "from_sta=14+00 to_sta=16+00"));
        RuleCases.shifts(
                "sample-instead",
                "83",
                Sort.MISSING,
                "sample S-1 of ticket 1002, its random place lies in ticket 1001, why: not noted, allowed by: not noted",
                drawn().load("21:10", "1002", "")
                        .at("21:15", "sample sample=S-1 ticket=1002 lot=1 sublot=1 draw=paver/5"),
                drawn().load("21:10", "1002", "")
                        .at(
                                "21:15",
                                "sample sample=S-1 ticket=1002 lot=1 sublot=1 draw=paver/5"
                                        + " instead_of=load~1001,~missed allowed_by=AS"));
        RuleCases.shifts(
                "sample-instead",
                "83",
                Sort.MISSING,
                "sample S-1 instead of load 1001, missed, allowed by: not noted",
                Shift.night(LOTS).at("21:15", "sample sample=S-1 instead_of=load~1001,~missed"),
                Shift.night(LOTS).at("21:15", "sample sample=S-1 instead_of=load~1001,~missed allowed_by=AS"));
        RuleCases.shifts(
                "seed-differs",
                "",
                Sort.DOES_NOT_ADD_UP,
                "lot 1 of 12.5-70A: the seed's SHA-256 is",
                told("another"),
                told("one"));
    }

    private static Shift told(String seed) {
        Draw.Begun begun = new Draw.Begun(RandomNumber.METHOD, RandomNumber.sha256("one"), null, null, null);
        return Shift.night(LOTS).with(Draw.begun(MIX, 1, begun)).with(Draw.closed(MIX, 1, seed));
    }

    private static final String SAMPLE = "sample sample=S-1 material=mix ticket=1001 taken_by=RK seal_number=4411";

    private static Shift sampled() {
        return Shift.night(LOTS).load("21:00", "1001", "").at("21:05", SAMPLE);
    }

    private static void samples() {
        RuleCases.shifts(
                "sample-number-again",
                "",
                Sort.DOES_NOT_ADD_UP,
                "sample S-1: the number stands at 2026-06-03-night paver/5",
                sampled().at("21:20", "sample sample=S-1"),
                sampled().at("21:20", "sample sample=S-2"));
        RuleCases.shifts(
                "sample-not-known",
                "",
                Sort.LOOK_AGAIN,
                "result of S-7, which is no sample or core of the record",
                sampled().at("21:20", "result sample=S-7 what=gmb found=2.31"),
                sampled().at("21:20", "result sample=S-1 what=gmb found=2.31"));
    }

    private static void custody() {
        RuleCases.shifts(
                "seal-differs",
                "85",
                Sort.DOES_NOT_ADD_UP,
                "sample S-1: seal 4412 read, sealed under 4411",
                sampled().at("22:00", "custody sample=S-1 given_by=RK taken_by=LM seal_number=4412"),
                sampled().at("22:00", "custody sample=S-1 given_by=RK taken_by=LM seal_number=4411"));
        RuleCases.shifts(
                "seal-not-whole",
                "85",
                Sort.LOOK_AGAIN,
                "sample S-1: the seal was not whole",
                sampled().at("22:00", "custody sample=S-1 given_by=RK taken_by=LM seal_number=4411 whole=no"),
                sampled().at("22:00", "custody sample=S-1 given_by=RK taken_by=LM seal_number=4411 whole=yes"));
        RuleCases.shifts(
                "custody-gap",
                "85",
                Sort.DOES_NOT_ADD_UP,
                "sample S-1: given by AS, last taken by LM",
                sampled()
                        .at("22:00", "custody sample=S-1 given_by=RK taken_by=LM")
                        .at("22:30", "custody sample=S-1 given_by=AS taken_by=CD"),
                sampled()
                        .at("22:00", "custody sample=S-1 given_by=RK taken_by=LM")
                        .at("22:30", "custody sample=S-1 given_by=lm taken_by=CD"));
        RuleCases.shifts(
                "custody-open",
                "85",
                Sort.LOOK_AGAIN,
                "sample S-1 at the close: with RK, no hand-over noted",
                sampled().at("23:00", CLOSE),
                sampled()
                        .at("22:00", "custody sample=S-1 given_by=RK taken_by=LM")
                        .at("23:00", CLOSE));
    }
}
