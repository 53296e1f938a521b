package org.climbwright.fitting;

/** A part of a source file that prints itself. */
interface Printed {
    /** Java source, ending with a line break. */
    String source();

    /** Whether it has a name. */
    boolean isNamed(String name);
}
