package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.vanewright.engineering.geometry.Point2;

class SectionOutlineTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @ParameterizedTest
    @CsvSource({"0012, 1e-3", "0012, 1e-5", "4412, 1e-4", "23012, 1e-4", "0003, 1e-5"})
    void noPlaceOnTheSkinIsFartherFromTheOutlineThanTheTolerance(String digits, double tolerance) {
        Section section = Sections.naca(digits);
        LinearRing ring = ring(SectionOutline.points(section, tolerance));
        for (SurfaceSide side : SurfaceSide.values()) {
            for (int i = 0; i <= 2000; i++) {
                SkinPoint p = section.atArcLength(side, section.arcLength(side) * i / 2000);
                Point place = GEOMETRY.createPoint(new Coordinate(p.x(), p.y()));
                assertThat(ring.distance(place)).isLessThanOrEqualTo(tolerance);
            }
        }
        assertThat(ring.isSimple()).isTrue();
    }

    // NACA TR-460 (1933) thickness form: area = 10 t ∫ (0.2969 √x - ... - 0.1015 x⁴) dx = 0.685 t (closed form).
    @Test
    void theOutlineEnclosesTheAreaOfTheThicknessForm() {
        double half = 0.2969 * 2 / 3 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5;
        List<Point2> outline = SectionOutline.points(Sections.naca("0012"), 1e-7);
        assertThat(OutlineChecks.signedArea(outline.toArray(Point2[]::new))).isCloseTo(10 * 0.12 * half, within(1e-6));
    }

    @Test
    void aCoarserOutlineHasFewerPointsAndNoPointTwice() {
        Section section = Sections.of(new SectionSpec("2412", SectionSpec.TrailingEdge.CLOSED, null, null));
        List<Point2> coarse = SectionOutline.points(section, 1e-3);
        List<Point2> fine = SectionOutline.points(section, 1e-6);
        assertThat(coarse).hasSizeLessThan(fine.size()).doesNotHaveDuplicates();
        assertThat(fine).hasSizeLessThan(2000).doesNotHaveDuplicates();
    }

    @Test
    void aToleranceOfNothingIsRefused() {
        Section section = Sections.naca("0012");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> SectionOutline.points(section, bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static LinearRing ring(List<Point2> outline) {
        Coordinate[] c = new Coordinate[outline.size() + 1];
        for (int i = 0; i < c.length; i++) {
            Point2 p = outline.get(i % outline.size());
            c[i] = new Coordinate(p.x(), p.y());
        }
        return GEOMETRY.createLinearRing(c);
    }
}
