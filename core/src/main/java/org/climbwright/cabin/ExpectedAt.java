package org.climbwright.cabin;

import java.time.Duration;
import java.util.Optional;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * What is expected where and when something was read: one cabin, or a span of them where the
 * aeroplane may have taken longer than the climb of the plan, or holds a level for a time.
 *
 * @param state the cabin as the aeroplane climbs through the level, or in level flight at the top
 * @param readM where the aeroplane was read [m]
 * @param lowM the lowest cabin altitude expected [m]
 * @param highM the highest [m]
 * @param leastMps the lowest rate expected, climbing positive [m/s]
 * @param mostMps the highest [m/s]
 */
record ExpectedAt(
        CabinState state,
        double readM,
        double lowM,
        double highM,
        double leastMps,
        double mostMps) {
    /** Metres that count as none. */
    private static final double ROUNDING = 1e-5;

    /**
     * Returns what is expected at a reading.
     *
     * @param bandM how far from the top and below the bottom a reading still belongs to them [m]
     */
    static ExpectedAt of(ExpectedCabin cabin, CabinReading reading, double bandM) {
        double read = reading.aeroplane().inMetres();
        double top = cabin.top().inMetres();
        double level = onTheClimb(read, cabin.bottom().inMetres(), top, bandM);
        boolean isAtTop = read >= top - bandM;
        Optional<Duration> time = reading.time();
        if (!isAtTop) {
            level = cabin.heldNear(level, bandM);
        }
        CabinState climbing = cabin.at(PressureAltitude.ofMetres(level));
        CabinState arriving = cabin.arrivingAt(level);
        if (arriving.time().compareTo(climbing.time()) < 0) {
            if (time.isEmpty()) {
                double left = climbing.cabin().inMetres();
                return goneOn(cabin.plan(), arriving, read, level, left)
                        .orAtRate(climbing.rate().inMetresPerSecond());
            }
            if (time.get().compareTo(climbing.time()) < 0) {
                boolean isBefore = time.get().compareTo(arriving.time()) < 0;
                CabinState then = isBefore ? arriving : cabin.at(time.get());
                return just(then, read, then.rate().inMetresPerSecond());
            }
        }
        if (isAtTop && time.isEmpty()) {
            return goneOn(cabin.plan(), climbing, read, top, cabin.plan().targetM(top));
        }
        if (isAtTop && time.orElseThrow().compareTo(cabin.at(cabin.top()).time()) > 0) {
            return afterTheClimb(cabin, cabin.at(time.orElseThrow()), read, bandM);
        }
        if (time.isPresent() && time.get().compareTo(climbing.time()) > 0) {
            double seconds = time.get().minus(climbing.time()).toNanos() / 1e9;
            double then = cabin.plan().nextM(climbing.cabin().inMetres(), seconds, level);
            return goneOn(cabin.plan(), climbing, read, level, then);
        }
        return just(climbing, read, climbing.rate().inMetresPerSecond());
    }

    private ExpectedAt orAtRate(double rateMps) {
        return new ExpectedAt(
                state, readM, lowM, highM, Math.min(leastMps, rateMps), Math.max(mostMps, rateMps));
    }

    /** A level a little below the bottom or above the top is that. */
    private static double onTheClimb(double read, double bottom, double top, double bandM) {
        boolean isNear = read >= bottom - bandM && read <= top + bandM;
        return isNear ? Math.max(bottom, Math.min(top, read)) : read;
    }

    private static ExpectedAt just(CabinState state, double read, double otherMps) {
        double cabin = state.cabin().inMetres();
        double rate = state.rate().inMetresPerSecond();
        return new ExpectedAt(
                state, read, cabin, cabin, Math.min(rate, otherMps), Math.max(rate, otherMps));
    }

    /** Near where it settles a cabin may as well be steady already. */
    private static ExpectedAt afterTheClimb(
            ExpectedCabin cabin, CabinState state, double read, double bandM) {
        double way = cabin.plan().targetM(cabin.top().inMetres()) - state.cabin().inMetres();
        boolean isNear = Math.abs(way) <= bandM;
        return just(state, read, isNear ? 0.0 : state.rate().inMetresPerSecond());
    }

    /**
     * The aeroplane is later than the climb: it climbed slower, or has flown level. The cabin is
     * anywhere from where the climb has it to where it may have gone since, and does anything from
     * being steady to moving at its limit.
     */
    private static ExpectedAt goneOn(
            CabinPlan plan, CabinState climbing, double read, double level, double thenM) {
        double cabin = climbing.cabin().inMetres();
        double rate = climbing.rate().inMetresPerSecond();
        double way = plan.targetM(level) - cabin;
        double up = way > ROUNDING ? plan.rates().up().inMetresPerSecond() : 0.0;
        double down = way < -ROUNDING ? -plan.rates().down().inMetresPerSecond() : 0.0;
        return new ExpectedAt(
                climbing,
                read,
                Math.min(cabin, thenM),
                Math.max(cabin, thenM),
                Math.min(down, rate),
                Math.max(up, rate));
    }

    /** The least differential expected, of the highest cabin [Pa]. */
    double leastPa() {
        return CabinPressure.differential(highM, readM);
    }

    /** The most, of the lowest cabin [Pa]. */
    double mostPa() {
        return CabinPressure.differential(lowM, readM);
    }

    /** How far a value is above a span; negative where it is below it, 0 within. */
    static double off(double value, double low, double high) {
        return value > high ? value - high : Math.min(0.0, value - low);
    }

    String cabinInWords() {
        return span(InFeet.of(lowM), InFeet.of(highM));
    }

    String rateInWords() {
        return span(InFeet.perMinute(leastMps), InFeet.perMinute(mostMps));
    }

    static String span(String low, String high) {
        return low.equals(high) ? low : low + " to " + high;
    }
}
