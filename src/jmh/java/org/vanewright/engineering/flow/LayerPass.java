package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.Section;

/** One pass of the layers of both sides over the outer flow that agrees with them, without their effect on it. */
public final class LayerPass {
    private final Coupling coupling;
    private final CoupledFlow agreed;

    public LayerPass(Section section, int panels, double angleRad, FlowCondition condition) {
        SectionFlow flow = SectionFlow.of(section, panels);
        coupling = flow.coupling(condition);
        agreed = flow.coupledAt(angleRad, condition, null);
    }

    /** Displacement and momentum thickness at the trailing edge, both sides'. */
    public double[] follow() {
        CoupledFlow flow = coupling.pass(agreed.outer(), agreed.displaced());
        Layer up = flow.upper();
        Layer low = flow.lower();
        return new double[] {
            up.displacement(up.last()), up.momentum[up.last()], low.displacement(low.last()), low.momentum[low.last()]
        };
    }
}
