package org.vanewright.installation;

import org.jspecify.annotations.Nullable;
import org.vanewright.layout.StationRow;

/**
 * A device of an installation as its layout has it.
 *
 * @param at which one
 * @param station where it belongs
 * @param nominalHeightMm of its vane above its base; absent where its design does not say
 */
public record FittedDevice(
        DeviceAt at, StationRow station, @Nullable Double nominalHeightMm) {
    /** For a choice in a form. */
    public String words() {
        return at.words() + (station.rowName().isEmpty() ? "" : " (" + station.rowName() + ")");
    }
}
