package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;

/** The flow over one section, from numbers as a person or program gives them. */
public final class Flow {
    static final double STEEPEST_DEG = 25;
    static final double GREATEST_LIFT = 2.5;
    static final double LEAST_REYNOLDS = 1e4;
    static final double GREATEST_REYNOLDS = 1e9;

    private Flow() {}

    /**
     * @throws InvalidInputException fields {@code section…}, {@code angleOfAttackDeg}, {@code liftCoefficient} (exactly
     *     one of both), {@code reynolds}, {@code panels}, {@code transition.upperX}, {@code transition.lowerX}
     */
    public static FlowResult run(FlowRequest request) {
        Checks checks = new Checks();
        Section section = section(checks, request.section());
        boolean inviscid = Boolean.TRUE.equals(request.inviscid());
        checkAttitude(checks, request);
        Double reynolds = request.reynolds();
        if (!inviscid || reynolds != null) {
            checks.range("reynolds", reynolds, LEAST_REYNOLDS, GREATEST_REYNOLDS, "");
        }
        int panels = panels(checks, request.panels());
        Transition transition = transition(checks, request.transition(), section);
        checks.throwIfAny();
        if (section == null) {
            throw new IllegalStateException("a missing section went unnoticed");
        }
        SectionFlow flow = SectionFlow.of(section, panels);
        Double angle = request.angleOfAttackDeg();
        double lift = number(request.liftCoefficient());
        if (inviscid) {
            return angle != null ? flow.inviscidAt(Math.toRadians(angle)) : flow.inviscidAtLift(lift);
        }
        FlowCondition condition = new FlowCondition(number(reynolds), transition);
        return angle != null ? flow.at(Math.toRadians(angle), condition) : flow.atLift(lift, condition);
    }

    private static void checkAttitude(Checks checks, FlowRequest request) {
        Double angle = request.angleOfAttackDeg();
        Double lift = request.liftCoefficient();
        checks.require(
                angle != null || lift != null,
                "angleOfAttackDeg",
                null,
                "an angle of attack, or else a lift coefficient");
        checks.require(angle == null || lift == null, "liftCoefficient", lift, "none beside an angle of attack");
        checks.optionalRange("angleOfAttackDeg", angle, -STEEPEST_DEG, STEEPEST_DEG, "°");
        checks.optionalRange("liftCoefficient", lift, -GREATEST_LIFT, GREATEST_LIFT, "");
    }

    private static int panels(Checks checks, @Nullable Integer given) {
        int panels = given == null ? SectionFlow.USUAL_PANELS : given;
        boolean ok = checks.require(
                panels >= SectionFlow.FEWEST_PANELS && panels <= SectionFlow.MOST_PANELS,
                "panels",
                given,
                "a whole number from 40 to 400");
        return ok ? panels : SectionFlow.USUAL_PANELS;
    }

    static Transition transition(Checks checks, @Nullable Transition given, @Nullable Section section) {
        if (given == null || section == null) {
            return Transition.FREE;
        }
        place(checks, "transition.upperX", given.upperX(), section, SurfaceSide.UPPER);
        place(checks, "transition.lowerX", given.lowerX(), section, SurfaceSide.LOWER);
        return given;
    }

    private static void place(Checks checks, String field, @Nullable Double x, Section section, SurfaceSide side) {
        checks.optionalRange(field, x, section.atArcLength(side, 0).x(), section.maximumX(side), "");
    }

    static @Nullable Section section(Checks checks, @Nullable SectionSpec spec) {
        if (spec == null) {
            checks.present("section", null, "a NACA number or coordinates");
            return null;
        }
        try {
            return Sections.of(spec);
        } catch (InvalidInputException e) {
            checks.addUnder("section", e.problems());
            return null;
        }
    }

    private static double number(@Nullable Double checked) {
        return checked == null ? Double.NaN : checked;
    }
}
