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
    /** So many tests of density are taken in each sublot. */
    DENSITY_TESTS,
    /** A test of density is the mean of the cores of a sublot. */
    DENSITY_BY_SUBLOT,
    /** A lot's mean weighs each sublot by its tons. */
    DENSITY_BY_TONS,
    /** The percent within limits is found by the beta distribution. */
    PWL_BY_BETA,
    /** The percent within limits is the table row of the next higher quality index. */
    PWL_BY_NEXT_HIGHER_ROW,
    /** Pay for density goes by the formula of Florida's 334-8. */
    PAY_BY_FLORIDA_334,
    /** Pay for density goes by the formulas of Colorado's Table 105-3. */
    PAY_BY_COLORADO_105_3,
    /** Pay for density goes by the formula in appendix B of FHWA-HRT-12-027. */
    PAY_BY_HRT_12_027,
    /** So many equal temperatures in a row are worth a look at the instrument. */
    SAME_HEAT_IN_A_ROW,
    /** So many loads of a truck in a row with one net weight are looked at again. */
    SAME_NET_IN_A_ROW,
    /** More numbers than these are told as a whole and not one by one. */
    TOLD_AS_A_WHOLE
}
