/**
 * Calculations for the climb phase of flight: air, airspeed, icing, turbulence, the climb and its
 * briefing.
 *
 * <p>Start at {@link org.climbwright.atmosphere.Atmosphere}; each package is a chapter that uses
 * only the ones before it: atmosphere, sounding, airspeed, path, icing, turbulence, cabin,
 * gradient, performance, profile, briefing; working shows how a figure came about.
 */
@SuppressWarnings("requires-automatic") // Commons Math has no descriptor, and is needed by who asks
module org.climbwright.core {
    requires transitive org.climbwright.units;
    requires static commons.math3;
    requires static transitive org.jspecify;

    exports org.climbwright.airspeed;
    exports org.climbwright.atmosphere;
    exports org.climbwright.atmosphere.altimetry;
    exports org.climbwright.atmosphere.wind;
    exports org.climbwright.briefing;
    exports org.climbwright.briefing.plan;
    exports org.climbwright.cabin;
    exports org.climbwright.cabin.dynamics;
    exports org.climbwright.cabin.exposure;
    exports org.climbwright.gradient;
    exports org.climbwright.gradient.procedure;
    exports org.climbwright.gradient.restriction;
    exports org.climbwright.gradient.cloudtop;
    exports org.climbwright.gradient.leveling;
    exports org.climbwright.icing;
    exports org.climbwright.icing.ground;
    exports org.climbwright.icing.accretion;
    exports org.climbwright.icing.envelope;
    exports org.climbwright.icing.potential;
    exports org.climbwright.path;
    exports org.climbwright.performance;
    exports org.climbwright.profile;
    exports org.climbwright.performance.ceiling;
    exports org.climbwright.sounding;
    exports org.climbwright.sounding.surface;
    exports org.climbwright.turbulence;
    exports org.climbwright.turbulence.convection;
    exports org.climbwright.working;
}
