package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;

class IndexMarkTest {
    @Test
    void itStandsAheadOfTheVaneAndPointsForward() {
        IndexMark mark = mark(new DesignBuilder());
        Point2 tip = mark.foot().get(0);
        assertThat(tip.y()).isZero();
        assertThat(mark.foot()).allMatch(p -> p.x() >= tip.x() && p.x() < 15 - 20);
        assertThat(length(mark)).isCloseTo(IndexMark.LONGEST_MM, within(1e-9));
    }

    @Test
    void itShrinksWhereRoomIsShort() {
        DesignBuilder tight = new DesignBuilder();
        tight.baseLength = 22.5;
        assertThat(length(mark(tight))).isBetween(IndexMark.SHORTEST_MM - 1e-9, 1.81);
    }

    @Test
    void itGoesBehindTheVaneOnlyWhereNothingElseIsLeft() {
        DesignBuilder rearward = new DesignBuilder();
        rearward.inset = 9.0;
        assertThat(mark(rearward).foot()).allMatch(p -> p.x() > 15 - 9);
    }

    @Test
    void itRisesAboveTheUpperFace() {
        DesignBuilder marked = new DesignBuilder();
        DesignBuilder plain = new DesignBuilder();
        marked.mark = true;
        IndexMark mark = mark(marked);
        double foot = area(mark.foot().get(1), mark.foot().get(2), mark.foot().get(0));
        double top = area(mark.top().get(1), mark.top().get(2), mark.top().get(0));
        double frustum = IndexMark.HEIGHT_MM / 3 * (foot + top + Math.sqrt(foot * top));
        assertThat(volume(marked) - volume(plain)).isCloseTo(frustum, within(1e-9));
    }

    private static double area(Point2 a, Point2 b, Point2 c) {
        return b.minus(a).cross(c.minus(a)) / 2;
    }

    private static double volume(DesignBuilder design) {
        return MeshCheck.of(SolidBuilder.build(design.build())).signedVolumeMm3();
    }

    private static double length(IndexMark mark) {
        return mark.foot().get(1).x() - mark.foot().get(0).x();
    }

    private static IndexMark mark(DesignBuilder design) {
        Dimensions d = DesignRules.dimensions(design.build());
        return IndexMark.fitting(d, Footprints.of(d)).orElseThrow();
    }
}
