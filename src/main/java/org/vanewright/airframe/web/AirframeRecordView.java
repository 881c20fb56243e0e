package org.vanewright.airframe.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** An airframe on pages that show every kind of record. */
@Component
class AirframeRecordView implements RecordView<AirframeDocument> {
    @Override
    public String kind() {
        return "airframe";
    }

    @Override
    public String label() {
        return "Airframe";
    }

    @Override
    public Form fields(AirframeDocument airframe, UnitSystem units) {
        return AirframeForms.of(airframe, units);
    }

    @Override
    public List<Picture> pictures(AirframeDocument airframe, Units units, String idPrefix) {
        List<Picture> pictures = new ArrayList<>();
        for (SurfaceView surface : AirframePreview.surfaces(airframe, idPrefix + "surface-", units)) {
            pictures.add(new Picture(surface.label() + " in plan", surface.planSvg()));
            surface.sections()
                    .forEach(s -> pictures.add(new Picture(surface.label() + ", section " + s.designation(), s.svg())));
        }
        return pictures;
    }
}
