package org.climbwright.icing.ground;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.MoistureForm;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * The operational rule for engine icing conditions on the ground, where temperature is that of the
 * outside air and moisture is what is seen.
 *
 * <p>Limits of use: the thresholds of an engine are those of its flight manual. A rule that is not
 * met is not "no icing".
 *
 * @param warmest the highest outside air temperature at which the conditions hold, itself included
 * @param fogVisibility fog counts at this visibility or less
 * @param forms the weather that counts
 * @param contaminants what counts on the surfaces
 * @source wording of flight manuals: at or below a threshold of outside air temperature with
 *     visible moisture, fog of 1 mile visibility or less, or standing water, slush or snow on
 *     ramps, taxiways and runways; common practice, no source
 */
public record GroundIcingRule(
        StaticAirTemperature warmest,
        GroundDistance fogVisibility,
        Set<MoistureForm> forms,
        Set<SurfaceContaminant> contaminants)
        implements Serializable {
    /** A statute mile, by definition. */
    private static final double MILE_M = 1609.344;

    /**
     * Makes a rule.
     *
     * @param warmest the highest outside air temperature
     * @param fogVisibility the highest visibility of fog that counts
     * @param forms the weather that counts
     * @param contaminants what counts on the surfaces
     */
    public GroundIcingRule {
        Objects.requireNonNull(warmest, "warmest");
        Objects.requireNonNull(fogVisibility, "fogVisibility");
        forms = Set.copyOf(forms);
        contaminants = Set.copyOf(contaminants);
    }

    /**
     * The usual rule: 10 °C, fog of a statute mile, every form of moisture and every contaminant.
     *
     * @return the rule
     * @source see the class comment
     */
    public static GroundIcingRule usual() {
        return new GroundIcingRule(
                StaticAirTemperature.ofCelsius(10),
                GroundDistance.ofMetres(MILE_M),
                EnumSet.allOf(MoistureForm.class),
                EnumSet.allOf(SurfaceContaminant.class));
    }

    /**
     * What the rule says of an observation.
     *
     * @param answer whether it is met; never {@link IcingAnswer#COLDER_THAN_THE_RULE}
     * @param reasons what meets it, or why it cannot be told, or why it is not met
     */
    public record Verdict(IcingAnswer answer, List<String> reasons) implements Serializable {
        /**
         * Makes a verdict.
         *
         * @param answer whether the rule is met
         * @param reasons why
         */
        public Verdict {
            Objects.requireNonNull(answer, "answer");
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Returns what the rule says of an observation.
     *
     * @param observation what is known
     * @return met where it is cold enough and anything counts; not known where it is cold enough,
     *     nothing that is known counts, and not everything is known
     */
    public Verdict of(GroundObservation observation) {
        if (observation.outsideAir().compareTo(warmest) > 0) {
            return new Verdict(IcingAnswer.NOT_MET, List.of(cold(observation, "above")));
        }
        List<String> met = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        observation
                .weather()
                .ifPresentOrElse(
                        seen -> weather(seen, observation.visibility().orElseThrow(), met),
                        () -> unknown.add("the weather is not known"));
        observation
                .surface()
                .ifPresentOrElse(
                        seen -> surface(seen, met),
                        () -> unknown.add("what lies on the surfaces is not known"));
        String cold = cold(observation, "not above");
        if (!met.isEmpty()) {
            met.add(0, cold);
            return new Verdict(IcingAnswer.CONDITIONS, met);
        }
        if (!unknown.isEmpty()) {
            unknown.add(0, cold);
            return new Verdict(IcingAnswer.NOT_KNOWN, unknown);
        }
        return new Verdict(IcingAnswer.NOT_MET, List.of(cold, "nothing seen counts by the rule"));
    }

    private String cold(GroundObservation observation, String where) {
        return String.format(
                Locale.ROOT,
                "outside air temperature %.1f °C is %s the rule's %.1f °C",
                observation.outsideAir().inCelsius(),
                where,
                warmest.inCelsius());
    }

    private void weather(Set<MoistureForm> seen, GroundDistance visibility, List<String> met) {
        for (MoistureForm form : MoistureForm.values()) {
            if (!seen.contains(form) || !forms.contains(form)) {
                continue;
            }
            if (form != MoistureForm.FOG) {
                met.add(form.words());
            } else if (visibility.compareTo(fogVisibility) <= 0) {
                met.add(
                        String.format(
                                Locale.ROOT,
                                "fog with a visibility of %.0f m (rule: %.0f m or less)",
                                visibility.inMetres(),
                                fogVisibility.inMetres()));
            }
        }
    }

    private void surface(Set<SurfaceContaminant> seen, List<String> met) {
        for (SurfaceContaminant contaminant : SurfaceContaminant.values()) {
            if (seen.contains(contaminant) && contaminants.contains(contaminant)) {
                met.add(
                        contaminant.name().toLowerCase(Locale.ROOT).replace('_', ' ')
                                + " on ramps, taxiways or runways");
            }
        }
    }
}
