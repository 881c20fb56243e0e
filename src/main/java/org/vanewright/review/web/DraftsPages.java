package org.vanewright.review.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.DraftConflictException;
import org.vanewright.record.Licence;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionRef;
import org.vanewright.review.DraftDesk;
import org.vanewright.review.Remarks;

/** One's own drafts, and their way into a review. */
@Controller
class DraftsPages {
    private static final String ONE = "/drafts/{id:[0-9a-f-]{36}}";

    private final DraftDesk desk;
    private final Remarks remarks;

    DraftsPages(DraftDesk desk, Remarks remarks) {
        this.desk = desk;
        this.remarks = remarks;
    }

    @GetMapping("/drafts")
    String mine(Model model) {
        model.addAttribute("items", desk.mine());
        return "review/drafts";
    }

    @GetMapping(ONE)
    String one(@PathVariable("id") String id, Model model) {
        DraftDesk.Prepared prepared = desk.prepare(id);
        model.addAttribute("d", prepared);
        model.addAttribute("returned", remarks.forDraft(id));
        model.addAttribute("candidates", desk.possibleCoauthors(prepared.draft()));
        return "review/draft";
    }

    @PostMapping(ONE + "/coauthors")
    String share(@PathVariable("id") String id, @RequestParam("person") String person) {
        desk.share(id, person);
        return "redirect:/drafts/" + id + "#coauthors";
    }

    @PostMapping(ONE + "/coauthors/remove")
    String unshare(@PathVariable("id") String id, @RequestParam("person") String person) {
        desk.unshare(id, person);
        return "redirect:/drafts/" + id + "#coauthors";
    }

    @PostMapping(ONE + "/take-back")
    String takeBack(@PathVariable("id") String id) {
        desk.takeBack(id);
        return "redirect:/drafts/" + id;
    }

    /** Asks before anything is given up. */
    @GetMapping(ONE + "/discard")
    String confirm(@PathVariable("id") String id, Model model) {
        model.addAttribute("d", desk.prepare(id));
        return "review/discard";
    }

    @PostMapping(ONE + "/discard")
    String discard(@PathVariable("id") String id) {
        desk.discard(id);
        return "redirect:/drafts";
    }

    @GetMapping(ONE + "/submit")
    String prepare(@PathVariable("id") String id, Model model) {
        DraftDesk.Prepared prepared = desk.prepare(id);
        if (!prepared.draft().state().isOpen()) {
            return "redirect:/drafts/" + id;
        }
        Form form = new Form(UnitSystem.METRIC);
        Licence suggested = prepared.suggested();
        form.put("licence", (Object) (suggested == null ? "" : suggested.name()));
        return submitPage(prepared, form, null, model);
    }

    @PostMapping(ONE + "/submit")
    String submit(
            @PathVariable("id") String id,
            @RequestParam("version") int version,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        DraftDesk.Prepared prepared = desk.prepare(id);
        Form form = Form.posted(request.getParameterMap());
        Licence licence = form.choice("licence", Licence.class);
        try {
            if (!form.hasProblems()) {
                RevisionRef ref = desk.submit(id, version, licence, form.text("summary"));
                return "redirect:/" + prepared.plural() + "/" + ref.slug() + "/revisions/" + ref.revision();
            }
        } catch (InvalidInputException e) {
            e.problems().stream()
                    .filter(p -> p.field().equals("licence") || p.field().equals("summary"))
                    .forEach(form::refuse);
        } catch (DraftConflictException e) {
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return submitPage(desk.prepare(id), form, String.valueOf(e.getMessage()), model);
        } catch (RevisionConflictException e) {
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            return submitPage(prepared, form, e.getMessage() + " Take its changes in with the editor first.", model);
        }
        response.setStatus(FormAction.REFUSED);
        return submitPage(prepared, form, null, model);
    }

    private String submitPage(DraftDesk.Prepared prepared, Form form, @Nullable String conflict, Model model) {
        model.addAttribute("d", prepared);
        model.addAttribute("form", form);
        model.addAttribute("licences", Licence.values());
        model.addAttribute("conflict", conflict);
        model.addAttribute("returned", remarks.forDraft(prepared.draft().id()));
        return "review/submit";
    }
}
