package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every section keeps, whatever it is made from. */
abstract class SectionContract {
    private static final int STATIONS = 257;

    abstract Section section();

    @ParameterizedTest
    @EnumSource(SurfaceSide.class)
    void arcLengthStartsAtTheLeadingEdgeAndGrowsToTheSidesLength(SurfaceSide side) {
        Section section = section();
        double length = section.arcLength(side);
        assertThat(section.atX(side, 0).arcLength()).isZero();
        assertThat(section.atX(side, section.maximumX(side)).arcLength()).isCloseTo(length, within(1e-12));
        double before = 0;
        for (int i = 1; i <= STATIONS; i++) {
            double arc =
                    section.atX(side, section.maximumX(side) * i / STATIONS).arcLength();
            assertThat(arc).isGreaterThan(before);
            before = arc;
        }
    }

    @ParameterizedTest
    @EnumSource(SurfaceSide.class)
    void anXAndItsArcLengthNameTheSamePlace(SurfaceSide side) {
        Section section = section();
        for (int i = 1; i <= STATIONS; i++) {
            double x = section.maximumX(side) * i / STATIONS;
            SkinPoint byX = section.atX(side, x);
            SkinPoint byArc = section.atArcLength(side, byX.arcLength());
            assertThat(byX.x()).isCloseTo(x, within(1e-12));
            assertThat(byArc.x()).isCloseTo(x, within(1e-11));
            assertThat(byArc.y()).isCloseTo(byX.y(), within(1e-11));
        }
    }

    @ParameterizedTest
    @EnumSource(SurfaceSide.class)
    void placesNearDistancesAreExactPlaces(SurfaceSide side) {
        Section section = section();
        double length = section.arcLength(side);
        double[] asked = IntStream.rangeClosed(0, STATIONS)
                .mapToDouble(i -> length * i / STATIONS)
                .toArray();
        List<SkinPoint> near = section.nearArcLengths(side, asked);
        assertThat(near).hasSize(asked.length);
        assertThat(near.get(0).arcLength()).isZero();
        assertThat(near.get(STATIONS).arcLength()).isCloseTo(length, within(1e-12));
        for (int i = 1; i <= STATIONS; i++) {
            SkinPoint place = near.get(i);
            assertThat(place.arcLength())
                    .isCloseTo(asked[i], within(0.02 * length))
                    .isGreaterThan(near.get(i - 1).arcLength());
            SkinPoint exact = section.atArcLength(side, Math.min(length, place.arcLength()));
            assertThat(Math.hypot(place.x() - exact.x(), place.y() - exact.y())).isLessThan(1e-11);
        }
    }

    @ParameterizedTest
    @EnumSource(SurfaceSide.class)
    void tangentsAndCurvaturesAreTheDerivativesByArcLength(SurfaceSide side) {
        Section section = section();
        double length = section.arcLength(side);
        double h = 1e-5;
        for (double fraction : new double[] {0.003, 0.02, 0.1234, 0.37, 0.61, 0.987}) {
            double s = fraction * length;
            SkinPoint p = section.atArcLength(side, s);
            SkinPoint a = section.atArcLength(side, s - h);
            SkinPoint b = section.atArcLength(side, s + h);
            assertThat(Math.hypot(p.tangentX(), p.tangentY())).isCloseTo(1, within(1e-13));
            assertThat(p.tangentX()).isCloseTo((b.x() - a.x()) / (2 * h), within(1e-4));
            assertThat(p.tangentY()).isCloseTo((b.y() - a.y()) / (2 * h), within(1e-4));
            double turn = a.tangentX() * b.tangentY() - a.tangentY() * b.tangentX();
            double outward = side == SurfaceSide.UPPER ? -turn : turn;
            assertThat(p.curvature()).isCloseTo(outward / (2 * h), within(1e-2 * (1 + Math.abs(p.curvature()))));
        }
    }

    @Test
    void theUpperSideLiesAboveTheLowerAndTheNoseIsSmooth() {
        Section section = section();
        for (int i = 1; i < 100; i++) {
            double x = 0.99 * i / 100;
            assertThat(section.atX(SurfaceSide.UPPER, x).y())
                    .isGreaterThan(section.atX(SurfaceSide.LOWER, x).y());
        }
        SkinPoint up = section.atArcLength(SurfaceSide.UPPER, 0);
        SkinPoint down = section.atArcLength(SurfaceSide.LOWER, 0);
        assertThat(up.x()).isEqualTo(down.x());
        assertThat(up.y()).isEqualTo(down.y());
        assertThat(up.tangentX()).isCloseTo(-down.tangentX(), within(1e-12));
        assertThat(up.tangentY()).isCloseTo(-down.tangentY(), within(1e-12));
        // a NACA number's nose radius is that of its thickness form; the mean line's slope makes the skin's own smaller
        assertThat(1 / up.curvature()).isCloseTo(section.leadingEdgeRadius(), withinPercentage(5));
    }

    @Test
    void theTrailingEdgeIsClosedWhenBothSidesEndInOnePoint() {
        Section section = section();
        SkinPoint up = section.atArcLength(SurfaceSide.UPPER, section.arcLength(SurfaceSide.UPPER));
        SkinPoint down = section.atArcLength(SurfaceSide.LOWER, section.arcLength(SurfaceSide.LOWER));
        double gap = Math.hypot(up.x() - down.x(), up.y() - down.y());
        assertThat(section.closedTrailingEdge()).isEqualTo(gap < 1e-9);
        assertThat(0.5 * (up.x() + down.x())).isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(SurfaceSide.class)
    void placesOffTheSkinAreRefused(SurfaceSide side) {
        Section section = section();
        double[] bad = {-1e-6, 3, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (double value : bad) {
            assertThatThrownBy(() -> section.atX(side, value)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> section.atArcLength(side, value)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aSectionHasTheShapeOfItselfAndNotOfAnother() {
        Section section = section();
        assertThat(section.sameShapeAs(section())).isTrue();
        assertThat(section).isEqualTo(section()).hasSameHashCodeAs(section());
        assertThat(section.sameShapeAs(Sections.naca("0007"))).isFalse();
        assertThat(Sections.naca("0007").sameShapeAs(section)).isFalse();
    }
}
