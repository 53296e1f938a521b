package org.climbwright.ledger;

import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import org.climbwright.testing.FiftyDigits;

/** The speeds of {@link FiftyDigits} for inputs as they are, and what is made of two of them. */
final class ExactSpeeds {
    private ExactSpeeds() {}

    static BigDecimal ratio(double mach) {
        return FiftyDigits.impactPressure(new BigDecimal(mach), BigDecimal.ONE);
    }

    static BigDecimal impact(double mach, double pressurePa) {
        return FiftyDigits.impactPressure(new BigDecimal(mach), new BigDecimal(pressurePa));
    }

    static BigDecimal impactOfCas(double casMps) {
        return FiftyDigits.impactPressure(
                over(new BigDecimal(casMps), FiftyDigits.seaLevelSpeedOfSound()),
                FiftyDigits.seaLevelPressure());
    }

    static BigDecimal crossover(double casMps, double mach) {
        return over(impactOfCas(casMps), ratio(mach));
    }

    static BigDecimal eas(double mach, double pressurePa) {
        BigDecimal delta = over(new BigDecimal(pressurePa), FiftyDigits.seaLevelPressure());
        return new BigDecimal(mach)
                .multiply(FiftyDigits.seaLevelSpeedOfSound(), DIGITS)
                .multiply(FiftyDigits.sqrt(delta), DIGITS);
    }

    /** At rest both are nothing, and near rest the same. */
    static BigDecimal factor(double mach, double pressurePa) {
        return mach == 0.0
                ? BigDecimal.ONE
                : over(eas(mach, pressurePa), FiftyDigits.casOfMach(mach, pressurePa));
    }

    static BigDecimal sound(double temperatureK) {
        return FiftyDigits.speedOfSound(new BigDecimal(temperatureK));
    }

    static BigDecimal over(BigDecimal a, BigDecimal b) {
        return a.divide(b, DIGITS);
    }
}
