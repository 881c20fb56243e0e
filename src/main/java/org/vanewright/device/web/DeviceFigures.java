package org.vanewright.device.web;

import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.view.SolidView;
import org.vanewright.record.Revision;

/** Pictures of devices. */
@Component
class DeviceFigures {
    private static final String SEEN =
            "The solid seen from ahead, from the left and from above; air comes from the left.";

    private final DeviceSolids solids;

    DeviceFigures(DeviceSolids solids) {
        this.solids = solids;
    }

    /** What the still view shows, in words. */
    static String stillWords(DeviceDocument device) {
        return device.name() + ". " + SEEN;
    }

    /** What the dimensioned drawing shows, in words. */
    static String threeViewWords(DeviceDocument device) {
        return device.name() + " from above, from the left side and from ahead, with its dimensions";
    }

    /** A small still view for a list. */
    String thumbnail(Revision<DeviceDocument> revision) {
        return still(revision, "drawing still thumbnail");
    }

    /** The still view of the page. */
    String still(Revision<DeviceDocument> revision) {
        return still(revision, "drawing still");
    }

    private String still(Revision<DeviceDocument> revision, String cssClass) {
        DeviceDocument device = revision.content();
        return stillSvg(solids.forPicture(device.design()), device.name(), cssClass, "still");
    }

    /** The dimensioned drawing of the page. */
    String threeView(Revision<DeviceDocument> revision) {
        return threeViewSvg(revision.content().design(), revision.content().name(), "views");
    }

    static String stillSvg(Mesh mesh, String name, String cssClass, String id) {
        Drawing drawing = SolidView.isometric(mesh, name, SEEN);
        return SvgWriter.inline(drawing, cssClass, id);
    }

    static String threeViewSvg(DeviceDesign design, String name, String id) {
        return SvgWriter.inline(DeviceSheet.views(DeviceDrawing.threeView(design, name), name), "drawing views", id);
    }
}
