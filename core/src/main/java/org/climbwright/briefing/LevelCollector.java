package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/** Gathers the levels of a briefing in any order, and gives them out in that of the climb. */
final class LevelCollector {
    /** Levels nearer than this are one line. */
    private static final double SAME_LEVEL_M = 0.01;

    /** Times nearer than this are one line. */
    private static final double SAME_TIME_S = 1e-6;

    private final ClimbPath path;
    private final NavigableMap<Double, List<Told>> events = new TreeMap<>();

    /**
     * An event, and the climb there where a level is held, and so its time is not that of the
     * level.
     */
    private record Told(ClimbEvent event, Optional<ClimbState> state) {
        double timeS(double otherwise) {
            return state.map(ClimbState::timeS).orElse(otherwise);
        }
    }

    LevelCollector(ClimbPath path) {
        this.path = path;
    }

    /** Asks for a line at a level; levels off the climb are left out. */
    void line(PressureAltitude altitude) {
        if (isOnPath(altitude)) {
            at(altitude.inMetres());
        }
    }

    /** Asks for a line at a level with something that happens there. */
    void event(PressureAltitude altitude, ClimbEvent.Kind kind, String text) {
        if (isOnPath(altitude)) {
            at(altitude.inMetres()).add(new Told(new ClimbEvent(kind, text), Optional.empty()));
        }
    }

    /** Asks for a line at a point of the climb with something that happens there. */
    void event(ClimbState state, ClimbEvent.Kind kind, String text) {
        at(state.pressureAltitude().inMetres())
                .add(new Told(new ClimbEvent(kind, text), Optional.of(state)));
    }

    private boolean isOnPath(PressureAltitude altitude) {
        return altitude.compareTo(path.bottom()) >= 0 && altitude.compareTo(path.top()) <= 0;
    }

    private List<Told> at(double altitudeM) {
        Map.Entry<Double, List<Told>> near = events.ceilingEntry(altitudeM - SAME_LEVEL_M);
        return near != null && near.getKey() <= altitudeM + SAME_LEVEL_M
                ? near.getValue()
                : events.computeIfAbsent(altitudeM, key -> new ArrayList<>());
    }

    List<BriefingLevel> levels(AltimeterSetting qnh, AltitudeOnQnh transitionAltitude) {
        List<BriefingLevel> levels = new ArrayList<>();
        for (Map.Entry<Double, List<Told>> entry : events.entrySet()) {
            PressureAltitude altitude = PressureAltitude.ofMetres(entry.getKey());
            AltitudeOnQnh reading = Altimetry.altitudeOnQnh(altitude, qnh);
            Optional<AltitudeOnQnh> shown =
                    reading.inMetres() <= transitionAltitude.inMetres() + SAME_LEVEL_M
                            ? Optional.of(reading)
                            : Optional.empty();
            ClimbState arriving = path.at(altitude, Side.BELOW);
            ClimbState leaving = path.at(altitude, Side.ABOVE);
            if (leaving.timeS() - arriving.timeS() > SAME_TIME_S) {
                levels.addAll(held(entry.getValue(), arriving, leaving, shown));
            } else if (jumps(arriving, leaving)) {
                levels.add(new BriefingLevel(arriving, Side.BELOW, shown, of(entry.getValue())));
                levels.add(new BriefingLevel(leaving, Side.ABOVE, shown, List.of()));
            } else {
                levels.add(new BriefingLevel(leaving, Side.ABOVE, shown, of(entry.getValue())));
            }
        }
        return List.copyOf(levels);
    }

    /**
     * A level that is held: a line as it is reached, one for each time between, one as it is left.
     */
    private static List<BriefingLevel> held(
            List<Told> told,
            ClimbState arriving,
            ClimbState leaving,
            Optional<AltitudeOnQnh> shown) {
        double from = arriving.timeS();
        NavigableMap<Double, List<Told>> byTime = new TreeMap<>();
        byTime.put(from, new ArrayList<>());
        byTime.put(leaving.timeS(), new ArrayList<>());
        for (Told one : told) {
            double time = one.timeS(from);
            Double near = byTime.ceilingKey(time - SAME_TIME_S);
            double at = near != null && near <= time + SAME_TIME_S ? near : time;
            byTime.computeIfAbsent(at, key -> new ArrayList<>()).add(one);
        }
        List<BriefingLevel> levels = new ArrayList<>();
        byTime.forEach(
                (time, here) -> {
                    boolean isFirst = time == from;
                    ClimbState state =
                            isFirst
                                    ? arriving
                                    : time == leaving.timeS()
                                            ? leaving
                                            : here.get(0).state().orElseThrow();
                    levels.add(
                            new BriefingLevel(
                                    state, isFirst ? Side.BELOW : Side.ABOVE, shown, of(here)));
                });
        return levels;
    }

    private static List<ClimbEvent> of(List<Told> told) {
        return told.stream()
                .map(Told::event)
                .sorted(Comparator.comparing(ClimbEvent::kind))
                .toList();
    }

    private static boolean jumps(ClimbState arriving, ClimbState leaving) {
        double speed =
                leaving.calibratedAirspeed().inMetresPerSecond()
                        - arriving.calibratedAirspeed().inMetresPerSecond();
        double rate =
                leaving.pressureAltitudeRate().inMetresPerSecond()
                        - arriving.pressureAltitudeRate().inMetresPerSecond();
        return Math.abs(speed) > 1e-6 || Math.abs(rate) > 1e-6;
    }
}
