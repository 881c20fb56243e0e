package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SurfaceSide;

/** The flow over one section, ready for many angles of attack: panels and factors are made once. Immutable. */
public final class SectionFlow {
    public static final int USUAL_PANELS = 200;
    static final int FEWEST_PANELS = 40;
    static final int MOST_PANELS = 400;

    private final Section section;
    private final PotentialFlow potential;
    private @Nullable OuterResponse response;

    private SectionFlow(Section section, int panels) {
        this.section = section;
        potential = PotentialFlow.about(section, panels);
    }

    /**
     * @param panels 40 to 400
     * @throws IllegalArgumentException outside that
     */
    public static SectionFlow of(Section section, int panels) {
        if (panels < FEWEST_PANELS || panels > MOST_PANELS) {
            throw new IllegalArgumentException("panels must be 40 to 400: " + panels);
        }
        return new SectionFlow(section, panels);
    }

    /** Potential flow alone. */
    public FlowResult inviscidAt(double angleRad) {
        return inviscid(potential.at(angleRad));
    }

    /** Potential flow alone, at the angle that gives a lift coefficient. */
    public FlowResult inviscidAtLift(double liftCoefficient) {
        return inviscid(potential.at(potential.angleForLift(liftCoefficient)));
    }

    /** With boundary layers. */
    public FlowResult at(double angleRad, FlowCondition condition) {
        return result(coupling(condition).atAngle(angleRad, null), condition);
    }

    /** With boundary layers, at the angle that gives a lift coefficient. */
    public FlowResult atLift(double liftCoefficient, FlowCondition condition) {
        return result(coupling(condition).atLift(liftCoefficient, null), condition);
    }

    CoupledFlow coupledAt(double angleRad, FlowCondition condition, double @Nullable [] start) {
        return coupling(condition).atAngle(angleRad, start);
    }

    Coupling coupling(FlowCondition condition) {
        return coupling(condition, false);
    }

    /** @param shared whether a second thread may help with what is made once for the section */
    Coupling coupling(FlowCondition condition, boolean shared) {
        return new Coupling(
                potential,
                response(shared),
                1 / condition.reynolds(),
                orFree(condition.transition().upperX()),
                orFree(condition.transition().lowerX()));
    }

    /** Made when boundary layers are first asked for. */
    private synchronized OuterResponse response(boolean shared) {
        if (response == null) {
            response = new OuterResponse(potential, shared);
        }
        return response;
    }

    private static double orFree(@Nullable Double x) {
        return x == null ? Double.NaN : x;
    }

    PotentialFlow potential() {
        return potential;
    }

    Section section() {
        return section;
    }

    private FlowResult inviscid(PanelSolution flow) {
        StagnationPoint stagnation = StagnationPoint.of(flow);
        return new FlowResult(
                flow.liftCoefficient(),
                Math.toDegrees(flow.angleRad()),
                flow.momentCoefficient(),
                null,
                SideFlow.bare(EdgeFlow.of(flow, stagnation, SurfaceSide.UPPER)),
                SideFlow.bare(EdgeFlow.of(flow, stagnation, SurfaceSide.LOWER)),
                null,
                FlowMethod.POTENTIAL,
                FlowMethod.POTENTIAL_SOURCES,
                FlowValidity.ofShape(potential.geometry()));
    }

    private FlowResult result(CoupledFlow flow, FlowCondition condition) {
        Claim claim = Claim.of(flow);
        return new FlowResult(
                flow.outer().liftCoefficient(),
                Math.toDegrees(flow.outer().angleRad()),
                flow.outer().momentCoefficient(),
                claim.drag(),
                SideFlow.of(flow.upper()),
                SideFlow.of(flow.lower()),
                new CouplingReport(flow.iterations(), flow.residual(), flow.converged()),
                FlowMethod.VISCOUS,
                FlowMethod.VISCOUS_SOURCES,
                FlowValidity.of(flow, condition, claim));
    }
}
