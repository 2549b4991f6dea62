package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import screedbook.Situations;
import screedbook.entry.Amend;
import screedbook.entry.Note;
import screedbook.entry.Ref;
import screedbook.entry.SetAside;
import screedbook.entry.ShiftId;
import screedbook.tally.ToDate;

/**
 * Every rule with a shift that raises it and one, as near to the edge as there is, that does not. The number behind a
 * case names the awkward situation it stands for, a row of {@code situations.csv}.
 */
class RulesTest {
    /**
     * @param situations numbers of awkward situations; empty where it is not one of them
     * @param sort what the finding is
     * @param seen what it says was seen, in part
     */
    private record Case(String rule, String situations, Shift raising, Shift quiet, Sort sort, String seen) {
        @Override
        public String toString() {
            return rule + (situations.isEmpty() ? "" : " (situation " + situations + ")") + ": " + seen;
        }
    }

    private static final List<Case> CASES = new ArrayList<>();

    static void rule(
            String rule,
            String situations,
            Sort sort,
            String seen,
            UnaryOperator<Shift> raising,
            UnaryOperator<Shift> quiet) {
        CASES.add(new Case(rule, situations, raising.apply(Shift.night()), quiet.apply(Shift.night()), sort, seen));
    }

    static void shifts(String rule, String situations, Sort sort, String seen, Shift raising, Shift quiet) {
        CASES.add(new Case(rule, situations, raising, quiet, sort, seen));
    }

    private static Map<String, Object> without(String key) {
        Map<String, Object> changes = new HashMap<>();
        changes.put(key, null);
        return changes;
    }

    private static final String SHOT =
            "tack product=CSS-1h surface=milled from_sta=12+00 to_sta=18+00 width_ft=12 pull=B"
                    + " lift=2 reading=tank material_degF=140 before_gal=500 ";
    private static final Map<String, Object> OHIO = Map.of("sheet", "ohio-401-2010");

    private static final Map<String, Object> WSDOT = Map.of("sheet", "wsdot-5-04");
    private static final Map<String, Object> FLORIDA = Map.of("sheet", "florida-300-330-334");

    static {
        heat();
        numbers();
        weights();
        tickets();
        tack();
        weather();
        plan();
        times();
        record();
        RoadCases.add();
        DueCases.add();
        PlantCases.add();
        SampleCases.add();
        SiteCases.add();
    }

    private static void heat() {
        rule(
                "heat-at-paver",
                "",
                Sort.OUTSIDE,
                "at the paver 269 °F",
                s -> s.load("21:00", "1001", "paver_degF=269"),
                s -> s.load("21:00", "1001", "paver_degF=270"));
        rule(
                "heat-at-paver",
                "47, 52",
                Sort.OUTSIDE,
                "at the paver 240 °F, rejected",
                s -> s.load("21:00", "1001", "paver_degF=240 fate=rejected reason=cold decided_by=RK told_to=LM"),
                s -> s.load("21:00", "1001", "paver_degF= fate=rejected reason=cold decided_by=RK told_to=LM"));
        rule(
                "heat-at-paver",
                "42",
                Sort.OUTSIDE,
                "at the paver 259 °F",
                s -> s.load("21:00", "1001", "mix=19-64 lift=1 pull= paver_degF=259"),
                s -> s.load("21:00", "1001", "mix=19-64 lift=1 pull= paver_degF=260"));
        rule(
                "heat-at-plant",
                "",
                Sort.OUTSIDE,
                "at the plant 326 °F",
                s -> s.load("21:00", "1001", "plant_degF=326"),
                s -> s.load("21:00", "1001", "plant_degF=325"));
        rule(
                "heat-at-plant",
                "",
                Sort.OUTSIDE,
                "at the plant 274 °F",
                s -> s.load("21:00", "1001", "plant_degF=274"),
                s -> s.load("21:00", "1001", "plant_degF=275"));
        rule(
                "heat-due",
                "55",
                Sort.MISSING,
                "ticket 1001, load 1 of 12.5-70A: temperature not noted at the paver",
                s -> s.load("21:00", "1001", "paver_degF="),
                s -> s.load("21:00", "1001", ""));
        rule(
                "heat-due",
                "55, 42",
                Sort.MISSING,
                "ticket 1010, load 10 of 12.5-70A",
                s -> loads(s, 10, 5),
                s -> loads(s, 9, 5));
        rule(
                "heat-unusual",
                "56",
                Sort.LOOK_AGAIN,
                "at the paver 150 °F",
                s -> s.load("21:00", "1001", "paver_degF=150"),
                s -> s.load("21:00", "1001", "paver_degF=200"));
        rule(
                "heat-unusual",
                "56",
                Sort.LOOK_AGAIN,
                "at the paver 3000 °F",
                s -> s.load("21:00", "1001", "paver_degF=3000"),
                s -> s.load("21:00", "1001", "paver_degF=400"));
        rule(
                "heat-same-again",
                "57",
                Sort.LOOK_AGAIN,
                "10 temperatures at the paver in a row are 290 °F",
                s -> loads(s, 10, 10),
                s -> loads(s, 9, 9).load("22:30", "1010", "paver_degF=291"));
        rule(
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

    private static void numbers() {
        rule(
                "number-repeated",
                "24",
                Sort.DOES_NOT_ADD_UP,
                "number 1001 of plant Quarry stands at paver/4 and paver/5, with the same truck and net",
                s -> s.load("21:00", "1001", "").load("21:10", "1001", ""),
                s -> s.load("21:00", "1001", "").load("21:10", "1002", ""));
        rule(
                "number-repeated",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "with other figures",
                s -> s.load("21:00", "1001", "").load("21:10", "1001", "truck=T118 net_ston=20.10"),
                s -> s.load("21:00", "1001", "").load("21:10", "1001", "truck=T118 net_ston=20.10 plant=River"));
        rule(
                "number-repeated",
                "25",
                Sort.DOES_NOT_ADD_UP,
                "stands at paver/4 and paver/5",
                s -> s.load("21:00", "1001", "plant=River").load("21:10", "1001", "plant=River net_ston=21.00"),
                s -> s.load("21:00", "1001", "plant=River fate=void-at-plant")
                        .load("21:10", "1001", "plant=River net_ston=21.00 reissue_of=1001"));
        rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "after 1001 comes 1004 of plant Quarry; not here: 1002 to 1003",
                s -> s.load("21:00", "1001", "").load("21:10", "1004", ""),
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1004", "")
                        .at("21:20", "number plant=Quarry number=1002 what=void-at-plant")
                        .at("21:20", "number plant=Quarry number=1003 what=other-job"));
        rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1003",
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1004", "")
                        .at("21:20", "number plant=Quarry number=1002 what=void-at-plant"),
                s -> s.load("21:00", "1001", "plant=River").load("21:10", "1004", "plant=River"));
        rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1002, said to be still coming",
                s -> s.load("21:00", "1001", "")
                        .load("21:10", "1003", "")
                        .at("21:20", "number plant=Quarry number=1002 what=still-coming"),
                s -> s.load("21:00", "1001", "").load("21:10", "1003", "").load("21:20", "1002", ""));
        rule(
                "number-missing",
                "26",
                Sort.MISSING,
                "not here: 1002 to 91000",
                s -> s.load("21:00", "1001", "").load("21:10", "91001", ""),
                s -> s.load("21:00", "1001", "").load("21:10", "91001", "plant=River"));
        rule(
                "number-out-of-order",
                "27",
                Sort.LOOK_AGAIN,
                "ticket 1002 loaded 20:10, ticket 1001 loaded 20:20",
                s -> s.load("21:00", "1001", "loaded=20:20").load("21:10", "1002", "loaded=20:10"),
                s -> s.load("21:10", "1001", "loaded=20:10").load("21:00", "1002", "loaded=20:20"));
        rule(
                "number-not-noted",
                "28",
                Sort.MISSING,
                "truck T104: ticket lost, no number noted",
                s -> s.load("21:00", "", "kept=lost"),
                s -> s.load("21:00", "1001", "kept=paper"));
        rule(
                "number-not-read",
                "29",
                Sort.LOOK_AGAIN,
                "ticket number read as 10?1",
                s -> s.load("21:00", "10?1", ""),
                s -> s.load("21:00", "1001", ""));
        rule(
                "issued-again",
                "25",
                Sort.LOOK_AGAIN,
                "ticket 1002 is instead of 1001, which is not in this shift",
                s -> s.load("21:00", "1002", "reissue_of=1001"),
                s -> s.load("20:50", "1001", "").load("21:00", "1002", "reissue_of=1001"));
    }

    private static void weights() {
        rule(
                "net-not-noted",
                "",
                Sort.MISSING,
                "ticket 1001: net not noted",
                s -> s.load("21:00", "1001", "net_ston="),
                s -> s.load("21:00", "1001", "net_ston= fate=void-at-plant"));
        rule(
                "net-against-scale",
                "23",
                Sort.DOES_NOT_ADD_UP,
                "gross 71,920 lb less tare 27,400 lb is 22.260 T, printed net 22.28 T: 40 lb apart",
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400 net_ston=22.28"),
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400 net_ston=22.27"));
        rule(
                "net-against-batches",
                "31",
                Sort.DOES_NOT_ADD_UP,
                "11 batches of 4000 lb are 22.000 T, printed net 22.31 T",
                s -> s.load("21:00", "1001", "batches=11 batch_lb=4000"),
                s -> s.load("21:00", "1001", "batches=11 batch_lb=4000 net_ston=22.00"));
        rule(
                "tare-above-gross",
                "21",
                Sort.DOES_NOT_ADD_UP,
                "gross 27,400 lb, tare 71,920 lb",
                s -> s.load("21:00", "1001", "gross_lb=27400 tare_lb=71920"),
                s -> s.load("21:00", "1001", "gross_lb=71920 tare_lb=27400"));
        rule(
                "tare-above-gross",
                "21",
                Sort.DOES_NOT_ADD_UP,
                "net 0.00 T",
                s -> s.load("21:00", "1001", "net_ston=0.00"),
                s -> s.load("21:00", "1001", "net_ston=0.00 fate=void-at-plant"));
        rule(
                "net-unusual",
                "22, 36",
                Sort.LOOK_AGAIN,
                "net 46,320 T",
                s -> s.load("21:00", "1001", "net_ston=46320"),
                s -> s.load("21:00", "1001", "net_ston=35"));
        rule(
                "net-unusual",
                "36",
                Sort.LOOK_AGAIN,
                "net 4.99 T",
                s -> s.load("21:00", "1001", "net_ston=4.99"),
                s -> s.load("21:00", "1001", "net_ston=5.00"));
        rule(
                "scale-unusual",
                "22",
                Sort.LOOK_AGAIN,
                "gross 36.15 lb",
                s -> s.load("21:00", "1001", "gross_lb=36.15"),
                s -> s.load("21:00", "1001", "gross_lb=72300"));
        rule(
                "tare-unusual",
                "34",
                Sort.LOOK_AGAIN,
                "tare 36,020 lb",
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=72000 tare_lb=36020"),
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=72000 tare_lb=36000"));
        rule(
                "tare-unusual",
                "32",
                Sort.LOOK_AGAIN,
                "tare 19,980 lb",
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=62000 tare_lb=19980"),
                s -> s.load("21:00", "1001", "truck=T9 gross_lb=62000 tare_lb=20000"));
        rule(
                "tare-moved",
                "33",
                Sort.LOOK_AGAIN,
                "truck T104: tare 27,920 lb, usually 27,400 lb",
                s -> s.load("21:00", "1001", "gross_lb=72000 tare_lb=27920"),
                s -> s.load("21:00", "1001", "gross_lb=72000 tare_lb=27900"));
        rule(
                "tare-moved",
                "33",
                Sort.LOOK_AGAIN,
                "the weights come to a tare of 26,880 lb, usually 27,400 lb",
                s -> s.load("21:00", "1001", "gross_lb=71500"),
                s -> s.load("21:00", "1001", "gross_lb=72000"));
        rule(
                "same-weights-again",
                "37",
                Sort.LOOK_AGAIN,
                "gross 72,020 lb and tare 27,400 lb as on ticket 1001",
                s -> s.load("21:00", "1001", "gross_lb=72020 tare_lb=27400")
                        .load("22:00", "1002", "gross_lb=72020 tare_lb=27400"),
                s -> s.load("21:00", "1001", "gross_lb=72020 tare_lb=27400")
                        .load("22:00", "1002", "gross_lb=72020 tare_lb=27420"));
        rule(
                "gross-legal",
                "35",
                Sort.OUTSIDE,
                "gross 73,300 lb",
                s -> s.load("21:00", "1001", "gross_lb=73300"),
                s -> s.load("21:00", "1001", "gross_lb=73280"));
        rule(
                "gross-legal",
                "35",
                Sort.LOOK_AGAIN,
                "gross 80,020 lb",
                s -> s.load("21:00", "1001", "truck=T118 gross_lb=80020"),
                s -> s.load("21:00", "1001", "truck=T118 gross_lb=80000"));
        rule(
                "parts-against-net",
                "44",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 net 22.31 T, part 22.32 T",
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=22.32 pull=A lift=2"),
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=22.31 pull=A lift=2"));
        rule(
                "parts-against-net",
                "46, 49",
                Sort.DOES_NOT_ADD_UP,
                "waste 2.40 T, not placed 20.00 T",
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=20.00 basis=weigh-back")
                        .at("21:05", "waste of=paver/4 weight_ston=2.40 reason=cold"),
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=20.00 basis=weigh-back")
                        .at("21:05", "waste of=paver/4 weight_ston=2.31 reason=cold"));
        rule(
                "part-of-nothing",
                "44",
                Sort.LOOK_AGAIN,
                "part of paver/9, which is no ticket that counts",
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/9 share_ston=2 pull=A lift=2"),
                s -> s.load("21:00", "1001", "").at("21:05", "part of=paver/4 share_ston=2 pull=A lift=2"));
        rule(
                "part-of-nothing",
                "49",
                Sort.LOOK_AGAIN,
                "waste of paver/3, which is no ticket that counts",
                s -> s.at("21:05", "waste of=paver/3 weight_ston=2 reason=spill"),
                s -> s.at("21:05", "waste weight_ston=2 mix=12.5-70A reason=cleaning~out"));
    }

    private static void tickets() {
        rule(
                "mix-not-planned",
                "40",
                Sort.LOOK_AGAIN,
                "ticket 1001 is of 19-64",
                s -> s.load("21:00", "1001", "mix=19-64"),
                s -> s.load("21:00", "1001", ""));
        rule(
                "mix-not-planned",
                "40, 41",
                Sort.LOOK_AGAIN,
                "ticket 1001 is of 9.5-58, which is not in the job",
                s -> s.load("21:00", "1001", "mix=9.5-58"),
                s -> s.load("21:00", "1001", "mix=9.5-58 fate=other-job pull="));
        rule(
                "truck-not-listed",
                "32",
                Sort.LOOK_AGAIN,
                "truck T9 on ticket 1001 is not in the job's list",
                s -> s.load("21:00", "1001", "truck=T9"),
                s -> s.load("21:00", "1001", "truck=T118"));
        rule(
                "truck-back-soon",
                "38",
                Sort.LOOK_AGAIN,
                "truck T104: ticket 1001 discharged 21:00, ticket 1002 loaded 21:09, 9 min between",
                s -> s.load("21:00", "1001", "").load("21:40", "1002", "loaded=21:09"),
                s -> s.load("21:00", "1001", "").load("21:40", "1002", "loaded=21:10"));
        rule(
                "handwritten",
                "30",
                Sort.MISSING,
                "ticket 1001 is handwritten, weighed by: not noted",
                s -> s.load("21:00", "1001", "kept=handwritten"),
                s -> s.load("21:00", "1001", "kept=handwritten weighed_by=L.~Moss"));
        shifts(
                "scale-certificate",
                "",
                Sort.OUTSIDE,
                "scale certificate of plant Quarry until 2026-06-02",
                Shift.night(plant("2026-06-02")).load("21:00", "1001", ""),
                Shift.night(plant("2026-06-03")).load("21:00", "1001", ""));
        rule(
                "fate-reason",
                "47",
                Sort.MISSING,
                "ticket 1001 rejected, not noted: decided by, told to",
                s -> s.load("21:00", "1001", "fate=rejected reason=smoke"),
                s -> s.load("21:00", "1001", "fate=rejected reason=smoke decided_by=RK told_to=LM"));
        rule(
                "part-not-known",
                "46",
                Sort.MISSING,
                "ticket 1001 placed in part, not noted: how that is known",
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=4"),
                s -> s.load("21:00", "1001", "fate=part-placed returned_ston=4 basis=weigh-back"));
        rule(
                "void-with-place",
                "50",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 is void at plant and has the place 12+00",
                s -> s.load("21:00", "1001", "fate=void-at-plant from_sta=12+00"),
                s -> s.load("21:00", "1001", "fate=void-at-plant"));
        rule(
                "place-not-noted",
                "51",
                Sort.MISSING,
                "ticket 1001 placed, where: not noted",
                s -> s.load("21:00", "1001", "pull="),
                s -> s.load("21:00", "1001", "pull= place=driveway"));
        rule(
                "no-length",
                "70",
                Sort.DOES_NOT_ADD_UP,
                "ticket 1001 placed from 12+00 to 12+00",
                s -> s.load("21:00", "1001", "from_sta=12+00 to_sta=12+00"),
                s -> s.load("21:00", "1001", "from_sta=12+00 to_sta=12+01"));
        rule(
                "their-count",
                "",
                Sort.DOES_NOT_ADD_UP,
                "contractor's count 2 loads, kept here 1 load",
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_loads=2"),
                s -> s.load("21:00", "1001", "").at("22:00", "closing their_loads=1"));
        rule(
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

    private static void tack() {
        rule(
                "tack-rate",
                "",
                Sort.OUTSIDE,
                "CSS-1h on milled 12+00 to 18+00: residual 0.065",
                s -> s.at("20:00", SHOT + "after_gal=411"),
                s -> s.at("20:00", SHOT + "after_gal=420"));
        rule(
                "tack-rate",
                "75",
                Sort.OUTSIDE,
                "residual 0.033",
                s -> s.at("20:00", SHOT + "after_gal=410 emulsion_parts=1 water_parts=1"),
                s -> s.at("20:00", SHOT + "after_gal=370 emulsion_parts=1 water_parts=1"));
        rule(
                "tack-rate",
                "74",
                Sort.OUTSIDE,
                "residual 0.068",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=410"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=420"));
        rule(
                "tack-rate-unusual",
                "73",
                Sort.LOOK_AGAIN,
                "applied 0.600",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=20"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=260"));
        rule(
                "tack-volume-not-known",
                "79",
                Sort.MISSING,
                "no rate, reading after not noted",
                s -> s.at("20:00", SHOT),
                s -> s.at("20:00", SHOT + "after_gal=430"));
        rule(
                "tack-after-above-before",
                "72",
                Sort.DOES_NOT_ADD_UP,
                "before 500 gal, after 900 gal",
                s -> s.at("20:00", SHOT + "distributor=D1 after_gal=900"),
                s -> s.at("20:00", SHOT + "distributor=D1 after_gal=900")
                        .at("20:10", "refill distributor=D1 before_gal=450 after_gal=950"));
        rule(
                "tack-temperature-not-noted",
                "76",
                Sort.MISSING,
                "temperature of the material not noted",
                s -> s.at("20:00", SHOT.replace("material_degF=140", "") + "after_gal=430"),
                s -> s.at("20:00", SHOT.replace("material_degF=140", "at60=yes") + "after_gal=430"));
        rule(
                "tack-temperature",
                "",
                Sort.LOOK_AGAIN,
                "tack material 401 °F",
                s -> s.at("20:00", SHOT.replace("140", "401") + "after_gal=430"),
                s -> s.at("20:00", SHOT.replace("140", "400") + "after_gal=430"));
        rule(
                "tack-diluted",
                "75",
                Sort.OUTSIDE,
                "diluted, emulsion to water 1:1",
                s -> s.at("20:00", SHOT + "after_gal=430 emulsion_parts=1 water_parts=1"),
                s -> s.at(
                        "20:00", SHOT.replace("CSS-1h", "Dilutable") + "after_gal=430 emulsion_parts=1 water_parts=1"));
        shifts(
                "tack-diluted",
                "75",
                Sort.OUTSIDE,
                "emulsion to water 2:3: water, of the emulsion, 150",
                Shift.night(WSDOT).at("20:00", SHOT + "after_gal=430 emulsion_parts=2 water_parts=3"),
                Shift.night(WSDOT).at("20:00", SHOT + "after_gal=430 emulsion_parts=2 water_parts=2"));
        rule(
                "tack-ratio-not-known",
                "75",
                Sort.MISSING,
                "diluted, ratio not noted; no residual rate",
                s -> s.at("20:00", SHOT + "after_gal=430 diluted=ratio-unknown"),
                s -> s.at("20:00", SHOT + "after_gal=430 diluted=yes emulsion_parts=1 water_parts=1"));
        rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "tack 12+00 to 18+00 broken: not noted, paved over 21:38",
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430 broken=21:38")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"));
        rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "broken: 21:39, paved over 21:38",
                s -> s.at("21:12", SHOT + "after_gal=430 broken=21:39")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=18+00 to_sta=19+53"));
        rule(
                "tack-not-broken",
                "",
                Sort.LOOK_AGAIN,
                "paved over 21:45",
                s -> s.at("21:12", SHOT + "after_gal=430")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53 lift=1")
                        .load("21:45", "1002", "from_sta=12+03 to_sta=13+53"),
                s -> s.at("21:12", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+03 to_sta=13+53 lift=1"));
        rule(
                "tack-rained-on",
                "78",
                Sort.LOOK_AGAIN,
                "light rain at 21:20, paved over 21:38",
                s -> rained(s).load("21:38", "1001", "from_sta=12+03 to_sta=13+53"),
                s -> rained(s)
                        .at("21:30", SHOT + "after_gal=430 again=paver/4")
                        .load("21:38", "1001", "from_sta=12+03 to_sta=13+53"));
        rule(
                "tack-face",
                "",
                Sort.MISSING,
                "pull B lift 2: no contact face noted as tacked in this shift",
                s -> s.load("21:38", "1001", ""),
                s -> s.at("21:00", "tack face=longitudinal-joint from_sta=12+00 to_sta=18+00 pull=B lift=2")
                        .load("21:38", "1001", ""));
        rule(
                "tack-under-mat",
                "77",
                Sort.DOES_NOT_ADD_UP,
                "32 ft of 632 ft paved without tack noted for it",
                s -> s.at("21:00", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+00 to_sta=18+32"),
                s -> s.at("21:00", SHOT + "after_gal=430").load("21:38", "1001", "from_sta=12+00 to_sta=18+31"));
        rule(
                "tack-sample",
                "",
                Sort.MISSING,
                "tack samples noted on this project: 0",
                s -> s.at("21:00", SHOT + "after_gal=430"),
                s -> s.at("21:00", SHOT + "after_gal=430 sample=S1"));
        shifts(
                "tack-residue",
                "",
                Sort.MISSING,
                "CSS-1h: residue not in the job",
                Shift.night(product("name=CSS-1h")).at("21:00", SHOT + "after_gal=430"),
                Shift.night(product("name=CSS-1h residue_pct=60")).at("21:00", SHOT + "after_gal=430"));
        rule(
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

    private static void weather() {
        rule(
                "surface-temperature",
                "",
                Sort.OUTSIDE,
                "surface 34 °F",
                s -> s.at("21:35", "surface surface_degF=34 pull=B lift=2"),
                s -> s.at("21:35", "surface surface_degF=35 pull=B lift=2"));
        shifts(
                "surface-temperature",
                "",
                Sort.LOOK_AGAIN,
                "surface 34 °F",
                Shift.night(without("night")).at("21:35", "surface surface_degF=34 pull=B lift=2"),
                Shift.night(without("night")).at("21:35", "surface surface_degF=35 pull=B lift=2"));
        shifts(
                "surface-temperature",
                "96",
                Sort.OUTSIDE,
                "surface 34 °F",
                Shift.night().at("21:35", "surface surface_degF=34 pull=B lift=2"),
                Shift.night(Map.of("thermal", "handheld-camera")).at("21:35", "surface surface_degF=20 pull=B lift=2"));
        shifts(
                "air-temperature",
                "",
                Sort.OUTSIDE,
                "air 49 °F, ticket 1001 placed 21:40",
                Shift.night(OHIO).at("21:30", "weather air_degF=49 road=dry").load("21:40", "1001", ""),
                Shift.night(OHIO).at("21:30", "weather air_degF=50 road=dry").load("21:40", "1001", ""));
        rule(
                "surface-not-read",
                "",
                Sort.MISSING,
                "ticket 1001 placed 21:46 and 1 load after it, last surface reading 19:45",
                s -> s.load("21:46", "1001", "").load("21:50", "1002", ""),
                s -> s.load("21:45", "1001", "")
                        .at("21:46", "surface surface_degF=70 pull=B lift=2")
                        .load("21:50", "1002", ""));
        shifts(
                "surface-not-read",
                "",
                Sort.MISSING,
                "no surface reading until then",
                Shift.bare(Map.of()).load("21:00", "1001", ""),
                Shift.night().load("21:00", "1001", ""));
        shifts(
                "weather-at-start",
                "",
                Sort.MISSING,
                "ticket 1001 placed 21:00, no weather noted until then",
                Shift.bare(Map.of()).load("21:00", "1001", ""),
                Shift.night().load("21:00", "1001", ""));
        shifts(
                "weather-at-start",
                "16",
                Sort.MISSING,
                "no work, and no weather noted",
                Shift.bare(Map.of()).at("19:35", "no-work why=rain"),
                Shift.bare(Map.of())
                        .at("19:35", "no-work why=rain")
                        .at("19:36", "weather air_degF=50 precipitation=rain"));
        rule(
                "weather-again",
                "",
                Sort.MISSING,
                "ticket 1001 placed 23:41, last weather 19:40",
                s -> s.load("23:41", "1001", ""),
                s -> s.load("23:40", "1001", ""));
        rule(
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
        rule(
                "placed-not-dry",
                "",
                Sort.LOOK_AGAIN,
                "ticket 1001 placed 21:40, the road is damp since 21:30",
                s -> s.at("21:30", "weather air_degF=60 road=damp").load("21:40", "1001", ""),
                s -> s.at("21:30", "weather air_degF=60 road=dry").load("21:40", "1001", ""));
        rule(
                "air-unusual",
                "",
                Sort.LOOK_AGAIN,
                "air 121 °F",
                s -> s.at("21:30", "weather air_degF=121"),
                s -> s.at("21:30", "weather air_degF=120"));
        rule(
                "surface-unusual",
                "",
                Sort.LOOK_AGAIN,
                "surface 161 °F",
                s -> s.at("21:30", "surface surface_degF=161 pull=B lift=2"),
                s -> s.at("21:30", "surface surface_degF=160 pull=B lift=2"));
    }

    private static void plan() {
        shifts(
                "lift-thickness",
                "",
                Sort.OUTSIDE,
                "lift 2 of 12.5-70A is planned 1.9 in",
                Shift.night(lift("1.9")).load("21:00", "1001", ""),
                Shift.night(lift("2.00")).load("21:00", "1001", ""));
        shifts(
                "lift-thickness",
                "71",
                Sort.OUTSIDE,
                "lift 2 of 12.5-70A is planned 1.5 in",
                Shift.night(lift("1.5")).load("21:00", "1001", ""),
                Shift.night(lift("1.5")));
        shifts(
                "thickness-unusual",
                "68",
                Sort.LOOK_AGAIN,
                "lift 2 is planned 20 in",
                Shift.night(lift("20")),
                Shift.night(lift("2.0")));
        shifts(
                "width-unusual",
                "68",
                Sort.LOOK_AGAIN,
                "pull B is planned 120 ft",
                Shift.night(pulls("-12 0", "0 120")),
                Shift.night(pulls("-12 0", "0 24")));
        shifts(
                "joint-place",
                "",
                Sort.LOOK_AGAIN,
                "the joint of pull B at 3 ft is 3 ft from the nearest final lane line",
                Shift.night(pulls("-12 3", "3 12")).load("21:00", "1001", ""),
                Shift.night(pulls("-12 0", "0 12")).load("21:00", "1001", ""));
        shifts(
                "dates",
                "",
                Sort.OUTSIDE,
                "lift 2 was placed on 2026-11-02",
                Shift.day(LocalDate.of(2026, 11, 2), OHIO).load("10:00", "1001", ""),
                Shift.day(LocalDate.of(2026, 11, 1), OHIO).load("10:00", "1001", ""));
        shifts(
                "dates",
                "",
                Sort.LOOK_AGAIN,
                "lift 2 was placed on 2026-03-31",
                Shift.day(LocalDate.of(2026, 3, 31), OHIO).load("10:00", "1001", ""),
                Shift.day(LocalDate.of(2026, 4, 1), OHIO).load("10:00", "1001", ""));
        shifts(
                "uncompacted-mat",
                "",
                Sort.MISSING,
                "1 load placed, no thermal profile and no note tagged uncompacted mat",
                Shift.night(Map.of("thermal", "handheld-camera")).load("21:00", "1001", ""),
                Shift.night(Map.of("thermal", "handheld-camera"))
                        .load("21:00", "1001", "")
                        .at("21:10", "note text=288~to~281 ")
                        .with(note("uncompacted mat")));
        rule(
                "spread-rate",
                "69",
                Sort.LOOK_AGAIN,
                "spread rate, of the planned, 140 %",
                s -> spread(s, 330),
                s -> spread(s, 384));
        shifts(
                "spread-rate",
                "69",
                Sort.LOOK_AGAIN,
                "spread rate, of the planned, 110 %",
                spread(Shift.night(FLORIDA), 420),
                spread(Shift.night(FLORIDA), 450));
        shifts(
                "plan-not-found",
                "95",
                Sort.LOOK_AGAIN,
                "the limit sheet named in this line is not found by its hash",
                Shift.night().sheetLost(),
                Shift.night());
    }

    private static Note note(String tag) {
        return new screedbook.entry.Note(List.of(tag), "288 to 281", null, null, null, null, null);
    }

    private static Map<String, Object> lift(String thickness) {
        return Map.of(
                "lifts",
                List.of(Shift.map(
                        "number=2 layer=riding-surface thickness_in=" + thickness + " mix=12.5-70A base=asphalt")));
    }

    private static Map<String, Object> pulls(String a, String b) {
        return Map.of("pulls", List.of(pull("A", a), pull("B", b)));
    }

    private static Map<String, Object> pull(String name, String edges) {
        String[] e = edges.split(" ");
        return Shift.map("name=" + name + " lift=2 left_ft=" + e[0] + " right_ft=" + e[1]);
    }

    /** Three loads of 22.31 tons on so many feet of pull B. */
    private static Shift spread(Shift shift, int feet) {
        int third = feet / 3;
        for (int i = 0; i < 3; i++) {
            String from = "%d+%02d".formatted((1200 + i * third) / 100, (1200 + i * third) % 100);
            String to = "%d+%02d".formatted((1200 + (i + 1) * third) / 100, (1200 + (i + 1) * third) % 100);
            shift.load("21:%02d".formatted(10 * i), Integer.toString(1001 + i), "from_sta=" + from + " to_sta=" + to);
        }
        return shift;
    }

    private static void times() {
        rule(
                "times-order",
                "14",
                Sort.DOES_NOT_ADD_UP,
                "loaded 20:10, arrived 21:05, discharged 21:00",
                s -> s.load("21:00", "1001", "loaded=20:10 arrived=21:05"),
                s -> s.load("21:00", "1001", "loaded=20:10 arrived=21:00"));
        rule(
                "times-order",
                "2",
                Sort.DOES_NOT_ADD_UP,
                "loaded 00:26, arrived 00:25, discharged 00:30",
                s -> s.load("00:30", "1001", "loaded=00:26 arrived=00:25"),
                s -> s.load("00:30", "1001", "loaded=23:58 arrived=00:25"));
        rule(
                "ahead-of-clock",
                "13",
                Sort.LOOK_AGAIN,
                "happened 21:16, keyed 21:00, apart 16 min",
                s -> s.keyed("21:16", "21:00", "note text=rain"),
                s -> s.keyed("21:15", "21:00", "note text=rain"));
        rule(
                "keyed-after",
                "12",
                Sort.LOOK_AGAIN,
                "happened 21:00, keyed 22:01, apart 61 min",
                s -> s.keyed("21:00", "22:01", "note text=rain"),
                s -> s.keyed("21:00", "22:00", "note text=rain"));
        rule(
                "clock-back",
                "8",
                Sort.LOOK_AGAIN,
                "line 4 keyed 21:10, line 5 keyed 21:00",
                s -> s.keyed("", "21:10", "note text=a").keyed("", "21:00", "note text=b"),
                s -> s.keyed("", "21:00", "note text=a").keyed("", "21:00", "note text=b"));
        rule(
                "clock-changed",
                "7",
                Sort.LOOK_AGAIN,
                "the laptop's clock went from 18:20 to 21:00",
                s -> s.at("21:00", "clock was=18:20 now=21:00"),
                s -> s.at("21:00", "note text=a"));
        shifts(
                "zone-differs",
                "6",
                Sort.LOOK_AGAIN,
                "the laptop's zone is America/Chicago, the job's America/Denver",
                Shift.unopened().at("19:30", "opening zone=America/Denver laptop_zone=America/Chicago"),
                Shift.unopened().at("19:30", "opening zone=America/Denver laptop_zone=America/Denver"));
        shifts(
                "opened-on-other-date",
                "11",
                Sort.LOOK_AGAIN,
                "shift 2026-06-03-night was opened on 2026-06-04",
                Shift.unopened().at("00:10", "opening zone=America/Denver"),
                Shift.unopened().at("23:50", "opening zone=America/Denver").at("00:10", "note text=a"));
        rule(
                "shift-length",
                "18",
                Sort.LOOK_AGAIN,
                "opened 19:30, last line 13:31, between 1081 min",
                s -> s.keyed("", "13:31", "note text=a"),
                s -> s.keyed("", "13:30", "note text=a"));
        rule(
                "no-work-and-loads",
                "16",
                Sort.DOES_NOT_ADD_UP,
                "no work noted, and 1 load placed",
                s -> s.at("20:00", "no-work why=rain").load("21:00", "1001", ""),
                s -> s.at("20:00", "no-work why=rain").load("21:00", "1001", "fate=rejected"));
    }

    private static void record() {
        shifts(
                "no-opening",
                "",
                Sort.MISSING,
                "book paver has no opening",
                Shift.unopened().at("19:40", "note text=a"),
                Shift.night());
        rule(
                "late-line",
                "12, 93",
                Sort.LOOK_AGAIN,
                "note keyed 22:11, the book was closed 22:01",
                s -> s.at("22:00", "closing agreed=yes").at("22:10", "note text=a"),
                s -> s.at("21:50", "note text=a").at("22:00", "closing agreed=yes"));
        rule(
                "late-line",
                "93",
                Sort.LOOK_AGAIN,
                "amend keyed 22:02",
                s -> s.load("21:00", "1001", "")
                        .at("22:00", "closing agreed=yes")
                        .with(amend(4, "net_ston", "22.13")),
                s -> s.load("21:00", "1001", "")
                        .with(amend(4, "net_ston", "22.13"))
                        .at("22:00", "closing agreed=yes"));
        shifts(
                "line-not-read",
                "90",
                Sort.LOOK_AGAIN,
                "line 4 of book paver cannot be read: no JSON",
                Shift.night().unreadable("no JSON"),
                Shift.night());
        shifts(
                "line-not-read",
                "98",
                Sort.LOOK_AGAIN,
                "line 4 of book paver is of a kind that this program does not know",
                Shift.night().foreign(),
                Shift.night());
        rule(
                "set-aside",
                "88",
                Sort.LOOK_AGAIN,
                "37 bytes behind the last whole line were set aside in a.torn-120",
                s -> s.with(new SetAside(
                        "a.torn-120", new java.math.BigDecimal("120"), new java.math.BigDecimal("37"), null)),
                s -> s);
        rule(
                "adrift",
                "92",
                Sort.LOOK_AGAIN,
                "strike",
                s -> s.at("21:00", "strike of=paver/40 reason=twice"),
                s -> s.at("21:00", "strike of=paver/2 reason=twice"));
        rule(
                "adrift",
                "92",
                Sort.LOOK_AGAIN,
                "amend",
                s -> s.with(amend(40, "net_ston", "22.13")),
                s -> s.load("21:00", "1001", "")
                        .with(amend(4, "net_ston", "22.13"))
                        .with(amend(5, "reason", "slip")));
        rule(
                "amendment-not-read",
                "92",
                Sort.LOOK_AGAIN,
                "amended loaded is \"9 pm\"",
                s -> s.load("21:00", "1001", "").with(amend(4, "loaded", "9 pm")),
                s -> s.load("21:00", "1001", "").with(amend(4, "silo", "3")));
        rule(
                "other-units",
                "65",
                Sort.LOOK_AGAIN,
                "net 20.24 t",
                s -> s.load("21:00", "1001", "net_ston= net_t=20.24"),
                s -> s.load("21:00", "1001", ""));
        rule(
                "writer-changed",
                "19",
                Sort.MISSING,
                "written by TB, the line before by RK",
                s -> s.by("TB", "21:00", "note text=a"),
                s -> s.at("20:59", "hand-over next_who=TB text=pull~B~to~15+00").by("TB", "21:00", "note text=a"));
        rule(
                "reviewed-by-writer",
                "97",
                Sort.LOOK_AGAIN,
                "reviewed by RK, who wrote lines of this shift",
                s -> s.at("22:00", "closing agreed=yes").at("22:10", "review says=seen"),
                s -> s.at("22:00", "closing agreed=yes").by("SV", "22:10", "review says=seen"));
        shifts(
                "instrument-due",
                "",
                Sort.OUTSIDE,
                "instrument IR1 used on 2026-06-03, its check was due 2026-06-02",
                Shift.night(instrument("2026-06-02")).load("21:00", "1001", "instrument=IR1"),
                Shift.night(instrument("2026-06-03")).load("21:00", "1001", "instrument=IR1"));
    }

    private static Map<String, Object> instrument(String due) {
        return Map.of("instruments", List.of(Shift.map("id=IR1 kind=infrared due=" + due)));
    }

    private static Amend amend(int of, String key, String value) {
        Map<String, Object> set = new LinkedHashMap<>();
        set.put(key, value.matches("[0-9.]+") && key.contains("_") ? new java.math.BigDecimal(value) : value);
        return new Amend(new Ref("paver", of), set, "misread");
    }

    static Stream<Case> cases() {
        return CASES.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aRuleIsRaisedByWhatItIsForAndNotByWhatIsJustInside(Case c) {
        List<Finding> raised = c.raising().findings(c.rule());

        assertThat(raised).as("findings of %s", c.rule()).anySatisfy(f -> {
            assertThat(f.seen()).contains(c.seen());
            assertThat(f.sort()).isEqualTo(c.sort());
        });
        assertThat(c.quiet().findings(c.rule())).as("findings just inside").isEmpty();
    }

    @Test
    void everyRuleHasSuchACase() {
        Set<String> tried = new LinkedHashSet<>();
        CASES.forEach(c -> tried.add(c.rule()));
        tried.add("no-close");
        tried.add("days-without-shift");

        assertThat(tried)
                .containsExactlyInAnyOrderElementsOf(
                        Rules.all().stream().map(Rule::id).toList());
    }

    @Test
    void aShiftThatWasNotClosedIsSaidWhenItHasBeenSilentForHours() {
        Shift open = Shift.night().at("21:00", "note text=a");
        Shift closed = Shift.night().at("21:00", "closing agreed=yes");

        assertThat(notClosed(open, "00:01")).isEmpty();
        assertThat(notClosed(open, "00:02")).singleElement().satisfies(f -> {
            assertThat(f.seen()).isEqualTo("not closed, last line 21:01, since then 181 min");
            assertThat(f.sort()).isEqualTo(Sort.MISSING);
            assertThat(f.of()).containsExactly(new Ref("paver", 1));
        });
        assertThat(notClosed(closed, "09:00")).isEmpty();
        assertThat(open.findings("no-close")).isEmpty();
    }

    @Test
    void daysWithoutAnyShiftAreNamedUntilTheyHaveOne() {
        Shift shift = Shift.night().at("21:00", "note text=a");
        LocalDate date = shift.day().shift().date();

        assertThat(shift.after(before(date.minusDays(4))).findings("days-without-shift"))
                .singleElement()
                .satisfies(f -> assertThat(f.seen())
                        .isEqualTo("no shift on " + date.minusDays(3) + " to " + date.minusDays(1)));
        assertThat(Shift.night()
                        .at("21:00", "note text=a")
                        .after(before(date.minusDays(1)))
                        .findings("days-without-shift"))
                .isEmpty();
        assertThat(Shift.night().at("21:00", "note text=a").findings("days-without-shift"))
                .as("nothing is known of the days before the first shift")
                .isEmpty();
    }

    @Test
    void theSituationsOfACaseNameItsRule() {
        Map<Integer, List<String>> rules = new HashMap<>();
        Situations.rows().forEach(row -> rules.put(row.number(), row.rules()));
        for (Case c : CASES) {
            for (String number :
                    c.situations().isEmpty() ? new String[0] : c.situations().split(", ")) {
                assertThat(rules.get(Integer.valueOf(number)))
                        .as("row %s of situations.csv, %s", number, c)
                        .contains(c.rule());
            }
        }
    }

    private static ToDate before(LocalDate date) {
        return new ToDate(Map.of(), Map.of(), 0, List.of(new ShiftId(date, "day")), 0);
    }

    private static List<Finding> notClosed(Shift shift, String now) {
        OffsetDateTime at = shift.time(now);
        return Findings.of(shift.day(), Optional.of(shift.totals()), shift.ground(), at).stream()
                .filter(f -> f.rule().equals("no-close"))
                .toList();
    }

    @Test
    void everyFindingSaysWhatWasSeenTheRuleItsSourceAndWhatWouldHaveBeenInside() {
        assertThat(CASES)
                .allSatisfy(c -> assertThat(c.raising().findings()).allSatisfy(f -> {
                    assertThat(f.of()).isNotEmpty();
                    assertThat(f.seen()).isNotBlank();
                    assertThat(f.limit()).isNotBlank();
                    assertThat(f.clause()).isNotBlank();
                    assertThat(f.inside()).isNotBlank();
                    assertThat(Rules.of(f.rule())).isPresent();
                }));
    }

    @Test
    void noSentenceHasAWordThatAccuses() {
        List<String> sentences = new ArrayList<>();
        Rules.all().forEach(r -> sentences.add(r.id() + " " + r.says()));
        CASES.forEach(c -> c.raising()
                .findings()
                .forEach(f -> sentences.add(String.join(
                        " ",
                        f.rule(),
                        f.seen(),
                        f.limit(),
                        f.clause(),
                        f.inside(),
                        f.working(),
                        f.sort().text()))));
        for (Sort sort : Sort.values()) {
            sentences.add(sort.text() + " " + sort.mark());
        }

        assertThat(sentences)
                .isNotEmpty()
                .allSatisfy(
                        s -> assertThat(s.toLowerCase())
                                .doesNotContainPattern(
                                        "\\b(fraud|cheat|violat|fail|illegal|fals|fake|guilt|wrong|bad|error|suspic|copied"
                                                + "|tamper|manipulat|lie[ds]?\\b.*\\babout|reject by|must not|penal|blame|negligen|careless|pass(es|ed)?\\b)"));
    }

    @Test
    void ruleIdsAreWordsAndStandOnce() {
        assertThat(Rules.all()).extracting(Rule::id).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z-]{3,30}"));
    }
}
