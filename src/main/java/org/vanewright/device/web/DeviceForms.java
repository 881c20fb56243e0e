package org.vanewright.device.web;

import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.page.UnitSystem;

/**
 * Between a device and its form. Fields are named by the document's own paths, beside {@value #PIECE}, which says
 * whether two vanes share the base. A field that means nothing for the choices made is kept as typed and not read.
 */
final class DeviceForms {
    static final String PIECE = "piece";
    static final String SINGLE = "SINGLE";
    static final String PAIR = "PAIR";

    private static final Vane NO_VANE = new Vane(null, null, null, null, null, null, null, null, null, null, null);
    private static final Base NO_BASE = new Base(null, null, null, null, null, null, null, null);

    private DeviceForms() {}

    /** A small rectangular vane that prints standing on its foot, to start from. */
    static Form blank() {
        Vane vane = new Vane(
                Planform.RECTANGULAR,
                8.0,
                20.0,
                1.2,
                null,
                EdgeTreatment.ROUNDED,
                EdgeTreatment.SQUARE,
                null,
                0.6,
                30.0,
                4.0);
        Base base = new Base(BaseOutline.ROUNDED_RECTANGLE, 30.0, 16.0, 1.0, 4.0, 0.3, null, null);
        Form form = of(new DeviceDocument("", null, vane, null, base, true, null, 1040.0, false));
        return form.put("pair.angleDeg", "15").put("pair.gapMm", "20");
    }

    /** The form that asks for build plates. */
    static Form plate() {
        return new Form(UnitSystem.METRIC)
                .put("bedWidthMm", Double.valueOf(PlateQuery.BED_MM))
                .put("bedDepthMm", Double.valueOf(PlateQuery.BED_MM))
                .put("count", Integer.toString(PlateQuery.COUNT))
                .put("spacingMm", Double.valueOf(PlateQuery.SPACING_MM));
    }

    static Form of(DeviceDocument d) {
        Form form = new Form(UnitSystem.METRIC);
        Vane v = d.vane() == null ? NO_VANE : d.vane();
        Base b = d.base() == null ? NO_BASE : d.base();
        Pair p = d.pair() == null ? new Pair(null, null) : d.pair();
        form.put("name", d.name())
                .put("description", d.description())
                .put("invented", d.invented() ? "true" : "")
                .put(PIECE, d.pair() == null ? SINGLE : PAIR)
                .put("pair.angleDeg", p.angleDeg())
                .put("pair.gapMm", p.gapMm())
                .put("vane.planform", or(v.planform(), Planform.RECTANGULAR))
                .put("vane.heightMm", v.heightMm())
                .put("vane.lengthMm", v.lengthMm())
                .put("vane.thicknessMm", v.thicknessMm())
                .put("vane.tipLengthMm", v.tipLengthMm())
                .put("vane.tipRadiusMm", v.tipRadiusMm())
                .put("vane.leadingEdge", or(v.leadingEdge(), EdgeTreatment.SQUARE))
                .put("vane.trailingEdge", or(v.trailingEdge(), EdgeTreatment.SQUARE))
                .put("vane.filletRadiusMm", v.filletRadiusMm())
                .put("vane.footWidthMm", v.footWidthMm())
                .put("vane.footAngleDeg", v.footAngleDeg())
                .put("base.outline", or(b.outline(), BaseOutline.ROUNDED_RECTANGLE))
                .put("base.lengthMm", b.lengthMm())
                .put("base.widthMm", b.widthMm())
                .put("base.thicknessMm", b.thicknessMm())
                .put("base.cornerRadiusMm", b.cornerRadiusMm())
                .put("base.edgeBevelMm", b.edgeBevelMm())
                .put("base.trailingEdgeInsetMm", b.trailingEdgeInsetMm())
                .put("base.undersideRadiusMm", b.undersideRadiusMm())
                .put("indexMark", Boolean.FALSE.equals(d.indexMark()) ? "" : "true")
                .put("chordToleranceMm", d.chordToleranceMm())
                .put("densityKgM3", d.densityKgM3());
        OriginFields.put(form, d);
        PhotographFields.put(form, d);
        return form;
    }

    /** The device as typed; what cannot be read is noted in the form. */
    static DeviceDocument read(Form form) {
        String name = form.text("name");
        Pair pair = form.is(PIECE, PAIR) ? new Pair(form.number("pair.angleDeg"), form.number("pair.gapMm")) : null;
        return new DeviceDocument(
                name == null ? "" : name,
                form.text("description"),
                vane(form, pair != null),
                pair,
                base(form),
                form.checked("indexMark"),
                form.number("chordToleranceMm"),
                form.number("densityKgM3"),
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static Vane vane(Form form, boolean paired) {
        Planform planform = form.choice("vane.planform", Planform.class);
        boolean swept = planform == Planform.SWEPT_TRAPEZIUM;
        boolean cornered = swept || planform == null || planform == Planform.RECTANGULAR;
        return new Vane(
                planform,
                form.number("vane.heightMm"),
                form.number("vane.lengthMm"),
                form.number("vane.thicknessMm"),
                swept ? form.number("vane.tipLengthMm") : null,
                form.choice("vane.leadingEdge", EdgeTreatment.class),
                form.choice("vane.trailingEdge", EdgeTreatment.class),
                cornered ? form.number("vane.tipRadiusMm") : null,
                form.number("vane.filletRadiusMm"),
                paired ? null : form.number("vane.footAngleDeg"),
                paired ? null : form.number("vane.footWidthMm"));
    }

    private static Base base(Form form) {
        BaseOutline outline = form.choice("base.outline", BaseOutline.class);
        return new Base(
                outline,
                form.number("base.lengthMm"),
                form.number("base.widthMm"),
                form.number("base.thicknessMm"),
                outline == BaseOutline.ELLIPSE_ENDED ? null : form.number("base.cornerRadiusMm"),
                form.number("base.edgeBevelMm"),
                form.number("base.trailingEdgeInsetMm"),
                form.number("base.undersideRadiusMm"));
    }

    private static <E extends Enum<E>> E or(@Nullable E given, E otherwise) {
        return given == null ? otherwise : given;
    }
}
