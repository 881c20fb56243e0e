package org.vanewright.airframe.web;

import java.util.List;
import org.vanewright.airframe.KeepOutSide;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects and radio buttons offer. */
public record AirframeChoices(
        List<Option> bases,
        List<Option> kinds,
        List<Option> sides,
        List<Option> trailingEdges,
        List<Option> firstSections,
        List<Option> nextSections,
        List<Option> outerSections) {
    private static final Option NACA = new Option(SectionFields.NACA, "NACA number");
    private static final Option COORDINATES = new Option(SectionFields.COORDINATES, "Coordinates");

    static final AirframeChoices ALL = new AirframeChoices(
            Option.of(OperatingBasis.values(), OperatingBasis::label),
            Option.of(SurfaceDocument.Kind.values(), SurfaceDocument.Kind::label),
            Option.of(KeepOutSide.values(), KeepOutSide::label),
            List.of(new Option("BLUNT", "Blunt, as published"), new Option("CLOSED", "Closed")),
            List.of(NACA, COORDINATES),
            List.of(new Option(SectionFields.SAME, "As the panel before ends"), NACA, COORDINATES),
            List.of(new Option(SectionFields.SAME, "Same as inner"), NACA, COORDINATES));

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(AirframeForms.read(form.unchecked(), null));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
