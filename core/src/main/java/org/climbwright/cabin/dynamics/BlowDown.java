package org.climbwright.cabin.dynamics;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

import java.time.Duration;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.numeric.Quadrature;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * How long a cabin that nothing feeds takes to empty through an opening, at a level that is held.
 *
 * <p>While the opening is choked there is a closed form: with {@code tau = V / (A 0.684731 sqrt(R
 * T))}, isothermal air takes {@code tau ln(p0 / p)} and adiabatic air {@code 5 tau ((p0 / p)^(1/7)
 * - 1)}. The rest is a quadrature. The time goes with volume over area and with nothing else of the
 * hull.
 *
 * <pre>{@code
 * BlowDown.timeS(130.0, 0.1, 75262.36, 59524.0, 23842.3, 297.15, CabinAir.ISOTHERMAL)  // 1.52…
 * BlowDown.timeS(130.0, 0.1, 75262.36, 59524.0, 23842.3, 297.15, CabinAir.ADIABATIC)   // 1.107…
 * }</pre>
 *
 * <p>Limits of use: for study and simulation. One volume without doors between; not for events
 * shorter than half a second. An aeroplane that descends meanwhile, or is fed, is a matter for a
 * model that steps.
 *
 * @source mass balance with the flow of {@link OrificeFlow}; the adiabatic form as in the system
 *     design of MIT (1976), appendix VI.D, pp. 252-253, partly seen and derived here
 */
public final class BlowDown {
    private static final int PIECES = 16;

    private static final ModelRange VOLUME =
            new ModelRange("volume of the cabin", 1e-3, 1e6, "m³", "no cabin has another");

    private static final ModelRange AREA =
            new ModelRange("area of the opening", 1e-12, 1000.0, "m²", "it is an effective area");

    private static final ModelRange PRESSURE =
            new ModelRange("pressure at the beginning", 1.0, 1e6, "Pa", "no cabin has another");

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "temperature of the cabin", 100.0, 1000.0, "K", "a perfect gas ends there");

    private static final ModelRange TIME =
            new ModelRange("time to halve", 1e-3, 1e9, "s", "it is that of a test of leaks");

    private BlowDown() {}

    /**
     * Returns the time from one pressure to a lower one.
     *
     * @param volumeM3 volume of the cabin [m³], 0.001 to 1e6
     * @param areaM2 effective area of the opening [m²], 1e-12 to 1000
     * @param fromPa pressure at the beginning [Pa], 1 to 1e6
     * @param toPa pressure at the end [Pa], from that outside, which is reached in a finite time,
     *     to that at the beginning; above 0
     * @param outsidePa pressure outside [Pa], 0 to that at the beginning
     * @param cabinTemperatureK temperature of the cabin at the beginning [K], 100 to 1000
     * @param air whether the temperature is held
     * @return time [s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range; a pressure
     *     below that outside is never reached
     * @accuracy 1e-10 relative
     * @source see the class comment
     */
    public static double timeS(
            double volumeM3,
            double areaM2,
            double fromPa,
            double toPa,
            double outsidePa,
            double cabinTemperatureK,
            CabinAir air) {
        PRESSURE.check(fromPa);
        new ModelRange("pressure outside", 0.0, fromPa, "Pa", "a cabin empties towards less")
                .check(outsidePa);
        new ModelRange(
                        "pressure at the end",
                        Math.max(outsidePa, Double.MIN_NORMAL),
                        fromPa,
                        "Pa",
                        "a cabin does not empty below the pressure outside, and never to nothing")
                .check(toPa);
        VOLUME.check(volumeM3);
        AREA.check(areaM2);
        double root = Math.sqrt(TEMPERATURE.check(cabinTemperatureK));
        double perFlux = volumeM3 / (GAS_CONSTANT_J_PER_KG_K * areaM2 * root);
        double kneePa = outsidePa / OrificeFlow.CRITICAL_PRESSURE_RATIO;
        double choked = fromPa > kneePa ? choked(fromPa, Math.max(toPa, kneePa), air) : 0.0;
        double unchoked =
                toPa < kneePa
                        ? unchoked(fromPa, Math.min(fromPa, kneePa), toPa, outsidePa, air)
                        : 0.0;
        return perFlux * (choked + unchoked);
    }

    private static double choked(double fromPa, double toPa, CabinAir air) {
        double integral =
                air == CabinAir.ISOTHERMAL
                        ? StrictMath.log(fromPa / toPa)
                        : 5.0 * (StrictMath.pow(fromPa / toPa, 1.0 / 7.0) - 1.0);
        return integral / OrificeFlow.CHOKED_COEFFICIENT;
    }

    /** By the root of the pressure above that outside, in which the integrand is smooth. */
    private static double unchoked(
            double startPa, double fromPa, double toPa, double outsidePa, CabinAir air) {
        DoubleUnaryOperator time =
                root -> {
                    double x = root * root;
                    double p = outsidePa + x;
                    double flux = OrificeFlow.flux(p, OrificeFlow.jetMach(x, outsidePa));
                    double cooling =
                            air == CabinAir.ISOTHERMAL
                                    ? 1.0
                                    : StrictMath.pow(startPa / p, 1.0 / 7.0) / HEAT_CAPACITY_RATIO;
                    return 2.0 * root * cooling / flux;
                };
        double from = Math.sqrt(toPa - outsidePa);
        double width = (Math.sqrt(fromPa - outsidePa) - from) / PIECES;
        double sum = 0.0;
        for (int i = 0; i < PIECES; i++) {
            sum += Quadrature.integrate(time, from + i * width, from + (i + 1) * width);
        }
        return sum;
    }

    /**
     * Returns the time in which a cabin comes up to an altitude at a level that is held.
     *
     * @param hull volume, temperature and air; its inflow counts as lost and its leaks as closed
     * @param areaM2 effective area of the opening [m²], 1e-12 to 1000
     * @param from cabin altitude at the beginning
     * @param to cabin altitude at the end
     * @param aeroplane pressure altitude that is held
     * @return the time; empty if the aeroplane is below that, so that the cabin never gets there
     * @throws org.climbwright.quantity.OutsideModelException if the cabin begins above the
     *     aeroplane or above its end, or a value is out of range
     * @accuracy 1e-10 relative, and a nanosecond
     */
    public static Optional<Duration> time(
            CabinHull hull,
            double areaM2,
            CabinAltitude from,
            CabinAltitude to,
            PressureAltitude aeroplane) {
        AREA.check(areaM2);
        double outsidePa = StandardAir.pressureFromAltitude(aeroplane.inMetres());
        double toPa = StandardAir.pressureFromAltitude(to.inMetres());
        if (toPa < outsidePa) {
            return Optional.empty();
        }
        double seconds =
                timeS(
                        hull.volumeM3(),
                        areaM2,
                        StandardAir.pressureFromAltitude(from.inMetres()),
                        toPa,
                        outsidePa,
                        hull.cabinTemperatureK(),
                        hull.air());
        return Optional.of(Duration.ofNanos(Math.round(seconds * 1e9)));
    }

    /**
     * Returns the area of the leaks that a test on the ground tells: with the inflow off, the
     * differential halves in a time.
     *
     * @param volumeM3 volume of the cabin [m³], 0.001 to 1e6
     * @param cabinTemperatureK temperature of the cabin, held [K], 100 to 1000
     * @param differentialPa differential at the beginning [Pa], above 0
     * @param outsidePa pressure outside [Pa], with the differential 1 to 1e6
     * @param halvingTimeS time until half of it is left [s], 0.001 to 1e9
     * @return effective area of all leaks [m²]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-10 relative; the leaks are one area, which a real hull's may not be at another
     *     differential
     * @source leakage as the time for the excess pressure to halve: H. J. Staite, Leakage rates
     *     from pressurised aircraft at altitude, Journal of the Royal Aeronautical Society (1954),
     *     abstract seen
     */
    public static double leakArea(
            double volumeM3,
            double cabinTemperatureK,
            double differentialPa,
            double outsidePa,
            double halvingTimeS) {
        TIME.check(halvingTimeS);
        new ModelRange("differential at the beginning", 1e-3, 1e6, "Pa", "something must leak out")
                .check(differentialPa);
        double ofOneSquareMetre =
                timeS(
                        volumeM3,
                        1.0,
                        outsidePa + differentialPa,
                        outsidePa + 0.5 * differentialPa,
                        outsidePa,
                        cabinTemperatureK,
                        CabinAir.ISOTHERMAL);
        return ofOneSquareMetre / halvingTimeS;
    }
}
