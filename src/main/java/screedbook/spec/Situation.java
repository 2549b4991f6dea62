package screedbook.spec;

import java.math.BigDecimal;
import java.time.LocalDate;
import screedbook.unit.Amount;

/**
 * The case for which a limit is looked up. A component that is null is not known; a row that depends on it can then
 * neither be said to hold nor not to hold.
 *
 * @param layer {@code riding-surface} or {@code below-riding-surface}
 * @param thickness planned compacted thickness, never a probe
 * @param nmas nominal maximum aggregate size in mm
 * @param grade high temperature of the binder grade, such as 70
 * @param polymer {@code yes} or {@code no}
 * @param aid {@code neither}, {@code warm-mix} or {@code compaction-aid}
 * @param light {@code day} or {@code night} as the contract defines it
 * @param thermal {@code continuous-imaging}, {@code handheld-camera} or {@code none}
 * @param base what is paved over: {@code asphalt}, {@code concrete} or {@code aggregate}
 * @param tackOn what lies under the tack: {@code new}, {@code existing}, {@code milled} or {@code concrete}
 * @param tackGrade grade of the tack product
 * @param mixType the specification's own word for the mix
 */
public record Situation(
        String layer,
        Amount thickness,
        BigDecimal nmas,
        Integer grade,
        String polymer,
        String aid,
        String light,
        String thermal,
        String base,
        String tackOn,
        String tackGrade,
        LocalDate date,
        String mixType) {
    /** Nothing known. */
    public static final Situation UNKNOWN =
            new Situation(null, null, null, null, null, null, null, null, null, null, null, null, null);

    /** The same case by day or by night. */
    public Situation lit(String dayOrNight) {
        return new Situation(
                layer,
                thickness,
                nmas,
                grade,
                polymer,
                aid,
                dayOrNight,
                thermal,
                base,
                tackOn,
                tackGrade,
                date,
                mixType);
    }

    /** The same case at a planned thickness. */
    public Situation thick(Amount planned) {
        return new Situation(
                layer, planned, nmas, grade, polymer, aid, light, thermal, base, tackOn, tackGrade, date, mixType);
    }

    /** The same case with tack under it. */
    public Situation tacked(String surface, String gradeOfTack) {
        return new Situation(
                layer, thickness, nmas, grade, polymer, aid, light, thermal, base, surface, gradeOfTack, date, mixType);
    }

    /** The same case at another light, with another thermal method and another aid. */
    public Situation with(String otherLight, String otherThermal, String otherAid) {
        return new Situation(
                layer,
                thickness,
                nmas,
                grade,
                polymer,
                otherAid,
                otherLight,
                otherThermal,
                base,
                tackOn,
                tackGrade,
                date,
                mixType);
    }

    /** The same case on a date. */
    public Situation on(LocalDate day) {
        return new Situation(
                layer, thickness, nmas, grade, polymer, aid, light, thermal, base, tackOn, tackGrade, day, mixType);
    }
}
