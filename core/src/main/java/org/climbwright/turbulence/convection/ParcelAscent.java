package org.climbwright.turbulence.convection;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.LiftingCondensationLevel;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.turbulence.Answer;
import org.jspecify.annotations.Nullable;

/**
 * A parcel of air lifted through the air of a day: where it condenses, from where it rises by
 * itself and to where, and the energy that this sets free.
 *
 * <p>The parcel does not mix; above its condensation level all water that condenses falls out, over
 * liquid water at every temperature. Buoyancy is by virtual temperature. The level of free
 * convection is the lowest one at or above the condensation level from which the parcel is warmer
 * than the air; the equilibrium level is the highest up to which it is. The energy, CAPE, is all
 * positive area between them; the inhibition, CIN, all negative area from the parcel to the level
 * of free convection.
 *
 * <p>{@link Parcels} chooses the parcel. Limits of use: what one sounding or forecast would allow,
 * not whether convection starts, nor where; no energy found is not "no thunderstorm". Forecasts,
 * radar, reports and the crew's eyes decide.
 *
 * @source {@code CAPE = R ∫ (Tv - Tv') d(ln p)}; {@link org.climbwright.atmosphere.LiftedAir},
 *     {@link org.climbwright.atmosphere.PseudoAdiabat}
 */
public final class ParcelAscent implements Serializable {
    private static final long serialVersionUID = 1L;

    private final LiftingCondensationLevel condensationLevel;
    private final AirState airAtCondensation;
    private final @Nullable AirState freeConvection;
    private final @Nullable AirState equilibrium;
    private final double energyJPerKg;
    private final double inhibitionJPerKg;
    private final StaticPressure top;
    private final boolean isComplete;

    private ParcelAscent(Atmosphere air, BuoyancyProfile buoyancy) {
        condensationLevel = buoyancy.lift().level();
        airAtCondensation = condensationLevel.airIn(air);
        freeConvection = stateAt(air, buoyancy.freeConvectionPa());
        equilibrium = stateAt(air, buoyancy.equilibriumPa());
        energyJPerKg = buoyancy.energyJPerKg();
        inhibitionJPerKg = buoyancy.inhibitionJPerKg();
        top = StaticPressure.ofPascals(buoyancy.topPa());
        isComplete = !buoyancy.isBuoyantAtTop();
    }

    private static @Nullable AirState stateAt(Atmosphere air, double pressurePa) {
        return Double.isNaN(pressurePa) ? null : air.at(StaticPressure.ofPascals(pressurePa));
    }

    /**
     * Lifts a parcel through the air.
     *
     * @param air the air of the day, its humidity known up to the equilibrium level, or to where it
     *     is too cold for humidity to matter (by 0.1 K of virtual temperature)
     * @param parcel the air before it is lifted, at a pressure of that air
     * @return the ascent; not known, with the reason, where the humidity of the parcel or of the
     *     air is not, where the parcel is too dry to condense, or where the air ends first
     * @accuracy energy: 1 J/kg or 0.1 % of the definition; some 10 % between the usual sets of
     *     constants, and formulas for the pseudo-adiabat
     * @source see the class comment
     */
    public static Answer<ParcelAscent> of(Atmosphere air, AirState parcel) {
        if (!air.covers(parcel.pressurePa())) {
            return Answer.notKnown(
                    "the air is not known at " + Hectopascals.of(parcel.staticPressure()));
        }
        return Lift.condensationLevel(parcel).then(level -> lifted(air, level));
    }

    private static Answer<ParcelAscent> lifted(Atmosphere air, LiftingCondensationLevel level) {
        Lift lift = Lift.of(level);
        if (!air.covers(lift.levelPa())) {
            return Answer.notKnown(
                    "the air is not known at the condensation level, "
                            + Hectopascals.of(level.pressure()));
        }
        BuoyancyProfile buoyancy = new BuoyancyProfile(air, lift);
        return Double.isNaN(buoyancy.humidityMissingPa())
                ? Answer.known(new ParcelAscent(air, buoyancy))
                : Answer.notKnown(
                        "the humidity of the air is not known at "
                                + Hectopascals.of(buoyancy.humidityMissingPa())
                                + ", where it matters");
    }

    /**
     * Returns the air before it was lifted.
     *
     * @return the parcel
     */
    public AirState parcel() {
        return condensationLevel.parcel();
    }

    /**
     * Returns where the parcel becomes saturated.
     *
     * @return the lifting condensation level, the base of cumulus
     */
    public LiftingCondensationLevel condensationLevel() {
        return condensationLevel;
    }

    /**
     * Returns the air around the condensation level.
     *
     * @return its state there
     */
    public AirState airAtCondensationLevel() {
        return airAtCondensation;
    }

    /**
     * Returns the air around the level of free convection.
     *
     * @return its state there; empty where the parcel rises by itself nowhere
     */
    public Optional<AirState> levelOfFreeConvection() {
        return Optional.ofNullable(freeConvection);
    }

    /**
     * Returns the air around the equilibrium level.
     *
     * @return its state there; not known where the parcel rises by itself nowhere, or still does at
     *     the top of what was searched
     */
    public Answer<AirState> equilibriumLevel() {
        if (!isComplete) {
            return Answer.notKnown(
                    "the parcel still rises by itself at " + Hectopascals.of(top) + ", the top");
        }
        return equilibrium == null
                ? Answer.notKnown(
                        "the parcel rises by itself nowhere up to " + Hectopascals.of(top))
                : Answer.known(equilibrium);
    }

    /**
     * Returns the convective available potential energy, CAPE.
     *
     * @return energy [J/kg], 0 or more; a lower bound unless {@link #isEnergyComplete}
     */
    public double energyJPerKg() {
        return energyJPerKg;
    }

    /**
     * Tells whether the ascent was followed to its end.
     *
     * @return false where the parcel still rises by itself at the top of what is known
     */
    public boolean isEnergyComplete() {
        return isComplete;
    }

    /**
     * Returns the convective inhibition, CIN: the energy that it takes to lift the parcel to its
     * level of free convection.
     *
     * @return energy [J/kg], 0 or more, where others count it negative; empty where there is no
     *     such level
     */
    public OptionalDouble inhibitionJPerKg() {
        return freeConvection == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(inhibitionJPerKg);
    }

    /**
     * Returns the upper bound of the updraft.
     *
     * @return the bound of the energy; not known where the energy is a lower bound itself
     */
    public Answer<UpdraftBound> updraftBound() {
        return isComplete
                ? Answer.known(UpdraftBound.ofEnergy(energyJPerKg))
                : Answer.notKnown(
                        "the energy of the parcel is known up to "
                                + Hectopascals.of(top)
                                + " only");
    }

    /**
     * Returns the cloud that the parcel would make: from its condensation level to its equilibrium
     * level.
     *
     * <p>An estimate: tops of mixing clouds stay below, those of strong ones overshoot by a
     * kilometre or two (from memory).
     *
     * @return the cloud; not known where there is no equilibrium level, which is not "no cloud"
     */
    public Answer<CloudSpan> cloud() {
        return equilibriumLevel()
                .then(
                        air ->
                                Answer.known(
                                        new CloudSpan(
                                                airAtCondensation.pressureAltitude(),
                                                air.pressureAltitude(),
                                                "cumulus of a lifted parcel, from its condensation"
                                                        + " level to its equilibrium level")));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ParcelAscent that
                && condensationLevel.equals(that.condensationLevel)
                && airAtCondensation.equals(that.airAtCondensation)
                && Objects.equals(freeConvection, that.freeConvection)
                && Objects.equals(equilibrium, that.equilibrium)
                && Double.compare(energyJPerKg, that.energyJPerKg) == 0
                && Double.compare(inhibitionJPerKg, that.inhibitionJPerKg) == 0
                && top.equals(that.top)
                && isComplete == that.isComplete;
    }

    @Override
    public int hashCode() {
        return 31 * condensationLevel.hashCode() + Double.hashCode(energyJPerKg);
    }

    /**
     * Returns the ascent for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "parcel from %.0f hPa, saturated at %.0f hPa, with %s%.0f J/kg",
                parcel().pressurePa() / 100.0,
                condensationLevel.pressure().inHectopascals(),
                isComplete ? "" : "at least ",
                energyJPerKg);
    }
}
