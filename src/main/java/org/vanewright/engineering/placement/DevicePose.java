package org.vanewright.engineering.placement;

import java.util.List;
import java.util.function.UnaryOperator;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.unroll.SkinStation;

/**
 * Where and how a device lies on a flat sheet.
 *
 * @param centre of its base
 * @param rearward unit vector of the local chordwise direction, towards the trailing edge
 * @param outboard unit vector square to it, away from the aircraft's centre line
 * @param angleDeg toe-in positive
 */
public record DevicePose(Point2 centre, Point2 rearward, Point2 outboard, double angleDeg) {
    /** At a place on the flat sheet. Rulings need not be square to the section, so the square direction is made here. */
    public static DevicePose of(SkinStation at, double angleDeg) {
        Point2 rearward = at.rearward();
        Point2 square = new Point2(-rearward.y(), rearward.x());
        Point2 outboard = square.dot(at.outboard()) >= 0 ? square : square.times(-1);
        return new DevicePose(at.flat(), rearward, outboard, angleDeg);
    }

    /** The same pose after a rigid or mirroring map of the sheet that leaves lengths alone. */
    public DevicePose mapped(UnaryOperator<Point2> map) {
        return new DevicePose(map.apply(centre), map.apply(rearward), map.apply(outboard), angleDeg);
    }

    /** A point given in the device's own frame; devices are symmetric about their x axis, so y has no sign to keep. */
    public Point2 toSheet(Point2 own) {
        return centre.plus(axis().times(own.x())).plus(across().times(own.y()));
    }

    public List<Point2> toSheet(List<Point2> own) {
        return own.stream().map(this::toSheet).toList();
    }

    /** Direction of the device's own x axis: with toe-in the leading edge turns inboard, so the rear goes outboard. */
    public Point2 axis() {
        double angle = Math.toRadians(angleDeg);
        return rearward.times(Math.cos(angle)).plus(outboard.times(Math.sin(angle)));
    }

    private Point2 across() {
        double angle = Math.toRadians(angleDeg);
        return outboard.times(Math.cos(angle)).minus(rearward.times(Math.sin(angle)));
    }
}
