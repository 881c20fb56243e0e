package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;

class BaseFootprintTest {
    @Test
    void aRectangleStandsForItself() {
        BaseFootprint base = new BaseFootprint(
                List.of(new Point2(-13, -6), new Point2(12, -6), new Point2(12, 6), new Point2(-13, 6)));
        assertThat(base.areaMm2()).isCloseTo(300, within(1e-9));
        assertThat(base.across(1).edgeMm()).isCloseTo(25, within(1e-9));
        assertThat(base.across(1).acrossMm()).isEqualTo(12);
        assertThat(base.along(1).edgeMm()).isCloseTo(12, within(1e-9));
        assertThat(base.along(1).acrossMm()).isEqualTo(25);
    }

    /** Second moment of an ellipse: π a b³/4. */
    @Test
    void anEllipseBearsLessThanTheRectangleRoundIt() {
        List<Point2> ellipse = IntStream.range(0, 2000)
                .mapToDouble(i -> 2 * Math.PI * i / 2000)
                .mapToObj(a -> new Point2(15 * Math.cos(a), 8 * Math.sin(a)))
                .toList();
        BaseFootprint base = new BaseFootprint(ellipse);
        double second = Math.PI * 15 * 8 * 8 * 8 / 4;
        assertThat(base.areaMm2()).isCloseTo(Math.PI * 15 * 8, withinPercentage(0.01));
        assertThat(base.across(1).edgeMm()).isCloseTo(12 * second / (16.0 * 16 * 16), withinPercentage(0.01));
    }

    /** The far edge of a lopsided base counts: a triangle's is two thirds of its height from the middle. */
    @Test
    void aTriangleIsJudgedByItsTip() {
        BaseFootprint base = new BaseFootprint(List.of(new Point2(0, -5), new Point2(30, 0), new Point2(0, 5)));
        double second = 10.0 * 30 * 30 * 30 / 36;
        assertThat(base.along(0).edgeMm()).isCloseTo(6 * second / (20.0 * 30 * 30), within(1e-9));
    }
}
