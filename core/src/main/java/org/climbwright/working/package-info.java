/**
 * The working behind a figure, as a teacher writes it on the board: what is given, each formula
 * with its symbols, the numbers put in, the result and its source.
 *
 * <p>Start at {@link org.climbwright.working.Working}; one class for each chapter of the subject
 * makes workings of its questions. No figure is computed here: each result is what the function of
 * its room answers, and stands beside the formula that the function evaluates. Given values and
 * formulas are in SI, and readings beside them in the units of the trade. No method takes or
 * returns null.
 */
@NullMarked
package org.climbwright.working;

import org.jspecify.annotations.NullMarked;
