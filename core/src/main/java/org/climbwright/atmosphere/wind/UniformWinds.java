package org.climbwright.atmosphere.wind;

/** The same wind at every pressure. */
record UniformWinds(Wind wind) implements Winds {
    @Override
    public double eastward(double pressurePa) {
        return wind.eastwardMps();
    }

    @Override
    public double northward(double pressurePa) {
        return wind.northwardMps();
    }

    @Override
    public boolean covers(double pressurePa) {
        return true;
    }
}
