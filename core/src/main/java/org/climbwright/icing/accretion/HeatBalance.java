package org.climbwright.icing.accretion;

import static org.climbwright.icing.accretion.DropImpingement.DENSITY;
import static org.climbwright.icing.accretion.DropImpingement.VISCOSITY;
import static org.climbwright.icing.accretion.KineticHeating.PRESSURE;
import static org.climbwright.icing.accretion.KineticHeating.RECOVERY;
import static org.climbwright.icing.accretion.KineticHeating.SPECIFIC_HEAT_J_PER_KG_K;
import static org.climbwright.icing.accretion.KineticHeating.SPEED;
import static org.climbwright.icing.accretion.KineticHeating.cooling;

import org.climbwright.atmosphere.SaturationFormula;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * How much of the water that hits an unheated surface freezes there, by Messinger's balance of heat
 * for a surface at 0 °C, in SI doubles.
 *
 * <p>Convection and evaporation take heat away, and warming the water to 0 °C does; friction of the
 * air, the energy of the drops and the freezing itself bring it. The letters are those of the
 * sources: {@code φ} for what each drop can take up, {@code θ} for what the air takes away, {@code
 * b} for the water against the heat transfer; {@code n = (cw / Lf) (φ + θ / b)}.
 *
 * <p>Limits of use: a clean cylinder at its stagnation line. Published balances differ by 0.04 to
 * 0.1 in n for the same case, by the heat transfer they take; Ludlam limits differ by a factor of
 * two between authors, by the area that is let lose heat. Not a prediction of ice on an aeroplane.
 *
 * @source B. L. Messinger, J. Aeronautical Sciences 20 (1953); AEDC-TR-85-30, volume 1 (1986)
 */
public final class HeatBalance {
    /** Melting point of ice [K]. */
    private static final double FREEZING_K = 273.15;

    /** Specific heat of water [J/(kg·K)]: 1 kcal of the International Table. */
    private static final double WATER_HEAT_J_PER_KG_K = 4186.8;

    /** Latent heat of fusion of ice at 0 °C [J/kg]; common practice, no source. */
    private static final double FUSION_J_PER_KG = 333.55e3;

    /** (Prandtl number over Schmidt number)^(2/3): how much better vapour leaves than heat. */
    private static final double VAPOUR_OVER_HEAT = 1.12;

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature of a cloud",
                    233.15,
                    283.15,
                    "K",
                    "drops are not liquid below, and nothing freezes above");

    private static final ModelRange FACTOR =
            new ModelRange(
                    "relative heat factor", 1e-6, 1e6, "", "without water there is no balance");

    private static final ModelRange TRANSFER =
            new ModelRange("heat transfer coefficient", 0.0, 1e6, "W/(m²·K)", "air is hardly so");

    private static final ModelRange CATCH =
            new ModelRange("water catch", 0.0, 10.0, "kg/(m²·s)", "no cloud holds so much");

    private static final ModelRange DIAMETER =
            new ModelRange("diameter", 1e-4, 100.0, "m", "no part of an aeroplane is outside");

    private static final ModelRange DROP_ENERGY =
            new ModelRange("drop energy transfer", -50.0, 50.0, "K", "no cloud is outside");

    private static final ModelRange AIR_ENERGY =
            new ModelRange("air energy transfer", -100.0, 300.0, "K", "no cloud is outside");

    private static final ModelRange CONDUCTIVITY =
            new ModelRange(
                    "thermal conductivity of air", 0.01, 0.05, "W/(m·K)", "no cloud is outside");

    private static final ModelRange MOVING =
            new ModelRange("true airspeed", 1e-3, 310.0, "m/s", "without speed no water hits");

    private static final ModelRange HITTING =
            new ModelRange(
                    "collection efficiency", 1e-9, 1.0, "", "where no water hits none freezes");

    private HeatBalance() {}

    /**
     * Tells whether the balance takes the water against the heat transfer.
     *
     * @param relativeHeatFactor b
     * @return true from 1e-6 to 1e6; false where no water hits
     */
    public static boolean coversRelativeHeatFactor(double relativeHeatFactor) {
        return FACTOR.covers(relativeHeatFactor);
    }

    /**
     * Tells whether there is a critical liquid water content.
     *
     * @param tasMps true airspeed [m/s]
     * @param collectionEfficiency share of the water in the way that hits
     * @return true if water hits, so that {@link #criticalLiquidWaterContent} takes these
     */
    public static boolean coversCritical(double tasMps, double collectionEfficiency) {
        return MOVING.covers(tasMps) && HITTING.covers(collectionEfficiency);
    }

    /**
     * Tells whether the energy transfers take some cloud.
     *
     * @param temperatureK static air temperature [K]
     * @param tasMps true airspeed [m/s]
     * @param pressurePa static pressure [Pa]
     * @return true if {@link #dropEnergyTransfer} and {@link #airEnergyTransfer} answer
     */
    public static boolean covers(double temperatureK, double tasMps, double pressurePa) {
        return TEMPERATURE.covers(temperatureK)
                && SPEED.covers(tasMps)
                && PRESSURE.covers(pressurePa);
    }

    /**
     * Returns the heat transfer coefficient at the stagnation line of a smooth cylinder: {@code Nu
     * = 1.14 Pr^0.4 Re^0.5} on the diameter.
     *
     * @param tasMps true airspeed [m/s], 0 to 310
     * @param diameterM diameter of the cylinder, twice the radius of a leading edge [m]
     * @param densityKgPerM3 density of the air [kg/m³], 1e-3 to 5
     * @param dynamicViscosityPaS dynamic viscosity of the air [Pa·s], 5e-6 to 3e-5
     * @param conductivityWPerMK thermal conductivity of the air [W/(m·K)], 0.01 to 0.05
     * @return heat transfer coefficient [W/(m²·K)]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-14 of the formula; ice is rough and takes more heat away
     * @source laminar flow about the stagnation line of a cylinder; common practice, no source
     */
    public static double stagnationHeatTransfer(
            double tasMps,
            double diameterM,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double conductivityWPerMK) {
        double d = DIAMETER.check(diameterM);
        double viscosity = VISCOSITY.check(dynamicViscosityPaS);
        double conductivity = CONDUCTIVITY.check(conductivityWPerMK);
        double prandtl = SPECIFIC_HEAT_J_PER_KG_K * viscosity / conductivity;
        double reynolds = DENSITY.check(densityKgPerM3) * SPEED.check(tasMps) * d / viscosity;
        double nusselt = 1.14 * StrictMath.pow(prandtl, 0.4) * Math.sqrt(reynolds);
        return nusselt * conductivity / d;
    }

    /**
     * Returns the relative heat factor: {@code b = m cw / h}.
     *
     * @param catchKgPerM2S water that hits each square metre [kg/(m²·s)], {@link
     *     IceGrowth#waterCatch}
     * @param heatTransferWPerM2K heat transfer coefficient [W/(m²·K)]
     * @return b, a plain number
     * @throws OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source Messinger (1953)
     */
    public static double relativeHeatFactor(double catchKgPerM2S, double heatTransferWPerM2K) {
        return CATCH.check(catchKgPerM2S)
                * WATER_HEAT_J_PER_KG_K
                / TRANSFER.check(heatTransferWPerM2K);
    }

    /**
     * Returns what each drop can take up before it is at 0 °C: {@code φ = (T0 - T) - V² / (2 cw)}.
     *
     * @param temperatureK static air temperature [K], 233.15 to 283.15
     * @param tasMps true airspeed [m/s], 0 to 310
     * @return φ [K]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-13 K
     * @source Messinger (1953); AEDC-TR-85-30 (1986), figure 21, prints φ, θ and b
     */
    public static double dropEnergyTransfer(double temperatureK, double tasMps) {
        double v = SPEED.check(tasMps);
        return FREEZING_K - TEMPERATURE.check(temperatureK) - v * v / (2.0 * WATER_HEAT_J_PER_KG_K);
    }

    /**
     * Returns what the air takes away from a surface at 0 °C: {@code θ = (T0 - T) - r V² / (2 cp) +
     * 1.12 · 0.622 L (es(T0) - es(T)) / (cp p)}, the cloud saturated over water.
     *
     * @param temperatureK static air temperature [K], 233.15 to 283.15
     * @param tasMps true airspeed [m/s], 0 to 310
     * @param pressurePa static pressure [Pa], 1e4 to 1.2e5
     * @param recoveryFactor share of the full rise, 0 to 1
     * @return θ [K]; negative if the air brings heat
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-12 K of the formula
     * @source Messinger (1953); vapour pressure {@link SaturationFormula#MURPHY_KOOP}
     */
    public static double airEnergyTransfer(
            double temperatureK, double tasMps, double pressurePa, double recoveryFactor) {
        double v = SPEED.check(tasMps);
        double t = TEMPERATURE.check(temperatureK);
        double vapour =
                SaturationFormula.MURPHY_KOOP.overWater(FREEZING_K)
                        - SaturationFormula.MURPHY_KOOP.overWater(t);
        return FREEZING_K
                - t
                - RECOVERY.check(recoveryFactor) * v * v / (2.0 * SPECIFIC_HEAT_J_PER_KG_K)
                + VAPOUR_OVER_HEAT * cooling(PRESSURE.check(pressurePa)) * vapour;
    }

    /**
     * Returns the number that balances the heat of a surface at 0 °C, bounded by nothing: {@code n
     * = (cw / Lf) (φ + θ / b)}.
     *
     * @param dropEnergyTransferK φ [K], -50 to 50
     * @param airEnergyTransferK θ [K], -100 to 300
     * @param relativeHeatFactor b, above 0
     * @return n; above 1 the surface is colder than 0 °C and all freezes, below 0 it is warmer and
     *     nothing does
     * @throws OutsideModelException if a value is out of range
     * @accuracy 4 ulp of the larger part
     * @source Messinger (1953), as AEDC-TR-85-30 (1986) writes it
     */
    public static double balance(
            double dropEnergyTransferK, double airEnergyTransferK, double relativeHeatFactor) {
        return WATER_HEAT_J_PER_KG_K
                / FUSION_J_PER_KG
                * (DROP_ENERGY.check(dropEnergyTransferK)
                        + AIR_ENERGY.check(airEnergyTransferK) / FACTOR.check(relativeHeatFactor));
    }

    /**
     * Returns the share of the water that freezes where it hits: {@link #balance} bounded by 0 and
     * 1.
     *
     * @param dropEnergyTransferK φ [K], -50 to 50
     * @param airEnergyTransferK θ [K], -100 to 300
     * @param relativeHeatFactor b, above 0
     * @return freezing fraction: 0 no ice, 1 rime, between them glaze
     * @throws OutsideModelException if a value is out of range
     * @accuracy as {@link #balance}
     * @source as {@link #balance}
     */
    public static double freezingFraction(
            double dropEnergyTransferK, double airEnergyTransferK, double relativeHeatFactor) {
        double n = balance(dropEnergyTransferK, airEnergyTransferK, relativeHeatFactor);
        return Math.max(0.0, Math.min(1.0, n));
    }

    /**
     * Returns the liquid water content up to which all water freezes where it hits, of the kind
     * that is named after Ludlam: {@code θ h / (V β (Lf - cw φ))}.
     *
     * @param dropEnergyTransferK φ [K], -50 to 50
     * @param airEnergyTransferK θ [K], -100 to 300
     * @param heatTransferWPerM2K heat transfer coefficient [W/(m²·K)]
     * @param tasMps true airspeed [m/s], above 0
     * @param collectionEfficiency share of the water in the way that hits, above 0, to 1
     * @return critical liquid water content [kg/m³]; 0 if the air brings heat, and then no amount
     *     freezes whole
     * @throws OutsideModelException if a value is out of range
     * @accuracy 5 ulp of the formula; never to be compared across authors
     * @source {@link #balance} solved for n = 1
     */
    public static double criticalLiquidWaterContent(
            double dropEnergyTransferK,
            double airEnergyTransferK,
            double heatTransferWPerM2K,
            double tasMps,
            double collectionEfficiency) {
        double left =
                FUSION_J_PER_KG - WATER_HEAT_J_PER_KG_K * DROP_ENERGY.check(dropEnergyTransferK);
        return Math.max(0.0, AIR_ENERGY.check(airEnergyTransferK))
                * TRANSFER.check(heatTransferWPerM2K)
                / (MOVING.check(tasMps) * HITTING.check(collectionEfficiency) * left);
    }
}
