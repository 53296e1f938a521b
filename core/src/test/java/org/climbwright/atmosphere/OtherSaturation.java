package org.climbwright.atmosphere;

/**
 * Saturation formulas that the library does not offer, and a condensation level made with one of
 * them: what some tables were computed with.
 */
final class OtherSaturation {
    /** Gas constant over heat capacity of an ideal diatomic gas, as short formulas take it. */
    static final double DRY_EXPONENT = 2.0 / 7.0;

    private OtherSaturation() {}

    /**
     * Saturation over water in Pa: {@code 611.2 exp(17.67 t / (t + 243.5))}, D. Bolton, The
     * Computation of Equivalent Potential Temperature, Mon. Weather Rev. 108 (1980), equation 10.
     */
    static double bolton(double temperatureK) {
        double t = temperatureK - 273.15;
        return 611.2 * StrictMath.exp(17.67 * t / (t + 243.5));
    }

    /** The temperature [K] at which air of a dew point condenses, by Bolton's formula and 2/7. */
    static double boltonLevel(double temperatureK, double dewPointK) {
        return LiftedAir.condensationTemperature(
                temperatureK,
                bolton(dewPointK),
                DRY_EXPONENT,
                OtherSaturation::bolton,
                dewPointK - 60.0);
    }

    /** The pressure [Pa] there. */
    static double boltonLevelPressure(double temperatureK, double dewPointK, double pressurePa) {
        return pressurePa
                * StrictMath.pow(
                        boltonLevel(temperatureK, dewPointK) / temperatureK, 1.0 / DRY_EXPONENT);
    }

    /**
     * How far apart the pressures of two condensation levels may be, relative to them: one with the
     * moist adiabat and a saturation formula for 0.02 K, the other with 2/7. The vapour adds to
     * heat capacity and gas constant, so that 1/κ is 3.5 (1 + 0.24 r).
     */
    static double pressureBound(double temperatureK, double dewPointK, double pressurePa) {
        double ratio = MoistAir.mixingRatio(bolton(dewPointK), pressurePa);
        double lifted = StrictMath.log(temperatureK / boltonLevel(temperatureK, dewPointK));
        return 3.5 * (0.02 / dewPointK + 0.25 * ratio * lifted);
    }

    /**
     * Saturation and moist air as in D. M. Romps, Exact expression for the lifting condensation
     * level, J. Atmos. Sci. 74 (2017) 3891-3900. His constants are from memory; that the tests
     * reproduce his check values to 1e-10 shows that they are his.
     */
    static final class Romps {
        private static final double RA = 287.04;
        private static final double RV = 461.0;
        private static final double CVA = 719.0;
        private static final double CVV = 1418.0;
        private static final double CVL = 4119.0;
        private static final double CVS = 1861.0;
        private static final double P_TRIPLE = 611.65;
        private static final double T_TRIPLE = 273.16;
        private static final double E0V = 2.3740e6;
        private static final double E0S = 0.3337e6;
        private static final double G = 9.81;
        private static final double CPV = CVV + RV;

        private Romps() {}

        static double overWater(double t) {
            return P_TRIPLE
                    * StrictMath.pow(t / T_TRIPLE, (CPV - CVL) / RV)
                    * StrictMath.exp((E0V - (CVV - CVL) * T_TRIPLE) / RV * (1 / T_TRIPLE - 1 / t));
        }

        static double overIce(double t) {
            return P_TRIPLE
                    * StrictMath.pow(t / T_TRIPLE, (CPV - CVS) / RV)
                    * StrictMath.exp(
                            (E0V + E0S - (CVV - CVS) * T_TRIPLE) / RV * (1 / T_TRIPLE - 1 / t));
        }

        /** Height [m] at which lifted air is saturated over water or, "deposition", over ice. */
        static double height(double temperatureK, double vapourPa, double pressurePa, boolean ice) {
            double q = RA * vapourPa / (RV * pressurePa + (RA - RV) * vapourPa);
            double gasConstant = (1 - q) * RA + q * RV;
            double heatCapacity = (1 - q) * (CVA + RA) + q * CPV;
            double level =
                    LiftedAir.condensationTemperature(
                            temperatureK,
                            vapourPa,
                            gasConstant / heatCapacity,
                            ice ? Romps::overIce : Romps::overWater,
                            temperatureK - 80.0);
            return heatCapacity / G * (temperatureK - level);
        }
    }
}
