package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;

@Label("The largest ISA deviation of an ascent")
class IsaDeviationPropertyTest {
    private static final int POINTS = 5000;

    @Property(tries = 300)
    @Label("is one of its air, and none on a dense grid is larger")
    void byDenseGrid(@ForAll("soundings") Sounding sounding) {
        AirState largest = sounding.largestIsaDeviation();
        Atmosphere air = sounding.atmosphere();
        assertThat(deviation(air, largest.pressurePa()))
                .isEqualTo(largest.isaDeviation().inKelvins());
        double size = Math.abs(largest.isaDeviation().inKelvins());
        double found = 0.0;
        double ratio = air.range().lowest() / air.range().highest();
        for (int i = 1; i < POINTS; i++) {
            double pressure = air.range().highest() * Math.pow(ratio, (double) i / POINTS);
            found = Math.max(found, Math.abs(deviation(air, pressure)));
        }
        // 1e-9 K: what the interpolation of temperature loses
        assertThat(found).isLessThanOrEqualTo(size + 1e-9);
    }

    @Example
    @Label("lies between two levels where standard air is parallel to the ascent there")
    void betweenLevels() {
        // both ends are standard, and standard air is not straight in ln p between them
        Sounding sounding = standardAt(0.0, 8000.0);
        AirState largest = sounding.largestIsaDeviation();
        assertThat(largest.isaDeviation().inKelvins()).isBetween(1.0, 2.0);
        assertThat(largest.pressureAltitude().inMetres()).isBetween(3000.0, 5000.0);
        double above = largest.pressurePa() * (1.0 - 1e-5);
        double below = largest.pressurePa() * (1.0 + 1e-5);
        Atmosphere air = sounding.atmosphere();
        double size = largest.isaDeviation().inKelvins();
        assertThat(deviation(air, above)).isLessThan(size).isEqualTo(size, within(1e-8));
        assertThat(deviation(air, below)).isLessThan(size).isEqualTo(size, within(1e-8));
    }

    @Example
    @Label("lies at 11 km where standard air bends away from an ascent without a level there")
    void atTheBend() {
        AirState largest = standardAt(10500.0, 15000.0).largestIsaDeviation();
        assertThat(largest.pressureAltitude().inMetres()).isEqualTo(11000.0, within(1e-6));
        assertThat(largest.isaDeviation().inKelvins()).isBetween(2.0, 4.0);
    }

    @Example
    @Label("is 0 at the ground in standard air with a level at each bend, however near the levels")
    void standard() {
        AirState largest = standardAt(11000.0, 15000.0, 20000.0).largestIsaDeviation();
        assertThat(largest.isaDeviation().inKelvins()).isEqualTo(0.0, within(1e-9));
    }

    private static Sounding standardAt(double... metres) {
        Level[] levels = new Level[metres.length];
        for (int i = 0; i < metres.length; i++) {
            levels[i] =
                    Level.hpa(StandardAir.pressureFromAltitude(metres[i]) / 100.0)
                            .celsius(StandardAir.temperatureFromAltitude(metres[i]) - 273.15);
        }
        return Level.sounding(levels);
    }

    private static double deviation(Atmosphere air, double pressurePa) {
        return air.temperature(pressurePa) - StandardAir.temperatureFromPressure(pressurePa);
    }

    @Provide
    Arbitrary<Sounding> soundings() {
        return RandomSoundings.ofAir();
    }
}
