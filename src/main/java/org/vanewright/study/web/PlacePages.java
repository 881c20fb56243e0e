package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.Surfaces;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.Place;
import org.vanewright.study.PlaceQuery;
import org.vanewright.study.PlaceStudy;
import org.vanewright.study.RowStudy;
import org.vanewright.study.Study;
import org.vanewright.study.StudyCondition;
import org.vanewright.study.StudyService;

/** The study of a place on a wing that has no layout. */
@Controller
class PlacePages {
    private static final Pattern PART = Pattern.compile("([0-9]{1,3})\\.([0-9]{1,3})");
    private static final List<Option> SIDES =
            List.of(new Option("UPPER", "Upper side"), new Option("LOWER", "Lower side"));

    private final AirframeService airframes;
    private final StudyService studies;
    private final StudyPictures pictures;

    PlacePages(AirframeService airframes, StudyService studies, StudyPictures pictures) {
        this.airframes = airframes;
        this.studies = studies;
        this.pictures = pictures;
    }

    @GetMapping("/airframes/" + RecordPaths.SLUG + "/study")
    String study(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        StudyForm asked = StudyForm.of(request);
        RevisionRef ref = asked.ref(slug);
        Revision<AirframeDocument> airframe = ref == null ? airframes.shown(slug) : airframes.exactly(ref);
        Form form = asked.form();
        PlaceQuery query = query(form, asked);
        fill(form, airframe.content());
        model.addAttribute("revision", airframe);
        model.addAttribute("airframe", airframe.content());
        model.addAttribute("parts", parts(airframe.content()));
        model.addAttribute("sides", SIDES);
        model.addAttribute("form", form);
        model.addAttribute("sliders", Map.of());
        model.addAttribute("live", StudyLooks.live(request));
        if (!form.hasProblems()) {
            try {
                show(studies.at(airframe, query), model);
            } catch (InvalidInputException e) {
                StudyLooks.refuse(e.problems(), form, request, model);
            }
        }
        model.addAttribute(
                "conditions", StudyLooks.conditions(form, airframe.content().speeds()));
        StudyLooks.status(form, request, response);
        model.addAttribute("method", Study.METHOD);
        model.addAttribute("sources", Study.SOURCES);
        return "study/place";
    }

    private static PlaceQuery query(Form form, StudyForm asked) {
        String part = form.text("part");
        Matcher read = PART.matcher(part == null ? "0.0" : part);
        boolean known = read.matches();
        SurfaceSide side = form.text("side") == null ? SurfaceSide.UPPER : form.choice("side", SurfaceSide.class);
        Checks checks = new Checks();
        checks.require(known, "part", part, "a surface and panel of the airframe");
        checks.require(side != null, "side", form.text("side"), "UPPER or LOWER");
        form.refuse(checks.problems());
        return new PlaceQuery(
                known ? Integer.parseInt(read.group(1)) : 0,
                known ? Integer.parseInt(read.group(2)) : 0,
                form.number("stationMm"),
                side == null ? SurfaceSide.UPPER : side,
                asked.query());
    }

    private static void fill(Form form, AirframeDocument airframe) {
        put(form, "condition", StudyCondition.usual(airframe.speeds()).name());
        put(form, "part", "0.0");
        put(form, "side", SurfaceSide.UPPER.name());
    }

    private static void put(Form form, String field, String value) {
        if (form.text(field) == null) {
            form.put(field, (Object) value);
        }
    }

    private static List<Option> parts(AirframeDocument airframe) {
        List<Option> parts = new ArrayList<>();
        for (int s = 0; s < airframe.surfaces().size(); s++) {
            SurfaceDocument surface = airframe.surfaces().get(s);
            List<Double> stations = Surfaces.stationsMm(surface);
            for (int p = 0; p < surface.panels().size(); p++) {
                parts.add(new Option(
                        s + "." + p,
                        String.format(
                                Locale.ROOT,
                                "%s, %.0f to %.0f mm",
                                surface.label(),
                                stations.get(p),
                                stations.get(p + 1))));
            }
        }
        return parts;
    }

    private void show(PlaceStudy study, Model model) {
        Study.Surface surface = study.surface();
        Place place = study.place();
        RowStudy device = study.device();
        StudyPictures.Wing wing = new StudyPictures.Wing(study.airframe().sha256(), surface.name(), study.state());
        List<Place> places = List.of(place);
        RowPictures drawn = pictures.row(wing, study.here(), place, device);
        model.addAttribute("study", study);
        model.addAttribute("layer", study.layer());
        model.addAttribute(
                "surface",
                new StudyLooks.SurfaceView(
                        surface,
                        pictures.span(wing, surface.lift(), places, "span"),
                        List.of(new StudyLooks.RowView(place, study.here(), device, drawn)),
                        places,
                        pictures.alongSpeed(wing, surface.alongSpeed(), places, "speed-")));
        model.addAttribute("sliders", sliders(study, device));
        model.addAttribute("said", device == null ? said(study) : StudyLooks.said(device));
    }

    private static Map<String, Slider> sliders(PlaceStudy study, @Nullable RowStudy device) {
        Map<String, Slider> sliders =
                new HashMap<>(Slider.ofFlight(study.airframe().content(), study.state()));
        sliders.putAll(Slider.ofRow(study.place(), device == null ? null : device.row()));
        return sliders;
    }

    private static String said(PlaceStudy study) {
        Double thickness = study.layer().thicknessMm();
        return thickness == null
                ? "Behind separation, where the method says nothing of the layer."
                : String.format(
                        Locale.ROOT,
                        "At %.1f %% of the chord the layer is %.1f mm thick.",
                        study.place().chordFraction() * 100,
                        thickness);
    }
}
