package org.vanewright.printrun.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.printing.PieceMaterial;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.printrun.PrintPlan;
import org.vanewright.printrun.PrintPlanQuery;
import org.vanewright.printrun.PrintPlanner;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What has to be printed for a layout, as JSON. */
@RestController
@RequestMapping("/api/v1/layouts")
@Tag(name = "Layouts")
class PrintPlanApi {
    private final LayoutService layouts;
    private final PrintPlanner planner;

    PrintPlanApi(LayoutService layouts, PrintPlanner planner) {
        this.layouts = layouts;
        this.planner = planner;
    }

    /** Pieces of one solid. */
    record BatchJson(
            RevisionRef device,
            @Nullable Double undersideRadiusMm,
            List<String> rows,
            int fitted,
            int spares,
            List<Integer> piecesPerPlate,
            PieceMaterial each,
            double materialG,
            double printMinutes) {}

    /** The whole plan. */
    record PlanJson(
            RevisionRef layout,
            List<BatchJson> batches,
            int pieces,
            int plates,
            double minutes,
            double materialG,
            double fittedG,
            @Nullable Double energyKWh,
            @Nullable Double skinTemperatureC,
            String method) {}

    @Operation(summary = "Pieces, plates, material and time to print a layout; parameters as on its page")
    @GetMapping("/{slug}/print-plan")
    PlanJson plan(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            HttpServletRequest request) {
        Revision<LayoutDocument> layout =
                revision == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, revision));
        PrintPlanForm asked = PrintPlanForm.of(Form.posted(request.getParameterMap()));
        PrintPlanQuery query = asked.query();
        if (query == null || asked.form().hasProblems()) {
            throw new InvalidInputException(asked.form().problems());
        }
        PrintPlan plan = planner.plan(layout.content(), query);
        return new PlanJson(
                layout.ref(),
                plan.batches().stream().map(PrintPlanApi::batch).toList(),
                plan.pieces(),
                plan.plates(),
                plan.minutes(),
                plan.materialG(),
                plan.fittedG(),
                plan.energyKWh(),
                asked.sun() == null ? null : (Double) asked.sun().temperatureC(),
                PrintPlan.METHOD);
    }

    private static BatchJson batch(PrintPlan.Batch b) {
        return new BatchJson(
                b.device().ref(),
                b.undersideRadiusMm(),
                b.rows(),
                b.fitted(),
                b.spares(),
                b.piecesPerPlate(),
                b.each(),
                b.materialG(),
                b.printMinutes());
    }
}
