package org.vanewright.device.web;

import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.solid.ThreeMfWriter;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.record.Revision;

/** What a device gives to a kit: its solid as designed, and its drawing. */
@Component
class DeviceKitFiles implements KitFiles<DeviceDocument> {
    private final DeviceSolids solids;
    private final MessageSource messages;

    DeviceKitFiles(DeviceSolids solids, MessageSource messages) {
        this.solids = solids;
        this.messages = messages;
    }

    @Override
    public String kind() {
        return "device";
    }

    @Override
    public List<KitFile> of(Revision<DeviceDocument> device) {
        return List.of(
                new KitFile(
                        "solid.stl",
                        "model/stl",
                        "Solid as designed, millimetres",
                        () -> StlWriter.write(mesh(device), DeviceSolids.label(device))),
                new KitFile(
                        "solid.3mf",
                        ThreeMfWriter.MEDIA_TYPE,
                        "Solid as designed",
                        () -> ThreeMfWriter.write(mesh(device), DeviceSolids.label(device))),
                new KitFile(
                        "drawing.pdf",
                        "application/pdf",
                        "Drawing of the device",
                        () -> DeviceSheet.pdf(device, messages.getMessage("caution.short", null, Locale.ROOT))));
    }

    private Mesh mesh(Revision<DeviceDocument> device) {
        return solids.exact(device.content().design());
    }
}
