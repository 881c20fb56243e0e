package org.vanewright.airframe.web;

import java.util.List;
import org.vanewright.airframe.KeepOutDocument;
import org.vanewright.airframe.PanelDocument;
import org.vanewright.airframe.SurfaceDocument;

/**
 * A surface as its page shows it.
 *
 * @param label its name
 * @param kind what it is, in words
 * @param document what the record says
 * @param planSvg the plan drawing
 * @param sections each different section once
 * @param panels rows of the table
 * @param areaM2 of the described panels, both sides
 */
public record SurfaceView(
        String label,
        String kind,
        SurfaceDocument document,
        String planSvg,
        List<SectionView> sections,
        List<PanelRow> panels,
        double areaM2) {
    public List<KeepOutDocument> keepOuts() {
        return document.keepOuts();
    }

    /** A section with its drawing and figures. */
    public record SectionView(
            String designation, String svg, double thickness, double camber, double leadingEdgeRadius) {}

    /** A panel with its sections in words. */
    public record PanelRow(
            int number, PanelDocument document, String innerSection, String outerSection, boolean developable) {}
}
