package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The cases of all rules, in the order in which each {@code ...Cases} adds its own. */
final class RuleCases {
    private static final List<RuleCase> ALL = new ArrayList<>();

    static {
        HeatCases.add();
        NumberCases.add();
        SlopeCases.add();
        WeightCases.add();
        TicketCases.add();
        TackCases.add();
        WeatherCases.add();
        PlanCases.add();
        TimeCases.add();
        RecordCases.add();
        RoadCases.add();
        DueCases.add();
        PlantCases.add();
        SampleCases.add();
        DensityCases.add();
        ResultCases.add();
        SiteCases.add();
    }

    private RuleCases() {}

    static List<RuleCase> all() {
        return List.copyOf(ALL);
    }

    /** A case of two ordinary nights that differ in what is keyed. */
    static void rule(
            String rule,
            String situations,
            Sort sort,
            String seen,
            UnaryOperator<Shift> raising,
            UnaryOperator<Shift> quiet) {
        shifts(rule, situations, sort, seen, raising.apply(Shift.night()), quiet.apply(Shift.night()));
    }

    static void shifts(String rule, String situations, Sort sort, String seen, Shift raising, Shift quiet) {
        ALL.add(new RuleCase(rule, situations, raising, quiet, sort, seen));
    }
}
