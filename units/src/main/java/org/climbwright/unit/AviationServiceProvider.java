package org.climbwright.unit;

import javax.measure.Quantity;
import javax.measure.spi.FormatService;
import javax.measure.spi.QuantityFactory;
import javax.measure.spi.ServiceProvider;
import javax.measure.spi.SystemOfUnitsService;
import tech.units.indriya.format.DefaultFormatService;
import tech.units.indriya.quantity.DefaultQuantityFactory;

/**
 * Offers the units of the trade to javax.measure under the name {@value #NAME}.
 *
 * <p>Its priority is the lowest there is, so that {@code ServiceProvider.current()} stays what it
 * was:
 *
 * <pre>{@code
 * ServiceProvider.of("Aviation").getSystemOfUnitsService().getSystemOfUnits().getUnit("kn")
 * }</pre>
 */
public final class AviationServiceProvider extends ServiceProvider {
    /** The name to ask for. */
    public static final String NAME = "Aviation";

    /** Made by {@link java.util.ServiceLoader}; holds nothing. */
    public AviationServiceProvider() {}

    @Override
    public int getPriority() {
        return Integer.MIN_VALUE;
    }

    @Override
    public SystemOfUnitsService getSystemOfUnitsService() {
        return AviationSystemOfUnits.SERVICE;
    }

    /**
     * Returns Indriya's formats, which are lenient; the strict text form is {@link UnitText}.
     *
     * @return the format service
     */
    @Override
    public FormatService getFormatService() {
        return new DefaultFormatService();
    }

    @Override
    public <Q extends Quantity<Q>> QuantityFactory<Q> getQuantityFactory(Class<Q> quantity) {
        return DefaultQuantityFactory.getInstance(quantity);
    }

    /**
     * Returns the name that {@link ServiceProvider#of} looks for.
     *
     * @return {@value #NAME}
     */
    @Override
    public String toString() {
        return NAME;
    }
}
