package org.climbwright.gradient.leveling;

import java.io.Serializable;

/**
 * The figures of a plan, as magnitudes in the altimeter's metres.
 *
 * @param arrivalMps rate of arrival
 * @param keptMps rate until the level-off
 * @param beginsReducingM height to go where the rate must first be reduced
 * @param reducedM height to go where it is reduced to that of the rule
 * @param levellingM height to go where the level-off begins
 * @param levellingMps2 deceleration of the level-off
 * @param reducingS time of the reduction, 0 where there is none
 * @param timeInForceS time from the edge of the rule until level
 * @param costS time more than without the rule
 */
record LevelOffFigures(
        double arrivalMps,
        double keptMps,
        double beginsReducingM,
        double reducedM,
        double levellingM,
        double levellingMps2,
        double reducingS,
        double timeInForceS,
        double costS)
        implements Serializable {

    /**
     * Returns the figures.
     *
     * @param mostM the height that there is to go at most, which may be less than to the edge
     */
    static LevelOffFigures of(
            double arrivalMps,
            LevelOffRule rule,
            LevelOffLead lead,
            double truePerAltimeter,
            double mostM) {
        double edge = Math.min(mostM, rule.heightToGo().inMetres());
        double limit = rule.largestAllowed().inMetresPerSecond();
        double atArrival = deceleration(arrivalMps, lead, truePerAltimeter);
        double leadM = LevelOff.height(arrivalMps, 0.0, atArrival);
        double atEdge = leadM > edge ? Math.sqrt(2.0 * atArrival * edge) : arrivalMps;
        if (atEdge <= limit) {
            return new LevelOffFigures(
                    arrivalMps,
                    arrivalMps,
                    leadM,
                    leadM,
                    leadM,
                    atArrival,
                    0.0,
                    timeFrom(edge, arrivalMps, leadM, atArrival),
                    0.0);
        }
        double atLimit = deceleration(limit, lead, truePerAltimeter);
        double levelling = LevelOff.height(limit, 0.0, atLimit);
        // a lead longer than the edge: the rate of the rule is met where the level-off begins
        double reduced = Math.max(edge, levelling);
        double begins = reduced + LevelOff.height(arrivalMps, limit, atArrival);
        double reducing = LevelOff.time(arrivalMps, limit, atArrival);
        double without = timeFrom(begins, arrivalMps, leadM, atArrival);
        return new LevelOffFigures(
                arrivalMps,
                limit,
                begins,
                reduced,
                levelling,
                atLimit,
                reducing,
                timeFrom(edge, limit, levelling, atLimit),
                reducing + timeFrom(reduced, limit, levelling, atLimit) - without);
    }

    boolean isReduced() {
        return keptMps < arrivalMps;
    }

    double levellingS() {
        return keptMps / levellingMps2;
    }

    /** Of the lead in true measure, in the altimeter's. */
    static double deceleration(double rateMps, LevelOffLead lead, double truePerAltimeter) {
        return lead.decelerationMps2(rateMps * truePerAltimeter) / truePerAltimeter;
    }

    /** Time from a height to go until level, for a rate kept until the level-off begins. */
    private static double timeFrom(
            double heightM, double rateMps, double levellingM, double decelerationMps2) {
        return heightM >= levellingM
                ? (heightM - levellingM) / rateMps + rateMps / decelerationMps2
                : Math.sqrt(2.0 * heightM / decelerationMps2);
    }
}
