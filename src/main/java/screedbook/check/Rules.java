package screedbook.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every rule by which a day is looked at, in the order in which findings of one entry stand. */
public final class Rules {
    private static final List<Rule> ALL = Stream.of(
                    RecordRules.ALL,
                    TimeRules.ALL,
                    PlanRules.ALL,
                    WeatherRules.ALL,
                    TackRules.ALL,
                    RoadRules.ALL,
                    AreaRules.ALL,
                    NumberRules.ALL,
                    WeightRules.ALL,
                    TicketRules.ALL,
                    SightRules.ALL,
                    PlantRules.ALL,
                    HeatRules.ALL,
                    SampleRules.ALL,
                    CustodyRules.ALL,
                    GaugeRules.ALL,
                    DensityRules.ALL,
                    ResultRules.ALL,
                    MatRules.ALL,
                    UncompactedRules.ALL,
                    RollingRules.ALL,
                    JointRules.ALL,
                    SlopeRules.ALL,
                    StopRules.ALL,
                    InstrumentRules.ALL,
                    DueRules.ALL,
                    YieldRules.ALL)
            .flatMap(List::stream)
            .toList();

    private Rules() {}

    /** All of them. */
    public static List<Rule> all() {
        return ALL;
    }

    /** The rule of a permanent word, if this program knows it. */
    public static Optional<Rule> of(String id) {
        return ALL.stream().filter(rule -> rule.id().equals(id)).findFirst();
    }
}
