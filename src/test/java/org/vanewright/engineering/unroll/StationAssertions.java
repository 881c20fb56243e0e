package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** What every station must agree with: its place in space, its neighbours on the sheet, and its arc distance. */
final class StationAssertions {
    private StationAssertions() {}

    static void assertConsistent(WingPanel panel, FlatSkin skin, SurfaceSide side) {
        for (double t : new double[] {0, 0.21, 0.77, 1}) {
            for (double x : new double[] {0.003, 0.07, 0.33, 0.8, 0.99}) {
                assertConsistent(panel, skin, side, skin.station(t, x));
            }
        }
    }

    private static void assertConsistent(WingPanel panel, FlatSkin skin, SurfaceSide side, SkinStation at) {
        double t = at.spanFraction();
        double[] place = {at.rearwardMm(), at.outboardMm(), at.upMm()};
        assertThat(PanelSpace.distance(place, PanelSpace.point(panel, side, t, at.chordFraction())))
                .isLessThan(1e-8);
        assertThat(skin.toFlat(t, at.chordFraction()).distanceTo(at.flat())).isLessThan(1e-9);
        assertThat(skin.toFlatByArc(t, at.arcMm()).distanceTo(at.flat())).isLessThan(1e-7);
        assertThat(skin.stationByArc(t, at.arcMm()).chordFraction()).isCloseTo(at.chordFraction(), within(1e-9));
        double step = 1e-3;
        Point2 rearward = skin.toFlatByArc(t, at.arcMm() + step).minus(skin.toFlatByArc(t, at.arcMm() - step));
        assertThat(rearward.times(1 / rearward.norm()).distanceTo(at.rearward()))
                .isLessThan(2e-6);
        double inner = Math.max(0, t - 0.01);
        double outer = Math.min(1, t + 0.01);
        Point2 outboard = skin.toFlat(outer, at.chordFraction()).minus(skin.toFlat(inner, at.chordFraction()));
        assertThat(outboard.times(1 / outboard.norm()).distanceTo(at.outboard()))
                .isLessThan(1e-9);
        assertThat(at.chordMm())
                .isCloseTo(panel.innerChordMm() + t * (panel.outerChordMm() - panel.innerChordMm()), within(1e-9));
    }
}
