package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A criterion for reporting turbulence")
class ReportingTableTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/turbulence/reporting.csv", useHeadersInDisplayName = true)
    @DisplayName("says of the aeroplane and the cabin what the table says, and no more")
    void saysWhatTheTableSays(TurbulenceReport report, String aeroplane, String cabin) {
        assertThat(report.name()).startsWith(report.intensity().name());
        // the first word that tells the reports apart
        assertThat(report.aeroplane())
                .contains(
                        switch (report) {
                            case LIGHT_TURBULENCE -> "slight erratic";
                            case LIGHT_CHOP -> "slight rapid";
                            case MODERATE_TURBULENCE -> "in control at all times";
                            case MODERATE_CHOP -> "rapid bumps or jolts";
                            case SEVERE_TURBULENCE -> "large abrupt";
                            case EXTREME_TURBULENCE -> "structur";
                        });
        assertThat(aeroplane)
                .contains(
                        switch (report) {
                            case LIGHT_TURBULENCE -> "slight erratic";
                            case LIGHT_CHOP -> "slight rapid";
                            case MODERATE_TURBULENCE -> "in positive control throughout";
                            case MODERATE_CHOP -> "rapid bumps or jolts";
                            case SEVERE_TURBULENCE -> "large abrupt";
                            case EXTREME_TURBULENCE -> "structur";
                        });
        assertThat(report.cabin().startsWith("as in ")).isEqualTo(cabin == null);
    }

    @Test
    @DisplayName("is one of the 6 of the table")
    void rows() {
        assertThat(Table.rows("/turbulence/reporting.csv")).hasSize(6);
        assertThat(TurbulenceReport.values()).hasSize(6);
    }
}
