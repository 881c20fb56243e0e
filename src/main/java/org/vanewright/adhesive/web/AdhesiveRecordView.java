package org.vanewright.adhesive.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** An adhesive on pages that show every kind of record. */
@Component
class AdhesiveRecordView implements RecordView<AdhesiveDocument> {
    @Override
    public String kind() {
        return "adhesive";
    }

    @Override
    public String label() {
        return "Adhesive";
    }

    @Override
    public Form fields(AdhesiveDocument adhesive, UnitSystem units) {
        return AdhesiveForms.of(adhesive);
    }

    @Override
    public List<Picture> pictures(AdhesiveDocument adhesive, Units units, String idPrefix) {
        return List.of();
    }
}
