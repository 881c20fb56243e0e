package org.vanewright.engineering.wing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;

class PlanDrawingTest {
    private static final Section NACA_2412 = Sections.naca("2412");
    private static final List<WingPanel> TAPERED = List.of(
            new WingPanel(500, 1500, 1500, 1500, 0, 0, NACA_2412, NACA_2412, 0),
            new WingPanel(1500, 4500, 1500, 900, 0, 120, NACA_2412, NACA_2412, 0));
    private static final PlanDrawing.Lettering LETTERING = new PlanDrawing.Lettering() {
        @Override
        public String length(double mm) {
            return String.format(Locale.ROOT, "%.0f mm", mm);
        }

        @Override
        public double scaleBarMm() {
            return 1000;
        }

        @Override
        public String scaleBar() {
            return "1 m";
        }
    };

    private static List<Shape.Polyline> filled(Drawing drawing, Fill fill) {
        return drawing.shapes().stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .filter(l -> l.fill() == fill)
                .toList();
    }

    @Test
    void panelsAreDrawnToScaleAndTheLeftMirrorsTheRight() {
        Drawing plan = PlanDrawing.of("Wing", TAPERED, true, List.of(), LETTERING);
        List<Shape.Polyline> panels = filled(plan, Fill.TINT);
        assertThat(panels).hasSize(4);
        double scale = PlanSheet.WIDTH_MM / 9000;
        List<Point2> outer = panels.get(1).points();
        assertThat(outer.get(0).distanceTo(outer.get(3))).isCloseTo(1500 * scale, within(1e-9));
        assertThat(outer.get(1).distanceTo(outer.get(2))).isCloseTo(900 * scale, within(1e-9));
        assertThat(outer.get(1).y()).as("leading edge swept back").isCloseTo(-120 * scale, within(1e-9));
        for (int i = 0; i < 4; i++) {
            Point2 left = panels.get(3).points().get(i);
            assertThat(left)
                    .isEqualTo(new Point2(-outer.get(i).x(), outer.get(i).y()));
        }
    }

    @Test
    void theQuarterChordLineLiesAtAQuarterOfTheLocalChord() {
        Drawing plan = PlanDrawing.of("Wing", TAPERED, false, List.of(), LETTERING);
        PlanSheet sheet = PlanSheet.fitting(TAPERED, false);
        assertThat(plan.shapes())
                .contains(Shape.line(
                        org.vanewright.engineering.drawing.Layer.MARK,
                        Pen.CENTRE,
                        sheet.right(1500, 375),
                        sheet.right(4500, 120 + 225)));
    }

    @Test
    void aKeepOutAcrossAJointIsTintedOnBothPanelsAndBothWings() {
        Drawing plan = PlanDrawing.of(
                "Wing", TAPERED, true, List.of(new PlanDrawing.KeepOut(1400, 1600, "Fuel vent")), LETTERING);
        List<Shape.Polyline> strips = filled(plan, Fill.ACCENT);
        assertThat(strips).hasSize(4);
        double scale = PlanSheet.WIDTH_MM / 9000;
        assertThat(strips.stream().mapToDouble(s -> s.points().get(1).x()).max().orElseThrow())
                .isCloseTo(1600 * scale, within(1e-9));
        assertThat(texts(plan)).contains("Fuel vent", "1 m", "500 mm", "4500 mm", "25 %");
        assertThat(plan.description()).contains("1500 mm at the root", "900 mm at the tip", "1 keep-outs");
    }

    @Test
    void aStubbySurfaceIsKeptShort() {
        List<WingPanel> fin = List.of(new WingPanel(0, 600, 1500, 1200, 0, 300, NACA_2412, NACA_2412, 0));
        Drawing plan = PlanDrawing.of("Fin", fin, false, List.of(), LETTERING);
        double lowest = filled(plan, Fill.TINT).get(0).points().stream()
                .mapToDouble(Point2::y)
                .min()
                .orElseThrow();
        assertThat(-lowest).isLessThanOrEqualTo(90.000001);
    }

    @Test
    void aSectionIsDrawnAsThickAsItIs() {
        Drawing drawing = SectionDrawing.of(NACA_2412);
        List<Point2> outline = filled(drawing, Fill.TINT).get(0).points();
        double height = outline.stream().mapToDouble(Point2::y).max().orElseThrow()
                - outline.stream().mapToDouble(Point2::y).min().orElseThrow();
        // Abbott, von Doenhoff, Stivers (1945), NACA Report 824: ordinates of the NACA 2412, +7.88 and -4.23 % of
        // chord.
        assertThat(height).isCloseTo(0.1211 * PlanSheet.WIDTH_MM, within(0.002 * PlanSheet.WIDTH_MM));
        assertThat(drawing.description()).contains("12.0 % thick", "camber 2.0 %");
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }
}
