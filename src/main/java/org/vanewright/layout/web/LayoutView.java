package org.vanewright.layout.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.PlacementNote;
import org.vanewright.layout.RowDocument;
import org.vanewright.layout.StationRow;
import org.vanewright.record.Revision;

/**
 * A layout worked out for its page.
 *
 * @param surfaces those that carry devices
 * @param rows every row in the layout's order
 * @param stations the whole table
 * @param givenWay units that were moved or left out
 * @param hasStrips whether any row has a repeating strip
 */
public record LayoutView(
        List<SurfacePicture> surfaces,
        List<RowView> rows,
        List<StationRow> stations,
        List<GivenWay> givenWay,
        boolean hasStrips) {
    /**
     * A surface in plan with its devices, drawn by a file of its own.
     *
     * @param address of the file
     * @param words what it shows
     */
    public record SurfacePicture(String name, String address, String words) {}

    /** A surface in plan with its devices. */
    public record SurfaceView(String name, String planSvg) {}

    /**
     * A row with its close-up.
     *
     * @param number counts from 1
     * @param document as recorded
     * @param device exact revision
     * @param pitch address of the close-up of one pitch
     * @param pitchWords what it shows
     * @param left devices on the left wing
     * @param right devices on the right wing
     * @param innermost first station of one wing
     * @param outermost last station of that wing
     * @param fitRadiusMm radius of the skin along the device at the middle of the row; absent where it is all but flat
     * @param maximumStrain of its template; 0 where the skin unrolls exactly
     */
    public record RowView(
            int number,
            RowDocument document,
            Revision<DeviceDocument> device,
            String pitch,
            String pitchWords,
            int left,
            int right,
            StationRow innermost,
            StationRow outermost,
            @Nullable Double fitRadiusMm,
            double maximumStrain) {
        /** The arrangement in words. */
        public String arrangementLabel() {
            return document.arrangement() == null ? "" : LayoutChoices.label(document.arrangement());
        }
    }

    /** A unit that had to give way, with its row's name. */
    public record GivenWay(String rowName, PlacementNote note) {}

    public int deviceCount() {
        return stations.size();
    }

    /** Whether that wing carries any device, {@code LEFT} or {@code RIGHT}. */
    public boolean on(String wing) {
        return stations.stream().anyMatch(s -> s.wing().name().equals(wing));
    }
}
