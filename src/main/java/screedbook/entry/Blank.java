package screedbook.entry;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import screedbook.unit.Measure;

/**
 * What a component of a kind says about itself: form, line, CSV columns and schema are read off it. A record component
 * without a {@code Blank} that is itself a record is a group: its components stand in the line beside the others.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Blank {
    /** The label on the form. */
    String value();

    /** What it measures; none or one. */
    Measure[] measure() default {};

    /** Where the choices come from, when they come from the job. */
    Pick pick() default Pick.NONE;

    /** When Enter stops at it. */
    Due due() default Due.FREE;

    /** Whether the value of the entry before stands in a new form already. */
    boolean carry() default false;

    /** Characters that the blank is wide on the form. */
    int width() default 10;

    /** A sentence for help and schema. */
    String help() default "";

    /** When Enter stops at a blank. */
    enum Due {
        /** Enter always stops here; in a job file it must be there. */
        ALWAYS,
        /** Enter stops here when the job's rhythm or the way of keying asks for it. */
        ASKED,
        /** Enter passes; Tab and arrows reach it. */
        FREE
    }

    /** A list of the job from which a blank is picked; anything else may be typed all the same. */
    enum Pick {
        NONE,
        PLANT,
        TRUCK,
        MIX,
        PULL,
        LIFT,
        PRODUCT,
        DISTRIBUTOR,
        INSTRUMENT,
        PAVER,
        PERSON,
        /** A sample that no result has closed yet. */
        SAMPLE,
        RULE
    }
}
