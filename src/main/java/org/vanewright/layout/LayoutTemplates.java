package org.vanewright.layout;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.PlacementTemplate;
import org.vanewright.engineering.template.TemplateLabel;
import org.vanewright.engineering.template.TemplatePiece;
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
        return pieces(plan, layout.content().name(), layout.number(), layout.sha256(), wing, pattern);
    }

    /** Whether any row of the surface has a repeating strip. */
    public static boolean hasStrips(LayoutPlan.SurfacePlan surface) {
        return PlacementTemplate.hasStrips(surface.shape(), surface.placement(), surface.rows());
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException when a template cannot be drawn */
    public static void requireDrawable(LayoutPlan plan) {
        for (Wing wing : Wing.values()) {
            pieces(plan, "", 1, NO_HASH, wing, Pattern.FULL);
        }
    }

    private static List<TemplatePiece> pieces(
            LayoutPlan plan, String name, int revision, String sha256, Wing wing, Pattern pattern) {
        List<TemplatePiece> pieces = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            TemplateLabel label = new TemplateLabel(name, revision, sha256, surface.name(), surface.mirrored());
            PlacementTemplate template = new PlacementTemplate(surface.shape(), surface.placement(), label);
            pieces.addAll(
                    pattern == Pattern.STRIP
                            ? template.strips(surface.rows(), wing)
                            : template.pieces(surface.rows(), wing));
        }
        return pieces;
    }
}
