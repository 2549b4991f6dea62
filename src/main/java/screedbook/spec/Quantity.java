package screedbook.spec;

import screedbook.entry.Word;
import screedbook.unit.Measure;

/** What a limit speaks of. */
public enum Quantity implements Word {
    /** Temperature of the surface that is about to be paved. */
    SURFACE(Measure.TEMPERATURE),
    AIR(Measure.TEMPERATURE),
    /** Mix temperature at the plant. */
    PLANT_MIX(Measure.TEMPERATURE),
    /** Mix temperature at the paver. */
    PAVER_MIX(Measure.TEMPERATURE),
    /** Planned compacted thickness of a lift. */
    LIFT(Measure.DEPTH),
    /** Untrimmed core height. */
    CORE_HEIGHT(Measure.DEPTH),
    TACK_APPLIED(Measure.TACK_RATE),
    TACK_RESIDUAL(Measure.TACK_RATE),
    /** Temperature of the tack material when sprayed. */
    TACK_MATERIAL(Measure.TEMPERATURE),
    /** Mix temperature less the target, at the plant. */
    PLANT_DIFFERENCE(Measure.DIFFERENCE),
    /** Mix temperature less the target, at the paver. */
    PAVER_DIFFERENCE(Measure.DIFFERENCE),
    /** Highest less lowest mat temperature along a length. */
    MAT_RANGE(Measure.DIFFERENCE),
    /** Highest less lowest temperature of the uncompacted mat at one check. */
    UNCOMPACTED_RANGE(Measure.DIFFERENCE);

    private final Measure measure;

    Quantity(Measure measure) {
        this.measure = measure;
    }

    public Measure measure() {
        return measure;
    }
}
