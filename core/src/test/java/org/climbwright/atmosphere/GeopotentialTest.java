package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;

@Label("Geopotential and geometric altitude")
class GeopotentialTest {
    @Provide
    Arbitrary<Double> geometric() {
        return Arbitraries.doubles().between(-10000.0, 200000.0).ofScale(9);
    }

    /** Geometric altitudes whose geopotential altitude is in its own range, which is narrower. */
    @Provide
    Arbitrary<Double> bothInRange() {
        return Arbitraries.doubles().between(-9984.0, 195853.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> outsideGeometric() {
        return Arbitraries.of(
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Math.nextDown(-10000.0),
                Math.nextUp(200000.0),
                -6356766.0);
    }

    @Example
    @Label("are the same at sea level, and 19 m apart at 11 km")
    void apart() {
        assertThat(Geopotential.geopotentialFromGeometric(0.0)).isZero();
        assertThat(Geopotential.geometricFromGeopotential(0.0)).isZero();
        assertThat(Geopotential.geometricFromGeopotential(11000.0) - 11000.0)
                .isCloseTo(19.07, within(0.005));
    }

    @Property
    @Label("come back from one another")
    void thereAndBack(@ForAll("bothInRange") double z) {
        double h = Geopotential.geopotentialFromGeometric(z);
        // 4 ulp: two roundings each way
        assertThat(Geopotential.geometricFromGeopotential(h)).isCloseTo(z, within(4 * Math.ulp(z)));
    }

    @Property
    @Label("differ the more the farther from sea level; geometric is never the smaller")
    void geometricIsMore(@ForAll("geometric") double z) {
        double difference = z - Geopotential.geopotentialFromGeometric(z);
        // z² / (r + z), from which each rounding takes an ulp of z
        assertThat(difference)
                .isCloseTo(z * z / (6356766.0 + z), within(2 * Math.ulp(z)))
                .isGreaterThanOrEqualTo(-Math.ulp(z));
    }

    @Property
    @Label("grow together: gravity times the rate of one to the other is standard gravity")
    void gravityIsTheRate(@ForAll("geometric") double z) {
        assertThat(Geopotential.gravity(z) * Geopotential.geometricPerGeopotential(z))
                .isCloseTo(9.80665, within(1e-14));
        // the rate is that of the conversion itself, by a difference over 2 m
        double low = Math.max(-10000.0, z - 1.0);
        double high = Math.min(200000.0, z + 1.0);
        double rate =
                (high - low)
                        / (Geopotential.geopotentialFromGeometric(high)
                                - Geopotential.geopotentialFromGeometric(low));
        assertThat(Geopotential.geometricPerGeopotential(z)).isCloseTo(rate, within(5e-7));
    }

    @Property
    @Label("answer values and plain doubles alike, to the last bit")
    void doorsAgree(@ForAll("bothInRange") double z) {
        double h = Geopotential.geopotentialFromGeometric(z);
        assertThat(Geopotential.from(GeometricAltitude.ofMetres(z)).inMetres()).isEqualTo(h + 0.0);
        assertThat(Geopotential.toGeometric(GeopotentialAltitude.ofMetres(h)).inMetres())
                .isEqualTo(Geopotential.geometricFromGeopotential(h) + 0.0);
    }

    @Property
    @Label("are refused far from the earth")
    void refused(@ForAll("outsideGeometric") double z) {
        assertThat(Geopotential.coversGeometric(z)).isFalse();
        refused(() -> Geopotential.geopotentialFromGeometric(z));
        refused(() -> Geopotential.gravity(z));
        refused(() -> Geopotential.geometricPerGeopotential(z));
        double h =
                z > 0.0
                        ? Math.nextUp(Geopotential.geopotentialFromGeometric(200000.0))
                        : Math.nextDown(Geopotential.geopotentialFromGeometric(-10000.0));
        assertThat(Geopotential.coversGeopotential(h)).isFalse();
        refused(() -> Geopotential.geometricFromGeopotential(h));
    }

    @Example
    @Label("take the ends of their ranges, and say what the ranges are")
    void ends() {
        assertThat(Geopotential.coversGeometric(-10000.0)).isTrue();
        assertThat(Geopotential.coversGeometric(200000.0)).isTrue();
        assertThat(
                        Geopotential.coversGeopotential(
                                Geopotential.geopotentialFromGeometric(-10000.0)))
                .isTrue();
        assertThat(
                        Geopotential.coversGeopotential(
                                Geopotential.geopotentialFromGeometric(200000.0)))
                .isTrue();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Geopotential.gravity(250000.0))
                .withMessage(
                        "geometric altitude must be from -10000.0 to 200000.0 m, but was 250000.0"
                                + " m: the relation is meant for the air near the earth");
    }

    private static void refused(Runnable question) {
        assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
    }
}
