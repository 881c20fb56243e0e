package org.vanewright.layout.web;

import java.util.List;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.Register;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects offer; airframes, devices and surfaces depend on what is published and chosen. */
public record LayoutChoices(
        List<Option> airframes,
        List<Option> devices,
        List<Option> surfaces,
        List<Option> sides,
        List<Option> arrangements,
        List<Option> wings,
        List<Option> conflicts,
        List<Option> registers) {

    static LayoutChoices of(List<Option> airframes, List<Option> devices, List<SurfaceDocument> surfaces) {
        return new LayoutChoices(
                airframes,
                devices,
                surfaces.stream().map(s -> new Option(s.label(), s.label())).toList(),
                Option.of(SurfaceSide.values(), s -> s == SurfaceSide.UPPER ? "Upper" : "Lower"),
                Option.of(Arrangement.values(), LayoutChoices::label),
                Option.of(WingChoice.values(), LayoutChoices::label),
                Option.of(
                        ConflictPolicy.values(),
                        c -> c == ConflictPolicy.MOVE ? "Move to the nearest free place" : "Leave out"),
                Option.of(Register.values(), LayoutChoices::label));
    }

    static String label(Arrangement arrangement) {
        return switch (arrangement) {
            case CO_ROTATING -> "Co-rotating: all alike";
            case COMMON_FLOW_DOWN -> "Pairs, common flow down: leading edges together";
            case COMMON_FLOW_UP -> "Pairs, common flow up: leading edges apart";
        };
    }

    private static String label(WingChoice wings) {
        return switch (wings) {
            case BOTH_MIRRORED -> "Both wings, mirrored";
            case BOTH_SAME_HAND -> "Both wings, turned the same way";
            case LEFT_ONLY -> "Left wing only";
            case RIGHT_ONLY -> "Right wing only";
        };
    }

    private static String label(Register register) {
        return switch (register) {
            case LEADING_EDGE -> "Leading edge, with a flap";
            case TRAILING_EDGE -> "Trailing edge";
            case SPAR_LINE -> "Spar line at a chord fraction";
        };
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(LayoutForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
