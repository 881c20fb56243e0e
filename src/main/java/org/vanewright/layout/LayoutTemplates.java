package org.vanewright.layout;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.PlacementTemplate;
import org.vanewright.engineering.template.TemplateLabel;
import org.vanewright.engineering.template.TemplatePiece;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.record.Revision;

/** The template pieces of a layout. */
public final class LayoutTemplates {
    /** Stands for a layout that is not published yet. */
    private static final String NO_HASH = "0".repeat(64);

    private LayoutTemplates() {}

    /** How much of a row a piece shows. */
    public enum Pattern {
        /** Every device at its place. */
        FULL,
        /** For rows on constant-chord panels: a short strip that is slid along. */
        STRIP
    }

    /** Every piece of one wing; for {@link Pattern#STRIP} only rows that have one. */
    public static List<TemplatePiece> pieces(
            LayoutPlan plan, Revision<LayoutDocument> layout, Wing wing, Pattern pattern) {
        List<TemplatePiece> pieces = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            PlacementTemplate template = template(surface, layout.printedName(), layout.number(), layout.sha256());
            pieces.addAll(
                    pattern == Pattern.STRIP
                            ? template.strips(surface.rows(), wing)
                            : template.pieces(surface.rows(), wing));
        }
        return pieces;
    }

    /** Largest strain of a row's pieces on one wing; 0 where the skin unrolls exactly. */
    public static double maximumStrain(LayoutPlan.SurfacePlan surface, TemplateRow row, Wing wing) {
        return unpublished(surface).maximumStrain(row, wing);
    }

    /** Whether any row of the surface has a repeating strip. */
    public static boolean hasStrips(LayoutPlan.SurfacePlan surface) {
        return PlacementTemplate.hasStrips(surface.shape(), surface.placement(), surface.rows());
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException when a template cannot be drawn */
    public static void requireDrawable(LayoutPlan plan) {
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            PlacementTemplate template = unpublished(surface);
            for (Wing wing : Wing.values()) {
                template.pieces(surface.rows(), wing);
            }
        }
    }

    private static PlacementTemplate unpublished(LayoutPlan.SurfacePlan surface) {
        return template(surface, "", 1, NO_HASH);
    }

    private static PlacementTemplate template(
            LayoutPlan.SurfacePlan surface, String name, int revision, String sha256) {
        TemplateLabel label = new TemplateLabel(name, revision, sha256, surface.name(), surface.mirrored());
        return new PlacementTemplate(surface.shape(), surface.placement(), label);
    }
}
