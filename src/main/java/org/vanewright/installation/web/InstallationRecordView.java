package org.vanewright.installation.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** An installation on pages that show every kind of record. */
@Component
class InstallationRecordView implements RecordView<InstallationDocument> {
    @Override
    public String kind() {
        return "installation";
    }

    @Override
    public String label() {
        return "Installation";
    }

    @Override
    public Form fields(InstallationDocument installation, UnitSystem units) {
        return InstallationForms.of(installation);
    }

    @Override
    public List<Picture> pictures(InstallationDocument installation, Units units, String idPrefix) {
        return List.of();
    }
}
