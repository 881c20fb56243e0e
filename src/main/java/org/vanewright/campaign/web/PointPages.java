package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointKind;
import org.vanewright.campaign.PointSource;
import org.vanewright.campaign.Recording;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.RequestPath;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.web.RecordPaths;

/** Recording test points, one at a time, on a phone as well as at a desk. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT)
class PointPages {
    private static final String POINT = "/points/{point:[A-Za-z0-9-]{1,40}}";

    private final CampaignService campaigns;
    private final Recording recording;

    PointPages(CampaignService campaigns, Recording recording) {
        this.campaigns = campaigns;
        this.recording = recording;
    }

    @GetMapping("/points")
    String points(@PathVariable("id") String id, Model model) {
        describe(campaigns.drafts().find(id), model);
        return "campaign/points";
    }

    @GetMapping("/record")
    ModelAndView blank(
            @PathVariable("id") String id,
            @RequestParam(name = "kind", required = false) @Nullable String kind,
            @RequestParam(name = "saved", required = false) @Nullable String saved,
            HttpServletRequest request,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        Optional<Form> kept = KeptForm.take(request, RequestPath.of(request));
        model.addAttribute("kept", kept.isPresent());
        model.addAttribute("saved", saved != null);
        Form form = kept.orElseGet(() -> next(draft.content(), kind(kind, draft.content()), units));
        return form(draft, form, "/record", HttpStatus.OK, model);
    }

    private static PointKind kind(@Nullable String asked, CampaignDocument campaign) {
        for (PointKind each : PointKind.values()) {
            if (each.name().equals(asked)) {
                return each;
            }
        }
        Measure measure = campaign.plan().measure();
        return measure == null ? PointKind.STALL : measure.kind();
    }

    private static Form next(CampaignDocument campaign, PointKind kind, Units units) {
        List<PointDocument> before = campaign.points(kind);
        List<String> keys = campaign.plan().keys();
        return PointForms.next(
                units.system(),
                kind,
                before.isEmpty() ? null : before.get(before.size() - 1),
                keys.isEmpty() ? "" : keys.get(0));
    }

    @PostMapping("/record")
    ModelAndView add(@PathVariable("id") String id, HttpServletRequest request, Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        Form form = Form.posted(request.getParameterMap());
        PointDocument point = PointForms.read(form, PointSource.TYPED);
        if (!form.hasProblems()) {
            try {
                recording.add(id, List.of(point));
                return SeeOther.to(path(id) + "/record?kind="
                        + Objects.requireNonNull(point.kind()).name() + "&saved");
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return form(draft, form, "/record", HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    @GetMapping(POINT)
    ModelAndView show(
            @PathVariable("id") String id,
            @PathVariable("point") String point,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        PointDocument found = found(draft, point);
        return form(draft, PointForms.of(found, units.system()), "/points/" + point, HttpStatus.OK, model);
    }

    @PostMapping(POINT)
    ModelAndView change(
            @PathVariable("id") String id,
            @PathVariable("point") String point,
            HttpServletRequest request,
            Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        PointDocument before = found(draft, point);
        Form form = Form.posted(request.getParameterMap()).put("id", point);
        PointDocument typed = PointForms.read(form, before.source() == null ? PointSource.TYPED : before.source());
        if (!form.hasProblems()) {
            try {
                recording.replace(id, typed);
                return SeeOther.to(path(id) + "/points");
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return form(draft, form, "/points/" + point, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    @PostMapping(POINT + "/remove")
    ModelAndView remove(@PathVariable("id") String id, @PathVariable("point") String point) {
        campaigns.drafts().requireAuthor();
        found(campaigns.drafts().find(id), point);
        recording.remove(id, point);
        return SeeOther.to(path(id) + "/points");
    }

    private static PointDocument found(Draft<CampaignDocument> draft, String point) {
        return draft.content().points().stream()
                .filter(p -> point.equals(p.id()))
                .findFirst()
                .orElseThrow(DraftNotFoundException::new);
    }

    private ModelAndView form(
            Draft<CampaignDocument> draft, Form form, String address, HttpStatus status, Model model) {
        describe(draft, model);
        model.addAttribute("form", form);
        model.addAttribute("address", path(draft.id()) + address);
        model.addAttribute("isNew", address.equals("/record"));
        model.addAttribute("kinds", List.of(PointKind.values()));
        model.addAttribute("configurations", configurations(draft.content()));
        model.addAttribute("massUnit", new Units(form.units()).massUnit());
        return new ModelAndView("campaign/record", status);
    }

    static List<Option> configurations(CampaignDocument campaign) {
        return campaign.plan().configurations().stream()
                .filter(c -> c.key() != null)
                .map(c -> new Option(
                        Objects.requireNonNull(c.key()), c.key() + (c.name() == null ? "" : ": " + c.name())))
                .toList();
    }

    private static void describe(Draft<CampaignDocument> draft, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("campaign", draft.content());
        model.addAttribute("base", path(draft.id()));
        model.addAttribute(
                "lines",
                draft.content().points().stream()
                        .map(p -> new Line(String.valueOf(p.id()), PointWords.line(p)))
                        .toList());
    }

    private static String path(String draftId) {
        return "/campaigns/drafts/" + draftId;
    }

    /** A recorded test point in the list. */
    public record Line(String id, String words) {}
}
