package org.climbwright.icing.accretion;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.speed.TrueAirspeed;

/**
 * A cylinder, or the leading edge of that radius, in a cloud: what it catches, how warm it gets,
 * how fast ice grows.
 *
 * <pre>{@code
 * AirState air = Atmosphere.standard().at(PressureAltitude.ofFeet(14000));
 * CylinderInCloud edge =
 *         CylinderInCloud.of(air, TrueAirspeed.ofKnots(200), 0.03, 20e-6, 0.5e-3);
 * edge.stagnationEfficiency()                 // 0.6…
 * edge.intensity(900.0)                       // Optional[MODERATE]
 * }</pre>
 *
 * <p>The drops are all as large; for a distribution, see {@link DropDistribution#mean}. The range
 * ratio is {@link DropImpingement#rangeRatioByFit}, the recovery factor of the balance {@link
 * KineticHeating#LAMINAR_RECOVERY}, the air saturated over water.
 *
 * <p>Limits of use: handbook formulas for the stagnation line of a clean cylinder. Not a prediction
 * of ice on an aeroplane, not certification evidence, and no reason to enter a cloud: the flight
 * manual and what the crew sees decide.
 */
public final class CylinderInCloud implements Serializable {
    private static final long serialVersionUID = 1L;

    private final AirState air;
    private final double tasMps;
    private final double radiusM;
    private final double dropDiameterM;
    private final double waterKgPerM3;

    private CylinderInCloud(
            AirState air,
            double tasMps,
            double radiusM,
            double dropDiameterM,
            double waterKgPerM3) {
        this.air = Objects.requireNonNull(air, "air");
        this.tasMps = tasMps;
        this.radiusM = radiusM;
        this.dropDiameterM = dropDiameterM;
        this.waterKgPerM3 = waterKgPerM3;
        langmuirModifiedInertia(); // asked for their checks, so that what is made can answer
        airEnergyTransferK();
        waterCatchKgPerM2S();
        stagnationHeatTransfer();
    }

    /**
     * Makes a cylinder in a cloud.
     *
     * @param air the air; its humidity is not asked, a cloud is saturated
     * @param tas true airspeed, 0 to 310 m/s
     * @param radiusM radius of the cylinder or of the leading edge [m]
     * @param dropDiameterM diameter of the drops, such as the median volume diameter [m]
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], 0 to 0.02
     * @return the cylinder in its cloud
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static CylinderInCloud of(
            AirState air,
            TrueAirspeed tas,
            double radiusM,
            double dropDiameterM,
            double liquidWaterContentKgPerM3) {
        return new CylinderInCloud(
                air, tas.inMetresPerSecond(), radiusM, dropDiameterM, liquidWaterContentKgPerM3);
    }

    /**
     * Returns the same cylinder in more or less water.
     *
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], 0 to 0.02
     * @return a copy that differs in that
     * @throws org.climbwright.quantity.OutsideModelException if the value is out of range
     */
    public CylinderInCloud withLiquidWaterContent(double liquidWaterContentKgPerM3) {
        return new CylinderInCloud(air, tasMps, radiusM, dropDiameterM, liquidWaterContentKgPerM3);
    }

    /**
     * Returns the inertia parameter on the radius.
     *
     * @return K, see {@link DropImpingement#inertiaParameter}
     */
    public double inertiaParameter() {
        return DropImpingement.inertiaParameter(
                dropDiameterM, tasMps, air.dynamicViscosityPaS(), radiusM);
    }

    /**
     * Returns the modified inertia parameter of Langmuir and Blodgett.
     *
     * @return K₀, see {@link DropImpingement#langmuirModifiedInertia}
     */
    public double langmuirModifiedInertia() {
        double reynolds =
                DropImpingement.dropReynoldsNumber(
                        dropDiameterM, tasMps, air.densityKgPerM3(), air.dynamicViscosityPaS());
        return DropImpingement.langmuirModifiedInertia(
                inertiaParameter(), DropImpingement.rangeRatioByFit(reynolds));
    }

    /**
     * Returns the share of the water before the stagnation line that hits it.
     *
     * @return collection efficiency, see {@link DropImpingement#stagnationEfficiency}
     */
    public double stagnationEfficiency() {
        return DropImpingement.stagnationEfficiency(langmuirModifiedInertia());
    }

    /**
     * Returns the share of the water before the whole cylinder that hits it.
     *
     * @return collection efficiency, see {@link DropImpingement#overallEfficiency}
     */
    public double overallEfficiency() {
        return DropImpingement.overallEfficiency(langmuirModifiedInertia());
    }

    /**
     * Returns the water that hits each square metre at the stagnation line.
     *
     * @return water catch [kg/(m²·s)], see {@link IceGrowth#waterCatch}
     */
    public double waterCatchKgPerM2S() {
        return IceGrowth.waterCatch(waterKgPerM3, tasMps, stagnationEfficiency());
    }

    /**
     * Returns the temperature at the stagnation point in dry air.
     *
     * @return total temperature [K], see {@link KineticHeating#dryTemperature}
     */
    public double dryTemperatureK() {
        return KineticHeating.dryTemperature(air.temperatureK(), tasMps, 1.0);
    }

    /**
     * Returns the temperature at the stagnation point of a wet surface that does not freeze.
     *
     * @return wet datum [K], see {@link KineticHeating#wetTemperature}
     */
    public double wetTemperatureK() {
        return KineticHeating.wetTemperature(air.temperatureK(), tasMps, air.pressurePa(), 1.0);
    }

    /**
     * Returns the share of the water that freezes where it hits.
     *
     * @return freezing fraction, see {@link HeatBalance#freezingFraction}; empty if no water hits
     */
    public OptionalDouble freezingFraction() {
        double b = HeatBalance.relativeHeatFactor(waterCatchKgPerM2S(), stagnationHeatTransfer());
        return HeatBalance.coversRelativeHeatFactor(b)
                ? OptionalDouble.of(
                        HeatBalance.freezingFraction(
                                dropEnergyTransferK(), airEnergyTransferK(), b))
                : OptionalDouble.empty();
    }

    /**
     * Returns the liquid water content up to which all of it freezes where it hits.
     *
     * @return critical liquid water content [kg/m³], see {@link
     *     HeatBalance#criticalLiquidWaterContent}; empty if no drop hits
     */
    public OptionalDouble criticalLiquidWaterContentKgPerM3() {
        double efficiency = stagnationEfficiency();
        return HeatBalance.coversCritical(tasMps, efficiency)
                ? OptionalDouble.of(
                        HeatBalance.criticalLiquidWaterContent(
                                dropEnergyTransferK(),
                                airEnergyTransferK(),
                                stagnationHeatTransfer(),
                                tasMps,
                                efficiency))
                : OptionalDouble.empty();
    }

    /**
     * Returns how fast ice grows thicker at the stagnation line.
     *
     * @param iceDensityKgPerM3 density of the ice [kg/m³], 50 to 1000; {@link
     *     IceGrowth#CLEAR_ICE_KG_PER_M3} for glaze
     * @return growth [m/s]; 0 if no water hits, or none of it freezes
     * @throws org.climbwright.quantity.OutsideModelException if the density is out of range
     */
    public double growthMps(double iceDensityKgPerM3) {
        return IceGrowth.rate(
                waterCatchKgPerM2S(), freezingFraction().orElse(0.0), iceDensityKgPerM3);
    }

    /**
     * Returns how long ice takes to grow to a thickness at the stagnation line.
     *
     * @param thicknessM thickness [m], 0 to 1
     * @param iceDensityKgPerM3 density of the ice [kg/m³], 50 to 1000
     * @return the time, to the millisecond; empty if no ice grows
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public Optional<Duration> timeToThickness(double thicknessM, double iceDensityKgPerM3) {
        double rate = growthMps(iceDensityKgPerM3);
        return IceGrowth.grows(rate)
                ? Optional.of(
                        Duration.ofMillis(
                                Math.round(1e3 * IceGrowth.timeToThickness(thicknessM, rate))))
                : Optional.empty();
    }

    /**
     * Returns the intensity by the rule of numbers.
     *
     * @param iceDensityKgPerM3 density of the ice [kg/m³], 50 to 1000
     * @return the intensity, see {@link IcingIntensity#ofGrowth}; empty if no ice grows
     * @throws org.climbwright.quantity.OutsideModelException if the density is out of range
     */
    public Optional<IcingIntensity> intensity(double iceDensityKgPerM3) {
        return IcingIntensity.ofGrowth(growthMps(iceDensityKgPerM3));
    }

    private double stagnationHeatTransfer() {
        return HeatBalance.stagnationHeatTransfer(
                tasMps,
                2.0 * radiusM,
                air.densityKgPerM3(),
                air.dynamicViscosityPaS(),
                air.thermalConductivityWPerMK());
    }

    private double dropEnergyTransferK() {
        return HeatBalance.dropEnergyTransfer(air.temperatureK(), tasMps);
    }

    private double airEnergyTransferK() {
        return HeatBalance.airEnergyTransfer(
                air.temperatureK(), tasMps, air.pressurePa(), KineticHeating.LAMINAR_RECOVERY);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CylinderInCloud that
                && air.equals(that.air)
                && Double.compare(tasMps, that.tasMps) == 0
                && Double.compare(radiusM, that.radiusM) == 0
                && Double.compare(dropDiameterM, that.dropDiameterM) == 0
                && Double.compare(waterKgPerM3, that.waterKgPerM3) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(air, tasMps, radiusM, dropDiameterM, waterKgPerM3);
    }

    /**
     * Returns what was given, for reading.
     *
     * @return a text with speed, radius, drops and water in SI; may change between versions
     */
    @Override
    public String toString() {
        return "cylinder of radius "
                + radiusM
                + " m at "
                + tasMps
                + " m/s in drops of "
                + dropDiameterM
                + " m and "
                + waterKgPerM3
                + " kg/m³";
    }
}
