package org.climbwright.gradient.leveling;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.io.Serializable;
import java.time.Duration;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.speed.GeometricRate;

/**
 * How early a level-off begins: by a share of the rate, or by a deceleration that is chosen.
 *
 * <pre>{@code
 * LevelOffLead lead = LevelOffLead.tenPercent();
 * GeometricRate rate = GeometricRate.ofFeetPerMinute(2000);
 * lead.height(rate).inFeet()                                    // 200.0
 * lead.loadFactorChange(rate)                                   // 0.0863…
 * lead.loadFactorChange(GeometricRate.ofFeetPerMinute(4000))    // 0.1726…, twice as much
 * LevelOffLead.ofLoadFactorChange(0.05).height(rate).inFeet()   // 345.3…
 * }</pre>
 *
 * <p>A share of the rate is a time: 10 % is the way of 6 s, flown in 12 s whatever the rate, and so
 * the load factor that it takes grows with the rate without a limit. A chosen deceleration is felt
 * alike at every rate; its lead grows with the square.
 *
 * <p>Both are in true measure, as an accelerometer feels it; a share of the rate is the same share
 * on the instrument.
 *
 * <p>Limits of use: for study and simulation; no time to respond is in it. What load factor
 * passengers and crew should feel, and how early to begin, the operator's procedures and licensed
 * practice decide.
 */
public final class LevelOffLead implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange LOAD_FACTOR_CHANGE =
            new ModelRange(
                    "change of load factor", 0.001, 2.0, "", "less levels nothing off, more hurts");

    private enum Kind {
        PERCENT_OF_RATE,
        DECELERATION
    }

    private final Kind kind;
    private final double value;

    private LevelOffLead(Kind kind, double value) {
        this.kind = kind;
        this.value = value;
    }

    /**
     * Returns the rule of thumb: a lead in feet of 10 % of the rate in feet per minute.
     *
     * @return the lead
     * @source Instrument Flying Handbook (FAA), chapter 7 (climb) and page 5-50 (descent)
     */
    public static LevelOffLead tenPercent() {
        return ofPercentOfRate(10.0);
    }

    /**
     * Returns a lead of another share.
     *
     * @param percent percent of the rate per minute [%], 0.1 to 200
     * @return the lead
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public static LevelOffLead ofPercentOfRate(double percent) {
        return new LevelOffLead(Kind.PERCENT_OF_RATE, LevelOff.PERCENT.check(percent));
    }

    /**
     * Returns the lead of a constant deceleration.
     *
     * @param decelerationMps2 vertical deceleration in true measure [m/s2], 0.001 to 50
     * @return the lead
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public static LevelOffLead ofDeceleration(double decelerationMps2) {
        return new LevelOffLead(Kind.DECELERATION, LevelOff.DECELERATION.check(decelerationMps2));
    }

    /**
     * Returns the lead of a constant deceleration, as a change of the load factor.
     *
     * @param change change from 1: 0.05 to feel 0.95 in a climb and 1.05 in a descent; 0.001 to 2
     * @return the lead
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public static LevelOffLead ofLoadFactorChange(double change) {
        return ofDeceleration(LOAD_FACTOR_CHANGE.check(change) * GRAVITY_MPS2);
    }

    /**
     * Returns the deceleration from a rate: also that by which a rate is reduced to another that is
     * not zero.
     *
     * @param rateMps the rate in true measure, a magnitude [m/s], 0 to 500
     * @return deceleration [m/s2]
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     * @accuracy 3 ulp
     */
    public double decelerationMps2(double rateMps) {
        return kind == Kind.PERCENT_OF_RATE
                ? LevelOff.decelerationByPercent(rateMps, value)
                : value;
    }

    /**
     * Returns how high above or below the level to begin.
     *
     * @param rate the rate, up or down
     * @return true height to go, 0 or more
     * @throws org.climbwright.quantity.OutsideModelException if the rate is beyond 500 m/s
     * @accuracy 3 ulp
     */
    public AltitudeChange height(GeometricRate rate) {
        double rateMps = Math.abs(rate.inMetresPerSecond());
        return AltitudeChange.ofMetres(
                kind == Kind.PERCENT_OF_RATE
                        ? LevelOff.leadByPercent(rateMps, value)
                        : LevelOff.heightToReduce(rateMps, 0.0, value));
    }

    /**
     * Returns how long it takes from the beginning until level.
     *
     * @param rate the rate, up or down
     * @return the time: 12 s for 10 %, whatever the rate
     * @throws org.climbwright.quantity.OutsideModelException if the rate is beyond 500 m/s
     * @accuracy a nanosecond
     */
    public Duration time(GeometricRate rate) {
        double rateMps = Math.abs(rate.inMetresPerSecond());
        double seconds =
                kind == Kind.PERCENT_OF_RATE
                        ? 2.0 * LevelOff.leadByPercent(1.0, value)
                        : LevelOff.timeToReduce(rateMps, 0.0, value);
        return Seconds.duration(seconds);
    }

    /**
     * Returns by how much the load factor differs from 1 meanwhile.
     *
     * @param rate the rate, up or down
     * @return deceleration over standard gravity: felt as less weight in a climb and as more in a
     *     descent
     * @throws org.climbwright.quantity.OutsideModelException if the rate is beyond 500 m/s
     * @accuracy 4 ulp
     */
    public double loadFactorChange(GeometricRate rate) {
        return decelerationMps2(Math.abs(rate.inMetresPerSecond())) / GRAVITY_MPS2;
    }

    /**
     * Returns the lead for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return kind == Kind.PERCENT_OF_RATE
                ? "lead of " + value + " % of the rate"
                : "lead by " + value + " m/s2";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LevelOffLead that
                && kind == that.kind
                && Double.compare(value, that.value) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * kind.name().hashCode() + Double.hashCode(value);
    }

    private Object readResolve() {
        return kind == Kind.PERCENT_OF_RATE ? ofPercentOfRate(value) : ofDeceleration(value);
    }
}
