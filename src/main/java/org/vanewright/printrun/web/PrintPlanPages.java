package org.vanewright.printrun.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.printing.PrintRate;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.printrun.PrintPlan;
import org.vanewright.printrun.PrintPlanQuery;
import org.vanewright.printrun.PrintPlanner;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** What has to be printed for a layout. */
@Controller
class PrintPlanPages {
    private final LayoutService layouts;
    private final PrintPlanner planner;
    private final RunRates rates;

    PrintPlanPages(LayoutService layouts, PrintPlanner planner, RunRates rates) {
        this.layouts = layouts;
        this.planner = planner;
        this.rates = rates;
    }

    @GetMapping("/layouts/" + RecordPaths.SLUG + "/print-plan")
    String plan(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Revision<LayoutDocument> layout =
                revision == null ? layouts.shown(slug) : layouts.exactly(new RevisionRef(slug, revision));
        PrintPlanForm asked = PrintPlanForm.of(Form.posted(request.getParameterMap()));
        Form form = asked.form();
        Optional<PrintPlan> plan = plan(layout, asked);
        plan.map(PrintPlanView::of).ifPresent(view -> model.addAttribute("plan", view));
        PrintPlanQuery query = asked.query();
        if (query != null) {
            model.addAttribute("rates", rates.of(layout.content(), query));
            if (asked.sun() != null) {
                model.addAttribute("heat", HeatView.of(query.material(), asked.sun()));
            }
        }
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("form", form);
        model.addAttribute("materials", Option.of(PrintMaterial.values(), PrintMaterial::label));
        model.addAttribute(
                "rateKinds", Option.of(PrintRate.Kind.values(), k -> k.label() + ", " + k.unit()));
        model.addAttribute("surfaces", form.withChosen("absorptance", SunForm.SURFACES));
        model.addAttribute("method", PrintPlan.METHOD);
        model.addAttribute("heatMethod", HeatView.METHOD);
        return "print-run/plan";
    }

    private Optional<PrintPlan> plan(Revision<LayoutDocument> layout, PrintPlanForm asked) {
        PrintPlanQuery query = asked.query();
        if (query == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(planner.plan(layout.content(), query));
        } catch (InvalidInputException e) {
            asked.form().refuse(e.problems());
            return Optional.empty();
        }
    }
}
