package org.vanewright.layout;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.gauge.Gauge;
import org.vanewright.engineering.gauge.GaugePlanner;
import org.vanewright.engineering.gauge.GaugeSettings;
import org.vanewright.engineering.gauge.GaugeSolid;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.record.Revision;

/** Placing gauges of layouts. What gauges a row needs depends on content and settings alone, so it is kept by them. */
@Component
public class LayoutGauges {
    private static final int KEPT = 200;

    private final LayoutPlanner planner;
    private final Cache<Key, List<RowGauges>> kept =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    /** @param content of the layout, which names exact revisions of all it uses */
    private record Key(String content, GaugeSettings settings) {}

    LayoutGauges(LayoutPlanner planner) {
        this.planner = planner;
    }

    /**
     * Gauges of every row, for each wing that carries it, in the layout's order.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException with fields of {@link GaugeSettings}
     */
    public List<RowGauges> of(Revision<LayoutDocument> layout, GaugeSettings settings) {
        return kept.get(new Key(layout.contentKey(), settings), key -> plan(planner.plan(layout.content()), settings));
    }

    private static List<RowGauges> plan(LayoutPlan plan, GaugeSettings settings) {
        List<RowGauges> all = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow row : surface.rows()) {
                for (Wing wing : Wing.values()) {
                    if (!surface.placement().on(wing, row.plan().index()).isEmpty()) {
                        all.add(GaugePlanner.plan(surface.shape(), surface.placement(), row, wing, settings));
                    }
                }
            }
        }
        all.sort(Comparator.comparingInt(RowGauges::row).thenComparing(RowGauges::wing));
        return List.copyOf(all);
    }

    /** The solid on the wing, frame as in {@link GaugeSolid}. */
    public Mesh solid(Revision<LayoutDocument> layout, RowGauges row, Gauge gauge) {
        Found found = found(layout, row);
        return GaugeSolid.of(found.surface().shape(), found.row(), row, gauge, layout.number());
    }

    /** The same without letters, for a picture. */
    public Mesh forPicture(Revision<LayoutDocument> layout, RowGauges row, Gauge gauge) {
        Found found = found(layout, row);
        return GaugeSolid.forPicture(found.surface().shape(), found.row(), row, gauge);
    }

    private record Found(LayoutPlan.SurfacePlan surface, TemplateRow row) {}

    private Found found(Revision<LayoutDocument> layout, RowGauges wanted) {
        for (LayoutPlan.SurfacePlan surface : planner.plan(layout.content()).surfaces()) {
            for (TemplateRow row : surface.rows()) {
                if (row.plan().index() == wanted.row()) {
                    return new Found(surface, row);
                }
            }
        }
        throw new IllegalArgumentException("row " + wanted.row() + " is not of this layout");
    }
}
