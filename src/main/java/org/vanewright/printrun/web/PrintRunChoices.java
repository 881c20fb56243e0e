package org.vanewright.printrun.web;

import java.util.List;
import org.vanewright.device.PrintMaterial;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.Option;
import org.vanewright.printrun.DefectKind;

/** What the form's selects offer. */
public record PrintRunChoices(List<Option> devices, List<Option> layouts) {
    public List<Option> materials() {
        return Option.of(PrintMaterial.values(), PrintMaterial::label);
    }

    /** Every kind of fault, in the order of the form's fields. */
    public List<String> faults() {
        return List.of(DefectKind.values()).stream().map(DefectKind::label).toList();
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(PrintRunForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
