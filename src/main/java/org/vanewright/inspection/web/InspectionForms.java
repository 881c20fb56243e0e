package org.vanewright.inspection.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.LossCause;
import org.vanewright.inspection.LossDocument;
import org.vanewright.inspection.LossState;
import org.vanewright.installation.DeviceFields;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;

/** Between an inspection and its form. Fields are named by the document's own paths. */
final class InspectionForms {
    static final String LOSSES = "losses";

    private InspectionForms() {}

    static void addLoss(Form form) {
        form.put(LOSSES + "[" + form.size(LOSSES) + "].at", "");
    }

    static Form of(InspectionDocument d) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("name", d.name())
                .put("description", d.description())
                .put("invented", d.invented() ? "true" : "")
                .put("installation", RevisionField.value(d.installation()))
                .put("inspectedOn", d.inspectedOn())
                .put("hoursFlown", d.hoursFlown());
        for (int i = 0; i < d.losses().size(); i++) {
            LossDocument loss = d.losses().get(i);
            String at = LOSSES + "[" + i + "]";
            form.put(at + ".at", loss.at() == null ? "" : loss.at().key())
                    .put(at + ".state", loss.state())
                    .put(at + ".cause", loss.cause());
        }
        OriginFields.put(form, d);
        PhotographFields.put(form, d);
        return form;
    }

    /** The inspection as typed; what cannot be read is noted in the form. */
    static InspectionDocument read(Form form) {
        String name = form.text("name");
        List<LossDocument> losses = new ArrayList<>();
        for (int i = 0; i < form.size(LOSSES); i++) {
            String at = LOSSES + "[" + i + "]";
            losses.add(new LossDocument(
                    DeviceFields.read(form, at + ".at"),
                    form.choice(at + ".state", LossState.class),
                    form.choice(at + ".cause", LossCause.class)));
        }
        return new InspectionDocument(
                name == null ? "" : name,
                form.text("description"),
                RevisionField.read(form, "installation"),
                form.text("inspectedOn"),
                form.number("hoursFlown"),
                losses,
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }
}
