package org.climbwright.profile;

import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;

/** Some winds, and the same wind more at every pressure; what is not known stays so. */
record MoreWind(Winds winds, Wind more) implements Winds {
    @Override
    public double eastward(double pressurePa) {
        return winds.eastward(pressurePa) + more.eastwardMps();
    }

    @Override
    public double northward(double pressurePa) {
        return winds.northward(pressurePa) + more.northwardMps();
    }

    @Override
    public boolean covers(double pressurePa) {
        return winds.covers(pressurePa);
    }

    @Override
    public double[] bendsPa() {
        return winds.bendsPa();
    }
}
