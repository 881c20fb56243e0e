package org.vanewright.engineering.section;

import org.vanewright.engineering.geometry.Point2;

/**
 * A curve moved and turned.
 *
 * @param origin what becomes (0, 0)
 * @param angleRad turned about it, anticlockwise positive
 */
record LevelCurve(SkinCurve curve, Point2 origin, double angleRad) implements SkinCurve {
    @Override
    public double[] breaks() {
        return curve.breaks();
    }

    @Override
    public CurvePoint at(double parameter) {
        CurvePoint p = curve.at(parameter);
        Point2 place = new Point2(p.x(), p.y()).minus(origin).rotated(angleRad);
        Point2 first = new Point2(p.dx(), p.dy()).rotated(angleRad);
        Point2 second = new Point2(p.ddx(), p.ddy()).rotated(angleRad);
        return new CurvePoint(place.x(), place.y(), first.x(), first.y(), second.x(), second.y());
    }

    @Override
    public double speed(double parameter) {
        return curve.speed(parameter);
    }
}
