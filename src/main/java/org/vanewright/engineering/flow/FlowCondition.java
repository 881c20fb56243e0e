package org.vanewright.engineering.flow;

/**
 * Conditions of a viscous flow.
 *
 * @param reynolds of the section's unit length at free-stream speed
 * @param transition where the layers are made turbulent
 */
public record FlowCondition(double reynolds, Transition transition) {
    public static FlowCondition free(double reynolds) {
        return new FlowCondition(reynolds, Transition.FREE);
    }
}
