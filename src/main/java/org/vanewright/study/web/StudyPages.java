package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.LayerDrawings;
import org.vanewright.study.RowStudy;
import org.vanewright.study.Study;
import org.vanewright.study.StudyCondition;
import org.vanewright.study.StudyService;

/** The placement study of a layout. */
@Controller
class StudyPages {
    private static final List<Option> CONDITIONS = Option.of(StudyCondition.values(), StudyCondition::label);

    private final LayoutService layouts;
    private final StudyService studies;

    StudyPages(LayoutService layouts, StudyService studies) {
        this.layouts = layouts;
        this.studies = studies;
    }

    /**
     * A row with its pictures.
     *
     * @param sectionSvg section with its layer
     * @param magnification of the layer there
     * @param deviceSvg device in the layer
     * @param plots curves
     * @param mapSvg height over thickness by chord position and height
     */
    public record RowView(
            RowStudy study,
            String sectionSvg,
            int magnification,
            String deviceSvg,
            List<DrawnPlot> plots,
            String mapSvg) {}

    /** A surface with its pictures. */
    public record SurfaceView(Study.Surface surface, DrawnPlot span, List<RowView> rows) {}

    @GetMapping("/layouts/" + RecordPaths.SLUG + "/study")
    String study(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        StudyForm asked = StudyForm.of(request);
        RevisionRef ref = asked.ref(slug);
        Revision<LayoutDocument> layout = ref == null ? layouts.shown(slug) : layouts.exactly(ref);
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        if (asked.form().text("condition") == null) {
            asked.form().put("condition", StudyCondition.STALL);
        }
        model.addAttribute("form", asked.form());
        model.addAttribute("conditions", CONDITIONS);
        if (!asked.form().hasProblems()) {
            try {
                Study study = studies.of(layout, asked.query());
                model.addAttribute("study", study);
                model.addAttribute("surfaces", views(study));
            } catch (InvalidInputException e) {
                asked.form().refuse(e.problems());
            }
        }
        if (asked.form().hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("mapSteps", StudyPlots.MAP_STEPS);
        model.addAttribute("method", Study.METHOD);
        model.addAttribute("sources", Study.SOURCES);
        return "study/study";
    }

    private static List<SurfaceView> views(Study study) {
        List<SurfaceView> views = new ArrayList<>();
        for (int i = 0; i < study.surfaces().size(); i++) {
            Study.Surface surface = study.surfaces().get(i);
            views.add(new SurfaceView(
                    surface,
                    StudyPlots.span(surface, "span-" + i),
                    surface.rows().stream().map(StudyPages::view).toList()));
        }
        return views;
    }

    private static RowView view(RowStudy study) {
        String id = "row-" + study.row().index() + "-";
        LayerDrawings.Magnified section = LayerDrawings.section(study);
        return new RowView(
                study,
                SvgWriter.inline(section.drawing(), "drawing section", id + "section"),
                section.magnification(),
                SvgWriter.inline(LayerDrawings.device(study), "drawing section", id + "device"),
                List.of(
                        StudyPlots.speed(study, id + "speed"),
                        StudyPlots.shape(study, id + "shape"),
                        StudyPlots.separation(study, id + "separation")),
                StudyPlots.map(study, id + "map"));
    }
}
