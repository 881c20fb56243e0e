package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

class PanelSpreadTest {
    private static double worstRatio(PanelGeometry g) {
        double worst = 1;
        for (int j = 1; j < g.panels(); j++) {
            double ratio = g.length[j] / g.length[j - 1];
            worst = Math.max(worst, Math.max(ratio, 1 / ratio));
        }
        return worst;
    }

    @ParameterizedTest
    @ValueSource(strings = {"0004", "0012", "2412", "4418", "6506", "23012", "22030"})
    void neighbouringPanelsAreAlikeAndThoseAtTheEdgeFine(String number) {
        for (int panels : new int[] {60, 200, 400}) {
            PanelGeometry g = PanelGeometry.of(Sections.naca(number), panels);
            assertThat(worstRatio(g)).as("%s panels", panels).isLessThan(1.8);
            double mean = (g.arc[panels] - g.arc[0]) / panels;
            assertThat(g.length[0] / mean).isLessThan(panels < 100 ? 1.8 : 0.8);
            assertThat(g.length[0] / g.length[panels - 1]).isBetween(0.8, 1.25);
            assertThat(g.length[g.leadingEdge]).isLessThan(mean / 3);
        }
    }

    /** The sharper the nose, the more panels stand there; a thin section gets more of them than a thick one. */
    @Test
    void panelsGoWhereTheSkinBends() {
        assertThat(PanelGeometry.of(Sections.naca("0006"), 200).length[100])
                .isLessThan(0.8 * PanelGeometry.of(Sections.naca("0024"), 200).length[100]);
    }

    /** Points read off a drawing are never quite smooth; panels must not follow their ripples. */
    @Test
    void ripplesOfCoordinatesHardlyMoveThem() {
        double[] smooth = PanelSpread.arcs(rippled(0), SurfaceSide.UPPER, 100);
        double[] rough = PanelSpread.arcs(rippled(1e-4), SurfaceSide.UPPER, 100);
        for (int i = 1; i <= 100; i++) {
            assertThat(rough[i]).isCloseTo(smooth[i], within(0.015));
        }
        assertThat(worstRatio(PanelGeometry.of(rippled(1e-4), 200))).isLessThan(1.8);
    }

    private static Section rippled(double height) {
        Section section = Sections.naca("2412");
        Random chance = new Random(7);
        List<List<Double>> points = new ArrayList<>();
        for (int i = -60; i <= 60; i++) {
            SurfaceSide side = i < 0 ? SurfaceSide.UPPER : SurfaceSide.LOWER;
            double along = 0.5 * (1 - Math.cos(Math.PI * Math.abs(i) / 60));
            SkinPoint p = section.atArcLength(side, along * section.arcLength(side));
            points.add(List.of(p.x(), p.y() + height * chance.nextGaussian()));
        }
        return Sections.of(new SectionSpec(null, null, points, null));
    }

    /** On an exact flow with a sharp nose, where the speed changes within a hundredth of the chord. */
    @Test
    void theSpeedAroundASharpNoseIsCloseToExact() {
        ConformalSection map = new ConformalSection(-0.03, 1.94);
        double angle = Math.toRadians(5);
        PanelSolution flow = PotentialFlow.about(map.section(), 200).at(angle);
        double worst = 0;
        for (int degrees = 17; degrees <= 343; degrees++) {
            Complex z = map.image(Math.toRadians(degrees));
            double error =
                    Math.abs(flow.speedNear(z.getReal(), z.getImaginary()) - map.speed(Math.toRadians(degrees), angle));
            worst = Math.max(worst, error);
        }
        assertThat(worst).as("by the cosine alone it is 0.017").isLessThan(0.01);
    }
}
