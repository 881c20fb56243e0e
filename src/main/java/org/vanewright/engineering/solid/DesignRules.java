package org.vanewright.engineering.solid;

import java.util.List;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/**
 * Which device designs make a solid, and what an absent value means.
 *
 * <p>The numeric bounds are engineering judgement for small printed pieces; the geometric ones follow from the shape.
 */
public final class DesignRules {
    private static final String MM = "mm";

    private DesignRules() {}

    /**
     * All problems of a design as its author gave it; empty where {@link SolidBuilder#build} can make it. Ranges of
     * single values are checked first, how they go together only when those are clean.
     */
    public static List<FieldProblem> check(DeviceDesign design) {
        DeviceDesign full = DesignDefaults.scalars(design);
        Checks checks = ranges(full);
        if (checks.isClean()) {
            new FitRules(Dimensions.of(placed(full)), checks).check();
        }
        return checks.problems();
    }

    /**
     * The design with every absent optional value filled in: planform RECTANGULAR, edges SQUARE, tip length half the
     * length, foot 30° and as wide as the vane is thick (none), outline ROUNDED_RECTANGLE, radii and bevel 0, pair angle
     * 15°, index mark present, chord tolerance 0.02 mm, inset 0 for a single vane with a square trailing edge and
     * otherwise the smallest, in steps of 0.25 mm, that fits. The underside stays flat where no radius is given. A
     * required value that is missing stays missing, and with it, or with one out of range, what depends on it.
     */
    public static DeviceDesign withDefaults(DeviceDesign design) {
        DeviceDesign full = DesignDefaults.scalars(design);
        return ranges(full).isClean() ? placed(full) : full;
    }

    /** @throws InvalidInputException with every problem of the design, if there is any */
    static Dimensions dimensions(DeviceDesign design) {
        List<FieldProblem> problems = check(design);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
        return Dimensions.of(withDefaults(design));
    }

    private static DeviceDesign placed(DeviceDesign full) {
        Base base = full.base();
        if (base == null || base.trailingEdgeInsetMm() != null) {
            return full;
        }
        return DesignDefaults.withInset(full, DesignDefaults.inset(Dimensions.of(DesignDefaults.withInset(full, 1))));
    }

    private static Checks ranges(DeviceDesign design) {
        Checks checks = new Checks();
        Vane vane = design.vane();
        Base base = design.base();
        Pair pair = design.pair();
        if (checks.present("vane", vane, "a vane") && vane != null) {
            vane(checks, vane);
        }
        if (checks.present("base", base, "a base") && base != null) {
            base(checks, base);
        }
        if (pair != null) {
            checks.range("pair.angleDeg", pair.angleDeg(), -45, 45, "°");
            checks.range("pair.gapMm", pair.gapMm(), 0.5, 148, MM);
        }
        checks.range("chordToleranceMm", design.chordToleranceMm(), 0.002, 0.5, MM);
        return checks;
    }

    private static void vane(Checks checks, Vane vane) {
        checks.range("vane.heightMm", vane.heightMm(), 0.5, 60, MM);
        checks.range("vane.lengthMm", vane.lengthMm(), 2, 200, MM);
        checks.range("vane.thicknessMm", vane.thicknessMm(), 0.4, 10, MM);
        checks.optionalRange("vane.tipLengthMm", vane.tipLengthMm(), 0.4, 200, MM);
        checks.range("vane.tipRadiusMm", vane.tipRadiusMm(), 0, 60, MM);
        checks.range("vane.filletRadiusMm", vane.filletRadiusMm(), 0, 20, MM);
        checks.range("vane.footAngleDeg", vane.footAngleDeg(), 15, 60, "°");
        checks.optionalRange("vane.footWidthMm", vane.footWidthMm(), 0.4, 40, MM);
    }

    private static void base(Checks checks, Base base) {
        checks.range("base.lengthMm", base.lengthMm(), 2, 250, MM);
        checks.range("base.widthMm", base.widthMm(), 2, 150, MM);
        checks.range("base.thicknessMm", base.thicknessMm(), 0.4, 20, MM);
        Double corner = base.cornerRadiusMm();
        checks.require(
                corner != null && (corner == 0 || (corner >= 0.1 && corner <= 75)),
                "base.cornerRadiusMm",
                corner,
                "0 mm, or 0.1 mm to 75 mm");
        checks.range("base.edgeBevelMm", base.edgeBevelMm(), 0, 10, MM);
        checks.optionalRange("base.trailingEdgeInsetMm", base.trailingEdgeInsetMm(), 0, 240, MM);
        Double radius = base.undersideRadiusMm();
        boolean ok = radius == null || (Double.isFinite(radius) && Math.abs(radius) >= 2 && Math.abs(radius) <= 1e6);
        checks.require(
                ok, "base.undersideRadiusMm", radius, "2 mm to 1000000 mm, negative over a hollow, absent for flat");
    }
}
