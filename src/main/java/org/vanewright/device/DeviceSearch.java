package org.vanewright.device;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.Revision;

@Component
class DeviceSearch implements SearchSource<DeviceDocument> {
    @Override
    public String kind() {
        return "device";
    }

    @Override
    public String label() {
        return "Device";
    }

    @Override
    public List<String> otherWords() {
        return List.of("vane", "vortex generator", "VG");
    }

    @Override
    public SearchDescription describe(Revision<DeviceDocument> revision) {
        DeviceDocument device = revision.content();
        return new SearchDescription(
                summary(device),
                RevisionDrawings.thumbnail("devices", revision),
                device.pair() == null ? List.of("single vane") : List.of("pair", "counter-rotating"),
                Stream.ofNullable(device.description()).toList(),
                DeviceFacets.of(device));
    }

    private static String summary(DeviceDocument device) {
        Vane vane = device.vane();
        String piece = device.pair() == null ? "One vane" : "A pair on one base";
        if (vane == null) {
            return piece;
        }
        return piece + ", " + DeviceFacets.words(DeviceFacets.planform(vane)).toLowerCase(Locale.ROOT)
                + length(vane.heightMm(), "high") + length(vane.lengthMm(), "long");
    }

    private static String length(@Nullable Double mm, String word) {
        return mm == null ? "" : ", " + Numbers.trimmed(mm, 2) + " mm " + word;
    }
}
