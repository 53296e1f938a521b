/**
 * How much cloud water a cylinder or a leading edge catches, how warm it gets, and how fast ice
 * grows on it.
 *
 * <p>Start at {@link org.climbwright.icing.accretion.CylinderInCloud}, or with SI doubles at {@link
 * org.climbwright.icing.accretion.DropImpingement}. The radius of the cylinder, or of the leading
 * edge, is an input: no aeroplane is known here.
 *
 * <p>Limits of use: formulas of handbooks for the stagnation line of a clean cylinder, for teaching
 * and study. Not a prediction of ice on an aeroplane, and not certification evidence: shape,
 * roughness, time and large drops change what really grows. No method takes or returns null.
 */
@NullMarked
package org.climbwright.icing.accretion;

import org.jspecify.annotations.NullMarked;
