package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.HandlingDocument;
import org.vanewright.campaign.Recording;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.web.RecordPaths;

/** Rating how the aircraft handles, by the questions of the Cooper-Harper scale. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT + "/handling")
class HandlingPages {
    private final CampaignService campaigns;
    private final Recording recording;

    HandlingPages(CampaignService campaigns, Recording recording) {
        this.campaigns = campaigns;
        this.recording = recording;
    }

    @GetMapping
    ModelAndView ask(@PathVariable("id") String id, @RequestAttribute("units") Units units, Model model) {
        return page(campaigns.drafts().find(id), new Form(units.system()), HttpStatus.OK, model);
    }

    @PostMapping
    ModelAndView rate(@PathVariable("id") String id, HttpServletRequest request, Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        Form form = Form.posted(request.getParameterMap());
        HandlingDocument rating = new HandlingDocument(
                form.text("configuration"), form.text("task"), form.integer("rating"), form.text("remark"));
        FieldProblem contradiction = CooperHarper.contradiction(form, rating.rating());
        if (contradiction != null) {
            form.refuse(contradiction);
        }
        if (!form.hasProblems()) {
            try {
                recording.rate(id, rating);
                return SeeOther.to("/campaigns/drafts/" + id + "/handling");
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return page(draft, form, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    @PostMapping("/remove")
    ModelAndView remove(
            @PathVariable("id") String id, @RequestParam(name = "number", required = false) @Nullable String number) {
        campaigns.drafts().requireAuthor();
        campaigns.drafts().find(id);
        boolean whole = number != null && number.matches("[0-9]{1,3}");
        if (!whole) {
            throw new InvalidInputException(
                    new FieldProblem("number", String.valueOf(number), "the number of a rating, counted from 0"));
        }
        recording.unrate(id, Integer.parseInt(number));
        return SeeOther.to("/campaigns/drafts/" + id + "/handling");
    }

    private static ModelAndView page(Draft<CampaignDocument> draft, Form form, HttpStatus status, Model model) {
        List<String> lines = new ArrayList<>();
        draft.content().handling().forEach(h -> lines.add(PointWords.line(h)));
        model.addAttribute("draft", draft);
        model.addAttribute("campaign", draft.content());
        model.addAttribute("base", "/campaigns/drafts/" + draft.id());
        model.addAttribute("form", form);
        model.addAttribute("configurations", PointPages.configurations(draft.content()));
        model.addAttribute("ratings", CooperHarper.RATINGS);
        model.addAttribute("answers", CooperHarper.ANSWERS);
        model.addAttribute("lines", lines);
        return new ModelAndView("campaign/handling", status);
    }
}
