package org.vanewright.printrun.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.printrun.PrintRunDocument;

/** A print run on pages that show every kind of record. */
@Component
class PrintRunRecordView implements RecordView<PrintRunDocument> {
    @Override
    public String kind() {
        return "print-run";
    }

    @Override
    public String label() {
        return "Print run";
    }

    @Override
    public Form fields(PrintRunDocument run, UnitSystem units) {
        return PrintRunForms.of(run);
    }

    @Override
    public List<Picture> pictures(PrintRunDocument run, Units units, String idPrefix) {
        return List.of();
    }
}
