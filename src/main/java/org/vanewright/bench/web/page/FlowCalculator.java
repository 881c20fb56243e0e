package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.flow.CouplingReport;
import org.vanewright.engineering.flow.Flow;
import org.vanewright.engineering.flow.FlowRequest;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.flow.Transition;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** The flow over a section with its boundary layers. */
@Component
@Order(2)
class FlowCalculator implements Calculator {
    private static final String ANGLE = "angleOfAttackDeg";
    private static final String LIFT = "liftCoefficient";

    /** Stands in for a section that cannot be read, so that what is wrong with other fields is said, too. */
    private static final SectionSpec PLACEHOLDER = SectionSpec.naca("0012");

    @Override
    public String name() {
        return "flow";
    }

    @Override
    public String title() {
        return "Flow over a section";
    }

    @Override
    public String about() {
        return "Pressures and boundary layers on both sides of a section: how thick the slowed air is, where it turns"
                + " turbulent, where it leaves the skin, and where this method stops being valid.";
    }

    @Override
    public List<Field> fields() {
        return Stream.concat(
                        SectionFields.all().stream(),
                        Stream.of(
                                Field.number(
                                        ANGLE,
                                        "Angle of attack",
                                        "°",
                                        "From the chord line. This or the lift coefficient."),
                                Field.number(LIFT, "Lift coefficient", null, "Instead of an angle."),
                                Field.number(
                                        "reynolds",
                                        "Reynolds number",
                                        null,
                                        "Chord times true airspeed over kinematic viscosity: a 1.5 m chord at 50 kt near sea"
                                                + " level has 2600000."),
                                Field.number(
                                        "transition.upperX",
                                        "Fixed transition, upper side",
                                        "x/c",
                                        "Where a strip makes the layer turbulent. Left empty, transition is free."),
                                Field.number("transition.lowerX", "Fixed transition, lower side", "x/c", null),
                                Field.number("panels", "Panels", null, "40 to 400; left empty, 200."),
                                Field.of(
                                        Field.Kind.TICK,
                                        "inviscid",
                                        "Potential flow alone",
                                        "Without boundary layers; needs no Reynolds number.")))
                .toList();
    }

    @Override
    public Map<String, String> example() {
        return Map.of(SectionFields.NACA, "4412", ANGLE, "6", "reynolds", "2600000");
    }

    @Override
    public Answer answer(Form form, Units units) {
        SectionSpec read = SectionFields.read(form);
        SectionSpec spec = read == null ? PLACEHOLDER : read;
        FlowResult flow = Flow.run(request(form, spec));
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        return new Answer(
                null,
                figures(flow),
                FlowPicture.of(Sections.of(spec), flow),
                FlowPlots.of(flow),
                null,
                flow.method(),
                flow.sources(),
                flow.validity());
    }

    private static FlowRequest request(Form form, SectionSpec spec) {
        Double angle = form.number(ANGLE);
        Double lift = form.number(LIFT);
        boolean both = form.text(ANGLE) != null && form.text(LIFT) != null;
        if (both) {
            form.refuse(new FieldProblem(LIFT, form.value(LIFT), "left empty beside an angle of attack"));
        }
        boolean unreadable = angle == null && lift == null && (form.text(ANGLE) != null || form.text(LIFT) != null);
        return new FlowRequest(
                spec,
                unreadable ? (Double) 0.0 : angle,
                both ? null : lift,
                form.number("reynolds"),
                panels(form),
                new Transition(form.number("transition.upperX"), form.number("transition.lowerX")),
                form.checked("inviscid"));
    }

    /** A number that is no whole one is out of every range. */
    private static @Nullable Integer panels(Form form) {
        Double typed = form.number("panels");
        return typed == null ? null : (Integer) (typed == Math.rint(typed) && typed < 1e6 ? typed.intValue() : -1);
    }

    private static List<Figure> figures(FlowResult flow) {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("Lift coefficient", fixed(flow.liftCoefficient(), 3)));
        figures.add(new Figure("Angle of attack", fixed(flow.angleOfAttackDeg(), 2) + "°"));
        figures.add(new Figure("Moment coefficient, quarter chord", fixed(flow.momentCoefficientQuarterChord(), 4)));
        CouplingReport coupling = flow.coupling();
        if (coupling == null) {
            return figures;
        }
        Double drag = flow.profileDragCoefficient();
        figures.add(new Figure("Profile drag coefficient", drag == null ? "not claimed" : fixed(drag, 5)));
        side(figures, "upper", flow.upper());
        side(figures, "lower", flow.lower());
        figures.add(new Figure(
                "Layers and outer flow",
                (coupling.converged() ? "agree to " : "differ by ") + Shown.digits(100 * coupling.residual(), 2, "%")
                        + " after " + coupling.iterations() + " passes"));
        return figures;
    }

    private static void side(List<Figure> figures, String name, SideFlow side) {
        figures.add(new Figure("Transition, " + name + " side", Shown.chord(side.transitionX(), "none, laminar")));
        figures.add(new Figure("Separation, " + name + " side", Shown.chord(side.separationX(), "none, attached")));
    }
}
