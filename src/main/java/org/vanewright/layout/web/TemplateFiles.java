package org.vanewright.layout.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.DxfWriter;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.drawing.sheet.SheetSpec;
import org.vanewright.engineering.drawing.sheet.TemplateSheets;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.CombinedDrawing;
import org.vanewright.engineering.template.TemplatePiece;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutTemplates;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Licence;
import org.vanewright.record.Revision;

/** Writes the template of one wing as PDF, SVG or DXF, all from the same pieces. */
@Component
class TemplateFiles {
    private final LayoutPlanner planner;
    private final Cautions cautions;

    TemplateFiles(LayoutPlanner planner, Cautions cautions) {
        this.planner = planner;
        this.cautions = cautions;
    }

    byte[] write(TemplateFormat format, Revision<LayoutDocument> layout, TemplateRequest asked) {
        return switch (format) {
            case PDF -> pdf(layout, asked);
            case SVG -> SvgWriter.write(combined(layout, asked)).getBytes(StandardCharsets.UTF_8);
            case DXF -> DxfWriter.write(combined(layout, asked)).getBytes(StandardCharsets.US_ASCII);
        };
    }

    private byte[] pdf(Revision<LayoutDocument> layout, TemplateRequest asked) {
        List<TemplateSheets.Job> jobs = new ArrayList<>();
        for (TemplatePiece piece : pieces(layout, asked)) {
            SheetSpec spec = SheetSpec.of(
                    asked.paper(),
                    asked.rollWidthMm(),
                    heading(layout, asked.wing()) + " · piece " + piece.name(),
                    footer(layout),
                    cautions.all(layout.content().invented()),
                    layout.createdAt());
            jobs.add(new TemplateSheets.Job(piece.drawing(), spec));
        }
        return TemplateSheets.pdf(jobs);
    }

    private Drawing combined(Revision<LayoutDocument> layout, TemplateRequest asked) {
        List<String> lines = new ArrayList<>(footer(layout));
        lines.add("True scale, millimetres. Measure the bars before use.");
        lines.addAll(cautions.all(layout.content().invented()));
        return CombinedDrawing.of(heading(layout, asked.wing()), lines, pieces(layout, asked));
    }

    private List<TemplatePiece> pieces(Revision<LayoutDocument> layout, TemplateRequest asked) {
        List<TemplatePiece> pieces =
                LayoutTemplates.pieces(planner.plan(layout.content()), layout, asked.wing(), asked.pattern());
        List<TemplatePiece> wanted = pieces.stream()
                .filter(p -> asked.row() == null || p.row() == asked.row() - 1)
                .toList();
        if (wanted.isEmpty()) {
            throw new InvalidInputException(nothing(pieces, asked));
        }
        return wanted;
    }

    private static FieldProblem nothing(List<TemplatePiece> pieces, TemplateRequest asked) {
        if (!pieces.isEmpty()) {
            return new FieldProblem("row", String.valueOf(asked.row()), "a row with devices on this wing");
        }
        return asked.pattern() == LayoutTemplates.Pattern.STRIP
                ? new FieldProblem(
                        "pattern",
                        asked.pattern().name(),
                        "FULL here: no row of this wing has a strip, which needs a constant-chord panel")
                : new FieldProblem("side", asked.wing().name(), "the other wing: this one carries no row");
    }

    private static String heading(Revision<LayoutDocument> layout, Wing wing) {
        return layout.printedName() + " · revision " + layout.number() + " · " + (wing == Wing.LEFT ? "LEFT" : "RIGHT");
    }

    private static List<String> footer(Revision<LayoutDocument> layout) {
        Licence licence = layout.standing().licence();
        return List.of("Layout " + layout.slug() + " · revision " + layout.number() + " · SHA-256 "
                + layout.shortHash() + (licence == null ? "" : " · " + licence.label())
                + (layout.isReleased() ? "" : " · " + Revision.NOT_PUBLISHED));
    }
}
