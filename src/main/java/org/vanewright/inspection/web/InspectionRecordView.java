package org.vanewright.inspection.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** An inspection on pages that show every kind of record. */
@Component
class InspectionRecordView implements RecordView<InspectionDocument> {
    @Override
    public String kind() {
        return "inspection";
    }

    @Override
    public String label() {
        return "Inspection";
    }

    @Override
    public Form fields(InspectionDocument inspection, UnitSystem units) {
        return InspectionForms.of(inspection);
    }

    @Override
    public List<Picture> pictures(InspectionDocument inspection, Units units, String idPrefix) {
        return List.of();
    }
}
