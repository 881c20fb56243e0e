package org.vanewright.engineering.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.DxfWriter;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.drawing.sheet.SheetSpec;
import org.vanewright.engineering.drawing.sheet.TemplateSheets;
import org.vanewright.engineering.drawing.sheet.Tile;
import org.vanewright.engineering.drawing.sheet.TilePlan;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.wing.WingShape;
import org.vanewright.testing.Raster;
import org.vanewright.testing.Tools;

/** The template as outside programs print, open and audit it, measured against the station table. */
class TemplateOnPaperTest {
    private static final double BASE_MM = 0.15;
    private static final double BAR_MM = 0.1;
    private static final TemplateLabel LABEL =
            new TemplateLabel("Paper layout", 3, "0123456789abcdef0123", "Wing", true);
    private static final String AUDIT = """
            import sys, ezdxf
            doc = ezdxf.readfile(sys.argv[1])
            audit = doc.audit()
            print('errors', len(audit.errors), 'fixes', len(audit.fixes))
            print('layers', *sorted(set(e.dxf.layer for e in doc.modelspace())))
            for e in doc.modelspace():
                if e.dxftype() == 'POLYLINE' and e.dxf.layer in ('CUT', 'FOLD'):
                    xy = ['%.4f %.4f' % (v.dxf.location.x, v.dxf.location.y) for v in e.vertices]
                    print('poly', e.dxf.layer, len(xy), *xy)
            """;

    @TempDir
    Path directory;

    private static TemplatePiece piece(WingShape wing, RowPlan row, Wing side) {
        Placement placement = Placer.place(wing, List.of(row));
        TemplateRow template = new TemplateRow(row, "Test vane", Register.LEADING_EDGE, 0);
        return new PlacementTemplate(wing, placement, LABEL)
                .pieces(List.of(template), side)
                .get(0);
    }

    private static SheetSpec spec(Paper paper) {
        return SheetSpec.of(
                paper,
                paper.isRoll() ? 300.0 : null,
                "Paper layout",
                List.of("Revision 3"),
                List.of("Check the print scale."),
                Instant.parse("2026-01-02T03:04:05Z"));
    }

    private Path pdf(TemplatePiece piece, Paper paper) {
        return Tools.file(directory, "template.pdf", TemplateSheets.pdf(piece.drawing(), spec(paper)));
    }

    @Test
    void onARollEachBaseLiesWhereTheStationTableSaysFromTheInnerEndAndTheFold() {
        WingShape wing = TestWings.constantChord();
        RowPlan row = TestWings.row(0, 800, 1600);
        TemplatePiece piece = piece(wing, row, Wing.RIGHT);
        Raster page = Raster.ofPdfPage(pdf(piece, Paper.ROLL), 1, directory);
        List<Station> stations = Placer.place(wing, List.of(row)).on(Wing.RIGHT);
        double fold = foldMm(page);
        double innerEnd = innerEndMm(page, fold);
        for (Station s : stations) {
            Point2 expected = new Point2(innerEnd + s.stationMm() - 770, fold - s.arcMm());
            assertThat(baseCentre(page, expected))
                    .satisfies(m -> assertThat(m.distanceTo(expected))
                            .as("device %d on paper", s.number())
                            .isLessThan(BASE_MM));
        }
        checkBars(page);
    }

    @Test
    void onA4TilesEachBaseLiesWhereTheStationTableSays() {
        WingShape wing = TestWings.constantChord();
        RowPlan row = TestWings.row(0, 800, 1100);
        TemplatePiece piece = piece(wing, row, Wing.RIGHT);
        Path pdf = pdf(piece, Paper.A4);
        TilePlan plan = TemplateSheets.plan(piece.drawing(), spec(Paper.A4));
        int measured = 0;
        for (Tile tile : plan.tiles()) {
            Raster page = Raster.ofPdfPage(pdf, 2 + plan.tiles().indexOf(tile), directory);
            Bounds whole = tile.core(plan.overlapMm()).grown(-18);
            for (Station s : Placer.place(wing, List.of(row)).on(Wing.RIGHT)) {
                Point2 onPiece = new Point2(s.stationMm() - 600, -s.arcMm());
                if (whole.contains(onPiece)) {
                    Point2 expected = tile.toSheet().apply(onPiece);
                    assertThat(baseCentre(page, expected).distanceTo(expected)).isLessThan(BASE_MM);
                    measured++;
                }
            }
        }
        assertThat(measured).as("most bases lie on one sheet").isGreaterThanOrEqualTo(4);
        checkBars(Raster.ofPdfPage(pdf, 1, directory));
    }

    /**
     * On a cone the flat distance along a ruling is the true one, and a ruling's flat angle from the leading edge is
     * the length of the section's image on the unit sphere round the apex; both found here in space, by summation.
     */
    @Test
    void onATaperedPanelDistancesOnPaperAreThoseOnTheConeInSpace() {
        WingShape wing = TestWings.tapered();
        RowPlan row = TestWings.row(0, 1620, 2500);
        TemplatePiece piece = piece(wing, row, Wing.RIGHT);
        Path pdf = pdf(piece, Paper.ROLL);
        Raster page = Raster.ofPdfPage(pdf, 1, directory);
        double fold = foldMm(page);
        ConeInSpace cone = new ConeInSpace(wing.panels().get(1));
        Bounds bounds = Bounds.of(piece.drawing());
        Point2 shift = onPage(page, bounds, fold);
        Point2 previous = null;
        Station before = null;
        for (Station s : Placer.place(wing, List.of(row)).on(Wing.RIGHT)) {
            Point2 expected = cone.flat(s.stationMm(), 0.08).plus(shift);
            Point2 measured = baseCentre(page, expected);
            assertThat(fold - measured.y())
                    .as("device %d square to the fold", s.number())
                    .isCloseTo(cone.squareToLeadingEdgeMm(s.stationMm(), 0.08), within(BASE_MM));
            if (previous != null && before != null) {
                assertThat(measured.distanceTo(previous))
                        .as("between devices %d and %d", before.number(), s.number())
                        .isCloseTo(cone.straightMm(before.stationMm(), s.stationMm(), 0.08), within(BASE_MM));
            }
            previous = measured;
            before = s;
        }
        assertThat(previous).isNotNull();
    }

    /** Where the drawing's origin lies on a page of one piece, from the fold and the left edge of the outline. */
    private static Point2 onPage(Raster page, Bounds bounds, double foldMm) {
        double level = foldMm + PieceOutline.FLAP_MM - 1;
        double corner = flapEdge(page).fromMm();
        double flapLeft = page.darkAcross(level, corner - 2, corner + 2).get(0);
        double taper = 6 * (PieceOutline.FLAP_MM - 1) / PieceOutline.FLAP_MM;
        // the flap of this piece begins at span station 1,590 on the leading edge, which is straight on the paper
        double leading = Math.hypot(1, 120 / 2700.0) * (1590 - 1500);
        assertThat(bounds.maxYMm()).isCloseTo(PieceOutline.FLAP_MM, within(1e-6));
        return new Point2(flapLeft - taper - leading, foldMm);
    }

    @Test
    void leftAndRightAreMirrorImagesInTheCuttersFile() {
        for (WingShape wing : List.of(TestWings.constantChord(), TestWings.tapered())) {
            RowPlan row = TestWings.row(0, 1600, 2600);
            List<String> left = dxfOutlines(piece(wing, row, Wing.LEFT));
            List<String> right = dxfOutlines(piece(wing, row, Wing.RIGHT));
            assertThat(left).hasSameSizeAs(right).hasSizeGreaterThan(15);
            for (int i = 0; i < left.size(); i++) {
                List<Point2> mirrored = points(left.get(i)).stream()
                        .map(p -> new Point2(-p.x(), p.y()))
                        .toList();
                List<Point2> other = points(right.get(i));
                assertThat(left.get(i).split(" ", -1)[1]).isEqualTo(right.get(i).split(" ", -1)[1]);
                assertThat(mirrored)
                        .hasSameSizeAs(other)
                        .allSatisfy(p -> assertThat(other)
                                .anySatisfy(q -> assertThat(q.distanceTo(p)).isLessThan(2e-4)));
            }
        }
    }

    private List<String> dxfOutlines(TemplatePiece piece) {
        String report = audit(CombinedDrawing.of("Paper layout", List.of("True scale"), List.of(piece)));
        assertThat(report).contains("errors 0 fixes 0", "layers CUT FOLD MARK TEXT");
        double shift = Bounds.of(piece.drawing()).minXMm();
        return report.lines()
                .filter(l -> l.startsWith("poly "))
                .map(l -> l + " shift " + shift)
                .toList();
    }

    /** Points of a reported polyline in the piece's own coordinates across; pieces are moved to a common left edge. */
    private static List<Point2> points(String line) {
        String[] words = line.split(" ", -1);
        double shift = Double.parseDouble(words[words.length - 1]);
        return IntStream.range(0, Integer.parseInt(words[2]))
                .mapToObj(i ->
                        new Point2(Double.parseDouble(words[3 + 2 * i]) + shift, Double.parseDouble(words[4 + 2 * i])))
                .toList();
    }

    private String audit(Drawing drawing) {
        Path script = Tools.file(directory, "audit.py", AUDIT.getBytes(StandardCharsets.UTF_8));
        Path dxf =
                Tools.file(directory, "template.dxf", DxfWriter.write(drawing).getBytes(StandardCharsets.US_ASCII));
        return Tools.run("/usr/bin/python3", script.toString(), dxf.toString());
    }

    @Test
    void filesOfTheSameTemplateAreSoundAndTheSameByteForByte() throws Exception {
        TemplatePiece piece = piece(TestWings.tapered(), TestWings.row(0, 1600, 2600), Wing.LEFT);
        TemplatePiece again = piece(TestWings.tapered(), TestWings.row(0, 1600, 2600), Wing.LEFT);
        Drawing drawing = CombinedDrawing.of("Paper layout", List.of("True scale"), List.of(piece));
        byte[] pdf = TemplateSheets.pdf(piece.drawing(), spec(Paper.A4));
        assertThat(TemplateSheets.pdf(again.drawing(), spec(Paper.A4))).isEqualTo(pdf);
        assertThat(SvgWriter.write(CombinedDrawing.of("Paper layout", List.of("True scale"), List.of(again))))
                .isEqualTo(SvgWriter.write(drawing));

        Path file = Tools.file(directory, "template.pdf", pdf);
        assertThat(Tools.run("qpdf", "--check", file.toString())).contains("No syntax or stream encoding errors");
        Path svg =
                Tools.file(directory, "template.svg", SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8));
        Tools.run("xmllint", "--noout", svg.toString());
        Path png = directory.resolve("template.png");
        // one pixel a millimetre
        Tools.run("rsvg-convert", "-d", "25.4", "-p", "25.4", svg.toString(), "-o", png.toString());
        var image = ImageIO.read(png.toFile());
        Bounds bounds = Bounds.of(drawing).grown(1);
        assertThat((double) image.getWidth()).isCloseTo(bounds.widthMm(), within(1.0));
        assertThat((double) image.getHeight()).isCloseTo(bounds.heightMm(), within(1.0));
    }

    /** The fold: the second level line from above, after the edge of the flap. Dashed, so looked for at many places. */
    private static double foldMm(Raster page) {
        double top = flapEdge(page).atMm();
        return IntStream.range(0, 60)
                .mapToObj(i -> page.darkAlong(200 + 3.7 * i, top - 27, top - 23))
                .filter(found -> found.size() == 1)
                .mapToDouble(found -> found.get(0))
                .average()
                .orElseThrow();
    }

    private static Raster.Line flapEdge(Raster page) {
        return page.levelLines(400).stream()
                .max(Comparator.comparingDouble(Raster.Line::atMm))
                .orElseThrow();
    }

    /** The inner end of a piece of the right wing: the first upright line below the fold. */
    private static double innerEndMm(Raster page, double foldMm) {
        return page.uprightLines(100).stream()
                .filter(l -> Math.abs(l.toMm() - foldMm) < 1)
                .mapToDouble(l ->
                        page.darkAcross(foldMm - 20, l.atMm() - 1, l.atMm() + 2).get(0))
                .min()
                .orElseThrow();
    }

    /** Middle of a base outline, from chords on both sides of where it is expected: 26 mm by 12 mm, turned. */
    private static Point2 baseCentre(Raster page, Point2 near) {
        double x = (middle(page.darkAcross(near.y() + 3, near.x() - 10, near.x() + 10))
                        + middle(page.darkAcross(near.y() - 3, near.x() - 10, near.x() + 10)))
                / 2;
        double y = (middle(page.darkAlong(near.x() + 1.5, near.y() - 15.5, near.y() + 15.5))
                        + middle(page.darkAlong(near.x() - 1.5, near.y() - 15.5, near.y() + 15.5)))
                / 2;
        return new Point2(x, y);
    }

    private static double middle(List<Double> runs) {
        assertThat(runs).as("edges of the base").hasSizeGreaterThanOrEqualTo(2);
        return (runs.get(0) + runs.get(runs.size() - 1)) / 2;
    }

    /** Both 100 mm bars, across and upright, from first tick to last. */
    private static void checkBars(Raster page) {
        assertThat(page.levelLines(99).stream().filter(l -> l.lengthMm() < 101).map(l -> {
                    List<Double> ticks = page.darkAcross(l.atMm() + 2.1, l.fromMm() - 0.5, l.toMm() + 0.5);
                    return ticks.get(ticks.size() - 1) - ticks.get(0);
                }))
                .isNotEmpty()
                .allSatisfy(l -> assertThat(l).isCloseTo(100, within(BAR_MM)));
        assertThat(page.uprightLines(99).stream()
                        .filter(l -> l.lengthMm() < 101)
                        .map(l -> {
                            List<Double> ticks = page.darkAlong(l.atMm() - 2.0, l.fromMm() - 0.5, l.toMm() + 0.5);
                            return ticks.get(ticks.size() - 1) - ticks.get(0);
                        }))
                .isNotEmpty()
                .allSatisfy(l -> assertThat(l).isCloseTo(100, within(BAR_MM)));
    }
}
