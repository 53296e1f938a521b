package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.StandardAir;

@Label("The tracheal oxygen pressure, over its whole range")
class TrachealOxygenPressurePropertyTest {
    @Property
    @Label("falls as the cabin climbs, and grows with the oxygen in what is breathed")
    void monotone(
            @ForAll @DoubleRange(min = -5000, max = 18999) double metres,
            @ForAll @DoubleRange(min = 1, max = 24000) double higher,
            @ForAll @DoubleRange(min = 0.01, max = 0.95) double fraction,
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double more) {
        double here = TrachealOxygenPressure.trachealOxygenPressure(metres, fraction);
        double above =
                TrachealOxygenPressure.trachealOxygenPressure(
                        Math.min(metres + higher, 19000.0), fraction);
        double richer = TrachealOxygenPressure.trachealOxygenPressure(metres, fraction + more);
        assertThat(above).isLessThan(here).isPositive();
        assertThat(richer).isGreaterThan(here);
    }

    @Property
    @Label("of oxygen and of the rest, with the water, is the pressure of the cabin")
    void parts(
            @ForAll @DoubleRange(min = -5000, max = 19000) double metres,
            @ForAll @DoubleRange(min = 0, max = 1) double fraction) {
        double oxygen = TrachealOxygenPressure.trachealOxygenPressure(metres, fraction);
        double rest = TrachealOxygenPressure.trachealOxygenPressure(metres, 1.0 - fraction);
        double water = 47.0 * 133.322387415; // Pa, conventional millimetres of mercury
        double pressure = StandardAir.pressureFromAltitude(metres);
        assertThat(oxygen + rest + water).isCloseTo(pressure, within(1e-12 * pressure));
    }
}
