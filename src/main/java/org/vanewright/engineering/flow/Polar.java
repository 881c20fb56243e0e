package org.vanewright.engineering.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * A sweep of the angle of attack at one Reynolds number; the panels' factors are used for all angles.
 *
 * @param points in the order of the sweep
 * @param method how it was computed, one paragraph
 * @param sources citations
 * @param validity warnings
 */
public record Polar(List<PolarPoint> points, String method, List<String> sources, List<String> validity) {
    static final int MOST_POINTS = 200;

    /**
     * @param fromDeg first angle, −25 to 25°
     * @param toDeg last angle, above the first
     * @param count of angles, 2 to 200, evenly spaced
     * @throws InvalidInputException fields {@code fromDeg}, {@code toDeg}, {@code count}, {@code reynolds}, {@code
     *     transition.upperX}, {@code transition.lowerX}
     */
    public static Polar sweep(SectionFlow flow, FlowCondition condition, double fromDeg, double toDeg, int count) {
        Checks checks = new Checks();
        checks.range("fromDeg", fromDeg, -Flow.STEEPEST_DEG, Flow.STEEPEST_DEG, "°");
        checks.range("toDeg", toDeg, -Flow.STEEPEST_DEG, Flow.STEEPEST_DEG, "°");
        checks.require(!(toDeg <= fromDeg), "toDeg", toDeg, "an angle above the first");
        checks.require(count >= 2 && count <= MOST_POINTS, "count", count, "a whole number from 2 to " + MOST_POINTS);
        checks.range("reynolds", condition.reynolds(), Flow.LEAST_REYNOLDS, Flow.GREATEST_REYNOLDS, "");
        Flow.transition(checks, condition.transition(), flow.section());
        checks.throwIfAny();
        double[] angles = new double[count];
        for (int i = 0; i < count; i++) {
            angles[i] = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / (count - 1));
        }
        List<PolarPoint> points = PolarSweep.of(flow.coupling(condition, true), angles);
        return new Polar(points, FlowMethod.VISCOUS, FlowMethod.VISCOUS_SOURCES, validity(points, condition));
    }

    /** The point with the largest lift that the method claims. */
    public Optional<PolarPoint> largestLift() {
        return points.stream().filter(PolarPoint::claimed).max(Comparator.comparingDouble(PolarPoint::liftCoefficient));
    }

    private static List<String> validity(List<PolarPoint> points, FlowCondition condition) {
        List<String> warnings = new ArrayList<>();
        long unclaimed = points.stream().filter(p -> !p.claimed()).count();
        if (unclaimed > 0) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "%d of %d angles lie beyond what the method claims: turbulent separation ahead of the last tenth of the"
                            + " chord, or layers and outer flow that do not agree. The largest lift shown is that of the"
                            + " claimed angles, not the section's largest lift.",
                    unclaimed,
                    points.size()));
        }
        warnings.addAll(FlowValidity.ofReynolds(condition.reynolds()));
        return List.copyOf(warnings);
    }
}
