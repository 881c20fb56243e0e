package org.vanewright.installsheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.layout.LayoutPlan;

/**
 * Mass and moment of one row for the weight record. A device is its solid at full density; it acts at the centre of its
 * base. Arms count rearward from the datum of the surface's leading-edge offsets, parallel to the chord.
 *
 * @param row counts from 1
 * @param name of the row
 * @param surface it is on
 * @param left devices on the left wing
 * @param right devices on the right wing
 * @param eachG mass of one; null where the device states no density
 * @param volumeMm3 of one
 * @param densityKgM3 as the device states it
 * @param meanArmMm of all its devices
 * @param tapeAreaMm2 of all its bases together
 */
public record SetMass(
        int row,
        String name,
        String surface,
        int left,
        int right,
        @Nullable Double eachG,
        double volumeMm3,
        @Nullable Double densityKgM3,
        double meanArmMm,
        double tapeAreaMm2) {
    public static final String METHOD =
            "Mass of a device: volume of its solid times the density that the device's record states, printed solid; one with"
                    + " infill is lighter, so weigh ten. Arm: leading-edge offset of the station plus chord times x/c of the"
                    + " base's centre, rearward from the datum of the surface's own leading-edge offsets; add the arm of that"
                    + " datum from the aircraft's. Moment: mass times arm.";

    /** Reference density, so that a device without one still has its volume. */
    private static final double WATER_KG_M3 = 1000;

    private static final double G_MM_PER_KG_MM = 1000;

    public int count() {
        return left + right;
    }

    /** Of all devices of the row; null where the mass of one is not known. */
    public @Nullable Double massG() {
        return eachG == null ? null : Double.valueOf(eachG * count());
    }

    /** Null where the mass is not known. */
    public @Nullable Double momentKgMm() {
        return eachG == null ? null : Double.valueOf(eachG * count() * meanArmMm / G_MM_PER_KG_MM);
    }

    /** Every row, in the layout's order by surface. */
    static List<SetMass> of(LayoutPlan plan, DeviceSolids solids) {
        List<SetMass> all = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (TemplateRow row : surface.rows()) {
                all.add(of(plan, surface, row, solids));
            }
        }
        return all;
    }

    private static SetMass of(LayoutPlan plan, LayoutPlan.SurfacePlan surface, TemplateRow row, DeviceSolids solids) {
        int index = row.plan().index();
        DeviceDocument device = plan.devices().get(index).content();
        List<Station> left = surface.placement().on(Wing.LEFT, index);
        List<Station> right = surface.placement().on(Wing.RIGHT, index);
        Double density = device.densityKgM3();
        double volume =
                MassProperties.of(solids.exact(device.design()), WATER_KG_M3).volumeMm3();
        List<Station> both = new ArrayList<>(left);
        both.addAll(right);
        double arm = both.stream().mapToDouble(s -> armMm(surface, s)).average().orElse(0);
        return new SetMass(
                index + 1,
                row.plan().name(),
                surface.name(),
                left.size(),
                right.size(),
                density == null ? null : Double.valueOf(volume * density * 1e-6),
                volume,
                density,
                arm,
                both.size() * areaMm2(DeviceDrawing.baseOutline(device.design())));
    }

    private static double armMm(LayoutPlan.SurfacePlan surface, Station s) {
        WingPanel panel = surface.shape().panels().get(s.panel());
        return panel.leadingEdgeMm(s.stationMm()) + s.chordMm() * s.xOverC();
    }

    /** Half the sum of cross products round the outline. */
    private static double areaMm2(List<Point2> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            twice += outline.get(i).cross(outline.get((i + 1) % outline.size()));
        }
        return Math.abs(twice) / 2;
    }
}
