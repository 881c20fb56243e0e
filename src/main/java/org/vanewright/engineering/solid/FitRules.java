package org.vanewright.engineering.solid;

import java.util.Locale;
import java.util.function.DoublePredicate;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** How the values of a design must go together. Each is within its own range already. */
final class FitRules {
    /** Wall left under a bevel, and height left above a fillet. */
    private static final double LEAST_STEP_MM = 0.2;

    /** Lets a bound itself pass. */
    private static final double ROUNDING_MM = 1e-9;

    private final Dimensions d;
    private final Checks checks;

    FitRules(Dimensions d, Checks checks) {
        this.d = d;
        this.checks = checks;
    }

    void check() {
        vane();
        foot();
        base();
        if (checks.isClean()) {
            sections();
        }
        if (checks.isClean()) {
            placing();
        }
        if (checks.isClean() && d.indexMark()) {
            checks.require(
                    IndexMark.fitting(d, Footprints.of(d)).isPresent(),
                    "indexMark",
                    "true",
                    "false, or a base with "
                            + mm(IndexMark.SHORTEST_MM + 2 * IndexMark.CLEARANCE_MM)
                            + " of upper face free on its centre line for the mark");
        }
    }

    private void vane() {
        double most = Math.min(d.height(), d.length() / 2);
        checks.require(
                d.thickness() <= most,
                "vane.thicknessMm",
                d.thickness(),
                "at most the height and half the length: " + mm(most));
        most = d.height() - LEAST_STEP_MM + ROUNDING_MM;
        checks.require(
                d.fillet() <= most, "vane.filletRadiusMm", d.fillet(), "at most " + mm(most) + " on a vane this high");
        if (d.planform() == Planform.OGIVAL || d.planform() == Planform.TRIANGULAR) {
            checks.require(d.tipRadius() == 0, "vane.tipRadiusMm", d.tipRadius(), "0 mm for this planform");
        }
        boolean square = d.trailingEdge() == EdgeTreatment.SQUARE;
        checks.require(
                square || !d.flush(),
                "vane.trailingEdge",
                d.trailingEdge(),
                "SQUARE where the vane ends flush with its base (trailingEdgeInsetMm 0)");
    }

    private void foot() {
        checks.require(
                d.footWidth() >= d.thickness(),
                "vane.footWidthMm",
                d.footWidth(),
                "at least the thickness of the vane, " + mm(d.thickness()));
        if (d.footed()) {
            checks.require(
                    d.flush() && !d.paired(),
                    "vane.footWidthMm",
                    d.footWidth(),
                    "the thickness of the vane (no foot) unless a single vane ends flush with its base");
        }
    }

    private void base() {
        checks.require(!d.paired() || !d.flush(), "base.trailingEdgeInsetMm", d.inset(), "more than 0 mm for a pair");
        double most = Math.min(d.baseLength(), d.baseWidth()) / 2;
        if (d.outline() == BaseOutline.ROUNDED_RECTANGLE) {
            checks.require(
                    d.cornerRadius() <= most,
                    "base.cornerRadiusMm",
                    d.cornerRadius(),
                    "at most half the base's shorter side, " + mm(most));
        }
        most = d.baseThickness() - LEAST_STEP_MM + ROUNDING_MM;
        boolean low = checks.require(
                d.bevel() <= most,
                "base.edgeBevelMm",
                d.bevel(),
                "at most " + mm(most) + " on a base " + mm(d.baseThickness()) + " thick");
        double tightest = d.baseLength();
        boolean bends = checks.require(
                Math.abs(d.undersideCurvature()) * tightest <= 1,
                "base.undersideRadiusMm",
                1 / d.undersideCurvature(),
                "at least the base's length, " + mm(tightest) + ", either way");
        if (low && bends && checks.isClean()) {
            checks.require(
                    new BaseShape(d).bevelFits(),
                    "base.edgeBevelMm",
                    d.bevel(),
                    "less than the outline's smallest radius of curvature and half its width");
        }
    }

    /** Every level section must keep all its edges. */
    private void sections() {
        VaneSection section = VaneSection.of(d);
        double least = section.shortestChord();
        if (!checks.require(
                d.length() >= least + 0.5,
                d.footed() ? "vane.footWidthMm" : "vane.lengthMm",
                d.footed() ? d.footWidth() : d.length(),
                "room for both edge treatments and the foot: a vane at least " + mm(least + 0.5) + " long")) {
            return;
        }
        planform(least);
        if (checks.isClean() && !new VaneShape(d).isSound()) {
            double most = largest(d.fillet(), r -> new VaneShape(d.withFillet(r)).isSound());
            checks.require(
                    false, "vane.filletRadiusMm", d.fillet(), "at most " + mm(most) + " beside this foot and tip");
        }
    }

    private void planform(double leastChord) {
        if (d.planform() == Planform.OGIVAL) {
            double most = d.length() - leastChord + ROUNDING_MM;
            checks.require(
                    d.height() <= most, "vane.heightMm", d.height(), "at most " + mm(most) + ", the run of this ogive");
            return;
        }
        if (d.planform() == Planform.SWEPT_TRAPEZIUM) {
            checks.require(
                    d.tipLength() >= leastChord && d.tipLength() <= d.length(),
                    "vane.tipLengthMm",
                    d.tipLength(),
                    mm(leastChord) + " to the root's length, " + mm(d.length()));
        }
        if (checks.isClean() && d.tipRadius() > 0) {
            double most = largest(d.tipRadius(), r -> tipRounds(r, leastChord));
            checks.require(
                    tipRounds(d.tipRadius(), leastChord),
                    "vane.tipRadiusMm",
                    d.tipRadius(),
                    "at most " + mm(most) + " on this tip");
        }
    }

    private boolean tipRounds(double radius, double leastChord) {
        double sweep = d.planform() == Planform.SWEPT_TRAPEZIUM ? d.length() - d.tipLength() : 0;
        SideOutline side = SideOutline.straight(d.height(), sweep, radius);
        return side.arcStart() >= 0 && d.length() - side.tipX() >= leastChord;
    }

    private void placing() {
        Footprints.Shortage bare = Footprints.of(d.withFillet(0)).shortage();
        if (bare.mm() > 0) {
            offBase(bare);
            return;
        }
        if (d.paired()) {
            checks.require(
                    Footprints.of(d.withFillet(0)).separation() >= Footprints.PAIR_CLEARANCE_MM,
                    "pair.gapMm",
                    d.gap(),
                    "enough that the vanes stay " + mm(Footprints.PAIR_CLEARANCE_MM) + " apart at this angle");
        }
        if (checks.isClean() && !filletFits(d.fillet())) {
            double most = largest(d.fillet(), this::filletFits);
            checks.require(
                    false, "vane.filletRadiusMm", d.fillet(), "at most " + mm(most) + " on this base's upper face");
        }
    }

    private boolean filletFits(double radius) {
        Footprints footprints = Footprints.of(d.withFillet(radius));
        return footprints.shortage().mm() <= 0 && footprints.separation() >= Footprints.PAIR_CLEARANCE_MM;
    }

    private void offBase(Footprints.Shortage shortage) {
        double across = Math.abs(shortage.outward().y());
        double along = Math.abs(shortage.outward().x());
        if (along < across && d.paired()) {
            double most = d.gap() - 2 * shortage.mm() / across;
            checks.require(false, "pair.gapMm", d.gap(), "at most " + mm(most) + " on a base this wide");
        } else if (along < across) {
            double least = d.baseWidth() + 2 * shortage.mm() / across;
            checks.require(
                    false, "base.widthMm", d.baseWidth(), "at least " + mm(up(least)) + " for this vane and foot");
        } else if (shortage.outward().x() > 0) {
            double least = d.inset() + shortage.mm() / along;
            checks.require(
                    false, "base.trailingEdgeInsetMm", d.inset(), "0 mm, or at least " + mm(up(least)) + " here");
        } else {
            double most = d.length() - shortage.mm() / along;
            checks.require(false, "vane.lengthMm", d.length(), "at most " + mm(most) + " on this base's upper face");
        }
    }

    /** Largest value below {@code tooLarge} that still passes, to 0.001; 0 where none does. */
    private static double largest(double tooLarge, DoublePredicate passes) {
        double low = 0;
        double high = tooLarge;
        while (high - low > 1e-3) {
            double middle = (low + high) / 2;
            if (passes.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double up(double value) {
        return Math.ceil(value * 100 - 1e-6) / 100;
    }

    /** Rounded down to hundredths, so that the bound named is itself allowed. */
    private static String mm(double value) {
        double down = Math.floor(Math.max(0, value) * 100 + 1e-6) / 100;
        return String.format(Locale.ROOT, "%.2f mm", down).replaceAll("\\.?0+ mm$", " mm");
    }
}
