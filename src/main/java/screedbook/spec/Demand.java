package screedbook.spec;

import screedbook.entry.Word;

/** What a sheet asks for without a limit for a measured value. */
public enum Demand implements Word {
    /** A longitudinal joint of the layer stays out of the wheel paths. */
    JOINT_OUT_OF_WHEEL_PATHS,
    /** A longitudinal joint of the layer lies on a final lane line or edge line. */
    JOINT_ON_LINE,
    /** Tack is sprayed as it came from its maker. */
    TACK_UNDILUTED,
    /** Every face that the mix will touch is tacked. */
    TACK_ON_EVERY_FACE,
    /** So many samples of tack are taken on a project. */
    TACK_SAMPLED,
    /** The residue of a tack product is at least what its specification says. */
    TACK_RESIDUE,
    /** The uncompacted mat is looked at in each sublot, and the engineer is there. */
    UNCOMPACTED_MAT_LOOKED_AT,
    /** The layer is not placed on these dates. */
    NOT_ON_THESE_DATES,
    /** So many equal temperatures in a row are worth a look at the instrument. */
    SAME_HEAT_IN_A_ROW
}
