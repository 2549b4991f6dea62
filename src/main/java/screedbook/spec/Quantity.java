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
    /** Planned thickness of a lift in sizes of its largest aggregate, for a fine mix. */
    LIFT_SIZES_FINE(Measure.TIMES),
    /** The same for a coarse mix. */
    LIFT_SIZES_COARSE(Measure.TIMES),
    /** Untrimmed core height. */
    CORE_HEIGHT(Measure.DEPTH),
    /** One test of density, in hundredths of the theoretical maximum. */
    DENSITY(Measure.PERCENT),
    /** The mean of a lot's tests of density. */
    DENSITY_MEAN(Measure.PERCENT),
    /** The ends from which a lot's quality index is counted. */
    DENSITY_QUALITY(Measure.PERCENT),
    /** Percent of a lot's density that is within those ends. */
    DENSITY_WITHIN(Measure.PERCENT),
    /** One test of density where the mat was seen to be colder than beside it. */
    DENSITY_COLD_SPOT(Measure.PERCENT),
    /** A gauge reading in hundredths of the control strip's density. */
    OF_CONTROL_STRIP(Measure.PERCENT),
    /** The mean of a lot's gauge readings in hundredths of the control strip's density. */
    MEAN_OF_CONTROL_STRIP(Measure.PERCENT),
    /** Water that a core took up, in hundredths of its volume. */
    WATER_ABSORBED(Measure.PERCENT),
    /** From a longitudinal joint across to the nearest one of the lift below. */
    JOINT_OFFSET(Measure.DEPTH),
    TACK_APPLIED(Measure.TACK_RATE),
    TACK_RESIDUAL(Measure.TACK_RATE),
    /** Water added to a tack product, in hundredths of the product. */
    TACK_WATER(Measure.PERCENT),
    /** Temperature of the tack material when sprayed. */
    TACK_MATERIAL(Measure.TEMPERATURE),
    /** Mix temperature less the target, at the plant. */
    PLANT_DIFFERENCE(Measure.DIFFERENCE),
    /** Mix temperature less the target, at the paver. */
    PAVER_DIFFERENCE(Measure.DIFFERENCE),
    /** The target that a mix is designed or agreed with at the plant. */
    PLANT_TARGET(Measure.TEMPERATURE),
    /** Highest less lowest mat temperature along a length. */
    MAT_RANGE(Measure.DIFFERENCE),
    /** Highest less lowest temperature of the uncompacted mat at one check. */
    UNCOMPACTED_RANGE(Measure.DIFFERENCE),
    /** Mat temperature right behind the screed. */
    MAT_BEHIND_SCREED(Measure.TEMPERATURE),
    /** Mat temperature under drums that vibrate or oscillate. */
    MAT_VIBRATED(Measure.TEMPERATURE),
    /** Mat temperature when its rolling ends. */
    MAT_ROLLING_ENDS(Measure.TEMPERATURE),
    /** Any mat temperature that can be meant while the mat is laid and rolled. */
    MAT(Measure.TEMPERATURE),
    /** Target at the paver less the coldest of a thermal profile. */
    MAT_BELOW_TARGET(Measure.DIFFERENCE),
    /** Hottest less coldest of a thermal profile up to which it is of no class. */
    PROFILE_MODERATE(Measure.DIFFERENCE),
    /** The same up to which it is moderate; above it is severe. */
    PROFILE_SEVERE(Measure.DIFFERENCE),
    /** Length of the straightedge that the limits of the gap under it speak of. */
    STRAIGHTEDGE_LENGTH(Measure.WIDTH),
    /** Gap under a straightedge laid along the road. */
    STRAIGHTEDGE_ALONG(Measure.DEPTH),
    /** Gap under a straightedge laid across the road. */
    STRAIGHTEDGE_ACROSS(Measure.DEPTH),
    /** Gap under a straightedge laid over a joint. */
    STRAIGHTEDGE_OVER_JOINT(Measure.DEPTH),
    /** One cross slope less the planned one, without sign. */
    CROSS_SLOPE(Measure.PERCENT),
    /** The mean of ten of these in a row. */
    CROSS_SLOPE_MEAN(Measure.PERCENT),
    /** From a longitudinal joint of a riding surface to the lane line that it is to lie on, without sign. */
    JOINT_FROM_LINE(Measure.WIDTH),
    /** From a joint across to the nearest one of the lift below. */
    JOINT_ACROSS_OFFSET(Measure.DEPTH),
    /** Vertical edge of a notched wedge in hundredths of the lift's planned thickness. */
    JOINT_NOTCH_OF_LIFT(Measure.PERCENT),
    /** Across for one down of a wedge along the road. */
    JOINT_WEDGE_SLOPE(Measure.TIMES),
    /** Across for one down of a wedge at a joint across the road. */
    JOINT_ACROSS_SLOPE(Measure.TIMES),
    /** Hot mix laid onto the older mat beside it. */
    JOINT_OVERLAP(Measure.DEPTH),
    /** The newer side of a joint above the older one after rolling. */
    JOINT_HIGHER(Measure.DEPTH),
    /** Speed of a roller without vibration. */
    ROLLER_STATIC(Measure.SPEED),
    /** Speed of a roller on rubber tires. */
    ROLLER_PNEUMATIC(Measure.SPEED),
    /** Speed of a roller whose drums vibrate. */
    ROLLER_VIBRATORY(Measure.SPEED),
    /** Theoretical maximum specific gravity of a mix. */
    GMM(Measure.TIMES),
    /** Bulk specific gravity of a mat or of a mix as compacted. */
    GMB(Measure.TIMES),
    /** Air in a mat or in a mix as compacted, in hundredths of its volume. */
    AIR_VOIDS(Measure.PERCENT),
    /** Binder in hundredths of the mix by mass. */
    BINDER_CONTENT(Measure.PERCENT),
    /** What stays of a tack material when its water is gone, in hundredths by mass. */
    RESIDUE(Measure.PERCENT),
    /** A load's net weight. */
    NET(Measure.LOAD),
    /** Printed net less printed gross and tare, without sign. */
    NET_DIFFERENCE(Measure.SCALE),
    TARE(Measure.SCALE),
    /** The tare that the weights come to less the truck's usual one, without sign. */
    TARE_DIFFERENCE(Measure.SCALE),
    /** A load weighed again on another scale less what its ticket prints, without sign, in hundredths of that. */
    WEIGHED_AGAIN(Measure.PERCENT),
    /** Gross weight of a loaded truck. */
    GROSS(Measure.SCALE),
    /** From one discharge of a truck to its next loading. */
    TURN(Measure.MINUTES),
    /** From one discharge of a truck to its next one, in hundredths of the round that is planned. */
    ROUND(Measure.PERCENT),
    /** A weight in a blank for pounds or kilograms that is taken for tons. */
    SCALE_AS_TONS(Measure.SCALE),
    /** The greater of two sums of weights over the smaller, where one may be in tonnes and one in tons. */
    TONNE_RATIO(Measure.TIMES),
    /** Any mix temperature that can be meant. */
    MIX(Measure.TEMPERATURE),
    /** Width of a pull or a tack shot. */
    WIDTH(Measure.WIDTH),
    /** Planned thickness that can be meant. */
    THICKNESS(Measure.DEPTH),
    /** From a shift's opening to its last entry or close. */
    SHIFT_LENGTH(Measure.MINUTES),
    /** From a shift's last line to now, where it was not closed. */
    SILENCE(Measure.MINUTES),
    /** From what happened to its keying, of an entry that is said to be live. */
    KEYED_AFTER(Measure.MINUTES),
    /** A time that lies ahead of the clock. */
    AHEAD_OF_CLOCK(Measure.MINUTES),
    /** Spread rate in hundredths of the planned one. */
    SPREAD(Measure.PERCENT),
    /** Spread rate that is paid for, in hundredths of the planned one. */
    SPREAD_PAID(Measure.PERCENT),
    /** Thickness of the rolled mat as probed, less the planned one. */
    DEPTH_DIFFERENCE(Measure.DEPTH),
    /** Length of a pull that was paved without tack noted for it, in hundredths of what was paved. */
    UNTACKED(Measure.PERCENT),
    /** Area that was tacked for a pull, in hundredths of what was paved of it. */
    TACKED_AREA(Measure.PERCENT),
    /** Length of a pull that was paved a second time in a lift. */
    PAVED_TWICE(Measure.WIDTH),
    /** Length that was left between where a pull ended in the shift before and where it begins. */
    GAP_TO_LAST(Measure.WIDTH);

    private final Measure measure;

    Quantity(Measure measure) {
        this.measure = measure;
    }

    public Measure measure() {
        return measure;
    }
}
