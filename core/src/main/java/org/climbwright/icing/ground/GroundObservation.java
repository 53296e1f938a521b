package org.climbwright.icing.ground;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.climbwright.icing.MoistureForm;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the weather and the surface at an aerodrome. What nobody has stated is not
 * known, and not "none".
 *
 * <pre>{@code
 * GroundObservation.of(StaticAirTemperature.ofCelsius(3))
 *         .withWeather(Set.of(MoistureForm.FOG), GroundDistance.ofMetres(800))
 *         .withSurface(Set.of());
 * }</pre>
 */
public final class GroundObservation implements Serializable {
    private static final long serialVersionUID = 1L;

    private final StaticAirTemperature outsideAir;
    private final @Nullable EnumSet<MoistureForm> weather;
    private final @Nullable GroundDistance visibility;
    private final @Nullable EnumSet<SurfaceContaminant> surface;

    private GroundObservation(
            StaticAirTemperature outsideAir,
            @Nullable EnumSet<MoistureForm> weather,
            @Nullable GroundDistance visibility,
            @Nullable EnumSet<SurfaceContaminant> surface) {
        this.outsideAir = Objects.requireNonNull(outsideAir, "outsideAir");
        this.weather = weather;
        this.visibility = visibility;
        this.surface = surface;
    }

    /**
     * Returns an observation of the temperature alone.
     *
     * @param outsideAir outside air temperature
     * @return the observation
     */
    public static GroundObservation of(StaticAirTemperature outsideAir) {
        return new GroundObservation(outsideAir, null, null, null);
    }

    /**
     * Returns this observation with the present weather and the visibility.
     *
     * @param forms the visible moisture at the aerodrome, none for none
     * @param prevailing the visibility
     * @return a copy that differs in it
     */
    public GroundObservation withWeather(Set<MoistureForm> forms, GroundDistance prevailing) {
        return new GroundObservation(
                outsideAir, copy(MoistureForm.class, forms), prevailing, surface);
    }

    /**
     * Returns this observation with what lies on the surfaces.
     *
     * @param contaminants what lies there, none for none
     * @return a copy that differs in it
     */
    public GroundObservation withSurface(Set<SurfaceContaminant> contaminants) {
        return new GroundObservation(
                outsideAir, weather, visibility, copy(SurfaceContaminant.class, contaminants));
    }

    private static <E extends Enum<E>> EnumSet<E> copy(Class<E> type, Set<E> elements) {
        EnumSet<E> copy = EnumSet.noneOf(type);
        copy.addAll(elements);
        return copy;
    }

    /**
     * Returns the temperature.
     *
     * @return outside air temperature
     */
    public StaticAirTemperature outsideAir() {
        return outsideAir;
    }

    /**
     * Returns the visible moisture.
     *
     * @return the forms; empty where the weather is not known
     */
    public Optional<Set<MoistureForm>> weather() {
        return Optional.ofNullable(weather).map(Set::copyOf);
    }

    /**
     * Returns the visibility.
     *
     * @return the visibility; empty where the weather is not known
     */
    public Optional<GroundDistance> visibility() {
        return Optional.ofNullable(visibility);
    }

    /**
     * Returns what lies on the surfaces.
     *
     * @return the contaminants; empty where that is not known
     */
    public Optional<Set<SurfaceContaminant>> surface() {
        return Optional.ofNullable(surface).map(Set::copyOf);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GroundObservation that
                && outsideAir.equals(that.outsideAir)
                && Objects.equals(weather, that.weather)
                && Objects.equals(visibility, that.visibility)
                && Objects.equals(surface, that.surface);
    }

    @Override
    public int hashCode() {
        return Objects.hash(outsideAir, weather, visibility, surface);
    }

    /**
     * Returns the observation for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return outsideAir
                + ", weather "
                + (weather == null ? "not known" : weather)
                + ", visibility "
                + (visibility == null ? "not known" : visibility)
                + ", surface "
                + (surface == null ? "not known" : surface);
    }
}
