package org.climbwright.path;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.numeric.Quadrature;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;

/** A climb by a table of rates: time and distance are integrals over pressure altitude. */
final class RateTablePath implements ClimbPath {
    private static final double LONGEST_STEP_M = 200.0;

    private final Climb climb;
    private final double trackRad;
    private final ModelRange range;
    private final String end;
    private final boolean isLevelReached;
    private final double[] bendsM;
    private final double[] nodesM;
    private final double[] timeS;
    private final double[] distanceM;

    private RateTablePath(
            Climb climb, double bottomM, double topM, String end, boolean isLevelReached) {
        this.climb = climb;
        this.trackRad = climb.track().inRadians();
        this.range =
                new ModelRange("pressure altitude", bottomM, topM, "m", "the climb is in between");
        this.end = end;
        this.isLevelReached = isLevelReached;
        this.bendsM = bends(climb, bottomM, topM);
        this.nodesM = nodes(bendsM, bottomM, topM);
        this.timeS = cumulative(h -> 1.0 / rate(h, air(h), Side.ABOVE));
        this.distanceM = cumulative(this::distancePerMetre);
    }

    static RateTablePath of(Climb climb, PressureAltitude bottom, PressureAltitude level) {
        if (bottom.compareTo(level) >= 0) {
            throw new IllegalArgumentException(
                    "a climb must end above its bottom of "
                            + bottom.text()
                            + ", but its level was "
                            + level.text());
        }
        double airTop = StandardAir.altitudeFromPressure(climb.air().range().lowest());
        double airBottom = StandardAir.altitudeFromPressure(climb.air().range().highest());
        double ratesTop = climb.rates().highest().inMetres();
        double top = Math.min(level.inMetres(), Math.min(airTop, ratesTop));
        String end =
                top == level.inMetres()
                        ? "level reached"
                        : top == airTop ? "the known air ends" : "the table of rates ends";
        double bottomM = bottom.inMetres();
        new ModelRange("pressure altitude", airBottom, airTop, "m", "the air is not known outside")
                .check(bottomM);
        climb.rates().rate(bottomM, climb.mass().inKilograms(), Side.ABOVE); // for its checks
        return new RateTablePath(climb, bottomM, top, end, top == level.inMetres());
    }

    private static double[] bends(Climb climb, double bottomM, double topM) {
        TreeSet<Double> bends = new TreeSet<>();
        for (double altitude : climb.rates().bendsM()) {
            bends.add(altitude);
        }
        for (double[] pressures : new double[][] {climb.air().bendsPa(), climb.winds().bendsPa()}) {
            for (double pressure : pressures) {
                if (StandardAir.coversPressure(pressure)) {
                    bends.add(StandardAir.altitudeFromPressure(pressure));
                }
            }
        }
        for (double altitude : climb.schedule().bendsM()) {
            bends.add(altitude);
        }
        // the standard temperature bends too, and with it what a metre of pressure altitude is
        for (double pressure : Atmosphere.standard().bendsPa()) {
            bends.add(StandardAir.altitudeFromPressure(pressure));
        }
        return bends.stream()
                .mapToDouble(Double::doubleValue)
                .filter(altitude -> altitude > bottomM && altitude < topM)
                .toArray();
    }

    private static double[] nodes(double[] bends, double bottomM, double topM) {
        TreeSet<Double> nodes = new TreeSet<>();
        double below = bottomM;
        for (int i = 0; i <= bends.length; i++) {
            double above = i < bends.length ? bends[i] : topM;
            int steps = Math.max(1, (int) Math.ceil((above - below) / LONGEST_STEP_M));
            for (int step = 0; step < steps; step++) {
                nodes.add(below + (above - below) * step / steps);
            }
            below = above;
        }
        nodes.add(topM);
        return nodes.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double[] cumulative(DoubleUnaryOperator perMetre) {
        double[] sum = new double[nodesM.length];
        for (int i = 1; i < nodesM.length; i++) {
            sum[i] = sum[i - 1] + Quadrature.integrate(perMetre, nodesM[i - 1], nodesM[i]);
        }
        return sum;
    }

    @Override
    public PressureAltitude bottom() {
        return PressureAltitude.ofMetres(range.lowest());
    }

    @Override
    public PressureAltitude top() {
        return PressureAltitude.ofMetres(range.highest());
    }

    @Override
    public String endsBecause() {
        return end;
    }

    @Override
    public boolean reachesItsLevel() {
        return isLevelReached;
    }

    @Override
    public double[] bendsM() {
        return bendsM.clone();
    }

    @Override
    public double[] heldLevelsM() {
        return new double[0];
    }

    @Override
    public ClimbState at(PressureAltitude altitude, Side side) {
        double altitudeM = range.check(altitude.inMetres());
        int node = Arrays.binarySearch(nodesM, altitudeM);
        if (node >= 0) {
            return state(altitudeM, side, timeS[node], distanceM[node]);
        }
        int below = -node - 2;
        double from = nodesM[below];
        return state(
                altitudeM,
                side,
                timeS[below]
                        + Quadrature.integrate(
                                h -> 1.0 / rate(h, air(h), Side.ABOVE), from, altitudeM),
                distanceM[below] + Quadrature.integrate(this::distancePerMetre, from, altitudeM));
    }

    private ClimbState state(double altitudeM, Side side, double time, double distance) {
        AirState air = air(altitudeM);
        // At the very ends there is one side only.
        Side possible =
                altitudeM == range.lowest()
                        ? Side.ABOVE
                        : altitudeM == range.highest() ? Side.BELOW : side;
        double pressure = air.pressurePa();
        double east = climb.winds().eastward(pressure);
        double north = climb.winds().northward(pressure);
        return ClimbState.ofSi(
                air,
                altitudeM,
                climb.schedule().calibratedAirspeed(altitudeM, possible),
                climb.schedule().mach(altitudeM, possible),
                rate(altitudeM, air, possible),
                climb.mass().inKilograms(),
                Wind.alongTrack(east, north, trackRad),
                Wind.acrossTrack(east, north, trackRad),
                time,
                distance);
    }

    private double distancePerMetre(double altitudeM) {
        ClimbState here = state(altitudeM, Side.ABOVE, 0.0, 0.0);
        return GroundTrack.alongSurface(
                        here.groundSpeedMps(), VerticalRates.geometricPerGeopotential(here.air()))
                / here.rateMps();
    }

    private AirState air(double altitudeM) {
        return climb.air().at(PressureAltitude.ofMetres(altitudeM));
    }

    /**
     * Rate of pressure altitude [m/s]; a table of geometric rates is one of another in this air.
     */
    private double rate(double altitudeM, AirState air, Side side) {
        double tabled = climb.rates().rate(altitudeM, climb.mass().inKilograms(), side);
        return switch (climb.rates().kind()) {
            case PRESSURE_ALTITUDE -> tabled;
            case GEOMETRIC -> tabled / VerticalRates.geometricPerPressureAltitude(air);
        };
    }
}
