package screedbook.check;

/** The cases of the rules about weights, and about what became of a load in part. */
final class WeightCases {
    private WeightCases() {}

    static void add() {
        RuleCases.rule(
                "net-not-noted",
                "",
                Sort.MISSING,
                "ticket 1001: net not noted",
                s -> s.load("21:00", "1001", "net_ston="),
                s -> s.load("21:00", "1001", "net_ston= fate=void-at-plant"));
        RuleCases.rule(
                "net-against-scale",
                "23",
                Sort.DOES_NOT_ADD_UP,
                "gross 71,920 lb less tare 27,400 lb is 22.260 T, printed net 22.28 T: 40 lb apart",
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400 net_ston=22.28"),
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400 net_ston=22.27"));
        RuleCases.rule(
                "net-against-batches",
                "31",
                Sort.DOES_NOT_ADD_UP,
                "11 batches of 4000 lb are 22.000 T, printed net 22.31 T",
                s -> s.load("21:00", "1001", "batches=11 batch_lb=4000"),
                s -> s.load("21:00", "1001", "batches=11 batch_lb=4000 net_ston=22.00"));
        RuleCases.rule(
                "tare-above-gross",
                "21",
                Sort.DOES_NOT_ADD_UP,
                "gross 27,400 lb, tare 71,920 lb",
                s -> s.load("21:00", "1001", "gross_lb=27400 tare_lb=71920"),
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400"));
        RuleCases.rule(
                "tare-above-gross",
                "21",
                Sort.DOES_NOT_ADD_UP,
                "net 0.00 T",
                s -> s.load("21:00", "1001", "net_ston=0.00"),
                s -> s.load("21:00", "1001", "net_ston=0.00 fate=void-at-plant"));
        RuleCases.rule(
                "net-unusual",
                "22, 36",
                Sort.LOOK_AGAIN,
                "net 46,320 T",
                s -> s.load("21:00", "1001", "net_ston=46320"),
                s -> s.load("21:00", "1001", "net_ston=35"));
        RuleCases.rule(
                "net-unusual",
                "36",
                Sort.LOOK_AGAIN,
                "net 4.99 T",
                s -> s.load("21:00", "1001", "net_ston=4.99"),
                s -> s.load("21:00", "1001", "net_ston=5.00"));
        RuleCases.rule(
                "scale-unusual",
                "22",
                Sort.LOOK_AGAIN,
                "gross 36.15 lb",
                s -> s.load("21:00", "1001", "gross_lb=36.15"),
                s -> s.load("21:00", "1001", "gross_lb=72300"));
        RuleCases.rule(
                "tare-unusual",
                "34",
                Sort.LOOK_AGAIN,
                "tare 36,020 lb",
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=72000 tare_lb=36020"),
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=72000 tare_lb=36000"));
        RuleCases.rule(
                "tare-unusual",
                "32",
                Sort.LOOK_AGAIN,
                "tare 19,980 lb",
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=62000 tare_lb=19980"),
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=62000 tare_lb=20000"));
        RuleCases.rule(
                "tare-moved",
                "33",
                Sort.LOOK_AGAIN,
                "truck T104: tare 27,920 lb, usually 27,400 lb",
                s -> s.load("21:00", "1001", "gross_lb=72000 tare_lb=27920"),
                s -> s.load("21:00", "1001", "gross_lb=72000 tare_lb=27900"));
        RuleCases.rule(
                "tare-moved",
                "33",
                Sort.LOOK_AGAIN,
                "the weights come to a tare of 26,880 lb, usually 27,400 lb",
                s -> s.load("21:00", "1001", "gross_lb=71500"),
                s -> s.load("21:00", "1001", "gross_lb=72000"));
        RuleCases.rule(
                "same-weights-again",
                "37",
                Sort.LOOK_AGAIN,
                "gross 72,020 lb and tare 27,400 lb as on ticket 1001",
                s -> s.load("21:00", "1001", "gross_lb=72020 tare_lb=27400")
                        .load("22:00", "1002", "gross_lb=72020 tare_lb=27400"),
                s -> s.load("21:00", "1001", "gross_lb=72020 tare_lb=27400")
                        .load("22:00", "1002", "gross_lb=72020 tare_lb=27420"));
        RuleCases.rule(
                "gross-legal",
                "35",
                Sort.OUTSIDE,
                "gross 73,300 lb",
                s -> s.load("21:00", "1001", "gross_lb=73300"),
                s -> s.load("21:00", "1001", "gross_lb=73280"));
        RuleCases.rule(
                "gross-legal",
                "35",
                Sort.LOOK_AGAIN,
                "gross 80,020 lb",
                s -> s.load("21:00", "1001", "truck=T118 gross_lb=80020"),
                s -> s.load("21:00", "1001", "truck=T118 gross_lb=80000"));
        RuleCases.rule(
                "parts-against-net",
                "44",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 net 22.31 T, part 22.32 T",
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=22.32 pull=A lift=2"),
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=22.31 pull=A lift=2"));
        RuleCases.rule(
                "parts-against-net",
                "46, 49",
                Sort.DOES_NOT_ADD_UP,
                "waste 2.40 T, not placed 20.00 T",
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=20.00 basis=weigh-back")
                        .at("21:05", "waste of=paver/4 weight_ston=2.40 reason=cold"),
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=20.00 basis=weigh-back")
                        .at("21:05", "waste of=paver/4 weight_ston=2.31 reason=cold"));
        RuleCases.rule(
                "part-of-nothing",
                "44",
                Sort.LOOK_AGAIN,
                "part of paver/9, which is no ticket that counts",
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/9 share_ston=2 pull=A lift=2"),
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=2 pull=A lift=2"));
        RuleCases.rule(
                "part-of-nothing",
                "49",
                Sort.LOOK_AGAIN,
                "waste of paver/3, which is no ticket that counts",
                s -> s.at("21:05", "waste of=paver/3 weight_ston=2 reason=spill"),
                s -> s.at("21:05", "waste weight_ston=2 mix=12.5-70A reason=cleaning~out"));
    }
}
