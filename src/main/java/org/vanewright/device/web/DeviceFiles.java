package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import org.springframework.context.MessageSource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;
import org.vanewright.engineering.solid.SolidLabel;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.solid.ThreeMfWriter;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.record.Revision;
import org.vanewright.record.web.RecordPaths;

/** Files of one device revision: solids to print and its drawing. */
@Controller
@RequestMapping("/devices/" + RecordPaths.SLUG)
class DeviceFiles {
    private static final MediaType STL = MediaType.parseMediaType("model/stl");
    private static final MediaType THREE_MF = MediaType.parseMediaType(ThreeMfWriter.MEDIA_TYPE);
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final DeviceService devices;
    private final DeviceSolids solids;
    private final Downloads downloads;
    private final MessageSource messages;

    DeviceFiles(DeviceService devices, DeviceSolids solids, Downloads downloads, MessageSource messages) {
        this.devices = devices;
        this.solids = solids;
        this.downloads = downloads;
        this.messages = messages;
    }

    @GetMapping("/solid.stl")
    ResponseEntity<byte[]> stl(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        return solid(slug, ".stl", STL, asked, request, (mesh, label) -> StlWriter.write(mesh, label));
    }

    @GetMapping("/solid.3mf")
    ResponseEntity<byte[]> threeMf(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        return solid(slug, ".3mf", THREE_MF, asked, request, (mesh, label) -> ThreeMfWriter.write(mesh, label));
    }

    @GetMapping("/plate.3mf")
    ResponseEntity<byte[]> plate(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        FileQuery query = FileQuery.of(asked);
        PlateQuery plates = PlateQuery.of(query);
        query.throwIfAny();
        Revision<DeviceDocument> revision = query.revisionOf(slug, devices);
        String key = "plate " + plates + " " + query.undersideRadiusMm();
        return downloads.send(request, key, query.fixedRevision(), revision, () -> plateFile(revision, query, plates));
    }

    private GeneratedFile plateFile(Revision<DeviceDocument> revision, FileQuery query, PlateQuery plates) {
        Mesh mesh = solids.exact(query.design(revision.content()));
        Plate plate = plates.plate(mesh);
        String name = revision.slug() + "-r" + revision.number() + "-plate-" + plate.number() + "-of-" + plate.plates()
                + ".3mf";
        return new GeneratedFile(
                name, THREE_MF, name, false, () -> ThreeMfWriter.write(mesh, DeviceSolids.label(revision), plate));
    }

    @GetMapping("/drawing.svg")
    ResponseEntity<byte[]> svg(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        return drawing(
                slug,
                ".svg",
                SVG,
                asked,
                request,
                r -> SvgWriter.write(DeviceSheet.drawing(r, caution())).getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping("/drawing.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        return drawing(slug, ".pdf", MediaType.APPLICATION_PDF, asked, request, r -> DeviceSheet.pdf(r, caution()));
    }

    private String caution() {
        return messages.getMessage("caution.short", null, Locale.ROOT);
    }

    private ResponseEntity<byte[]> solid(
            String slug,
            String suffix,
            MediaType type,
            HttpServletRequest asked,
            WebRequest request,
            SolidFormat format) {
        FileQuery query = FileQuery.of(asked);
        query.throwIfAny();
        Revision<DeviceDocument> revision = query.revisionOf(slug, devices);
        Supplier<byte[]> bytes = () -> {
            Mesh mesh = solids.exact(query.design(revision.content()));
            return format.write(mesh, DeviceSolids.label(revision));
        };
        return send(revision, suffix, type, query, "solid", request, bytes);
    }

    private ResponseEntity<byte[]> drawing(
            String slug,
            String suffix,
            MediaType type,
            HttpServletRequest asked,
            WebRequest request,
            Function<Revision<DeviceDocument>, byte[]> writer) {
        FileQuery query = FileQuery.of(asked);
        query.throwIfAny();
        Revision<DeviceDocument> revision = query.revisionOf(slug, devices);
        return send(revision, suffix, type, query, "drawing", request, () -> writer.apply(revision));
    }

    private ResponseEntity<byte[]> send(
            Revision<DeviceDocument> revision,
            String suffix,
            MediaType type,
            FileQuery query,
            String what,
            WebRequest request,
            Supplier<byte[]> bytes) {
        String key = String.join("\n", what, String.valueOf(query.undersideRadiusMm()), suffix);
        String name = revision.slug() + "-r" + revision.number() + suffix;
        boolean shown = type.equals(SVG) || type.equals(MediaType.APPLICATION_PDF);
        return downloads.send(
                request, new GeneratedFile(name, type, key, shown, bytes), query.fixedRevision(), revision);
    }

    @FunctionalInterface
    private interface SolidFormat {
        byte[] write(Mesh mesh, SolidLabel label);
    }
}
