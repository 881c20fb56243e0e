package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;

class NacaPropertyTest {
    @Test
    void everyUsualNumberGivesASoundSkin() {
        Random random = new Random(2412);
        for (int round = 0; round < 60; round++) {
            Section section = Sections.naca(number(random));
            for (SurfaceSide side : SurfaceSide.values()) {
                placesAgree(section, side, random);
            }
        }
    }

    @Test
    void theSkinIsAsLongAsAFineOutlineOfIt() {
        Random random = new Random(23012);
        for (int round = 0; round < 12; round++) {
            Section section = Sections.naca(number(random));
            List<Point2> outline = SectionOutline.points(section, 1e-8);
            double length = 0;
            for (int i = 1; i < outline.size(); i++) {
                length += outline.get(i).distanceTo(outline.get(i - 1));
            }
            assertThat(length)
                    .isCloseTo(
                            section.arcLength(SurfaceSide.UPPER) + section.arcLength(SurfaceSide.LOWER), within(1e-5));
        }
    }

    private static void placesAgree(Section section, SurfaceSide side, Random random) {
        double length = section.arcLength(side);
        double before = 0;
        SkinPoint last = section.atArcLength(side, 0);
        for (int i = 0; i < 40; i++) {
            before += (length - before) * random.nextDouble() * 0.2;
            SkinPoint p = section.atArcLength(side, before);
            assertThat(Math.hypot(p.x() - last.x(), p.y() - last.y()))
                    .isLessThanOrEqualTo(p.arcLength() - last.arcLength() + 1e-12);
            if (p.x() > 0.02) {
                assertThat(section.atX(side, p.x()).arcLength()).isCloseTo(before, within(1e-10));
            }
            last = p;
        }
    }

    /** Camber and thickness as on light aircraft. */
    private static String number(Random random) {
        int thickness = 6 + random.nextInt(16);
        if (random.nextInt(4) == 0) {
            return String.format(Locale.ROOT, "2%d0%02d", 2 + random.nextInt(4), thickness);
        }
        int camber = random.nextInt(7);
        int position = camber == 0 ? 0 : 2 + random.nextInt(5);
        return String.format(Locale.ROOT, "%d%d%02d", camber, position, thickness);
    }
}
