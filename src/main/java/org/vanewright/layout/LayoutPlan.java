package org.vanewright.layout;

import java.util.List;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingShape;
import org.vanewright.record.Revision;

/**
 * A layout worked out: every device placed on the surfaces it names.
 *
 * @param airframe exact revision it is for
 * @param devices exact revision for each row, by row index
 * @param surfaces those that carry devices, in order of first use
 */
public record LayoutPlan(
        Revision<AirframeDocument> airframe, List<Revision<DeviceDocument>> devices, List<SurfacePlan> surfaces) {
    /**
     * One surface with its devices.
     *
     * @param name as in the airframe
     * @param mirrored whether the other half mirrors it; a fin has no other half
     * @param shape of one half
     * @param rows on it
     * @param placement where each device sits; numbers count per surface and wing
     */
    public record SurfacePlan(
            String name, boolean mirrored, WingShape shape, List<TemplateRow> rows, Placement placement) {}
}
