package screedbook.job;

import java.util.List;
import screedbook.entry.Blank;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** How often is looked. */
public record Checks(
        @Blank(value = "first loads with temperature") Integer firstLoads,
        @Blank(value = "then one load in") Integer thenOneIn,
        @Blank(value = "temperature where") HeatWhere heatWhere,

        @Blank(value = "surface temperature good for", measure = Measure.MINUTES)
        Amount surfaceEvery,

        @Blank(value = "weather good for", measure = Measure.MINUTES)
        Amount weatherEvery,

        @Blank(value = "load age at most", measure = Measure.MINUTES)
        Amount loadAge,

        @Blank(value = "spread rate once in", measure = Measure.LOAD)
        Amount yieldEvery,

        @Blank(value = "tack samples a job") Integer tackSamples,
        @Blank(value = "gross and tare keyed") YesNo grossAndTare,
        @Blank(value = "source of these") String source,

        @Blank(value = "other checks", help = "what else the contract wants, and how often")
        List<Wanted> others,

        @Blank(
                value = "compacted thickness within",
                measure = Measure.DEPTH,
                help = "of the planned one, more or less; no limit where nothing stands")
        Amount depthWithin,

        @Blank(value = "spread rate paid up to", measure = Measure.PERCENT, help = "of the planned one")
        Amount paidUpTo,

        @Blank(value = "a stop of the paver at most", measure = Measure.MINUTES, help = "no limit where nothing stands")
        Amount stopAtMost,

        @Blank(
                value = "a thermometer off by at most",
                measure = Measure.DIFFERENCE,
                help = "no limit where nothing stands")
        Amount thermometerOff) {
    /** Without what is asked beside the usual checks. */
    public Checks(
            Integer firstLoads,
            Integer thenOneIn,
            HeatWhere heatWhere,
            Amount surfaceEvery,
            Amount weatherEvery,
            Amount loadAge,
            Amount yieldEvery,
            Integer tackSamples,
            YesNo grossAndTare,
            String source) {
        this(
                firstLoads,
                thenOneIn,
                heatWhere,
                surfaceEvery,
                weatherEvery,
                loadAge,
                yieldEvery,
                tackSamples,
                grossAndTare,
                source,
                List.of(),
                null,
                null);
    }

    /** Without what is allowed of stops and thermometers. */
    public Checks(
            Integer firstLoads,
            Integer thenOneIn,
            HeatWhere heatWhere,
            Amount surfaceEvery,
            Amount weatherEvery,
            Amount loadAge,
            Amount yieldEvery,
            Integer tackSamples,
            YesNo grossAndTare,
            String source,
            List<Wanted> others,
            Amount depthWithin,
            Amount paidUpTo) {
        this(
                firstLoads,
                thenOneIn,
                heatWhere,
                surfaceEvery,
                weatherEvery,
                loadAge,
                yieldEvery,
                tackSamples,
                grossAndTare,
                source,
                others,
                depthWithin,
                paidUpTo,
                null,
                null);
    }

    /** Where a due mix temperature is taken. */
    public enum HeatWhere implements Word {
        PAVER,
        PLANT,
        BOTH
    }
}
