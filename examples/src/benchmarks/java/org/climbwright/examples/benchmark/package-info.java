/**
 * How fast the library is, against the same formulas written by hand.
 *
 * <p>One class each for the air, the airspeeds, a whole frame, the typed way, units at the edge and
 * a cabin that steps in time. In it stands one class a question, and in that one method a way to
 * answer: {@code byHand}, {@code strictMath}, {@code scalar}, and {@code bulk} where the library
 * has one. The name of the method is the column of the table, so a new way is one more method. A
 * new question is a class with a {@link Line}, entered in {@link Questions}.
 *
 * <p>Start at {@link RecordSpeeds}. Before anything is timed, {@link SameAnswers} sees to it that
 * all ways to answer a question agree.
 */
@NullMarked
package org.climbwright.examples.benchmark;

import org.jspecify.annotations.NullMarked;
