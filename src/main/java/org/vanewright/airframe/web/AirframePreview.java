package org.vanewright.airframe.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeRules;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.page.Units;

/** Draws whatever of an unfinished airframe can be drawn. */
final class AirframePreview {
    private AirframePreview() {}

    /** @param idPrefix starts every id within */
    static List<SurfaceView> surfaces(AirframeDocument typed, String idPrefix, Units units) {
        List<FieldProblem> problems = AirframeRules.check(typed);
        List<SurfaceView> drawn = new ArrayList<>();
        for (int i = 0; i < Math.min(typed.surfaces().size(), AirframeRules.MAX_SURFACES); i++) {
            String panels = "surfaces[" + i + "].panels";
            if (problems.stream()
                    .noneMatch(p -> p.field().equals("surfaces") || p.field().startsWith(panels))) {
                drawn.add(AirframeDrawings.surface(typed.surfaces().get(i), idPrefix + i, units));
            }
        }
        return drawn;
    }
}
