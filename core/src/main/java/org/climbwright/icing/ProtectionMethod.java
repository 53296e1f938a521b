package org.climbwright.icing;

/**
 * How ice is kept off.
 *
 * @source the two words as FAA ADS-4 and DOT/FAA/CT-88/8 have them
 */
public enum ProtectionMethod {
    /** Anti-icing: ice is not let form, mostly by heat. On before the conditions begin. */
    ANTI_ICE,
    /** De-icing: ice that has formed is removed. In use from where the conditions begin. */
    DE_ICE
}
