package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SectionSpec;

/**
 * One question about the flow over a section.
 *
 * @param section a NACA number or coordinates
 * @param angleOfAttackDeg from the section's x axis; this or the lift coefficient
 * @param liftCoefficient per unit length of the section's unit
 * @param reynolds of the unit length at free-stream speed; not needed where {@code inviscid}
 * @param panels 200 if absent
 * @param transition free if absent
 * @param inviscid true for the potential flow alone
 */
public record FlowRequest(
        @Nullable SectionSpec section,
        @Nullable Double angleOfAttackDeg,
        @Nullable Double liftCoefficient,
        @Nullable Double reynolds,
        @Nullable Integer panels,
        @Nullable Transition transition,
        @Nullable Boolean inviscid) {}
