package org.vanewright.review.web;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.review.ReviewDesk;
import org.vanewright.review.Reviewing;

/** The queue, and one review. */
@Controller
class ReviewPages {
    private static final String ONE = "/review/{plural:[a-z-]+}/" + RecordPaths.SLUG + "/{number:[0-9]{1,6}}";

    private final ReviewDesk desk;
    private final Reviewing reviewing;

    ReviewPages(ReviewDesk desk, Reviewing reviewing) {
        this.desk = desk;
        this.reviewing = reviewing;
    }

    @GetMapping("/review")
    String queue(Model model) {
        model.addAttribute("items", desk.queue());
        return "review/queue";
    }

    @GetMapping(ONE)
    String one(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestParam(name = "field", required = false) @Nullable String field,
            @RequestAttribute("units") Units units,
            Model model) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("field", (Object) (field == null ? "" : field));
        return page(plural, new RevisionRef(slug, number), form, units, model);
    }

    private String page(String plural, RevisionRef ref, Form form, Units units, Model model) {
        model.addAttribute("r", desk.review(plural, ref, units));
        model.addAttribute("form", form);
        return "review/review";
    }

    /** Every step of a review; {@code step} is one of the buttons. */
    @PostMapping(ONE + "/{step:claim|take-over|release|checks|remark|return|publish|withdraw}")
    String step(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @PathVariable("step") String step,
            @RequestParam(name = "field", defaultValue = "") String field,
            @RequestParam(name = "text", defaultValue = "") String text,
            @RequestParam(name = "reason", defaultValue = "") String reason,
            @RequestAttribute("units") Units units,
            HttpServletResponse response,
            Model model) {
        RevisionRef ref = new RevisionRef(slug, number);
        try {
            return "redirect:" + take(step, plural, ref, field, text, reason);
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            Form form = new Form(UnitSystem.METRIC);
            form.put("field", (Object) field).put("text", (Object) text).put("reason", (Object) reason);
            form.refuse(e.problems());
            return page(plural, ref, form, units, model);
        } catch (RevisionConflictException e) {
            response.setStatus(HttpServletResponse.SC_CONFLICT);
            Form form = new Form(UnitSystem.METRIC);
            form.put("reason", (Object) (e.getMessage() + " Take its changes in and submit again."));
            return page(plural, ref, form, units, model);
        }
    }

    private String take(String step, String plural, RevisionRef ref, String field, String text, String reason) {
        String here = "/review/" + plural + "/" + ref.slug() + "/" + ref.revision();
        switch (step) {
            case "claim" -> reviewing.claim(plural, ref, false);
            case "take-over" -> reviewing.claim(plural, ref, true);
            case "release" -> reviewing.release(plural, ref);
            case "checks" -> reviewing.check(plural, ref);
            case "remark" -> reviewing.remark(plural, ref, field, text);
            case "return" -> {
                reviewing.giveBack(plural, ref, reason);
                return "/review";
            }
            case "publish" -> {
                reviewing.publish(plural, ref);
                return "/" + plural + "/" + ref.slug();
            }
            default -> {
                reviewing.withdraw(plural, ref, reason);
                return "/" + plural + "/" + ref.slug() + "/revisions/" + ref.revision();
            }
        }
        return here + (step.equals("remark") ? "#remarks" : "");
    }
}
