package org.vanewright.layout.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutTemplates;
import org.vanewright.layout.StationCsv;
import org.vanewright.layout.StationRow;
import org.vanewright.record.Revision;

/** What a layout gives to its kit: templates of both wings on every paper and for cutters, and the station table. */
@Component
class LayoutKitFiles implements KitFiles<LayoutDocument> {
    /** A common width of plotter paper, 24 in. */
    private static final double ROLL_MM = 610;

    private final LayoutPlanner planner;
    private final TemplateFiles templates;

    LayoutKitFiles(LayoutPlanner planner, TemplateFiles templates) {
        this.planner = planner;
        this.templates = templates;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<KitFile> of(Revision<LayoutDocument> layout) {
        LayoutPlan plan = planner.plan(layout.content());
        List<KitFile> files = new ArrayList<>();
        for (Wing wing : Wing.values()) {
            if (!LayoutTemplates.pieces(plan, layout, wing, LayoutTemplates.Pattern.FULL)
                    .isEmpty()) {
                templates(layout, wing, files);
            }
        }
        files.add(new KitFile(
                "stations.csv",
                "text/csv",
                "Station table: where each device sits",
                () -> StationCsv.write(StationRow.of(layout.content(), plan)).getBytes(StandardCharsets.UTF_8)));
        return files;
    }

    private void templates(Revision<LayoutDocument> layout, Wing wing, List<KitFile> files) {
        String side = wing.name().toLowerCase(Locale.ROOT);
        for (Paper paper : Paper.values()) {
            add(
                    TemplateFormat.PDF,
                    layout,
                    request(wing, paper),
                    "Template, " + side + " wing, " + paper.label(),
                    files);
        }
        TemplateRequest whole = request(wing, Paper.A4);
        add(TemplateFormat.SVG, layout, whole, "Template for a cutter, " + side + " wing", files);
        add(TemplateFormat.DXF, layout, whole, "Template for a cutter, " + side + " wing, millimetres", files);
    }

    private static TemplateRequest request(Wing wing, Paper paper) {
        return new TemplateRequest(
                wing, LayoutTemplates.Pattern.FULL, null, paper, paper.isRoll() ? (Double) ROLL_MM : null);
    }

    private void add(
            TemplateFormat format,
            Revision<LayoutDocument> layout,
            TemplateRequest asked,
            String description,
            List<KitFile> files) {
        String type = format.type().getType() + "/" + format.type().getSubtype();
        files.add(new KitFile(format.fileName(asked), type, description, () -> templates.write(format, layout, asked)));
    }
}
