package org.vanewright.device;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.SolidBuilder;
import org.vanewright.engineering.solid.SolidLabel;
import org.vanewright.platform.HeapShare;
import org.vanewright.record.Revision;

/** Makes the solids of devices, and keeps those asked for lately. */
@Component
public class DeviceSolids {
    /** Bytes of a triangle with its share of the vertices, about. */
    private static final int TRIANGLE = 24;

    private static final long KEPT_TRIANGLES = HeapShare.bytes(40) / TRIANGLE;

    /** Coarse enough to draw quickly, fine enough that a page shows no corners. */
    private static final double PICTURE_TOLERANCE_MM = 0.05;

    private final Cache<DeviceDesign, Mesh> meshes = Caffeine.newBuilder()
            .maximumWeight(KEPT_TRIANGLES)
            .weigher((DeviceDesign design, Mesh mesh) -> mesh.triangleCount())
            .build();

    /**
     * The solid exactly as designed.
     *
     * @throws InvalidInputException with every problem of the design
     */
    public Mesh exact(DeviceDesign design) {
        DeviceDesign full = DesignRules.withDefaults(design);
        return meshes.get(full, SolidBuilder::build);
    }

    /**
     * The solid with curves no finer than a picture needs.
     *
     * @throws InvalidInputException with every problem of the design
     */
    public Mesh forPicture(DeviceDesign design) {
        DeviceDesign full = DesignRules.withDefaults(design);
        Double given = full.chordToleranceMm();
        if (given == null || given >= PICTURE_TOLERANCE_MM) {
            return exact(full);
        }
        DeviceDesign coarse =
                new DeviceDesign(full.vane(), full.pair(), full.base(), full.indexMark(), PICTURE_TOLERANCE_MM);
        // a fine curve can pass where a coarse one has too little room
        return DesignRules.check(coarse).isEmpty() ? exact(coarse) : exact(full);
    }

    /** What files say about the solid of a revision. */
    public static SolidLabel label(Revision<DeviceDocument> r) {
        String name = r.printedName();
        return new SolidLabel(name + (r.content().invented() ? " (invented)" : ""), name, r.number(), r.sha256());
    }

    /**
     * The design as it is printed for one place on a wing.
     *
     * @param undersideRadiusMm radius of the skin there; absent leaves the design's own
     */
    public static DeviceDesign on(DeviceDesign design, @Nullable Double undersideRadiusMm) {
        Base b = design.base();
        if (undersideRadiusMm == null || b == null) {
            return design;
        }
        Base curved = new Base(
                b.outline(),
                b.lengthMm(),
                b.widthMm(),
                b.thicknessMm(),
                b.cornerRadiusMm(),
                b.edgeBevelMm(),
                b.trailingEdgeInsetMm(),
                undersideRadiusMm);
        return new DeviceDesign(design.vane(), design.pair(), curved, design.indexMark(), design.chordToleranceMm());
    }
}
