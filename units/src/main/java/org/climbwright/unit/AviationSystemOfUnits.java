package org.climbwright.unit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Dimension;
import javax.measure.Prefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.spi.SystemOfUnits;
import javax.measure.spi.SystemOfUnitsService;
import org.jspecify.annotations.Nullable;

/** The units of {@link AviationUnits} as a system that javax.measure can look up by label. */
final class AviationSystemOfUnits implements SystemOfUnits {
    static final SystemOfUnitsService SERVICE = new Service(new AviationSystemOfUnits());

    private AviationSystemOfUnits() {}

    @Override
    public String getName() {
        return AviationServiceProvider.NAME;
    }

    @Override
    @SuppressWarnings("unchecked") // the map below pairs each quantity type with a unit of its own
    public <Q extends Quantity<Q>> @Nullable Unit<Q> getUnit(Class<Q> type) {
        return (Unit<Q>) SI_UNIT.get(type);
    }

    @Override
    public @Nullable Unit<?> getUnit(String label) {
        for (UnitScale scale : UnitScale.values()) {
            if (scale.label().equals(label)) {
                return AviationUnits.of(scale);
            }
        }
        return null;
    }

    @Override
    public Set<Unit<?>> getUnits() {
        return new LinkedHashSet<>(AviationUnits.all());
    }

    @Override
    public Set<? extends Unit<?>> getUnits(Dimension dimension) {
        return getUnits().stream()
                .filter(unit -> unit.getDimension().equals(dimension))
                .collect(Collectors.toSet());
    }

    private static final Map<Class<?>, Unit<?>> SI_UNIT =
            Map.ofEntries(
                    Map.entry(Length.class, AviationUnits.METRE),
                    Map.entry(Speed.class, AviationUnits.METRE_PER_SECOND),
                    Map.entry(Pressure.class, AviationUnits.PASCAL),
                    Map.entry(PressureRate.class, AviationUnits.PASCAL_PER_SECOND),
                    Map.entry(Temperature.class, AviationUnits.KELVIN),
                    Map.entry(Mass.class, AviationUnits.KILOGRAM),
                    Map.entry(MassFlow.class, AviationUnits.KILOGRAM_PER_SECOND),
                    Map.entry(Force.class, AviationUnits.NEWTON),
                    Map.entry(Time.class, AviationUnits.SECOND),
                    Map.entry(Angle.class, AviationUnits.RADIAN),
                    Map.entry(Gradient.class, AviationUnits.METRE_PER_METRE),
                    Map.entry(Density.class, AviationUnits.KILOGRAM_PER_CUBIC_METRE),
                    Map.entry(DynamicViscosity.class, AviationUnits.PASCAL_SECOND),
                    Map.entry(KinematicViscosity.class, AviationUnits.SQUARE_METRE_PER_SECOND),
                    Map.entry(ThermalConductivity.class, AviationUnits.WATT_PER_METRE_KELVIN),
                    Map.entry(RelativeHumidity.class, AviationUnits.RELATIVE_HUMIDITY_RATIO),
                    Map.entry(MixingRatio.class, AviationUnits.KILOGRAM_PER_KILOGRAM));

    /** Hands out the one system there is. */
    private record Service(SystemOfUnits system) implements SystemOfUnitsService {
        @Override
        public SystemOfUnits getSystemOfUnits() {
            return system;
        }

        @Override
        public @Nullable SystemOfUnits getSystemOfUnits(String name) {
            return name.equals(AviationServiceProvider.NAME) ? system : null;
        }

        @Override
        public Collection<SystemOfUnits> getAvailableSystemsOfUnits() {
            return List.of(system);
        }

        @Override
        public <P extends Prefix> Set<P> getPrefixes(Class<P> type) {
            return Set.of();
        }
    }
}
