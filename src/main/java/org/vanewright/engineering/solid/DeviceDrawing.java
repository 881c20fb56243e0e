package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.geometry.Point2;

/** Plan outlines of a device, and its dimensioned three-view drawing. */
public final class DeviceDrawing {
    private DeviceDrawing() {}

    /**
     * The base's outline exactly as the solid's, seen from above: device frame, mm, x rearward, anticlockwise, the last
     * point joined to the first.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for a design that {@link DesignRules} refuses
     */
    public static List<Point2> baseOutline(DeviceDesign design) {
        return new DeviceOutlines(DesignRules.dimensions(design)).base();
    }

    /**
     * What is seen from above: first the base's outline as {@link #baseOutline}, then each vane's section at the root
     * without its fillet. Closed outlines in the device frame, mm.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for a design that {@link DesignRules} refuses
     */
    public static List<List<Point2>> planOutline(DeviceDesign design) {
        DeviceOutlines outlines = new DeviceOutlines(DesignRules.dimensions(design));
        List<List<Point2>> plan = new ArrayList<>();
        plan.add(outlines.base());
        plan.addAll(outlines.roots());
        return plan;
    }

    /**
     * Top view above, side view below it, front view to the left of the side view; dimensions in mm, notes beneath. The
     * scale is the largest round one that fits A4 on its side. Origin at the middle of the side view's foot.
     *
     * @param design any the rules accept
     * @param name for the title
     * @throws org.vanewright.engineering.input.InvalidInputException for a design that {@link DesignRules} refuses
     */
    public static Drawing threeView(DeviceDesign design, String name) {
        return new ThreeView(DesignRules.dimensions(design)).draw(name);
    }
}
