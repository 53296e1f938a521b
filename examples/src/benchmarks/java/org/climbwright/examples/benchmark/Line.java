package org.climbwright.examples.benchmark;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A line of the record: what is asked, and how good the answer has to be. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface Line {
    /** What is asked. */
    String value();

    /** The bar, in the measure of the table that the line stands in; NaN for none. */
    double bar() default Double.NaN;

    /** The bar on JDKs before 25, where it is another; NaN where it is the same. */
    double barBefore25() default Double.NaN;

    /** The aim, in the same measure; NaN for none. */
    double aim() default Double.NaN;

    /** Which of the results is an altitude, -1 for none: one near zero has no relative error. */
    int altitude() default -1;
}
