package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.vane.GuidanceCheck.Verdict;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.study.Place;
import org.vanewright.study.RowStudy;
import org.vanewright.study.StationFlow;
import org.vanewright.study.Study;
import org.vanewright.study.StudyCondition;

/** What the templates of studies show, and how they answer while somebody moves a slider. */
final class StudyLooks {
    private StudyLooks() {}

    /**
     * A row, or a place without one, with its pictures.
     *
     * @param study of the device; null without one
     */
    public record RowView(
            Place place, StationFlow here, @Nullable RowStudy study, RowPictures pictures) {}

    /**
     * A surface with its pictures.
     *
     * @param speeds curves along the speed; empty where the airframe states too few speeds
     */
    public record SurfaceView(
            Study.Surface surface, DrawnPlot span, List<RowView> rows, List<Place> places, List<DrawnPlot> speeds) {}

    /** A part of the page is asked for by a script; its form stays as it is and takes the problems from the answer. */
    static boolean live(HttpServletRequest request) {
        return request.getHeader("HX-Request") != null;
    }

    /** A script would not show the answer to a bad request. */
    static void status(Form form, HttpServletRequest request, HttpServletResponse response) {
        if (form.isRefused() && !live(request)) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
    }

    /** The flight conditions that can be chosen, and whatever is chosen. */
    static List<Option> conditions(Form form, AirframeDocument.@Nullable Speeds speeds) {
        List<StudyCondition> possible = StudyCondition.possible(speeds);
        return form.withChosen("condition", Option.of(possible.toArray(StudyCondition[]::new), StudyCondition::label));
    }

    /**
     * What cannot be computed with, as a refusal of what was sent; or, where nothing that was sent is wrong, as figures
     * that are asked for since the airframe does not state them.
     */
    static void refuse(List<FieldProblem> problems, Form form, HttpServletRequest request, Model model) {
        boolean conditionChosen = form.text("condition") != null && request.getParameter("condition") != null;
        boolean missing = problems.stream()
                .allMatch(p -> form.text(p.field()) == null && (p.field().equals("massKg") || !conditionChosen));
        if (missing) {
            form.want(problems);
            model.addAttribute("missing", form.wanted());
        } else {
            form.refuse(problems);
        }
    }

    /** A row in a sentence, to be read beside the sliders. */
    static String said(RowStudy row) {
        Double ratio = row.proportions().heightToThickness();
        long met = row.guidance().stream()
                .filter(g -> g.verdict() == Verdict.INSIDE)
                .count();
        return String.format(
                Locale.ROOT,
                "%s: %.1f mm high at %.1f %% of the chord, %s; %d of %d recommendations met.",
                row.row().name(),
                row.row().vane().heightMm(),
                row.row().chordFraction() * 100,
                ratio == null
                        ? "behind separation"
                        : String.format(Locale.ROOT, "%.2f times the layer’s thickness", ratio),
                met,
                row.guidance().size());
    }
}
