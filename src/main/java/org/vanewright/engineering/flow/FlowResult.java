package org.vanewright.engineering.flow;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flow over a section at one angle of attack; coefficients per unit length of the section's unit.
 *
 * @param liftCoefficient from the pressure on the skin
 * @param angleOfAttackDeg from the section's x axis
 * @param momentCoefficientQuarterChord about the quarter point of the chord, nose up positive
 * @param profileDragCoefficient absent in inviscid flow, and where separation stands ahead of what the method claims
 * @param upper the upper side
 * @param lower the lower side
 * @param coupling absent in inviscid flow
 * @param method how it was computed, one paragraph
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record FlowResult(
        double liftCoefficient,
        double angleOfAttackDeg,
        double momentCoefficientQuarterChord,
        @Nullable Double profileDragCoefficient,
        SideFlow upper,
        SideFlow lower,
        @Nullable CouplingReport coupling,
        String method,
        List<String> sources,
        List<String> validity) {}
