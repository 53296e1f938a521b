/**
 * The icing conditions that certification rules design for: how much water, at which drop size,
 * temperature and altitude, and by how much given conditions are inside.
 *
 * <p>Start at {@link org.climbwright.icing.envelope.ContinuousMaximum}. The rules print figures and
 * no formulas: what stands here is an interpolation through points that were read from them or are
 * tabulated elsewhere. What was not seen is absent and named: the altitude-temperature envelope for
 * intermittent maximum (figure 5 of Appendix C), the water of freezing rain and the
 * altitude-temperature envelopes of Appendix O (its figures 3, 4 and 6), and the curves for ice
 * crystals of Appendix D of part 33 and Appendix P of CS-25. Values from memory are used only where
 * the caller says so, by {@link org.climbwright.icing.envelope.RememberedValues}.
 *
 * <p>Limits of use: for teaching and study, not certification evidence. Conditions outside an
 * envelope occur; conditions inside are not therefore harmless. What an aeroplane is approved for,
 * its flight manual says. No method takes or returns null.
 */
@NullMarked
package org.climbwright.icing.envelope;

import org.jspecify.annotations.NullMarked;
