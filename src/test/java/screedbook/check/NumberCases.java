package screedbook.check;

import java.time.LocalDate;
import java.util.Map;
import screedbook.tally.ToDate;

/** The cases of the rules about ticket numbers. */
final class NumberCases {
    private NumberCases() {}

    static void add() {
        RuleCases.rule(
                "number-repeated",
                "24",
                Sort.DOES_NOT_ADD_UP,
                "number 1001 of plant Quarry stands at paver/4 and paver/5, with the same truck and net",
                s -> s.load("21:00", "1001", "").load("21:10", "1001", ""),
                s -> s.load("21:00", "1001", "").load("21:10", "1002", ""));
        RuleCases.rule(
                "number-repeated",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "with other figures",
                s -> s.load("21:00", "1001", "").load("21:10", "1001", "truck=T118 net_ston=20.10"),
                s -> s.load("21:00", "1001", "").load("21:10", "1001", "truck=T118 net_ston=20.10 plant=River"));
        RuleCases.rule(
                "number-repeated",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "stands at paver/4 and paver/5",
                s -> s.load("21:00", "1001", "plant=River").load("21:10", "1001", "plant=River net_ston=21.00"),
                s -> s.load("21:00", "1001", "plant=River fate=void-at-plant")
                        .load("21:10", "1001", "plant=River net_ston=21.00 reissue_of=1001"));
        RuleCases.rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "after 1001 comes 1004 of plant Quarry; not here: 1002 to 1003",
                s -> s.load("21:00", "1001", "").load("21:10", "1004", ""),
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1004", "")
                        .at("21:20", "number plant=Quarry number=1002 what=void-at-plant")
                        .at("21:20", "number plant=Quarry number=1003 what=other-job"));
        RuleCases.rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1003",
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1004", "")
                        .at("21:20", "number plant=Quarry number=1002 what=void-at-plant"),
                s -> s.load("21:00", "1001", "plant=River").load("21:10", "1004", "plant=River"));
        RuleCases.rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1002, said to be still coming",
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1003", "")
                        .at("21:20", "number plant=Quarry number=1002 what=still-coming"),
                s -> s.load("21:00", "1001", "").load("21:10", "1003", "").load("21:20", "1002", ""));
        RuleCases.rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1002 to 91000",
                s -> s.load("21:00", "1001", "").load("21:10", "91001", ""),
                s -> s.load("21:00", "1001", "").load("21:10", "91001", "plant=River"));
        RuleCases.shifts(
                "number-in-earlier-shift",
                "24, 25",
                Sort.DOES_NOT_ADD_UP,
                "number 1001 of plant Quarry was placed in 2026-06-02-day too, at paver/",
                Shift.night().after(kept("2026-06-02", "")).load("21:00", "1001", ""),
                Shift.night().after(kept("2026-06-02", "")).load("21:00", "1002", ""));
        RuleCases.shifts(
                "number-in-earlier-shift",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "number 1001 of plant Quarry was placed in 2026-01-02-day too",
                Shift.night().after(kept("2026-01-02", "")).load("21:00", "1001", ""),
                Shift.night().after(kept("2025-12-31", "")).load("21:00", "1001", ""));
        RuleCases.shifts(
                "number-in-earlier-shift",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "number 1001 of plant River was placed in 2026-06-02-day too",
                Shift.night().after(kept("2026-06-02", "plant=River")).load("21:00", "1001", "plant=River"),
                Shift.night().after(kept("2026-06-02", "plant=River")).load("21:00", "1001", ""));
        RuleCases.shifts(
                "number-in-earlier-shift",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "was placed in 2026-06-02-day too",
                Shift.night().after(kept("2026-06-02", "")).load("21:00", "1001", ""),
                Shift.night()
                        .after(kept("2026-06-02", "fate=rejected reason=cold decided_by=RK told_to=LM"))
                        .load("21:00", "1001", ""));
        RuleCases.rule(
                "number-out-of-order",
                "27",
                Sort.LOOK_AGAIN,
                "ticket 1002 loaded 20:10, ticket 1001 loaded 20:20",
                s -> s.load("21:00", "1001", "loaded=20:20").load("21:10", "1002", "loaded=20:10"),
                s -> s.load("21:10", "1001", "loaded=20:10").load("21:00", "1002", "loaded=20:20"));
        RuleCases.rule(
                "number-not-noted",
                "28",
                Sort.MISSING,
                "truck T104: ticket lost, no number noted",
                s -> s.load("21:00", "", "kept=lost"),
                s -> s.load("21:00", "1001", "kept=paper"));
        RuleCases.rule(
                "number-not-read",
                "29",
                Sort.LOOK_AGAIN,
                "ticket number read as 10?1",
                s -> s.load("21:00", "10?1", ""),
                s -> s.load("21:00", "1001", ""));
        RuleCases.rule(
                "issued-again",
                "25",
                Sort.LOOK_AGAIN,
                "ticket 1002 is instead of 1001, which is not in this shift",
                s -> s.load("21:00", "1002", "reissue_of=1001"),
                s -> s.load("20:50", "1001", "").load("21:00", "1002", "reissue_of=1001"));
    }

    /** An earlier shift that has one load of the number 1001. */
    private static ToDate kept(String date, String changes) {
        Shift earlier = Shift.day(LocalDate.parse(date), Map.of()).load("10:00", "1001", changes);
        return ToDate.of(earlier.day(), earlier.job());
    }
}
