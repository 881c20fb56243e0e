package org.vanewright.engineering.solid;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/** The values a design takes where its author gave none. */
final class DesignDefaults {
    private static final double INSET_STEP_MM = 0.25;

    private DesignDefaults() {}

    /** Everything but the inset, which depends on the rest being sound. */
    static DeviceDesign scalars(DeviceDesign design) {
        Vane vane = design.vane();
        Base base = design.base();
        Pair pair = design.pair();
        return new DeviceDesign(
                vane == null ? null : vane(vane),
                pair == null ? null : new Pair(or(pair.angleDeg(), 15.0), pair.gapMm()),
                base == null ? null : base(base, single(design, vane)),
                or(design.indexMark(), true),
                or(design.chordToleranceMm(), 0.02));
    }

    private static Vane vane(Vane v) {
        Double length = v.lengthMm();
        return new Vane(
                or(v.planform(), Planform.RECTANGULAR),
                v.heightMm(),
                length,
                v.thicknessMm(),
                v.tipLengthMm() == null ? derived(length, 0.5, 2, 200) : v.tipLengthMm(),
                or(v.leadingEdge(), EdgeTreatment.SQUARE),
                or(v.trailingEdge(), EdgeTreatment.SQUARE),
                or(v.tipRadiusMm(), 0.0),
                or(v.filletRadiusMm(), 0.0),
                or(v.footAngleDeg(), 30.0),
                v.footWidthMm() == null ? derived(v.thicknessMm(), 1, 0.4, 10) : v.footWidthMm());
    }

    private static Base base(Base b, boolean flush) {
        return new Base(
                or(b.outline(), BaseOutline.ROUNDED_RECTANGLE),
                b.lengthMm(),
                b.widthMm(),
                b.thicknessMm(),
                or(b.cornerRadiusMm(), 0.0),
                or(b.edgeBevelMm(), 0.0),
                b.trailingEdgeInsetMm() == null && flush ? Double.valueOf(0) : b.trailingEdgeInsetMm(),
                b.undersideRadiusMm());
    }

    /** A single vane with a square trailing edge ends flush with its base, so that it can stand to be printed. */
    private static boolean single(DeviceDesign design, @Nullable Vane vane) {
        return design.pair() == null
                && (vane == null || or(vane.trailingEdge(), EdgeTreatment.SQUARE) == EdgeTreatment.SQUARE);
    }

    /** The smallest inset, in quarter millimetres, with which the vanes stand clear on the upper face. */
    static double inset(Dimensions d) {
        double least = d.bevel() + 1.5 * d.fillet() + 0.5 + d.thickness() / 2 * Math.abs(Math.sin(d.toeIn()));
        double first = Math.ceil(least / INSET_STEP_MM) * INSET_STEP_MM;
        // the outlines do not change with the inset, nor with the underside
        Dimensions flat = d.flattened().withInset(first);
        BaseShape base = new BaseShape(flat);
        VaneShape vane = new VaneShape(flat);
        for (double inset = first; inset < d.baseLength() / 2; inset += INSET_STEP_MM) {
            if (new Footprints(flat.withInset(inset), base, vane).shortage().mm() <= 0) {
                return inset;
            }
        }
        return first;
    }

    static DeviceDesign withInset(DeviceDesign design, double insetMm) {
        Base b = design.base();
        Base moved = b == null
                ? null
                : new Base(
                        b.outline(),
                        b.lengthMm(),
                        b.widthMm(),
                        b.thicknessMm(),
                        b.cornerRadiusMm(),
                        b.edgeBevelMm(),
                        insetMm,
                        b.undersideRadiusMm());
        return new DeviceDesign(design.vane(), design.pair(), moved, design.indexMark(), design.chordToleranceMm());
    }

    /** Nothing is derived from a value that is refused itself, so that one mistake gives one problem. */
    private static @Nullable Double derived(@Nullable Double from, double factor, double low, double high) {
        return from == null || !(from >= low && from <= high) ? null : Double.valueOf(from * factor);
    }

    private static <T> T or(@Nullable T value, T otherwise) {
        return value == null ? otherwise : value;
    }
}
