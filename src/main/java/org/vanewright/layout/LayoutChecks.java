package org.vanewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.drawing.sheet.SheetSpec;
import org.vanewright.engineering.drawing.sheet.TemplateSheets;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.TemplatePiece;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** Whether a layout can be made: its template is really drawn. Bounds are common practice, without a source. */
@Component
class LayoutChecks implements SubmissionChecks<LayoutDocument> {
    private static final int FEWEST = 2;
    private static final int MOST = 400;

    private final LayoutPlanner planner;

    LayoutChecks(LayoutPlanner planner) {
        this.planner = planner;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<CheckResult> run(Revision<LayoutDocument> revision) {
        LayoutPlan plan = planner.plan(revision.content());
        List<CheckResult> results = new ArrayList<>();
        for (Wing wing : Wing.values()) {
            results.add(template(plan, revision, wing));
        }
        results.add(references(plan));
        results.add(count(plan));
        results.add(keepOuts(plan));
        return results;
    }

    private static CheckResult template(LayoutPlan plan, Revision<LayoutDocument> revision, Wing wing) {
        String name = wing == Wing.LEFT ? "Template, left" : "Template, right";
        List<TemplatePiece> pieces = LayoutTemplates.pieces(plan, revision, wing, LayoutTemplates.Pattern.FULL);
        if (pieces.isEmpty()) {
            return CheckResult.noticed(name, "This wing carries no row, so it has no template.");
        }
        SheetSpec spec = SheetSpec.of(
                Paper.A4,
                null,
                revision.content().name(),
                List.of(revision.shortHash()),
                List.of(),
                revision.createdAt());
        byte[] pdf = TemplateSheets.pdf(pieces.stream()
                .map(piece -> new TemplateSheets.Job(piece.drawing(), spec))
                .toList());
        return CheckResult.passed(name, "Drawn on A4: " + pieces.size() + " pieces, " + pdf.length / 1024 + " KiB.");
    }

    private static CheckResult references(LayoutPlan plan) {
        List<String> hidden = new ArrayList<>();
        if (!plan.airframe().isPublic()) {
            hidden.add("the airframe " + plan.airframe().slug() + " revision "
                    + plan.airframe().number());
        }
        plan.devices().stream()
                .filter(d -> !d.isPublic())
                .map(d -> "the device " + d.slug() + " revision " + d.number())
                .distinct()
                .forEach(hidden::add);
        return hidden.isEmpty()
                ? CheckResult.passed("References published", "The airframe and every device are public.")
                : CheckResult.failed(
                        "References published",
                        "Not public yet, so that this cannot be published either: " + String.join(", ", hidden) + ".");
    }

    private static CheckResult count(LayoutPlan plan) {
        int devices = plan.surfaces().stream()
                .mapToInt(s -> s.placement().stations().size())
                .sum();
        String detail =
                devices + " devices in all; usual is " + FEWEST + " to " + MOST + " (common practice, no source).";
        return devices >= FEWEST && devices <= MOST
                ? CheckResult.passed("Number of devices", detail)
                : CheckResult.noticed("Number of devices", detail);
    }

    /** The placement keeps devices out of keep-outs; what it had to move or leave out is worth a look. */
    private static CheckResult keepOuts(LayoutPlan plan) {
        List<String> notes = plan.surfaces().stream()
                .flatMap(s -> s.placement().notes().stream()
                        .map(n -> s.name() + ", row " + (n.row() + 1) + ": " + n.reason()
                                + (n.movedToMm() == null ? " (left out)" : " (moved)")))
                .toList();
        return notes.isEmpty()
                ? CheckResult.passed("Distance from keep-outs", "No device had to be moved or left out.")
                : CheckResult.noticed(
                        "Distance from keep-outs",
                        notes.size() + " moved or left out: "
                                + notes.stream().limit(8).collect(Collectors.joining("; ")) + ".");
    }
}
