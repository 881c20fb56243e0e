package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.Place;
import org.vanewright.study.RowStudy;
import org.vanewright.study.RowTrial;
import org.vanewright.study.Study;
import org.vanewright.study.StudyCondition;
import org.vanewright.study.StudyService;

/** The placement study of a layout. */
@Controller
class StudyPages {
    private final LayoutService layouts;
    private final AirframeService airframes;
    private final StudyService studies;
    private final StudyPictures pictures;

    StudyPages(LayoutService layouts, AirframeService airframes, StudyService studies, StudyPictures pictures) {
        this.layouts = layouts;
        this.airframes = airframes;
        this.studies = studies;
        this.pictures = pictures;
    }

    @GetMapping("/layouts/" + RecordPaths.SLUG + "/study")
    String study(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        StudyForm asked = StudyForm.of(request);
        RevisionRef ref = asked.ref(slug);
        Revision<LayoutDocument> layout = ref == null ? layouts.shown(slug) : layouts.exactly(ref);
        Form form = asked.form();
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("rows", rows(layout.content()));
        if (form.text("row") == null) {
            form.put("row", (Object) "0");
        }
        model.addAttribute("form", form);
        model.addAttribute("sliders", Map.of());
        model.addAttribute("live", StudyLooks.live(request));
        if (!form.hasProblems()) {
            try {
                show(studies.of(layout, asked.query()), asked, model);
            } catch (InvalidInputException e) {
                StudyLooks.refuse(e.problems(), form, request, model);
            }
        }
        AirframeDocument.Speeds speeds = airframes
                .find(layout.content().airframe())
                .map(airframe -> airframe.content().speeds())
                .orElse(null);
        if (form.text("condition") == null) {
            form.put("condition", StudyCondition.usual(speeds));
        }
        model.addAttribute("conditions", StudyLooks.conditions(form, speeds));
        StudyLooks.status(form, request, response);
        model.addAttribute("method", Study.METHOD);
        model.addAttribute("sources", Study.SOURCES);
        return "study/study";
    }

    private void show(Study study, StudyForm asked, Model model) {
        model.addAttribute("study", study);
        model.addAttribute("surfaces", views(study));
        Map<String, Slider> sliders =
                new HashMap<>(Slider.ofFlight(study.airframe().content(), study.state()));
        int tried = asked.query().row() == null ? 0 : asked.query().row();
        study.surfaces().stream()
                .flatMap(s -> s.rows().stream())
                .filter(r -> r.row().index() == tried)
                .findFirst()
                .ifPresent(row -> {
                    sliders.putAll(Slider.ofRow(row.row().place(), row.row()));
                    model.addAttribute("said", StudyLooks.said(row));
                });
        model.addAttribute("sliders", sliders);
    }

    /** Rows by their place in the layout, as people count and call them. */
    static List<Option> rows(LayoutDocument layout) {
        List<Option> rows = new ArrayList<>();
        for (int i = 0; i < layout.rows().size(); i++) {
            rows.add(new Option(
                    String.valueOf(i), (i + 1) + ": " + layout.rows().get(i).name()));
        }
        return rows;
    }

    private List<StudyLooks.SurfaceView> views(Study study) {
        List<StudyLooks.SurfaceView> views = new ArrayList<>();
        for (int i = 0; i < study.surfaces().size(); i++) {
            Study.Surface surface = study.surfaces().get(i);
            StudyPictures.Wing wing = new StudyPictures.Wing(study.airframe().sha256(), surface.name(), study.state());
            List<Place> places = surface.rows().stream()
                    .map(RowStudy::row)
                    .map(RowTrial::place)
                    .toList();
            views.add(new StudyLooks.SurfaceView(
                    surface,
                    pictures.span(wing, surface.lift(), places, "span-" + i),
                    surface.rows().stream().map(r -> view(wing, r)).toList(),
                    places,
                    pictures.alongSpeed(wing, surface.alongSpeed(), places, "speed-" + i + "-")));
        }
        return views;
    }

    private StudyLooks.RowView view(StudyPictures.Wing wing, RowStudy row) {
        Place place = row.row().place();
        return new StudyLooks.RowView(place, row.here(), row, pictures.row(wing, row.here(), place, row));
    }
}
