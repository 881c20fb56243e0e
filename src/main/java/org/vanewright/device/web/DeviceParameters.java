package org.vanewright.device.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.platform.page.Units;

/** The parameters of a valid design in words, defaults filled in, for the table of its page. */
final class DeviceParameters {
    private final Units units;
    private final List<Row> rows = new ArrayList<>();

    private DeviceParameters(Units units) {
        this.units = units;
    }

    /** One line of the table. */
    public record Row(String part, String name, String value) {}

    static List<Row> of(DeviceDocument device, Units units) {
        DeviceDesign full = DesignRules.withDefaults(device.design());
        DeviceParameters table = new DeviceParameters(units);
        table.vane(Objects.requireNonNull(full.vane()), full.pair());
        if (full.pair() != null) {
            table.pair(full.pair());
        }
        table.base(Objects.requireNonNull(full.base()));
        table.row("Solid", "Index mark, pointing forward", Boolean.TRUE.equals(full.indexMark()) ? "raised" : "none");
        table.length("Solid", "Chord tolerance of curves", full.chordToleranceMm());
        return List.copyOf(table.rows);
    }

    /** One line that says what it is. */
    static String summary(DeviceDocument device, Units units) {
        Vane vane = Objects.requireNonNull(device.vane());
        Planform planform = vane.planform() == null ? Planform.RECTANGULAR : vane.planform();
        String size = units.deviceLength(vane.heightMm()) + " high, " + units.deviceLength(vane.lengthMm()) + " long";
        String shape = DeviceChoices.words(planform);
        return device.pair() == null ? shape + ", " + size : "Pair, " + shape.toLowerCase(Locale.ROOT) + ", " + size;
    }

    /** Whether vane and base end in one plane, on which the piece can stand while it prints. */
    static boolean stands(DeviceDocument device) {
        Base base = DesignRules.withDefaults(device.design()).base();
        return base != null && Double.valueOf(0).equals(base.trailingEdgeInsetMm());
    }

    private void vane(Vane v, @Nullable Pair pair) {
        String part = pair == null ? "Vane" : "Each vane";
        row(part, "Planform", DeviceChoices.words(Objects.requireNonNull(v.planform())));
        length(part, "Height above the base", v.heightMm());
        length(part, "Length at the root", v.lengthMm());
        length(part, "Thickness", v.thicknessMm());
        if (v.planform() == Planform.SWEPT_TRAPEZIUM) {
            length(part, "Length at the tip", v.tipLengthMm());
        }
        row(part, "Leading edge", DeviceChoices.words(Objects.requireNonNull(v.leadingEdge())));
        row(part, "Trailing edge", DeviceChoices.words(Objects.requireNonNull(v.trailingEdge())));
        radius(part, "Tip radius", v.tipRadiusMm(), "sharp");
        radius(part, "Fillet to the base", v.filletRadiusMm(), "none");
        boolean footed = v.footWidthMm() != null && v.thicknessMm() != null && v.footWidthMm() > v.thicknessMm();
        row(
                part,
                "Printing foot",
                footed
                        ? units.deviceLength(v.footWidthMm()) + " wide, bevelled at " + units.angle(v.footAngleDeg())
                        : "none");
    }

    private void pair(Pair p) {
        double angle = Objects.requireNonNull(p.angleDeg());
        String way = angle == 0 ? "parallel" : angle > 0 ? "toe-in (common flow down)" : "toe-out (common flow up)";
        row("Pair", "Angle of each vane", units.angle(Math.abs(angle)) + " " + way);
        length("Pair", "Gap at mid-length", p.gapMm());
    }

    private void base(Base b) {
        row("Base", "Outline", DeviceChoices.words(Objects.requireNonNull(b.outline())));
        length("Base", "Length", b.lengthMm());
        length("Base", "Width", b.widthMm());
        length("Base", "Thickness", b.thicknessMm());
        if (b.outline() == BaseOutline.ROUNDED_RECTANGLE) {
            radius("Base", "Corner radius", b.cornerRadiusMm(), "square");
        }
        radius("Base", "Edge bevel, 45°", b.edgeBevelMm(), "none");
        Double inset = b.trailingEdgeInsetMm();
        row("Base", "Trailing edge to rear end", inset == null || inset == 0 ? "flush" : units.deviceLength(inset));
        Double radius = b.undersideRadiusMm();
        String skin = radius == null
                ? "flat, unless a layout finds another"
                : units.deviceLength(Math.abs(radius)) + (radius > 0 ? " over a bulging skin" : " over a hollow skin");
        row("Base", "Underside radius", skin);
    }

    private void length(String part, String name, @Nullable Double mm) {
        row(part, name, units.deviceLength(mm));
    }

    private void radius(String part, String name, @Nullable Double mm, String none) {
        row(part, name, mm == null || mm == 0 ? none : units.deviceLength(mm));
    }

    private void row(String part, String name, String value) {
        rows.add(new Row(part, name, value));
    }
}
