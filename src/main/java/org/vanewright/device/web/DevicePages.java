package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading devices. */
@Controller
class DevicePages {
    private static final int PER_PAGE = 12;

    private final DeviceService devices;
    private final DeviceSolids solids;

    DevicePages(DeviceService devices, DeviceSolids solids) {
        this.devices = devices;
        this.solids = solids;
    }

    /**
     * A device in the list.
     *
     * @param picture address of a small still view
     * @param summary what it is, in a line
     */
    public record Card(Revision<DeviceDocument> revision, String picture, String summary) {}

    @GetMapping("/devices")
    String browse(
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestAttribute("units") Units units,
            Model model) {
        RecordPage<Revision<DeviceDocument>> page = devices.list(cursor, PER_PAGE);
        model.addAttribute(
                "cards",
                page.items().stream()
                        .map(r -> new Card(
                                r,
                                RevisionDrawings.thumbnail("devices", r),
                                DeviceParameters.summary(r.content(), units)))
                        .toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "device/browse";
    }

    @GetMapping("/devices/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        return show(devices.shown(slug), units, model);
    }

    @GetMapping("/devices/" + RecordPaths.REVISION)
    String revision(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestAttribute("units") Units units,
            Model model) {
        return show(devices.exactly(new RevisionRef(slug, number)), units, model);
    }

    /** How many pieces go on which bed, with a file for every plate. */
    @GetMapping("/devices/" + RecordPaths.SLUG + "/plates")
    String plates(
            @PathVariable("slug") String slug, HttpServletRequest asked, HttpServletResponse response, Model model) {
        FileQuery query = FileQuery.of(asked);
        PlateQuery plates = PlateQuery.of(query);
        Revision<DeviceDocument> revision =
                query.form().error("revision") == null ? query.revisionOf(slug, devices) : devices.published(slug);
        Form form = withDefaults(query.form(), plates);
        List<PlateView> views = List.of();
        if (!form.hasProblems()) {
            try {
                Mesh mesh = solids.exact(query.design(revision.content()));
                views = PlateView.of(plates.plates(mesh), mesh);
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("revision", revision);
        model.addAttribute("device", revision.content());
        model.addAttribute("form", form);
        model.addAttribute("stands", DeviceParameters.stands(revision.content()));
        model.addAttribute("asked", plates);
        model.addAttribute("undersideRadiusMm", query.undersideRadiusMm());
        model.addAttribute("plates", views);
        return "device/plates";
    }

    private static Form withDefaults(Form form, PlateQuery asked) {
        return form.ifEmpty("bedWidthMm", asked.bedWidthMm())
                .ifEmpty("bedDepthMm", asked.bedDepthMm())
                .ifEmpty("count", asked.count())
                .ifEmpty("spacingMm", asked.spacingMm());
    }

    private String show(Revision<DeviceDocument> revision, Units units, Model model) {
        DeviceDocument device = revision.content();
        Mesh mesh = solids.exact(device.design());
        model.addAttribute("revision", revision);
        model.addAttribute("device", device);
        model.addAttribute("stands", DeviceParameters.stands(device));
        model.addAttribute("summary", DeviceParameters.summary(device, units));
        model.addAttribute("still", RevisionDrawings.address("devices", revision, DevicePictures.STILL));
        model.addAttribute("stillWords", DeviceFigures.stillWords(device));
        model.addAttribute("views", RevisionDrawings.address("devices", revision, DevicePictures.VIEWS));
        model.addAttribute("viewsWords", DeviceFigures.threeViewWords(device));
        model.addAttribute("parameters", DeviceParameters.of(device, units));
        model.addAttribute("mass", MassView.of(mesh, device.densityKgM3()));
        model.addAttribute("plate", DeviceForms.plate());
        model.addAttribute("history", devices.listedHistory(revision.slug()));
        return "device/show";
    }
}
