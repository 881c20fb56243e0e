package org.vanewright.device.web;

import java.util.function.Function;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Drawings of devices that pages and lists load by themselves. */
@Controller
class DevicePictures {
    /** The still view of the page. */
    static final String STILL = "/still.svg";

    /** The dimensioned drawing of the page. */
    static final String VIEWS = "/views.svg";

    private static final String AT = "/devices/" + RecordPaths.REVISION;

    private final DeviceService devices;
    private final DeviceFigures figures;
    private final RevisionDrawings drawings;

    DevicePictures(DeviceService devices, DeviceFigures figures, RevisionDrawings drawings) {
        this.devices = devices;
        this.figures = figures;
        this.drawings = drawings;
    }

    /** A small still view for lists. */
    @GetMapping(AT + RevisionDrawings.THUMBNAIL)
    ResponseEntity<byte[]> thumbnail(
            @PathVariable("slug") String slug, @PathVariable("number") int number, WebRequest request) {
        return send(request, slug, number, RevisionDrawings.THUMBNAIL, figures::thumbnail);
    }

    /** The still view of the page. */
    @GetMapping(AT + STILL)
    ResponseEntity<byte[]> still(
            @PathVariable("slug") String slug, @PathVariable("number") int number, WebRequest request) {
        return send(request, slug, number, STILL, figures::still);
    }

    /** Three views with dimensions. */
    @GetMapping(AT + VIEWS)
    ResponseEntity<byte[]> views(
            @PathVariable("slug") String slug, @PathVariable("number") int number, WebRequest request) {
        return send(request, slug, number, VIEWS, figures::threeView);
    }

    private ResponseEntity<byte[]> send(
            WebRequest request, String slug, int number, String file, Function<Revision<DeviceDocument>, String> svg) {
        Revision<DeviceDocument> revision = devices.exactly(new RevisionRef(slug, number));
        return drawings.send(request, revision, file, () -> svg.apply(revision));
    }
}
