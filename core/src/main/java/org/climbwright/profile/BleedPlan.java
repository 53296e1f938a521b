package org.climbwright.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.ClimbPath;
import org.climbwright.performance.Bleed;

/** Between which levels hot air is taken for which part. */
final class BleedPlan {
    static final BleedPlan NONE = new BleedPlan(List.of());

    private final List<Span> spans;

    private BleedPlan(List<Span> spans) {
        this.spans = spans;
    }

    private record Span(ProtectedPart part, double fromM, double toM) {}

    /** What a climb needs by the plans of protection: from on to off, and to the top for good. */
    static BleedPlan along(ClimbPath path, List<ProtectionPlan> plans) {
        List<Span> spans = new ArrayList<>();
        for (ProtectionPlan plan : plans) {
            // what breaks ice off again and again is no steady bleed
            if (plan.method() == ProtectionMethod.ANTI_ICE) {
                for (ProtectionPeriod period : ProtectionAdvice.along(path, plan).periods()) {
                    spans.add(
                            new Span(
                                    plan.rule().part(),
                                    period.isOnBeforeClimb()
                                            ? Double.NEGATIVE_INFINITY
                                            : period.on().pressureAltitude().inMetres(),
                                    period.isOnAtTop()
                                            ? Double.POSITIVE_INFINITY
                                            : period.off().pressureAltitude().inMetres()));
                }
            }
        }
        return new BleedPlan(List.copyOf(spans));
    }

    double[] edgesM() {
        return spans.stream()
                .flatMapToDouble(span -> DoubleStream.of(span.fromM(), span.toM()))
                .filter(Double::isFinite)
                .toArray();
    }

    Bleed at(double levelM, Bleed anyway) {
        boolean engine = anyway.ofEngine();
        boolean airframe = anyway.ofAirframe();
        for (Span span : spans) {
            if (levelM > span.fromM() && levelM < span.toM()) {
                engine |= span.part() == ProtectedPart.ENGINE;
                airframe |= span.part() == ProtectedPart.AIRFRAME;
            }
        }
        return Bleed.of(engine, airframe);
    }

    /** Both plans together: on where either is. */
    BleedPlan and(BleedPlan other) {
        List<Span> all = new ArrayList<>(spans);
        for (Span span : other.spans) {
            boolean isThere =
                    spans.stream()
                            .anyMatch(
                                    s ->
                                            s.part() == span.part()
                                                    && s.fromM() <= span.fromM()
                                                    && s.toM() >= span.toM());
            if (!isThere) {
                all.add(span);
            }
        }
        return new BleedPlan(List.copyOf(all));
    }

    /** Whether another plan has the same spans, their levels within a tolerance. */
    boolean isCloseTo(BleedPlan other, double toleranceM) {
        if (spans.size() != other.spans.size()) {
            return false;
        }
        for (int i = 0; i < spans.size(); i++) {
            Span a = spans.get(i);
            Span b = other.spans.get(i);
            if (a.part() != b.part()
                    || !isClose(a.fromM(), b.fromM(), toleranceM)
                    || !isClose(a.toM(), b.toM(), toleranceM)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isClose(double a, double b, double tolerance) {
        return a == b || Math.abs(a - b) <= tolerance;
    }
}
