package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/**
 * One angle of a sweep.
 *
 * @param angleOfAttackDeg from the section's x axis
 * @param liftCoefficient per unit length
 * @param momentCoefficientQuarterChord nose up positive
 * @param profileDragCoefficient absent where not claimed
 * @param upperTransitionX absent where laminar to the trailing edge
 * @param lowerTransitionX likewise
 * @param upperSeparationX turbulent separation; absent where attached
 * @param lowerSeparationX likewise
 * @param claimed whether lift and drag lie within what the method claims
 * @param iterations passes of the layers
 * @param residual of the last pass
 */
public record PolarPoint(
        double angleOfAttackDeg,
        double liftCoefficient,
        double momentCoefficientQuarterChord,
        @Nullable Double profileDragCoefficient,
        @Nullable Double upperTransitionX,
        @Nullable Double lowerTransitionX,
        @Nullable Double upperSeparationX,
        @Nullable Double lowerSeparationX,
        boolean claimed,
        int iterations,
        double residual) {

    static PolarPoint of(CoupledFlow flow) {
        Claim claim = Claim.of(flow);
        return new PolarPoint(
                Math.toDegrees(flow.outer().angleRad()),
                flow.outer().liftCoefficient(),
                flow.outer().momentCoefficient(),
                claim.drag(),
                SideFlow.x(flow.upper(), flow.upper().transition),
                SideFlow.x(flow.lower(), flow.lower().transition),
                SideFlow.x(flow.upper(), flow.upper().separation),
                SideFlow.x(flow.lower(), flow.lower().separation),
                claim.holds(),
                flow.iterations(),
                flow.residual());
    }
}
