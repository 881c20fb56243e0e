package org.vanewright.benchmark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.drawing.sheet.SheetSpec;
import org.vanewright.engineering.drawing.sheet.TemplateSheets;
import org.vanewright.engineering.drawing.sheet.Tile;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.DeviceFootprint;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.PlacementTemplate;
import org.vanewright.engineering.template.Register;
import org.vanewright.engineering.template.TemplateLabel;
import org.vanewright.engineering.template.TemplatePiece;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * Sixty devices a wing on A4: from the plan of the layout to the bytes of the PDF, the placement alone, and a PDF of as
 * many line segments on as many pages by PDFBox alone.
 */
@State(Scope.Benchmark)
public class TemplateBenchmark {
    private static final int DEVICES = 60;
    private static final float POINTS_PER_MM = 72 / 25.4f;

    private WingShape wing = wing();
    private RowPlan row = row();
    private List<List<List<Point2>>> linesByPage = List.of();

    private static WingShape wing() {
        Section section = Sections.naca("23015");
        return new WingShape(
                List.of(
                        new WingPanel(500, 1500, 1400, 1400, 0, 0, section, section, 0),
                        new WingPanel(1500, 4700, 1400, 800, 0, 120, section, section, 0)),
                List.of());
    }

    private static RowPlan row() {
        return new RowPlan(
                0,
                "Sixty",
                SurfaceSide.UPPER,
                600,
                600 + (DEVICES - 1) * 66,
                new ChordPosition.FractionOfChord(0.08),
                Arrangement.CO_ROTATING,
                15,
                66,
                0,
                WingChoice.BOTH_MIRRORED,
                ConflictPolicy.MOVE,
                new DeviceFootprint(rectangle(28, 14), List.of(rectangle(20, 1.2)), false));
    }

    private static List<Point2> rectangle(double length, double width) {
        double a = length / 2;
        double b = width / 2;
        return List.of(new Point2(-a, -b), new Point2(a, -b), new Point2(a, b), new Point2(-a, b));
    }

    /** Counts what the template's sheets show, so that the library draws as much. */
    @Setup
    public void lines() {
        Placement placement = Placer.place(wing, List.of(row));
        if (placement.on(Wing.LEFT).size() != DEVICES) {
            throw new IllegalStateException("placed " + placement.on(Wing.LEFT).size());
        }
        List<List<List<Point2>>> pages = new ArrayList<>();
        for (TemplateSheets.Job job : jobs(placement)) {
            for (Tile tile : TemplateSheets.plan(job.drawing(), job.spec()).tiles()) {
                pages.add(polylines(tile));
            }
        }
        linesByPage = pages;
    }

    private static List<List<Point2>> polylines(Tile tile) {
        List<List<Point2>> lines = new ArrayList<>();
        for (Shape shape : tile.shapes()) {
            if (shape instanceof Shape.Polyline line) {
                List<Point2> points = new ArrayList<>(
                        line.points().stream().map(tile.toSheet()::apply).toList());
                if (line.closed()) {
                    points.add(points.get(0));
                }
                lines.add(points);
            }
        }
        return lines;
    }

    @Benchmark
    public Placement placementOfSixty() {
        return Placer.place(wing, List.of(row));
    }

    @Benchmark
    public byte[] templateOfSixtyOnA4() {
        return TemplateSheets.pdf(jobs(Placer.place(wing, List.of(row))));
    }

    private List<TemplateSheets.Job> jobs(Placement placement) {
        TemplateLabel label = new TemplateLabel("Sixty", 1, "0123456789abcdef", "Wing", true);
        TemplateRow template = new TemplateRow(row, "Plain vane", Register.LEADING_EDGE, 0);
        List<TemplateSheets.Job> jobs = new ArrayList<>();
        for (TemplatePiece piece : new PlacementTemplate(wing, placement, label).pieces(List.of(template), Wing.LEFT)) {
            SheetSpec spec = SheetSpec.of(
                    Paper.A4, null, "Sixty", List.of("Revision 1"), List.of("Measure the bars."), Instant.EPOCH);
            jobs.add(new TemplateSheets.Job(piece.drawing(), spec));
        }
        return jobs;
    }

    @Benchmark
    public byte[] asManySegmentsByPdfBoxAlone() throws IOException {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            for (List<List<Point2>> lines : linesByPage) {
                PDPage page = new PDPage(PDRectangle.A4);
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    for (List<Point2> line : lines) {
                        draw(content, line);
                    }
                }
            }
            document.save(out);
            return out.toByteArray();
        }
    }

    private static void draw(PDPageContentStream content, List<Point2> line) throws IOException {
        content.moveTo(
                (float) line.get(0).x() * POINTS_PER_MM, (float) line.get(0).y() * POINTS_PER_MM);
        for (Point2 p : line.subList(1, line.size())) {
            content.lineTo((float) p.x() * POINTS_PER_MM, (float) p.y() * POINTS_PER_MM);
        }
        content.stroke();
    }
}
