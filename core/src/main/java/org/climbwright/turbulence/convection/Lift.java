package org.climbwright.turbulence.convection;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.LiftedAir;
import org.climbwright.atmosphere.LiftingCondensationLevel;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.PseudoAdiabat;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.turbulence.Answer;

/** One parcel on its way up: dry to its condensation level, pseudo-adiabatic above it. */
final class Lift {
    private final AirState parcel;
    private final LiftingCondensationLevel level;
    private final double levelPa;
    private final double levelK;

    private Lift(AirState parcel, LiftingCondensationLevel level) {
        this.parcel = parcel;
        this.level = level;
        this.levelPa = level.pressure().inPascals();
        this.levelK = level.temperature().inKelvins();
    }

    /** The condensation level of a parcel, or why it has none. */
    static Answer<LiftingCondensationLevel> condensationLevel(AirState parcel) {
        if (!parcel.isHumidityKnown()) {
            return Answer.notKnown(
                    "the humidity of the parcel at "
                            + Hectopascals.of(parcel.staticPressure())
                            + " is not known");
        }
        try {
            return Answer.known(LiftingCondensationLevel.of(parcel));
        } catch (OutsideModelException e) {
            return Answer.notKnown("the parcel has no condensation level: " + e.getMessage());
        }
    }

    static Lift of(LiftingCondensationLevel level) {
        return new Lift(level.parcel(), level);
    }

    LiftingCondensationLevel level() {
        return level;
    }

    double levelPa() {
        return levelPa;
    }

    double levelK() {
        return levelK;
    }

    /** The temperature at a pressure; the lower it is, the more steps it takes. */
    double temperature(double pressurePa) {
        return pressurePa >= levelPa
                ? unsaturated(pressurePa)
                : PseudoAdiabat.temperature(levelK, levelPa, pressurePa);
    }

    double unsaturated(double pressurePa) {
        return LiftedAir.unsaturatedTemperature(
                parcel.temperatureK(), parcel.vapourPressurePa(), parcel.pressurePa(), pressurePa);
    }

    /** The virtual temperature at a pressure where the parcel has a temperature. */
    double virtualTemperature(double temperatureK, double pressurePa) {
        double vapourPa =
                pressurePa < levelPa
                        ? MoistAir.saturationVapourPressure(temperatureK)
                        : parcel.vapourPressurePa() * (pressurePa / parcel.pressurePa());
        return MoistAir.virtualTemperature(temperatureK, vapourPa, pressurePa);
    }
}
