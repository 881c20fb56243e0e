package org.vanewright.engineering.gauge;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * The skin round the centre of one base, taken as flat: from the device's own frame to s and v. On a swept or tapered wing
 * the lines of constant s are not square to the section, which the patch allows for.
 */
final class SkinPatch {
    private static final double STEP_MM = 2;

    private final Slot slot;
    /** Of the direction in which v grows at constant s: its part along the section, and its length square to the section. */
    private final double alongPerMm;

    private final double squarePerMm;

    SkinPatch(GaugeFrame frame, Gauge gauge, Slot slot) {
        this.slot = slot;
        double station = gauge.cutForMm() + slot.offsetMm();
        NosePoint here = frame.curve(gauge.panel(), station).at(slot.arcMm());
        NosePoint in = frame.curve(gauge.panel(), station - STEP_MM).at(slot.arcMm());
        NosePoint out = frame.curve(gauge.panel(), station + STEP_MM).at(slot.arcMm());
        double wx = (out.x() - in.x()) / (2 * STEP_MM);
        double wz = (out.z() - in.z()) / (2 * STEP_MM);
        alongPerMm = wx * here.tangentX() + wz * here.tangentZ();
        squarePerMm = Math.sqrt(1 + wx * wx + wz * wz - alongPerMm * alongPerMm);
    }

    /** A device's own outline, x rearward: with toe-in its rear goes outboard. */
    List<Point2> onSkin(List<Point2> own) {
        return own.stream().map(this::onSkin).toList();
    }

    private Point2 onSkin(Point2 own) {
        // the frame of the device has no handedness to keep, since devices are symmetric about their x axis
        Point2 turned = own.rotated(Math.toRadians(slot.angleDeg()));
        double v = turned.y() / squarePerMm;
        return new Point2(slot.arcMm() + turned.x() - alongPerMm * v, slot.offsetMm() + v);
    }
}
