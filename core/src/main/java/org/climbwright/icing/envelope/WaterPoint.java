package org.climbwright.icing.envelope;

import java.io.Serializable;

/**
 * A point of a line of largest liquid water content at one temperature, for a figure.
 *
 * @param dropDiameterM mean effective drop diameter [m]
 * @param liquidWaterContentKgPerM3 the largest liquid water content there [kg/m³]
 */
public record WaterPoint(double dropDiameterM, double liquidWaterContentKgPerM3)
        implements Serializable {}
