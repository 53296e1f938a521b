/**
 * Values of the climb that cannot be mixed up, and the units they come in.
 *
 * <p>Start at {@link org.climbwright.quantity.altitude.PressureAltitude} or any other value of the
 * {@code quantity} packages; {@link org.climbwright.unit.AviationUnits} has the units of the trade
 * for those who come with a {@code javax.measure.Quantity}.
 */
module org.climbwright.units {
    requires transitive java.measure;
    requires static transitive org.jspecify;
    requires tech.units.indriya;

    exports org.climbwright.quantity;
    exports org.climbwright.quantity.altitude;
    exports org.climbwright.quantity.humidity;
    exports org.climbwright.quantity.path;
    exports org.climbwright.quantity.pressure;
    exports org.climbwright.quantity.speed;
    exports org.climbwright.quantity.temperature;
    exports org.climbwright.unit;

    provides javax.measure.spi.ServiceProvider with
            org.climbwright.unit.AviationServiceProvider;
}
