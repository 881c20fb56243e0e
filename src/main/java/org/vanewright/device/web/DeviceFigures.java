package org.vanewright.device.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.view.SolidView;
import org.vanewright.platform.HeapShare;
import org.vanewright.record.Revision;

/** Pictures of published devices. A revision's picture never changes, so those asked for lately are kept. */
@Component
class DeviceFigures {
    private static final long KEPT_CHARACTERS = HeapShare.bytes(20);

    private final DeviceSolids solids;
    private final Cache<String, String> pictures = Caffeine.newBuilder()
            .maximumWeight(KEPT_CHARACTERS)
            .weigher((String key, String svg) -> svg.length())
            .build();

    DeviceFigures(DeviceSolids solids) {
        this.solids = solids;
    }

    /** A small still view for a list. */
    String thumbnail(Revision<DeviceDocument> revision) {
        return still(revision, "drawing still thumbnail", "still-" + revision.slug());
    }

    /** The still view of the page. */
    String still(Revision<DeviceDocument> revision) {
        return still(revision, "drawing still", "still");
    }

    private String still(Revision<DeviceDocument> revision, String cssClass, String id) {
        DeviceDocument device = revision.content();
        return pictures.get(
                revision.sha256() + " " + id,
                key -> stillSvg(solids.forPicture(device.design()), device.name(), cssClass, id));
    }

    /** The dimensioned drawing of the page. */
    String threeView(Revision<DeviceDocument> revision) {
        DeviceDocument device = revision.content();
        return pictures.get(revision.sha256() + " views", key -> threeViewSvg(device.design(), device.name(), "views"));
    }

    static String stillSvg(Mesh mesh, String name, String cssClass, String id) {
        Drawing drawing = SolidView.isometric(
                mesh, name, "The solid seen from ahead, from the left and from above; air comes from the left.");
        return SvgWriter.inline(drawing, cssClass, id);
    }

    static String threeViewSvg(DeviceDesign design, String name, String id) {
        return SvgWriter.inline(DeviceSheet.views(DeviceDrawing.threeView(design, name), name), "drawing views", id);
    }
}
