package org.vanewright.engineering.unroll;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.wing.WingPanel;

/** What a panel must be so that its skin can be developed. The bounds are wide: they keep out mistakes, not aircraft. */
public final class PanelRules {
    static final double SHORTEST_SPAN_MM = 1;
    static final double LONGEST_SPAN_MM = 50_000;
    static final double SHORTEST_CHORD_MM = 1;
    static final double LONGEST_CHORD_MM = 20_000;
    static final double LARGEST_OFFSET_MM = 50_000;
    static final double LARGEST_TWIST_DEG = 45;

    private PanelRules() {}

    /** Problems with the field names of {@link WingPanel}; empty when the panel can be developed. */
    public static List<FieldProblem> problems(WingPanel panel) {
        Checks checks = new Checks();
        checks.range("innerStationMm", panel.innerStationMm(), -LONGEST_SPAN_MM, LONGEST_SPAN_MM, "mm");
        double low = panel.innerStationMm() + SHORTEST_SPAN_MM;
        if (Double.isFinite(low)) {
            checks.range("outerStationMm", panel.outerStationMm(), low, low + LONGEST_SPAN_MM, "mm");
        }
        chord(checks, "innerChordMm", panel.innerChordMm());
        chord(checks, "outerChordMm", panel.outerChordMm());
        offset(checks, "innerLeadingEdgeMm", panel.innerLeadingEdgeMm());
        offset(checks, "outerLeadingEdgeMm", panel.outerLeadingEdgeMm());
        twist(checks, "twistDeg", panel.twistDeg());
        return checks.problems();
    }

    static void chord(Checks checks, String field, @Nullable Double value) {
        checks.range(field, value, SHORTEST_CHORD_MM, LONGEST_CHORD_MM, "mm");
    }

    static void offset(Checks checks, String field, @Nullable Double value) {
        checks.range(field, value, -LARGEST_OFFSET_MM, LARGEST_OFFSET_MM, "mm");
    }

    static void twist(Checks checks, String field, @Nullable Double value) {
        checks.range(field, value, -LARGEST_TWIST_DEG, LARGEST_TWIST_DEG, "degrees");
    }

    static void span(Checks checks, String field, @Nullable Double value) {
        checks.range(field, value, SHORTEST_SPAN_MM, LONGEST_SPAN_MM, "mm");
    }
}
