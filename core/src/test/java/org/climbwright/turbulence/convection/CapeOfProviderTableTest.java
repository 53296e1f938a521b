package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.closeTo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The energy of the lowest air of a file with derived parameters")
class CapeOfProviderTableTest {
    /** Short formulas for the condensation level, as in the tests of soundings. */
    private static final double LEVEL_HPA = 1.5;

    private static final double LEVEL_M = 18.0;

    /** Its formulas are not known; 50 J/kg is a weak shower. */
    private static final double ENERGY_J_PER_KG = 50.0;

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}")
    @CsvFileSource(resources = "/turbulence/cape-provider.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the provider, and so is the condensation level")
    void agreesWithTheProvider(String launch, double energy, String levelHpa, String aboveM)
            throws IOException {
        Atmosphere air = air(launch);
        ParcelAscent ascent =
                Parcels.surface(air).then(parcel -> ParcelAscent.of(air, parcel)).orElseThrow();
        System.out.println(
                String.format(
                        Locale.ROOT,
                        "energy of the lowest air: %.1f J/kg, the provider %.0f  %s",
                        ascent.energyJPerKg(),
                        energy,
                        launch));
        assertThat(ascent.energyJPerKg()).isCloseTo(energy, within(ENERGY_J_PER_KG));
        assertThat(ascent.condensationLevel().pressure().inHectopascals())
                .is(closeTo(levelHpa, LEVEL_HPA));
        double above =
                ascent.airAtCondensationLevel().geopotentialAltitude().orElseThrow().inMetres()
                        - air.geopotentialAltitude(air.range().highest());
        assertThat(above).is(closeTo(aboveM, LEVEL_M));
    }

    private static Atmosphere air(String launch) throws IOException {
        try (InputStream in =
                CapeOfProviderTableTest.class.getResourceAsStream(
                        "/sounding/USM00070026-drvd.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            return SoundingReader.read(text.lines().toList()).launchedAt(launch).atmosphere();
        }
    }

    @Test
    @DisplayName("is compared in 2 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/cape-provider.csv")).hasSize(2);
    }
}
