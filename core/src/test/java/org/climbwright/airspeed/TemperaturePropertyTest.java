package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.relativeError;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.RecoveryTemperature;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.testing.FiftyDigits;

@Label("What a probe feels, and the air behind it")
class TemperaturePropertyTest {
    private static final double ULP = Math.ulp(1.0);

    @Provide
    Arbitrary<Double> machs() {
        return Arbitraries.doubles().between(0.0, 5.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> temperatures() {
        return Arbitraries.doubles().between(100.0, 400.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> recoveries() {
        return Arbitraries.doubles().between(0.01, 1.0).ofScale(6);
    }

    @Property
    @Label("comes back by every way")
    void roundTrip(
            @ForAll("machs") double mach,
            @ForAll("temperatures") double air,
            @ForAll("recoveries") double recovery) {
        double felt = TotalTemperature.fromMach(mach, air, recovery);
        assertThat(TotalTemperature.coversMach(felt, mach, recovery)).isTrue();
        assertThat(TotalTemperature.staticFromMach(felt, mach, recovery))
                .isCloseTo(air, within(4 * Math.ulp(air)));
        double tas = AirspeedConversion.tasFromMach(mach, air);
        assertThat(TotalTemperature.coversTas(felt, tas * (1.0 - ULP), recovery)).isTrue();
        assertThat(TotalTemperature.staticFromTas(felt, tas * (1.0 - ULP), recovery))
                .isCloseTo(air, within(2e-15 * felt));
        double total = TotalTemperature.totalFromRecovery(felt, mach, recovery);
        assertThat(total).isGreaterThanOrEqualTo(felt * (1.0 - 4 * ULP));
        assertThat(total)
                .isCloseTo(TotalTemperature.fromMach(mach, air, 1.0), within(8 * Math.ulp(total)));
        assertThat(TotalTemperature.recoveryFromTotal(total, mach, recovery))
                .isCloseTo(felt, within(8 * Math.ulp(felt)));
        if (TotalTemperature.hasMach(felt, air, recovery)) {
            // the felt temperature is known to 3 ulp, and the rise is felt - air
            double square = mach * mach;
            double back = TotalTemperature.machFromStatic(felt, air, recovery);
            assertThat(back * back)
                    .isCloseTo(
                            square,
                            within(4 * Math.ulp(felt) / (0.2 * recovery * air) + 1e-14 * square));
        }
    }

    @Property
    @Label("is as right as it says, against 50-digit arithmetic")
    void precision(
            @ForAll("machs") double mach,
            @ForAll("temperatures") double air,
            @ForAll("recoveries") double recovery) {
        BigDecimal rise =
                decimal(mach).pow(2).multiply(decimal(recovery)).divide(BigDecimal.valueOf(5));
        BigDecimal factor = rise.add(BigDecimal.ONE);
        double felt = TotalTemperature.fromMach(mach, air, recovery);
        assertThat(relativeError(felt, decimal(air).multiply(factor)))
                .isCloseTo(0.0, within(3 * ULP));
        assertThat(
                        relativeError(
                                TotalTemperature.staticFromMach(felt, mach, recovery),
                                decimal(felt).divide(factor, FiftyDigits.DIGITS)))
                .isCloseTo(0.0, within(3 * ULP));
        BigDecimal full = decimal(mach).pow(2).divide(BigDecimal.valueOf(5)).add(BigDecimal.ONE);
        assertThat(
                        relativeError(
                                TotalTemperature.totalFromRecovery(felt, mach, recovery),
                                decimal(felt).multiply(full).divide(factor, FiftyDigits.DIGITS)))
                .isCloseTo(0.0, within(5 * ULP));
        if (felt > air) {
            BigDecimal square =
                    decimal(felt)
                            .subtract(decimal(air))
                            .multiply(BigDecimal.valueOf(5))
                            .divide(decimal(recovery).multiply(decimal(air)), FiftyDigits.DIGITS);
            assertThat(
                            relativeError(
                                    TotalTemperature.machFromStatic(felt, air, recovery),
                                    square.min(BigDecimal.valueOf(25)) // Mach 5 is the end
                                            .sqrt(FiftyDigits.DIGITS)))
                    .isCloseTo(0.0, within(3 * ULP));
        }
        double tas = 0.99 * AirspeedConversion.tasFromMach(mach, air);
        BigDecimal cold =
                decimal(felt)
                        .subtract(
                                decimal(recovery)
                                        .multiply(decimal(tas).pow(2))
                                        .divide(new BigDecimal("2009.37009"), FiftyDigits.DIGITS));
        if (TotalTemperature.coversTas(felt, tas, recovery)) { // slower, the air would be warmer
            double found = TotalTemperature.staticFromTas(felt, tas, recovery);
            BigDecimal inside = cold.max(BigDecimal.valueOf(100)).min(BigDecimal.valueOf(400));
            assertThat(new BigDecimal(found).subtract(inside).doubleValue())
                    .isCloseTo(0.0, within(1e-15 * felt));
        }
    }

    private static BigDecimal decimal(double x) {
        return new BigDecimal(x);
    }

    @Property(tries = 100)
    @Label("is the same in values as in plain doubles, to the last bit")
    void doorsAgree(
            @ForAll("machs") double mach,
            @ForAll("temperatures") double air,
            @ForAll("recoveries") double recovery) {
        TemperatureProbe probe = TemperatureProbe.ofRecoveryFactor(recovery);
        StaticAirTemperature cold = StaticAirTemperature.ofKelvins(air);
        Mach number = Mach.of(mach);
        RecoveryTemperature felt = probe.felt(cold, number);
        double k = felt.inKelvins();
        assertThat(k).isEqualTo(TotalTemperature.fromMach(mach, air, recovery));
        assertThat(probe.staticAirTemperature(felt, number).inKelvins())
                .isEqualTo(TotalTemperature.staticFromMach(k, mach, recovery));
        double tas = 0.99 * AirspeedConversion.tasFromMach(mach, air);
        if (TotalTemperature.coversTas(k, tas, recovery)) {
            TrueAirspeed speed = TrueAirspeed.ofMetresPerSecond(tas);
            assertThat(probe.staticAirTemperature(felt, speed).inKelvins())
                    .isEqualTo(TotalTemperature.staticFromTas(k, tas, recovery));
        }
        TotalAirTemperature total = probe.totalAirTemperature(felt, number);
        assertThat(total.inKelvins())
                .isEqualTo(TotalTemperature.totalFromRecovery(k, mach, recovery));
        assertThat(probe.felt(total, number).inKelvins())
                .isEqualTo(TotalTemperature.recoveryFromTotal(total.inKelvins(), mach, recovery));
        if (TotalTemperature.hasMach(k, air, recovery)) {
            assertThat(probe.mach(felt, cold).number())
                    .isEqualTo(TotalTemperature.machFromStatic(k, air, recovery));
        }
    }
}
