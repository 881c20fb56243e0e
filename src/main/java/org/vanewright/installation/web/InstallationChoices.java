package org.vanewright.installation.web;

import java.util.List;
import org.vanewright.device.PrintMaterial;
import org.vanewright.installation.SurfaceFinish;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects offer. */
public record InstallationChoices(
        List<Option> layouts, List<Option> adhesives, List<Option> printRuns, List<Option> devices) {
    public List<Option> materials() {
        return Option.of(PrintMaterial.values(), PrintMaterial::label);
    }

    public List<Option> finishes() {
        return Option.of(SurfaceFinish.values(), SurfaceFinish::label);
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(InstallationForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
