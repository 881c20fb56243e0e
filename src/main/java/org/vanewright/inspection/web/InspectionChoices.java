package org.vanewright.inspection.web;

import java.util.List;
import org.vanewright.inspection.LossCause;
import org.vanewright.inspection.LossState;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects offer. */
public record InspectionChoices(List<Option> installations, List<Option> devices) {
    public List<Option> states() {
        return Option.of(LossState.values(), LossState::label);
    }

    public List<Option> causes() {
        return Option.of(LossCause.values(), LossCause::label);
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(InspectionForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
