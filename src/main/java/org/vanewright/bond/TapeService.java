package org.vanewright.bond;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.tape.TapePiece;
import org.vanewright.engineering.tape.TapePlanner;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Plans the tape of a layout's bases. */
@Service
public class TapeService {
    private static final double GAP_MM = 1;
    private static final List<Double> USUAL_WIDTHS_MM = List.of(19.0, 25.0, 38.0, 50.0, 75.0, 100.0, 200.0);

    private final LayoutPlanner planner;

    TapeService(LayoutPlanner planner) {
        this.planner = planner;
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException naming {@code rollWidthMm} or {@code spares} */
    public LayoutTape of(Revision<LayoutDocument> layout, TapeQuery query) {
        Checks checks = new Checks();
        checks.optionalRange("rollWidthMm", query.rollWidthMm(), TapePlanner.NARROWEST_MM, TapePlanner.WIDEST_MM, "mm");
        int spares = query.spares() == null ? TapeQuery.USUAL_SPARES : query.spares();
        checks.require(
                spares >= 0 && spares <= TapeQuery.MOST_SPARES,
                "spares",
                spares,
                "a whole number from 0 to " + TapeQuery.MOST_SPARES);
        checks.throwIfAny();
        List<TapePiece> kinds = kinds(planner.plan(layout.content()), spares);
        double width = query.rollWidthMm() == null ? usualWidthMm(kinds) : query.rollWidthMm();
        return new LayoutTape(layout, spares, TapePlanner.plan(kinds, width, GAP_MM));
    }

    private static List<TapePiece> kinds(LayoutPlan plan, int spares) {
        Map<RevisionRef, Integer> counts = new LinkedHashMap<>();
        Map<RevisionRef, Revision<DeviceDocument>> devices = new LinkedHashMap<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            surface.placement().stations().forEach(s -> {
                Revision<DeviceDocument> device = plan.devices().get(s.row());
                devices.put(device.ref(), device);
                counts.merge(device.ref(), 1, Integer::sum);
            });
        }
        List<TapePiece> kinds = new ArrayList<>();
        devices.forEach((ref, device) -> kinds.add(new TapePiece(
                device.content().name(),
                DeviceDrawing.baseOutline(device.content().design()),
                counts.getOrDefault(ref, 0) + spares)));
        return List.copyOf(kinds);
    }

    private static double usualWidthMm(List<TapePiece> kinds) {
        double needed = kinds.stream()
                .map(k -> Bounds.of(Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, k.outline())))
                .mapToDouble(b -> Math.min(b.widthMm(), b.heightMm()))
                .max()
                .orElse(0);
        return USUAL_WIDTHS_MM.stream().filter(w -> w >= needed).findFirst().orElse(Math.ceil(needed));
    }
}
