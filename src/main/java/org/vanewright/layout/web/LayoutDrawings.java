package org.vanewright.layout.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.vanewright.airframe.SurfaceDrawings;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.PitchDrawing;
import org.vanewright.engineering.template.PlanWithDevices;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.layout.BaseFit;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutTemplates;
import org.vanewright.layout.RowDocument;
import org.vanewright.layout.StationRow;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Revision;

/** Draws a layout that has been worked out. */
final class LayoutDrawings {
    private LayoutDrawings() {}

    static LayoutView view(Revision<LayoutDocument> layout, LayoutPlan plan, Units units) {
        List<StationRow> stations = StationRow.of(layout.content(), plan);
        List<LayoutView.RowView> rows = new ArrayList<>();
        List<LayoutView.GivenWay> givenWay = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow row : surface.rows()) {
                rows.add(row(layout, plan, surface, row, stations));
            }
            surface.placement()
                    .notes()
                    .forEach(n -> givenWay.add(new LayoutView.GivenWay(
                            Objects.requireNonNullElse(
                                    layout.content().rows().get(n.row()).name(), ""),
                            n)));
        }
        rows.sort(Comparator.comparingInt(LayoutView.RowView::number));
        boolean strips = plan.surfaces().stream().anyMatch(LayoutTemplates::hasStrips);
        return new LayoutView(pictures(layout, plan, units), rows, stations, givenWay, strips);
    }

    private static List<LayoutView.SurfacePicture> pictures(
            Revision<LayoutDocument> layout, LayoutPlan plan, Units units) {
        List<LayoutView.SurfacePicture> pictures = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            pictures.add(new LayoutView.SurfacePicture(
                    surface.name(),
                    LayoutPictures.plan(layout, pictures.size() + 1, units),
                    surface.name() + " in plan, with "
                            + surface.placement().stations().size() + " devices, both sides together"));
        }
        return pictures;
    }

    /** @param idPrefix starts every id within */
    static List<LayoutView.SurfaceView> surfaces(LayoutPlan plan, Units units, String idPrefix) {
        List<LayoutView.SurfaceView> views = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            views.add(new LayoutView.SurfaceView(surface.name(), surface(plan, views.size(), units, idPrefix)));
        }
        return views;
    }

    /** @param at counts the plan's surfaces from 0 */
    static String surface(LayoutPlan plan, int at, Units units, String idPrefix) {
        LayoutPlan.SurfacePlan surface = plan.surfaces().get(at);
        Drawing drawing =
                SurfaceDrawings.plan(SurfaceDrawings.named(plan.airframe().content(), surface.name()), units);
        return inline(withDevices(drawing, surface), "drawing plan", idPrefix + "plan-" + at);
    }

    /** The first surface without lettering, for a list. */
    static String thumbnail(LayoutPlan plan, String id, Units units) {
        LayoutPlan.SurfacePlan surface = plan.surfaces().get(0);
        Drawing drawing = SurfaceDrawings.thumbnail(
                plan.airframe().content().name() + " with its devices",
                SurfaceDrawings.named(plan.airframe().content(), surface.name()),
                units);
        return inline(withDevices(drawing, surface), "drawing thumbnail", id);
    }

    /** Close-ups by row, in the layout's order. */
    static List<String> closeUps(LayoutPlan plan, String idPrefix) {
        List<String> closeUps = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow row : surface.rows()) {
                closeUps.add(closeUp(surface, row, idPrefix));
            }
        }
        return closeUps;
    }

    /** @param row counts the layout's rows from 0 */
    static String closeUp(LayoutPlan plan, int row) {
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow each : surface.rows()) {
                if (each.plan().index() == row) {
                    return closeUp(surface, each, "");
                }
            }
        }
        throw new IllegalArgumentException("no such row: " + row);
    }

    private static Drawing withDevices(Drawing drawing, LayoutPlan.SurfacePlan surface) {
        return PlanWithDevices.add(
                drawing, surface.shape().panels(), surface.mirrored(), surface.rows(), surface.placement());
    }

    private static LayoutView.RowView row(
            Revision<LayoutDocument> layout,
            LayoutPlan plan,
            LayoutPlan.SurfacePlan surface,
            TemplateRow row,
            List<StationRow> stations) {
        int number = row.plan().index() + 1;
        RowDocument document = layout.content().rows().get(row.plan().index());
        List<StationRow> own = stations.stream().filter(s -> s.row() == number).toList();
        Wing shown = own.get(0).wing();
        List<StationRow> oneWing = own.stream().filter(s -> s.wing() == shown).toList();
        return new LayoutView.RowView(
                number,
                document,
                plan.devices().get(row.plan().index()),
                LayoutPictures.closeUp(layout, number),
                PitchDrawing.words(surface.placement(), row),
                count(own, Wing.LEFT),
                count(own, Wing.RIGHT),
                oneWing.get(0),
                oneWing.get(oneWing.size() - 1),
                BaseFit.radiusMm(oneWing.get(oneWing.size() / 2)),
                LayoutTemplates.maximumStrain(surface, row, shown));
    }

    private static int count(List<StationRow> stations, Wing wing) {
        return (int) stations.stream().filter(s -> s.wing() == wing).count();
    }

    private static String closeUp(LayoutPlan.SurfacePlan surface, TemplateRow row, String idPrefix) {
        return inline(
                PitchDrawing.of(surface.shape(), surface.placement(), row),
                "drawing close-up",
                idPrefix + "row-" + row.plan().index());
    }

    private static String inline(Drawing drawing, String css, String id) {
        return SvgWriter.inline(drawing, css, id);
    }
}
