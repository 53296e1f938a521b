package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.sounding.Soundings;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The energy of the surface parcel of a recorded sounding")
class CapeOfSoundingsTableTest {
    /**
     * Saturation formulas, heats of vaporization and steps differ: the two computations differ by 8
     * % themselves.
     */
    private static final double SHARE = 0.15;

    private static final double LEAST_J_PER_KG = 50.0;

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/turbulence/cape-soundings.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of two other computations, as near as they are to each other")
    void agreesWithTheTable(String name, double computed, double program) {
        Atmosphere air = Soundings.profile(name).atmosphere();
        ParcelAscent ascent =
                Parcels.surface(air).then(parcel -> ParcelAscent.of(air, parcel)).orElseThrow();
        double ours = ascent.energyJPerKg();
        System.out.println(
                String.format(
                        Locale.ROOT,
                        "energy of the surface parcel: %8.1f J/kg, others %8.1f and %8.1f  %s",
                        ours,
                        computed,
                        program,
                        name));
        assertThat(ours).isCloseTo(computed, within(Math.max(LEAST_J_PER_KG, SHARE * computed)));
        assertThat(ours).isCloseTo(program, within(Math.max(LEAST_J_PER_KG, SHARE * program)));
    }

    @Test
    @DisplayName("is compared in 12 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/cape-soundings.csv")).hasSize(12);
    }
}
