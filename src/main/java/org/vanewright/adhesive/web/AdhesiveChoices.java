package org.vanewright.adhesive.web;

import java.util.List;
import org.vanewright.adhesive.Carrier;
import org.vanewright.adhesive.Property;
import org.vanewright.adhesive.TestMethod;
import org.vanewright.engineering.bond.LineLoadUnit;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects offer. */
public record AdhesiveChoices(List<Option> carriers, List<Option> lineUnits, List<Option> stressUnits) {
    static final AdhesiveChoices ALL = new AdhesiveChoices(
            Option.of(Carrier.values(), Carrier::label),
            Option.of(LineLoadUnit.values(), LineLoadUnit::symbol),
            Option.of(StressUnit.values(), StressUnit::symbol));

    /** Methods that measure a property, by its name. */
    public List<Option> methods(String property) {
        return TestMethod.of(Property.valueOf(property)).stream()
                .map(m -> new Option(m.name(), m.label()))
                .toList();
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(AdhesiveForms.read(form.unchecked()));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
