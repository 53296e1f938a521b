package org.climbwright.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.spi.ServiceProvider;
import javax.measure.spi.SystemOfUnits;
import javax.measure.spi.SystemOfUnitsService;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The units as a service of javax.measure")
class AviationServiceProviderTest {
    private static final ServiceProvider AVIATION = ServiceProvider.of("Aviation");

    private static SystemOfUnits system() {
        return AVIATION.getSystemOfUnitsService().getSystemOfUnits();
    }

    @Test
    @DisplayName("are found by the name Aviation")
    void areFound() {
        assertThat(AVIATION).isInstanceOf(AviationServiceProvider.class);
        assertThat(AviationServiceProvider.NAME).isEqualTo("Aviation");
        assertThat(ServiceProvider.available())
                .filteredOn(AviationServiceProvider.class::isInstance)
                .hasSize(1);
    }

    @Test
    @DisplayName("leave the current provider the one it was without them")
    void leaveTheCurrentProvider() {
        assertThat(ServiceProvider.current().getClass().getName())
                .startsWith("tech.units.indriya.");
        assertThat(ServiceProvider.available().get(0))
                .hasSameClassAs(ServiceProvider.current())
                .isNotInstanceOf(AviationServiceProvider.class);
        assertThat(AVIATION.getPriority())
                .isLessThan(ServiceProvider.current().getPriority())
                .isEqualTo(Integer.MIN_VALUE);
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("are found by label:")
    void areFoundByLabel(UnitScale scale) {
        // A label can stand in two kinds, as the percent does: the first of the table is found.
        UnitScale first =
                List.of(UnitScale.values()).stream()
                        .filter(other -> other.label().equals(scale.label()))
                        .findFirst()
                        .orElseThrow();

        assertThat(system().getUnit(scale.label())).isSameAs(AviationUnits.of(first));
    }

    @Test
    @DisplayName("share a label between two kinds for K, °C, °F and % only")
    void sharedLabels() {
        List<String> labels = List.of(UnitScale.values()).stream().map(UnitScale::label).toList();

        assertThat(
                        labels.stream()
                                .filter(
                                        label ->
                                                labels.indexOf(label) != labels.lastIndexOf(label)))
                .containsOnly("K", "°C", "°F", "%");
        assertThat(system().getUnit("%")).isSameAs(AviationUnits.PERCENT_GRADIENT);
        assertThat(system().getUnit("K")).isSameAs(AviationUnits.KELVIN);
    }

    @Test
    @DisplayName("are found by the type of quantity, each by its SI unit")
    void areFoundByType() {
        assertThat(system().getUnit(Length.class)).isSameAs(AviationUnits.METRE);
        assertThat(system().getUnit(Speed.class)).isSameAs(AviationUnits.METRE_PER_SECOND);
        assertThat(system().getUnit(Pressure.class)).isSameAs(AviationUnits.PASCAL);
        assertThat(system().getUnit(PressureRate.class)).isSameAs(AviationUnits.PASCAL_PER_SECOND);
        assertThat(system().getUnit(Temperature.class)).isSameAs(AviationUnits.KELVIN);
        assertThat(system().getUnit(Mass.class)).isSameAs(AviationUnits.KILOGRAM);
        assertThat(system().getUnit(Force.class)).isSameAs(AviationUnits.NEWTON);
        assertThat(system().getUnit(Time.class)).isSameAs(AviationUnits.SECOND);
        assertThat(system().getUnit(Angle.class)).isSameAs(AviationUnits.RADIAN);
        assertThat(system().getUnit(Gradient.class)).isSameAs(AviationUnits.METRE_PER_METRE);
        assertThat(system().getUnit(MassFlow.class)).isSameAs(AviationUnits.KILOGRAM_PER_SECOND);
        assertThat(system().getUnit(Density.class))
                .isSameAs(AviationUnits.KILOGRAM_PER_CUBIC_METRE);
        assertThat(system().getUnit(DynamicViscosity.class)).isSameAs(AviationUnits.PASCAL_SECOND);
        assertThat(system().getUnit(KinematicViscosity.class))
                .isSameAs(AviationUnits.SQUARE_METRE_PER_SECOND);
        assertThat(system().getUnit(ThermalConductivity.class))
                .isSameAs(AviationUnits.WATT_PER_METRE_KELVIN);
        assertThat(system().getUnit(RelativeHumidity.class))
                .isSameAs(AviationUnits.RELATIVE_HUMIDITY_RATIO);
        assertThat(system().getUnit(MixingRatio.class))
                .isSameAs(AviationUnits.KILOGRAM_PER_KILOGRAM);
        assertThat(system().getUnit(Energy.class)).isNull();
    }

    @Test
    @DisplayName("are found by dimension")
    void areFoundByDimension() {
        assertThat(List.<Object>copyOf(system().getUnits(AviationUnits.KNOT.getDimension())))
                .containsExactlyInAnyOrder(
                        AviationUnits.METRE_PER_SECOND,
                        AviationUnits.KNOT,
                        AviationUnits.FOOT_PER_MINUTE,
                        AviationUnits.FOOT_PER_SECOND,
                        AviationUnits.KILOMETRE_PER_HOUR);
        assertThat(List.<Object>copyOf(system().getUnits()))
                .containsExactlyElementsOf(AviationUnits.all());
    }

    @Test
    @DisplayName("know nothing of other labels and other systems")
    void knowNothingElse() {
        SystemOfUnitsService service = AVIATION.getSystemOfUnitsService();

        assertThat(system().getUnit("furlong")).isNull();
        assertThat(service.getSystemOfUnits("SI")).isNull();
        assertThat(service.getSystemOfUnits("Aviation")).isSameAs(system());
        assertThat(service.getAvailableSystemsOfUnits()).containsExactly(system());
        assertThat(service.getPrefixes(MetricPrefix.class)).isEmpty();
        assertThat(system().getName()).isEqualTo("Aviation");
    }

    @Test
    @DisplayName("make quantities, and hand out formats, by way of Indriya")
    void makeQuantities() {
        Quantity<Length> tenFeet =
                AVIATION.getQuantityFactory(Length.class).create(10.0, AviationUnits.FOOT);

        assertThat(tenFeet.to(AviationUnits.METRE).getValue().doubleValue()).isEqualTo(3.048);
        assertThat(AVIATION.getFormatService().getUnitFormat()).isNotNull();
    }
}
