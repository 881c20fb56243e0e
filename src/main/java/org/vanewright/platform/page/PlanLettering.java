package org.vanewright.platform.page;

import org.vanewright.engineering.wing.PlanDrawing;

/** Letters plan drawings in the reader's units. */
public record PlanLettering(Units units) implements PlanDrawing.Lettering {
    @Override
    public String length(double mm) {
        return units.length(mm);
    }

    @Override
    public double scaleBarMm() {
        return units.metric() ? 1000 : 3 * 304.8;
    }

    @Override
    public String scaleBar() {
        return units.span(scaleBarMm());
    }
}
