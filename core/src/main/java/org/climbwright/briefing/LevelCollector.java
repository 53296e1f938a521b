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

    private final ClimbPath path;
    private final NavigableMap<Double, List<ClimbEvent>> events = new TreeMap<>();

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
            at(altitude.inMetres()).add(new ClimbEvent(kind, text));
        }
    }

    private boolean isOnPath(PressureAltitude altitude) {
        return altitude.compareTo(path.bottom()) >= 0 && altitude.compareTo(path.top()) <= 0;
    }

    private List<ClimbEvent> at(double altitudeM) {
        Map.Entry<Double, List<ClimbEvent>> near = events.ceilingEntry(altitudeM - SAME_LEVEL_M);
        return near != null && near.getKey() <= altitudeM + SAME_LEVEL_M
                ? near.getValue()
                : events.computeIfAbsent(altitudeM, key -> new ArrayList<>());
    }

    List<BriefingLevel> levels(AltimeterSetting qnh, AltitudeOnQnh transitionAltitude) {
        List<BriefingLevel> levels = new ArrayList<>();
        for (Map.Entry<Double, List<ClimbEvent>> entry : events.entrySet()) {
            PressureAltitude altitude = PressureAltitude.ofMetres(entry.getKey());
            entry.getValue().sort(Comparator.comparing(ClimbEvent::kind));
            List<ClimbEvent> here = List.copyOf(entry.getValue());
            AltitudeOnQnh reading = Altimetry.altitudeOnQnh(altitude, qnh);
            Optional<AltitudeOnQnh> shown =
                    reading.inMetres() <= transitionAltitude.inMetres() + SAME_LEVEL_M
                            ? Optional.of(reading)
                            : Optional.empty();
            ClimbState arriving = path.at(altitude, Side.BELOW);
            ClimbState leaving = path.at(altitude, Side.ABOVE);
            if (jumps(arriving, leaving)) {
                levels.add(new BriefingLevel(arriving, Side.BELOW, shown, of(here, false)));
                levels.add(new BriefingLevel(leaving, Side.ABOVE, shown, of(here, true)));
            } else {
                levels.add(new BriefingLevel(leaving, Side.ABOVE, shown, here));
            }
        }
        return List.copyOf(levels);
    }

    /** Where a level is held, the climb goes on from it later. */
    private static List<ClimbEvent> of(List<ClimbEvent> events, boolean isLeaving) {
        return events.stream()
                .filter(event -> (event.kind() == ClimbEvent.Kind.LEVEL_LEFT) == isLeaving)
                .toList();
    }

    private static boolean jumps(ClimbState arriving, ClimbState leaving) {
        double speed =
                leaving.calibratedAirspeed().inMetresPerSecond()
                        - arriving.calibratedAirspeed().inMetresPerSecond();
        double rate =
                leaving.pressureAltitudeRate().inMetresPerSecond()
                        - arriving.pressureAltitudeRate().inMetresPerSecond();
        boolean isHeld = leaving.timeS() - arriving.timeS() > 1e-6;
        return isHeld || Math.abs(speed) > 1e-6 || Math.abs(rate) > 1e-6;
    }
}
