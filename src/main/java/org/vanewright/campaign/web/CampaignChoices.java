package org.vanewright.campaign.web;

import java.util.List;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.InstrumentDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.OriginFields;

/** What the form's selects offer. */
public record CampaignChoices(List<Option> airframes, List<Option> layouts, List<Option> calibrations) {
    public List<Option> measures() {
        return Option.of(Measure.values(), m -> m.label() + ", " + m.unit());
    }

    public List<Option> orders() {
        return Option.of(FlyingOrder.values(), FlyingOrder::label);
    }

    public List<Option> quantities() {
        return Option.of(
                InstrumentDocument.Quantity.values(), q -> q.label() + (q.unit().isEmpty() ? "" : ", " + q.unit()));
    }

    public List<Option> degrees() {
        return List.of(new Option("1", "A line"), new Option("2", "A parabola"));
    }

    /** The figures that a row about origins may speak of. */
    public List<Option> figures(Form form) {
        return OriginFields.figures(CampaignForms.read(form.unchecked(), null));
    }

    public List<Option> origins() {
        return OriginFields.ORIGINS;
    }
}
