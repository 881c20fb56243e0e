package org.vanewright.device.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** A device on pages that show every kind of record. */
@Component
class DeviceRecordView implements RecordView<DeviceDocument> {
    private final DevicePreview preview;

    DeviceRecordView(DevicePreview preview) {
        this.preview = preview;
    }

    @Override
    public String kind() {
        return "device";
    }

    @Override
    public String label() {
        return "Device";
    }

    @Override
    public Form fields(DeviceDocument device, UnitSystem units) {
        return DeviceForms.of(device);
    }

    @Override
    public List<Picture> pictures(DeviceDocument device, Units units, String idPrefix) {
        DevicePreview.View view = preview.of(device, idPrefix);
        return view == null
                ? List.of()
                : List.of(
                        new Picture("The solid", view.stillSvg()),
                        new Picture("Three views with dimensions", view.drawingSvg()));
    }
}
