package org.vanewright.engineering.unroll;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** Develops the skin of a panel into a flat sheet; see {@link FlatSkin} for the frame. */
public final class Unroller {
    private Unroller() {}

    /**
     * The whole skin of one side. Where it is not developable, lengths are kept along the end sections and all rulings.
     *
     * @throws InvalidInputException with field names of {@link WingPanel}
     */
    public static FlatSkin unroll(WingPanel panel, SurfaceSide side) {
        return unrolled(panel, side, null, ChordRange.WHOLE);
    }

    /**
     * The skin of one side for a row. Where it is not developable, lengths are kept along the row line and all rulings;
     * strain is reported over the region.
     *
     * @param line a row of constant chord fraction is a ruling, whose length is kept anyway
     * @throws InvalidInputException with field names of {@link WingPanel}, and {@code line.inner}, {@code line.outer},
     *     {@code region.from}, {@code region.to}
     */
    public static FlatSkin unroll(WingPanel panel, SurfaceSide side, RowLine line, ChordRange region) {
        return unrolled(panel, side, line, region);
    }

    private static FlatSkin unrolled(WingPanel panel, SurfaceSide side, @Nullable RowLine line, ChordRange region) {
        Checks checks = new Checks();
        List<FieldProblem> problems = PanelRules.problems(panel);
        problems.forEach(checks::add);
        checks.range("region.from", region.from(), 0, 1, "");
        checks.range("region.to", region.to(), 0, 1, "");
        checks.require(
                !(region.from() > region.to()), "region.to", region.to(), "not less than the front of the region");
        if (line != null && problems.isEmpty()) {
            double most = most(panel, side, line);
            checks.range("line.inner", line.inner(), 0, most, "");
            checks.range("line.outer", line.outer(), 0, most, "");
        }
        checks.throwIfAny();
        return panel.developable() ? new DevelopableSkin(panel, side) : new RuledSkin(panel, side, line, region);
    }

    /** A row at a fixed distance along the skin may end before the narrower end of the panel. */
    private static double most(WingPanel panel, SurfaceSide side, RowLine line) {
        return line.measure() == RowLine.Measure.CHORD_FRACTION
                ? 1
                : Math.max(
                        panel.innerChordMm() * panel.innerSection().arcLength(side),
                        panel.outerChordMm() * panel.outerSection().arcLength(side));
    }
}
