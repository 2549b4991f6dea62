package screedbook.check;

import java.util.List;
import java.util.Map;

/** The cases of the rules about what else stands on a ticket. */
final class TicketCases {
    private TicketCases() {}

    static void add() {
        RuleCases.rule(
                "mix-not-planned",
                "40",
                Sort.LOOK_AGAIN,
                "ticket 1001 is of 19-64",
                s -> s.load("21:00", "1001", "mix=19-64"),
                s -> s.load("21:00", "1001", ""));
        RuleCases.rule(
                "mix-not-planned",
                "40, 41",
                Sort.LOOK_AGAIN,
                "ticket 1001 is of 9.5-58, which is not in the job",
                s -> s.load("21:00", "1001", "mix=9.5-58"),
                s -> s.load("21:00", "1001", "mix=9.5-58 fate=other-job pull="));
        RuleCases.rule(
                "truck-not-listed",
                "32",
                Sort.LOOK_AGAIN,
                "truck T9 on ticket 1001 is not in the job's list",
                s -> s.load("21:00", "1001", "truck=T9"),
                s -> s.load("21:00", "1001", "truck=T118"));
        RuleCases.rule(
                "truck-back-soon",
                "38",
                Sort.LOOK_AGAIN,
                "truck T104: ticket 1001 discharged 21:00, ticket 1002 loaded 21:09, 9 min between",
                s -> s.load("21:00", "1001", "").load("21:40", "1002", "loaded=21:09"),
                s -> s.load("21:00", "1001", "").load("21:40", "1002", "loaded=21:10"));
        RuleCases.rule(
                "handwritten",
                "30",
                Sort.MISSING,
                "ticket 1001 is handwritten, weighed by: not noted",
                s -> s.load("21:00", "1001", "kept=handwritten"),
                s -> s.load("21:00", "1001", "kept=handwritten weighed_by=L.~Moss"));
        RuleCases.shifts(
                "scale-certificate",
                "",
                Sort.OUTSIDE,
                "scale certificate of plant Quarry until 2026-06-02",
                Shift.night(plant("2026-06-02")).load("21:00", "1001", ""),
                Shift.night(plant("2026-06-03")).load("21:00", "1001", ""));
        RuleCases.rule(
                "fate-reason",
                "47",
                Sort.MISSING,
                "ticket 1001 rejected, not noted: decided by, told to",
                s -> s.load("21:00", "1001", "fate=rejected reason=smoke"),
                s -> s.load("21:00", "1001", "fate=rejected reason=smoke decided_by=RK told_to=LM"));
        RuleCases.rule(
                "part-not-known",
                "46",
                Sort.MISSING,
                "ticket 1001 placed in part, not noted: how that is known",
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=4"),
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=4 basis=weigh-back"));
        RuleCases.rule(
                "void-with-place",
                "50",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 is void at plant and has the place 12+00",
                s -> s.load("21:00", "1001", "fate=void-at-plant from_sta=12+00"),
                s -> s.load("21:00", "1001", "fate=void-at-plant"));
        RuleCases.rule(
                "place-not-noted",
                "51",
                Sort.MISSING,
                "ticket 1001 placed, where: not noted",
                s -> s.load("21:00", "1001", "pull="),
                s -> s.load("21:00", "1001", "pull= place=driveway"));
        RuleCases.rule(
                "no-length",
                "70",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 placed from 12+00 to 12+00",
                s -> s.load("21:00", "1001", "from_sta=12+00 to_sta=12+00"),
                s -> s.load("21:00", "1001", "from_sta=12+00 to_sta=12+01"));
        RuleCases.rule(
                "their-count",
                "",
                Sort.DOES_NOT_ADD_UP,
                "contractor's count 2 loads, kept here 1 load",
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_loads=2"),
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_loads=1"));
        RuleCases.rule(
                "their-count",
                "66",
                Sort.DOES_NOT_ADD_UP,
                "contractor's count 20.24 T, kept here 22.31 T",
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_ston=20.24"),
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_ston=22.31"));
    }

    private static Map<String, Object> plant(String until) {
        return Map.of("plants", List.of(Shift.map("name=Quarry series=own prints=net scale_until=" + until)));
    }
}
