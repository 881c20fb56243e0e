package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftRecording;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.web.RecordPaths;

/** Making grids of tufts, and recording what each tuft did at each speed. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT + "/tufts")
class TuftPages {
    static final String GRID = "/{grid:[A-Za-z0-9-]{1,40}}";
    private static final String SURVEY = GRID + "/surveys/{survey:[A-Za-z0-9-]{1,40}}";

    private final CampaignService campaigns;
    private final TuftRecording recording;
    private final TuftFormPages pages;

    TuftPages(CampaignService campaigns, TuftRecording recording, TuftFormPages pages) {
        this.campaigns = campaigns;
        this.recording = recording;
        this.pages = pages;
    }

    @GetMapping
    ModelAndView grids(@PathVariable("id") String id, @RequestAttribute("units") Units units, Model model) {
        Form form = TuftForms.blankGrid(units.system());
        return pages.grids(campaigns.drafts().find(id), form, units, HttpStatus.OK, model);
    }

    @PostMapping
    ModelAndView addGrid(
            @PathVariable("id") String id,
            @RequestAttribute("units") Units units,
            HttpServletRequest request,
            Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        Form form = Form.posted(request.getParameterMap());
        TuftGridDocument grid = TuftForms.readGrid(form);
        if (!form.hasProblems()) {
            try {
                recording.addGrid(id, grid);
                return SeeOther.to(path(id));
            } catch (InvalidInputException e) {
                TuftForms.refuseGrid(form, e.problems());
            }
        }
        return pages.grids(draft, form, units, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    @PostMapping(GRID + "/remove")
    ModelAndView removeGrid(@PathVariable("id") String id, @PathVariable("grid") String grid) {
        campaigns.drafts().requireAuthor();
        found(campaigns.drafts().find(id), grid);
        recording.removeGrid(id, grid);
        return SeeOther.to(path(id));
    }

    @GetMapping(GRID)
    ModelAndView blank(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        TuftGridDocument grid = found(draft, gridId);
        Form form = next(draft, grid, units);
        return pages.survey(draft, grid, form, units, HttpStatus.OK, model);
    }

    /** A survey to start from. */
    static Form next(Draft<CampaignDocument> draft, TuftGridDocument grid, Units units) {
        int before = grid.surveys().size();
        List<String> keys = draft.content().plan().keys();
        return TuftForms.blankSurvey(
                units.system(),
                grid,
                keys.isEmpty() ? "" : keys.get(0),
                before == 0 ? null : grid.surveys().get(before - 1));
    }

    @GetMapping(SURVEY)
    ModelAndView show(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @PathVariable("survey") String surveyId,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        TuftGridDocument grid = found(draft, gridId);
        Form form = TuftForms.of(found(grid, surveyId), grid, units.system());
        return pages.survey(draft, grid, form, units, HttpStatus.OK, model);
    }

    /** Saves a new survey, or a changed one over the one with its id. */
    @PostMapping(GRID)
    ModelAndView save(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @RequestAttribute("units") Units units,
            HttpServletRequest request,
            Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        TuftGridDocument grid = found(draft, gridId);
        Form form = Form.posted(request.getParameterMap());
        if (form.is("action", "steady")) {
            TuftForms.restSteady(form, grid);
            return pages.survey(draft, grid, form, units, HttpStatus.OK, model);
        }
        TuftSurveyDocument survey = TuftForms.readSurvey(form, grid);
        if (!form.hasProblems()) {
            try {
                recording.put(id, gridId, survey, pictures(request));
                return SeeOther.to(path(id));
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return pages.survey(draft, grid, form, units, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    private static List<byte[]> pictures(HttpServletRequest request) {
        List<byte[]> pictures = new ArrayList<>();
        if (request instanceof MultipartHttpServletRequest multipart) {
            for (MultipartFile file : multipart.getFiles("pictures")) {
                try {
                    if (!file.isEmpty()) {
                        pictures.add(file.getBytes());
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return pictures;
    }

    @PostMapping(SURVEY + "/remove")
    ModelAndView removeSurvey(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @PathVariable("survey") String surveyId) {
        campaigns.drafts().requireAuthor();
        found(found(campaigns.drafts().find(id), gridId), surveyId);
        recording.removeSurvey(id, gridId, surveyId);
        return SeeOther.to(path(id));
    }

    static TuftGridDocument found(Draft<CampaignDocument> draft, String grid) {
        return draft.content().tufts().stream()
                .filter(g -> grid.equals(g.id()))
                .findFirst()
                .orElseThrow(DraftNotFoundException::new);
    }

    private static TuftSurveyDocument found(TuftGridDocument grid, String survey) {
        return grid.surveys().stream()
                .filter(s -> survey.equals(s.id()))
                .findFirst()
                .orElseThrow(DraftNotFoundException::new);
    }

    private static String path(String draftId) {
        return "/campaigns/drafts/" + draftId + "/tufts";
    }
}
