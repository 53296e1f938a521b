/**
 * What it means that a cabin is high: published times of useful consciousness, altitudes above
 * which rules require oxygen, the limits that aeroplanes are certificated to, and the oxygen that
 * reaches the windpipe.
 *
 * <p>Start at {@link org.climbwright.cabin.exposure.OxygenRuleSet} for a cabin altitude, at {@link
 * org.climbwright.cabin.exposure.CabinAltitudeRule} for the record of a flight. Figures are those
 * that were published, each with its source and how far that was read; sources that differ stay
 * apart. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation. Editions of rules change and authorities differ; the
 * flight manual, the operator's checklists and memory items, local regulations and licensed
 * practice decide. A time of consciousness is an average of healthy people, and nobody's own.
 */
@NullMarked
package org.climbwright.cabin.exposure;

import org.jspecify.annotations.NullMarked;
