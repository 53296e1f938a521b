package org.climbwright.sounding;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * A layer of air that is warmer than some temperature, 0 °C as a rule.
 *
 * <p>Snow that falls into one melts, and may reach colder air below as supercooled rain: a climb
 * that passes 0 °C once may pass it again.
 *
 * <p>Limits of use: a warm layer is no forecast of freezing rain, and none is no promise that there
 * will be none: drizzle also freezes where it never was warm, and one ascent is the air of its
 * place and hour. Whether to fly into such air is decided by forecasts and reports of the
 * meteorological services, the flight manual and the operator's procedures.
 *
 * @param bottom the air at its lower edge
 * @param bottomEdge whether it is colder below, or nobody observed what is
 * @param top the air at its upper edge
 * @param topEdge whether it is colder above, or nobody observed what is
 * @param warmest the air where it is warmest, and the lowest such place
 */
public record WarmLayer(
        AirState bottom, Edge bottomEdge, AirState top, Edge topEdge, AirState warmest)
        implements Serializable {
    /**
     * Makes a layer of parts that are there.
     *
     * @param bottom the air at its lower edge
     * @param bottomEdge whether it is colder below
     * @param top the air at its upper edge
     * @param topEdge whether it is colder above
     * @param warmest the air where it is warmest
     */
    public WarmLayer {
        Objects.requireNonNull(bottom, "bottom");
        Objects.requireNonNull(bottomEdge, "bottomEdge");
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(topEdge, "topEdge");
        Objects.requireNonNull(warmest, "warmest");
    }

    /** What lies beyond an edge of the layer. */
    public enum Edge {
        /** Air that is colder: the layer ends here. */
        COLDER_BEYOND,
        /**
         * The ground, or air that was not observed: the ascent ends here, perhaps not the layer.
         */
        END_OF_ASCENT
    }

    /**
     * Returns how deep the layer is, as far as it was observed.
     *
     * @return the difference of geopotential altitude; empty when altitudes are not known
     */
    public Optional<AltitudeChange> depth() {
        return LayerDepth.between(bottom, top);
    }

    static List<WarmLayer> in(SoundingAtmosphere air, double temperatureK) {
        List<WarmLayer> layers = new ArrayList<>();
        boolean inside = air.beginsWarmerThan(temperatureK);
        AirState bottom = air.stateAt(0);
        Edge bottomEdge = Edge.END_OF_ASCENT;
        for (IsothermCrossing crossing : IsothermCrossing.in(air, temperatureK)) {
            inside = crossing.trend() == IsothermCrossing.Trend.RISING;
            if (inside) {
                bottom = crossing.air();
                bottomEdge = Edge.COLDER_BEYOND;
            } else {
                layers.add(of(air, bottom, bottomEdge, crossing.air(), Edge.COLDER_BEYOND));
            }
        }
        if (inside) {
            AirState top = air.stateAt(air.size() - 1);
            layers.add(of(air, bottom, bottomEdge, top, Edge.END_OF_ASCENT));
        }
        return layers;
    }

    private static WarmLayer of(
            SoundingAtmosphere air, AirState bottom, Edge bottomEdge, AirState top, Edge topEdge) {
        AirState warmest = bottom;
        for (int i = 0; i < air.size(); i++) {
            boolean within =
                    air.pressureAt(i) <= bottom.pressurePa()
                            && air.pressureAt(i) >= top.pressurePa();
            // Between two levels temperature is straight: it is warmest at one of them.
            if (within && air.temperatureAt(i) > warmest.temperatureK()) {
                warmest = air.stateAt(i);
            }
        }
        return new WarmLayer(bottom, bottomEdge, top, topEdge, warmest);
    }

    /**
     * Returns the layer for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f ft%s to %.0f ft%s, warmest %.1f °C at %.0f ft",
                bottom.pressureAltitude().inFeet(),
                bottomEdge == Edge.END_OF_ASCENT ? " (the ascent begins)" : "",
                top.pressureAltitude().inFeet(),
                topEdge == Edge.END_OF_ASCENT ? " (the ascent ends)" : "",
                warmest.staticAirTemperature().inCelsius(),
                warmest.pressureAltitude().inFeet());
    }
}
