package org.vanewright.layout.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** A layout on pages that show every kind of record. */
@Component
class LayoutRecordView implements RecordView<LayoutDocument> {
    private final LayoutFormPages forms;

    LayoutRecordView(LayoutFormPages forms) {
        this.forms = forms;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public String label() {
        return "Layout";
    }

    @Override
    public Form fields(LayoutDocument layout, UnitSystem units) {
        return LayoutForms.of(layout, units);
    }

    @Override
    public List<Picture> pictures(LayoutDocument layout, Units units, String idPrefix) {
        return forms.plan(layout).map(plan -> pictures(plan, units, idPrefix)).orElse(List.of());
    }

    private static List<Picture> pictures(LayoutPlan plan, Units units, String idPrefix) {
        List<Picture> pictures = new ArrayList<>();
        LayoutDrawings.surfaces(plan, units, idPrefix)
                .forEach(s -> pictures.add(new Picture(s.name() + " in plan, with its devices", s.planSvg())));
        List<String> closeUps = LayoutDrawings.closeUps(plan, idPrefix);
        for (int i = 0; i < closeUps.size(); i++) {
            pictures.add(new Picture("Row " + (i + 1) + ", one pitch", closeUps.get(i)));
        }
        return pictures;
    }
}
