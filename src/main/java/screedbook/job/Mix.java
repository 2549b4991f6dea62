package screedbook.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import screedbook.entry.Blank;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** One mix as designed. */
public record Mix(
        @Blank(value = "name", due = Blank.Due.ALWAYS) String name,
        @Blank("design no.") String design,
        @Blank("design revision") String revision,

        @Blank(value = "nominal maximum size", measure = Measure.AGGREGATE)
        Amount nmas,

        @Blank(value = "binder", help = "performance grade, such as 70-22")
        String binder,

        @Blank("polymer") YesNo polymer,
        @Blank("aid") Aid aid,

        @Blank(value = "target at the plant", measure = Measure.TEMPERATURE)
        Amount targetPlant,

        @Blank(value = "target at the paver", measure = Measure.TEMPERATURE)
        Amount targetPaver,

        @Blank(value = "Gmm", help = "theoretical maximum specific gravity")
        BigDecimal gmm,

        @Blank("Gmm of") LocalDate gmmDate,

        @Blank(value = "unit weight", measure = Measure.UNIT_WEIGHT)
        Amount unitWeight,

        @Blank(
                value = "spread rate for a unit of thickness",
                measure = Measure.SPREAD_RATE,
                help = "lb/yd2 for each inch, kg/m2 for each mm")
        Amount spread,

        @Blank("pay item") String payItem,

        @Blank(value = "gradation", help = "fine or coarse, as designed")
        Gradation gradation,

        @Blank(value = "type", help = "the specification's own word for it, such as 424 or open-graded")
        String type) {
    /** A letter between the temperatures names the traffic: AASHTO M 332 (from memory). */
    private static final Pattern GRADE = Pattern.compile("(?i)(?:PG\\s*)?(\\d{2})[SHVE]?-\\d{2}.*");

    /** The high temperature of the binder grade: 70 of 70-22, also of PG 70-22; empty when it is not settled. */
    public Optional<Integer> highGrade() {
        if (binder == null) {
            return Optional.empty();
        }
        Matcher m = GRADE.matcher(binder.strip());
        return m.matches() ? Optional.of(Integer.valueOf(m.group(1))) : Optional.empty();
    }

    /** Which side of the design's line the aggregate lies on. */
    public enum Gradation implements Word {
        FINE,
        COARSE
    }

    /** What makes a mix workable at lower heat. */
    public enum Aid implements Word {
        NEITHER,
        WARM_MIX,
        COMPACTION_AID
    }
}
