package org.vanewright.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Warnings of what lies outside the methods' ranges. */
final class FlowValidity {
    private static final double LEAST_REYNOLDS = 3e5;
    private static final double GREATEST_REYNOLDS = 2e7;
    private static final double LEAST_MOMENTUM_REYNOLDS = 500;
    private static final double UNIT_CHORD_SLACK = 0.02;

    private FlowValidity() {}

    static List<String> of(CoupledFlow flow, FlowCondition condition, Claim claim) {
        List<String> warnings = new ArrayList<>(ofShape(flow.outer().geometry()));
        warnings.addAll(ofReynolds(condition.reynolds()));
        if (!flow.converged()) {
            warnings.add(text(
                    "Layers and outer flow still differ by %.1f %% after %d passes; %s.",
                    100 * flow.residual(),
                    flow.iterations(),
                    claim.agreed() ? "lift is uncertain by up to about 1 %" : "nothing is claimed"));
        }
        side(warnings, "upper", flow.upper(), condition);
        side(warnings, "lower", flow.lower(), condition);
        if (!claim.attached()) {
            warnings.add(
                    "Turbulent separation stands ahead of the last tenth of the chord: lift, moment and pressures are"
                            + " shown but not claimed, and no drag is given.");
        }
        return List.copyOf(warnings);
    }

    private static void side(List<String> warnings, String name, Layer layer, FlowCondition condition) {
        if (layer.laminarSeparation != Layer.NOWHERE) {
            warnings.add(text(
                    "The laminar layer on the %s side separates at x = %.4f; it is taken to become turbulent there at"
                            + " once, without a bubble%s.",
                    name,
                    layer.edge.along(layer.edge.x, layer.laminarSeparation),
                    layer.trippedTooLate ? ", ahead of the fixed transition" : ""));
        }
        if (!layer.attached()) {
            warnings.add(text(
                    "The turbulent layer on the %s side separates at x = %.4f; nothing is claimed about it behind that.",
                    name, layer.edge.along(layer.edge.x, layer.separation)));
        }
        if (layer.transition != Layer.NOWHERE) {
            double start = layer.edge.speedAt(layer.transition) * layer.momentumAtTransition * condition.reynolds();
            if (start < LEAST_MOMENTUM_REYNOLDS) {
                warnings.add(text(
                        "The turbulent layer on the %s side starts with a momentum Reynolds number of %.0f, below the"
                                + " friction law's 500.",
                        name, start));
            }
        }
    }

    static List<String> ofReynolds(double reynolds) {
        if (reynolds >= LEAST_REYNOLDS && reynolds <= GREATEST_REYNOLDS) {
            return List.of();
        }
        return List.of(text(
                "The Reynolds number %.3g lies outside 3e5 to 2e7, the range of the transition and friction laws.",
                reynolds));
    }

    static List<String> ofShape(PanelGeometry g) {
        double front = g.x[g.leadingEdge];
        double rear = 0.5 * (g.x[0] + g.x[g.panels()]);
        if (Math.abs(front) <= UNIT_CHORD_SLACK && Math.abs(rear - 1) <= UNIT_CHORD_SLACK) {
            return List.of();
        }
        return List.of(text(
                "The section runs from x = %.4f to %.4f; coefficients and the Reynolds number are per its unit of length,"
                        + " as given.",
                front, rear));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
