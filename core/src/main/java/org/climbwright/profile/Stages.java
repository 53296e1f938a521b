package org.climbwright.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.climbwright.airspeed.Crossover;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.EngineUse;
import org.climbwright.profile.Leg.Law;
import org.climbwright.profile.Stage.Stay;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.jspecify.annotations.Nullable;

/** Cuts a programme into stages, one above the other. */
final class Stages {
    /** Levels nearer than this are one. */
    private static final double SAME_M = 1e-6;

    private final ClimbProgramme programme;
    private final AeroplaneLimits limits;
    private final EngineUse use;
    private final BleedPlan bleed;

    private Stages(
            ClimbProgramme programme, AeroplaneLimits limits, EngineUse use, BleedPlan bleed) {
        this.programme = programme;
        this.limits = limits;
        this.use = use;
        this.bleed = bleed;
    }

    static List<Stage> of(
            ClimbProgramme programme,
            AeroplaneLimits limits,
            EngineUse use,
            BleedPlan bleed,
            double bottomM,
            double topM) {
        return new Stages(programme, limits, use, bleed).between(bottomM, topM);
    }

    private List<Stage> between(double bottomM, double topM) {
        TreeSet<Double> edges = new TreeSet<>();
        for (double edge : programme.speeds().bendsM()) {
            edges.add(edge);
        }
        for (HeldRate rate : programme.heldRates()) {
            edges.add(rate.from().inMetres());
            edges.add(rate.to().inMetres());
        }
        if (programme.heldRates().stream().anyMatch(r -> r.gives() == HeldRate.Gives.SPEED)) {
            operatingCrossover().ifPresent(edges::add);
        }
        for (double edge : programme.reducedThrust().bendsM()) {
            edges.add(edge);
        }
        for (double edge : bleed.edgesM()) {
            edges.add(edge);
        }
        for (HeldLevel held : programme.heldLevels()) {
            edges.add(held.level().inMetres());
        }
        programme.restrictions().forEach(r -> highestM(r).ifPresent(edges::add));
        List<Stage> stages = new ArrayList<>();
        double from = bottomM;
        for (double edge : edges) {
            if (edge > from + SAME_M && edge < topM - SAME_M) {
                stages.add(stage(from, edge));
                from = edge;
            }
        }
        stages.add(stage(from, topM));
        return stages;
    }

    private Stage stage(double fromM, double toM) {
        // within a stage nothing changes: its middle speaks for it
        double middle = 0.5 * (fromM + toM);
        SpeedSchedule speeds = programme.speeds();
        Leg speed =
                new Leg(
                        Law.SPEED,
                        speeds.isMachHeld(middle, Side.ABOVE),
                        speeds.held(middle, Side.ABOVE),
                        Double.NaN,
                        1.0,
                        use.withBleed(bleed.at(middle, use.bleed())),
                        programme.reducedThrust());
        double share = programme.accelerationShare();
        HeldRate held =
                programme.heldRates().stream()
                        .filter(r -> r.from().inMetres() < middle && middle < r.to().inMetres())
                        .findFirst()
                        .orElse(null);
        return new Stage(
                toM,
                speed,
                speed.by(Law.CHANGE_OF_SPEED, share, Double.NaN),
                speed.by(Law.CHANGE_OF_SPEED, 1.0 + 0.5 * (1.0 - share), Double.NaN),
                rate(speed, held),
                fastest(speed, held, middle),
                slowest(speed, held),
                speeds.mach(toM, Side.BELOW) > 1.0,
                stays(toM));
    }

    private static @Nullable Leg rate(Leg speed, @Nullable HeldRate held) {
        return held == null
                ? null
                : speed.by(
                        held.gives() == HeldRate.Gives.THRUST
                                ? Law.RATE_BY_THRUST
                                : Law.RATE_BY_SPEED,
                        1.0,
                        held.rate().inMetresPerSecond());
    }

    private @Nullable Leg fastest(Leg speed, @Nullable HeldRate held, double levelM) {
        if (held == null || held.gives() == HeldRate.Gives.THRUST) {
            return null;
        }
        Optional<CalibratedAirspeed> cas = limits.maximumOperatingSpeed();
        // the speeds of the library's acceleration factor end at the speed of sound
        double mach = limits.maximumOperatingMach().map(Mach::number).orElse(0.99);
        boolean isMach =
                cas.isEmpty()
                        || operatingCrossover().map(crossing -> levelM > crossing).orElse(false);
        return speed.by(Law.RATE_BY_THRUST, 1.0, held.rate().inMetresPerSecond())
                .at(isMach, isMach ? mach : cas.orElseThrow().inMetresPerSecond());
    }

    private Optional<Double> operatingCrossover() {
        Optional<CalibratedAirspeed> cas = limits.maximumOperatingSpeed();
        double mach = limits.maximumOperatingMach().map(Mach::number).orElse(0.99);
        return cas.map(CalibratedAirspeed::inMetresPerSecond)
                .filter(speed -> Crossover.hasAltitude(speed, mach))
                .map(speed -> Crossover.altitude(speed, mach));
    }

    private @Nullable Leg slowest(Leg speed, @Nullable HeldRate held) {
        return held == null || held.gives() == HeldRate.Gives.THRUST
                ? null
                : speed.by(Law.SPEED, 1.0, held.rate().inMetresPerSecond())
                        .at(false, programme.speeds().minimum().orElseThrow().inMetresPerSecond());
    }

    private List<Stay> stays(double levelM) {
        List<Stay> stays = new ArrayList<>();
        for (HeldLevel held : programme.heldLevels()) {
            if (Math.abs(held.level().inMetres() - levelM) <= SAME_M) {
                stays.add(
                        new Stay(
                                held.time()
                                        .map(time -> time.getSeconds() + time.getNano() / 1e9)
                                        .orElse(Double.NaN),
                                held.until().map(GroundDistance::inMetres).orElse(Double.NaN),
                                ProfileTexts.held(held)));
            }
        }
        List<Restriction> kept =
                programme.restrictions().stream()
                        .filter(
                                r ->
                                        highestM(r)
                                                .map(level -> Math.abs(level - levelM) <= SAME_M)
                                                .orElse(false))
                        .sorted(Comparator.comparing(Restriction::distance))
                        .toList();
        for (Restriction restriction : kept) {
            stays.add(
                    new Stay(
                            Double.NaN,
                            restriction.distance().inMetres(),
                            restriction.altitude().flatMap(AltitudeRestriction::upper).orElseThrow()
                                    + " is held for "
                                    + restriction.name()));
        }
        return List.copyOf(stays);
    }

    /** The highest level that a restriction allows; at "at" the level itself, not its tolerance. */
    private Optional<Double> highestM(Restriction restriction) {
        return restriction
                .altitude()
                .flatMap(AltitudeRestriction::upper)
                .map(
                        (Level level) ->
                                level.pressureAltitude(programme.qnh().orElseThrow().inPascals()));
    }
}
