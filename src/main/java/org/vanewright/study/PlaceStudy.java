package org.vanewright.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.record.Revision;

/**
 * One place of a wing without a layout.
 *
 * @param airframe exact revision
 * @param state the flight condition
 * @param surface with its lift; its rows hold the device that is imagined there, if any
 * @param here the section there
 * @param place on it
 * @param layer there
 * @param warnings where the method stops being valid
 */
public record PlaceStudy(
        Revision<AirframeDocument> airframe,
        FlightState state,
        Study.Surface surface,
        StationFlow here,
        Place place,
        LayerHere layer,
        List<String> warnings) {
    /** The device that is imagined there; null for none. */
    public @Nullable RowStudy device() {
        return surface.rows().isEmpty() ? null : surface.rows().get(0);
    }
}
