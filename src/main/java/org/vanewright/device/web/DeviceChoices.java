package org.vanewright.device.web;

import java.util.List;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects and radio buttons offer, and the words the pages use for them. */
public record DeviceChoices(List<Option> pieces, List<Option> planforms, List<Option> edges, List<Option> outlines) {
    static final DeviceChoices ALL = new DeviceChoices(
            List.of(
                    new Option(DeviceForms.SINGLE, "One vane on its base"),
                    new Option(DeviceForms.PAIR, "A pair on one base")),
            Option.of(Planform.values(), DeviceChoices::words),
            Option.of(EdgeTreatment.values(), DeviceChoices::words),
            Option.of(BaseOutline.values(), DeviceChoices::words));

    static String words(Planform planform) {
        return switch (planform) {
            case RECTANGULAR -> "Rectangular";
            case TRIANGULAR -> "Triangular, rising rearward";
            case SWEPT_TRAPEZIUM -> "Swept trapezium";
            case OGIVAL -> "Ogival";
        };
    }

    static String words(EdgeTreatment edge) {
        return switch (edge) {
            case SQUARE -> "Square";
            case ROUNDED -> "Rounded";
            case WEDGE -> "Wedge";
        };
    }

    static String words(BaseOutline outline) {
        return switch (outline) {
            case ROUNDED_RECTANGLE -> "Rounded rectangle";
            case ELLIPSE_ENDED -> "Ellipse-ended";
        };
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(DeviceForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
