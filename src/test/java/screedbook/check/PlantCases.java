package screedbook.check;

import java.util.List;
import java.util.Map;
import screedbook.entry.PlantRows;

/** The cases of the rules about plants and trucks. */
final class PlantCases {
    private PlantCases() {}

    static void add() {
        trucks();
        plants();
    }

    /** Situation 38 and the sightings of WisDOT's guidance on load tickets, 2020, 109.1.4.2; limits: common practice. */
    private static void trucks() {
        RuleCases.rule(
                "truck-not-on-job",
                "",
                Sort.LOOK_AGAIN,
                "truck T118, ticket 1002 and 1 load more: not noted that it came onto the job",
                s -> s.at("20:00", "truck truck=T104 step=on-job")
                        .load("21:00", "1001", "")
                        .load("21:10", "1002", "truck=T118 net_ston=21.00")
                        .load("22:10", "1003", "truck=T118 net_ston=21.10"),
                s -> s.at("20:00", "truck truck=T104 step=on-job")
                        .at("20:01", "truck truck=T118 step=on-job")
                        .load("21:00", "1001", "")
                        .load("21:10", "1002", "truck=T118"));
        RuleCases.rule(
                "truck-left",
                "",
                Sort.LOOK_AGAIN,
                "truck T104 left the job 22:00, ticket 1001 loaded 22:01",
                s -> s.at("22:00", "truck truck=T104 step=off-job").load("22:30", "1001", "loaded=22:01"),
                s -> s.at("22:02", "truck truck=T104 step=off-job").load("22:30", "1001", "loaded=22:01"));
        RuleCases.rule(
                "truck-not-seen",
                "",
                Sort.LOOK_AGAIN,
                "truck T118, ticket 1002: not noted that it was seen",
                s -> s.load("21:00", "1001", "")
                        .at("21:05", "truck truck=T104 step=seen")
                        .load("21:10", "1002", "truck=T118"),
                s -> s.load("21:00", "1001", "").load("21:10", "1002", "truck=T118"));
        RuleCases.rule(
                "truck-not-seen",
                "",
                Sort.LOOK_AGAIN,
                "truck T118, ticket 1002: not noted that it was seen",
                s -> s.load("21:00", "1001", "")
                        .at("21:05", "truck truck=T104 step=seen")
                        .load("21:10", "1002", "truck=T118"),
                s -> s.load("21:00", "1001", "")
                        .at("21:05", "truck truck=T104 step=seen gross_lb=72020")
                        .load("21:10", "1002", "truck=T118"));
        // 730 lb of 72,020 are 1.01 %, 720 lb are 1.00 %.
        RuleCases.rule(
                "weighed-again",
                "",
                Sort.LOOK_AGAIN,
                "truck T104, ticket 1001: gross 71,290 lb on another scale, printed 72,020 lb, 730 lb less: 1.01 %",
                s -> s.at("20:55", "truck truck=T104 gross_lb=71290")
                        .load("21:00", "1001", "gross_lb=72020 tare_lb=27400"),
                s -> s.at("20:55", "truck truck=T104 gross_lb=71300")
                        .load("21:00", "1001", "gross_lb=72020 tare_lb=27400"));
        // 22.31 tons are 44,620 lb; 72,500 less the usual tare of 27,400 are 45,100, 480 lb or 1.08 % more.
        RuleCases.rule(
                "weighed-again",
                "",
                Sort.LOOK_AGAIN,
                "truck T104, ticket 1001: net 45,100 lb on another scale, printed 44,620 lb, 480 lb more: 1.08 %",
                s -> s.load("21:00", "1001", "").at("21:05", "truck truck=T104 gross_lb=72500 ticket=1001"),
                s -> s.load("21:00", "1001", "").at("21:05", "truck truck=T104 gross_lb=72500"));
        RuleCases.shifts(
                "round-short",
                "38",
                Sort.LOOK_AGAIN,
                "loaded 20:30 and 21:05, 35 min, 58 % of the planned round of 60 min",
                hauled().load("20:50", "1001", "loaded=20:30").load("21:30", "1002", "loaded=21:05 net_ston=21.90"),
                hauled().load("20:50", "1001", "loaded=20:30").load("21:30", "1002", "loaded=21:06 net_ston=21.90"));
        RuleCases.rule(
                "net-same-again",
                "37",
                Sort.LOOK_AGAIN,
                "truck T104: 3 loads in a row of 22.31 T",
                s -> s.load("20:00", "1001", "").load("21:00", "1002", "").load("22:00", "1003", ""),
                s -> s.load("20:00", "1001", "").load("21:00", "1002", "").load("22:00", "1003", "net_ston=22.32"));
    }

    private static Shift hauled() {
        return Shift.night(Map.of(
                "production",
                Map.of("cycle", Shift.map("load_min=5 ticket_min=3 haul_min=20 dump_min=7 back_min=25"))));
    }

    private static Shift three(Shift shift) {
        return shift.load("21:00", "1001", "net_ston=21.96 loaded=20:40")
                .load("21:10", "1002", "truck=T118 net_ston=22.10 loaded=20:50")
                .load("21:20", "1003", "truck=T119 net_ston=20.50 loaded=21:00");
    }

    /** Situations 26, 28, 29, 53 and 66: the plant's total and the plant's own list. */
    private static void plants() {
        RuleCases.rule(
                "plant-total",
                "66",
                Sort.DOES_NOT_ADD_UP,
                "Quarry 12.5-70A until 23:00: the plant 3 loads 64.57 T, here 3 loads 64.56 T",
                s -> three(s).at("23:00", "plant-total plant=Quarry mix=12.5-70A loads=3 tons_ston=64.57"),
                s -> three(s).at("23:00", "plant-total plant=Quarry mix=12.5-70A loads=3 tons_ston=64.56"));
        RuleCases.rule(
                "list-not-there",
                "",
                Sort.MISSING,
                "list quarry.csv of Quarry: it is not there",
                s -> s.list(PlantRows.gone("Quarry", "quarry.csv", "it is not there")),
                s -> s.list());
        RuleCases.rule(
                "list-not-read",
                "",
                Sort.LOOK_AGAIN,
                "1 place of quarry.csv not read: quarry.csv:4: a line that is no CSV",
                s -> s.list(new PlantRows(
                        "Quarry", "quarry.csv", "", List.of(), List.of("quarry.csv:4: a line that is no CSV"))),
                s -> s.list());
        RuleCases.rule(
                "list-clock",
                "",
                Sort.LOOK_AGAIN,
                "the hours of Quarry's list lie 60 min behind those of most tickets",
                s -> three(s).list(
                                "1001 T104 21.96 2026-06-03 21:40",
                                "1002 T118 22.10 2026-06-03 21:50",
                                "1003 T119 20.50 2026-06-03 21:30"),
                s -> three(s).list(
                                "1001 T104 21.96 2026-06-03 20:41",
                                "1002 T118 22.10 2026-06-03 20:51",
                                "1003 T119 20.50 2026-06-03 21:30"));
        RuleCases.rule(
                "list-number-again",
                "",
                Sort.LOOK_AGAIN,
                "numbers that Quarry's list has once more: 1; line 3, ticket 1001, truck T118, 22.00 T",
                s -> s.load("21:00", "1001", "").list("1001 T104 22.31", "1001 T118 22.00"),
                s -> s.load("21:00", "1001", "").list("1001 T104 22.31", "1002 T118 22.00"));
        RuleCases.rule(
                "list-of-other-hours",
                "",
                Sort.LOOK_AGAIN,
                "loaded before this shift began or after it was closed, in Quarry's list: 1; line 2, ticket 900",
                s -> s.load("21:00", "1001", "").list("900 T104 22.00 2026-06-03 19:29"),
                s -> s.load("21:00", "1001", "").list("900 T104 22.00 2026-06-03 19:30"));
        RuleCases.rule(
                "list-load-not-here",
                "26, 28, 53",
                Sort.MISSING,
                "a load of Quarry's list is not here: line 3, ticket 1002, truck T118, 22.00 T",
                s -> s.load("21:00", "1001", "").list("1001 T104 22.31", "1002 T118 22.00"),
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1002", "truck=T118 net_ston=22.00")
                        .list("1001 T104 22.31", "1002 T118 22.00"));
        RuleCases.rule(
                "list-load-not-there",
                "53",
                Sort.MISSING,
                "ticket 1002, truck T118, 22.00 T is not in Quarry's list",
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1002", "truck=T118 net_ston=22.00")
                        .list("1001 T104 22.31"),
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1002", "truck=T118 net_ston=22.00 plant=River")
                        .list("1001 T104 22.31"));
        RuleCases.rule(
                "list-number",
                "29",
                Sort.LOOK_AGAIN,
                "number 10?1 here, 1001 in the list: line 2, ticket 1001, truck T104, 22.31 T",
                s -> s.load("21:00", "10?1", "").list("1001 T104 22.31"),
                s -> s.load("21:00", "10?1", "").list("1001 T118 22.30"));
        RuleCases.rule(
                "list-differs",
                "53",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001: net 21.96 T here, 21.69 T in the list",
                s -> s.load("21:00", "1001", "net_ston=21.96").list("1001 T104 21.69"),
                s -> s.load("21:00", "1001", "net_ston=21.96").list("1001 0104 21.960"));
        RuleCases.rule(
                "list-differs",
                "50",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001: void at plant here, 22.31 T in the list",
                s -> s.load("21:00", "1001", "fate=void-at-plant pull=").list("1001 T104 22.31"),
                s -> s.load("21:00", "1001", "fate=void-at-plant pull=").list("1001 T104 0"));
    }
}
